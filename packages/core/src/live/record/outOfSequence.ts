import type { Problem } from "../../plan/problem.ts";
import type { Plan, Task } from "../../plan/types.ts";
import { type BrokenLink, brokenLink } from "./brokenLink.ts";
import type { Told } from "./readFacts.ts";

/**
 * Where a report says that a task started or finished although what it waits for had not happened: either the report
 * is wrong, or the link is.
 */
export function outOfSequence(plan: Plan, told: readonly Told[]): Problem[] {
  const tasks = new Map(plan.tasks.map((task) => [task.id, task]));
  return told.flatMap(({ what, id, said }) => {
    const task = tasks.get(id);
    if (task === undefined || (what !== "started" && what !== "finished")) return [];
    return task.after.flatMap((link) => {
      const before = tasks.get(link.task);
      if (before === undefined) return [];
      const broken = brokenLink(task, link, before);
      if (broken === undefined || (broken.to !== what && task.milestone === false)) return [];
      const rule = inWords(task, broken, before);
      const remedy = `Check both days; if they are right, the link to ${before.id} is not what it says.`;
      return [
        { code: "out-of-sequence", severity: "warning" as const, path: said, received: "", rule, remedy },
      ];
    });
  });
}

/** What happened too early, in words. */
function inWords({ milestone }: Task, { from, to, mine, theirs }: BrokenLink, before: Task): string {
  const verb = milestone === false ? to : "is reached";
  return theirs === undefined
    ? `Out of sequence: it ${verb}, and ${before.name} (${before.id}) has not ${from} yet.`
    : `Out of sequence: it ${verb} on ${mine}, and ${before.name} (${before.id}) ${from} on ${theirs}.`;
}

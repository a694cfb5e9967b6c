import type { Problem } from "../../plan/problem.ts";
import type { Link, Plan, Task } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/asWrittenValue.ts";
import type { Told } from "./readFacts.ts";

/**
 * Where a report says that a task started or finished although what it waits for had not happened: either the report
 * is wrong, or the link is. Links with a negative lag allow it, and a predecessor that may not be needed is no reason.
 */
export function outOfSequence(plan: Plan, told: readonly Told[]): Problem[] {
  const tasks = new Map(plan.tasks.map((task) => [task.id, task]));
  return told.flatMap(({ what, id, said }) => {
    const task = tasks.get(id);
    if (task === undefined || (what !== "started" && what !== "finished")) return [];
    return task.after.flatMap((link) => {
      const before = tasks.get(link.task);
      if (before === undefined || before.chance < 1 || before.onlyIf !== undefined) return [];
      if (asWrittenValue(link.lag) < 0) return [];
      const rule = broken(task, what, link, before);
      if (rule === undefined) return [];
      const remedy = `Check both days; if they are right, the link to ${before.id} is not what it says.`;
      return [
        { code: "out-of-sequence", severity: "warning" as const, path: said, received: "", rule, remedy },
      ];
    });
  });
}

/** What happened too early, in words; undefined where all is in order. */
function broken(task: Task, what: "started" | "finished", { link }: Link, before: Task): string | undefined {
  const [from, to] = ENDS[link];
  // A milestone has one day, which stands for both ends.
  const day = (of: Task, end: "started" | "finished") => (of.milestone === false ? of[end] : of.finished);
  const point = task.milestone !== false;
  if (to !== what && !point) return undefined;
  const mine = day(task, to);
  const theirs = day(before, from);
  if (mine === undefined) return undefined;
  const verb = point ? "is reached" : what;
  if (theirs === undefined)
    return `Out of sequence: it ${verb}, and ${before.name} (${before.id}) has not ${from} yet.`;
  // A finish closes its day and a start opens its own, so a task can start the day after at the earliest.
  const early = from === "finished" && to === "started" && !point && before.milestone === false;
  if (early ? theirs >= mine : theirs > mine)
    return `Out of sequence: it ${verb} on ${mine}, and ${before.name} (${before.id}) ${from} on ${theirs}.`;
  return undefined;
}

const ENDS = {
  "finish-to-start": ["finished", "started"],
  "start-to-start": ["started", "started"],
  "finish-to-finish": ["finished", "finished"],
  "start-to-finish": ["started", "finished"],
} as const;

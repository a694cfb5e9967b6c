import type { Estimate, Plan, RegisterEntry, Task } from "../../plan/types.ts";

/** An event that occurred, and a task whose `remaining` or `spent` may hold it already. */
export interface TwiceCounted {
  entry: RegisterEntry;
  task: Task;
  part: "remaining" | "spent";
  says: string;
  advice: string;
}

/**
 * What an occurred risk or assumption adds on top of what was reported of a task: its days on a task whose `remaining`
 * was said, its money beside a task whose `spent` was said, where nobody has said what it cost in fact.
 */
export function twiceCounted(plan: Plan): TwiceCounted[] {
  const tasks = new Map(plan.tasks.map((task) => [task.id, task]));
  return [...plan.risks, ...plan.assumptions].flatMap((entry) => {
    if (entry.status !== "occurred") return [];
    const found = new Map<string, TwiceCounted>();
    for (const { tasks: ids, delay, factor, cost } of entry.impacts) {
      for (const id of ids) {
        const task = tasks.get(id);
        if (task === undefined) continue;
        const lengthens = moves(delay, 0) || moves(factor, 1);
        if (lengthens && task.remaining !== undefined && task.finished === undefined)
          found.set(`${id} remaining`, {
            ...{ entry, task, part: "remaining" },
            says: `The days of "${entry.name}" are added to what remains of ${task.name}.`,
            advice: `Where these days are in \`remaining\` already, record --days ${entry.id}=0.`,
          });
        if (moves(cost, 0) && entry.actual?.cost === undefined && task.spent !== undefined)
          found.set(`${id} spent`, {
            ...{ entry, task, part: "spent" },
            says: `The money of "${entry.name}", a range still, is added to what was spent on ${task.name}.`,
            advice: `Record what it cost: --cost ${entry.id}=MONEY; 0 where it is in \`spent\` already.`,
          });
      }
    }
    return [...found.values()];
  });
}

function moves(estimate: Estimate | undefined, neutral: number): boolean {
  return estimate !== undefined && !(estimate.kind === "fixed" && estimate.value === neutral);
}

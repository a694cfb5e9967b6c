import type { Link, Plan, Task } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/index.ts";

/** A link with both its ends, and where it stands. */
export interface PlacedLink {
  link: Link;
  task: Task;
  path: string;
  /** As written, in the unit it is written in. */
  lag: number;
}

/** Every link of the plan, in the order of the document. */
export function linksOf(plan: Plan): PlacedLink[] {
  return plan.tasks.flatMap((task, t) =>
    task.after.map((link, l) => ({
      link,
      task,
      path: `tasks[${t}].after[${l}]`,
      lag: asWrittenValue(link.lag),
    })),
  );
}

/** By task id: the links that go out from it. */
export function successorsOf(plan: Plan): Map<string, { link: Link; task: Task }[]> {
  const result = new Map<string, { link: Link; task: Task }[]>(plan.tasks.map(({ id }) => [id, []]));
  for (const task of plan.tasks) for (const link of task.after) result.get(link.task)?.push({ link, task });
  return result;
}

/** Everything that comes after a task, itself left out. */
export function downstreamOf(
  from: string,
  successors: ReadonlyMap<string, readonly { task: Task }[]>,
): Set<string> {
  const seen = new Set<string>();
  const waiting = [from];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    for (const { task } of successors.get(id) ?? []) {
      if (!seen.has(task.id)) {
        seen.add(task.id);
        waiting.push(task.id);
      }
    }
  }
  return seen;
}

import type { Plan } from "../plan/types.ts";
import type { ModelEntry } from "./model.ts";

/** Reported at most: the pairs grow with the square of the tasks that share a cause. */
const most = 60;

/**
 * Pairs of tasks whose durations the plan makes move together: named in one correlation set, or touched by one
 * factor, delay or the same impact. First in order of task ids; at most 60.
 */
export function linkedPairs(
  plan: Plan,
  taskIndex: ReadonlyMap<string, number>,
  entries: readonly ModelEntry[],
): [number, number][] {
  const groups: number[][] = [
    ...plan.correlations.map((set) =>
      set.between.map((id) => taskIndex.get(id)).filter((index) => index !== undefined),
    ),
    ...entries.flatMap((entry) =>
      entry.impacts
        .filter((impact) => impact.factor !== undefined || impact.delay !== undefined)
        .map((impact) => impact.tasks),
    ),
  ];
  const seen = new Map<string, [number, number]>();
  for (const group of groups) {
    const tasks = [...group].sort((a, b) => a - b);
    for (let i = 0; i < tasks.length; i++) {
      for (let j = i + 1; j < tasks.length; j++) {
        const pair: [number, number] = [tasks[i] as number, tasks[j] as number];
        if (pair[0] !== pair[1]) seen.set(pair.join(","), pair);
        if (seen.size >= most * 8) break;
      }
    }
  }
  return [...seen.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]).slice(0, most);
}

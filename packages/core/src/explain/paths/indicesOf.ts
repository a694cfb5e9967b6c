import type { IndexSums, TaskSums } from "./indexSums.ts";

/** The trade's four indices of a task, each 0 to 1, and its mean slack in working days; undefined: never bounded. */
export interface Indices {
  criticality: number;
  significance: number;
  cruciality: number;
  scheduleSensitivity: number;
  slack: number | undefined;
}

/**
 * Criticality index; significance index, E[d / (d + slack) * T / E[T]] (Williams 1992, J. Operational Research Society
 * 43, 353-357; recalled); cruciality, |correlation of d and T|; schedule sensitivity, criticality * sd(d) / sd(T)
 * (Vanhoucke 2010, Measuring Time; definitions read in part). d: the task's realised duration, 0 where it is not
 * needed; T: the plan's, working days of its calendar. A task without duration has significance 0; what divides by a
 * spread of 0 is 0.
 */
export function indicesOf(sums: IndexSums, task: TaskSums): Indices {
  const { n } = sums;
  const criticality = task.critical / n;
  const certain = !(task.squares > 1e-18 * n) || !(sums.squares > 1e-18 * n);
  const ratio = certain ? 0 : Math.sqrt(task.squares / sums.squares);
  const correlation = certain ? 0 : task.products / Math.sqrt(task.squares * sums.squares);
  return {
    criticality,
    significance: sums.mean > 0 ? task.weighed / n / sums.mean : 0,
    cruciality: Math.min(1, Math.abs(correlation)),
    scheduleSensitivity: criticality * ratio,
    slack: task.bounded === 0 ? undefined : task.slack / task.bounded,
  };
}

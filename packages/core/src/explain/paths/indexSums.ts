import { workAt } from "../../calendar/workCalendar.ts";
import type { Placed } from "./placed.ts";
import { slackOf } from "./slackOf.ts";

/** What the indices of every task are made of, over the iterations added so far. Moments of second order are central. */
export interface IndexSums {
  n: number;
  /** The plan's duration, working days of its calendar: mean and sum of squares. */
  mean: number;
  squares: number;
  tasks: TaskSums[];
}

export interface TaskSums {
  mean: number;
  squares: number;
  /** Sum of products with the plan's duration. */
  products: number;
  critical: number;
  /** Sum of d / (d + slack) times the plan's duration. */
  weighed: number;
  /** Iterations with a slack that is not infinite, and its sum. */
  bounded: number;
  slack: number;
}

export function newIndexSums(tasks: number): IndexSums {
  const none = () => ({
    mean: 0,
    squares: 0,
    products: 0,
    critical: 0,
    weighed: 0,
    bounded: 0,
    slack: 0,
  });
  return { n: 0, mean: 0, squares: 0, tasks: Array.from({ length: tasks }, none) };
}

/**
 * Adds a placed and marked block. Means and central moments of the block, two passes, joined with those so far
 * (Chan, Golub & LeVeque 1983, The American Statistician 37, 242-247; recalled), so that no digits are lost.
 *
 * @param late  The rows of `fillLateRows`.
 */
export function addToIndexSums(sums: IndexSums, placed: Placed, late: readonly Float64Array[]): void {
  const { model, block } = placed;
  const { n } = block;
  const total = Float64Array.from({ length: n }, (_, k) =>
    workAt(model.planCalendar, block.planFinish[k] as number),
  );
  const meanTotal = meanOf(total, n);
  const weight = (sums.n * n) / (sums.n + n);
  const apart = meanTotal - sums.mean;
  let squaresOfTotal = 0;
  for (let k = 0; k < n; k++) squaresOfTotal += ((total[k] as number) - meanTotal) ** 2;
  model.tasks.forEach((task, j) => {
    const into = sums.tasks[j] as TaskSums;
    const duration = block.duration[j] as Float64Array;
    const pushed = block.pushed[j] as Uint8Array;
    const needed = block.needed[j];
    const row = late[j] as Float64Array;
    const mean = meanOf(duration, n);
    let squares = 0;
    let products = 0;
    for (let k = 0; k < n; k++) {
      const d = duration[k] as number;
      squares += (d - mean) * (d - mean);
      products += (d - mean) * ((total[k] as number) - meanTotal);
      if (needed !== undefined && needed[k] === 0) continue;
      if (pushed[k] === 1 && task.progress?.finished !== true) into.critical++;
      const slack = slackOf(placed, j, k, row);
      if (slack === Number.POSITIVE_INFINITY) continue;
      into.bounded++;
      into.slack += slack;
      if (d > 0) into.weighed += (d / (d + slack)) * (total[k] as number);
    }
    into.squares += squares + (mean - into.mean) ** 2 * weight;
    into.products += products + (mean - into.mean) * apart * weight;
    into.mean += ((mean - into.mean) * n) / (sums.n + n);
  });
  sums.squares += squaresOfTotal + apart * apart * weight;
  sums.mean += (apart * n) / (sums.n + n);
  sums.n += n;
}

function meanOf(row: Float64Array, n: number): number {
  let sum = 0;
  for (let k = 0; k < n; k++) sum += row[k] as number;
  return sum / n;
}

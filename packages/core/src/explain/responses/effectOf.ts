import type { ResponseEffect } from "../types.ts";
import { type Gauge, meanBurden, type Targets } from "./gauge.ts";

/** What it changes to go from one set of decisions to another: with less without. */
export function effectOf(without: Gauge, set: Gauge, targets: Targets, n: number): ResponseEffect {
  const dated = targets.finishByDay !== undefined;
  const priced = targets.budget !== undefined;
  return {
    workingDays: set.workingDays - without.workingDays,
    money: set.cost - without.cost,
    ...(dated ? { finishBy: (set.onTime - without.onTime) / n } : {}),
    ...(priced ? { budget: (set.inBudget - without.inBudget) / n } : {}),
    ...(dated && priced ? { both: (set.both - without.both) / n } : {}),
    ...(set.meanLateness === undefined || without.meanLateness === undefined
      ? {}
      : { latenessAvoided: without.meanLateness - set.meanLateness }),
    netWorth: meanBurden(without) - meanBurden(set),
    netWorthError: errorOfDifference(without.burdens, set.burdens),
  };
}

/**
 * Standard error of the difference of two means on the same draws, by batch means (Law, Simulation Modeling and
 * Analysis, ch. 9, from memory): the spread of the differences of batches, over the root of their number. Batches of a
 * Latin hypercube are less regular than the whole, so it is rather too large than too small.
 */
function errorOfDifference(a: readonly number[], b: readonly number[]): number {
  const count = a.length;
  if (count < 2) return 0;
  const differences = a.map((value, i) => value - (b[i] as number));
  const mean = differences.reduce((sum, value) => sum + value, 0) / count;
  const squares = differences.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (count - 1) / count);
}

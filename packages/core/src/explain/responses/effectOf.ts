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
  };
}

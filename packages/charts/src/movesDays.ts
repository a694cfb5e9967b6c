import type { Comparison } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { daysMeasure } from "./measure/daysMeasure.ts";
import { movesFigure } from "./moves/movesFigure.ts";

/**
 * What moved the committed date between two plans: a waterfall from the earlier date to the present one, in
 * working days, the largest fourteen groups of changes and the rest as one.
 *
 * Reads `moves`, `from`, `to`, `difference`.
 */
export function movesDays(comparison: Comparison, options: ChartOptions): Figure {
  const amounts = [comparison.difference, ...comparison.moves].map((each) => each.workingDays);
  return movesFigure(comparison, daysMeasure(amounts), options);
}

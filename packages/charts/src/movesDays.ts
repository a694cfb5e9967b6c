import type { Comparison } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { moveMeasure } from "./moves/moveMeasure.ts";
import { movesFigure } from "./moves/movesFigure.ts";

/**
 * What moved the committed date between two plans: a waterfall from the earlier date to the present one, in
 * working days, the largest fourteen groups of changes and the rest as one.
 *
 * Reads `moves`, `from`, `to`, `difference`.
 */
export function movesDays(comparison: Comparison, options: ChartOptions): Figure {
  return movesFigure(comparison, moveMeasure(comparison, "days"), options);
}

import type { Comparison } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { moveMeasure } from "./moves/moveMeasure.ts";
import { movesFigure } from "./moves/movesFigure.ts";

/**
 * What moved the committed sum between two plans: as `movesDays`, in money.
 *
 * Reads `moves`, `from`, `to`, `difference`, `plan.currency`.
 */
export function movesMoney(comparison: Comparison, options: ChartOptions): Figure {
  return movesFigure(comparison, moveMeasure(comparison, "money"), options);
}

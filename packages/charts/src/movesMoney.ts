import type { Comparison } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { moneyMeasure } from "./measure/moneyMeasure.ts";
import { movesFigure } from "./moves/movesFigure.ts";

/**
 * What moved the committed sum between two plans: as `movesDays`, in money.
 *
 * Reads `moves`, `from`, `to`, `difference`, `plan.currency`.
 */
export function movesMoney(comparison: Comparison, options: ChartOptions): Figure {
  const amounts = [comparison.difference, ...comparison.moves].map((each) => each.money);
  return movesFigure(comparison, moneyMeasure(amounts, comparison.plan.currency), options);
}

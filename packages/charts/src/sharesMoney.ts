import type { Explanation } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { moneyMeasure } from "./measure/moneyMeasure.ts";
import { sharesFigure } from "./shares/sharesFigure.ts";

/**
 * The contingency of the sum split over its causes: as `sharesDays`, in money.
 *
 * Reads `shares`, `contingency`, `asWritten`, `committed`, `plan.currency`.
 */
export function sharesMoney(explanation: Explanation, options: ChartOptions): Figure {
  const amounts = [explanation.contingency, ...explanation.shares].map((each) => each.money);
  return sharesFigure(explanation, moneyMeasure(amounts, explanation.plan.currency), options);
}

import type { Explanation } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { moneyMeasure } from "./measure/moneyMeasure.ts";
import { walkFigure } from "./walk/walkFigure.ts";

/**
 * From the plan as written to the committed sum, step by step: as `walkDays`, in money.
 *
 * Reads `walk`, `contingency`, `asWritten`, `committed`, `plan.currency`.
 */
export function walkMoney(explanation: Explanation, options: ChartOptions): Figure {
  const amounts = [explanation.contingency, ...explanation.walk].map((each) => each.money);
  return walkFigure(explanation, moneyMeasure(amounts, explanation.plan.currency), options);
}

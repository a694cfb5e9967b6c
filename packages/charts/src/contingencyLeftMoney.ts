import type { ContingencyLeft } from "@leeway/core";
import { leftFigure } from "./contingencyLeft/leftFigure.ts";
import { leftMoney } from "./contingencyLeft/leftMeasure.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";

/** Contingency left against what may still be needed, month by month, in money. Reads `money`, `ahead`, `confidence`, `plan`. */
export function contingencyLeftMoney(answer: ContingencyLeft, options: ChartOptions): Figure {
  return leftFigure(answer, leftMoney(answer), options);
}

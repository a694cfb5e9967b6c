import type { ContingencyLeft } from "@leeway/core";
import { leftFigure } from "./contingencyLeft/leftFigure.ts";
import { leftDays } from "./contingencyLeft/leftMeasure.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";

/** ... in working days. Reads `days`, `ahead`, `confidence`, `plan`. */
export function contingencyLeftDays(answer: ContingencyLeft, options: ChartOptions): Figure {
  return leftFigure(answer, leftDays(answer), options);
}

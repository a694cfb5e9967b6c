import type { Explanation } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { daysMeasure } from "./measure/daysMeasure.ts";
import { walkFigure } from "./walk/walkFigure.ts";

/**
 * From the plan as written to the committed date, step by step, in working days: a waterfall in the order in
 * which the steps are taken.
 *
 * Reads `walk`, `contingency`, `asWritten`, `committed`.
 */
export function walkDays(explanation: Explanation, options: ChartOptions): Figure {
  const amounts = [explanation.contingency, ...explanation.walk].map((each) => each.workingDays);
  return walkFigure(explanation, daysMeasure(amounts), options);
}

import type { Explanation } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { daysMeasure } from "./measure/daysMeasure.ts";
import { sharesFigure } from "./shares/sharesFigure.ts";

/**
 * The contingency of the date split over its causes: a waterfall from the plan as written to the committed
 * date, in working days, the largest fourteen and the rest as one.
 *
 * Reads `shares`, `contingency`, `asWritten`, `committed`. Any number of shares; all are in the table.
 */
export function sharesDays(explanation: Explanation, options: ChartOptions): Figure {
  const amounts = [explanation.contingency, ...explanation.shares].map((each) => each.workingDays);
  return sharesFigure(explanation, daysMeasure(amounts), options);
}

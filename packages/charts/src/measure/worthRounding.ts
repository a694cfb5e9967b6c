import type { Responses } from "@leeway/core";
import { roundToStep } from "../words/roundToLimits.ts";
import { moneyColumn } from "./moneyColumn.ts";

/**
 * How the net worth of responses is rounded wherever it is told: all of one answer to the same place, the one that gives
 * the largest three digits, so that a sentence says what the chart beside it says.
 *
 * @returns rounds a sum of money in the currency of the plan; not finite: as it is.
 */
export function worthRounding({ responses, plan }: Responses): (worth: number) => number {
  const { step } = moneyColumn(
    responses.map((each) => each.given.netWorth),
    plan.currency,
  );
  return (worth) => roundToStep(worth, step);
}

import type { Explanation } from "@leeway/core";
import { formatMoney } from "../words/formatMoney.ts";
import { groupDigits } from "../words/groupDigits.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { limitStep, roundToStep } from "../words/roundToLimits.ts";

/** Whether the plan speaks of money at all. */
export function spends({ committed, contingency }: Explanation): boolean {
  return committed.cost !== 0 || contingency.money !== 0;
}

/** A committed sum, or what it holds above the plan as written, to the digits its sampling limits support. */
export function supportedSum({ committed, limits, plan }: Explanation, value: number): string {
  const { cost } = committed;
  const step = limitStep(cost, limits?.low.money ?? cost, limits?.high.money ?? cost);
  return formatMoney(roundToStep(value, step), plan.currency);
}

/** A part of it for a column, without the currency: two significant digits. */
export function partSum(value: number, signed = false): string {
  const text = groupDigits(roundSignificant(value, 2));
  return signed && value > 0 && text !== "0" ? `+${text}` : text;
}

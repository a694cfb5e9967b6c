import { formatMoney, groupDigits, limitStep, roundSignificant, roundToStep } from "@leeway/charts";
import type { Confidence, ConfidenceStep } from "@leeway/core";

/** Whether the plan speaks of money at all. */
export function spendsMoney({ steps, joint }: Confidence): boolean {
  return joint.asked !== undefined || steps.some(({ cost }) => cost !== 0);
}

/** A sum to the digits that the sampling limits of the nearest level support. */
export function sumAt(confidence: Confidence, cost: number): string {
  const nearest = confidence.steps.reduce((best: ConfidenceStep | undefined, step) =>
    best === undefined || Math.abs(step.cost - cost) < Math.abs(best.cost - cost) ? step : best,
  );
  const step = nearest === undefined ? 1 : limitStep(nearest.cost, nearest.costLow, nearest.costHigh);
  return formatMoney(roundToStep(cost, step), confidence.plan.currency);
}

/** A sum for a column: without the currency. */
export function bareSum(confidence: Confidence, cost: number): string {
  return sumAt(confidence, cost).replace(`${confidence.plan.currency} `, "");
}

/** A mean or a difference of sums: two significant digits, with the currency. */
export function roughSum({ plan }: Confidence, value: number): string {
  return formatMoney(roundSignificant(value, 2), plan.currency);
}

/** ... for a column. */
export function roughDigits(value: number): string {
  return groupDigits(roundSignificant(value, 2));
}

import { forecastSpends, formatMoney, groupDigits, roundSignificant, roundToLimits } from "@leeway/charts";
import type { Forecast } from "@leeway/core";

/** Whether the plan speaks of money at all; a plan without costs is told in days alone. */
export const hasMoney: (forecast: Forecast) => boolean = forecastSpends;

/** The committed sum, to the digits its sampling limits support. */
export function committedSum(forecast: Forecast): string {
  const { cost, costLow, costHigh } = forecast.committed;
  return formatMoney(roundToLimits(cost, costLow, costHigh), forecast.plan.currency);
}

/** Money that stands for a mean over futures, without the currency: two significant digits. */
export function meanSum(value: number): string {
  return groupDigits(roundSignificant(value, 2));
}

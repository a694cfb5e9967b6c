import {
  forecastSpends,
  formatDate,
  formatDays,
  formatMoney,
  formatPercent,
  roundToLimits,
} from "@leeway/charts";
import type { Driver, Forecast } from "@leeway/core";

/** What the sentences need of a level: of the one committed to, or of one read off the curves. */
export interface Spoken extends Pick<Forecast, "cost" | "asked"> {
  plan: { currency: string };
  committed: Pick<Forecast["committed"], "confidence" | "date" | "cost" | "costLow" | "costHigh">;
}

/** The committed sum, with no more digits than its sampling limits support. */
export function committedSum(forecast: Spoken): string {
  return formatMoney(roundedSum(forecast), forecast.plan.currency);
}

/** The same as a number. */
export function roundedSum(forecast: Spoken): number {
  const { cost, costLow, costHigh } = forecast.committed;
  return roundToLimits(cost, costLow, costHigh);
}

/** A plan without any money has no sum to be told. */
export const spends: (spoken: Spoken) => boolean = forecastSpends;

/**
 * What is said of time, and the sum with it: "Tue 23 Nov 2027 and EUR 660,000". The time alone where the plan has no
 * money.
 *
 * @param sum  The one that goes with it; default: the sum at the level.
 */
export function withSum(
  of: Spoken,
  time: string,
  { sum = committedSum(of), between = " and " } = {},
): string {
  return spends(of) ? `${time}${between}${sum}` : time;
}

/** The level committed to: "80 %", never broken over two lines. */
export function committedLevel(forecast: Spoken): string {
  return formatPercent(forecast.committed.confidence).replace(" ", "\u00a0");
}

/** The largest additions to the finish that the reason names. */
const named = 5;

/** How far the commitment lies beyond the plan as written: days, and money. */
export function contingencyWords(forecast: Forecast): { days: string; money: string } {
  const { contingency, plan } = forecast;
  return {
    days: formatDays(contingency.workingDays),
    money: formatMoney(roundMoney(contingency.money, forecast), plan.currency),
  };
}

/** All that adds to the finish on average, as far as one decimal shows it. */
export function driversAdding(forecast: Forecast): Driver[] {
  return forecast.drivers.filter((driver) => driver.days >= 0.05);
}

/** What adds most to it, the largest first. */
export function largestDrivers(forecast: Forecast): Driver[] {
  return driversAdding(forecast)
    .sort((a, b) => b.days - a.days || (a.id < b.id ? -1 : 1))
    .slice(0, named);
}

/** A difference of money to the digits that the committed sum's limits support. */
export function roundMoney(value: number, forecast: Spoken): number {
  const half = (forecast.committed.costHigh - forecast.committed.costLow) / 2;
  return roundToLimits(value, value - half, value + half);
}

/** A sentence for the reader who cannot see the page change. */
export function announcement(forecast: Forecast, previous: Forecast | undefined): string {
  const told = (of: Forecast) => withSum(of, formatDate(of.committed.date));
  const now = `New answer at ${committedLevel(forecast)}: ${told(forecast)}.`;
  return previous === undefined ? now : `${now} It was ${told(previous)}.`;
}

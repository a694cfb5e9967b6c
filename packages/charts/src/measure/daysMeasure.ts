import { formatDays } from "../words/formatDays.ts";
import { groupDigits } from "../words/groupDigits.ts";
import type { Measure } from "./types.ts";

/**
 * Working days, to the tenth in columns so that the figures shown add up; in whole days where the largest has
 * three digits.
 *
 * @param amounts  Everything that will stand in the column.
 */
export function daysMeasure(amounts: readonly number[]): Measure {
  let largest = 0;
  for (const amount of amounts) largest = Math.max(largest, Math.abs(amount));
  const decimals = largest < 99.95 ? 1 : 0;
  const least = decimals === 1 ? 0.05 : 0.5;
  return {
    amount: (effect) => effect.workingDays,
    what: "date",
    unit: "working days",
    currency: "",
    less: "earlier",
    more: "later",
    least,
    column: (value) => {
      if (Math.abs(value) < least) return "0";
      return `${value < 0 ? "−" : "+"}${groupDigits(Math.abs(value), decimals)}`;
    },
    say: (value) => formatDays(Math.abs(value)),
  };
}

import { roundToStep } from "../words/roundToLimits.ts";

/**
 * How many months of a plan's money to show: to the last in which something is spent, or has been spent by its end, that is
 * seen in sums as they are written. So what stands at the end is the whole; a few futures go on for a long time after it.
 *
 * @param byEnd  By month: sums spent by its end, any percentiles.
 * @param inIt   By month: what is spent in it, where that is shown.
 * @param step   Sums are written in multiples of it (`limitStep`).
 */
export function monthsToShow(
  byEnd: readonly (readonly number[])[],
  step: number,
  inIt: readonly number[] = [],
): number {
  const written = byEnd.map((month) => month.map((sum) => roundToStep(sum, step)).join(" "));
  return (
    1 +
    written.findLastIndex(
      (month, m) => m === 0 || month !== written[m - 1] || roundToStep(inIt[m] ?? 0, step) !== 0,
    )
  );
}

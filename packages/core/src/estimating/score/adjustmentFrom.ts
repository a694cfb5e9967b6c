import { median, ratiosTo } from "./median.ts";
import type { Adjustment, ScoreEntry } from "./types.ts";

/**
 * Fewest estimates from which anything is suggested: below, one task more or less turns the verdict (nine of nine
 * inside has a lower limit of 0.70). Common practice, no source.
 */
export const FEWEST = 10;

/**
 * The factors with which these estimates would have been right: all values times the median of actual over median said;
 * then the high and the low side stretched so that one in ten of the actual values lies beyond each. Undefined for fewer
 * than `FEWEST`, or where one side is never given a range. Method: ours; common practice is a single factor on the
 * likely value, which would also shift estimates that are right but skew.
 */
export function adjustmentFrom(entries: readonly ScoreEntry[]): Adjustment | undefined {
  if (entries.length < FEWEST) return undefined;
  const shift = median(ratiosTo(entries, "p50"));
  const highs = entries.flatMap(({ likely, p90, actual }) =>
    p90 > likely ? [(actual / shift - likely) / (p90 - likely)] : [],
  );
  const lows = entries.flatMap(({ likely, p10, actual }) =>
    p10 < likely ? [(likely - actual / shift) / (likely - p10)] : [],
  );
  if (!(shift > 0) || highs.length < FEWEST || lows.length < FEWEST) return undefined;
  return { shift, highSide: ninth(highs), lowSide: ninth(lows), n: entries.length };
}

/** The least value that nine in ten do not exceed, never below nought. */
function ninth(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return Math.max(0, sorted[Math.ceil(0.9 * sorted.length - 1e-9) - 1] ?? 0);
}

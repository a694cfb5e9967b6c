import { adjustmentFrom, FEWEST } from "./adjustmentFrom.ts";
import { median, ratiosTo } from "./median.ts";
import type { Score, ScoreEntry } from "./types.ts";
import { wilson } from "./wilson.ts";

/** The part of the actual values that a range from one in ten to one in ten is meant to hold. */
const MEANT = 0.8;

/** How a set of entries did. Undefined for none. */
export function scoreOf(entries: readonly ScoreEntry[]): Score | undefined {
  const n = entries.length;
  if (n === 0) return undefined;
  const count = (where: ScoreEntry["where"]) => entries.filter((entry) => entry.where === where).length;
  const inside = wilson(count("inside"), n);
  const ratios = ratiosTo(entries, "likely");
  const adjustment = adjustmentFrom(entries);
  return {
    n,
    inside,
    below: count("below"),
    above: count("above"),
    within: entries.filter(({ within }) => within).length,
    withEvents: entries.filter(({ events }) => events.length > 0).length,
    meanRatio: ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length,
    medianRatio: median(ratios),
    medianOfMedian: median(ratiosTo(entries, "p50")),
    ranges:
      n < FEWEST
        ? "too-few"
        : inside.high < MEANT
          ? "too-narrow"
          : inside.low > MEANT
            ? "too-wide"
            : "as-meant",
    ...(adjustment !== undefined && { adjustment }),
  };
}

import { rankOf } from "../../forecast/ranks.ts";
import { ranksFrom } from "./ranksFrom.ts";
import type { KeptRanks } from "./types.ts";

/** What keepers of the same rows kept together, with nothing left in lists: a few numbers a row instead of kilobytes. */
export interface SettledRanks {
  /** Each bracket is the one value that was wanted, or missed, as those of the parts. */
  kept: KeptRanks;
  /** Settles the rows from `first` on, as many as the parts have: one part of each keeper. */
  settle(first: number, parts: readonly KeptRanks[]): void;
}

/** For so many rows, of keepers with these probabilities. Until a row is settled it counts as missed. */
export function settledRanks(rows: number, ps: readonly number[]): SettledRanks {
  const count = rows * ps.length;
  const kept: KeptRanks = {
    ps: Float64Array.from(ps),
    seen: new Float64Array(rows),
    low: new Float64Array(count).fill(Number.POSITIVE_INFINITY),
    high: new Float64Array(count).fill(Number.NEGATIVE_INFINITY),
    below: new Float64Array(count),
    atLow: new Float64Array(count),
    atHigh: new Float64Array(count),
    from: new Float64Array(rows + 1),
    values: new Float64Array(0),
  };
  return {
    kept,
    settle(first, parts) {
      const length = parts[0]?.seen.length ?? 0;
      for (let row = 0; row < length; row++) {
        const n = parts.reduce((sum, { seen }) => sum + (seen[row] as number), 0);
        kept.seen[first + row] = n;
        ranksFrom(parts, row).forEach((value, p) => {
          if (value === undefined) return;
          const i = (first + row) * ps.length + p;
          kept.low[i] = value;
          kept.high[i] = value;
          kept.below[i] = rankOf(ps[p] as number, n) - 1;
          kept.atLow[i] = 1;
        });
      }
    },
  };
}

import { bracketAt, type RankRows } from "./rankRows.ts";
import type { KeptRanks } from "./types.ts";

/** Copies out what rows `first` up to `end` have kept. */
export function keptOf(
  { ps, lists, held, seen, brackets, counts, owners }: RankRows,
  first: number,
  end: number,
): KeptRanks {
  const count = (end - first) * ps.length;
  const from = new Float64Array(end - first + 1);
  for (let row = first; row < end; row++)
    from[row - first + 1] = (from[row - first] as number) + (held[row] as number);
  const kept: KeptRanks = {
    ps: Float64Array.from(ps),
    seen: seen.slice(first, end),
    low: new Float64Array(count),
    high: new Float64Array(count),
    below: new Float64Array(count),
    atLow: new Float64Array(count),
    atHigh: new Float64Array(count),
    from,
    values: new Float64Array(from[end - first] as number),
  };
  for (let row = first; row < end; row++) {
    const list = lists[row] as Float64Array;
    kept.values.set(list.subarray(0, held[row]), from[row - first]);
    const givenUp = counts[row] === 0;
    for (let p = 0; p < ps.length; p++) {
      const i = (row - first) * ps.length + p;
      const bracket = bracketAt(brackets[row] as Float64Array, owners[row * ps.length + p] as number);
      kept.low[i] = givenUp ? Number.POSITIVE_INFINITY : bracket.low;
      kept.high[i] = givenUp ? Number.NEGATIVE_INFINITY : bracket.high;
      kept.below[i] = bracket.below;
      kept.atLow[i] = bracket.atLow;
      kept.atHigh[i] = bracket.atHigh;
    }
  }
  return kept;
}

import { bracketAt, type RankRows } from "./rankRows.ts";
import type { KeptRanks } from "./types.ts";

/** Copies out what rows have kept. */
export function keptOf(rows: RankRows): KeptRanks {
  const { ps, lists, held } = rows;
  const count = lists.length * ps.length;
  const from = new Float64Array(lists.length + 1);
  for (let row = 0; row < lists.length; row++) from[row + 1] = (from[row] as number) + (held[row] as number);
  const kept: KeptRanks = {
    ps: Float64Array.from(ps),
    seen: rows.seen.slice(),
    low: new Float64Array(count),
    high: new Float64Array(count),
    below: new Float64Array(count),
    atLow: new Float64Array(count),
    atHigh: new Float64Array(count),
    from,
    values: new Float64Array(from[lists.length] as number),
  };
  lists.forEach((list, row) => {
    kept.values.set(list.subarray(0, held[row]), from[row]);
    const brackets = rows.brackets[row] as Float64Array;
    const givenUp = rows.counts[row] === 0;
    for (let i = row * ps.length; i < (row + 1) * ps.length; i++) {
      const bracket = bracketAt(brackets, rows.owners[i] as number);
      kept.low[i] = givenUp ? Number.POSITIVE_INFINITY : bracket.low;
      kept.high[i] = givenUp ? Number.NEGATIVE_INFINITY : bracket.high;
      kept.below[i] = bracket.below;
      kept.atLow[i] = bracket.atLow;
      kept.atHigh[i] = bracket.atHigh;
    }
  });
  return kept;
}

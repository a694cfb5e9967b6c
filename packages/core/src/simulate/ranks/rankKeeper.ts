import type { Kernel } from "../../kernel/index.ts";
import { keptOf } from "./keptOf.ts";
import { leastStep } from "./listLength.ts";
import { holdsAll, type RankRows, rankRows } from "./rankRows.ts";
import { tighten } from "./tighten.ts";
import type { RankKeeper } from "./types.ts";

/**
 * Keeps what is needed to read exact percentiles off rows that are seen only once, in `bytesOfRanks` of the kernel's
 * arena.
 *
 * @param n   How many values each row has in the end, over all keepers together (threads with stretches of their own).
 *            With fewer the answer is the same; with more it may be missed.
 * @param ps  Probabilities from 0 to 1, up to 255, in any order.
 *
 * Method  A list holds everything until it is full. Then each probability gets a bracket: the values at the ranks which
 *         the wanted value, as far as chance goes, can have among those seen (`spread`). From then on values below a
 *         bracket and at its ends are counted, and only those inside are kept; whenever the list is full the brackets
 *         are tightened. Counts are exact whatever comes, so the answer is right or known to be missed.
 */
export function rankKeeper(kernel: Kernel, rows: number, n: number, ps: readonly number[]): RankKeeper {
  const all = rankRows(kernel, rows, n, ps);
  return {
    absorb: (row, values, count) => absorb(all, row, values, count),
    result(from = 0, to = rows) {
      for (let row = from; row < to; row++) {
        if ((all.held[row] as number) > 0)
          tighten(all, row, all.lists[row] as Float64Array, all.held[row] as number);
      }
      return keptOf(all, from, to);
    },
  };
}

function absorb(rows: RankRows, row: number, values: Float64Array, n: number): void {
  const list = rows.lists[row] as Float64Array;
  const brackets = rows.brackets[row] as Float64Array;
  if (n > list.length && rows.seen[row] === 0) {
    rows.seen[row] = n;
    tighten(rows, row, values, n);
    return;
  }
  for (let at = 0; at < n; ) {
    const count = rows.counts[row] as number;
    if (count === 0) return;
    const held = rows.held[row] as number;
    const step = Math.min(n - at, list.length - held);
    if (step < Math.min(n - at, leastStep)) {
      tighten(rows, row, list, held);
      // Tight brackets hold far less than a list does; but no input may go round and round here.
      if ((rows.held[row] as number) >= held) rows.counts[row] = 0;
      continue;
    }
    if (holdsAll(rows, row)) {
      list.set(values.subarray(at, at + step), held);
      rows.held[row] = held + step;
    } else rows.held[row] = rows.kernel.absorb(values, at, at + step, brackets, count, list, held);
    rows.seen[row] = (rows.seen[row] as number) + step;
    at += step;
  }
}

import { rankOf } from "../../forecast/ranks.ts";

/** So much of the iterations on either side of a percentile is its neighbourhood; at least `fewest`. */
const beside = 0.05;
const fewest = 25;

/** How a sum at a level divides: parts that add up to it, and how far each may be off. */
export interface Split {
  at: number;
  parts: number[];
  /** Standard errors of the parts. */
  errors: number[];
}

/**
 * Splits the percentile of a total into its parts so that they add up to it: each part is what it is on average in the
 * futures in which the total is about the percentile.
 *
 * Percentiles of parts do not add up to the percentile of their sum (GAO-20-195G, ch. 12); expectations given the sum
 * do, and they are the percentile's own derivatives by the size of each part (Tasche, "Risk contributions and
 * performance measurement", 1999; recalled). They are read off the iterations within 5 % of rank on either side by a
 * line fitted to each part against the total, at the percentile (local linear regression: Fan & Gijbels 1996; recalled).
 * The lines of parts that sum to x sum to x itself, so nothing is left over but rounding, put on the largest.
 *
 * @param total  Length n; the parts, rows of n, add up to it in every iteration.
 *
 * Cost: one sort of n.
 */
export function splitAt(total: Float64Array, parts: readonly Float64Array[], p: number): Split {
  const n = total.length;
  const order = Uint32Array.from({ length: n }, (_, k) => k).sort(
    (a, b) => (total[a] as number) - (total[b] as number) || a - b,
  );
  const rank = rankOf(p, n) - 1;
  const wide = Math.max(fewest, Math.round(beside * n));
  const near = order.subarray(Math.max(0, rank - wide), Math.min(n, rank + wide + 1));
  const at = total[order[rank] as number] as number;
  const middle = meanOver(total, near);
  let squares = 0;
  for (const k of near) squares += ((total[k] as number) - middle) ** 2;
  const found = parts.map((row) => {
    const mean = meanOver(row, near);
    let cross = 0;
    for (const k of near) cross += ((total[k] as number) - middle) * ((row[k] as number) - mean);
    const slope = squares > 0 ? cross / squares : 0;
    let rest = 0;
    for (const k of near) rest += ((row[k] as number) - mean - slope * ((total[k] as number) - middle)) ** 2;
    return { part: mean + slope * (at - middle), error: Math.sqrt(rest) / near.length };
  });
  return {
    at,
    parts: addingUpTo(
      at,
      found.map(({ part }) => part),
    ),
    errors: found.map(({ error }) => error),
  };
}

/** The parts with what is missing to the whole put on the largest. */
function addingUpTo(whole: number, parts: number[]): number[] {
  let largest = 0;
  for (let i = 1; i < parts.length; i++)
    if (Math.abs(parts[i] as number) > Math.abs(parts[largest] as number)) largest = i;
  const others = parts.reduce((sum, part, i) => (i === largest ? sum : sum + part), 0);
  return parts.map((part, i) => (i === largest ? whole - others : part));
}

function meanOver(row: Float64Array, which: Uint32Array): number {
  let sum = 0;
  for (const k of which) sum += row[k] as number;
  return sum / which.length;
}

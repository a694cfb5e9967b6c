import type { Row } from "./jointChance.ts";

/** The same rank on both rows and what it means. */
export interface EqualLevel {
  /** rank / n: the share of iterations that keep the day alone, and the sum alone, at least. */
  level: number;
  day: number;
  cost: number;
}

/**
 * The smallest level at which the day and the sum of that level, each the percentile of its own row, are kept
 * together by at least `count` iterations; levels go in steps of 1 / n.
 *
 * An iteration keeps both at rank r when neither its day nor its cost comes later than r in its row in ascending
 * order (equal values count as the first of them), so the rank asked for is the count-th smallest of the larger of
 * the two places. Cost: three sorts of n.
 */
export function equalLevel(days: Row, costs: Row, count: number): EqualLevel {
  const n = days.length;
  const sortedDays = Float64Array.from(days).sort();
  const sortedCosts = Float64Array.from(costs).sort();
  const places = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    const place = Math.max(
      firstPlace(sortedDays, days[k] as number),
      firstPlace(sortedCosts, costs[k] as number),
    );
    places[k] = place;
  }
  const rank = places.sort()[Math.min(n, Math.max(1, count)) - 1] as number;
  return { level: rank / n, day: sortedDays[rank - 1] as number, cost: sortedCosts[rank - 1] as number };
}

/** The 1-based place of the first value that is not smaller than x. */
function firstPlace(sorted: Float64Array, x: number): number {
  let low = 0;
  let high = sorted.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < x) low = middle + 1;
    else high = middle;
  }
  return low + 1;
}

/** One number per iteration. */
export type Row = ArrayLike<number>;

/** Shares of iterations that keep the day, the sum, and both; meeting one exactly keeps it. */
export interface Kept {
  finish: number;
  cost: number;
  both: number;
}

/**
 * Counts the iterations with `days[k] <= day`, with `costs[k] <= cost`, and with both, as shares. Cost: n steps.
 *
 * Source: NASA Cost Estimating Handbook 4.0, appendix J (digest read): the joint confidence level is the share of
 * the points in the lower left quadrant of the scatter plot.
 */
export function jointChance(days: Row, costs: Row, day: number, cost: number): Kept {
  const n = days.length;
  let timely = 0;
  let paid = 0;
  let both = 0;
  for (let k = 0; k < n; k++) {
    const inTime = (days[k] as number) <= day;
    const inSum = (costs[k] as number) <= cost;
    if (inTime) timely++;
    if (inSum) paid++;
    if (inTime && inSum) both++;
  }
  return { finish: timely / n, cost: paid / n, both: both / n };
}

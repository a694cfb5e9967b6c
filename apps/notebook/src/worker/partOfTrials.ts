import type { TrialSums, Trials } from "@leeway/core";

/**
 * For trials that keep moments iteration by iteration: iterations `from` to `from + count` of trials as trials of their own: views of the same memory, with other sums.
 * Written into, they fill the whole; summarised, they answer for their own iterations alone.
 */
export function partOfTrials(trials: Trials, from: number, count: number, sums: TrialSums): Trials {
  const part = (row: Float64Array): Float64Array => row.subarray(from, from + count);
  const { worth, months, unlimited } = trials;
  return {
    seed: trials.seed,
    design: trials.design,
    iterations: count,
    finish: part(trials.finish),
    finishDay: trials.finishDay.subarray(from, from + count),
    cost: part(trials.cost),
    starts: trials.starts.map(part),
    finishes: trials.finishes.map(part),
    moments: undefined,
    intervals: trials.intervals.map(part),
    sums,
    lateness: trials.lateness === undefined ? undefined : part(trials.lateness),
    worth: worth === undefined ? undefined : { net: part(worth.net), payback: part(worth.payback) },
    months: months === undefined ? undefined : { months: months.months, rows: months.rows.map(part) },
    unlimited:
      unlimited === undefined ? undefined : { finish: part(unlimited.finish), cost: part(unlimited.cost) },
  };
}

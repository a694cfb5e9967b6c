import type { OutcomesEstimate } from "../plan/types.ts";

/** Outcomes ready for drawing: ascending values, and the chance of each or a smaller one. */
export interface OutcomeTable {
  readonly values: Float64Array;
  /** Plus 1e-9: a probability that differs from a sum of chances by rounding alone meets it. The last is infinite. */
  readonly upTo: Float64Array;
}

/** Prepares outcomes for `fillFromOutcomes`; both arrays have one entry per outcome. */
export function outcomeTable(estimate: OutcomesEstimate): OutcomeTable {
  const n = estimate.outcomes.length;
  const values = new Float64Array(n);
  const upTo = new Float64Array(n);
  let sum = 0;
  for (let k = 0; k < n; k++) {
    const outcome = estimate.outcomes[k];
    if (outcome === undefined) break;
    sum += outcome.chance;
    values[k] = outcome.value;
    upTo[k] = sum + 1e-9;
  }
  if (n > 0) upTo[n - 1] = Number.POSITIVE_INFINITY;
  return { values, upTo };
}

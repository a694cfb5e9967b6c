import type { Estimate } from "../../plan/types.ts";
import { lawOf } from "../../sampling/shapes/lawOf.ts";

/** The chance that a draw of an estimate lies below zero, to 1e-6: what would be cut at zero. */
export function zeroShare(estimate: Estimate): number {
  if (estimate.kind === "fixed") return estimate.value < 0 ? 1 : 0;
  if (estimate.kind === "outcomes") {
    return estimate.outcomes.reduce((sum, { value, chance }) => sum + (value < 0 ? chance : 0), 0);
  }
  if (estimate.low >= 0 && estimate.bounds === "extremes") return 0;
  const law = lawOf(estimate);
  let low = 1e-9;
  let high = 1 - 1e-9;
  if (law.quantile(low) >= 0) return 0;
  if (law.quantile(high) < 0) return 1;
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (law.quantile(middle) < 0) low = middle;
    else high = middle;
  }
  return high;
}

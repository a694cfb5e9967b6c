import type { Estimate } from "../../plan/types.ts";
import { estimateQuantile } from "../../sampling/estimateQuantile.ts";
import { lawOf } from "../../sampling/shapes/lawOf.ts";

/** P(value <= x) of any estimate. */
export function estimateChance(estimate: Estimate, x: number): number {
  if (estimate.kind === "fixed") return x >= estimate.value ? 1 : 0;
  if (estimate.kind === "range") return lawOf(estimate).cdf(x);
  return estimate.outcomes.reduce((sum, { value, chance }) => (x >= value ? sum + chance : sum), 0);
}

/**
 * The value not exceeded with probability p when one of the estimates holds, each with the same chance: the quantile of
 * averaged probabilities (a linear pool). All in one unit, at least one.
 *
 * Error  within 1e-9 of the distance of the outermost quantiles at p, by bisection.
 */
export function mixtureQuantile(estimates: readonly Estimate[], p: number): number {
  const at = estimates.map((estimate) => estimateQuantile(estimate, p));
  let low = Math.min(...at);
  let high = Math.max(...at);
  const laws = estimates.map((estimate) =>
    estimate.kind === "range" ? lawOf(estimate).cdf : (x: number) => estimateChance(estimate, x),
  );
  const chance = (x: number) => laws.reduce((sum, cdf) => sum + cdf(x), 0) / laws.length;
  if (chance(low) >= p) return low;
  for (let step = 0; step < 60 && high > low; step++) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) break;
    if (chance(middle) < p) low = middle;
    else high = middle;
  }
  return high;
}

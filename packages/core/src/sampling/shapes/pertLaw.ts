import { exponential } from "../math/exponential.ts";
import { logarithm } from "../math/logarithm.ts";
import { type BetaSide, betaSide } from "./betaSide.ts";
import type { StandardLaw } from "./standardForm.ts";

/**
 * The PERT law on [0, 1] with its mode at x: the beta law with alpha = 1 + 4x, beta = 5 - 4x.
 *
 * Error  of the quantiles below 1e-12 relative, from either end (tests/reference/sampling/functions.test.ts).
 * Cost   about 1 microsecond a quantile.
 * Source Malcolm, Roseboom, Clark & Fazar (1959), Operations Research 7(5), 646-669 (mean = (min + 4 mode + max) / 6);
 *        the variance is the beta law's own, (mean - min)(max - mean) / 7, not (max - min)^2 / 36.
 */
export function pertLaw(x: number): StandardLaw {
  const left = betaSide(4 * x);
  const right = betaSide(4 - 4 * x);
  const mean = (1 + 4 * x) / 6;
  return {
    min: 0,
    max: 1,
    mean,
    sd: Math.sqrt((mean * (1 - mean)) / 7),
    mode: x,
    lower: (u) => quantile(left, right, u),
    upper: (w) => 1 - quantile(right, left, w),
    cdf: (z) => (z <= 0 ? 0 : z >= 1 ? 1 : z <= 0.5 ? left.cdf(z) : 1 - right.cdf(1 - z)),
  };
}

/** The quantile at p, seen from the end that `near` describes. */
function quantile(near: BetaSide, far: BetaSide, p: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return 1;
  return p <= near.atHalf ? inHalf(near, p) : 1 - inHalf(far, 1 - p);
}

function inHalf(side: BetaSide, p: number): number {
  const logP = logarithm(p);
  return exponential(side.logQuantile(logP, (logP + side.logAlphaB) / side.alpha));
}

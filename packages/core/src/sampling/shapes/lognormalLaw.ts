import { normalCdf } from "../dependence/normalCdf.ts";
import { normalScore } from "../dependence/normalScore.ts";
import { exponential } from "../math/exponential.ts";
import { logarithm } from "../math/logarithm.ts";
import type { StandardLaw } from "./standardForm.ts";

/**
 * The lognormal law with median 1: exp(sigma Z).
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.6.9.
 */
export function lognormalLaw(sigma: number): StandardLaw {
  const variance = sigma * sigma;
  const mean = exponential(variance / 2);
  return {
    min: 0,
    max: Number.POSITIVE_INFINITY,
    mean,
    sd: mean * Math.sqrt(exponential(variance) - 1),
    mode: exponential(-variance),
    lower: (u) => exponential(sigma * normalScore(u)),
    upper: (w) => exponential(-sigma * normalScore(w)),
    cdf: (z) => (z <= 0 ? 0 : normalCdf(logarithm(z) / sigma)),
  };
}

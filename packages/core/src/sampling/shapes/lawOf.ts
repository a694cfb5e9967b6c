import type { RangeEstimate, Shape } from "../../plan/types.ts";
import { boundsProbability } from "./boundsProbability.ts";
import { standardise } from "./standardise.ts";
import { standardLaw } from "./standardLaw.ts";

/** The law of an estimate, in the unit it was written in. */
export interface Law {
  readonly shape: Shape;
  /** The ends of its support; infinite where there is none. */
  readonly min: number;
  readonly max: number;
  readonly mean: number;
  readonly sd: number;
  /** Undefined for uniform. */
  readonly mode: number | undefined;
  /** The value that is not exceeded with probability p, 0 <= p <= 1. */
  quantile(p: number): number;
  /** P(value <= x). */
  cdf(x: number): number;
}

/**
 * The exact law of a range estimate: its family's member with that mode and those bounds. Nothing is converted and
 * nothing is cut at zero.
 *
 * Error  quantiles are within 1e-12 of (high - low), or of the value; rising in p up to rounding (1e-14).
 * Cost   a few microseconds; a pert quantile about 1.
 */
export function lawOf(estimate: RangeEstimate): Law {
  const { shape, parameter, shift, scale } = standardise(estimate);
  const law = standardLaw(shape, parameter);
  const exact = boundsProbability(estimate.bounds) === 0;
  const min = shift + scale * law.min;
  // Rounding must not carry the end of the support past the high that was written.
  const max = exact ? estimate.high : shift + scale * law.max;
  const within = (x: number): number => Math.min(x, max);
  return {
    shape,
    min,
    max,
    mean: shift + scale * law.mean,
    sd: scale * law.sd,
    mode: law.mode === undefined ? undefined : exact ? estimate.likely : shift + scale * law.mode,
    quantile: (p) => within(shift + scale * (p <= 0.5 ? law.lower(p) : law.upper(1 - p))),
    cdf: (x) => law.cdf((x - shift) / scale),
  };
}

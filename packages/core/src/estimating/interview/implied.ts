import type { Estimate } from "../../plan/types.ts";
import { estimateMean } from "../../sampling/estimateMean.ts";
import { estimateQuantile } from "../../sampling/estimateQuantile.ts";
import { lawOf } from "../../sampling/shapes/lawOf.ts";
import type { Implied } from "./types.ts";

/** What an estimate says: median, mean, the one-in-ten values and the ends of its curve, nothing cut at zero. */
export function impliedBy(estimate: Estimate): Implied {
  const result: Implied = {
    p10: estimateQuantile(estimate, 0.1),
    p50: estimateQuantile(estimate, 0.5),
    p90: estimateQuantile(estimate, 0.9),
    mean: estimateMean(estimate),
    belowZero: 0,
  };
  if (estimate.kind !== "range") return result;
  const law = lawOf(estimate);
  if (Number.isFinite(law.min)) result.min = law.min;
  if (Number.isFinite(law.max)) result.max = law.max;
  if (law.min < 0) result.belowZero = law.cdf(0);
  return result;
}

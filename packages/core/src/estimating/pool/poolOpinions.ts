import { shapeRules } from "../../plan/shapes.ts";
import type { Estimate, Opinion } from "../../plan/types.ts";
import { estimateQuantile } from "../../sampling/estimateQuantile.ts";
import type { OpinionOf } from "../askable.ts";
import { latestOpinions } from "../latestOpinions.ts";
import { disagreementOf } from "./disagreement.ts";
import { commonTerms, inUnit, threePoints } from "./restate.ts";
import type { PooledVoice, Pooling } from "./types.ts";

/** How opinions are put together. */
export interface PoolOptions {
  /** Default `duration`. */
  of?: OpinionOf;
  /** Working days in a week, where some opinions are in weeks and some in days (default 5). */
  daysPerWeek?: number;
}

/**
 * Opinions of one estimate as one: the average of their values at the same chance, everybody weighing the same.
 *
 * Low, likely and high are the averages of the lows, likelies and highs. With bounds that are percentiles this is the
 * average of quantiles at those two levels; at all other levels it is too when the curves are of one location-scale
 * family, x = a + b z: the average of a_i + b_i z(p) is (mean a) + (mean b) z(p), so locations and scales are averaged
 * and the shape stays. For pert curves of different skewness the fitted curve differs a little: `curveGap` says how much.
 * Averaging chances instead widens the range by the disagreement itself; `disagreement.either` shows that.
 * Source: Lichtendahl, Grushka-Cockayne & Winkler (2013), "Is It Better to Average Probabilities or Quantiles?",
 * Management Science 59(7), 1594-1611, doi 10.1287/mnsc.1120.1667 (abstract read: same mean as the average of chances,
 * lower variance; the algebra above is ours).
 *
 * @returns Undefined where nobody has said anything of it.
 */
export function poolOpinions(opinions: readonly Opinion[], options: PoolOptions = {}): Pooling | undefined {
  const { of = "duration", daysPerWeek = 5 } = options;
  const latest = latestOpinions(opinions, of);
  if (latest.length === 0) return undefined;
  const terms = commonTerms(latest);
  const { shape, bounds, unit } = terms;
  const estimates = latest.map(({ estimate }) => inUnit(estimate, unit, daysPerWeek));
  const voices = latest.map((opinion, index): PooledVoice => {
    const { by, date, basis, dissent } = opinion;
    return {
      by,
      ...(date !== undefined && { date }),
      ...threePoints(estimates[index] ?? opinion.estimate, bounds),
      ...(basis !== undefined && { basis }),
      ...(dissent !== undefined && { dissent }),
    };
  });
  const mean = (key: "low" | "likely" | "high") =>
    voices.reduce((sum, voice) => sum + voice[key], 0) / voices.length;
  const low = mean("low");
  const high = mean("high");
  // Rounding may carry an average past another that it equals.
  const likely = Math.min(high, Math.max(low, mean("likely")));
  const estimate = pooledEstimate({ low, likely, high }, terms);
  return {
    of,
    unit,
    shape,
    bounds,
    estimate,
    low,
    likely,
    high,
    voices,
    restated: terms.restated,
    curveGap: curveGap(estimate, estimates),
    disagreement: disagreementOf(voices, estimates, { low, high }),
  };
}

function pooledEstimate(
  { low, likely, high }: { low: number; likely: number; high: number },
  { shape, bounds, unit }: ReturnType<typeof commonTerms>,
): Estimate {
  if (low === high) return { kind: "fixed", value: low, unit };
  return { kind: "range", low, ...(shapeRules[shape].takesLikely && { likely }), high, shape, bounds, unit };
}

/** See `Pooling.curveGap`. */
function curveGap(pooled: Estimate, estimates: readonly Estimate[]): number {
  if (pooled.kind !== "range") return 0;
  let gap = 0;
  for (let step = 1; step < 20; step++) {
    const p = step / 20;
    const average =
      estimates.reduce((sum, estimate) => sum + estimateQuantile(estimate, p), 0) / estimates.length;
    gap = Math.max(gap, Math.abs(estimateQuantile(pooled, p) - average));
  }
  return gap / (pooled.high - pooled.low);
}

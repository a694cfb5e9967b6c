import type { Bounds, Estimate, Opinion, Shape, TimeUnit } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/asWrittenValue.ts";
import { estimateQuantile } from "../../sampling/estimateQuantile.ts";
import { boundsProbability } from "../../sampling/shapes/boundsProbability.ts";

/** Shape, bounds and unit that a set of opinions can share. */
export interface CommonTerms {
  shape: Shape;
  bounds: Bounds;
  unit: TimeUnit;
  /** Some are stated otherwise. */
  restated: boolean;
}

/** The terms all ranges are stated in where they agree; otherwise one-in-ten values of a pert, in days. */
export function commonTerms(opinions: readonly Opinion[]): CommonTerms {
  const ranges = opinions.flatMap(({ estimate }) => (estimate.kind === "range" ? [estimate] : []));
  const units = new Set(opinions.map(({ estimate }) => estimate.unit));
  const terms = new Set(ranges.map(({ shape, bounds }) => `${shape} ${bounds}`));
  const [first] = ranges;
  const unit: TimeUnit = units.size === 1 && units.has("weeks") ? "weeks" : "days";
  const alike = first !== undefined && terms.size === 1;
  const { shape, bounds } = alike ? first : { shape: "pert" as const, bounds: "p10-p90" as const };
  return { shape, bounds, unit, restated: terms.size > 1 || units.size > 1 };
}

/** An estimate in another unit; a week is `daysPerWeek` working days. */
export function inUnit(estimate: Estimate, unit: TimeUnit, daysPerWeek: number): Estimate {
  if (estimate.unit === unit) return estimate;
  const by = unit === "days" ? daysPerWeek : 1 / daysPerWeek;
  if (estimate.kind === "fixed") return { ...estimate, value: estimate.value * by, unit };
  if (estimate.kind === "outcomes") {
    const outcomes = estimate.outcomes.map(({ value, chance }) => ({ value: value * by, chance }));
    return { kind: "outcomes", outcomes, unit };
  }
  const { low, likely, high } = estimate;
  return {
    ...estimate,
    low: low * by,
    high: high * by,
    unit,
    ...(likely !== undefined && { likely: likely * by }),
  };
}

/** Low, likely and high of an estimate as the bounds mean them; exact where it is stated in them already. */
export function threePoints(
  estimate: Estimate,
  bounds: Bounds,
): { low: number; likely: number; high: number } {
  const likely = asWrittenValue(estimate);
  if (estimate.kind === "range" && estimate.bounds === bounds) {
    return { low: estimate.low, likely, high: estimate.high };
  }
  const p = boundsProbability(bounds);
  const low = estimateQuantile(estimate, p);
  const high = estimateQuantile(estimate, 1 - p);
  // Of a very skew range the most likely value lies beyond its own one-in-ten value.
  return { low, likely: Math.min(high, Math.max(low, likely)), high };
}

import type { Bounds, RangeEstimate, Shape } from "@leeway/core";

/** A range estimate in days; `likely` left out when undefined. */
export function range(
  low: number,
  likely: number | undefined,
  high: number,
  shape: Shape = "pert",
  bounds: Bounds = "extremes",
): RangeEstimate {
  const estimate: RangeEstimate = { kind: "range", low, high, shape, bounds, unit: "days" };
  return likely === undefined ? estimate : { ...estimate, likely };
}

/** |a - b| relative to b. */
export function relativeError(a: number, b: number): number {
  return a === b ? 0 : Math.abs(a - b) / Math.abs(b);
}

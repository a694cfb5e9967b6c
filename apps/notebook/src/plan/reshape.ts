import type { Bounds, RangeEstimate, Shape } from "@leeway/core";
import { data } from "./removeTask.ts";

export const shapeNames: readonly (readonly [Shape, string])[] = [
  ["pert", "smooth (PERT)"],
  ["triangular", "triangle"],
  ["uniform", "all alike (uniform)"],
  ["normal", "bell (normal)"],
  ["lognormal", "long tail (lognormal)"],
];
export const boundsNames: readonly (readonly [Bounds, string])[] = [
  ["extremes", "least and most"],
  ["p10-p90", "one in ten beyond"],
  ["p5-p95", "one in twenty beyond"],
];

/** Shapes that are given by low and high alone. */
const withoutLikely: readonly Shape[] = ["uniform", "normal", "lognormal"];
/** Shapes that have no least and no most. */
const unbounded: readonly Shape[] = ["normal", "lognormal"];

/**
 * A range with another shape, or other bounds, as the document says it: a shape that takes no likely value loses it, one
 * that needs it gets the middle, and one that has no ends is given by values that one in ten go beyond.
 *
 * @param stated  What stands in the document; keys beside those of the range stay.
 */
export function reshape(
  estimate: RangeEstimate,
  change: { shape?: Shape; bounds?: Bounds },
  stated: unknown,
): Record<string, unknown> {
  const { low, high } = estimate;
  const shape = change.shape ?? estimate.shape;
  const asked = change.bounds ?? estimate.bounds;
  const bounds = unbounded.includes(shape) && asked === "extremes" ? "p10-p90" : asked;
  const { likely: _likely, ...rest } = data(Array.isArray(stated) ? {} : stated);
  const likely = estimate.likely ?? (low + high) / 2;
  return { ...rest, low, ...(withoutLikely.includes(shape) ? {} : { likely }), high, shape, bounds };
}

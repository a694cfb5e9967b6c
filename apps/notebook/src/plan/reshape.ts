import { shapeWords } from "@leeway/charts";
import { type Bounds, type RangeEstimate, SHAPES, type Shape, shapeRules } from "@leeway/core";
import { data } from "./removeTask.ts";

export const shapeNames = SHAPES.map((shape) => [shape, shapeWords[shape]] as const);
export const boundsNames: readonly (readonly [Bounds, string])[] = [
  ["extremes", "least and most"],
  ["p10-p90", "one in ten beyond"],
  ["p5-p95", "one in twenty beyond"],
];

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
  const bounds = shapeRules[shape].ends !== "both" && asked === "extremes" ? "p10-p90" : asked;
  const { likely: _likely, ...rest } = data(Array.isArray(stated) ? {} : stated);
  const likely = estimate.likely ?? (low + high) / 2;
  return { ...rest, low, ...(shapeRules[shape].takesLikely ? { likely } : {}), high, shape, bounds };
}

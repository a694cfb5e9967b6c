import { lawOf, type RangeEstimate } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { densityPoints } from "../../../packages/charts/src/curves/densityPoints.ts";

const uniform: RangeEstimate = {
  kind: "range",
  low: 2,
  high: 6,
  shape: "uniform",
  bounds: "extremes",
  unit: "days",
};

// A density integrates to one; a uniform one is 1 / (high - low) everywhere, a triangular one peaks at 2 / (high - low).
describe("densityPoints(law)", () => {
  it("of a uniform law is level", () => {
    for (const { density } of densityPoints(lawOf(uniform))) expect(density).toBeCloseTo(0.25, 9);
  });

  it("of a triangular law rises to its mode and holds all chance", () => {
    const points = densityPoints(lawOf({ ...uniform, likely: 3, shape: "triangular" }));
    const peak = points.reduce((best, point) => (point.density > best.density ? point : best));
    expect(peak.at).toBeCloseTo(3, 1);
    expect(peak.density).toBeCloseTo(0.5, 1);
    const area = points.slice(1).reduce((sum, { at, density }, k) => {
      const before = points[k];
      return sum + ((at - (before?.at ?? at)) * (density + (before?.density ?? 0))) / 2;
    }, 0);
    expect(area).toBeCloseTo(1, 3);
  });
});

// Pooling by averaged quantiles. Lichtendahl, Grushka-Cockayne & Winkler (2013), "Is It Better to Average Probabilities
// or Quantiles?", Management Science 59(7), 1594-1611 (abstract read): both averages have the same mean, and the average
// of quantiles always has the lower variance. The location-scale algebra is worked by hand beside each check.
import {
  estimateQuantile,
  mixtureQuantile,
  type Opinion,
  poolOpinions,
  type RangeEstimate,
} from "@leeway/core";
import { describe, expect, it } from "vitest";

const range = (
  low: number,
  likely: number,
  high: number,
  more: Partial<RangeEstimate> = {},
): RangeEstimate => ({
  kind: "range",
  low,
  likely,
  high,
  shape: "pert",
  bounds: "p10-p90",
  unit: "days",
  ...more,
});
const says = (by: string, estimate: Opinion["estimate"], more: Partial<Opinion> = {}): Opinion => ({
  by,
  of: "duration",
  estimate,
  ...more,
});
const normal = (low: number, high: number): RangeEstimate => {
  const { likely: _, ...rest } = range(low, low, high, { shape: "normal" });
  return rest;
};

describe("poolOpinions(opinions)", () => {
  it("averages the three values, everybody weighing the same", () => {
    // By hand: (4 + 6 + 8) / 3, (5 + 9 + 13) / 3, (9 + 15 + 18) / 3.
    const pooled = poolOpinions([
      says("ana", range(4, 5, 9)),
      says("ben", range(6, 9, 15)),
      says("cid", range(8, 13, 18)),
    ]);
    expect(pooled).toMatchObject({
      low: 6,
      likely: 9,
      high: 14,
      bounds: "p10-p90",
      shape: "pert",
      restated: false,
    });
    expect(pooled?.estimate).toEqual(range(6, 9, 14));
  });

  it("averages locations and scales of one location-scale family, at every level", () => {
    // Normal with mean m and standard deviation s: quantile m + s z(p). Of N(10, 2) and N(20, 4) the averaged
    // quantiles are those of N(15, 3). z(0.9) = 1.2815515655446004 and z(0.975) = 1.959963984540054 (tables).
    const z = 1.2815515655446004;
    const pooled = poolOpinions([
      says("ana", normal(10 - 2 * z, 10 + 2 * z)),
      says("ben", normal(20 - 4 * z, 20 + 4 * z)),
    ]);
    if (pooled === undefined) throw new Error("nothing pooled");
    expect(estimateQuantile(pooled.estimate, 0.5)).toBeCloseTo(15, 9);
    expect(estimateQuantile(pooled.estimate, 0.975)).toBeCloseTo(15 + 3 * 1.959963984540054, 9);
    expect(pooled.curveGap).toBeLessThan(1e-9);
  });

  it("is exact at every level for triangles and perts of the same skewness", () => {
    for (const shape of ["pert", "triangular"] as const) {
      const pooled = poolOpinions([
        says("ana", range(2, 3, 6, { shape, bounds: "extremes" })),
        says("ben", range(10, 12, 18, { shape, bounds: "extremes" })),
      ]);
      expect(pooled?.curveGap).toBeLessThan(1e-9);
    }
  });

  it("says how far the fitted curve is from the averaged quantiles where skewness differs", () => {
    const pooled = poolOpinions([says("ana", range(2, 2.2, 9)), says("ben", range(4, 10.5, 11))]);
    expect(pooled?.curveGap).toBeGreaterThan(0.001);
    expect(pooled?.curveGap).toBeLessThan(0.1);
  });

  it("counts what each person said last", () => {
    const pooled = poolOpinions([
      says("ana", range(40, 50, 60), { date: "2026-05-01" }),
      says("ana", range(4, 5, 9), { date: "2026-06-01" }),
      says("ana", range(30, 50, 60)),
    ]);
    expect(pooled).toMatchObject({ low: 4, likely: 5, high: 9, disagreement: { level: "one" } });
  });

  it("restates other bounds as one-in-ten values, and weeks as days", () => {
    // Triangle 0, 0, 10: F(x) = 1 - (1 - x/10)^2, so its one-in-ten values are 10 (1 - sqrt 0.9) and 10 (1 - sqrt 0.1).
    const pooled = poolOpinions(
      [
        says("ana", range(0, 0, 10, { shape: "triangular", bounds: "extremes" })),
        says("ben", { kind: "fixed", value: 1, unit: "weeks" }),
        says("cid", range(1, 2, 3, { unit: "weeks" })),
      ],
      { daysPerWeek: 4 },
    );
    expect(pooled).toMatchObject({ restated: true, bounds: "p10-p90", unit: "days" });
    expect(pooled?.low).toBeCloseTo((10 * (1 - Math.sqrt(0.9)) + 4 + 4) / 3, 9);
    expect(pooled?.high).toBeCloseTo((10 * (1 - Math.sqrt(0.1)) + 4 + 12) / 3, 9);
  });

  it("knows nothing of what nobody said", () => {
    expect(poolOpinions([says("ana", range(1, 2, 3))], { of: "cost" })).toBeUndefined();
  });
});

describe("disagreement", () => {
  it("tells who has no value in common with whom, and who is far out", () => {
    // Worked by hand: 20-30 lies above both others; the likely 25 lies in neither, which span 4-10.
    const pooled = poolOpinions([
      says("ana", range(4, 5, 8)),
      says("ben", range(5, 6, 10)),
      says("cid", range(20, 25, 30)),
    ]);
    expect(pooled?.disagreement).toMatchObject({
      level: "apart",
      likelyLow: 5,
      likelyHigh: 25,
      apart: [
        ["ana", "cid"],
        ["ben", "cid"],
      ],
      farOut: [{ by: "cid", side: "high", others: { low: 4, high: 10 } }],
    });
    expect(pooled?.disagreement.common).toBeUndefined();
  });

  it("shows the values if one of them is right and nobody knows who", () => {
    // Two rectangles, 0-10 and 20-30: the averaged chance is 0.1 at 2 (half of 2/10) and 0.9 at 28; the averaged
    // quantiles are 11 and 19.
    const uniform = (low: number, high: number): RangeEstimate => {
      const { likely: _, ...rest } = range(low, low, high, { shape: "uniform", bounds: "extremes" });
      return rest;
    };
    const pooled = poolOpinions([says("ana", uniform(0, 10)), says("ben", uniform(20, 30))]);
    expect(pooled?.disagreement.either.low).toBeCloseTo(2, 6);
    expect(pooled?.disagreement.either.high).toBeCloseTo(28, 6);
    expect(pooled?.disagreement.pooled.low).toBeCloseTo(11, 9);
    expect(pooled?.disagreement.pooled.high).toBeCloseTo(19, 9);
  });

  it("has the mean of the averaged quantiles and more variance, as the paper says", () => {
    const estimates = [range(3, 4, 9), range(5, 9, 20), range(2, 6, 7)];
    const levels = Array.from({ length: 400 }, (_, k) => (k + 0.5) / 400);
    const moments = (quantile: (p: number) => number) => {
      const values = levels.map(quantile);
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      return { mean, variance: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length };
    };
    const quantiles = moments((p) => estimates.reduce((sum, each) => sum + estimateQuantile(each, p), 0) / 3);
    const chances = moments((p) => mixtureQuantile(estimates, p));
    expect(chances.mean).toBeCloseTo(quantiles.mean, 2); // 400 levels
    expect(chances.variance).toBeGreaterThan(quantiles.variance);
  });
});

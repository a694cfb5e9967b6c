import type { Estimate, OutcomesEstimate } from "@leeway/core";
import { describe, expect, it } from "vitest";
import {
  asWrittenValue,
  estimateMean,
  estimateQuantile,
  fillFromOutcomes,
  outcomeTable,
} from "../../../packages/core/src/sampling/index.ts";
import { range } from "./range.ts";

const outcomes = (...pairs: [number, number][]): OutcomesEstimate => ({
  kind: "outcomes",
  outcomes: pairs.map(([value, chance]) => ({ value, chance })),
  unit: "days",
});

// The rules of the plan format, "An estimate"; expected values by hand.
describe("asWrittenValue(estimate)", () => {
  it.each<[string, Estimate, number]>([
    ["a certain value", { kind: "fixed", value: -2, unit: "weeks" }, -2],
    ["the likely value of pert", range(5, 7, 14), 7],
    ["the likely value of triangular, even negative", range(-5, -4, 3, "triangular"), -4],
    ["the likely value with percentile bounds", range(5, 5, 14, "pert", "p10-p90"), 5],
    ["the midpoint of uniform", range(5, undefined, 14, "uniform"), 9.5],
    ["the median of normal", range(40, undefined, 60, "normal", "p5-p95"), 50],
    [
      "the median of lognormal, the geometric mean of its bounds",
      range(4, undefined, 9, "lognormal", "p10-p90"),
      6,
    ],
    ["the most probable outcome", outcomes([3, 0.2], [5, 0.5], [8, 0.3]), 5],
    ["of equally probable outcomes the smallest", outcomes([3, 0.4], [5, 0.4], [8, 0.2]), 3],
  ])("takes %s", (_, estimate, value) => {
    expect(asWrittenValue(estimate)).toBeCloseTo(value, 12);
  });

  it("does not let rounding decide a tie", () => {
    expect(asWrittenValue(outcomes([1, 0.3], [2, 0.1 + 0.2], [3, 0.1], [4, 0.3]))).toBe(1);
  });
});

describe("estimateQuantile(outcomes, p)", () => {
  const estimate = outcomes([3, 0.6], [5, 0.3], [9, 0.1]);

  it("is the smallest value whose cumulative chance reaches p", () => {
    expect([0, 0.1, 0.59, 0.6, 0.61, 0.9, 0.91, 1].map((p) => estimateQuantile(estimate, p))).toEqual([
      3, 3, 3, 3, 5, 5, 9, 9,
    ]);
  });

  it("compares sums to within 1e-9", () => {
    // 0.1 + 0.2 is above 0.3 in doubles and 0.7 + 0.1 below 0.8: neither may push a probability to the next value.
    const tenths = outcomes([1, 0.7], [2, 0.1], [3, 0.2]);
    expect(estimateQuantile(tenths, 0.8)).toBe(2);
    expect(estimateQuantile(tenths, 0.8 + 5e-10)).toBe(2);
    expect(estimateQuantile(tenths, 0.8 + 5e-9)).toBe(3);
  });

  it("is what fillFromOutcomes writes", () => {
    const u = Float64Array.from({ length: 997 }, (_, i) => (i + 0.5) / 997);
    const out = new Float64Array(997);
    fillFromOutcomes(outcomeTable(estimate), u, out, 997);
    const counts = new Map<number, number>();
    out.forEach((value, i) => {
      expect(value).toBe(estimateQuantile(estimate, u[i] ?? Number.NaN));
      counts.set(value, (counts.get(value) ?? 0) + 1);
    });
    expect([...counts]).toEqual([
      [3, 598],
      [5, 299],
      [9, 100],
    ]);
  });
});

describe("estimateMean(estimate)", () => {
  it.each<[string, Estimate, number]>([
    ["a certain value", { kind: "fixed", value: 4, unit: "days" }, 4],
    ["pert", range(4, 5, 12), 6],
    ["triangular", range(10, 15, 40, "triangular"), 65 / 3],
    ["uniform", range(5, undefined, 14, "uniform", "p10-p90"), 9.5],
    ["outcomes", outcomes([3, 0.6], [5, 0.3], [9, 0.1]), 4.2],
  ])("of %s", (_, estimate, mean) => {
    expect(estimateMean(estimate)).toBeCloseTo(mean, 12);
  });
});

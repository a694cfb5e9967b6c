import { type Bounds, type RangeEstimate, SHAPES, shapeRules } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  asWrittenValue,
  fillFromTable,
  lawOf,
  quantileTable,
} from "../../../packages/core/src/sampling/index.ts";
import { standardLaw } from "../../../packages/core/src/sampling/shapes/standardLaw.ts";

// Laws of every quantile function (common practice, no source): rising, within the support, inverse of the
// distribution function, and a fit returns what it was given.

const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** low < high, likely anywhere between, both ends included and often hit. */
const estimates: fc.Arbitrary<RangeEstimate> = fc
  .record({
    shape: fc.constantFrom(...SHAPES),
    bounds: fc.constantFrom<Bounds>("extremes", "p10-p90", "p5-p95"),
    start: finite(0.1, 1000),
    width: finite(1e-3, 1000),
    place: fc.oneof(fc.constantFrom(0, 1), finite(0, 1)),
  })
  .map(({ shape, bounds, start, width, place }) => {
    const { takesLikely, ends } = shapeRules[shape];
    const above = ends === "above-nought";
    const estimate: RangeEstimate = {
      kind: "range",
      low: above ? start : start - 500,
      high: above ? start + Math.min(width, 9 * start) : start - 500 + width,
      shape,
      bounds: ends !== "both" && bounds === "extremes" ? "p10-p90" : bounds,
      unit: "days",
    };
    if (!takesLikely) return estimate;
    const likely = place === 1 ? estimate.high : estimate.low + place * (estimate.high - estimate.low);
    return { ...estimate, likely: Math.min(likely, estimate.high) };
  });

/** What rounding may do: a few steps of the largest number involved. */
const rounding = (estimate: RangeEstimate): number =>
  1e-14 * Math.max(Math.abs(estimate.low), Math.abs(estimate.high), estimate.high - estimate.low);

describe("shapeRules", () => {
  // The engine leaves out the cut at zero where a rule says that no draw needs it: a rule that is wrong is a wrong number.
  const reach = { both: [0, 1], "above-nought": [0, Infinity], none: [-Infinity, Infinity] };

  it.each(SHAPES)("says where the law of %s ends", (shape) => {
    for (const parameter of [0.1, 0.5, 0.9]) {
      const { min, max } = standardLaw(shape, parameter);
      expect([min, max]).toEqual(reach[shapeRules[shape].ends]);
    }
  });

  it("leaves the median as the written value where a shape takes no likely value", () => {
    fc.assert(
      fc.property(
        estimates.filter(({ likely }) => likely === undefined),
        (estimate) => {
          const off = Math.abs(asWrittenValue(estimate) - lawOf(estimate).quantile(0.5));
          expect(off, "see asWrittenValue.ts").toBeLessThan(
            1e-9 * (estimate.high - estimate.low) + rounding(estimate),
          );
        },
      ),
    );
  });
});

describe("lawOf(estimate)", () => {
  it("has quantiles that rise and stay within the support", () => {
    fc.assert(
      fc.property(
        estimates,
        fc.array(finite(0, 1), { minLength: 2, maxLength: 12 }),
        (estimate, probabilities) => {
          const law = lawOf(estimate);
          let previous = law.min;
          for (const p of probabilities.sort((a, b) => a - b)) {
            const value = law.quantile(p);
            expect(value).toBeGreaterThanOrEqual(previous - 10 * rounding(estimate));
            expect(value).toBeLessThanOrEqual(law.max);
            previous = value;
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  it("returns the percentiles and the mode it was fitted to", () => {
    fc.assert(
      fc.property(estimates, (estimate) => {
        const law = lawOf(estimate);
        const width = estimate.high - estimate.low;
        const p = { extremes: 0, "p10-p90": 0.1, "p5-p95": 0.05 }[estimate.bounds];
        const slack = 1e-9 * width + 4 * rounding(estimate);
        expect(Math.abs(law.quantile(p) - estimate.low)).toBeLessThanOrEqual(slack);
        expect(Math.abs(law.quantile(1 - p) - estimate.high)).toBeLessThanOrEqual(slack);
        if (estimate.likely !== undefined) {
          expect(Math.abs((law.mode ?? Number.NaN) - estimate.likely)).toBeLessThanOrEqual(slack);
          expect(law.min).toBeLessThanOrEqual(estimate.low + slack);
          expect(law.max).toBeGreaterThanOrEqual(estimate.high - slack);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it("has a distribution function that undoes its quantiles", () => {
    fc.assert(
      fc.property(estimates, finite(0.001, 0.999), (estimate, p) => {
        const law = lawOf(estimate);
        // The density decides how much of p a rounding of the value is: compared over the width of the law.
        const slack = 1e-10 + (100 * rounding(estimate)) / law.sd;
        expect(Math.abs(law.cdf(law.quantile(p)) - p)).toBeLessThanOrEqual(slack);
      }),
      { numRuns: 500 },
    );
  });
});

describe("quantileTable(estimate)", () => {
  it("draws within 3e-4 of (P90 - P10), or of a lognormal value, of the exact quantile for p in [0.001, 0.999], rising", () => {
    fc.assert(
      fc.property(
        estimates,
        fc.array(finite(0.001, 0.999), { minLength: 1, maxLength: 20 }),
        (estimate, list) => {
          const law = lawOf(estimate);
          const u = Float64Array.from(list).sort();
          const out = new Float64Array(u.length);
          fillFromTable(quantileTable(estimate), u, out, u.length);
          const width = law.quantile(0.9) - law.quantile(0.1);
          u.forEach((p, i) => {
            const exact = law.quantile(p);
            const size = estimate.shape === "lognormal" ? Math.max(width, exact) : width;
            const value = out[i] ?? Number.NaN;
            expect(Math.abs(value - exact)).toBeLessThanOrEqual(3e-4 * size + rounding(estimate));
            if (i > 0) expect(value).toBeGreaterThanOrEqual(out[i - 1] ?? Number.NaN);
          });
        },
      ),
      { numRuns: 300 },
    );
  });
});

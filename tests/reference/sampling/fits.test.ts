import { describe, expect, it } from "vitest";
import { lawOf } from "../../../packages/core/src/sampling/index.ts";
import { chebyshevPoint } from "../../../packages/core/src/sampling/math/chebyshevPoint.ts";
import { modeAt } from "../../../packages/core/src/sampling/shapes/modeAt.ts";
import { pertLaw } from "../../../packages/core/src/sampling/shapes/pertLaw.ts";
import { pertModes } from "../../../packages/core/src/sampling/shapes/pertModes.ts";
import { pertFits, triangularFits } from "./fixtures/highPrecision.ts";
import { range, relativeError } from "./range.ts";

// Bounds that are percentiles widen the law: GAO-20-195G (2020), chapter 12, and the Joint Agency Cost Schedule Risk
// and Uncertainty Handbook (2014), section 2.5, advise it (read in a digest). The figures: solved with scipy.optimize
// and put back into the distribution function.
describe("triangular with low 80, likely 100, high 140 as percentiles", () => {
  it.each([
    ["p10-p90", 58.9548759053, 166.8598360995, 108.6049040016, 22.2351200742, 106.7994167166, 128.8742916045],
    ["p5-p95", 68.2171822007, 155.5818684717, 107.9330168908, 18.0524544479, 106.3076739, 124.4181315283],
    ["extremes", 80, 140, 106.6666666667, 12.4721912892, 105.3589838486, 118.0910976998],
  ] as const)("%s", (bounds, min, max, mean, sd, p50, p80) => {
    const law = lawOf(range(80, 100, 140, "triangular", bounds));
    const found = [law.min, law.max, law.mean, law.sd, law.quantile(0.5), law.quantile(0.8)];
    [min, max, mean, sd, p50, p80].forEach((value, k) => {
      expect(relativeError(found[k] ?? Number.NaN, value)).toBeLessThan(2e-10);
    });
  });
});

// mpmath 1.3 at 50 digits, fixtures/generate.py: the ends of the law, likely value at either bound included.
describe.each([
  ["pert", pertFits],
  ["triangular", triangularFits],
] as const)("%s, ends of the law found from percentiles", (shape, fits) => {
  it.each(fits)(
    "low %d, likely %d, high %d, %d below low: from %d to %d",
    (low, likely, high, p, min, max) => {
      const law = lawOf(range(low, likely, high, shape, p === 0.1 ? "p10-p90" : "p5-p95"));
      expect(Math.abs(law.min - min) / (high - low)).toBeLessThan(1e-9);
      expect(Math.abs(law.max - max) / (high - low)).toBeLessThan(1e-9);
      expect(Math.abs((law.mode ?? Number.NaN) - likely) / (high - low)).toBeLessThan(1e-10);
      expect(Math.abs(law.quantile(p) - low) / (high - low)).toBeLessThan(1e-12);
      expect(Math.abs(law.quantile(1 - p) - high) / (high - low)).toBeLessThan(1e-12);
    },
  );
});

describe("modes that are at hand", () => {
  it.each([...pertModes])("are the ones worked out, to the last bit: p %d", (p, modes) => {
    const exact = modes.map((_, k) => modeAt(pertLaw, p, chebyshevPoint(k / (2 * (modes.length - 1)))));
    expect(modes).toEqual(exact);
  });
});

import { describe, expect, it } from "vitest";
import { estimateQuantile, lawOf } from "../../../packages/core/src/sampling/index.ts";
import { type Expected, expectLaw } from "./expectLaw.ts";
import { range, relativeError } from "./range.ts";

// U.S. GAO, Cost Estimating and Assessment Guide, GAO-20-195G (March 2020), chapter 12, table 12, thousand dollars
// (read: the three-point inputs); expected values by the closed form, checked with scipy.stats.triang. The last two
// rows: Keefer & Bodily's comparison law and a general one, SciPy 1.17 (computed).
describe("triangular, moments and quantiles", () => {
  it.each<[string, number, number, number, Expected]>([
    [
      "airframe",
      17955,
      19645,
      21785,
      {
        mean: 19795,
        sd: 783.5921558226,
        mode: 19645,
        P5: 18523.8892686631,
        P10: 18759.5309192318,
        P50: 19760.6235527946,
        P70: 20216.9247467038,
        P80: 20504.6719170463,
        P90: 20879.6713303998,
        P95: 21144.8359585231,
      },
    ],
    [
      "propulsion",
      8500,
      10553,
      13000,
      {
        mean: 10684.3333333333,
        sd: 919.7315127555,
        P5: 9179.6506455526,
        P10: 9461.171160616,
        P50: 10653.5665362086,
        P80: 11515.9851752762,
        P95: 12257.9925876381,
      },
    ],
    [
      "communications",
      4000,
      4306,
      5100,
      {
        mean: 4468.6666666667,
        sd: 231.784861935,
        P5: 4129.7304898626,
        P50: 4439.1671920977,
        P90: 4804.4665839537,
      },
    ],
    [
      "navigation",
      4100,
      4305,
      4650,
      {
        mean: 4351.6666666667,
        sd: 113.4741771897,
        P10: 4206.183802908,
        P70: 4411.4103941912,
        P95: 4552.5962013061,
      },
    ],
    [
      "central computer",
      550,
      600,
      650,
      { mean: 600, sd: 20.4124145232, P5: 565.8113883008, P50: 600, P95: 634.1886116992 },
    ],
    [
      "software",
      32300,
      35547,
      52500,
      {
        mean: 40115.6666666667,
        sd: 4428.403330271,
        P5: 34110.9306999441,
        P10: 34861.0427563787,
        P50: 39414.6914442188,
        P80: 44224.1242155286,
        P95: 48362.0621077643,
      },
    ],
    [
      "integration",
      1950,
      2136,
      2600,
      { mean: 2228.6666666667, sd: 136.6658536561, P50: 2211.670243221, P90: 2426.3336532313 },
    ],
    [
      "comparison law",
      10,
      15,
      40,
      {
        mean: 21.6666666667,
        sd: 6.5616732283,
        P5: 12.7386127875,
        P10: 13.8729833462,
        P50: 20.635083269,
        P90: 31.3397459622,
        P95: 33.876275643,
      },
    ],
    [
      "general law",
      10,
      12,
      30,
      {
        P1: 10.632455532,
        P5: 11.4142135624,
        P10: 12,
        P25: 13.5683232748,
        P50: 16.583592135,
        P75: 20.5131670195,
        P80: 21.5147186258,
        P90: 24,
        P95: 25.7573593129,
        P99: 28.1026334039,
      },
    ],
  ])("%s [%d, %d, %d]", (_, low, likely, high, expected) => {
    expectLaw(lawOf(range(low, likely, high, "triangular")), expected, 2e-10);
  });

  it("puts the right share of the law below the likely value", () => {
    const shareBelow: [number, number, number, number][] = [
      [17955, 19645, 21785, 0.4412532637],
      [8500, 10553, 13000, 0.4562222222],
      [32300, 35547, 52500, 0.1607425743],
    ];
    for (const [low, likely, high, share] of shareBelow) {
      expect(lawOf(range(low, likely, high, "triangular")).cdf(likely)).toBeCloseTo(share, 9);
    }
  });
});

// Lognormal law from two percentiles: standard result, NIST/SEMATECH e-Handbook 1.3.6.6.9 for the law (recalled);
// values by scipy.stats.lognorm. The second row is a law given by its parameters, entered by its P10 and P90.
describe("lognormal", () => {
  it("fitted to P10 = 80 and P90 = 150", () => {
    expectLaw(
      lawOf(range(80, undefined, 150, "lognormal", "p10-p90")),
      {
        mean: 112.8890496002,
        sd: 28.1079663511,
        mode: 103.1497632492,
        P5: 73.1802608823,
        P10: 80,
        P50: 109.544511501,
        P70: 124.579211238,
        P80: 134.6583827115,
        P90: 150,
        P95: 163.9786447236,
      },
      2e-10,
    );
  });

  it("with mu = 3 and sigma = 0.4, entered by its percentiles", () => {
    expectLaw(
      lawOf(range(12.0297094044, undefined, 33.5360381479, "lognormal", "p10-p90")),
      { mean: 21.7584023962, sd: 9.0633833427, P5: 10.4026288601, P50: 20.0855369232, P95: 38.7814271677 },
      1e-9,
    );
  });

  it("with mu = 2 and sigma = 0.5, entered by P5 and P95", () => {
    expectLaw(
      lawOf(range(3.2464860192, undefined, 16.8176144024, "lognormal", "p5-p95")),
      {
        P1: 2.3090266289,
        P10: 3.8931718743,
        P25: 5.273820882,
        P50: 7.3890560989,
        P75: 10.3526743237,
        P90: 14.0240790276,
        P99: 23.6455263654,
      },
      1e-9,
    );
  });
});

// Keefer & Bodily (1983), Management Science 29(5): mean ~ 0.185 P5 + 0.630 P50 + 0.185 P95, and Swanson's rule
// 0.3 P10 + 0.4 P50 + 0.3 P90 (both recalled); the two sums below were computed from SciPy quantiles.
describe("quick sums of percentiles", () => {
  it.each([
    ["triangular", lawOf(range(10, 15, 40, "triangular")), 21.6238568191, 21.8178521001],
    [
      "lognormal",
      lawOf(range(12.0297094044, undefined, 33.5360381479, "lognormal", "p10-p90")),
      21.7529386268,
      21.7039390349,
    ],
  ] as const)("%s: come out as published rules say, and near the mean", (_, law, pearsonTukey, swanson) => {
    const q = (p: number) => law.quantile(p);
    expect(0.185 * q(0.05) + 0.63 * q(0.5) + 0.185 * q(0.95)).toBeCloseTo(pearsonTukey, 7);
    expect(0.3 * q(0.1) + 0.4 * q(0.5) + 0.3 * q(0.9)).toBeCloseTo(swanson, 7);
    expect(relativeError(pearsonTukey, law.mean)).toBeLessThan(0.004);
  });
});

// SciPy 1.17 (computed): normal with mean 50 and sd 8; uniform on [10, 30].
describe("normal and uniform", () => {
  it("normal entered by P10 and P90", () => {
    expectLaw(
      lawOf(range(39.7475874756, undefined, 60.2524125244, "normal", "p10-p90")),
      {
        mean: 50,
        sd: 8,
        mode: 50,
        P1: 31.3892170077,
        P5: 36.8411709844,
        P25: 44.6040819984,
        P75: 55.3959180016,
        P95: 63.1588290156,
        P99: 68.6107829923,
      },
      1e-9,
    );
  });

  it("uniform on [10, 30], given by its ends, by P10 and P90, by P5 and P95", () => {
    const expected = { mean: 20, P1: 10.2, P5: 11, P10: 12, P25: 15, P75: 25, P90: 28, P95: 29, P99: 29.8 };
    expectLaw(lawOf(range(10, undefined, 30, "uniform")), expected, 1e-14);
    expectLaw(lawOf(range(12, undefined, 28, "uniform", "p10-p90")), expected, 1e-14);
    expectLaw(lawOf(range(11, undefined, 29, "uniform", "p5-p95")), expected, 1e-14);
    expect(lawOf(range(12, undefined, 28, "uniform", "p10-p90")).mode).toBe(undefined);
  });
});

describe("estimateQuantile(estimate, p)", () => {
  it("gives the ends of the support at 0 and 1, to the bit", () => {
    for (const shape of ["pert", "triangular", "uniform"] as const) {
      expect(estimateQuantile(range(0.1, 0.3, 0.7, shape), 0)).toBe(0.1);
      expect(estimateQuantile(range(0.1, 0.3, 0.7, shape), 1)).toBe(0.7);
    }
    expect(estimateQuantile(range(40, undefined, 60, "normal", "p10-p90"), 0)).toBe(Number.NEGATIVE_INFINITY);
    expect(estimateQuantile(range(40, undefined, 60, "lognormal", "p10-p90"), 0)).toBe(0);
  });

  it("says what is missing in an estimate that no plan can hold", () => {
    expect(() => lawOf(range(1, undefined, 2))).toThrow("needs a likely value");
    expect(() => lawOf(range(1, undefined, 2, "normal"))).toThrow("percentile bounds");
    expect(() => lawOf(range(-1, undefined, 2, "lognormal", "p10-p90"))).toThrow("above 0");
  });
});

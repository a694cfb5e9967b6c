import jstat from "jstat";
import { probit } from "simple-statistics";
import { afterAll, describe, expect, it } from "vitest";
import { normalCdf } from "../../../packages/core/src/sampling/dependence/normalCdf.ts";
import { normalScore } from "../../../packages/core/src/sampling/dependence/normalScore.ts";
import { exponential } from "../../../packages/core/src/sampling/math/exponential.ts";
import { logarithm } from "../../../packages/core/src/sampling/math/logarithm.ts";
import { lawOf } from "../../../packages/core/src/sampling/shapes/lawOf.ts";
import { pertLaw } from "../../../packages/core/src/sampling/shapes/pertLaw.ts";
import {
  exponentials,
  logarithms,
  normalProbabilities,
  normalQuantiles,
  pertQuantiles,
} from "./fixtures/highPrecision.ts";
import { range, relativeError } from "./range.ts";

// Wichura (1988), Algorithm AS 241, Applied Statistics 37(3), 477-484: the paper's three check values, one for each
// branch of the method (recalled; the same points are recomputed at 50 digits in the fixtures).
describe("normalScore(p), the published check values", () => {
  it.each([
    [0.25, -0.6744897501960817],
    [0.001, -3.090232306167814],
    [1e-20, -9.262340089798409],
  ])("at p = %s is %s", (p, z) => {
    expect(relativeError(normalScore(p), z)).toBeLessThan(4 * Number.EPSILON);
  });

  it("has the edges of a quantile function", () => {
    expect(normalScore(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(normalScore(1)).toBe(Number.POSITIVE_INFINITY);
    expect(normalScore(0.5)).toBe(0);
    expect([normalScore(-0.1), normalScore(1.1), normalScore(Number.NaN)]).toEqual([NaN, NaN, NaN]);
  });
});

// Source of every value here: mpmath 1.3 at 50 digits, see fixtures/generate.py. Bounds are the ones the doc comments
// state; the worst error met is printed, as a table, so a change of it is seen.
const families: { name: string; over: string; bound: number; worst: () => number }[] = [
  {
    name: "normalScore(p)",
    over: "p 1e-300 ... 1 - 2^-43",
    bound: 1e-15,
    worst: () => worstOf(normalQuantiles.map(([p, z]) => relativeError(normalScore(p), z))),
  },
  {
    name: "normalCdf(z)",
    over: "z -8 ... 8",
    bound: 1e-14,
    worst: () =>
      worstOf(normalProbabilities.filter(([z]) => z >= -8).map(([z, p]) => relativeError(normalCdf(z), p))),
  },
  {
    name: "normalCdf(z)",
    over: "z -37.5 ... -8",
    bound: 2e-13,
    worst: () =>
      worstOf(normalProbabilities.filter(([z]) => z < -8).map(([z, p]) => relativeError(normalCdf(z), p))),
  },
  {
    name: "exponential(x)",
    over: "x -708 ... 709.7",
    bound: 1e-15,
    worst: () =>
      worstOf(exponentials.filter(([x]) => x > -744).map(([x, y]) => relativeError(exponential(x), y))),
  },
  {
    name: "logarithm(x)",
    over: "x 5e-324 ... 1.7e308",
    bound: 1e-15,
    worst: () => worstOf(logarithms.map(([x, y]) => relativeError(logarithm(x), y))),
  },
  {
    name: "pert, lower(p)",
    over: "p 2^-40 ... 0.9999",
    bound: 1e-12,
    worst: () => worstOf(pertQuantiles.map(([x, p, y]) => relativeError(pertLaw(x).lower(p), y))),
  },
  {
    name: "pert, 1 - upper(w)",
    over: "w 2^-40 ... 1/2",
    bound: 1e-12,
    // The law with its mode at 1 - x, seen from the other end; 1 - upper loses what lies below one rounding.
    worst: () =>
      worstOf(
        pertQuantiles
          .filter(([x, p]) => p <= 0.5 && 1 - (1 - x) === x)
          .map(([x, w, y]) => Math.abs(1 - pertLaw(1 - x).upper(w) - y)),
      ),
  },
  {
    name: "pert, cdf(quantile)",
    over: "p 2^-40 ... 0.9999",
    bound: 1e-12,
    worst: () => worstOf(pertQuantiles.map(([x, p, y]) => relativeError(pertLaw(x).cdf(y), p))),
  },
];

describe("the functions under every law, against 50-digit values", () => {
  it.each(families)("$name for $over stays below $bound", ({ worst, bound }) => {
    expect(worst()).toBeLessThan(bound);
  });

  afterAll(() => {
    const rows = families.map(({ name, over, worst }) => [name, over, worst().toExponential(1)]);
    const lines = [["function", "range", "worst error"], ...rows].map(
      ([a, b, c]) => `  ${(a ?? "").padEnd(22)}${(b ?? "").padEnd(26)}${c ?? ""}`,
    );
    console.log(lines.join("\n"));
  });

  it("rounds the smallest results of exp to the nearest subnormal number", () => {
    const [x, y] = exponentials[0] as [number, number];
    expect(x).toBe(-744);
    expect(Math.abs(exponential(x) - y)).toBeLessThanOrEqual(5e-324);
    expect([exponential(-800), exponential(800), exponential(0)]).toEqual([0, Number.POSITIVE_INFINITY, 1]);
  });
});

// Cross-checks. Each library is used only where it is right, and to the accuracy it has: jstat's beta inverse was
// measured to be off by up to 3e-8, its normal inverse by 1e-9 or so, and simple-statistics' probit by 1.3e-2.
describe("general statistics libraries agree, as far as they are accurate", () => {
  const probabilities = [0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99];

  it("jstat 1.9.6, beta quantiles of PERT laws", () => {
    for (const x of [0, 0.1, 0.25, 0.5, 0.8, 1]) {
      for (const p of probabilities) {
        expect(Math.abs(pertLaw(x).lower(p) - jstat.beta.inv(p, 1 + 4 * x, 5 - 4 * x))).toBeLessThan(1e-7);
      }
    }
  });

  it("jstat 1.9.6, normal, lognormal and triangular quantiles", () => {
    const normal = lawOf(range(40, undefined, 60, "normal", "p10-p90"));
    const lognormal = lawOf(range(80, undefined, 150, "lognormal", "p10-p90"));
    const triangular = lawOf(range(10, 12, 30, "triangular"));
    const sigma = Math.log(150 / 80) / (2 * 1.2815515655446004);
    const mu = (Math.log(80) + Math.log(150)) / 2;
    for (const p of probabilities) {
      expect(relativeError(normal.quantile(p), jstat.normal.inv(p, normal.mean, normal.sd))).toBeLessThan(
        1e-8,
      );
      expect(relativeError(lognormal.quantile(p), jstat.lognormal.inv(p, mu, sigma))).toBeLessThan(1e-8);
      expect(relativeError(triangular.quantile(p), jstat.triangular.inv(p, 10, 30, 12))).toBeLessThan(1e-12);
      expect(Math.abs(normalCdf(normalScore(p)) - jstat.normal.cdf(normalScore(p), 0, 1))).toBeLessThan(
        1e-10,
      );
    }
  });

  it("simple-statistics 7.12.1, the probit", () => {
    for (const p of probabilities) expect(Math.abs(normalScore(p) - probit(p))).toBeLessThan(2e-2);
  });
});

function worstOf(errors: number[]): number {
  let worst = 0;
  for (const error of errors) if (!(error <= worst)) worst = error;
  return worst;
}

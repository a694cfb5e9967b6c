/** Percentiles of a sample and their limits: the definition, the ranks, and how often the limits hold. */
import { describe, expect, it } from "vitest";
import { limitRanks, rankOf } from "../../../packages/core/src/forecast/ranks.ts";
import { finishAt, forecastOf } from "../integrated/runPlan.ts";
import { expectWithin } from "../integrated/tolerances.ts";

/** Chance that the interval [x(i), x(j)] of n values covers percentile p: i <= Binomial(n, p) < j. */
function coverage(n: number, p: number, i: number, j: number): number {
  let [log, sum] = [n * Math.log1p(-p), 0];
  for (let k = 0; k < j; k++) {
    if (k >= i) sum += Math.exp(log);
    log += Math.log(n - k) - Math.log(k + 1) + Math.log(p) - Math.log1p(-p);
  }
  return sum;
}

// Table A.7, Confidence Intervals for the Population Median, of a statistics textbook, read; theory: Conover
// (1999), Practical Nonparametric Statistics, 3rd ed., sec. 3.2. It vouches for `coverage`, which then judges
// our ranks.
describe("coverage(n, 0.5, i, j)", () => {
  it.each([
    [5, 1, 5, 93.8],
    [6, 1, 6, 96.9],
    [6, 2, 5, 78.1],
    [7, 1, 7, 98.4],
    [7, 2, 6, 87.5],
    [8, 1, 8, 99.2],
    [8, 2, 7, 93.0],
    [9, 1, 9, 99.6],
    [9, 2, 8, 96.1],
    [9, 3, 7, 82.0],
    [10, 1, 10, 99.8],
    [10, 2, 9, 97.9],
    [10, 3, 8, 89.1],
  ])("n = %s, ranks %s and %s: %s % as printed", (n, i, j, percent) => {
    expectWithin(100 * coverage(n, 0.5, i, j), percent, 0.05);
  });
});

// Conover (1999), sec. 3.2, recalled: conservative equal-tail ranks by the binomial distribution. The normal
// approximation of the plan format may differ by one rank and must not cover less than 95 %.
describe("limitRanks(p, n)", () => {
  it.each([
    [1000, 0.5, 469, 532, 0.953708],
    [1000, 0.8, 775, 825, 0.951899],
    [1000, 0.9, 881, 919, 0.954907],
    [10_000, 0.5, 4902, 5099, 0.951167],
    [10_000, 0.8, 7921, 8079, 0.951732],
    [10_000, 0.9, 8941, 9059, 0.950787],
  ])("n = %s, p = %s: ranks %s and %s within one, covering at least 95 %", (n, p, low, high, exact) => {
    expectWithin(coverage(n, p, low, high), exact, 1e-5);
    const ranks = limitRanks(p, n);
    expectWithin(ranks.low, low, 1);
    expectWithin(ranks.high, high, 1);
    expect(coverage(n, p, ranks.low, ranks.high)).toBeGreaterThanOrEqual(0.95);
  });

  it("covers at least 95 % at every level and size, or has the whole sample for limits", () => {
    const short: string[] = [];
    for (const n of [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000]) {
      for (const p of [0.05, 0.1, 0.2, 0.5, 0.7, 0.8, 0.9, 0.95]) {
        const { low, high } = limitRanks(p, n);
        const covered = coverage(n, p, low, high);
        if (covered < 0.95 && low > 1 && high < n) short.push(`n ${n}, p ${p}: ${covered}`);
      }
    }
    expect(short).toEqual([]);
  });
});

// Hyndman & Fan (1996), The American Statistician 50(4), 361-365, recalled: type 1, the inverse of the
// empirical distribution. The interpolating type 7, which many programs use, answers 11.5, 32, 40.2 and 41.9
// here.
describe("rankOf(p, n)", () => {
  const sorted = [7, 12, 15, 22, 28, 36, 39, 40, 41, 50];
  it.each([
    [0.1, 7],
    [0.5, 28],
    [0.8, 40],
    [0.9, 41],
  ])("P%s of ten values is %s", (p, value) => {
    expect(sorted[rankOf(p, sorted.length) - 1]).toBe(value);
  });
});

// Standard results: the mean of n plain draws errs by sd / sqrt(n), a share by sqrt(p(1 - p) / n). Here
// measured over 400 seeds on a normal duration with a deviation of 12 days: se 0.379473 at n = 1,000. The
// spread of 400 means has a relative standard error of 1 / sqrt(800), so 14 % is four of them.
describe("forecast(one normal task), 400 seeds of 1,000 plain iterations", () => {
  const z = { p80: 0.8416212335729143, p90: 1.2815515655446004 };
  const document = {
    format: 1,
    title: "One task",
    start: "2027-03-01",
    calendar: "every-day",
    tasks: [
      {
        id: "work",
        name: "Work",
        duration: { low: 100 - 12 * z.p90, high: 100 + 12 * z.p90, shape: "normal", bounds: "p10-p90" },
      },
    ],
  };
  const run = (design: "plain" | "latin-hypercube") =>
    Array.from({ length: 400 }, (_, k) => {
      const result = forecastOf(document, { seed: `seed ${k}`, iterations: 1000, design });
      const p80 = result.finish.percentiles.find((entry) => entry.p === 0.8);
      const true80 = 100 + 12 * z.p80;
      return {
        mean: result.finish.mean,
        covered: p80 !== undefined && p80.low <= true80 && true80 <= p80.high,
        below: finishAt(result, 0.8) < true80,
      };
    });
  const plain = run("plain");
  const share = (rows: typeof plain, test: (row: (typeof plain)[number]) => boolean) =>
    rows.filter(test).length / rows.length;
  const spread = (rows: typeof plain) => {
    const mean = rows.reduce((sum, row) => sum + row.mean, 0) / rows.length;
    return Math.sqrt(rows.reduce((sum, row) => sum + (row.mean - mean) ** 2, 0) / (rows.length - 1));
  };

  it("scatters the mean by 12 / sqrt(1000) = 0.379 days", () => {
    expectWithin(spread(plain), 0.379473, 0.14 * 0.379473);
  });

  it("covers the true P80 in 95.2 % of the seeds, as the ranks promise", () => {
    expectWithin(
      share(plain, (row) => row.covered),
      0.951899,
      4 * Math.sqrt((0.951899 * 0.048101) / 400),
    );
  });

  it("reports a P80 below and above the true one equally often", () => {
    expectWithin(
      share(plain, (row) => row.below),
      0.5,
      4 * Math.sqrt(0.25 / 400),
    );
  });

  // McKay, Beckman & Conover (1979), Technometrics 21(2), 239-245, recalled: stratified draws err less.
  it("does better in every respect with Latin hypercube draws: limits hold always, the mean hardly moves", () => {
    const latin = run("latin-hypercube");
    expect(share(latin, (row) => row.covered)).toBe(1);
    expect(spread(latin)).toBeLessThan(0.379473 / 5);
  });
});

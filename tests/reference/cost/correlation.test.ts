/** Estimates that move together, and what it costs to overlook it. */
import { describe, expect, it } from "vitest";
import { forecastOf, trialsOf } from "../integrated/runPlan.ts";
import { expectWithin } from "../integrated/tolerances.ts";

const every = { format: 1, start: "2027-03-01", calendar: "every-day" };

// Book (1999), recalled: n equal elements, correlation r; overlooking it understates the spread of the total
// by 1 - 1 / sqrt(1 + (n - 1) r). Normal costs, so scores and costs have the same correlation. Tolerance: two
// spreads, each with a standard error of 0.7 %, four of them.
describe("forecast(n equal elements), spread understated when correlation is left out", () => {
  it.each([
    [5, 0.1, 0.1548457453],
    [5, 0.3, 0.3258001375],
    [10, 0.2, 0.4023856953],
    [10, 0.3, 0.4801247551],
    [30, 0.1, 0.4936303165],
    [30, 0.3, 0.6789193505],
  ])("n = %s, r = %s: by %s", (n, coefficient, understated) => {
    const ids = Array.from({ length: n }, (_, k) => `part-${k}`);
    const document = {
      ...every,
      title: "Equal parts",
      estimates: { shape: "normal", bounds: "p10-p90" },
      tasks: ids.map((id) => ({ id, name: id, milestone: true, cost: { low: 87, high: 113 } })),
    };
    const correlations = [{ between: ids.map((id) => `cost:${id}`), coefficient, cause: "Same market." }];
    const apart = forecastOf(document).cost.sd;
    const together = forecastOf({ ...document, correlations }).cost.sd;
    expectWithin(1 - apart / together, understated, (1 - understated) * 4 * 0.00707 * Math.SQRT2);
  });
});

// Iman & Conover (1982), Communications in Statistics B11(3), 311-334, recalled: the three marginals and the
// target rank correlations of the case. A plan states the correlation of the normal scores, 2 sin(pi r_s / 6)
// for a rank correlation r_s (bivariate normal: r_s = (6 / pi) asin(r / 2)). Tolerance at n = 10,000: four
// standard errors (1 - r^2) / 100 at most, 0.04.
describe("simulate(three correlated estimates of different shapes)", () => {
  const target = [
    ["a", "b", 0.6],
    ["a", "c", 0.3],
    ["b", "c", 0.5],
  ] as const;
  const document = {
    ...every,
    title: "Three shapes",
    tasks: [
      { id: "a", name: "A", duration: { low: 10, likely: 12, high: 30, shape: "triangular" } },
      // Lognormal with mu 2, sigma 0.5: P10 and P90 are exp(2 -+ 0.5 * 1.2815515655).
      {
        id: "b",
        name: "B",
        duration: {
          low: Math.exp(2 - 0.5 * 1.2815515655446004),
          high: Math.exp(2 + 0.5 * 1.2815515655446004),
          shape: "lognormal",
          bounds: "p10-p90",
        },
      },
      { id: "c", name: "C", duration: { low: 0, high: 1, shape: "uniform" } },
    ],
  };
  const correlations = target.map(([x, y, rank]) => ({
    between: [x, y],
    coefficient: 2 * Math.sin((Math.PI * rank) / 6),
    cause: "Given.",
  }));
  const durations = (extra: object) => trialsOf({ ...document, ...extra }).trials.finishes;
  const related = durations({ correlations });
  const unrelated = durations({});
  const index = { a: 0, b: 1, c: 2 };

  it.each(target)("rank correlation of %s and %s is %s", (x, y, rank) => {
    expectWithin(spearman(related[index[x]], related[index[y]]), rank, 0.04);
    expectWithin(spearman(unrelated[index[x]], unrelated[index[y]]), 0, 0.04);
  });

  // Correlated scores are sums of stratified ones, so the strata of a marginal are not kept, its distribution
  // is. Kolmogorov-Smirnov at n = 10,000: a distance above 2.225 / 100 has a chance of 1 in 10,000.
  it("leaves the marginals their distribution: c stays uniform", () => {
    const sorted = [...(related[index.c] ?? [])].sort((p, q) => p - q);
    const n = sorted.length;
    const distance = Math.max(...sorted.map((value, k) => Math.max(value - k / n, (k + 1) / n - value)));
    expect(n).toBe(10_000);
    expect(distance).toBeLessThan(0.02225);
  });
});

/** Rank correlation of two rows without ties. */
function spearman(x: Float64Array | undefined, y: Float64Array | undefined): number {
  if (x === undefined || y === undefined) return Number.NaN;
  const ranks = (row: Float64Array) => {
    const order = [...row.keys()].sort((a, b) => (row[a] as number) - (row[b] as number));
    const rank = new Float64Array(row.length);
    order.forEach((at, k) => {
      rank[at] = k;
    });
    return rank;
  };
  const [a, b] = [ranks(x), ranks(y)];
  const n = a.length;
  let squares = 0;
  for (let k = 0; k < n; k++) squares += ((a[k] as number) - (b[k] as number)) ** 2;
  return 1 - (6 * squares) / (n * (n * n - 1));
}

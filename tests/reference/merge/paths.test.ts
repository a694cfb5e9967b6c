/** What happens where paths meet: the finish is the latest of them, which is later than any of them usually is. */
import jStat from "jstat";
import { describe, expect, it } from "vitest";
import { designBuildTest, parallelNormals, twoNormals } from "../../../packages/core/src/models/index.ts";
import { dateAfter, finishAt, forecastOf } from "../integrated/runPlan.ts";
import { expectMean, expectSd, expectShare, expectWithin } from "../integrated/tolerances.ts";

// GAO-16-89G, best practice 8, discussion of figure 36 (digest read): two paths of 60 % each keep the date
// together in about 36 %, a third takes it to about 22 %. Exact for independent paths: 0.6^n.
describe("forecast(converging paths of 60 % each)", () => {
  it.each([
    [2, 0.36],
    [3, 0.216],
  ])("keeps the date with %s paths in a share of %s", (n, chance) => {
    const tasks = Array.from({ length: n }, (_, k) => ({
      id: `path-${k}`,
      name: `Path ${k}`,
      duration: {
        outcomes: [
          { value: 10, chance: 0.6 },
          { value: 12, chance: 0.4 },
        ],
      },
    }));
    const result = forecastOf({
      format: 1,
      title: "Converging",
      start: "2027-03-01",
      calendar: "every-day",
      commitment: { finishBy: dateAfter(10) },
      tasks,
    });
    expectShare(result.chance.finishBy ?? Number.NaN, chance);
    expect(result.asked.finishByDay).toBe(10);
  });
});

// Clark (1961), Operations Research 9(2), 145-162: formulas recalled; the literals by formula and by
// quadrature in another program. The two cases around mean 0 stand 100 days later, where no duration is cut
// at zero.
describe("forecast(two normal paths)", () => {
  const cases = [
    [[100, 100], [1, 1], 0, 100.5641895835, 0.8256452712, 0.5],
    [[100, 100], [1, 1], 0.5, 100.3989422804, 0.9169760394, 0.5],
    [[100, 100], [10, 10], 0, 105.6418958355, 8.2564527118, 0.5],
    [[100, 95], [10, 12], 0, 104.0482252869, 8.9356875079, 0.6255507808],
    [[100, 95], [10, 12], 0.5, 102.3828842002, 9.8378213021, 0.6732889526],
    [[100, 80], [10, 10], 0, 100.5025454166, 9.4708257176, 0.9213503965],
  ] as const;
  it.each(cases)(
    "means %j, deviations %j, correlation %s: finish %s, spread %s, first critical %s",
    (mean, sd, correlation, greatest, spread, first) => {
      const { document, known } = twoNormals({ mean, sd, correlation }, (z) => jStat.normal.cdf(z, 0, 1));
      expectWithin(known.mean, greatest, 1e-6);
      expectWithin(known.sd, spread, 1e-6);
      expectWithin(known.firstCritical, first, 1e-6);
      const result = forecastOf(document);
      expectMean(result.finish.mean, greatest, spread);
      expectSd(result.finish.sd, spread);
      expectShare(result.tasks[0]?.critical ?? Number.NaN, first);
    },
  );
});

// Expected values of normal order statistics, Tippett (1925), Teichroew (1956), recalled; recomputed by
// integration. Percentile limits: four standard errors from the density of the greatest, sqrt(p(1 - p) / n) /
// f(x) with f(x) = n F(x)^(n - 1) phi(x); half a day, 0.05 deviations, covers all six (largest 0.049).
describe("forecast(n equal normal paths)", () => {
  it.each([2, 3, 4] as const)("n = %s", (n) => {
    const { document, known } = parallelNormals(n);
    const result = forecastOf(document);
    expectMean(result.finish.mean, known.mean, known.sd);
    expectSd(result.finish.sd, known.sd);
    expectWithin(finishAt(result, 0.5), known.p50, 0.5);
    expectWithin(finishAt(result, 0.8), known.p80, 0.5);
    for (const task of result.tasks) expectShare(task.critical, 1 / n);
  });

  // At its own P50 each path is on time half the time; 100 days is that P50.
  it.each([2, 3, 4] as const)("n = %s: the paths' own P50 is kept together in 0.5^n", (n) => {
    const { document, known } = parallelNormals(n);
    const result = forecastOf({ ...document, commitment: { finishBy: dateAfter(100) } });
    expectShare(result.chance.finishBy ?? Number.NaN, known.allAtP50);
  });
});

// Hulett (2001), slides 5-7: estimates and the 95 days read. Exact answers by rational arithmetic.
describe("forecast(design, build, test)", () => {
  it.each([1, 2] as const)("%s path(s)", (paths) => {
    const { document, known } = designBuildTest(paths);
    const result = forecastOf(document, { confidence: 0.7 });
    expect(result.asWritten.day).toBe(known.asWritten);
    expectShare(result.finish.asWrittenChance, known.asWrittenChance);
    expectMean(result.finish.mean, known.mean, known.sd);
    expectSd(result.finish.sd, known.sd);
    for (const [p, value, within] of known.percentiles) expectWithin(finishAt(result, p), value, within);
  });
});

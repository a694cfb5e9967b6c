/** Contingency: what is read off the curve of cost, and cost that runs with time. */
import { describe, expect, it } from "vitest";
import { timeDependentCost } from "../../../packages/core/src/models/index.ts";
import { costAt, finishAt, forecastOf, trialsOf } from "../integrated/runPlan.ts";
import { expectMean, expectShare, expectWithin } from "../integrated/tolerances.ts";

// GAO-20-195G ch. 12, S-curve example (digest read): point estimate 825 at about 40 %, P50 908, P70 1,096;
// contingency 83 at P50 and 271 at P70. The curve as outcomes that rise just before those levels.
describe("forecast(a cost whose curve is GAO's)", () => {
  const document = {
    format: 1,
    title: "S-curve",
    start: "2027-03-01",
    calendar: "every-day",
    tasks: [
      {
        id: "build",
        name: "Build",
        duration: 5,
        cost: {
          outcomes: [
            { value: 825, chance: 0.4 },
            { value: 908, chance: 0.11 },
            { value: 1096, chance: 0.2 },
            { value: 1400, chance: 0.29 },
          ],
        },
      },
    ],
  };

  it.each([
    [0.5, 908, 83],
    [0.7, 1096, 271],
  ])("P%s is %s, contingency %s over the point estimate", (confidence, value, contingency) => {
    const result = forecastOf(document, { confidence });
    expect(result.asWritten.cost).toBe(825);
    expect(result.committed.cost).toBe(value);
    expect(result.contingency.money).toBe(contingency);
    expectShare(result.cost.asWrittenChance, 0.4);
  });
});

// NASA Cost Estimating Handbook 4.0 (2015), appendix J (digest read): time-dependent and time-independent
// cost; durations of Hulett (2001). Exact quantiles; simulated within 0.6 %, four standard errors of the
// widest.
describe("forecast(design, build, test with a standing team)", () => {
  const { document, known } = timeDependentCost();
  const result = forecastOf(document);

  it("costs 630,000 as written and 700,667 on average", () => {
    expect(result.asWritten.cost).toBe(known.asWritten);
    expectMean(result.cost.mean, known.mean, 4000 * 13.1740485636);
    expectWithin(known.mean, 700_666.666667, 1e-6);
  });

  it.each(known.percentiles)("P%s of cost is %s, the finish's own percentile in money", (p, value) => {
    expectWithin(costAt(result, p), value, 0.006 * value);
    expectWithin(costAt(result, p), known.once + known.perDay * finishAt(result, p), 1e-4);
  });

  it("ties cost to the finish in every future", () => {
    const { trials } = trialsOf(document);
    const off = [...trials.cost].map((cost, k) =>
      Math.abs(cost - known.once - known.perDay * (trials.finish[k] ?? 0)),
    );
    expect(Math.max(...off)).toBeLessThan(1e-6);
  });
});

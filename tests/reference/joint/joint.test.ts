/** Time and money at once: the chance of keeping both the date and the sum. */
import { describe, expect, it } from "vitest";
import { dateAfter, forecastOf } from "../integrated/runPlan.ts";
import { expectShare } from "../integrated/tolerances.ts";

const every = { format: 1, start: "2027-03-01", calendar: "every-day" };

// NASA Cost Estimating Handbook 4.0, appendix J (digest read): a joint confidence level is the share of
// iterations that keep both targets. Bivariate normal; values by another program (SciPy), limit four standard
// errors. NASA Schedule Management Handbook (2024) sec. 6.3, digest read: a joint 70 % asks for about the
// 78th to 84th percentile of each. The duration is long (5,000 days, deviation 1,000) so that whole days do
// not matter.
describe("forecast(one task, normal duration and cost)", () => {
  const document = (correlation: number) => ({
    ...every,
    title: "Date and sum",
    estimates: { shape: "normal", bounds: "p10-p90" },
    tasks: [
      {
        id: "work",
        name: "Work",
        duration: { low: 5000 - 1281.5515655446, high: 5000 + 1281.5515655446 },
        cost: { low: 5000 - 1281.5515655446, high: 5000 + 1281.5515655446 },
      },
    ],
    ...(correlation === 0
      ? {}
      : {
          correlations: [
            { between: ["work", "cost:work"], coefficient: correlation, cause: "Long is dear." },
          ],
        }),
  });

  it.each([
    [0, 0.49],
    [0.3, 0.5281428132],
    [0.5, 0.5567673207],
    [0.6, 0.5727483627],
    [0.7, 0.5905185813],
    [0.8, 0.6111802474],
    [0.9, 0.6375869253],
  ])("correlation %s: both at their P70 is %s together", (correlation, both) => {
    expectShare(forecastOf(document(correlation), { confidence: 0.7 }).committed.both, both);
  });

  it.each([
    [0, 0.8366600084, 0.7],
    [0.3, 0.8228268202, 0.7],
    [0.6, 0.8005769883, 0.7],
    [0.8, 0.7760089842, 0.7],
    [0, Math.SQRT1_2, 0.5],
    [0.5, 0.6530319053, 0.5],
    [0.9, 0.5706356459, 0.5],
  ])("correlation %s: both at percentile %s is %s together", (correlation, level, both) => {
    expectShare(forecastOf(document(correlation), { confidence: level }).committed.both, both);
  });
});

// The same handbook's scatter plot: points in the lower left quadrant over all points, a target met exactly
// counts. Own points, counted by hand: 10 futures of equal chance, as ten risks of which exactly one occurs.
describe("forecast(ten equally likely futures)", () => {
  const points = [
    [10, 100],
    [11, 130],
    [12, 95],
    [12, 120],
    [13, 150],
    [14, 110],
    [15, 160],
    [15, 125],
    [16, 140],
    [18, 170],
  ];
  const document = {
    ...every,
    title: "Ten futures",
    commitment: { finishBy: dateAfter(14), budget: 130 },
    tasks: [{ id: "work", name: "Work", duration: 0, calendar: "every-day" }],
    risks: points.map(([days, money], k) => ({
      id: `future-${k}`,
      name: `Future ${k}`,
      group: "future",
      probability: 0.1,
      impacts: [{ tasks: ["work"], delay: days, cost: money }],
    })),
  };

  it("counts 0.6 on time, 0.6 within the sum and 0.5 for both", () => {
    const { chance } = forecastOf(document);
    expectShare(chance.finishBy ?? Number.NaN, 0.6);
    expectShare(chance.budget ?? Number.NaN, 0.6);
    expectShare(chance.both ?? Number.NaN, 0.5);
  });

  // Ten full blocks of 1,024 strata: each future has its tenth to within one draw at each edge of each block.
  it("counts them to the draw where the sample is stratified throughout", () => {
    const { chance } = forecastOf(document, { iterations: 10_240 });
    const near = (value: number | undefined, share: number) =>
      Math.abs((value ?? Number.NaN) - share) * 10_240;
    // On time are futures 0 to 5: one edge inside (0, 1); within the sum 0 to 3, 5 and 7: five; both: three.
    expect(near(chance.finishBy, 0.6)).toBeLessThanOrEqual(1 * 10);
    expect(near(chance.budget, 0.6)).toBeLessThanOrEqual(5 * 10);
    expect(near(chance.both, 0.5)).toBeLessThanOrEqual(3 * 10);
  });
});

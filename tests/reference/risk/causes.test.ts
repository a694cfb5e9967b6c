/** Shared causes, expected values of outcomes, options as opportunities. */
import { describe, expect, it } from "vitest";
import { sharedCause } from "../../../packages/core/src/models/index.ts";
import { forecastOf, trialsOf } from "../integrated/runPlan.ts";
import { expectMean, expectSd, expectShare, expectWithin } from "../integrated/tolerances.ts";

const every = { format: 1, start: "2027-03-01", calendar: "every-day" };

// Hulett, Practical Schedule Risk Analysis (2009), risk drivers: one common risk 100 %, plus one own risk
// each about 48 %, recalled; exact 0.473046 from closed-form moments. Limit 0.03, four standard errors of a
// correlation near 0.5.
describe("simulate(two tasks with a shared cause)", () => {
  it.each([
    [false, 1, 1e-9],
    [true, 0.473046, 0.03],
  ])("own risks %s: correlation %s", (own, expected, within) => {
    const { document, known } = sharedCause(own);
    expect(known.correlation).toBe(expected);
    const [north, south] = trialsOf(document).trials.finishes;
    expectWithin(pearson(north, south), expected, within);
  });
});

function pearson(x: Float64Array | undefined, y: Float64Array | undefined): number {
  if (x === undefined || y === undefined) return Number.NaN;
  const mean = (row: Float64Array) => row.reduce((sum, value) => sum + value, 0) / row.length;
  const [mx, my] = [mean(x), mean(y)];
  let [xy, xx, yy] = [0, 0, 0];
  for (let k = 0; k < x.length; k++) {
    const [dx, dy] = [(x[k] as number) - mx, (y[k] as number) - my];
    xy += dx * dy;
    xx += dx * dx;
    yy += dy * dy;
  }
  return xy / Math.sqrt(xx * yy);
}

// HM Treasury Green Book, annex A5, A5.14, box 22, read: 45, 50 or 55 million with chances 0.1, 0.6, 0.3
// expects one million more than the most likely estimate.
describe("forecast(a facility of 45, 50 or 55 million)", () => {
  it("expects 51, one above the estimate of 50, which is enough in 70 %", () => {
    const result = forecastOf({
      ...every,
      title: "Facility",
      tasks: [
        {
          id: "facility",
          name: "Facility",
          duration: 1,
          cost: {
            outcomes: [
              { value: 45, chance: 0.1 },
              { value: 50, chance: 0.6 },
              { value: 55, chance: 0.3 },
            ],
          },
        },
      ],
    });
    expect(result.asWritten.cost).toBe(50);
    expectMean(result.cost.mean, 51, 3);
    expectSd(result.cost.sd, 3);
    expectShare(result.cost.asWrittenChance, 0.7);
  });
});

// PMI, PMBOK Guide, 6th ed., fig. 11-15, read on a course handout: build expects 36, upgrade 46. Takings are
// negative costs of two risks that exclude each other, so the expected total is the expected value with its
// sign turned.
describe("forecast(build a new plant or upgrade)", () => {
  const option = (cost: number, strong: number, weak: number) => ({
    ...every,
    title: "Plant",
    tasks: [{ id: "plant", name: "Plant", duration: 1, cost }],
    risks: [
      {
        id: "strong",
        name: "Strong demand",
        group: "demand",
        probability: 0.6,
        impacts: [{ tasks: ["plant"], cost: -strong }],
      },
      {
        id: "weak",
        name: "Weak demand",
        group: "demand",
        probability: 0.4,
        impacts: [{ tasks: ["plant"], cost: -weak }],
      },
    ],
  });
  const build = option(120, 200, 90);
  const upgrade = option(50, 120, 60);

  it("expects 36 from building and 46 from upgrading", () => {
    // Deviations: 110 and 60 times sqrt(0.6 * 0.4).
    expectMean(-forecastOf(build).cost.mean, 36, 110 * Math.sqrt(0.24));
    expectMean(-forecastOf(upgrade).cost.mean, 46, 60 * Math.sqrt(0.24));
  });

  it("has exactly one of the two demands in every future", () => {
    const costs = [...trialsOf(build).trials.cost];
    expect([...new Set(costs)].sort((a, b) => a - b)).toEqual([-80, 30]);
    expectShare(costs.filter((cost) => cost === -80).length / costs.length, 0.6);
  });
});

// Benefit against cost through the engine: the published cases of appraise.test.ts as plans, and arithmetic.
import { describe, expect, it } from "vitest";
import { type Budget, budget, discountFactor, returnRate, yearly } from "../../../packages/core/src/index.ts";
import { planOfDocument } from "../../property/laws/runPlan.ts";

function budgetOf(document: object): Budget {
  const base = { format: 1, title: "Check", start: "2027-01-01", calendar: "every-day", iterations: 64 };
  const { budget: found, problems } = budget(planOfDocument({ ...base, ...document }));
  if (found === undefined) throw new Error(JSON.stringify(problems));
  return found;
}

/** Yearly flows as a plan: the first is spent at the start, the others come in at the ends of years of 365.25 days. */
function flowsAsPlan(flows: readonly number[], discountRate: number): object {
  const years = flows.slice(1).map((_, y) => ({
    id: `year-${y + 1}`,
    name: `Year ${y + 1}`,
    duration: 365.25,
    ...(y === 0 ? {} : { after: `year-${y}` }),
  }));
  return {
    tasks: [...years, { id: "spend", name: "Spend", milestone: true, cost: -(flows[0] ?? 0) }],
    benefits: flows.slice(1).map((amount, y) => ({
      id: `b-${y + 1}`,
      name: `Benefit ${y + 1}`,
      amount,
      per: "once",
      starts: `year-${y + 1}`,
    })),
    appraisal: { years: 20, discountRate },
  };
}

// Brigham & Ehrhardt, project S: internal rate 14.5 % (recalled; recomputed 0.1448884428). HM Treasury, The Green Book
// (2003), ch. 5: options A and B at 3.5 %, net values -0.82 and +0.51 (recalled), so A's benefits are worth 9.18 of 10.
describe("worth of a certain plan", () => {
  it("has the published rate of return of project S", () => {
    const { worth } = budgetOf(flowsAsPlan([-1000, 500, 400, 300, 100], 0.1));
    expect(worth?.returnRate.chance).toBe(1);
    expect(Math.abs((worth?.returnRate.p50 ?? 0) - 0.1448884428)).toBeLessThan(1e-6);
  });
  it.each([
    ["A", [-10, 2.5, 2.5, 2.5, 2.5], (10 - 0.8173019785) / 10, 0],
    ["B", [-5, 1.5, 1.5, 1.5, 1.5], (5 + 0.5096188129) / 5, 1],
  ] as const)(
    "has the ratio of option %s, and says whether it beats doing nothing",
    (_, flows, ratio, better) => {
      const { worth } = budgetOf(flowsAsPlan(flows, 0.035));
      expect(worth?.benefitCost.p50).toBeCloseTo(ratio, 7);
      expect(worth?.benefitCost.chanceAboveOne).toBe(better);
      expect(worth?.doNothing.chanceBetter).toBe(better);
      expect(worth?.returnRate.p50).toBeCloseTo(returnRate(yearly(flows)) ?? Number.NaN, 9);
    },
  );
  it("has no rate where benefits may be negative, and none to name where they never make up for the cost", () => {
    expect(budgetOf(flowsAsPlan([-10, 20, -5], 0.03)).worth?.returnRate).toEqual({ chance: 0 });
    expect(budgetOf(flowsAsPlan([-10, 0, 0], 0.03)).worth?.returnRate).toEqual({ chance: 0 });
  });
});

// Arithmetic on the definitions of the plan format ("Benefits", "Money", "Progress"), no published source.
describe("doing nothing and delay", () => {
  it("adds back what is spent already, which is gone either way", () => {
    const { worth } = budgetOf({
      statusDate: "2027-01-10",
      tasks: [
        { id: "a", name: "A", duration: 10, cost: 700, started: "2027-01-01", finished: "2027-01-10" },
        { id: "b", name: "B", duration: 10, cost: 600, after: "a" },
      ],
      benefits: [{ id: "gain", name: "Gain", amount: 1000, per: "once" }],
      appraisal: { years: 5, discountRate: 0 },
      decision: { doNothing: "The roof leaks on." },
    });
    // 1,000 for 1,300 in all is a loss; from here it is 1,000 for the 600 that remain.
    expect(worth?.appraisal.chancePositive).toBe(0);
    expect(worth?.doNothing).toEqual({
      spent: 700,
      goingOn: 400,
      chanceBetter: 1,
      text: "The roof leaks on.",
    });
  });

  it("prices a week: overheads to the finish, benefits a week later, lateness as the plan prices it", () => {
    const rate = 0.05;
    const { delay } = budgetOf({
      calendar: "weekdays",
      start: "2027-01-04",
      tasks: [
        { id: "a", name: "A", duration: 5 },
        { id: "b", name: "B", duration: 5, after: "a" },
      ],
      overheads: [
        { id: "hut", name: "Hut", perDay: 30 },
        { id: "crane", name: "Crane", perDay: 1000, to: "a" },
      ],
      benefits: [{ id: "gain", name: "Gain", amount: 8000, per: "once" }],
      appraisal: { years: 5, discountRate: rate },
      lateness: { after: "2027-01-08", perWeek: 70, once: 11 },
    });
    // Five working days a week; the crane leaves after A. The finish is the end of day 12 (Friday 15 January).
    expect(delay.overheadsPerWeek).toBeCloseTo(150, 9);
    const lost = 8000 * (discountFactor(rate, 12 / 365.25) - discountFactor(rate, 19 / 365.25));
    expect(delay.benefitsPerWeek).toBeCloseTo(lost, 6);
    expect(delay.lateness).toMatchObject({
      perWeek: 70,
      once: 11,
      chanceLate: 1,
      weeksLate: 1,
      expected: 81,
    });
  });
});

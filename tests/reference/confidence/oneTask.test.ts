/** A plan of one task whose every level is worked by hand. */
import { describe, expect, it } from "vitest";
import { whyConfidence } from "../../../packages/core/src/index.ts";
import { planFrom, seed } from "../integrated/runPlan.ts";
import { expectWithin } from "../integrated/tolerances.ts";

// By hand, from the words of the plan format. 10 days at 55 %, 20 at 27 %, 30 at 18 %, 100 a day; a week late costs
// 700, being late 50. Promise day 10: late in 27 % by 10 days (10 / 7 * 700 + 50 = 1,050) and in 18 % by 20 days
// (2,050): 652.50 on average. Promise day 20: 18 % * 1,050 = 189. Promise day 30: nothing.
const document = {
  format: 1,
  title: "One task",
  start: "2027-03-01",
  calendar: "every-day",
  commitment: { confidence: 0.8, finishBy: "2027-03-15" },
  lateness: { perWeek: 700, once: 50 },
  tasks: [
    {
      id: "work",
      name: "Work",
      duration: {
        outcomes: [
          { value: 10, chance: 0.55 },
          { value: 20, chance: 0.27 },
          { value: 30, chance: 0.18 },
        ],
      },
      costPerDay: 100,
    },
  ],
};
const answer = (changes: object) => {
  const { confidence, problems } = whyConfidence(planFrom({ ...document, ...changes }), { seed });
  if (confidence === undefined) throw new Error(JSON.stringify(problems));
  return confidence;
};

describe("whyConfidence(one task)", () => {
  const found = answer({});
  const at = (p: number) => found.steps.find((step) => step.p === p);

  it("sets the levels side by side", () => {
    expect(found.steps.map(({ p, date, day, cost }) => [p, date, day, cost])).toEqual([
      [0.5, "2027-03-10", 10, 1000],
      ...[0.6, 0.65, 0.7, 0.75, 0.8].map((p) => [p, "2027-03-20", 20, 2000]),
      ...[0.85, 0.9, 0.95].map((p) => [p, "2027-03-30", 30, 3000]),
    ]);
    expect([found.asWritten.date, found.committed.date]).toEqual(["2027-03-10", "2027-03-20"]);
  });

  // Four standard errors of plain sampling at 10,000: deviations 806 and 403.
  it("prices what is left beyond each date", () => {
    expectWithin(at(0.5)?.latenessLeft ?? Number.NaN, 652.5, 33);
    expectWithin(at(0.6)?.latenessLeft ?? Number.NaN, 189, 17);
    expect(at(0.95)?.latenessLeft).toBe(0);
    expectWithin(at(0.6)?.avoided ?? Number.NaN, 463.5, 33);
  });

  it("says what is bought: ten days and 1,000 more held, or nothing", () => {
    expect(at(0.5)?.bought).toBeUndefined();
    expect(at(0.6)?.bought).toEqual({ workingDays: 10, money: 1000 });
    expect(at(0.8)?.bought).toEqual({ workingDays: 0, money: 0 });
  });

  it("says how late and how dear it gets beyond", () => {
    // Beyond day 10: 27 % by 10 days and 18 % by 20, on average 14; money the same a hundredfold.
    expectWithin(at(0.5)?.late.chance ?? Number.NaN, 0.45, 0.02);
    expectWithin(at(0.5)?.late.days ?? Number.NaN, 14, 0.3);
    expectWithin(at(0.5)?.over.money ?? Number.NaN, 1400, 30);
    expect(at(0.9)?.late).toEqual({ chance: 0, days: 0 });
    expect(at(0.9)?.over).toEqual({ chance: 0, money: 0 });
  });

  it("stops at 50 %: 1,000 more held avoids 463.50", () => {
    expect(found.stop?.p).toBe(0.5);
    expect(found.stop?.next?.p).toBe(0.6);
    expect(found.stop?.next?.costs).toBe(1000);
    expect(at(0.6)?.worthIt).toBe(false);
    expect(found.stop?.clear).toBe(true);
  });

  it("stops at 60 % when a week costs 1,610: then 1,030.50 is avoided for 1,000, and the next 432 for 1,000", () => {
    // 0.27 * 2,350 + 0.18 * 4,650 = 1,471.50; 0.18 * 2,350 = 423. The difference, 1,048.50, is within chance of 1,000.
    const dear = answer({ lateness: { perWeek: 2100, once: 50 } });
    // 0.27 * 3,050 + 0.18 * 6,050 = 1,912.50; 0.18 * 3,050 = 549: 1,363.50 avoided for 1,000, then 549 for 1,000.
    expect(dear.stop?.p).toBe(0.6);
    expect(dear.steps.filter(({ worthIt }) => worthIt === true).map(({ p }) => p)).toEqual([0.6]);
  });

  it("climbs to 85 % when every step pays, and says nothing of a next one that costs nothing", () => {
    // 10,000 a week: 0.18 * (14,285.71 + 50) = 2,580 avoided by the last 1,000.
    const dear = answer({ lateness: { perWeek: 10_000, once: 50 } });
    expect(dear.stop?.p).toBe(0.85);
    expect(dear.stop?.next).toEqual({ p: 0.9, costs: 0, avoids: 0 });
  });

  it("cannot tell when lateness has no price, and says what to add", () => {
    const { lateness: _, ...rest } = document;
    const { confidence } = whyConfidence(planFrom(rest), { seed });
    expect(confidence?.missing).toContain("lateness: { perWeek");
    expect([confidence?.stop, confidence?.lateness]).toEqual([undefined, undefined]);
    expect(confidence?.steps.some((step) => step.latenessLeft !== undefined)).toBe(false);
  });

  it("prices lateness without a date to be late after: each date is one in turn", () => {
    const { finishBy: _, ...commitment } = document.commitment;
    const free = answer({ commitment });
    expect(free.steps.map((step) => step.latenessLeft)).toEqual(found.steps.map((step) => step.latenessLeft));
  });

  it("uses uncertain prices on draws of their own", () => {
    // Independent of the finish, so on average 700 again: 0.5 * 200 + 0.5 * 1,200; deviation of a mean below 20.
    const spread = answer({
      lateness: {
        perWeek: {
          outcomes: [
            { value: 200, chance: 0.5 },
            { value: 1200, chance: 0.5 },
          ],
        },
        once: 50,
      },
    });
    expect(spread.lateness?.perWeek).toBeCloseTo(700, -1);
    expect(spread.lateness?.once).toBeCloseTo(50, 9);
    expectWithin(spread.steps[0]?.latenessLeft ?? Number.NaN, 652.5, 45);
    expect(spread.steps[0]?.latenessLeft).not.toBe(found.steps[0]?.latenessLeft);
  });
});

// When an agreed return trigger trips, is close, or is quiet. That a condition trips strictly below (above) its limit is
// what its name says; five points as "close" are common practice, no source. Limits of a chance are Wilson's: the values
// 0.2553 and 0.3662 for 81 of 263 are Newcombe's (1998, Statistics in Medicine 17, 857-872, table I, method 3; recalled).
import { triggerCondition, triggerStands } from "@leeway/charts";
import { contingencyLeft, evaluateTriggers, type Forecast, forecast, type Plan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { mustRead } from "../plan/plans.ts";

const planWith = (triggers: string, more = "") =>
  mustRead(`format: 1
title: T
start: 2027-01-04
statusDate: 2027-01-05
iterations: 64
commitment: { confidence: 0.5, finishBy: 2027-01-20, budget: 1000 }
tasks: [{ id: a, name: A, duration: [3, 5, 9], cost: [500, 800, 1300] }]
assumptions: [{ id: s, statement: Dry cellar, signpost: A wet wall, chanceWrong: 0.1${more} }]
returnTriggers: [${triggers}]
`);
const forecastOf = (plan: Plan): Forecast => {
  const { forecast: found } = forecast(plan);
  if (found === undefined) throw new Error("no forecast");
  return found;
};
const unbegun = (triggers: string) => {
  const { approvalSha256, ...plan } = planWith(triggers);
  const { statusDate: _, ...rest } = plan;
  return { ...rest, approvalSha256, sha256: approvalSha256 };
};
/** One trigger at a forecast in which some figures are set by hand. */
function stateAt(trigger: string, change: (forecast: Forecast) => Forecast, more = "") {
  const plan = planWith(`{ id: t, ${trigger} }`, more);
  const [found] = evaluateTriggers(plan, change(forecastOf(plan))).triggers;
  return found;
}
const chance = (k: number, n: number) => (found: Forecast) => ({
  ...found,
  iterations: n,
  chance: { finishBy: k / n, budget: k / n, both: 0 },
});

describe.each(["chanceOfDateBelow", "chanceOfBudgetBelow"])("%s", (key) => {
  it.each([
    [0.31, "tripped", true],
    [81 / 263, "close", true], // as likely as the limit is not below it
    [0.3, "close", true],
    [0.26, "close", true], // within five points, and above the lower limit, 0.2553
    [0.255, "quiet", false], // more than five points away, and below the lower limit
    [0.37, "tripped", false], // above the upper limit, 0.3662
    [0.36, "tripped", true],
    [0, "quiet", false],
    [1, "tripped", false],
  ] as const)("at 81 of 263 futures and a limit of %s is %s", (limit, state, uncertain) => {
    expect(stateAt(`${key}: ${limit}`, chance(81, 263))).toMatchObject({ state, uncertain });
  });
  it("tells value, limits and what was agreed", () => {
    const found = stateAt(`${key}: 0.3`, chance(81, 263));
    expect(found?.chance?.value).toBe(81 / 263);
    expect(found?.chance?.low).toBeCloseTo(0.2553, 4);
    expect(found?.chance?.high).toBeCloseTo(0.3662, 4);
    expect(found?.chance?.asked).toBe(key === "chanceOfDateBelow" ? "2027-01-20" : 1000);
  });
  it("says whether what it is measured against was signed or only asked for", () => {
    const plan = planWith(`{ id: t, ${key}: 0.3 }`);
    const now = evaluateTriggers(plan, chance(81, 263)(forecastOf(plan)));
    const [found] = now.triggers;
    if (found?.chance === undefined) throw new Error("not measured");
    expect(triggerCondition(now, found)).toContain(" asked for, is below 30 %");
    expect(triggerStands(now, found)).toContain("Once this plan is signed");
    const signed = { ...found, chance: { ...found.chance, from: "signed" as const } };
    expect(triggerCondition(now, signed)).toContain(" signed, is below 30 %");
    expect(triggerStands(now, signed)).toMatch(/^It is \S+ % \(.*\)\.$/);
  });
  it("is measured against what this plan commits to, once somebody has signed this very plan", () => {
    const asked = key === "chanceOfDateBelow" ? "date" : "cost";
    const open = planWith(`{ id: t, ${key}: 0.3 }`).approvalSha256;
    // Without progress: with it, the plan as it was signed would have to be run.
    const bare = unbegun(`{ id: t, ${key}: 0.3 }`);
    const signedBy = (hash: string) => ({
      ...bare,
      approvals: [{ who: "chair", decision: "approve" as const, date: "2027-01-03", plan: hash }],
    });
    const found = forecastOf(bare);
    const [now] = evaluateTriggers(signedBy(bare.approvalSha256), found).triggers;
    expect(now?.chance).toMatchObject({ from: "signed", asked: found.committed[asked] });
    expect(now?.chance?.onceSigned).toBeUndefined();
    // By definition of a percentile; the curve tells it to the half per cent.
    expect(now?.chance?.value).toBeGreaterThanOrEqual(0.5);
    const [before] = evaluateTriggers(bare, found).triggers;
    expect(before?.chance).toMatchObject({ from: "plan", onceSigned: found.committed[asked] });
    const [other] = evaluateTriggers(signedBy("0".repeat(64)), found).triggers;
    if (other === undefined) throw new Error("none");
    expect(other.chance?.from).toBe("plan");
    expect(triggerStands({ currency: "EUR" }, other)).toContain("that was signed is not known here");
    expect(open).toBe(bare.approvalSha256);
  });
  it("cannot be measured where nothing was agreed", () => {
    const bare = (found: Forecast): Forecast => ({ ...found, chance: {}, asked: {} });
    expect(stateAt(`${key}: 0.3`, bare)).toMatchObject({ state: "unknown", uncertain: false });
  });
});

describe("contingencyCoverBelow", () => {
  const at = (limit: number, left: number, exposure: number, half = 0) => {
    const plan = planWith(`{ id: t, contingencyCoverBelow: ${limit} }`);
    const cover = {
      agreed: 100 + left,
      agreedFrom: "plan" as const,
      asWritten: 100,
      left,
      committed: 100 + exposure,
      low: 100 + exposure - half,
      high: 100 + exposure + half,
      exposure,
      spare: left - exposure,
      ...(exposure > 1e-9 ? { ratio: left / exposure } : {}),
      chance: 0.5,
    };
    return evaluateTriggers(plan, forecastOf(plan), { money: cover }).triggers[0];
  };
  it.each([
    [1, 100, 100, 0, "close", false], // as much as is needed covers it, but only just
    [1, 99.9, 100, 0, "tripped", false],
    [1, 99.9, 100, 1, "tripped", true],
    [1, 104.9, 100, 0, "close", false],
    [1, 105.1, 100, 0, "quiet", false],
    [1, 105.1, 100, 6, "close", true],
    [0.5, 49, 100, 0, "tripped", false],
    [0.5, 60, 100, 0, "quiet", false],
    [1, -5, 100, 0, "tripped", false],
    [1, 0, 0, 0, "quiet", false], // all is done, and nothing is short
    [1, -1, 0, 0, "tripped", false], // all is done, and more was used than there was
  ] as const)(
    "limit %s with %s left for %s (+- %s) is %s",
    (limit, left, exposure, half, state, uncertain) => {
      expect(at(limit, left, exposure, half)).toMatchObject({ state, uncertain });
    },
  );
  it("is decided by the worse of money and days", () => {
    const plan = planWith("{ id: t, contingencyCoverBelow: 1 }");
    const { left } = contingencyLeft(plan, {
      agreed: { money: 1_000_000, date: "2027-01-05" },
      ahead: false,
    });
    expect(left?.money?.ratio).toBeGreaterThan(100);
    const [found] = evaluateTriggers(plan, forecastOf(plan), left).triggers;
    expect(found?.cover?.parts.map(({ kind, state }) => `${kind} ${state}`)).toEqual([
      "money quiet",
      "days tripped",
    ]);
    expect(found?.state).toBe("tripped");
  });
  it("cannot be measured without what was agreed", () => {
    const plan = planWith("{ id: t, contingencyCoverBelow: 1 }");
    expect(evaluateTriggers(plan, forecastOf(plan)).triggers[0]?.state).toBe("unknown");
  });
});

describe("signpost", () => {
  const same = (found: Forecast) => found;
  it.each([
    ["not seen", "", "quiet"],
    ["seen", ", tripped: 2027-01-05", "tripped"],
    ["proved wrong, though nobody saw a sign", ", status: occurred", "tripped"],
    ["closed", ", status: closed", "quiet"],
  ])("%s is %s", (_, more, state) => {
    expect(stateAt("signpost: s", same, more)).toMatchObject({ state, uncertain: false });
  });
  it("tells when nobody looked by the day of review", () => {
    expect(stateAt("signpost: s", same, ", reviewBy: 2027-01-05")?.signpost?.reviewDue).toBe("2027-01-05");
    expect(stateAt("signpost: s", same, ", reviewBy: 2027-01-06")?.signpost?.reviewDue).toBeUndefined();
  });
});

describe("finishLaterThan", () => {
  // Curves are set by hand: the date at 55 %, five points above the level, is the end of day 10, Thursday 14 January.
  const dated = (date: string, lowDate: string, highDate: string) => (found: Forecast) => ({
    ...found,
    committed: { ...found.committed, date, lowDate, highDate },
    finish: { ...found.finish, curve: { p: [0.5, 0.55, 0.6], at: [10, 11, 12] } },
  });
  it.each([
    ["2027-01-12", "2027-01-13", "2027-01-13", "2027-01-13", "tripped", false],
    ["2027-01-12", "2027-01-13", "2027-01-12", "2027-01-14", "tripped", true],
    ["2027-01-13", "2027-01-13", "2027-01-13", "2027-01-13", "close", false], // five points more would be the 14th
    ["2027-01-14", "2027-01-13", "2027-01-13", "2027-01-14", "quiet", false],
    ["2027-01-14", "2027-01-13", "2027-01-12", "2027-01-15", "close", true],
  ] as const)("limit %s at %s (%s to %s) is %s", (limit, date, low, high, state, uncertain) => {
    expect(stateAt(`finishLaterThan: ${limit}`, dated(date, low, high))).toMatchObject({ state, uncertain });
  });
});

describe("costAbove", () => {
  const priced = (cost: number, costLow: number, costHigh: number) => (found: Forecast) => ({
    ...found,
    committed: { ...found.committed, cost, costLow, costHigh },
    cost: { ...found.cost, curve: { p: [0.5, 0.55, 0.6], at: [cost, cost + 50, cost + 100] } },
  });
  it.each([
    [999, 1000, 1000, 1000, "tripped", false],
    [1000, 1000, 1000, 1000, "close", false], // the limit itself is not above it
    [1050, 1000, 990, 1010, "quiet", false],
    [1049, 1000, 990, 1010, "close", false],
    [1005, 1000, 990, 1010, "close", true],
    [995, 1000, 990, 1010, "tripped", true],
  ] as const)("limit %s at %s (%s to %s) is %s", (limit, cost, low, high, state, uncertain) => {
    expect(stateAt(`costAbove: ${limit}`, priced(cost, low, high))).toMatchObject({ state, uncertain });
  });
});

describe("conditions of an approval", () => {
  const planOn = (more: string) =>
    mustRead(`format: 1
title: T
start: 2027-01-04
statusDate: 2027-01-05
iterations: 64
stakeholders: { id: chair, name: The chair }
approvals: { who: chair, decision: approve-subject-to, conditions: A scaffold is found${more} }
tasks: [{ id: a, name: A, duration: [3, 5, 9] }]
`);
  const at = (more: string, today?: string) => {
    const plan = planOn(more);
    return evaluateTriggers(plan, forecastOf(plan), undefined, today).triggers;
  };
  it.each([
    ["the day itself", ", conditionsBy: 2027-01-06", "2027-01-06", "quiet"],
    ["the day after", ", conditionsBy: 2027-01-06", "2027-01-07", "tripped"],
    ["a status date after it", ", conditionsBy: 2027-01-04", undefined, "tripped"],
    ["met in time or not", ", conditionsBy: 2027-01-06, conditionsMet: 2027-01-08", "2027-01-09", "quiet"],
  ])("%s", (_, more, today, state) => {
    expect(at(more, today)).toMatchObject([{ id: "conditions-of-chair", condition: "conditionsBy", state }]);
  });
  it("without a day ask nothing", () => {
    expect(at("", "2030-01-01")).toEqual([]);
  });
  it("are told in words", () => {
    const [trigger] = at(", conditionsBy: 2027-01-06", "2027-01-07");
    if (trigger === undefined) throw new Error("none");
    expect(triggerCondition({ currency: "EUR" }, trigger)).toBe(
      "the condition of The chair is not met by Wed 6 Jan 2027: A scaffold is found",
    );
    expect(triggerStands({ currency: "EUR" }, trigger)).toContain("Reached: the day has passed");
  });
});

describe("evaluateTriggers(plan, forecast, left)", () => {
  it("measures chances against what the signed version commits to, where that is known", () => {
    const plan = planWith("{ id: t, chanceOfDateBelow: 0.5 }, { id: u, chanceOfBudgetBelow: 0.5 }");
    const { left } = contingencyLeft(plan, { signed: plan, ahead: false });
    const [date, sum] = evaluateTriggers(plan, forecastOf(plan), left).triggers;
    expect(date?.chance).toMatchObject({ from: "signed", asked: left?.days?.agreedDate });
    expect(sum?.chance).toMatchObject({ from: "signed", asked: left?.money?.agreed });
    // By definition of a percentile at least half of the futures keep to it.
    expect(date?.chance?.value).toBeGreaterThanOrEqual(0.5);
    expect(sum?.chance?.value).toBeGreaterThanOrEqual(0.5);
  });
  it("keeps the order of the plan, and has none where none is agreed", () => {
    const plan = planWith("{ id: z, costAbove: 1 }, { id: y, name: First, signpost: s }");
    const { triggers } = evaluateTriggers(plan, forecastOf(plan));
    expect(triggers.map(({ id, name }) => [id, name])).toEqual([
      ["z", undefined],
      ["y", "First"],
    ]);
    const none = planWith("");
    expect(evaluateTriggers(none, forecastOf(none)).triggers).toEqual([]);
  });
});

describe("how a trigger stands, in words", () => {
  const words = (trigger: string, change: (forecast: Forecast) => Forecast = (found) => found, more = "") => {
    const found = stateAt(trigger, change, more);
    if (found === undefined) throw new Error("none");
    return triggerStands({ currency: "EUR" }, found);
  };
  const committed = (more: Partial<Forecast["committed"]>) => (found: Forecast) => ({
    ...found,
    committed: { ...found.committed, ...more },
  });
  it("says plainly that it is reached, with both sides of the condition", () => {
    expect(words("chanceOfDateBelow: 0.6", chance(22, 100))).toMatch(
      /^Reached: 22 % \(.*\) is below 60 %\. /,
    );
    expect(words("chanceOfBudgetBelow: 0.6", chance(22, 100))).toMatch(
      /^Reached: 22 % \(.*\) is below 60 %\. /,
    );
    const late = { date: "2027-01-13", lowDate: "2027-01-13", highDate: "2027-01-13" };
    expect(words("finishLaterThan: 2027-01-12", committed(late))).toBe(
      "Reached: Wed 13 Jan 2027 is later than Tue 12 Jan 2027.",
    );
    expect(words("costAbove: 999", committed({ cost: 1200, costLow: 1200, costHigh: 1200 }))).toBe(
      "Reached: EUR 1,200 is above EUR 999.",
    );
    expect(words("signpost: s", undefined, ", tripped: 2027-01-05")).toBe("Reached: seen on Tue 5 Jan 2027.");
    const plan = planWith("{ id: t, contingencyCoverBelow: 1 }");
    const { left } = contingencyLeft(plan, { agreed: { money: 600 }, ahead: false });
    const [cover] = evaluateTriggers(plan, forecastOf(plan), left).triggers;
    if (cover === undefined) throw new Error("none");
    expect(triggerStands({ currency: "EUR" }, cover)).toMatch(/^Reached: in money, none left/);
  });
  it("says of an assumption whose sign was not seen that it still holds", () => {
    expect(words("signpost: s")).toBe("Not seen: the assumption still holds, as far as anybody has said.");
  });
  it("does not deny what was agreed where only the cover was not worked out", () => {
    expect(words("contingencyCoverBelow: 1")).toBe(
      "What is left of the contingency was not worked out with this forecast.",
    );
  });
});

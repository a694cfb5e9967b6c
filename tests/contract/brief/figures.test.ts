// Every figure of a brief is one of forecast, explain, responses and confidence: each is asked anew and compared.
import { briefSheet } from "@leeway/charts/brief";
import { explain, forecast, responses, whyConfidence } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { briefed, examplePlan, fullPlan, planOf, today } from "./plans.ts";

const options = { iterations: 400 };

describe.each([
  ["the clinic", examplePlan("quillmarsh-clinic")],
  ["a small plan that says everything", planOf(fullPlan)],
])("brief of %s", (_name, plan) => {
  const { brief } = briefed(plan, options.iterations);
  const outlook = forecast(plan, { ...options, tornado: true }).forecast;
  const why = explain(plan, options).explanation;
  const bought = responses(plan, options).responses;
  const level = whyConfidence(plan, options).confidence;
  if (outlook === undefined || why === undefined || bought === undefined || level === undefined) {
    throw new Error("the plan has no answers");
  }

  it("commits to what the forecast commits to, and asks what the plan asks", () => {
    const { commitment, decision, confidence } = brief;
    expect(commitment.committed).toEqual(outlook.committed);
    expect(commitment.contingency).toEqual(outlook.contingency);
    expect(commitment.chance).toEqual(outlook.chance);
    expect(commitment.asWritten).toEqual({
      ...outlook.asWritten,
      finishChance: outlook.finish.asWrittenChance,
      costChance: outlook.cost.asWrittenChance,
    });
    expect([decision.date, decision.cost, confidence]).toEqual([
      outlook.committed.date,
      outlook.committed.cost,
      plan.commitment.confidence,
    ]);
    expect(commitment.asked).toEqual({
      finishBy: plan.commitment.finishBy,
      budget: plan.commitment.budget,
    });
    expect(commitment.reserve).toBe(plan.commitment.reserve);
    expect(commitment.together).toEqual(level.joint.equal);
    expect(commitment.firstShortfall).toEqual(outlook.firstShortfall);
  });

  it("shows the explanation's shares, and its rows add up to the contingency", () => {
    const { rows, rest, whole } = brief.drivers;
    for (const { id, workingDays, money } of rows) {
      const share = why.shares.find((each) => each.id === id);
      expect({ workingDays, money }).toEqual({ workingDays: share?.workingDays, money: share?.money });
    }
    const all = [...rows, ...(rest === undefined ? [] : [rest])];
    const sum = (of: (row: { workingDays: number; money: number }) => number) =>
      all.reduce((total, row) => total + of(row), 0);
    expect(whole).toEqual(why.contingency);
    expect(sum(({ workingDays }) => workingDays)).toBeCloseTo(why.contingency.workingDays, 9);
    expect(sum(({ money }) => money)).toBeCloseTo(why.contingency.money, 6);
    expect(rows.length).toBeLessThanOrEqual(5);
  });

  it("tells responses, worth and lateness as they were answered", () => {
    const told = [...brief.responses.adopted, ...brief.responses.worthBuying, ...brief.responses.others];
    expect(told.length).toBe(bought.responses.length);
    for (const { owner: _owner, due: _due, ...worth } of told) {
      expect(worth).toEqual(bought.responses.find(({ id }) => id === worth.id));
    }
    for (const { given } of brief.responses.worthBuying) expect(given.netWorth).toBeGreaterThan(0);
    const { benefits: _, ...net } = outlook.appraisal ?? { benefits: [] };
    expect(brief.worth.appraisal).toEqual(net);
    expect(brief.worth.lateness).toEqual({ ...outlook.lateness, ...level.lateness });
  });

  it("weighs assumptions by the bars of the forecast's tornado", () => {
    for (const { id, ifWrong, occurred } of brief.assumptions) {
      const bar = outlook.tornado?.find((each) => each.id === id);
      if (!occurred) expect(ifWrong).toEqual(bar?.high ?? { workingDays: 0, money: 0 });
    }
    expect(brief.assumptions.length).toBe(plan.assumptions.length);
  });

  it("shows neighbours of the level with the forecast's own percentiles", () => {
    for (const { p, date, cost } of brief.recommendation.levels) {
      expect(date).toBe(outlook.finish.percentiles.find((each) => each.p === p)?.date);
      expect(cost).toBe(outlook.cost.percentiles.find((each) => each.p === p)?.value);
    }
    expect(brief.recommendation.levels.map(({ p }) => p)).toEqual([0.5, 0.9]);
  });

  it("carries the run stamp of the forecast, and the day it was written on", () => {
    const { seed, iterations, version, design } = outlook;
    expect(brief.stamp).toEqual({ seed, iterations, version, design, sha256: outlook.plan.sha256 });
    expect(brief.today).toBe(today);
  });

  it("prints columns of drivers that add up as they are read", () => {
    const table = briefSheet(brief)
      .sections.find(({ key }) => key === "drivers")
      ?.blocks.find(({ kind }) => kind === "table");
    if (table?.kind !== "table") throw new Error("there is no table of drivers");
    for (const column of [1, 2]) {
      const numbers = table.rows.map(({ cells }) =>
        Number((cells[column] ?? "").replaceAll(",", "").replace("−", "-")),
      );
      const whole = numbers.pop();
      expect(numbers.reduce((sum, each) => sum + each, 0)).toBeCloseTo(whole ?? Number.NaN, 6);
    }
  });

  it("is plain JSON", () => {
    expect(JSON.parse(JSON.stringify(brief))).toEqual(brief);
  });
});

describe("doing nothing", () => {
  // Plan format: a twelfth of a year's amount, 365.25/84 of a week's, the month's own. Worked by hand.
  it("forgoes the benefits of a month, as written", () => {
    const base = fullPlan.replace("{ id: tools, name: Tools kept, amount: 120, per: month }", "BENEFIT");
    const perMonth = (benefit: string) =>
      briefed(planOf(base.replace("BENEFIT", benefit)), 50).brief.recommendation.doNothing.perMonth;
    expect(perMonth("{ id: tools, name: T, amount: 120, per: month }")).toBe(120);
    expect(perMonth("{ id: tools, name: T, amount: [60, 120, 400], per: year }")).toBe(10);
    expect(perMonth("{ id: tools, name: T, amount: 84, per: week }")).toBeCloseTo(365.25, 9);
    expect(perMonth("{ id: tools, name: T, quantity: 3, unit: loaves, worth: 4, per: month }")).toBe(12);
    expect(perMonth("{ id: tools, name: T, amount: 900, per: once }")).toBeUndefined();
  });
});

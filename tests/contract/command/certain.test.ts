// What no future moves is certain, and no chance is said of it; sums in sentences carry no digit that is not known.
// The words are the house's own; the arithmetic of each plan is done by hand beside it.
import { holdsWords, triggerStands } from "@leeway/charts";
import { brief, budget, contingencyLeft, evaluateTriggers, forecast, signPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { askedSentence, asWrittenSentence, commitSentence } from "../../../apps/command/src/text/answer.ts";
import { budgetSentences } from "../../../apps/command/src/text/budgetAnswer.ts";
import { deadline } from "../../../packages/charts/src/brief/parts/decision.ts";
import { mustRead } from "../plan/plans.ts";

const planOf = (task: string, more = "") =>
  mustRead(`format: 1
title: Walk
start: 2027-02-01
iterations: 512
commitment: { finishBy: 2027-02-03, budget: 90${more} }
stakeholders: { id: chair, name: The chair, approvesUpTo: 100 }
tasks: [{ id: go, name: Go, ${task} }]
`);
const forecastOf = (plan: ReturnType<typeof planOf>) => {
  const found = forecast(plan).forecast;
  if (found === undefined) throw new Error("no forecast");
  return found;
};

describe("a plan that knows nothing uncertain", () => {
  const certain = forecastOf(planOf("duration: 3, cost: 100"));
  it("is certain, and does not hold so many times in ten", () => {
    expect(commitSentence(certain)).toBe(
      "Commit to Wednesday 3 February 2027 and EUR 100: both are certain, for nothing in the plan would move them.",
    );
    expect(askedSentence(certain)).toBe(
      "You asked for Wednesday 3 February 2027 and EUR 90: certain by that day, certainly not within that sum, certainly not both.",
    );
    expect(asWrittenSentence(certain)).toContain("finishing as early: certain; of costing no more: certain.");
  });
  it("says which of the two is certain where one is", () => {
    expect(commitSentence(forecastOf(planOf("duration: 3, cost: [80, 100, 130]")))).toContain(
      "the date is certain, for nothing in the plan would move it; the sum holds 8 times in 10",
    );
    expect(commitSentence(forecastOf(planOf("duration: [2, 3, 6], cost: 100")))).toContain(
      "the sum is certain, for nothing in the plan would move it; the date holds 8 times in 10",
    );
    expect(holdsWords({ each: "E", both: "B", date: false, sum: false, money: true })).toBe(
      "each holds E, both together B",
    );
    expect(holdsWords({ each: "E", both: "B", date: false, sum: true, money: false })).toBe("it holds E");
  });
});

describe("digits", () => {
  // 101,234 a day for three days; the range makes limits of thousands.
  const plan = planOf("duration: [2, 3, 6], costPerDay: 101234", ", reserve: 1234");
  it("of what the plan states stay, of what was sampled go: money says of both what the forecast says", () => {
    const { budget: answer } = budget(plan);
    if (answer === undefined) throw new Error("no answer");
    const { first, others } = budgetSentences(answer);
    expect(first).toContain("EUR 303,702 as written");
    expect(asWrittenSentence(forecastOf(plan))).toContain("EUR 303,702");
    expect(others.join(" ")).toContain("reserve of EUR 1,234 ");
    const committed = /costs (EUR [\d,]+) at most/.exec(first)?.[1] ?? "none";
    expect(commitSentence(forecastOf(plan))).toContain(`${committed}:`);
    expect(committed).toMatch(/,000$/);
  });
  it("of a cover are those of the committed sum, whose limits at so few futures are tens of thousands apart", () => {
    const watched = planOf("duration: [2, 3, 6], costPerDay: 101234", ", holder: chair");
    const withTrigger = { ...watched, returnTriggers: [{ id: "c", contingencyCoverBelow: 1 }] };
    const { left } = contingencyLeft(withTrigger, { agreed: { money: 412_345 }, ahead: false });
    const [trigger] = evaluateTriggers(withTrigger, forecastOf(withTrigger), left).triggers;
    if (trigger === undefined) throw new Error("none");
    expect(triggerStands({ currency: "EUR" }, trigger)).toMatch(
      /EUR 110,000 left for EUR \d+0,000 of exposure/,
    );
  });
  it("of a refused signature are three", () => {
    const said = (sum: number) =>
      signPlan("", plan, { who: "chair", decision: "approve", accepts: [], date: "2027-01-20", sum })
        .refusals.map(({ rule }) => rule)
        .join();
    expect(said(123_456)).toContain("asks for EUR 123,000.");
    expect(said(100.6)).toContain("asks for EUR 101.");
    expect(said(100.49)).toBe("");
  });
});

describe("the day for a decision", () => {
  const { brief: written } = brief(planOf("duration: [2, 3, 6], cost: 100"), { today: "2027-01-01" });
  const on = (today: string) => {
    if (written === undefined) throw new Error("no brief");
    return deadline({ ...written, decision: { ...written.decision, by: "2027-01-25" }, today });
  };
  it("is said to have passed once it has", () => {
    expect(on("2027-01-25")).toBe("Decide by Mon 25 Jan 2027.");
    expect(on("2027-01-26")).toBe("Decide by Mon 25 Jan 2027. That day has passed.");
  });
});

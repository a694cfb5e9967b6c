// What the page says of entries: of an appraisal over no years nothing is worth anything (arithmetic); a chance is told
// with the date that it is of; what is met is said to be met.
import { evaluateTriggers, forecast } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { conditionWords, standsWords } from "../../../apps/notebook/src/elements/returnTriggersList.ts";
import { readYears } from "../../../apps/notebook/src/plan/readYears.ts";
import { mustRead } from "../plan/plans.ts";

describe("years counted", () => {
  it.each(["0", "0.5", "-3", "101"])("are refused in words: %s", (text) => {
    expect(readYears(text)).toEqual({
      words: "Benefits are counted over at least 1 year and at most 100. Write 5.",
    });
  });
  it.each([
    ["1", 1],
    ["5", 5],
    ["100", 100],
  ])("are taken: %s", (text, value) => {
    expect(readYears(text)).toEqual({ value });
  });
});

describe("a row of a return trigger", () => {
  const plan = mustRead(`format: 1
title: T
start: 2027-01-04
iterations: 64
commitment: { confidence: 0.5, finishBy: 2027-01-05 }
tasks: [{ id: a, name: A, duration: [3, 5, 9] }]
returnTriggers: [{ id: t, chanceOfDateBelow: 0.6 }, { id: u, finishLaterThan: 2027-06-30 }, { id: v, contingencyCoverBelow: 1 }]
`);
  const { forecast: found } = forecast(plan);
  if (found === undefined) throw new Error("no forecast");
  const stands = evaluateTriggers(plan, found);
  const row = (at: number) => {
    const [trigger, now] = [plan.returnTriggers[at], stands.triggers[at]];
    if (trigger === undefined || now === undefined) throw new Error("none");
    return { condition: conditionWords(trigger, plan, now), stands: standsWords(stands, now) };
  };
  it("names the date that a chance is of and who says it, and that it is reached", () => {
    expect(row(0).condition.replace(/\u00a0/g, " ")).toBe(
      "the chance of finishing by Tue 5 Jan 2027, the date asked for, is below, %",
    );
    expect(row(0).stands).toMatch(/^Reached: .* is below 60 %\. Once this plan is signed, /);
  });
  it("names the committed date", () => {
    expect(row(1).condition).toBe("the committed date is later than");
    expect(row(1).stands).toMatch(/^It is /);
  });
  it("leads to where the cover is worked out", () => {
    expect(row(2).stands).toContain("The section Money shows it.");
  });
});

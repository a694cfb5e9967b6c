// The estimate interview: extremes before the middle, one-sided questions (Teigen & Jorgensen 2005, Applied Cognitive
// Psychology 19, 455-475), order checked, read back before it is written down.
import {
  addOpinion,
  answerInterview,
  askableOf,
  beginInterview,
  type Interview,
  interviewQuestion,
  setInPlan,
} from "@leeway/core";
import { describe, expect, it } from "vitest";
import { mustRead } from "../plan/plans.ts";

const PLAN = `format: 1
title: T
start: 2027-01-04
people: [{ id: ana, name: Ana }]
tasks:
  - id: dig # the trench
    name: Dig
    duration: [3, 4, 8]
    cost: [100, 120, 200]
  - { id: plan, name: Plan it, effort: 3, people: ana }
  - { id: end, name: End, milestone: true }
risks:
  - { id: rock, name: Rock in the ground, probability: 0.2, impacts: [{ tasks: dig, delay: 3 }] }
assumptions:
  - { id: digger, statement: The digger is free., chanceWrong: 0.2, impacts: [{ tasks: dig, delay: 3 }] }
`;
const [dig, effort, end] = mustRead(PLAN).tasks;
if (dig === undefined || effort === undefined || end === undefined) throw new Error("no tasks");
const begin = () => {
  const [asked] = askableOf(mustRead(PLAN), dig);
  if (asked === undefined) throw new Error("nothing to ask");
  return beginInterview({ ...asked, by: "ana", date: "2026-11-02" });
};
const run = (...answers: string[]): Interview => answers.reduce(answerInterview, begin());
const key = (interview: Interview) => interview.question?.key;

describe("askableOf(plan, task)", () => {
  it("gives time and cost with their units and what the register counts on its own", () => {
    const plan = mustRead(PLAN);
    expect(askableOf(plan, dig)).toEqual([
      {
        task: "dig",
        name: "Dig",
        of: "duration",
        unit: "days",
        unitWords: "working days",
        events: ["Rock in the ground"],
        holds: ["The digger is free."],
      },
      {
        task: "dig",
        name: "Dig",
        of: "cost",
        unit: "money",
        unitWords: "EUR",
        events: ["Rock in the ground"],
        holds: ["The digger is free."],
      },
    ]);
    expect(askableOf(plan, effort)).toMatchObject([
      { of: "effort", unitWords: "person-days", events: [], holds: [] },
    ]);
    expect(askableOf(plan, end)).toEqual([]);
  });
});

describe("answerInterview(interview, answer)", () => {
  it("asks for the basis, the high end, the low end and only then the likely value", () => {
    const keys = [
      begin(),
      run("Dug two"),
      run("Dug two", "9"),
      run("Dug two", "9", "3"),
      run("Dug two", "9", "3", "5"),
    ].map(key);
    expect(keys).toEqual(["basis", "high", "low", "likely", "dissent"]);
    expect(key(run("Dug two", "9", "3", "5", ""))).toBe("confirm");
  });

  it("asks one-sidedly, one time in ten, with the events of the register set aside", () => {
    const high = run("Dug two").question?.text ?? "";
    expect(high).toContain("only one of the ten exceed");
    expect(high).toContain(
      "Suppose that none of this happens: “Rock in the ground”, and that this holds: “The digger is free”;",
    );
    expect(run("Dug two", "9").question?.text).toContain("only one of the ten stay below");
    expect(`${high}${run("Dug two", "9").question?.text}`).not.toMatch(/between|maximum|minimum|at most/);
  });

  it("never shows a value before it is answered", () => {
    for (const each of ["basis", "high", "low", "likely"] as const) {
      const { text, help } = interviewQuestion(each, begin().subject);
      expect(text + help.replace(/like 7\.5/, "")).not.toMatch(/\d/);
    }
  });

  it("ends with the opinion: who, when, why, in which order, and what they do not agree with", () => {
    const done = run("Dug two", "9", "3", "5", "The trench is too deep", "yes");
    expect(done.question).toBeUndefined();
    expect(done.opinion).toEqual({
      by: "ana",
      date: "2026-11-02",
      of: "duration",
      estimate: {
        kind: "range",
        low: 3,
        likely: 5,
        high: 9,
        shape: "pert",
        bounds: "p10-p90",
        unit: "days",
      },
      basis: "Dug two",
      order: ["basis", "high", "low", "likely", "dissent"],
      dissent: "The trench is too deep",
    });
    expect(answerInterview(done, "no")).toBe(done);
  });

  it("reads back what the answers imply", () => {
    const { implied } = run("Dug two", "9", "3", "5", "");
    // By construction of the curve: its one-in-ten values are those that were said.
    expect(implied?.p10).toBeCloseTo(3, 5);
    expect(implied?.p90).toBeCloseTo(9, 5);
    expect(implied?.p50).toBeGreaterThan(5); // the longer side is above
    expect(implied?.mean).toBeGreaterThan(implied?.p50 ?? Number.POSITIVE_INFINITY);
    // A symmetric answer: median, mean and likely are one (beta with equal parameters).
    const even = run("Dug two", "9", "3", "6", "").implied;
    expect(even?.p50).toBeCloseTo(6, 9);
    expect(even?.mean).toBeCloseTo(6, 9);
  });

  it("explains what is out of order and asks the same again", () => {
    const low = run("Dug two", "5", "7");
    expect([key(low), low.answers.low, low.order]).toEqual(["low", undefined, ["basis", "high"]]);
    expect(low.again).toContain("7 is above 5");
    const likely = run("Dug two", "9", "3", "12");
    expect([key(likely), likely.again]).toEqual(["likely", expect.stringContaining("between the ends")]);
    expect(run("Dug two", "9", "3", "12", "4").again).toBeUndefined();
  });

  it("does not guess at numbers", () => {
    for (const wrong of ["", "soon", "2,5", "1.000,5", "NaN", "Infinity", "1e3e", "-4", "3 weeks", "5-8"]) {
      const state = run("Dug two", wrong);
      expect([wrong, key(state), typeof state.again]).toEqual([wrong, "high", "string"]);
    }
    expect(run("Dug two", "2,5").again).toContain("Write 2.5");
    expect(run("Dug two", " 7.5 days ").answers.high).toBe(7.5);
  });

  it("goes back, and corrects one answer at the end; the log says so", () => {
    expect(key(run("Dug two", "9", "back"))).toBe("high");
    const corrected = run("Dug two", "9", "3", "5", "", "high", "12", "yes");
    expect(corrected.opinion?.estimate).toMatchObject({ low: 3, likely: 5, high: 12 });
    expect(corrected.opinion?.order).toEqual(["basis", "high", "low", "likely", "dissent", "high"]);
    expect(run("Dug two", "9", "3", "5", "", "no").again).toContain("Which one");
  });

  it("takes a certain answer as certain", () => {
    expect(run("Fixed by contract", "5", "5", "5", "", "y").opinion?.estimate).toEqual({
      kind: "fixed",
      value: 5,
      unit: "days",
    });
  });
});

describe("addOpinion(text, task, opinion)", () => {
  it("adds to the task and leaves comments, and the next reading has the same opinion", () => {
    const { opinion } = run("Dug two: one in clay, one in sand", "9", "3", "5", "Not in winter", "yes");
    if (opinion === undefined) throw new Error("not done");
    const once = addOpinion(PLAN, dig, opinion);
    const twice = addOpinion(once.text, dig, { ...opinion, date: "2026-11-03" });
    expect([once.problems, twice.problems]).toEqual([[], []]);
    expect(twice.text).toContain("- id: dig # the trench");
    expect(mustRead(twice.text).tasks[0]?.opinions).toEqual([opinion, { ...opinion, date: "2026-11-03" }]);
    expect(mustRead(twice.text).sha256).toBe(mustRead(PLAN).sha256);
  });

  it("says its shape and bounds where the plan's own would make it another estimate", () => {
    const { opinion } = run("Dug two", "9", "3", "5", "", "yes");
    if (opinion === undefined) throw new Error("not done");
    for (const estimates of [
      { shape: "uniform" },
      { bounds: "p10-p90" },
      { shape: "lognormal", bounds: "p5-p95" },
    ]) {
      const text = setInPlan(
        PLAN.replace(/ {4}duration: .*\n/, "    duration: 4\n").replace(/ {4}cost: .*\n/, ""),
        ["estimates"],
        estimates,
      ).text;
      expect(mustRead(addOpinion(text, dig, opinion).text).tasks[0]?.opinions).toEqual([opinion]);
    }
  });
});

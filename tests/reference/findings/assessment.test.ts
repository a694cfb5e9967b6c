// The fourteen-point schedule assessment on figures from outside: names and thresholds DCMA-EA PAM 200.1 (October 2012),
// sections 4.1 to 4.14 (thresholds recalled from memory; 5 % and 0.95 read at dau.edu); index arithmetic as published by
// the Defense Acquisition University (720 working days and -60 give 0.917; read) and an industry planning guide quoted
// there (80 and +20 give 1.25, 800 and +20 give 1.03; read). The faulty plan of nine tasks is constructed; its float was
// computed apart from this project with networkx and, equal, as a linear programme.
import { measureRules, planFindings, planFromData, planMeasures } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { withThreshold } from "../../../packages/core/src/findings/measures/withThreshold.ts";
import { pathLengthIndex } from "../../../packages/core/src/findings/network/timeLeft.ts";
import { writtenPlan } from "../../../packages/core/src/findings/network/written.ts";

/** Constructed: T8 has no predecessor, T7 no successor; T5 has a lead, T4 and T6 a lag. Time runs without days off. */
const faulty = {
  format: 1,
  title: "Nine tasks with faults",
  start: "2027-01-01",
  calendar: "every-day",
  commitment: { finishBy: "2027-04-14" }, // the end of day 104
  tasks: [
    { id: "s", name: "Begin", milestone: true },
    { id: "t1", name: "T1", duration: 60, after: "s" },
    { id: "t2", name: "T2", duration: 20, after: "t1" },
    { id: "t3", name: "T3", duration: 10, after: "s" },
    { id: "t4", name: "T4", duration: 5, after: { task: "t2", link: "start-to-start", lag: 5 } },
    { id: "t5", name: "T5", duration: 5, after: { task: "t2", lag: -2 } },
    { id: "t6", name: "T6", duration: 15, after: { task: "t1", lag: 3 } },
    { id: "t7", name: "T7", duration: 10, after: "s" },
    { id: "t8", name: "T8", duration: 8 },
    { id: "t9", name: "T9", duration: 30, after: "t2" },
    { id: "f", name: "End", milestone: true, after: ["t3", "t4", "t5", "t6", "t8", "t9"] },
  ],
};

function read(data: unknown) {
  const { plan, problems } = planFromData(data);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}

describe("the faulty plan of nine tasks", () => {
  const plan = read(faulty);
  const findings = planFindings(plan);
  const about = (...codes: string[]) =>
    findings.filter(({ code }) => codes.includes(code)).map(({ ids }) => ids[0] ?? "");
  const measure = (code: string) => planMeasures(plan).find((each) => each.code === code);

  it("has the float computed apart from this project", () => {
    const written = writtenPlan(plan);
    if ("beyond" in written) throw new Error("it lies within the calendars");
    expect(written.asWritten.workingDays).toBe(110);
    const float = (id: string) => written.tasks.get(id)?.float;
    const expected = { t1: 0, t2: 0, t3: 100, t4: 40, t5: 27, t6: 32, t7: 100, t8: 102, t9: 0 };
    for (const [id, days] of Object.entries(expected)) expect(float(id)).toBeCloseTo(days, 9);
    const driving = [...written.tasks]
      .filter(([id, task]) => task.driving && id.startsWith("t"))
      .map(([id]) => id);
    expect(driving.sort()).toEqual(["t1", "t2", "t9"]);
  });

  it("lacks logic at two of nine tasks", () => {
    expect(about("open-start", "open-end").sort()).toEqual(["t7", "t8"]);
    expect(measure("missing-logic")).toMatchObject({ count: 2, of: 9, within: false });
    expect(measure("missing-logic")?.value).toBeCloseTo(0.222222222222, 11);
  });

  it("has one lead and two lags among fourteen links, thirteen of them from a finish to a start", () => {
    expect(about("lead")).toEqual(["t5"]);
    expect(about("lag")).toEqual(["t4", "t6"]);
    expect(measure("leads")).toMatchObject({ value: 1, within: false });
    expect(measure("lags")).toMatchObject({ count: 2, of: 14, within: false });
    expect(measure("lags")?.value).toBeCloseTo(0.142857142857, 11);
    expect(measure("finish-to-start")).toMatchObject({ count: 13, of: 14, within: true });
    expect(measure("finish-to-start")?.value).toBeCloseTo(0.928571428571, 11);
  });

  it("has three tasks with much float and a long one", () => {
    expect(about("high-float")).toEqual(["t3", "t7", "t8"]);
    expect(measure("high-float")).toMatchObject({ count: 3, of: 9, within: false });
    expect(about("long-task")).toEqual(["t1"]);
    expect(measure("long-tasks")).toMatchObject({ count: 1, of: 9, within: false });
  });

  it("misses its date by six days on three tasks, an index of 0.945", () => {
    expect(findings.find(({ code }) => code === "negative-float")?.ids).toEqual(["t1", "t2", "t9"]);
    expect(measure("negative-float")).toMatchObject({ value: 3, within: false });
    expect(measure("cpli")?.value).toBeCloseTo(0.9454545455, 9);
    expect(about("cpli-low")).toHaveLength(1);
  });

  it("answers 600 days to a path that is 600 days longer", () => {
    expect(measure("path-test")).toMatchObject({ value: 600, within: true });
    expect(about("path-does-not-respond")).toEqual([]);
  });
});

describe("critical path length index", () => {
  it.each([
    [720, -60, 0.9166666667, false],
    [80, 20, 1.25, true],
    [800, 20, 1.025, true],
  ])("of %s working days and a float of %s is %s", (path, float, expected, within) => {
    const value = pathLengthIndex({ path, float });
    expect(value).toBeCloseTo(expected, 9);
    expect(withThreshold(rule("cpli"), { value }).within).toBe(within);
  });

  it("of a plan of 720 working days, 60 too long, is 0.917", () => {
    // Constructed around the published pair: every day works, so that day 660 is the day asked for.
    const plan = read({
      ...faulty,
      commitment: { finishBy: "2028-10-21" },
      tasks: [{ id: "t1", name: "T1", duration: 720 }],
    });
    const index = planMeasures(plan).find(({ code }) => code === "cpli");
    expect(index?.value).toBeCloseTo(0.9166666667, 9);
    expect(index?.within).toBe(false);
  });
});

describe("thresholds at their limits", () => {
  it.each([
    ["missing-logic", 4, 80, 0.05, true],
    ["missing-logic", 5, 80, 0.0625, false],
    ["finish-to-start", 9, 10, 0.9, true],
    ["finish-to-start", 17, 19, 0.894736842105, false],
    ["bei", 19, 20, 0.95, true],
    ["bei", 18, 20, 0.9, false],
  ] as const)("%s of %s by %s is %s: %s", (code, count, of, value, within) => {
    const taken = withThreshold(rule(code), { count, of });
    expect(taken.value).toBeCloseTo(value, 9);
    expect(taken.within).toBe(within);
  });

  it.each([
    [44, []],
    [45, ["t2"]],
  ])("a float of %s days", (float, expected) => {
    const plan = read({
      ...faulty,
      commitment: {},
      tasks: [
        { id: "s", name: "Begin", milestone: true },
        { id: "t1", name: "T1", duration: float + 5, after: "s" },
        { id: "t2", name: "T2", duration: 5, after: "s" },
        { id: "f", name: "End", milestone: true, after: ["t1", "t2"] },
      ],
    });
    const high = planFindings(plan).filter(({ code }) => code === "high-float");
    expect(high.map(({ ids }) => ids[0])).toEqual(expected);
  });
});

describe("baseline execution index", () => {
  it.each([
    [19, 0.95, true],
    [18, 0.9, false],
  ])("of %s tasks finished of 20 that should be is %s", (finished, expected, within) => {
    const tasks = Array.from({ length: 20 }, (_, k) => ({
      id: `t${k}`,
      name: `T${k}`,
      duration: 5,
      ...(k < finished ? { started: "2027-01-01", finished: "2027-01-05" } : {}),
    }));
    const plan = read({ ...faulty, commitment: {}, statusDate: "2027-01-05", tasks });
    const index = planMeasures(plan).find(({ code }) => code === "bei");
    expect(index).toMatchObject({ count: finished, of: 20, within });
    expect(index?.value).toBeCloseTo(expected, 9);
  });
});

function rule(code: (typeof measureRules)[number]["code"]) {
  const found = measureRules.find((each) => each.code === code);
  if (found === undefined) throw new Error(code);
  return found;
}

// What a document means, read against plan format 1 (the project's published format): keys, forms, defaults.

import { planFromData, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { fixture, HEAD, mustRead, TASK } from "./plans.ts";

describe("readPlan(the least plan)", () => {
  const plan = mustRead(HEAD + TASK);

  it("fills in the defaults of the format", () => {
    expect(plan.currency).toBe("EUR");
    expect(plan.seed).toBe("leeway");
    expect(plan.iterations).toBe(10000);
    expect(plan.commitment).toEqual({ confidence: 0.8, funds: [] });
    expect(plan.calendar).toBe("weekdays");
    expect(plan.respectCapacity).toBe(true);
    expect([...plan.calendars.keys()]).toEqual(["weekdays", "every-day"]);
    expect(plan.calendars.get("weekdays")?.workdays).toEqual(["mon", "tue", "wed", "thu", "fri"]);
    expect(plan.calendars.get("every-day")?.workdays).toHaveLength(7);
  });

  it("reads a number as certain and a task's defaults", () => {
    expect(plan.tasks).toEqual([
      {
        id: "a",
        name: "A",
        duration: { kind: "fixed", value: 3, unit: "days" },
        milestone: false,
        after: [],
        holdToPlan: false,
        calendar: "weekdays",
        people: [],
        due: "evenly",
        priority: 0,
        chance: 1,
        responsible: [],
        accountable: [],
        consulted: [],
        informed: [],
        estimatedBy: [],
      },
    ]);
  });
});

describe("readPlan(every key of the format)", () => {
  const { plan, problems } = readPlan(fixture("complete.plan.yaml"));
  const task = (id: string) => plan?.tasks.find((each) => each.id === id);

  it("has nothing to object to", () => {
    expect(problems).toEqual([]);
  });

  it("keeps unquoted dates as text and a number for text as written", () => {
    expect(plan?.start).toBe("2027-01-04");
    expect(plan?.seed).toBe("42");
    expect(plan?.purpose.goals[0]?.target).toBe("40");
  });

  it("resolves `like`: own workdays replace, own holidays add", () => {
    expect(plan?.calendars.get("builders")).toEqual({
      name: "builders",
      workdays: ["mon", "tue", "wed", "thu", "fri", "sat"],
      holidays: [
        { from: "2027-03-26", to: "2027-03-26" },
        { from: "2027-12-24", to: "2028-01-01", name: "Year end" },
      ],
    });
    expect(plan?.calendars.get("mondays")?.workdays).toEqual(["mon"]);
  });

  it("gives each task its effective calendar: its own, its phase's, the plan's", () => {
    expect(task("build")?.calendar).toBe("builders");
    expect(task("survey")?.calendar).toBe("library");
    expect(task("opening")?.calendar).toBe("library");
  });

  it("fills `estimates` into every estimate that does not say", () => {
    expect(task("drawings")?.effort).toEqual({
      kind: "range",
      low: 4,
      likely: 6,
      high: 12,
      shape: "triangular",
      bounds: "p10-p90",
      unit: "days",
    });
    expect(task("build")?.duration).toMatchObject({ shape: "pert", bounds: "extremes", unit: "weeks" });
  });

  it("puts outcomes in ascending order", () => {
    expect(task("build")?.cost).toEqual({
      kind: "outcomes",
      unit: "days",
      outcomes: [
        { value: 20000, chance: 0.75 },
        { value: 30000, chance: 0.25 },
      ],
    });
  });

  it("takes a bare person at their own share", () => {
    expect(task("drawings")?.people).toEqual([
      { id: "ines", share: 0.5, along: false },
      { id: "otto", share: 1.5, along: true },
    ]);
  });

  it("reads links with their lags and the calendar of the lag", () => {
    expect(task("build")?.after).toMatchObject([
      {
        task: "drawings",
        link: "finish-to-start",
        lag: { low: 1, likely: 2, high: 4 },
        lagCalendar: "weekdays",
      },
      { task: "drawings", link: "start-to-start", lag: { kind: "fixed", value: -1 } },
    ]);
    expect(task("drawings")?.after[0]?.lag).toEqual({ kind: "fixed", value: 0, unit: "days" });
  });

  it("names the first person responsible where nobody else is", () => {
    expect(task("build")?.responsible).toEqual(["otto"]);
    expect(task("survey")?.responsible).toEqual(["ines"]);
    expect(task("survey")?.accountable).toEqual(["chair"]);
  });

  it("resolves an impact on a phase to its tasks, milestones excluded", () => {
    expect(plan?.risks[0]?.impacts.map((impact) => impact.tasks)).toEqual([
      ["build", "gallery-works"],
      ["opening"],
    ]);
  });

  it("calls an assumption's statement its name and `chanceWrong` its probability", () => {
    expect(plan?.assumptions[0]).toMatchObject({
      kind: "assumption",
      name: "The floor bears the load",
      probability: 0.1,
      cause: "old beams",
    });
  });

  it("reads `milestone: start` apart from `milestone: true`", () => {
    expect(task("opening")?.milestone).toBe("start");
    expect(task("closed")?.milestone).toBe("finish");
  });

  it("lets a single item stand for a list everywhere", () => {
    expect(plan?.intervals).toHaveLength(1);
    expect(plan?.overheads).toHaveLength(1);
    expect(plan?.purpose.scopeOut).toEqual(["The roof"]);
    expect(plan?.calendars.get("mondays")?.holidays).toEqual([
      { from: "2027-05-03", to: "2027-05-03", name: "May holiday" },
    ]);
  });
});

describe("readPlan(estimates)", () => {
  const duration = (written: string) =>
    mustRead(`${HEAD}tasks: [{ id: a, name: A, duration: ${written} }]`).tasks[0]?.duration;

  it.each([
    ["7", { kind: "fixed", value: 7, unit: "days" }],
    ["[5, 5, 5]", { kind: "fixed", value: 5, unit: "days" }],
    ["{ low: 2, high: 2, unit: weeks }", { kind: "fixed", value: 2, unit: "weeks" }],
    ["{ outcomes: { value: 3, chance: 1 } }", { kind: "fixed", value: 3, unit: "days" }],
    [
      "[0, 0, 4]",
      { kind: "range", low: 0, likely: 0, high: 4, shape: "pert", bounds: "extremes", unit: "days" },
    ],
    [
      "{ low: 1, high: 4, shape: normal, bounds: p10-p90 }",
      { kind: "range", low: 1, high: 4, shape: "normal", bounds: "p10-p90", unit: "days" },
    ],
  ])("reads %s", (written, expected) => {
    expect(duration(written)).toEqual(expected);
  });

  it("accepts chances that sum to 1 but for rounding", () => {
    const tenth = Array.from({ length: 10 }, (_, i) => `{ value: ${i}, chance: 0.1 }`);
    expect(duration(`{ outcomes: [${tenth.join(", ")}] }`)?.kind).toBe("outcomes");
  });
});

describe("planFromData(value)", () => {
  it("reads what JSON holds exactly as its text", () => {
    const data = {
      format: 1,
      title: "T",
      start: "2027-01-04",
      tasks: [{ id: "a", name: "A", duration: [1, 2, 3] }],
    };
    expect(planFromData(data)).toEqual(readPlan(JSON.stringify(data)));
  });

  it("locates problems by path alone", () => {
    const { problems } = planFromData({
      format: 1,
      title: "T",
      start: "2027-01-04",
      tasks: [{ id: "a", name: "A" }],
    });
    expect(problems.map(({ code, path, line }) => ({ code, path, line }))).toEqual([
      { code: "no-duration", path: "tasks[0]", line: undefined },
    ]);
  });
});

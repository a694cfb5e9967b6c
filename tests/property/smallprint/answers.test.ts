import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { forecastOf, planOfDocument, runOf } from "../laws/runPlan.ts";
import { documentOf, occurred, simulated, written } from "./page.ts";

// Every title is a sentence of plan format 1, "Answers"; expected values by hand or counted from the iterations.

const tasks = { a: { duration: [1, 4, 12] }, b: { duration: [2, 3, 9], after: "a", cost: [10, 40, 200] } };
const ascending = (values: number[]) => [...values].sort((a, b) => a - b);

describe("a percentile P is the smallest simulated value v such that at least P of the iterations are <= v", () => {
  it.each([
    // [P, iterations, rank]: the whole numbers are exact; 0.8 * 10 and 0.07 * 100 are not in binary.
    [0.8, 10, 8],
    [0.07, 100, 7],
    [0.14, 100, 14],
    [0.28, 100, 28],
    [0.29, 100, 29],
    [0.55, 100, 55],
    [0.56, 100, 56],
    [0.57, 100, 57],
    [0.58, 100, 58],
    [0.81, 10, 9],
    [0.5, 7, 4],
    [0.99, 10, 10],
  ])("P %s of %s iterations has rank %s", (confidence, iterations, rank) => {
    const forecast = forecastOf(documentOf(tasks), { iterations, confidence });
    const { finish, cost } = simulated(tasks, {}, iterations);
    expect(forecast.committed.day).toBe(ascending(finish)[rank - 1]);
    expect(forecast.committed.cost).toBe(ascending(cost)[rank - 1]);
  });

  it.each([
    // floor(nP - w) and ceil(nP + w) + 1 with w = 1.96 sqrt(nP(1 - P)), kept within 1 and n.
    [0.8, 1000, 775, 826],
    [0.5, 1000, 469, 532],
    [0.5, 100, 40, 61],
    [0.95, 10, 8, 10],
    [0.05, 10, 1, 3],
  ])("the limits of P %s of %s lie at ranks %s and %s", (p, iterations, low, high) => {
    const forecast = forecastOf(documentOf(tasks), { iterations });
    const { finish, cost } = simulated(tasks, {}, iterations);
    const days = forecast.finish.percentiles.find((entry) => entry.p === p);
    const money = forecast.cost.percentiles.find((entry) => entry.p === p);
    expect([days?.low, days?.high]).toEqual([low, high].map((rank) => ascending(finish)[rank - 1]));
    expect([money?.low, money?.high]).toEqual([low, high].map((rank) => ascending(cost)[rank - 1]));
  });

  it("a date at 80 % is a day by whose end at least 80 % of the iterations have finished, and no earlier one", () => {
    const forecast = forecastOf(documentOf(tasks), { iterations: 500 });
    const by = (date: string) => {
      const end = (Date.parse(date) - Date.parse("2027-02-01")) / 86_400_000 + 1;
      return simulated(tasks, {}, 500).finish.filter((t) => t <= end + 1e-9).length;
    };
    const dayBefore = (date: string) => new Date(Date.parse(date) - 86_400_000).toISOString().slice(0, 10);
    for (const { p, date } of forecast.finish.percentiles) {
      expect(by(date)).toBeGreaterThanOrEqual(p * 500 - 1e-9);
      expect(by(dayBefore(date))).toBeLessThan(p * 500);
    }
  });
});

describe("contingency at a confidence = the committed value less the plan as written", () => {
  it("in working days of the plan's calendar and calendar days for time, in money for cost", () => {
    const list = {
      a: {
        duration: {
          outcomes: [
            { value: 4, chance: 0.6 },
            { value: 6, chance: 0.4 },
          ],
        },
        costPerDay: 10,
      },
    };
    const forecast = forecastOf(documentOf(list), { iterations: 1024, confidence: 0.8 });
    // As written four days, Thursday evening (4); committed six, Monday evening (8).
    expect(forecast.contingency).toEqual({ workingDays: 2, calendarDays: 4, money: 20 });
    expect(forecastOf(documentOf(list), { iterations: 1024, confidence: 0.5 }).contingency).toEqual({
      workingDays: 0,
      calendarDays: 0,
      money: 0,
    });
    expect(forecast.committed).toMatchObject({
      date: "2027-02-08",
      day: 8,
      workingDays: 6,
      cost: 60,
      both: 1,
    });
  });
});

describe("the plan as written", () => {
  it("no risk occurring except those that have, at as-written values, scale applied; adopted responses' costs in", () => {
    const risks = [
      {
        id: "o",
        name: "O",
        probability: 0.01,
        status: "occurred",
        impacts: { tasks: "a", delay: [1, 4, 9], cost: 50 },
        responses: { id: "x", action: "X", adopted: true, scale: 0.5, cost: [1, 7, 9] },
      },
      { id: "p", name: "P", probability: 0.99, impacts: { tasks: "a", delay: 40, cost: 999 } },
    ];
    // 3 + 2 days: Friday. 25 + 7.
    expect(written({ a: { duration: [1, 3, 9] } }, { risks })).toMatchObject({ day: 5, cost: 32 });
  });
});

describe("critical in an iteration", () => {
  const critical = (list: Record<string, object>, keys: object = {}) =>
    Object.fromEntries(
      forecastOf(documentOf(list, keys), { iterations: 1024 }).tasks.map((task) => [task.id, task.critical]),
    );

  it("ties are all critical; a task with slack is not", () => {
    const list = {
      a: { duration: 3 },
      b: { duration: 3 },
      c: { duration: 2.5 },
      d: { duration: 1, after: ["a", "b", "c"] },
    };
    expect(critical(list)).toEqual({ a: 1, b: 1, c: 0, d: 1 });
  });

  it("tasks finished or not needed never are", () => {
    const list = {
      a: { duration: 9, started: "2027-02-01", finished: "2027-02-03" },
      b: { duration: 2, chance: 0.25, after: "a" },
      c: { duration: 1, after: "b" },
    };
    const found = critical(list, { statusDate: "2027-02-03" });
    expect([found.a, found.c]).toEqual([0, 1]);
    expect(Math.abs((found.b ?? 0) - 0.25)).toBeLessThanOrEqual(1 / 1024);
  });

  it("the order of people's work unchanged: who keeps another's person is critical, though no link says so", () => {
    const keys = { people: { id: "ann", name: "Ann" } };
    const list = { a: { duration: 3, people: "ann" }, b: { duration: 2, people: "ann" }, c: { duration: 4 } };
    expect(critical(list, keys)).toEqual({ a: 1, b: 1, c: 0 });
    expect(critical(list, { ...keys, respectCapacity: false })).toEqual({ a: 0, b: 0, c: 1 });
  });
});

describe("drivers", () => {
  it("`days`: the mean of what the item added to tasks critical in that iteration; `money`: to the total", () => {
    const list = {
      a: {
        duration: {
          outcomes: [
            { value: 2, chance: 0.75 },
            { value: 6, chance: 0.25 },
          ],
        },
        costPerDay: 10,
      },
      slack: { duration: [0.1, 0.2, 0.5], cost: 5 },
    };
    const keys = {
      risks: { id: "r", name: "R", probability: 0.5, impacts: { tasks: "a", delay: 2, cost: 8 } },
    };
    const { drivers } = forecastOf(documentOf(list, keys), { iterations: 1024 });
    // a: a quarter of four days, at 10; r: half of two days and of 8 + 20. Exact to a few of 1,024 strata.
    const found = new Map(drivers.map(({ id, days, money }) => [id, [days, money]]));
    expect(found.get("a")?.[0]).toBeCloseTo(1, 2);
    expect(found.get("a")?.[1]).toBeCloseTo(10, 1);
    expect(found.get("r")?.[0]).toBeCloseTo(1, 2);
    expect(Math.abs((found.get("r")?.[1] ?? 0) - 14)).toBeLessThan(0.1);
    expect(found.has("slack")).toBe(false);
    expect(drivers.map(({ id, kind }) => [id, kind])).toEqual(
      expect.arrayContaining([
        ["a", "task"],
        ["r", "risk"],
      ]),
    );
  });

  it("an impact that has occurred is not in the task's own draw", () => {
    const { drivers } = forecastOf(
      documentOf({ a: { duration: 3 } }, occurred({ tasks: "a", delay: [1, 2, 3] })),
      {
        iterations: 1024,
      },
    );
    expect(drivers.map(({ id }) => id)).toEqual(["r"]);
    expect(drivers[0]?.days).toBeCloseTo(2, 2);
  });
});

describe("the plan's hash", () => {
  const sha = (text: string) => createHash("sha256").update(text, "utf8").digest("hex");

  it("SHA-256 of its RFC 8785 JSON with `approvals`, `objections`, `changes` left out, defaults not filled in, lists of objects with `id` sorted", () => {
    const document = {
      title: "Hash é",
      format: 1,
      tasks: [
        { name: "B", id: "b", duration: 1.5 },
        { name: "A", id: "a", duration: 2, after: ["b"] },
      ],
      start: "2027-02-01",
      changes: [{ what: "x" }],
    };
    // Written out by hand: keys in code-unit order, numbers as ECMAScript prints them.
    const text =
      '{"format":1,"start":"2027-02-01","tasks":[{"after":["b"],"duration":2,"id":"a","name":"A"},' +
      '{"duration":1.5,"id":"b","name":"B"}],"title":"Hash é"}';
    expect(planOfDocument(document).sha256).toBe(sha(text));
  });

  it("the hash that approvals are bound to leaves out progress too", () => {
    const plan = (keys: object, task: object, risk: object) =>
      planOfDocument({
        ...documentOf({ a: { duration: 2, ...task } }, keys),
        risks: { id: "r", name: "R", probability: 0.5, impacts: { tasks: "a", delay: 1 }, ...risk },
      });
    const before = plan({}, {}, {});
    const after = plan(
      { statusDate: "2027-02-03" },
      { started: "2027-02-01", remaining: 1, spent: 4 },
      { status: "closed" },
    );
    expect(after.approvalSha256).toBe(before.approvalSha256);
    expect(after.sha256).not.toBe(before.sha256);
    expect(before.sha256).toBe(before.approvalSha256);
    expect(plan({}, { cost: 1 }, {}).approvalSha256).not.toBe(before.approvalSha256);
  });

  it("the run stamp carries it", () => {
    expect(forecastOf(documentOf(tasks), { iterations: 5 }).plan.sha256).toBe(
      runOf(documentOf(tasks), { iterations: 5 })?.model.plan.sha256,
    );
  });
});

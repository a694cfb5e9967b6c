import { describe, expect, it } from "vitest";
import { forecastOf } from "../laws/runPlan.ts";
import { documentOf, moments, occurred, simulated, weeks, written } from "./page.ts";

// Every title is a sentence of plan format 1, "An estimate"; expected values by hand. Nothing here depends on luck:
// the draws looked at have bounds or signs that hold in every iteration.

describe("the value as written", () => {
  const p10 = { bounds: "p10-p90" };
  it.each([
    ["is `likely`", [2, 3, 9], 3],
    ["is `likely` also within percentile bounds", { low: 2, likely: 3, high: 9, ...p10 }, 3],
    ["uniform: midpoint", { low: 2, high: 9, shape: "uniform" }, 5.5],
    ["normal: median", { low: 2, high: 9, shape: "normal", ...p10 }, 5.5],
    ["lognormal: median", { low: 2, high: 8, shape: "lognormal", ...p10 }, 4],
    [
      "outcomes: the most probable",
      {
        outcomes: [
          { value: 2, chance: 0.2 },
          { value: 7, chance: 0.8 },
        ],
      },
      7,
    ],
    [
      "outcomes: ties, the smallest",
      {
        outcomes: [
          { value: 7, chance: 0.4 },
          { value: 2, chance: 0.4 },
          { value: 1, chance: 0.2 },
        ],
      },
      2,
    ],
    ["`low == high` is certain", { low: 4, likely: 4, high: 4 }, 4],
  ])("%s", (_, duration, days) => {
    expect(moments({ a: { duration } }, { calendar: "every-day" }).a?.[1]).toBeCloseTo(days, 12);
  });

  it("of `low == high` is every draw too", () => {
    const { finish } = simulated({ a: { duration: { low: 4, likely: 4, high: 4 } } }, {}, 50);
    expect(new Set(finish)).toEqual(new Set([4]));
  });
});

describe("`estimates: { shape, bounds }`", () => {
  it("fills these two keys in every estimate that does not say", () => {
    const at = (keys: object, duration: object) =>
      forecastOf(documentOf({ a: { duration } }, { calendar: "every-day", ...keys }), { iterations: 300 })
        .finish;
    const plain = { low: 2, likely: 3, high: 9 };
    const told = { ...plain, shape: "triangular", bounds: "p5-p95" };
    const usual = { estimates: { shape: "triangular", bounds: "p5-p95" } };
    expect(at(usual, plain)).toEqual(at({}, told));
    expect(at(usual, { ...plain, shape: "pert", bounds: "extremes" })).toEqual(at({}, plain));
    expect(at(usual, plain).mean).not.toBe(at({}, plain).mean);
  });
});

describe("outcomes are inverted in ascending order of value", () => {
  it("so the order they are written in changes no iteration, and correlated draws rise together", () => {
    const outcomes = [
      { value: 2, chance: 0.3 },
      { value: 5, chance: 0.5 },
      { value: 9, chance: 0.2 },
    ];
    const drawn = (list: object[]) => simulated({ a: { duration: { outcomes: list } } }).finish;
    expect(drawn([...outcomes].reverse())).toEqual(drawn(outcomes));
    // With coefficient 1 both read one score: the higher outcome exactly where the score is high.
    const pair = simulated(
      {
        a: { duration: { outcomes: [outcomes[0], { value: 6, chance: 0.7 }] } },
        b: {
          duration: {
            outcomes: [
              { value: 20, chance: 0.7 },
              { value: 10, chance: 0.3 },
            ],
          },
        },
      },
      { calendar: "every-day", correlations: { between: ["a", "b"], coefficient: 1 } },
    );
    const b = pair.finishes("b");
    pair.finishes("a").forEach((days, k) => {
      expect(b[k]).toBe(days === 2 ? 10 : 20);
    });
  });
});

describe("draws and as-written values cut at zero", () => {
  const below = { low: -9, high: 1, shape: "normal", bounds: "p10-p90" };

  it("of a duration, and the forecast says how often", () => {
    const document = documentOf({ a: { duration: below } });
    const forecast = forecastOf(document, { iterations: 2000 });
    expect(forecast.asWritten.day).toBe(0);
    expect(forecast.finish.percentiles[0]?.day).toBe(0);
    expect(forecast.warnings.filter((text) => /^a:duration: \d+\.\d % .*below zero/.test(text))).toHaveLength(
      1,
    );
    // Median -4, P90 1: 84.7 % of the draws lie below zero (-4 + 3.9 sd of 5 / 1.2816; standard normal table).
    const share = Number(/(\d+\.\d) %/.exec(forecast.warnings[0] ?? "")?.[1]);
    expect(Math.abs(share - 84.7)).toBeLessThan(0.3);
  });

  it.each([
    ["cost", { a: { duration: 2, cost: below } }, {}],
    ["costPerDay", { a: { duration: 2, costPerDay: below } }, {}],
    ["perDay", { a: { duration: 2 } }, { overheads: { id: "o", name: "O", perDay: below } }],
    [
      "response cost",
      { a: { duration: 2 } },
      occurred({ tasks: "a", delay: 0 }, { responses: { id: "x", action: "X", adopted: true, cost: below } }),
    ],
  ])("of %s", (_, tasks, keys) => {
    expect(written(tasks, keys).cost).toBe(0);
    const { cost } = simulated(tasks, keys);
    expect(Math.min(...cost)).toBe(0);
    expect(Math.max(...cost)).toBeGreaterThan(0);
  });

  it("of remaining, wait and factor", () => {
    const started = { duration: 9, started: "2027-02-01", remaining: below };
    expect(moments({ a: started }, { statusDate: "2027-02-02" }).a).toEqual([0, 2]);
    expect(moments({ a: { duration: 2 } }, occurred({ tasks: "a", wait: below })).a).toEqual([0, 2]);
    expect(moments({ a: { duration: 2 } }, occurred({ tasks: "a", factor: below })).a).toEqual([0, 0]);
  });
});

describe("what is not cut at zero", () => {
  it("lags", () => {
    const tasks = { a: { duration: 5 }, b: { duration: 1, after: { task: "a", lag: [-4, -3, -2] } } };
    expect(moments(tasks).b).toEqual([2, 3]);
    for (const start of simulated(tasks).starts("b")) expect(start).toBeLessThan(3.0001);
  });

  it("an impact's delay and cost: negative, an opportunity", () => {
    const keys = occurred({ tasks: "a", delay: [-3, -2, -1], cost: [-90, -50, -10] });
    expect(written({ a: { duration: 5 } }, keys)).toMatchObject({ day: 3, cost: -50 });
    for (const cost of simulated({ a: { duration: 5 } }, keys).cost) expect(cost).toBeLessThan(-9.99);
  });

  it("but the realised duration is max(0, ...)", () => {
    expect(moments({ a: { duration: 2 } }, occurred({ tasks: "a", delay: -5 })).a).toEqual([0, 0]);
  });
});

describe("a week is the number of workdays of the calendar it is counted on", () => {
  const calendars = { six: { workdays: ["mon", "tue", "wed", "thu", "fri", "sat"] } };

  it.each([
    ["five on weekdays", {}, 5],
    ["seven on every-day", { calendar: "every-day" }, 7],
    // Six working days, Monday to Saturday.
    ["six on a calendar of six", { calendar: "six" }, 6],
  ])("for a duration: %s", (_, keys, day) => {
    expect(moments({ a: { duration: weeks(1), ...keys } }, { calendars }).a).toEqual([0, day]);
  });

  it("for a lag, of the calendar it names, else of the successor's", () => {
    const b = (lag: object, keys: object = {}) =>
      moments({ a: { duration: 1 }, b: { duration: 1, after: { task: "a", lag }, ...keys } }, { calendars })
        .b;
    // From Monday evening: five weekdays to Monday evening; six of Monday to Saturday likewise; seven days to Monday.
    expect(b(weeks(1))).toEqual([8, 9]);
    expect(b(weeks(1), { calendar: "six" })).toEqual([8, 9]);
    expect(b({ days: weeks(1), calendar: "every-day" })).toEqual([8, 9]);
    // Two days of a week of five: four tenths.
    expect(b(weeks(0.4))).toEqual([3, 4]);
    expect(b({ days: weeks(2 / 7), calendar: "every-day" })?.[0]).toBeCloseTo(3, 9);
  });

  it("for a delay and a wait, of the calendar of the task hit", () => {
    const hit = (keys: object) =>
      moments({ a: { duration: 1, ...keys } }, { calendars, ...occurred({ tasks: "a", delay: weeks(1) }) }).a;
    expect([hit({}), hit({ calendar: "six" }), hit({ calendar: "every-day" })]).toEqual([
      [0, 8],
      [0, 8],
      [0, 8],
    ]);
    const long = (keys: object) =>
      moments({ a: { duration: 2, ...keys } }, { calendars, ...occurred({ tasks: "a", wait: weeks(1) }) }).a;
    // A wait from the start: five weekdays end on Friday, the task opens on Monday; six end on Saturday, likewise.
    expect([long({}), long({ calendar: "six" }), long({ calendar: "every-day" })]).toEqual([
      [7, 9],
      [7, 9],
      [7, 9],
    ]);
    const two = (keys: object) =>
      moments({ a: { duration: 1, ...keys } }, { calendars, ...occurred({ tasks: "a", delay: weeks(2) }) }).a;
    expect([two({})?.[1], two({ calendar: "every-day" })?.[1]]).toEqual([15, 15]);
  });
});

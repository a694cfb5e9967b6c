// Hostile plans by name; more of them, of syntax, in tests/contract/plan/hostile.test.ts. The bounds of time are generous
// for a loaded machine: what they rule out is a quadratic reader, which would need minutes.
import { forecast, planFromData, readPlan, SHAPES, shapeRules } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { faultsOfForecast, faultsOfReading } from "../support/judgePlan.ts";

const HEAD = { format: 1, title: "T", start: "2027-01-04" };
const one = (task: object, more: object = {}) => ({
  ...HEAD,
  ...more,
  tasks: [{ id: "a", name: "A", duration: 1, ...task }],
});
const many = <T>(n: number, make: (index: number) => T): T[] => Array.from({ length: n }, (_, i) => make(i));
const ids = (n: number) => many(n, (i) => `t${i}`);

/** The codes of a document's problems, as text and as data: both say the same. */
function codesOf(data: object): string[] {
  const text = readPlan(JSON.stringify(data));
  const value = planFromData(data);
  expect(faultsOfReading(text)).toEqual([]);
  expect(faultsOfReading(value)).toEqual([]);
  expect(value.problems.map(({ code }) => code)).toEqual(text.problems.map(({ code }) => code));
  return text.problems.map(({ code }) => code);
}

const EDGES: [name: string, data: object, code: string][] = [
  ["1e308", one({ duration: 1e308 }), "out-of-range"],
  ["-1e308", one({ cost: -1e308 }), "out-of-range"],
  ["a start in year 1", { ...one({}), start: "0001-01-01" }, "bad-format"],
  ["a start in year 9999", { ...one({}), start: "9999-12-31" }, "bad-format"],
  ["a target in year 10000", one({ target: "10000-01-01" }), "bad-format"],
  ["29 February of no leap year", one({ notBefore: "2027-02-29" }), "no-such-date"],
  ["an id that is a number", one({ id: 7 }), "wrong-type"],
  ["an id that looks like a number", one({ id: "007" }), "bad-format"],
  ["an id that looks like a date", one({ id: "2027-01-04" }), "bad-format"],
  ["an id with a combining accent", one({ id: "cafe\u0301" }), "bad-format"],
  ["an id from right to left", one({ id: "\u05E9\u05DC\u05D5\u05DD" }), "bad-format"],
  ["half a character in a name", one({ name: "x\uD83D" }), "encoding"],
  ["a key of the language", one({ constructor: 1 }), "unknown-key"],
  ["a key of every object", one({ hasOwnProperty: 1 }), "unknown-key"],
  ["a task after itself", one({ after: "a" }), "loop"],
  [
    "tasks in a circle by start-to-finish",
    {
      ...HEAD,
      tasks: [
        { id: "a", name: "A", duration: 1, after: { task: "b", link: "start-to-finish" } },
        { id: "b", name: "B", duration: 1, after: { task: "a", link: "finish-to-start" } },
      ],
    },
    "loop",
  ],
  ["a calendar like itself", one({}, { calendars: { x: { like: "x" } } }), "calendar-loop"],
  [
    "calendars like each other",
    one({}, { calendars: { x: { like: "y" }, y: { like: "z" }, z: { like: "x" } } }),
    "calendar-loop",
  ],
  [
    "a calendar called __proto__",
    JSON.parse(
      '{"format":1,"title":"T","start":"2027-01-04","calendar":"__proto__","tasks":{"id":"a","name":"A","duration":1},"calendars":{"__proto__":{"like":"constructor"}}}',
    ),
    "unknown-calendar",
  ],
  ["an interval of nothing", one({}, { intervals: { id: "i", from: "a", to: "nobody" } }), "unknown-id"],
  [
    "outcomes that sum to more than 1",
    one({
      duration: {
        outcomes: [
          { value: 1, chance: 1 },
          { value: 2, chance: 1 },
        ],
      },
    }),
    "outcome-sum",
  ],
  [
    "a lognormal that touches 0",
    one({ duration: { low: 0, high: 1, shape: "lognormal", bounds: "p10-p90" } }),
    "estimate-shape",
  ],
];

describe("at the edge of what can be written", () => {
  it.each(EDGES)("refuses %s at its place", (_name, data, code) => {
    expect(codesOf(data)).toContain(code);
  });

  it.each(["NaN", "Infinity", "-Infinity", "undefined"])("refuses %s as data", (name) => {
    const value = {
      NaN: Number.NaN,
      Infinity: Number.POSITIVE_INFINITY,
      "-Infinity": Number.NEGATIVE_INFINITY,
    }[name];
    const { plan, problems } = planFromData(one({ duration: [1, value, 3] }));
    expect(plan).toBeUndefined();
    expect(problems[0]?.path).toBe("tasks[0].duration[1]");
  });

  it.each([
    ["right to left", "\u202Eשלום\u202C \u2067مرحبا\u2069"],
    ["combining", "Z\u0351\u036B\u0343\u032A\u0302\u036B\u033Dalgo e\u0301"],
    ["beyond the first plane", "𝕋𝕒𝕤𝕜 👩‍👩‍👧‍👦"],
    ["a thousand accents", `e${"\u0301".repeat(1000)}`],
  ])("keeps a name %s as it is written, in YAML and in JSON", (_name, name) => {
    for (const text of [
      `format: 1\ntitle: T\nstart: 2027-01-04\ntasks: { id: a, name: "${name}", duration: 1 }\n`,
      JSON.stringify(one({ name })),
    ]) {
      expect(readPlan(text).plan?.tasks[0]?.name).toBe(name);
    }
  });
});

describe("plans that cannot be forecast", () => {
  it.each<[name: string, data: object]>([
    [
      "a calendar without a working day",
      one({ duration: 2 }, { calendar: "x", calendars: { x: { workdays: [] } } }),
    ],
    [
      "a calendar whose holidays never end",
      one(
        { duration: 2 },
        { calendar: "x", calendars: { x: { holidays: { from: "1900-01-01", to: "2999-12-31" } } } },
      ),
    ],
    [
      "a person who is never there",
      {
        ...one({ people: "p", duration: 2 }),
        people: { id: "p", name: "P", away: { from: "1900-01-01", to: "2999-12-31" } },
      },
    ],
    ["a task of a thousand years", one({ duration: 365_250 })],
    [
      "a lag of a thousand years",
      {
        ...HEAD,
        tasks: [one({}).tasks[0], { id: "b", name: "B", duration: 1, after: { task: "a", lag: 1e9 } }],
      },
    ],
  ])("answers %s with a problem that names it", (_name, data) => {
    const reading = planFromData(data);
    expect(faultsOfReading(reading)).toEqual([]);
    const problems =
      reading.plan === undefined ? reading.problems : forecast(reading.plan, { iterations: 8 }).problems;
    expect(problems.map(({ severity }) => severity)).toContain("error");
    if (reading.plan !== undefined) expect(faultsOfForecast(reading.plan)).toEqual([]);
  });

  it.each<[name: string, estimate: object]>([
    ["as wide as a double", { low: 1e-300, likely: 1, high: 1e15 }],
    ["as narrow as a double", { low: 1, likely: 1 + 2e-16, high: 1 + 4e-16 }],
    ["with its mode at the end", { low: 0, likely: 0, high: 1e-9 }],
    ["with its mode at the other end", { low: 1, likely: 1e6, high: 1e6 }],
    ["below zero", { low: -1e15, likely: -1e14, high: -1 }],
  ])("fits an estimate %s by any shape and bounds, or says so", (_name, estimate) => {
    for (const shape of SHAPES.filter((one) => shapeRules[one].takesLikely)) {
      for (const bounds of ["extremes", "p10-p90", "p5-p95"]) {
        const { plan } = planFromData(one({ cost: { ...estimate, shape, bounds } }));
        if (plan === undefined) throw new Error("not read");
        expect(faultsOfForecast(plan)).toEqual([]);
      }
    }
  });
});

/** Generous for a loaded machine. */
const LIMIT = 120_000;
function inTime<T>(work: () => T): T {
  const begun = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(begun);
  expect((user + system) / 1000).toBeLessThan(LIMIT);
  return result;
}

describe("large and tangled", () => {
  it("reads and forecasts a million links", () => {
    const names = ids(1415);
    const tasks = names.map((id, index) => ({ id, name: "T", duration: 1, after: names.slice(0, index) }));
    const { plan } = inTime(() => readPlan(JSON.stringify({ ...HEAD, tasks })));
    let links = 0;
    for (const { after } of plan?.tasks ?? []) links += after.length;
    expect(links).toBeGreaterThan(1_000_000);
    // One after the other, a day each: the last ends on working day 1415, which is 283 weeks after the start.
    const found = plan && inTime(() => forecast(plan, { iterations: 8 }).forecast);
    expect(found?.asWritten.workingDays).toBe(1415);
    expect(found?.asWritten.day).toBe(283 * 7 - 2);
  });

  it("finds the loop in two hundred thousand links", () => {
    const names = ids(640);
    const tasks = names.map((id, index) => ({ id, name: "T", duration: 1, after: names.slice(0, index) }));
    tasks[0]?.after.push("t639");
    const { problems } = inTime(() => planFromData({ ...HEAD, tasks }));
    expect(problems.map(({ code }) => code)).toEqual(["loop"]);
  });

  it.each<[name: string, make: () => unknown, code: string]>([
    [
      "an object within itself, three times over",
      () => {
        const plan: Record<string, unknown> = { ...one({}) };
        plan.note = plan.format = plan.purpose = plan;
        return plan;
      },
      "loop-of-data",
    ],
    [
      "objects in each other's places, doubling a hundred times",
      () => {
        let node: object = { id: "a" };
        for (let i = 0; i < 90; i++) node = { note: node, was: node };
        return one({ note: node });
      },
      "alias-growth",
    ],
    [
      "a list said to be four thousand million long",
      () => ({ ...HEAD, tasks: new Array(4_294_967_295) }),
      "not-json",
    ],
    ["a list with a hole", () => one({ after: Object.assign([], { 1: "b" }) }), "not-json"],
  ])("refuses data with %s", (_name, make, code) => {
    const reading = inTime(() => planFromData(make()));
    expect(faultsOfReading(reading)).toEqual([]);
    expect(reading.problems.map((problem) => problem.code)).toContain(code);
  });

  it("takes the same object in ten thousand places for what it says", () => {
    const duration = [1, 2, 4];
    const tasks = ids(10_000).map((id) => ({ id, name: "T", duration }));
    expect(planFromData({ ...HEAD, tasks }).plan?.tasks).toHaveLength(10_000);
  });

  it.each<[name: string, text: () => string, code: string]>([
    ["25 million characters", () => `{"title": "${"x".repeat(25_000_000)}"}`, "too-large"],
    ["two million lines", () => "k: 1\n".repeat(2_000_000), "too-large"],
    ["a colon and then a mile of spaces", () => `title: a: b${" ".repeat(400_000)}x\n`, "colon-in-text"],
    ["a key of five million signs", () => `{"${"k".repeat(5_000_000)}": 1}`, "unknown-key"],
    [
      "a thousand keys within a key of a million signs",
      () => `{"${"k".repeat(1_000_000)}": {}, "tasks": [${"{},".repeat(1000)}{}]}`,
      "missing-key",
    ],
  ])("answers %s in proportion to its size", (_name, text, code) => {
    const reading = inTime(() => readPlan(text()));
    expect(reading.plan).toBeUndefined();
    expect(reading.problems.map((problem) => problem.code)).toContain(code);
    // What is said about it does not grow with it either.
    for (const { path, received, rule, remedy } of reading.problems)
      expect(`${path}${received}${rule}${remedy}`.length).toBeLessThan(2000);
  });

  it("takes a line that ends in a carriage return alone for a line (YAML 1.2.2, section 5.4)", () => {
    const text = "format: 1\rtitle: T\rstart: 2027-01-04\rtasks:\r - { id: a, name: A, duration: 3 }\r";
    expect(readPlan(text).plan?.tasks[0]?.duration).toEqual({ kind: "fixed", value: 3, unit: "days" });
    const [problem] = readPlan(text.replace("duration: 3", "duration: x")).problems;
    expect([problem?.line, problem?.column]).toEqual([5, 32]);
  });
});

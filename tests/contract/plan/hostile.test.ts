// Whatever comes, the reader answers with a plan or with problems, in time bounded by the size of the text.

import { planFromData, readPlan } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fixture, HEAD, TASK } from "./plans.ts";

/** Processor time, in ms, whatever else the machine does; a quadratic reader would need minutes. */
const LIMIT = 15_000;

const spent = (since: NodeJS.CpuUsage): number => process.cpuUsage(since).user / 1000;

const bomb = (levels: number, width: number) =>
  Array.from(
    { length: levels },
    (_, i) =>
      `l${i}: &l${i} [${Array(width)
        .fill(i === 0 ? "x" : `*l${i - 1}`)
        .join(", ")}]`,
  ).join("\n");

const HOSTILE: [name: string, text: string, code: string][] = [
  ["nothing", "", "empty"],
  ["white space", " \n\n", "empty"],
  ["comments alone", "# only\n", "empty"],
  ["a list", "- a\n- b\n", "wrong-type"],
  ["a word", "plan", "wrong-type"],
  ["null", "null", "wrong-type"],
  ["a NUL character", "format: 1\0", "encoding"],
  ["UTF-16 read as UTF-8", [..."format: 1"].join("\0"), "encoding"],
  ["two documents", `${HEAD}${TASK}---\n${HEAD}${TASK}`, "several-documents"],
  ["an alias bomb", bomb(12, 10), "alias-growth"],
  ["an alias to itself", "a: &a [*a]\n", "alias"],
  ["an alias to nothing", `${HEAD}seed: *x\n${TASK}`, "alias"],
  [
    "a merge key",
    `${HEAD}tasks:\n - &a { id: a, name: A, duration: 1 }\n - { <<: *a, id: b, name: B, duration: 1 }\n`,
    "unknown-key",
  ],
  ["a foreign tag", `${HEAD}seed: !js/function x\n${TASK}`, "yaml-syntax"],
  ["a key that is a list", `? [a]\n: b\n${HEAD}${TASK}`, "odd-key"],
  ["__proto__ as a key", `__proto__: { title: x }\n${HEAD}${TASK}`, "unknown-key"],
  ["constructor as a key", `constructor: 1\n${HEAD}${TASK}`, "unknown-key"],
  ["__proto__ as an id", `${HEAD}tasks: { id: __proto__, name: A, duration: 1 }`, "bad-format"],
  ["__proto__ in JSON", '{"__proto__": {"format": 1}, "title": "T"}', "unknown-key"],
  [
    "a repeated key in JSON",
    '{"format":1,"title":"T","start":"2027-01-04","tasks":{"id":"a","name":"A","duration":1,"duration":2}}',
    "repeated-key",
  ],
  ["not a number", `${HEAD}tasks: { id: a, name: A, duration: .nan }`, "wrong-type"],
  ["a number past doubles", `${HEAD}tasks: { id: a, name: A, duration: 1e999 }`, "wrong-type"],
  ["a number of a million digits", `${HEAD}iterations: ${"9".repeat(1_000_000)}\n${TASK}`, "wrong-type"],
  ["deep brackets", "[".repeat(100_000), "too-deep"],
  ["deep brackets, closed", `a: ${"[".repeat(3000)}${"]".repeat(3000)}`, "too-deep"],
  ["deep braces in JSON", `${'{"a":'.repeat(50_000)}1${"}".repeat(50_000)}`, "too-deep"],
  ["deep dashes", "- ".repeat(5000), "too-deep"],
  ["deep indentation", Array.from({ length: 1500 }, (_, i) => `${" ".repeat(i)}a:`).join("\n"), "too-deep"],
  ["tabs", `${HEAD}tasks:\n\t- id: a\n`, "yaml-syntax"],
  ["brackets left open", `${HEAD}tasks: [{ id: a, name: A, duration: [1, 2`, "yaml-syntax"],
  ["a quote left open", `${HEAD}seed: "x\n${TASK}`, "yaml-syntax"],
  ["JSON cut short", '{"format": 1, "title": "T', "json-syntax"],
  ["JSON with a word too many", '{"format": 1, "title": "T" oops}', "json-syntax"],
  [
    "fifty thousand unknown keys",
    Array.from({ length: 50_000 }, (_, i) => `k${i}: 1`).join("\n"),
    "unknown-key",
  ],
  [
    "five thousand colons in text",
    Array.from({ length: 5000 }, (_, i) => `k${i}: a: b`).join("\n"),
    "colon-in-text",
  ],
  ["nothing but quotes", '"'.repeat(50_000), "yaml-syntax"],
  ["nothing but braces", "{}".repeat(10_000), "yaml-syntax"],
  ["a text of three million signs", `title: "${"x".repeat(3_000_000)}"`, "missing-key"],
  ["a JSON text of escapes", `{"title": "${"\\n".repeat(1_000_000)}"}`, "missing-key"],
];

describe("readPlan(hostile input)", () => {
  it.each(HOSTILE)("answers %s with a problem", (_name, text, code) => {
    const begin = process.cpuUsage();
    const { plan, problems } = readPlan(text);
    expect(spent(begin)).toBeLessThan(LIMIT);
    expect(plan).toBeUndefined();
    expect(problems.map((problem) => problem.code)).toContain(code);
  });

  it("leaves the prototype of objects alone", () => {
    readPlan('{"__proto__": {"polluted": true}, "calendars": {"__proto__": {"like": "constructor"}}}');
    readPlan("calendars: { __proto__: { like: constructor } }");
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  it("finds a loop through 20,000 tasks", () => {
    const n = 20_000;
    const tasks = Array.from({ length: n }, (_, i) => ({
      id: `t${i}`,
      name: "T",
      duration: 1,
      after: `t${(i + 1) % n}`,
    }));
    const { problems } = planFromData({ format: 1, title: "T", start: "2027-01-04", tasks });
    expect(problems.map(({ code, path }) => ({ code, path }))).toEqual([
      { code: "loop", path: "tasks[0].after" },
    ]);
  });

  it("lists three thousand unknown ids in good time", () => {
    const tasks = Array.from({ length: 3000 }, (_, i) => ({
      id: `t${i}`,
      name: "T",
      duration: 1,
      after: `zz${i}`,
    }));
    const begin = process.cpuUsage();
    expect(planFromData({ format: 1, title: "T", start: "2027-01-04", tasks }).problems).toHaveLength(3000);
    expect(spent(begin)).toBeLessThan(LIMIT);
  });

  it("reads a byte order mark, Windows line ends and document marks", () => {
    for (const text of [
      `\uFEFF${HEAD}${TASK}`,
      (HEAD + TASK).replaceAll("\n", "\r\n"),
      `---\n${HEAD}${TASK}...\n`,
    ]) {
      expect(readPlan(text).plan?.tasks).toHaveLength(1);
    }
  });
});

describe("readPlan(random text)", () => {
  const bits = [
    "format: 1",
    "tasks:",
    "- ",
    "{",
    "}",
    "[",
    "]",
    ": ",
    "\n",
    "  ",
    "*a",
    "&a ",
    "!!str ",
    "|",
    ">",
    "#",
    '"',
    "'",
    "\t",
    "%",
    "---",
    "1e9",
    "2027-01-01",
    "<<",
    "?",
    "\r",
    "é",
  ];
  const plan = fixture("complete.plan.yaml");

  it("never throws, and gives a plan only where nothing is wrong", () => {
    const soup = fc.array(fc.constantFrom(...bits), { maxLength: 40 }).map((parts) => parts.join(""));
    const broken = fc
      .tuple(fc.nat(plan.length), fc.nat(40), fc.oneof(fc.string(), fc.constantFrom(...bits)))
      .map(([at, length, put]) => plan.slice(0, at) + put + plan.slice(at + length));
    fc.assert(
      fc.property(fc.oneof(soup, broken, fc.string({ unit: "binary" }), fc.json()), (text) => {
        const { plan: read, problems } = readPlan(text);
        expect(read === undefined).toBe(problems.some(({ severity }) => severity === "error"));
        for (const { rule, remedy, line, column } of problems) {
          expect(rule).toMatch(/\S/);
          expect(remedy).toMatch(/\S/);
          expect(Math.min(line ?? 1, column ?? 1)).toBeGreaterThan(0);
        }
      }),
      { numRuns: 1500, seed: 31 },
    );
  });
});

describe("planFromData(strange values)", () => {
  const loop: Record<string, unknown> = { format: 1 };
  loop.tasks = loop;
  const trap = new Proxy(
    {},
    {
      ownKeys: () => {
        throw new Error("trap");
      },
    },
  );

  it.each<[string, unknown, string]>([
    ["undefined", undefined, "not-json"],
    ["null", null, "wrong-type"],
    ["a function", () => 1, "not-json"],
    ["a symbol", Symbol("x"), "not-json"],
    ["a big integer", 10n, "not-json"],
    ["a Date", new Date(0), "not-json"],
    ["a Map", new Map(), "not-json"],
    ["a trap", trap, "not-json"],
    ["a loop of references", loop, "loop-of-data"],
    ["an empty object", {}, "missing-key"],
    ["NaN", { format: Number.NaN }, "not-a-choice"],
  ])("answers %s with a problem", (_name, value, code) => {
    const { plan, problems } = planFromData(value);
    expect(plan).toBeUndefined();
    expect(problems.map((problem) => problem.code)).toContain(code);
  });

  it("never throws on random values", () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(planFromData(value).problems.length).toBeGreaterThan(0);
      }),
      { numRuns: 1000, seed: 32 },
    );
  });
});

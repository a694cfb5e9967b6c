// Edits in the text: what was asked is there, and every other character stays (the project's published format:
// a file written back keeps its comments and order).

import {
  addToPlan,
  type EditPath,
  type PlanEdit,
  removeFromPlan,
  setInPlan,
  writeEstimate,
} from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { fixture, HEAD, mustRead } from "./plans.ts";

const PLAN = `# head
format: 1
title: T # the title
start: 2027-01-04

tasks: # the work
  # first
  - { id: a, name: A, duration: [1, 2,  3] } # odd spacing stays
  - id: b
    name: B   # B's name
    duration: 4
    # about the links
    after: a
    note: |
      Two
      lines
  - id: c
    name: C
    effort: 3
    people: ada # alone
people: { id: ada, name: Ada }
risks:
  id: rain
  name: Rain # wet
  probability: 0.2
`;

/** Lines taken out and put in, in order. */
function changed({ text, problems }: PlanEdit, before = PLAN): { minus: string[]; plus: string[] } {
  expect(problems).toEqual([]);
  const [old, now] = [before.split("\n"), text.split("\n")];
  let head = 0;
  while (head < old.length && old[head] === now[head]) head++;
  let tail = 0;
  while (
    tail < Math.min(old.length, now.length) - head &&
    old[old.length - 1 - tail] === now[now.length - 1 - tail]
  )
    tail++;
  return { minus: old.slice(head, old.length - tail), plus: now.slice(head, now.length - tail) };
}

describe("setInPlan(text, path, value)", () => {
  it.each<[string, EditPath, unknown, string[], string[]]>([
    [
      "an estimate, written compactly",
      ["tasks", "b", "duration"],
      [3, 4, 9],
      ["    duration: 4"],
      ["    duration: [3, 4, 9]"],
    ],
    [
      "an estimate by keys",
      ["tasks", 1, "duration"],
      { low: 1, high: 2, shape: "uniform" },
      ["    duration: 4"],
      ["    duration: { low: 1, high: 2, shape: uniform }"],
    ],
    [
      "a text beside a comment",
      ["title"],
      "New: one",
      ["title: T # the title"],
      ['title: "New: one" # the title'],
    ],
    [
      "a new key in brackets",
      ["tasks", "a", "target"],
      "2027-02-01",
      ["  - { id: a, name: A, duration: [1, 2,  3] } # odd spacing stays"],
      ["  - { id: a, name: A, duration: [1, 2,  3], target: 2027-02-01 } # odd spacing stays"],
    ],
    [
      "one number of three",
      ["tasks", "a", "duration", 2],
      9,
      ["  - { id: a, name: A, duration: [1, 2,  3] } # odd spacing stays"],
      ["  - { id: a, name: A, duration: [1, 2,  9] } # odd spacing stays"],
    ],
    ["a new key in a block", ["tasks", "c", "basis"], "as last time", [], ["    basis: as last time"]],
    [
      "a text of lines",
      ["tasks", "b", "note"],
      "One\nTwo\n",
      ["      Two", "      lines"],
      ["      One", "      Two"],
    ],
    ["a key of the single item", ["risks", "rain", "status"], "occurred", [], ["  status: occurred"]],
    ["objects on the way", ["commitment", "budget"], 5000, [], ["commitment: { budget: 5000 }"]],
    ["text that looks like a number", ["seed"], "7", [], ['seed: "7"']],
  ])("sets %s", (_name, path, value, minus, plus) => {
    expect(changed(setInPlan(PLAN, path, value))).toEqual({ minus, plus });
  });

  it("leaves the text alone where nothing changes", () => {
    expect(setInPlan(PLAN, ["tasks", "b", "duration"], 4)).toEqual({ text: PLAN, problems: [] });
  });

  it("keeps JSON as JSON, with its indentation", () => {
    const json = JSON.stringify(parse(PLAN), null, 2);
    const { text } = setInPlan(json, ["tasks", "b", "duration"], [1, 2, 3]);
    expect(changed({ text, problems: [] }, json)).toEqual({
      minus: ['      "duration": 4,'],
      plus: ['      "duration": [1, 2, 3],'],
    });
    expect(JSON.parse(addToPlan(json, ["tasks"], { id: "d", name: "D" }).text).tasks).toHaveLength(4);
  });
});

describe("addToPlan(text, list, value)", () => {
  it("adds a task in the way the last one is written", () => {
    expect(changed(addToPlan(PLAN, ["tasks"], { id: "d", name: "D", duration: [1, 2, 3] }))).toEqual({
      minus: [],
      plus: ["  - id: d", "    name: D", "    duration: [1, 2, 3]"],
    });
  });

  it("makes a list of a single item", () => {
    expect(changed(addToPlan(PLAN, ["tasks", "b", "after"], "c"))).toEqual({
      minus: ["    after: a"],
      plus: ["    after: [a, c]"],
    });
    expect(changed(addToPlan(PLAN, ["risks"], { id: "snow", name: "Snow", probability: 0.1 }))).toEqual({
      minus: ["  id: rain", "  name: Rain # wet", "  probability: 0.2"],
      plus: [
        "  - id: rain",
        "    name: Rain # wet",
        "    probability: 0.2",
        "  - { id: snow, name: Snow, probability: 0.1 }",
      ],
    });
  });

  it("makes the list where there is none", () => {
    const { text } = addToPlan(PLAN, ["assumptions"], { id: "x", statement: "S", chanceWrong: 0.1 });
    expect(mustRead(text).assumptions).toMatchObject([{ id: "x" }]);
    expect(text.startsWith(PLAN)).toBe(true);
  });
});

describe("removeFromPlan(text, path)", () => {
  it.each<[string, EditPath, string[], string[]]>([
    ["a key, its comment above left in place", ["tasks", "b", "after"], ["    after: a"], []],
    ["the first key of an item", ["tasks", "c", "id"], ["  - id: c", "    name: C"], ["  - name: C"]],
    [
      "a key in brackets",
      ["tasks", "a", "name"],
      ["  - { id: a, name: A, duration: [1, 2,  3] } # odd spacing stays"],
      ["  - { id: a, duration: [1, 2,  3] } # odd spacing stays"],
    ],
    ["an item", ["tasks", "c"], ["  - id: c", "    name: C", "    effort: 3", "    people: ada # alone"], []],
    ["a text of lines", ["tasks", "b", "note"], ["    note: |", "      Two", "      lines"], []],
  ])("removes %s", (_name, path, minus, plus) => {
    expect(changed(removeFromPlan(PLAN, path))).toEqual({ minus, plus });
  });
});

describe("an edit that cannot be made", () => {
  it.each<[string, PlanEdit, string]>([
    ["a text that is no YAML", setInPlan("a: [", ["x"], 1), "yaml-syntax"],
    ["an item that is not there", removeFromPlan(PLAN, ["tasks", "zebra"]), "no-such-place"],
    ["an item that is no list", addToPlan(PLAN, ["tasks", "b"], 1), "no-such-place"],
    ["a key that is not there", removeFromPlan(PLAN, ["budget"]), "no-such-place"],
    ["a number that is none", setInPlan(PLAN, ["iterations"], Number.NaN), "not-json"],
    ["a function", setInPlan(PLAN, ["seed"], () => 1), "not-json"],
    ["a value shared by an alias", setInPlan("a: &x { b: 1 }\nc: *x\n", ["c", "b"], 2), "cannot-edit"],
  ])("leaves %s as it is and says why", (_name, { text, problems }, code) => {
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(["a: [", PLAN, "a: &x { b: 1 }\nc: *x\n"]).toContain(text);
  });
});

describe("edits at random", () => {
  const text = fixture("complete.plan.yaml");
  const base = parse(text) as Record<string, unknown>;
  const comments = (document: string) => (document.match(/# [^\n]*/g) ?? []).length;

  it("say what was asked and keep every comment", () => {
    const places = scalars(base);
    const value = fc.oneof(
      fc.jsonValue({ maxDepth: 2 }),
      fc.constantFrom([1, 2, 3], "x: y", "# x", "- a", "a\nb", "2027-01-01", "true", ""),
    );
    fc.assert(
      fc.property(fc.constantFrom(...places), value, (path, put) => {
        const edit = setInPlan(text, path, put);
        expect(edit.problems).toEqual([]);
        const expected = JSON.parse(JSON.stringify(base)) as unknown;
        const last = path[path.length - 1] ?? "";
        const holder = path
          .slice(0, -1)
          .reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], expected);
        Object.defineProperty(holder, last, {
          value: put,
          enumerable: true,
          writable: true,
          configurable: true,
        });
        expect(JSON.stringify(parse(edit.text, { schema: "core" }))).toBe(JSON.stringify(expected));
        expect(comments(edit.text)).toBeGreaterThanOrEqual(comments(text));
      }),
      { numRuns: 400, seed: 77 },
    );
  });
});

function scalars(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== "object" || value === null) return [path];
  const steps: (string | number)[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return steps.flatMap((step) => scalars((value as Record<string | number, unknown>)[step], [...path, step]));
}

describe("writeEstimate(estimate)", () => {
  it.each([
    "7",
    "[5, 7, 14]",
    "{ low: 5, high: 14, shape: uniform }",
    "{ low: 1, likely: 2, high: 3, unit: weeks }",
    "{ low: 2, likely: 2, high: 2, unit: weeks }",
    "{ outcomes: [{ value: 1, chance: 0.5 }, { value: 2, chance: 0.5 }] }",
  ])("writes %s as it was", (written) => {
    const estimate = mustRead(`${HEAD}tasks: { id: a, name: A, duration: ${written} }`).tasks[0]?.duration;
    expect(estimate && writeEstimate(estimate)).toEqual(parse(written));
  });
});

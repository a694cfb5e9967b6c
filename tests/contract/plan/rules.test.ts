// Each rule of plan format 1 (the project's published format) with a document that breaks it and nothing else.

import { describeProblem, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { BROKEN } from "./brokenPlans.ts";
import { HEAD, TASK } from "./plans.ts";

describe("readPlan(a plan that breaks one rule)", () => {
  it.each(BROKEN)("$name", ({ text, code, path, says, severity = "error" }) => {
    const { plan, problems } = readPlan(text);
    expect(problems.map((problem) => `${problem.code} ${problem.path}`)).toEqual([`${code} ${path}`]);
    const [problem] = problems;
    expect(problem?.severity).toBe(severity);
    expect(problem === undefined ? "" : describeProblem(problem)).toContain(says);
    expect(plan === undefined).toBe(severity === "error");
  });

  it("points at the line and column where the value stands", () => {
    for (const { text, at } of BROKEN) {
      if (at === undefined) continue;
      const offset = text.indexOf(at);
      const before = text.slice(0, offset).split("\n");
      const [problem] = readPlan(text).problems;
      expect({ line: problem?.line, column: problem?.column }, text).toEqual({
        line: before.length,
        column: (before[before.length - 1] ?? "").length + 1,
      });
    }
  });

  it("points into JSON as it points into YAML", () => {
    const text =
      '{\n  "format": 1, "title": "T",\n  "start": "01.09.2027",\n  "tasks": [{ "id": "a", "name": "A", "duration": 1 }]\n}';
    expect(readPlan(text).problems).toEqual([
      {
        code: "bad-format",
        severity: "error",
        path: "start",
        line: 3,
        column: 12,
        received: '`"01.09.2027"`',
        rule: "A date is written year-month-day.",
        remedy: "Write 2027-09-01.",
      },
    ]);
  });
});

describe("readPlan(numbers)", () => {
  it("never changes a number it warns about", () => {
    const { plan } = readPlan(`${HEAD}commitment: { budget: 210.000 }\n${TASK}`);
    expect(plan?.commitment.budget).toBe(210);
  });

  it("does not suspect amounts that are not grouped", () => {
    for (const written of ["210.5", "210.00", "0.125", "2100.000", "210.0000"]) {
      expect(readPlan(`${HEAD}commitment: { budget: ${written} }\n${TASK}`).problems).toEqual([]);
    }
  });
});

describe("readPlan(what is allowed)", () => {
  const allowed: [name: string, text: string][] = [
    [
      "a task linked twice in different ways",
      `${HEAD}tasks:\n - { id: a, name: A, duration: 1 }\n - { id: b, name: B, duration: 1, after: [a, { task: a, link: finish-to-finish }] }`,
    ],
    [
      "a share above capacity where capacity is not respected",
      `${HEAD}respectCapacity: false\npeople: { id: p, name: P, capacity: 0.5 }\ntasks: { id: a, name: A, duration: 1, people: p }`,
    ],
    [
      "a finished milestone that never started",
      `${HEAD}statusDate: 2027-01-10\ntasks: { id: a, name: A, milestone: true, finished: 2027-01-06 }`,
    ],
    [
      "a milestone that waits",
      `${HEAD}risks: { id: r, name: R, probability: 0.1, impacts: { tasks: a, wait: 3 } }\ntasks: { id: a, name: A, milestone: true }`,
    ],
    [
      "a group whose chances sum to exactly 1",
      `${HEAD}risks:\n${[0.7, 0.2, 0.1].map((p, i) => ` - { id: r${i}, name: R, probability: ${p}, group: g }`).join("\n")}\n${TASK}`,
    ],
    [
      "negative money and lags",
      `${HEAD}tasks:\n - { id: a, name: A, duration: 1, cost: -5 }\n - { id: b, name: B, duration: 1, after: { task: a, lag: -2 } }`,
    ],
    ["29 February of a leap year", `${HEAD}commitment: { finishBy: 2028-02-29 }\n${TASK}`],
    [
      "phases named by tasks alone",
      `${HEAD}risks: { id: r, name: R, probability: 0, impacts: { phase: Dig, delay: 1 } }\ntasks: { id: a, name: A, phase: Dig, duration: 1 }`,
    ],
    [
      "a value used twice by an alias",
      `${HEAD}tasks:\n - { id: a, name: A, duration: &d [1, 2, 3] }\n - { id: b, name: B, duration: *d }`,
    ],
  ];
  it.each(allowed)("%s", (_name, text) => {
    expect(readPlan(text).problems).toEqual([]);
  });
});

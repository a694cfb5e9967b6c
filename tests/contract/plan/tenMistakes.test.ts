// One document, ten different mistakes, ten located messages: all at once (the project's published command line).

import { describeProblem, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";

const LINES: [line: string, column?: number, place?: string, remedy?: string][] = [
  ["format: 1"],
  ["title: Reading room: phase 2", 8, "", 'title: "Reading room: phase 2"'],
  ["start: 01.02.2027", 8, "start", "2027-02-01"],
  ["curency: EUR", 1, "curency", "`currency`"],
  ["commitment:"],
  ["  confidence: 80%", 15, "commitment.confidence", "0.8"],
  ["  budget: 210.000", 11, "commitment.budget", "210000"],
  ["people:"],
  ["  - { id: tam, name: Tam, capacity: 0.5 }"],
  ["tasks:"],
  ["  - { id: survey, name: Survey, duration: [5, 3, 9] }", 43, "tasks[0].duration", "Raise likely"],
  ["  - { id: paint, name: Paint, duration: 2, after: survy }", 51, "tasks[1].after", "`survey`"],
  ["  - id: lay"],
  ["    name: Lay floor"],
  ["    effort: 3", 13, "tasks[2].effort", "`people`"],
  ["    after: open", 12, "tasks[2].after", "Remove one of these links"],
  ["  - { id: open, name: Open, milestone: true, after: lay }"],
  [
    "  - { id: clean, name: Clean, duration: 1, people: { id: tam, share: 1 } }",
    70,
    "tasks[4].people.share",
    "0.5",
  ],
];

describe("readPlan(ten mistakes)", () => {
  const { plan, problems } = readPlan(LINES.map(([line]) => `${line}\n`).join(""));
  const expected = LINES.flatMap(([, column, path], index) =>
    column === undefined ? [] : [{ line: index + 1, column, path }],
  );

  it("lists all ten in the order of the document, each with its place", () => {
    expect(expected).toHaveLength(10);
    expect(problems.map(({ line, column, path }) => ({ line, column, path }))).toEqual(expected);
    expect(new Set(problems.map(({ code }) => code)).size).toBe(10);
    expect(plan).toBeUndefined();
  });

  it("says in each what would be right", () => {
    const remedies = LINES.flatMap(([, , , remedy]) => (remedy === undefined ? [] : [remedy]));
    for (const [index, remedy] of remedies.entries()) expect(problems[index]?.remedy).toContain(remedy);
  });

  it("writes each on one line for a person", () => {
    const [, start] = problems;
    expect(start === undefined ? "" : describeProblem(start, "room.plan.yaml")).toBe(
      "room.plan.yaml:3:8 start: `01.02.2027`: A date is written year-month-day. Write 2027-02-01.",
    );
  });
});

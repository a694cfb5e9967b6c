// A sheet per person, out and back in.
import { addOpinion, type Plan, readSheet, sheetCells, sheetOf } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { mustRead } from "../plan/plans.ts";

const PLAN = `format: 1
title: T
start: 2027-01-04
people: [{ id: ana, name: Ana }, { id: ben, name: Ben }]
tasks:
  - id: dig
    name: Dig, then "shore" it
    duration: [3, 4, 8]
    cost: [100, 120, 200]
    people: [ana, ben]
    opinions:
      - { by: ana, low: 2, likely: 3.5, high: 7, bounds: p10-p90, basis: "Dug two; one in clay", dissent: "=too deep" }
      - { by: ben, low: 20, likely: 30, high: 40, basis: Never seen it }
  - { id: plan, name: Plan it, effort: { low: 1, likely: 2, high: 3, unit: weeks }, people: ana, after: dig }
  - { id: paint, name: Paint, duration: 4 }
  - { id: end, name: End, milestone: true, responsible: ana, after: [plan, paint] }
risks: [{ id: rock, name: Rock, probability: 0.1, impacts: { tasks: dig, delay: 3 } }]
`;
const who = { by: "ana", date: "2026-11-02" };
const plan = mustRead(PLAN);
const cells = sheetCells(sheetOf(plan, "ana"));
const column = (heading: string) => cells[0]?.indexOf(heading) ?? -1;
/** The sheet with some cells changed: `[row, heading, value]`, rows counted from 1. */
const filled = (...changes: [row: number, heading: string, value: string][]): string[][] => {
  const copy = cells.map((row) => [...row]);
  for (const [row, heading, value] of changes) {
    const line = copy[row - 1];
    if (line === undefined) throw new Error(`no row ${row}`);
    line[column(heading)] = value;
  }
  return copy;
};
const answers = (row: number, basis: string, high: string, low: string, likely: string) =>
  [
    [row, "why would you know", basis],
    [row, "exceeded one time in ten", high],
    [row, "beaten one time in ten", low],
    [row, "likely", likely],
  ] satisfies [number, string, string][];

describe("sheetOf(plan, person)", () => {
  it("asks for the tasks a person has to do with, in the order of the interview, with their own last answers only", () => {
    expect(cells).toEqual([
      [
        "task",
        "name",
        "what it needs first",
        "not part of the range",
        "estimate of",
        "unit",
        "why would you know",
        "exceeded one time in ten",
        "beaten one time in ten",
        "likely",
        "what you do not agree with",
      ],
      [
        "dig",
        'Dig, then "shore" it',
        "",
        "if it happens: Rock",
        "duration",
        "working days",
        "Dug two; one in clay",
        "7",
        "2",
        "3.5",
        "=too deep",
      ],
      ["dig", 'Dig, then "shore" it', "", "if it happens: Rock", "cost", "EUR", "", "", "", "", ""],
      ["plan", "Plan it", 'Dig, then "shore" it', "", "effort", "person-weeks", "", "", "", "", ""],
    ]);
  });

  it("asks for everything where that is wanted", () => {
    const tasks = sheetOf(plan, "ana", { all: true }).map((row) => row.cells.task);
    expect(tasks).toEqual(["dig", "dig", "plan", "paint"]);
  });

  it("restates answers in other bounds as one-in-ten values", () => {
    const row = sheetCells(sheetOf(plan, "ben"))[1] ?? [];
    // Of a symmetric pert 20-30-40 the one-in-ten values are as far from 30 on both sides, and inside.
    const [high, low] = [Number(row[7]), Number(row[8])];
    expect(high + low).toBeCloseTo(60, 6);
    expect(high).toBeGreaterThan(33);
    expect(high).toBeLessThan(40);
  });
});

describe("readSheet(plan, cells)", () => {
  it("changes nothing where nothing was changed", () => {
    for (const person of ["ana", "ben"]) {
      const own = sheetCells(sheetOf(plan, person));
      expect(readSheet(plan, own, { ...who, by: person })).toEqual({
        opinions: [],
        unchanged: 1,
        empty: person === "ana" ? 2 : 1,
        problems: [],
      });
    }
  });

  it("takes over what is new, and the sheet then gives the same cells back", () => {
    const sheet = filled(
      ...answers(3, "Two quotes", "260", "100", "150"),
      ...answers(4, "Did it\nlast year", "4", "1.5", "2"),
    );
    const { opinions, problems } = readSheet(plan, sheet, who);
    expect(problems).toEqual([]);
    expect(opinions.map(({ task, opinion }) => [task, opinion.of, opinion.estimate])).toEqual([
      [
        "dig",
        "cost",
        { kind: "range", low: 100, likely: 150, high: 260, shape: "pert", bounds: "p10-p90", unit: "days" },
      ],
      [
        "plan",
        "effort",
        { kind: "range", low: 1.5, likely: 2, high: 4, shape: "pert", bounds: "p10-p90", unit: "weeks" },
      ],
    ]);
    let text = PLAN;
    for (const { task, opinion } of opinions) {
      const found = plan.tasks.find(({ id }) => id === task);
      if (found !== undefined) text = addOpinion(text, found, opinion).text;
    }
    const after: Plan = mustRead(text);
    expect(sheetCells(sheetOf(after, "ana"))).toEqual(sheet);
    expect(readSheet(after, sheet, who)).toMatchObject({ opinions: [], unchanged: 3, problems: [] });
    expect(after.sha256).toBe(plan.sha256);
  });

  it("does not mind columns in another order, rows left out, or 3.50 for 3.5", () => {
    const order = [...(cells[0] ?? [])].reverse();
    const turned = [
      ["\uFEFFremarks", ...order],
      ["", ...[...(filled([2, "likely", "3.50"])[1] ?? [])].reverse()],
      [],
    ];
    const { unchanged, problems, opinions } = readSheet(plan, turned, who);
    expect([unchanged, opinions]).toEqual([1, []]);
    expect(problems.map(({ code, severity }) => [code, severity])).toEqual([["unknown-column", "warning"]]);
  });

  it("tells every problem at its row and column, all at once, and takes nothing over", () => {
    const sheet = filled(
      ...answers(2, "Dug two", "7", "9", "8"),
      ...answers(3, "", "1.000,50", "100", "soon"),
      [4, "unit", "person-days"],
      [4, "likely", "3"],
    );
    sheet.push(
      ["digg", "", "", "", "duration", "working days", "x", "2", "1", "1", ""],
      ["end", "", "", "", "duration", "working days", "x", "2", "1", "1", ""],
      ["plan", "", "", "", "duration", "working days", "x", "2", "1", "1", ""],
      ["dig", "", "", "", "duration", "working days", "x", "2", "1", "1", ""],
    );
    const { opinions, problems } = readSheet(plan, sheet, who);
    expect(opinions).toEqual([]);
    expect(problems.map(({ path, code }) => [path, code])).toEqual([
      ["row 2, column “beaten one time in ten”", "answer"],
      ["row 3, column “exceeded one time in ten”", "answer"],
      ["row 3, column “likely”", "answer"],
      ["row 3, column “why would you know”", "answer"],
      ["row 4, column “unit”", "unit"],
      ["row 5, column “task”", "unknown-id"],
      ["row 6, column “task”", "nothing-to-ask"],
      ["row 7, column “estimate of”", "nothing-to-ask"],
      ["row 8, column “task”", "repeated-row"],
    ]);
    expect(problems[5]?.remedy).toBe("Did you mean dig?");
  });

  it("needs its columns", () => {
    const { problems } = readSheet(plan, [["task", "likely", "likely"]], who);
    expect(problems.map(({ code }) => code)).toEqual([
      "repeated-column",
      ...Array.from({ length: 6 }, () => "missing-column"),
    ]);
    expect(readSheet(plan, [], who).problems.length).toBe(8);
  });

  it("keeps what was said where a row was emptied, and says so", () => {
    const blank = answers(2, "", "", "", "");
    const { opinions, problems, empty } = readSheet(
      plan,
      filled(...blank, [2, "what you do not agree with", ""]),
      who,
    );
    expect([opinions, empty, problems.map(({ code, severity }) => [code, severity])]).toEqual([
      [],
      3,
      [["emptied", "warning"]],
    ]);
  });
});

// A sheet goes through a table of comma-separated values (RFC 4180) without loss, whatever people wrote.
import { type Opinion, type Plan, readCsv, readSheet, sheetCells, sheetOf, writeCsv } from "@leeway/core";
import fc from "fast-check";
import { expect, it } from "vitest";
import { mustRead } from "../../contract/plan/plans.ts";

const plan = mustRead(`format: 1
title: T
start: 2027-01-04
people: [{ id: ana, name: Ana }]
tasks:
  - { id: dig, name: "Dig; \\"deep\\", =quick", duration: [1, 2, 3], people: ana, cost: [1, 2, 3] }
  - { id: lift, name: Lift, duration: { low: 1, likely: 2, high: 3, unit: weeks }, people: ana, after: dig }
`);
const hostile = fc.constantFrom(
  "=1+2",
  "'=x",
  "-3",
  "@sum",
  "a,b",
  '"',
  "two\nlines",
  "two\r\nlines",
  "a;b",
  "é ü",
  "\t=1",
  "1,5",
);
const text = fc.oneof(hostile, fc.string({ minLength: 1, maxLength: 20 })).map((said) => `${said}.`);
const value = fc.double({ min: 0, max: 1e6, noNaN: true });
const opinion = fc
  .record({
    low: value,
    likely: value,
    high: value,
    basis: text,
    dissent: fc.option(text, { nil: "" }),
    cost: fc.boolean(),
  })
  .map(({ low: a, likely: b, high: c, basis, dissent, cost }): Opinion => {
    const [low = 0, likely = 0, high = 0] = [a, b, c].sort((x, y) => x - y);
    const range = { kind: "range" as const, low, likely, high, shape: "pert" as const };
    return {
      by: "ana",
      of: cost ? "cost" : "duration",
      estimate:
        low === high
          ? { kind: "fixed", value: low, unit: "days" }
          : { ...range, bounds: "p10-p90", unit: "days" },
      basis,
      ...(dissent === "" ? {} : { dissent }),
    };
  });
const saying = (opinions: Opinion[]): Plan => ({
  ...plan,
  tasks: plan.tasks.map((task, k) => (k === 0 ? { ...task, opinions } : task)),
});

it("a sheet comes back cell for cell, and says nothing new", () => {
  fc.assert(
    fc.property(fc.array(opinion, { maxLength: 3 }), (opinions) => {
      const said = saying(opinions);
      const cells = sheetCells(sheetOf(said, "ana"));
      const [header = [], ...rows] = cells;
      const { cells: back, problems } = readCsv(writeCsv(header, rows));
      expect(problems).toEqual([]);
      expect(back.map((row) => row.map(ends))).toEqual(cells.map((row) => row.map(ends)));
      const reading = readSheet(said, back, { by: "ana", date: "2026-11-02" });
      expect([reading.opinions, reading.problems]).toEqual([[], []]);
    }),
    { numRuns: 80 },
  );
});

it("what is read from a filled sheet is what a sheet then gives", () => {
  fc.assert(
    fc.property(opinion, (given) => {
      const filled = sheetCells(sheetOf(saying([given]), "ana", { all: true }));
      const reading = readSheet(plan, filled, { by: "ana", date: "2026-11-02" });
      expect(reading.problems).toEqual([]);
      const again = sheetCells(
        sheetOf(saying(reading.opinions.map((each) => each.opinion)), "ana", { all: true }),
      );
      const trimmed = (cells: string[][]) => cells.map((row) => row.map((cell) => cell.trim()));
      expect(trimmed(again)).toEqual(trimmed(filled));
    }),
    { numRuns: 60 },
  );
});

/** Line ends inside a cell may become those of the table. */
function ends(cell: string): string {
  return cell.replace(/\r\n?/g, "\n");
}

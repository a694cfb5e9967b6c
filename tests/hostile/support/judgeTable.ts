import {
  factsOfCsv,
  importEstimates,
  importTable,
  type Plan,
  readCsv,
  readPlan,
  readSheet,
  recordProgress,
  type TableOfPlan,
} from "@leeway/core";
import { parse } from "csv-parse/sync";
import { faultsOfReading } from "./judgePlan.ts";
import { faultsOf } from "./judgeProblems.ts";

/** A table and the plan it goes back into. */
export interface TableCase {
  plan: string;
  what: TableOfPlan | "estimates" | "sheet" | "progress";
  csv: string;
}

/** All that is wrong with how a table was taken: the plan it leaves behind, and the numbers that got into it. */
export function faultsOfTable({ plan, what, csv }: TableCase): string[] {
  const before = readPlan(plan).plan;
  if (before === undefined) return ["the plan of the case is none"];
  if (what === "sheet") return faultsOfSheet(before, csv);
  if (what === "progress") return faultsOfProgress(plan, csv);
  const result =
    what === "estimates"
      ? importEstimates(plan, csv)
      : importTable(plan, csv, what, { removeMissing: csv.length % 2 === 0 });
  const faults = faultsOf(result.problems, csv);
  if (result.problems.some(({ severity }) => severity === "error")) {
    return result.text === plan ? faults : [...faults, "refused, and the text is another"];
  }
  if (result.changes.length === 0)
    return result.text === plan ? faults : [...faults, "no change, another text"];
  const after = readPlan(result.text);
  if (after.plan === undefined) return [...faults, "no plan any more", ...faultsOfReading(after)];
  const numbers = numbersOf(csv);
  if (numbers === undefined) return faults;
  for (const { to, key, of } of result.changes) {
    for (const number of numbersIn(to)) {
      if (!numbers.has(number)) faults.push(`${of} ${key} became ${number}, which stands in no cell`);
    }
  }
  return faults;
}

function faultsOfSheet(plan: Plan, csv: string): string[] {
  const { cells, decimalComma, problems } = readCsv(csv);
  const { opinions, problems: found } = readSheet(plan, cells, {
    by: "p-0",
    date: "2027-01-04",
    decimalComma,
  });
  const faults = faultsOf([...problems, ...found], csv);
  const numbers = numbersOf(csv);
  if (numbers === undefined) return faults;
  for (const { task, opinion } of opinions) {
    const { estimate } = opinion;
    const values = estimate.kind === "range" ? [estimate.low, estimate.high] : numbersIn(estimate);
    for (const value of values) {
      if (!numbers.has(value)) faults.push(`${task} is said to take ${value}, which stands in no cell`);
    }
  }
  return faults;
}

function faultsOfProgress(plan: string, csv: string): string[] {
  const { facts, problems } = factsOfCsv(csv, "progress.csv");
  const faults = faultsOf(problems, csv);
  const recorded = recordProgress(plan, { statusDate: "2029-01-05", facts });
  faults.push(...faultsOf(recorded.problems, csv));
  const numbers = numbersOf(csv);
  if (recorded.after === undefined || numbers === undefined) return faults;
  const before = readPlan(plan).plan;
  for (const task of recorded.after.tasks) {
    const old = before?.tasks.find(({ id }) => id === task.id);
    for (const key of ["spent", "remaining"] as const) {
      if (JSON.stringify(task[key]) === JSON.stringify(old?.[key])) continue;
      for (const number of numbersIn(task[key])) {
        if (!numbers.has(number)) faults.push(`${task.id} ${key} became ${number}, which stands in no cell`);
      }
    }
  }
  return faults;
}

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/**
 * Every number that stands in a cell, as csv-parse finds the cells; nothing where it finds none. A comma is a decimal
 * point in a cell that has nothing else (`0,5`): which of both readings is right depends on the table.
 */
function numbersOf(csv: string): Set<number> | undefined {
  const found = new Set<number>([0, 1]);
  for (const delimiter of [",", ";", "\t"]) {
    try {
      const rows = parse(csv, {
        delimiter,
        bom: true,
        relax_column_count: true,
        record_delimiter: ["\r\n", "\n", "\r"],
      });
      for (const cell of rows.flat()) {
        for (const [text] of String(cell).matchAll(/[-+]?(?:\d+(?:[.,]\d*)?|\.\d+)(?:e[-+]?\d+)?/gi)) {
          found.add(Number(text.replace(",", ".")));
          for (const piece of text.split(",")) found.add(Number(piece));
        }
      }
    } catch {
      if (delimiter === ",") return undefined;
    }
  }
  return found;
}

import { nearest } from "../../plan/definition/nearest.ts";
import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Id, IsoDate, Opinion, Plan } from "../../plan/types.ts";
import { opinionFrom } from "../interview/opinionFrom.ts";
import { INTERVIEW_ORDER } from "../interview/questions.ts";
import type { InterviewKey } from "../interview/types.ts";
import { VALUES, withPoint } from "./cells.ts";
import type { SheetKey } from "./columns.ts";
import { columnsOf, headingOf, type Report } from "./headings.ts";
import { type SheetRow, sheetOf } from "./sheetOf.ts";

/** What came back in a sheet, with its problems. */
export interface SheetReading {
  /** New opinions, in the order of the rows; empty where a problem is an error. */
  opinions: { task: Id; opinion: Opinion }[];
  /** Rows that say what was said before, and rows without any answer. */
  unchanged: number;
  empty: number;
  problems: Problem[];
}

/**
 * Reads a filled sheet. Rows as they were change nothing; every problem has its row and column, all at once, and none is
 * taken over while one is an error. Columns may be in another order and there may be more; rows may be left out.
 *
 * @param cells  Rows of cells, headings first: row 1.
 * @param about  Whose sheet it is and when it was filled; `decimalComma`: numbers are written `0,5`, as `readCsv` says.
 */
export function readSheet(
  plan: Plan,
  cells: readonly (readonly string[])[],
  { by, date, decimalComma = false }: { by: Id; date: IsoDate; decimalComma?: boolean },
): SheetReading {
  const problems: Problem[] = [];
  const report: Report = (row, column, code, received, rule, remedy, severity = "error") => {
    const where = column === undefined ? `row ${row}` : `row ${row}, column “${column}”`;
    problems.push({ code, severity, path: where, received: oneLine(received), rule, remedy });
  };
  const columns = columnsOf(cells[0] ?? [], report);
  const result: SheetReading = { opinions: [], unchanged: 0, empty: 0, problems };
  if (columns === undefined) return result;
  const known = new Map(sheetOf(plan, by, { all: true }).map((row) => [keyOf(row.cells), row]));
  const seen = new Map<string, number>();
  for (const [index, line] of cells.entries()) {
    if (index === 0 || line.every((cell) => cell.trim() === "")) continue;
    const given = (key: SheetKey) => {
      const cell = line[columns.get(key) ?? -1]?.trim() ?? "";
      return decimalComma && VALUES.includes(key) ? withPoint(cell) : cell;
    };
    const at: At = { row: index + 1, given, report };
    const row = rowOf(plan, known, at);
    if (row === undefined) continue;
    const key = keyOf(row.cells);
    const earlier = seen.get(key);
    if (earlier !== undefined) {
      report(
        at.row,
        "task",
        "repeated-row",
        given("task"),
        `Row ${earlier} is about the same.`,
        "Keep one of them.",
      );
      continue;
    }
    seen.set(key, at.row);
    if (INTERVIEW_ORDER.every((each) => given(each) === "")) {
      result.empty++;
      if (row.cells.high !== "") {
        const rule = "The row is empty now; what was said before stays.";
        report(
          at.row,
          undefined,
          "emptied",
          row.cells.task,
          rule,
          "Say something else to change it.",
          "warning",
        );
      }
    } else if (INTERVIEW_ORDER.every((each) => same(each, given(each), row.cells[each]))) result.unchanged++;
    else {
      const subject = { ...row.askable, by, date };
      const answers = Object.fromEntries(INTERVIEW_ORDER.map((each) => [each, given(each)]));
      const { opinion, faults } = opinionFrom(subject, answers);
      // The reason names what came.
      for (const { key: which, why } of faults) {
        report(at.row, headingOf(which), "answer", "", why, "Correct the cell, or empty the whole row.");
      }
      if (opinion !== undefined) result.opinions.push({ task: row.cells.task, opinion });
    }
  }
  if (problems.some(({ severity }) => severity === "error")) result.opinions = [];
  return result;
}

interface At {
  row: number;
  given: (key: SheetKey) => string;
  report: Report;
}

function keyOf({ task, of }: Record<SheetKey, string>): string {
  return `${of} ${task}`;
}

/** The row the plan has for it, or what is wrong with its first cells. */
function rowOf(
  plan: Plan,
  known: ReadonlyMap<string, SheetRow>,
  { row, given, report }: At,
): SheetRow | undefined {
  const [task, of, unit] = [given("task"), given("of"), given("unit")];
  const found = known.get(`${of} ${task}`);
  if (found === undefined) {
    const rows = [...known.values()].filter(({ cells }) => cells.task === task);
    if (rows.length > 0) {
      const rule = `The task has no ${of === "" ? "such estimate" : of} to ask about.`;
      const has = rows.map(({ cells }) => cells.of).join(", ");
      report(row, headingOf("of"), "nothing-to-ask", of, rule, `It has: ${has}.`);
    } else if (plan.tasks.some(({ id }) => id === task)) {
      const rule = "There is nothing to ask about a milestone, or about what is finished.";
      report(row, "task", "nothing-to-ask", task, rule, "Leave the row out.");
    } else {
      const meant = nearest(
        task,
        plan.tasks.map(({ id }) => id),
      );
      const remedy = meant === undefined ? "Keep the ids as they came." : `Did you mean ${meant}?`;
      report(row, "task", "unknown-id", task, "The plan has no such task.", remedy);
    }
    return undefined;
  }
  if (unit !== found.cells.unit) {
    const rule = `The plan counts this in ${found.cells.unit}.`;
    report(row, "unit", "unit", unit, rule, "Give the values in that unit, and write it here.");
    return undefined;
  }
  return found;
}

/** A spreadsheet writes 7.50 as 7.5: equal numbers are the same answer. */
function same(key: InterviewKey, given: string, before: string): boolean {
  if (given === before.trim()) return true;
  const numbers = key !== "basis" && key !== "dissent" && given !== "" && before !== "";
  return numbers && Number(given) === Number(before);
}

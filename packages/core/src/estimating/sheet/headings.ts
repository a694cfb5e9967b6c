import { nearest } from "../../plan/definition/nearest.ts";
import { INTERVIEW_ORDER } from "../interview/questions.ts";
import { SHEET_COLUMNS, type SheetKey } from "./columns.ts";

/** Notes a problem at a row, counted from 1, and a column by its heading. */
export type Report = (
  row: number,
  column: string | undefined,
  code: string,
  received: string,
  rule: string,
  remedy: string,
  severity?: "warning" | "error",
) => void;

/** The heading of a column. */
export function headingOf(key: SheetKey): string {
  return SHEET_COLUMNS.find((column) => column.key === key)?.heading ?? key;
}

const NEEDED: readonly SheetKey[] = ["task", "of", "unit", ...INTERVIEW_ORDER];

/** Where each column stands, or undefined after reporting what is wrong with the headings: row 1. */
export function columnsOf(headings: readonly string[], report: Report): Map<SheetKey, number> | undefined {
  const columns = new Map<SheetKey, number>();
  let whole = true;
  for (const [index, written] of headings.entries()) {
    const heading = written
      .replace(/^\uFEFF/, "")
      .trim()
      .toLowerCase();
    const column = SHEET_COLUMNS.find((each) => each.heading === heading);
    if (column === undefined) {
      if (heading === "") continue;
      const meant = nearest(
        heading,
        SHEET_COLUMNS.map((each) => each.heading),
      );
      const remedy = meant === undefined ? "It is not read." : `It is not read; did you mean “${meant}”?`;
      report(1, written, "unknown-column", "", "A sheet has no such column.", remedy, "warning");
    } else if (columns.has(column.key)) {
      report(1, written, "repeated-column", "", "This column is here twice.", "Keep one of the two.");
      whole = false;
    } else columns.set(column.key, index);
  }
  for (const key of NEEDED) {
    if (columns.has(key)) continue;
    report(
      1,
      headingOf(key),
      "missing-column",
      "",
      "The sheet needs this column.",
      "Keep the headings as they came.",
    );
    whole = false;
  }
  return whole ? columns : undefined;
}

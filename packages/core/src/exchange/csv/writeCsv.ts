/// <reference path="./papaparse.d.ts" />
import Papa from "papaparse";
import { neutralised } from "./formulaCell.ts";

/** A cell to be written. */
export type CsvCell = string | number | boolean | null | undefined;

/** How a table is written. */
export interface CsvWriting {
  /** A byte order mark ahead, which some spreadsheets need to see UTF-8. */
  byteOrderMark?: boolean;
}

/**
 * A table as comma-separated values: CRLF behind every row, quotes where they are needed. Numbers stay numbers; a text
 * that a spreadsheet would take for a formula gets an apostrophe, which `readCsv` takes away again.
 *
 * Source  RFC 4180 (2005), section 2.
 */
export function writeCsv(
  header: readonly string[],
  rows: readonly (readonly CsvCell[])[],
  { byteOrderMark = false }: CsvWriting = {},
): string {
  const cells = [header, ...rows].map((row) => row.map(written));
  // A row of one empty cell would be an empty line, which is no row for a reader.
  const quotes = (value: unknown) =>
    typeof value === "string" && (value === "" ? header.length === 1 : risky(value));
  const text = Papa.unparse(cells, { newline: "\r\n", quotes, skipEmptyLines: false });
  return `${byteOrderMark ? "\uFEFF" : ""}${text}\r\n`;
}

function written(cell: CsvCell): string | number {
  if (cell === null || cell === undefined) return "";
  if (typeof cell === "boolean") return cell ? "yes" : "no";
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : "";
  return neutralised(cell);
}

/** Separators other than ours: a reader that guesses must not take them for one. */
function risky(value: string): boolean {
  return /[;\t\r\n]/.test(value);
}

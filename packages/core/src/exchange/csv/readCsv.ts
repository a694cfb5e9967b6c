/// <reference path="./papaparse.d.ts" />

import Papa from "papaparse";
import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import { asItWas } from "./formulaCell.ts";
import { withLineEnds } from "./lineEnds.ts";

/** What stands between two cells. */
export type Delimiter = "," | ";" | "\t";

/** Cells of a table, row by row, with its problems. */
export interface CsvReading {
  /** Rows of cells, headings first; row 1 is `cells[0]`. Every row is as long as the headings; blank rows stay, empty. */
  cells: string[][];
  delimiter: Delimiter;
  /** Numbers are written `0,5`: semicolons separate, and at least one cell is such a number. */
  decimalComma: boolean;
  /** Each with its row and column. */
  problems: Problem[];
}

/** Beyond this a table is refused: a plan of ten thousand tasks needs a tenth of it. */
export const LARGEST_TABLE = 50_000_000;
const MOST_ROWS = 200_000;
const MOST_COLUMNS = 500;

/**
 * Reads a table of comma-separated values (RFC 4180) as spreadsheets write it: with a byte order mark, with semicolons
 * or tabs, with any line ends. What `writeCsv` wrote comes back as it was.
 *
 * @param separator  What parts the cells, where that is known.
 */
export function readCsv(text: string, separator?: Delimiter): CsvReading {
  const bare = text.replace(/^\uFEFF/, "");
  const delimiter = separator ?? delimiterOf(bare);
  const reading: CsvReading = { cells: [], delimiter, decimalComma: false, problems: [] };
  const refuse = (code: string, received: string, rule: string, remedy: string, path = "") => {
    reading.problems.push({ code, severity: "error", path, received, rule, remedy });
    return reading;
  };
  if (bare.length > LARGEST_TABLE) {
    const rule = "A table of more than 50 million characters is not read.";
    return refuse(
      "too-large",
      `${bare.length} characters`,
      rule,
      "Leave out rows or columns that no plan holds.",
    );
  }
  if (bare.trim() === "") return refuse("empty", "", "The table is empty.", "Begin with a row of headings.");
  const strange = bare.indexOf("\0");
  if (strange !== -1) {
    const row = bare.slice(0, strange).split(/\r\n?|\n/).length;
    const remedy = "Save the sheet as comma-separated values, UTF-8.";
    return refuse(
      "not-text",
      "a NUL character",
      "This is not a text of comma-separated values.",
      remedy,
      `row ${row}`,
    );
  }

  const { data, errors } = Papa.parse<string[]>(withLineEnds(bare, delimiter), {
    delimiter,
    newline: "\r\n",
  });
  for (const { row, message } of errors.slice(0, 20)) {
    reading.problems.push({
      code: "quotes",
      severity: "error",
      path: `row ${(row ?? 0) + 1}`,
      received: "",
      rule: `${message.replace(/\.?$/, "")}.`,
      remedy: "Close the quotes, and write a quote inside them twice.",
    });
  }
  const last = data[data.length - 1];
  if (last !== undefined && last.length === 1 && last[0] === "") data.pop();
  if (data.length > MOST_ROWS)
    return refuse(
      "too-many",
      `${data.length} rows`,
      "A table has at most 200,000 rows.",
      "Leave out empty rows.",
    );
  const width = data[0]?.length ?? 0;
  if (width > MOST_COLUMNS)
    return refuse(
      "too-many",
      `${width} columns`,
      "A table has at most 500 columns.",
      "Leave out the others.",
    );

  reading.cells = data.map((row, index) => {
    const blank = row.every((cell) => cell.trim() === "");
    if (!blank && row.slice(width).some((cell) => cell.trim() !== "")) {
      reading.problems.push({
        code: "row-too-long",
        severity: "error",
        path: `row ${index + 1}, column ${width + 1}`,
        received: oneLine(row[width] ?? ""),
        rule: `The row has ${row.length} cells, but there are ${width} headings.`,
        remedy: "Put quotes around a cell that holds a separator.",
      });
    }
    return Array.from({ length: width }, (_, column) => asItWas(row[column] ?? ""));
  });
  reading.decimalComma =
    delimiter === ";" && reading.cells.some((row) => row.some((cell) => /^\s*[-+]?\d+,\d+\s*$/.test(cell)));
  return reading;
}

/** The separator that stands most often outside quotes in the first row. */
function delimiterOf(text: string): Delimiter {
  const counts = { ",": 0, ";": 0, "\t": 0 };
  let quoted = false;
  for (const char of text.slice(0, 100_000)) {
    if (char === '"') quoted = !quoted;
    else if (!quoted && (char === "\r" || char === "\n")) break;
    else if (!quoted && (char === "," || char === ";" || char === "\t")) counts[char]++;
  }
  if (counts[";"] > counts[","] && counts[";"] >= counts["\t"]) return ";";
  return counts["\t"] > counts[","] ? "\t" : ",";
}

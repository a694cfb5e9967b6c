import fc from "fast-check";
import type { TableCase } from "./judgeTable.ts";
import { NUMBER_TEXTS, WORDS } from "./values.ts";

type Spoil = (csv: string) => string;

const part = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
const HEADINGS = [
  "id",
  "ID",
  " id ",
  "low",
  "likely",
  "high",
  "name",
  "duration",
  "what",
  "of",
  "nobody",
  "__proto__",
  "",
];
const SIGNS = [
  '"',
  '""',
  ",",
  ";",
  "\t",
  "\r",
  "\n",
  "\r\n",
  "\uFEFF",
  "\u0000",
  "'=1",
  "=1+1",
  "\u2028",
  "e\u0301",
  "\u202E",
];

const cell = fc.oneof(
  fc.constantFrom<string>(...NUMBER_TEXTS),
  fc.constantFrom<string>(...WORDS),
  fc.double().map(String),
  fc.integer({ min: 0, max: 40 }).map((n) => `${n},5`),
);
const quoted = (text: string) => (/[",;\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const at = (text: string, p: number) => Math.floor(p * (text.length + 1));
const rowsOf = (csv: string) => csv.split(/(?<=\n)/);

const spoils: fc.Arbitrary<Spoil>[] = [
  // One cell of one row, the headings among them.
  ...[cell.map(quoted), cell, cell.map(quoted)].map((put) =>
    fc.tuple(part, part, put).map(
      ([p, q, text]): Spoil =>
        (csv) => {
          const rows = rowsOf(csv);
          const row = 1 + Math.floor(p * Math.max(1, rows.length - 1));
          const cells = (rows[row] ?? "").replace(/\r?\n$/, "").split(",");
          cells[Math.floor(q * cells.length)] = text;
          rows[row] = `${cells.join(",")}\r\n`;
          return rows.join("");
        },
    ),
  ),
  fc.tuple(part, fc.constantFrom(...HEADINGS)).map(
    ([p, heading]): Spoil =>
      (csv) => {
        const [first = "", ...rest] = rowsOf(csv);
        const cells = first.replace(/\r?\n$/, "").split(",");
        cells[Math.floor(p * cells.length)] = heading;
        return `${cells.join(",")}\r\n${rest.join("")}`;
      },
  ),
  fc.tuple(part, fc.constantFrom(...SIGNS)).map(
    ([p, sign]): Spoil =>
      (csv) =>
        csv.slice(0, at(csv, p)) + sign + csv.slice(at(csv, p)),
  ),
  fc.tuple(part, fc.integer({ min: 1, max: 20 })).map(
    ([p, length]): Spoil =>
      (csv) =>
        csv.slice(0, at(csv, p)) + csv.slice(at(csv, p) + length),
  ),
  fc.tuple(part, part, fc.boolean()).map(
    ([p, q, twice]): Spoil =>
      (csv) => {
        const rows = rowsOf(csv);
        const [row = ""] = rows.splice(Math.floor(p * rows.length), twice ? 0 : 1);
        rows.splice(Math.floor(q * rows.length), 0, twice ? (rows[Math.floor(p * rows.length)] ?? "") : row);
        return rows.join("");
      },
  ),
  fc.constantFrom<Spoil>(
    (csv) => csv.replaceAll(",", ";"),
    (csv) => csv.replaceAll(",", ";").replace(/(\d)\.(\d)/g, "$1,$2"),
    (csv) => csv.replaceAll(",", "\t"),
    (csv) => csv.replaceAll("\r\n", "\n"),
    (csv) => csv.replaceAll("\r\n", "\r"),
    (csv) => csv.replace("\r\n", "\n"),
    (csv) => `\uFEFF${csv}`,
    (csv) => Buffer.from(csv, "utf16le").toString("utf8"),
    (csv) => Buffer.from(`é${csv}`, "latin1").toString("utf8"),
    (csv) => csv.replaceAll("\r\n", ",,,\r\n"),
    (csv) => csv.replaceAll('"', ""),
    (csv) => csv + csv,
  ),
];

/** One of these tables with one to three things done to it. */
export function spoiledTables(tables: readonly TableCase[]): fc.Arbitrary<TableCase> {
  return fc
    .tuple(fc.constantFrom(...tables), fc.array(fc.oneof(...spoils), { minLength: 1, maxLength: 3 }))
    .map(([one, done]) => ({ ...one, csv: done.reduce((csv, each) => each(csv), one.csv) }));
}

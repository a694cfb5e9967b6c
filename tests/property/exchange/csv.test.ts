import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCsv } from "../../../packages/core/src/exchange/csv/readCsv.ts";
import { writeCsv } from "../../../packages/core/src/exchange/csv/writeCsv.ts";

// RFC 4180 (2005), section 2, read by two parsers: ours and csv-parse, an independent library.
// Apostrophes ahead of formulas: OWASP "CSV Injection", CWE-1236 (recalled).

const nasty = fc.oneof(
  fc.string(),
  fc.string({ unit: "binary" }).map((text) => text.replaceAll("\0", "")),
  fc
    .array(fc.constantFrom('"', ",", ";", "\t", "\r", "\n", "'", "=", "+", "-", "@", "1", "\uFF1D", " ", "ä"))
    .map((all) => all.join("")),
);
const table = fc
  .integer({ min: 2, max: 5 })
  .chain((width) =>
    fc.array(fc.array(nasty, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
  );
const DANGEROUS = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;
const NUMBER = /^-?\d/;

describe("writeCsv and readCsv", () => {
  it("lose nothing, whatever stands in the cells", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const header = rows[0]?.map((_, column) => `c${column}`) ?? [];
        const { cells, problems } = readCsv(writeCsv(header, rows));
        expect(problems).toEqual([]);
        expect(cells).toEqual([header, ...rows]);
      }),
      { numRuns: 120 },
    );
  });

  it("write what an independent reader reads, with no cell a spreadsheet would take for a formula", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const header = rows[0]?.map((_, column) => `c${column}`) ?? [];
        const text = writeCsv(header, rows);
        const theirs = parse(text, { record_delimiter: "\r\n" }) as string[][];
        expect(theirs).toHaveLength(rows.length + 1);
        for (const [index, row] of rows.entries())
          for (const [column, cell] of row.entries()) {
            const read = theirs[index + 1]?.[column] ?? "?";
            expect(read === cell || read === `'${cell}`).toBe(true);
            if (!NUMBER.test(read)) expect(read).not.toMatch(DANGEROUS);
          }
      }),
      { numRuns: 120 },
    );
  });

  it("keeps numbers numbers, the negative ones too", () => {
    expect(writeCsv(["a", "b", "c"], [[-5, 0.25, "-5"]])).toBe("a,b,c\r\n-5,0.25,-5\r\n");
  });

  // The six example formulas are of the kinds OWASP lists; the wording is ours.
  it.each(["=1+1", "+1", "-1+1", "@SUM(1)", "\t=1", "\r=1", "＝1", "＋1", "－1", "＠x"])(
    "neutralises %j",
    (formula) => {
      const text = writeCsv(["a", "b"], [[formula, "x"]]);
      expect((parse(text, { record_delimiter: "\r\n" }) as string[][])[1]?.[0]).toBe(`'${formula}`);
      expect(readCsv(text).cells[1]?.[0]).toBe(formula);
    },
  );
});

describe("readCsv", () => {
  // RFC 4180, section 2, rules 1, 2, 5, 6 and 7: the examples given there.
  it.each([
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ['"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
  ])("reads %j as the RFC says", (text, cells) => {
    expect(readCsv(text)).toMatchObject({ cells, problems: [] });
  });

  it("reads what spreadsheets write: byte order mark, semicolons, tabs, mixed line ends, short rows", () => {
    const reading = readCsv('\uFEFFid;hours\na;0,5\r\n"b\nc";2\rd\n');
    expect(reading).toMatchObject({ delimiter: ";", decimalComma: true, problems: [] });
    expect(reading.cells).toEqual([
      ["id", "hours"],
      ["a", "0,5"],
      ["b\nc", "2"],
      ["d", ""],
    ]);
    expect(readCsv("id\thours\na\t1,5\n")).toMatchObject({ delimiter: "\t", decimalComma: false });
  });

  it("names row and column of what it cannot read", () => {
    expect(readCsv("a,b\n1,2,3\n").problems).toMatchObject([
      { code: "row-too-long", path: "row 2, column 3" },
    ]);
    expect(readCsv('a,b\n1,"2\n').problems).toMatchObject([{ code: "quotes", path: "row 2" }]);
    expect(readCsv(" \n").problems).toMatchObject([{ code: "empty" }]);
    expect(readCsv("PK\0\0").problems).toMatchObject([{ code: "not-text" }]);
    expect(readCsv("x".repeat(50_000_001)).problems).toMatchObject([{ code: "too-large" }]);
  });
});

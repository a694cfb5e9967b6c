import { type Table, writeCsv } from "@leeway/core";

/** A table as a file: with a byte order mark where a spreadsheet would otherwise spoil a letter. */
export function csvText({ header, rows }: Table): string {
  const foreign = (cell: string | number) => typeof cell === "string" && /[^\p{ASCII}]/u.test(cell);
  return writeCsv(header, rows, { byteOrderMark: rows.some((row) => row.some(foreign)) });
}

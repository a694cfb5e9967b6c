import type { SheetKey } from "./columns.ts";

/** Columns of numbers. */
export const VALUES: readonly SheetKey[] = ["high", "low", "likely"];

/** `2,5` as 2.5 in a table that writes so; there `1.500` may be either, so it is kept from being read as a number. */
export function withPoint(cell: string): string {
  if (/^[-+]?\d+,\d+$/.test(cell)) return cell.replace(",", ".");
  return /^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(cell)
    ? `${cell} (${Number(cell)} or ${cell.replace(".", "")}?)`
    : cell;
}

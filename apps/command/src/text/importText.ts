import type { Import, ImportChange } from "@leeway/core";
import { cut } from "./page.ts";
import { plainText } from "./plainText.ts";

const MOST = 30;

/** What a table changes in a plan, line by line. */
export function importLines({ changes, unchanged }: Import): string[] {
  const count = (kind: ImportChange["kind"]) => changes.filter((each) => each.kind === kind).length;
  const said = `${count("changed")} values changed, ${count("added")} added, ${count("removed")} removed, ${unchanged} rows as before.`;
  const lines = changes.slice(0, MOST).map(line);
  const more = changes.length - lines.length;
  return [...lines, ...(more > 0 ? [`  and ${more} more`] : []), said];
}

function line({ kind, row, of, key, from, to }: ImportChange): string {
  const where = row === undefined ? "" : ` (row ${row})`;
  if (kind === "removed") return `  - ${plainText(of)}`;
  if (kind === "added") return `  + ${plainText(of)}${where}`;
  return `  ${plainText(of)}.${key}: ${words(from)} -> ${words(to)}${where}`;
}

function words(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return cut(plainText(text), 40);
}

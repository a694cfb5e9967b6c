import type { RoleMatrix } from "@leeway/core";
import { cut } from "./page.ts";

/** The names of rows are cut to this, and further where that lets everybody stand in one table. */
const NAME = 30;
const LEAST_NAME = 20;
const LEAST = 4;

/**
 * The matrix as tables that fit the width: columns are numbered, and where there are too many people for one table the
 * next ones follow in another.
 */
export function rolesTables({ rows, people }: RoleMatrix, width: number): string[] {
  const wide = Math.max(LEAST, ...rows.flatMap(({ roles }) => roles.map((each) => each.join("").length + 2)));
  const left = Math.max(LEAST_NAME, Math.min(NAME, width - 2 - people.length * wide));
  const each = Math.max(1, Math.floor((width - 2 - left) / wide));
  const lines: string[] = [];
  for (let first = 0; first < people.length; first += each) {
    const columns = people.slice(first, first + each);
    if (lines.length > 0) lines.push("");
    lines.push(
      `  ${" ".repeat(left)}${columns.map((_, k) => String(first + k + 1).padStart(wide)).join("")}`,
    );
    for (const { name, roles } of rows) {
      const cells = columns.map((_, k) => ((roles[first + k] ?? []).join("") || ".").padStart(wide));
      lines.push(`  ${cut(name, left).padEnd(left)}${cells.join("")}`);
    }
  }
  return lines;
}

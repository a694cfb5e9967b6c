import type { RoleMatrix } from "@leeway/core";
import { cut } from "./page.ts";

const NAME = 30;
const LEAST = 4;

/**
 * The matrix as tables that fit the width: columns are numbered, and where there are too many people for one table the
 * next ones follow in another.
 */
export function rolesTables({ rows, people }: RoleMatrix, width: number): string[] {
  const wide = Math.max(LEAST, ...rows.flatMap(({ roles }) => roles.map((each) => each.join("").length + 2)));
  const each = Math.max(1, Math.floor((width - NAME - 4) / wide));
  const lines: string[] = [];
  for (let first = 0; first < people.length; first += each) {
    const columns = people.slice(first, first + each);
    if (lines.length > 0) lines.push("");
    lines.push(
      `  ${" ".repeat(NAME)}${columns.map((_, k) => String(first + k + 1).padStart(wide)).join("")}`,
    );
    for (const { name, roles } of rows) {
      const cells = columns.map((_, k) => ((roles[first + k] ?? []).join("") || ".").padStart(wide));
      lines.push(`  ${cut(name, NAME).padEnd(NAME)}${cells.join("")}`);
    }
  }
  return lines;
}

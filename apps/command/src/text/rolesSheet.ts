import type { RoleMatrix, Table } from "@leeway/core";
import { plainText } from "./plainText.ts";

/** The matrix with names over its columns, for a spreadsheet or a page. */
export function rolesSheet({ rows, people }: RoleMatrix): Table {
  return {
    header: ["id", "name", "phase", ...people.map(({ name }) => name)],
    rows: rows.map(({ id, name, phase = "", roles }) => [
      id,
      name,
      phase,
      ...roles.map((each) => each.join("")),
    ]),
  };
}

/** The same as a table in Markdown. */
export function rolesMarkdown(matrix: RoleMatrix): string {
  const { header, rows } = rolesSheet(matrix);
  const line = (cells: readonly (string | number)[]) =>
    `| ${cells
      .map((cell) =>
        plainText(String(cell))
          .replace(/[\\|`*_<>[\]]/g, "\\$&")
          .replace(/\s+/g, " "),
      )
      .join(" | ")} |`;
  return `${[line(header), `|${header.map(() => " --- |").join("")}`, ...rows.map(line)].join("\n")}\n`;
}

import type { Problem } from "../../plan/problem.ts";
import type { RowContext } from "./readRow.ts";

/** How the cells of a table are read: the first decimal comma is told of, once. */
export function contextOf(semicolons: boolean, problems: Problem[]): RowContext {
  let told = false;
  const onComma = (path: string, received: string) => {
    if (told) return;
    told = true;
    const rule = "Cells are separated by semicolons, so a comma in a number is its decimal point.";
    problems.push({
      code: "decimal-comma",
      severity: "warning",
      path,
      received,
      rule,
      remedy: "Look at the numbers.",
    });
  };
  return { semicolons, problems, onComma };
}

import type { Problem } from "../../plan/problem.ts";
import { readPlan } from "../../plan/readPlan.ts";
import { readSource } from "../../plan/source/readSource.ts";
import { toJson } from "../../plan/source/toJson.ts";
import { columnsOf, entriesOf, entryKey, type TableOfPlan } from "../tables/entries.ts";
import type { Row } from "./rowsOf.ts";
import { cellPlace } from "./types.ts";

/** The problems of a plan after a table went in, each at the row and column it came from where it came from one. */
export function inTheTable(text: string, rows: readonly Row[], which: TableOfPlan): Problem[] {
  const { problems } = readPlan(text);
  const { root } = readSource(text);
  if (root === undefined || problems.length === 0) return problems;
  const byKey = new Map(rows.map((row) => [entryKey(row), row]));
  const byPath = new Map(
    entriesOf(toJson(root), which).flatMap((entry) => {
      const row = byKey.get(entryKey(entry));
      return row === undefined ? [] : [[pathText(entry.path), { entry, row }] as const];
    }),
  );
  return problems.map((problem): Problem => {
    for (let place = problem.path; place !== ""; place = place.replace(/(?:^|\.|\[)[^.[]*$/, "")) {
      const found = byPath.get(place);
      if (found === undefined) continue;
      const key = /^\.?([A-Za-z]+)/.exec(problem.path.slice(place.length))?.[1];
      const column = columnsOf(found.entry.what).find((each) => each.key === key);
      const { line: _line, column: _column, ...rest } = problem;
      return { ...rest, path: cellPlace(found.row.row, column?.heading) };
    }
    return problem;
  });
}

function pathText(path: readonly (string | number)[]): string {
  return path
    .map((step, depth) => (typeof step === "number" ? `[${step}]` : depth === 0 ? step : `.${step}`))
    .join("");
}

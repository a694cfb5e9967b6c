import { nearest } from "../../plan/definition/nearest.ts";
import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import { cellPlace } from "./types.ts";

/**
 * Which column holds which heading. Headings may come in any order and in any case; one that is unknown is told of and
 * not read, one that stands twice is an error, and so is one that is needed and missing.
 */
export function headingsOf(
  row: readonly string[],
  known: readonly string[],
  needed: readonly string[],
  problems: Problem[],
): Map<string, number> {
  const columns = new Map<string, number>();
  const add = (
    path: string,
    code: string,
    severity: "error" | "warning",
    received: string,
    words: [string, string],
  ) =>
    problems.push({
      code,
      severity,
      path,
      received: oneLine(received),
      rule: words[0],
      remedy: words[1],
    });
  for (const [index, written] of row.entries()) {
    const bare = written.trim();
    const heading = known.find((each) => each.toLowerCase() === bare.toLowerCase());
    if (heading === undefined) {
      if (bare === "") continue;
      const meant = nearest(bare, known);
      const remedy = meant === undefined ? "It is not read." : `It is not read; did you mean “${meant}”?`;
      add(cellPlace(1, bare), "unknown-column", "warning", bare, ["This table has no such column.", remedy]);
    } else if (columns.has(heading)) {
      add(cellPlace(1, heading), "repeated-column", "error", bare, [
        "This column is here twice.",
        "Keep one of them.",
      ]);
    } else columns.set(heading, index);
  }
  for (const heading of needed) {
    if (columns.has(heading)) continue;
    const remedy = "Keep the headings of the table as it came out.";
    add(cellPlace(1, heading), "missing-column", "error", "", ["The table needs this column.", remedy]);
  }
  return columns;
}

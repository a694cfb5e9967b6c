import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import type { CsvReading } from "../csv/readCsv.ts";
import { REGISTER_HEADINGS } from "../tables/columns.ts";
import { columnsOf, type EntryKind, entryKey, type TableOfPlan } from "../tables/entries.ts";
import { headingsOf } from "./headings.ts";
import { cellPlace } from "./types.ts";

/** A row of a table, known to be of one thing. */
export interface Row {
  row: number;
  what: EntryKind;
  of: string;
  id: string;
  /** The cell under a heading; absent where the table has no such column. */
  cell: (heading: string) => string | undefined;
}

const KINDS: readonly string[] = ["risk", "assumption", "impact", "response"] satisfies EntryKind[];
const isKind = (word: string): word is EntryKind => KINDS.includes(word);

/** The rows of a table under its headings; a row that is of nothing, or of the same as another, is a problem. */
export function rowsOf({ cells }: CsvReading, table: TableOfPlan, problems: Problem[]): Row[] {
  const register = table === "register";
  const known = register
    ? REGISTER_HEADINGS
    : columnsOf(table === "tasks" ? "task" : "person").map(({ heading }) => heading);
  const columns = headingsOf(cells[0] ?? [], known, register ? ["what", "of", "id"] : ["id"], problems);
  if (problems.some(({ severity }) => severity === "error")) return [];
  const seen = new Map<string, number>();
  const rows: Row[] = [];
  for (const [index, line] of cells.entries()) {
    if (index === 0 || line.every((cell) => cell.trim() === "")) continue;
    const row = index + 1;
    const refuse = (heading: string, code: string, received: string, rule: string, remedy: string) =>
      problems.push({
        code,
        severity: "error",
        path: cellPlace(row, heading),
        received: oneLine(received),
        rule,
        remedy,
      });
    const cell = (heading: string) => line[columns.get(heading) ?? -1];
    const given = (heading: string) => (cell(heading) ?? "").trim();
    const what = register ? given("what").toLowerCase() : table === "tasks" ? "task" : "person";
    if (register && !isKind(what)) {
      refuse(
        "what",
        "row-kind",
        what,
        "A row is a risk, an assumption, an impact or a response.",
        "Write one of them.",
      );
      continue;
    }
    const found: Row = { row, what: what as EntryKind, of: given("of"), id: given("id"), cell };
    if (found.id === "") {
      refuse("id", "missing-id", "", "A row is known by its id.", "Write the id; of a new row a new one.");
      continue;
    }
    const inner = what === "impact" || what === "response";
    if (inner && found.of === "") {
      refuse("of", "missing-id", "", `The ${what} is of a risk or an assumption.`, "Write its id.");
      continue;
    }
    const key = entryKey(found);
    const earlier = seen.get(key);
    if (earlier !== undefined) {
      refuse("id", "repeated-row", found.id, `Row ${earlier} is about the same.`, "Keep one of them.");
      continue;
    }
    seen.set(key, row);
    rows.push(found);
  }
  return rows;
}

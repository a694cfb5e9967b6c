import { type Edit, isObject } from "../../plan/edit/model.ts";
import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import { readPlan } from "../../plan/readPlan.ts";
import { readSource } from "../../plan/source/readSource.ts";
import { type Json, toJson } from "../../plan/source/toJson.ts";
import { readCsv } from "../csv/readCsv.ts";
import { type Entry, entriesOf, entryKey, type JsonObject, type TableOfPlan } from "../tables/entries.ts";
import { contextOf } from "./commaTold.ts";
import { editTogether } from "./editTogether.ts";
import { inTheTable } from "./inTheTable.ts";
import { type RowContext, readRow } from "./readRow.ts";
import { type Row, rowsOf } from "./rowsOf.ts";
import { cellPlace, type Import, type ImportChange, type ImportOptions } from "./types.ts";

/**
 * Merges a table into the text of a plan, by id. Comments, order and spacing of the plan stay; what the table adds goes
 * to the end of its list; nothing is taken out unless asked for. Every problem has its row and column, all at once, and
 * with one error nothing changes. A table as it came out leaves every character as it was.
 *
 * @param text   The plan document.
 * @param table  Comma-separated values with the headings of `tableOf`; columns may be left out or stand elsewhere.
 */
export function importTable(
  text: string,
  table: string,
  which: TableOfPlan,
  options: ImportOptions = {},
): Import {
  const csv = readCsv(table);
  const problems: Problem[] = [...csv.problems];
  const rows = rowsOf(csv, which, problems);
  const tree = readSource(text);
  const document: Json = tree.root === undefined ? {} : toJson(tree.root);
  if (tree.root === undefined || tree.faults.length > 0) problems.push(...readPlan(text).problems);
  const context = contextOf(csv.delimiter === ";", problems);
  const merge = merged(document, rows, which, options, context);
  const refused = (): Import => ({ text, changes: [], unchanged: 0, problems });
  if (problems.some(({ severity }) => severity === "error")) return refused();
  const made = editTogether(text, merge.edits);
  problems.push(...made.problems);
  if (made.problems.length > 0) return refused();
  if (merge.edits.length > 0) problems.push(...inTheTable(made.text, rows, which));
  if (problems.some(({ severity }) => severity === "error")) return refused();
  return { text: made.text, changes: merge.changes, unchanged: merge.unchanged, problems };
}

interface Merge {
  edits: Edit[];
  changes: ImportChange[];
  unchanged: number;
}

const LISTS = { task: "tasks", person: "people", risk: "risks", assumption: "assumptions" } as const;

function merged(
  document: Json,
  rows: Row[],
  which: TableOfPlan,
  options: ImportOptions,
  context: RowContext,
): Merge {
  const entries = new Map(entriesOf(document, which).map((entry) => [entryKey(entry), entry]));
  const result: Merge = { edits: [], changes: [], unchanged: 0 };
  /** Things of the table that the plan does not have, by id: what belongs to them goes inside. */
  const fresh = new Map<string, JsonObject>();
  for (const row of rows) {
    const entry = entries.get(entryKey(row));
    if (entry === undefined) add(row, entries, fresh, result, context);
    else change(row, entry, options, result, context);
  }
  if (options.removeMissing) remove(rows, entries, result);
  return result;
}

function change(
  row: Row,
  entry: Entry,
  { removeMissing }: ImportOptions,
  result: Merge,
  context: RowContext,
): void {
  const of = nameOf(entry);
  let touched = false;
  for (const { column, value } of readRow(row, entry.value, context)) {
    const path = [...entry.path, column.key];
    const from = entry.value[column.key];
    if (value === undefined) {
      if (!removeMissing) {
        context.problems.push({
          code: "emptied",
          severity: "warning",
          path: cellPlace(row.row, column.heading),
          received: "",
          rule: "The cell is empty now; what the plan has there stays.",
          remedy: "Ask for what is missing to be removed, to empty it.",
        });
        continue;
      }
      result.edits.push({ kind: "remove", path });
    } else result.edits.push({ kind: "set", path, value });
    touched = true;
    const to = value === undefined ? {} : { to: value };
    result.changes.push({
      kind: "changed",
      row: row.row,
      of,
      key: column.key,
      ...(from !== undefined && { from }),
      ...to,
    });
  }
  if (!touched) result.unchanged++;
}

function add(
  row: Row,
  entries: ReadonlyMap<string, Entry>,
  fresh: Map<string, JsonObject>,
  result: Merge,
  context: RowContext,
): void {
  const value: JsonObject = {};
  for (const each of readRow(row, undefined, context)) {
    if (each.value !== undefined && !(row.what === "impact" && each.column.key === "id")) {
      value[each.column.key] = each.value;
    }
  }
  result.changes.push({ kind: "added", row: row.row, of: nameOf(row), to: value });
  if (row.what !== "impact" && row.what !== "response") {
    const ordered: JsonObject = { id: row.id, ...value };
    fresh.set(row.id, ordered);
    result.edits.push({ kind: "add", path: [LISTS[row.what]], value: ordered });
    return;
  }
  const list = row.what === "impact" ? "impacts" : "responses";
  const item: JsonObject = row.what === "response" ? { id: row.id, ...value } : value;
  const parent = fresh.get(row.of);
  if (parent !== undefined) {
    const others = parent[list];
    parent[list] = [...(Array.isArray(others) ? others : []), item];
    return;
  }
  const known = entries.get(`risk ${row.of}`) ?? entries.get(`assumption ${row.of}`);
  if (known !== undefined) {
    result.edits.push({ kind: "add", path: [...known.path, list], value: item });
    return;
  }
  context.problems.push({
    code: "unknown-id",
    severity: "error",
    path: cellPlace(row.row, "of"),
    received: oneLine(row.of),
    rule: "There is no such risk or assumption above it, nor in the plan.",
    remedy: "Write the id of one, and put its own row first.",
  });
}

function remove(rows: readonly Row[], entries: ReadonlyMap<string, Entry>, result: Merge): void {
  const kept = new Set(rows.map(entryKey));
  const gone = [...entries].filter(([key]) => !kept.has(key)).map(([, entry]) => entry);
  const parents = new Set(gone.filter(({ of }) => of === "").map(({ id }) => id));
  for (const entry of gone) {
    result.changes.push({ kind: "removed", of: nameOf(entry), from: entry.value });
    // With its risk an impact goes too.
    if (entry.of === "" || !parents.has(entry.of)) result.edits.push({ kind: "remove", path: entry.path });
  }
}

function nameOf({ what, of, id }: Pick<Entry, "what" | "of" | "id">): string {
  return what === "impact" ? `${of} impact ${id}` : id;
}

/** The document of a text, for `tableOf`; nothing where it cannot be read. */
export function documentOf(text: string): Json | undefined {
  const { root, faults } = readSource(text);
  const document = root === undefined || faults.length > 0 ? undefined : toJson(root);
  return document !== undefined && isObject(document) ? document : undefined;
}

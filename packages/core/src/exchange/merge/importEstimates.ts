import { nearest } from "../../plan/definition/nearest.ts";
import { type Edit, isObject } from "../../plan/edit/model.ts";
import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import { readPlan } from "../../plan/readPlan.ts";
import { readSource } from "../../plan/source/readSource.ts";
import { type Json, toJson } from "../../plan/source/toJson.ts";
import { readCsv } from "../csv/readCsv.ts";
import { type CellKind, cellOf, sameValue, valueIn } from "../tables/cell.ts";
import { type Entry, entriesOf, type JsonObject } from "../tables/entries.ts";
import { ESTIMATE_HEADINGS, ESTIMATES_OF, type EstimateOf, PARTS, partsOf } from "../tables/estimates.ts";
import { contextOf } from "./commaTold.ts";
import { editTogether } from "./editTogether.ts";
import { headingsOf } from "./headings.ts";
import { cellPlace, type Import, type ImportChange } from "./types.ts";

const KIND: Record<string, CellKind> = { low: "number", likely: "number", high: "number", outcomes: "list" };
const SAID = [
  ["estimatedBy", "list"],
  ["basis", "text"],
] as const;

/**
 * Merges a table of estimates into the text of a plan, by task and by what it is an estimate of. The form in which the
 * plan writes an estimate stays where it can; nothing is taken out. Problems as with `importTable`.
 */
export function importEstimates(text: string, table: string): Import {
  const csv = readCsv(table);
  const problems: Problem[] = [...csv.problems];
  const needed = ["task", "of", "low", "likely", "high"];
  const columns = headingsOf(csv.cells[0] ?? [], ESTIMATE_HEADINGS, needed, problems);
  const tree = readSource(text);
  if (tree.root === undefined || tree.faults.length > 0) problems.push(...readPlan(text).problems);
  const refused = (): Import => ({ text, changes: [], unchanged: 0, problems });
  const failed = () => problems.some(({ severity }) => severity === "error");
  if (failed() || tree.root === undefined) return refused();

  const tasks = new Map(entriesOf(toJson(tree.root), "tasks").map((entry) => [entry.id, entry]));
  const context = contextOf(csv.delimiter === ";", problems);
  const seen = new Map<string, number>();
  const edits: Edit[] = [];
  const changes: ImportChange[] = [];
  const places = new Map<string, number>();
  let unchanged = 0;
  for (const [index, line] of csv.cells.entries()) {
    if (index === 0 || line.every((cell) => cell.trim() === "")) continue;
    const row = index + 1;
    const cell = (heading: string) => line[columns.get(heading) ?? -1];
    const found = taskAndKey(row, cell, tasks, seen, problems);
    if (found === undefined) continue;
    const { entry, of } = found;
    places.set(`${pathText(entry)}.${of}`, row);
    const read = (heading: string, kind: CellKind): Json | undefined => {
      const value = valueIn(cell(heading) ?? "", kind, context.semicolons);
      const place = cellPlace(row, heading);
      if ("rule" in value) {
        problems.push({
          ...value,
          severity: "error",
          path: place,
          received: oneLine(cell(heading) ?? ""),
        });
        return undefined;
      }
      if (value.comma) context.onComma(place, (cell(heading) ?? "").trim());
      return value.value;
    };
    let touched = false;
    const put = (key: string, value: Json) => {
      const from = entry.value[key];
      edits.push({ kind: "set", path: [...entry.path, key], value });
      changes.push({
        kind: "changed",
        row,
        of: entry.id,
        key,
        ...(from !== undefined && { from }),
        to: value,
      });
      touched = true;
    };
    const before = entry.value[of];
    const parts: JsonObject = {};
    for (const part of PARTS) {
      const kept = before === undefined ? undefined : partsOf(before)[part];
      const value = columns.has(part) ? read(part, KIND[part] ?? "text") : kept;
      if (value !== undefined) parts[part] = value;
    }
    if (Object.keys(parts).length === 0) {
      if (before !== undefined) emptied(row, "likely", problems);
    } else if (before === undefined || !sameValue(parts, partsOf(before), "estimate"))
      put(of, inForm(parts, before));
    for (const [key, kind] of SAID) {
      const given = cell(key);
      if (given === undefined || given.trim() === "" || given === String(cellOf(entry.value[key], kind)))
        continue;
      const value = read(key, kind);
      if (value !== undefined && !sameValue(value, entry.value[key], kind)) put(key, value);
    }
    if (!touched) unchanged++;
  }
  if (failed()) return refused();
  const made = editTogether(text, edits);
  problems.push(...made.problems);
  if (edits.length > 0 && made.problems.length === 0) problems.push(...atRows(made.text, places));
  return failed() ? refused() : { text: made.text, changes, unchanged, problems };
}

/** A list stays a list and an object an object, where what is said fits into it. */
function inForm(parts: JsonObject, before: Json | undefined): Json {
  const { low, likely, high, ...others } = parts;
  const bare = Object.keys(others).length === 0;
  if (isObject(before)) return { ...ordered(before, parts) };
  if (bare && likely !== undefined && low === undefined && high === undefined) return likely;
  if (bare && low !== undefined && likely !== undefined && high !== undefined) return [low, likely, high];
  return parts;
}

/** The keys in the order they had; new ones behind. */
function ordered(before: JsonObject, parts: JsonObject): JsonObject {
  const keys = [...Object.keys(before), ...Object.keys(parts)].filter((key) => parts[key] !== undefined);
  return Object.fromEntries(keys.map((key) => [key, parts[key] ?? null]));
}

function emptied(row: number, heading: string, problems: Problem[]): void {
  const rule = "The row is empty now; the plan's estimate stays.";
  const path = cellPlace(row, heading);
  const remedy = "Take it out in the plan's text.";
  problems.push({ code: "emptied", severity: "warning", path, received: "", rule, remedy });
}

function taskAndKey(
  row: number,
  cell: (heading: string) => string | undefined,
  tasks: ReadonlyMap<string, Entry>,
  seen: Map<string, number>,
  problems: Problem[],
): { entry: Entry; of: EstimateOf } | undefined {
  const [task, written] = [(cell("task") ?? "").trim(), (cell("of") ?? "").trim()];
  const refuse = (heading: string, code: string, received: string, rule: string, remedy: string) => {
    problems.push({
      code,
      severity: "error",
      path: cellPlace(row, heading),
      received: oneLine(received),
      rule,
      remedy,
    });
    return undefined;
  };
  const entry = tasks.get(task);
  const of = ESTIMATES_OF.find((each) => each === written);
  if (entry === undefined) {
    const near = nearest(task, [...tasks.keys()]);
    const remedy = near === undefined ? "New tasks come with the table of tasks." : `Did you mean ${near}?`;
    refuse("task", "unknown-id", task, "The plan has no such task.", remedy);
  }
  if (of === undefined) {
    refuse(
      "of",
      "estimate-of",
      written,
      "A row is an estimate of one of these.",
      `Write ${ESTIMATES_OF.join(", ")}.`,
    );
  }
  if (entry === undefined || of === undefined) return undefined;
  const earlier = seen.get(`${of} ${task}`);
  if (earlier !== undefined) {
    return refuse("task", "repeated-row", task, `Row ${earlier} is about the same.`, "Keep one of them.");
  }
  seen.set(`${of} ${task}`, row);
  return { entry, of };
}

function pathText({ path }: Entry): string {
  return `${path[0]}[${path[1]}]`;
}

/** The problems of the plan afterwards, each at its row where it came from one. */
function atRows(text: string, places: ReadonlyMap<string, number>): Problem[] {
  return readPlan(text).problems.map((problem): Problem => {
    const [place = "", key = ""] = /^tasks\[\d+\]\.([A-Za-z]+)/.exec(problem.path) ?? [];
    const row = places.get(place);
    if (row === undefined) return problem;
    const part = PARTS.find((each) => problem.path === `${place}.${each}`);
    const { line: _line, column: _column, ...rest } = problem;
    return { ...rest, path: cellPlace(row, part ?? key) };
  });
}

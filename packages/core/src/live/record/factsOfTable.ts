import { readCsv } from "../../exchange/csv/readCsv.ts";
import { nearest } from "../../plan/definition/nearest.ts";
import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import type { FactKind, ProgressFact } from "./types.ts";

/** Facts of a file, and what is wrong with it. */
export interface FactsRead {
  facts: ProgressFact[];
  problems: Problem[];
}

/** Keys a row of progress may have; those without facts are let pass, since people want to see names. */
const READ = [
  ...["id", "started", "finished", "remaining", "spent"],
  ...["status", "tripped", "cost", "days"],
];
const PASSED = ["name", "phase", "statement", "note", "kind"];
const MEANT: Record<string, string> = { task: "id", risk: "id", assumption: "id" };

/** One row by key; a value as text, and where it stands. */
interface Row {
  where: string;
  cells: Map<string, string>;
}

/**
 * Progress from a table of comma-separated values (RFC 4180): a row a task, risk or assumption, headings `id` and any of
 * `started`, `finished`, `remaining` (6, or 5/7/14), `spent`, `status` (occurred, closed), `tripped`, and of what occurred `cost` and `days`. Empty cells say
 * nothing.
 */
export function factsOfCsv(text: string, name: string): FactsRead {
  const { cells, decimalComma, problems } = readCsv(text);
  const placed = problems.map((problem) => ({ ...problem, path: `${name} ${problem.path}`.trim() }));
  const [headings = [], ...rows] = cells;
  const keys = headings.map((heading) => keyOf(heading.trim()));
  placed.push(...headingProblems(headings, keys, name));
  if (placed.some(({ severity }) => severity === "error")) return { facts: [], problems: placed };
  const read = rows.map((row, index): Row => {
    const found = new Map<string, string>();
    row.forEach((cell, column) => {
      const key = keys[column];
      if (key === undefined || cell.trim() === "") return;
      if (decimalComma && key === "remaining" && /^\s*\d+,\d+\s*$/.test(cell)) {
        const [low, high] = cell.trim().split(",");
        placed.push({
          code: "bad-value",
          severity: "error",
          path: `${name} row ${index + 2} remaining`,
          received: oneLine(cell),
          rule: "In a table with decimal commas this may be one number or two.",
          remedy: `Write ${low}.${high}, or ${low}/${high}.`,
        });
      }
      found.set(key, decimalComma ? withPoint(key, cell) : cell);
    });
    return { where: `${name} row ${index + 2}`, cells: found };
  });
  const { facts, problems: found } = factsOfRows(read);
  return { facts, problems: [...placed, ...found] };
}

/** Progress from JSON: a list of objects with the same keys; `remaining` may be a list of numbers. */
export function factsOfJson(text: string, name: string): FactsRead {
  const refuse = (rule: string, remedy: string): FactsRead => ({
    facts: [],
    problems: [{ code: "not-progress", severity: "error", path: name, received: "", rule, remedy }],
  });
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return refuse("It is no JSON.", "Save it as JSON, or name a table `.csv`.");
  }
  if (!Array.isArray(data))
    return refuse("Progress is a list of objects.", 'Write [{ "id": "dig", "started": "2027-03-01" }].');
  const problems: Problem[] = [];
  const rows: Row[] = [];
  data.forEach((item: unknown, index) => {
    const where = `${name}[${index}]`;
    const report = (rule: string, remedy: string) =>
      problems.push({ code: "not-progress", severity: "error", path: where, received: "", rule, remedy });
    if (typeof item !== "object" || item === null || Array.isArray(item)) {
      report("An object belongs here.", 'Write { "id": "dig", "started": "2027-03-01" }.');
      return;
    }
    const cells = new Map<string, string>();
    for (const [heading, value] of Object.entries(item)) {
      const key = keyOf(heading);
      problems.push(...headingProblems([heading], [key], where));
      if (key === undefined || value === null || value === "") continue;
      const text = textOf(value);
      if (text === undefined)
        report(`\`${heading}\` is a text, a number or a list of numbers.`, "Write it so.");
      else cells.set(key, text);
    }
    rows.push({ where, cells });
  });
  const { facts, problems: found } = factsOfRows(rows);
  return { facts, problems: [...problems, ...found] };
}

function keyOf(heading: string): string | undefined {
  const plain = heading.toLowerCase();
  return READ.find((key) => key === plain) ?? MEANT[plain];
}

function headingProblems(
  headings: readonly string[],
  keys: readonly (string | undefined)[],
  where: string,
): Problem[] {
  const problems: Problem[] = [];
  const report = (heading: string, severity: Problem["severity"], rule: string, remedy: string) =>
    problems.push({ code: "heading", severity, path: where, received: oneLine(heading), rule, remedy });
  headings.forEach((heading, column) => {
    const key = keys[column];
    if (key !== undefined) {
      if (keys.indexOf(key) < column)
        report(heading, "error", `There are two columns of ${key}.`, "Keep one of them.");
      return;
    }
    const plain = heading.trim().toLowerCase();
    if (plain === "" || PASSED.includes(plain)) return;
    const meant = nearest(plain, READ);
    if (meant === undefined) report(heading, "warning", "This is not read.", `Read are: ${READ.join(", ")}.`);
    else report(heading, "error", "This is no heading of progress.", `Did you mean ${meant}?`);
  });
  return problems;
}

function factsOfRows(rows: readonly Row[]): FactsRead {
  const facts: ProgressFact[] = [];
  const problems: Problem[] = [];
  for (const { where, cells } of rows) {
    const id = cells.get("id")?.trim();
    const rest = [...cells].filter(([key]) => key !== "id");
    if (id === undefined) {
      if (rest.length > 0) {
        const remedy = "Give its `id`, as in the plan.";
        problems.push({
          code: "no-id",
          severity: "error",
          path: where,
          received: "",
          rule: "Nobody knows of what this is.",
          remedy,
        });
      }
      continue;
    }
    for (const [key, value] of rest) {
      const said = `${where} ${id} ${key}`;
      if (key !== "status") {
        facts.push({ what: key as FactKind, id, value, said }); // every other key is a fact of that name
        continue;
      }
      const status = value.trim().toLowerCase();
      if (status === "occurred" || status === "closed") facts.push({ what: status, id, said });
      else if (status !== "open") {
        const rule = "A status is occurred or closed; open ones need not be told.";
        problems.push({
          code: "bad-value",
          severity: "error",
          path: said,
          received: oneLine(value),
          rule,
          remedy: "Write one of them.",
        });
      }
    }
  }
  return { facts, problems };
}

/** `4200,5` in a table whose decimal sign is the comma. */
function withPoint(key: string, cell: string): string {
  return ["spent", "cost", "days"].includes(key) && /^\s*-?\d+,\d+\s*$/.test(cell)
    ? cell.replace(",", ".")
    : cell;
}

function textOf(value: unknown): string | undefined {
  if (typeof value === "string") return value;
  if (typeof value === "number") return String(value);
  if (Array.isArray(value) && value.every((each) => typeof each === "number")) return value.join(",");
  return undefined;
}

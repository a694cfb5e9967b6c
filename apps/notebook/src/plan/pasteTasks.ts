import type { Plan, Task } from "@leeway/core";
import type { Pending } from "../store/state.ts";
import type { Edit } from "./edit.ts";
import { type EstimateCells, estimateCells, readEstimateCells } from "./estimateEntry.ts";
import { readLinksCell } from "./linksEntry.ts";
import { idsIn, newId } from "./newId.ts";
import { statedAt } from "./stated.ts";
import { taskUnit } from "./unitWords.ts";

const keys = ["name", "low", "likely", "high", "after"] as const;
type Key = (typeof keys)[number];

/** Headings that say which column is which, as people write them. */
const headings: Record<Key, RegExp> = {
  name: /^(task|tasks|name|activity|what|work|work package|step)$/i,
  low: /^(low|min|minimum|best|best case|optimistic|good case|p10)\b/i,
  likely: /^(likely|most likely|mode|duration|days|estimate|working days)\b/i,
  high: /^(high|max|maximum|worst|worst case|pessimistic|bad case|p90)\b/i,
  after: /^(after|waits for|depends on|dependencies|predecessors?)$/i,
};

export interface Pasted {
  edits: Edit[];
  /** Cells that could not be read, at their fields as they are once the edits are made. */
  waits: Map<string, Pending>;
  told: string;
}

interface Start {
  /** Row of the first task to fill; beyond the last: every row is a new task. */
  row: number;
  column: number;
  /** Place of the first new task, and its phase. */
  at: number;
  phase: string | undefined;
}

/** A block of cells put into the work from one cell on: what it changes, what waits, and that in words. */
export function pasteTasks(
  block: readonly (readonly string[])[],
  plan: Plan,
  stated: unknown,
  start: Start,
): Pasted {
  const { columns, unread, header, alone } = columnsOf(block, start.column);
  const rows = header ? block.slice(1) : block;
  const cellsOf = (row: readonly string[]): Record<Key, string> => {
    const found: Record<Key, string> = { name: "", low: "", likely: "", high: "", after: "" };
    for (const [key, at] of columns) found[key] = row[at] ?? "";
    return found;
  };
  const ids = new Map<string, string>(plan.tasks.map((task) => [task.name.toLowerCase(), task.id]));
  const known = new Set(plan.tasks.map((task) => task.id));
  const taken = idsIn(stated);
  const filled = plan.tasks.slice(start.row, start.row + rows.length);
  const fresh = rows.slice(filled.length).map(cellsOf);
  const made = fresh.flatMap((cells) => {
    if (cells.name === "") return [];
    const id = newId(cells.name, taken, "task");
    taken.add(id);
    known.add(id);
    if (!ids.has(cells.name.toLowerCase())) ids.set(cells.name.toLowerCase(), id);
    return [{ id, cells }];
  });

  const edits: Edit[] = [];
  const waits = new Map<string, Pending>();
  const counts = { filled: 0, added: made.length, single: 0, nameless: fresh.length - made.length };
  const readAfter = (text: string, path: string, before: unknown, self: string) =>
    readLinksCell(
      text
        .split(";")
        .flatMap((part) => (ids.has(part.trim().toLowerCase()) ? [part] : part.split(",")))
        .map((part) => ids.get(part.trim().toLowerCase()) ?? part.trim())
        .join(", "),
      path,
      before,
      known,
      self,
    );

  for (const [i, task] of filled.entries()) {
    const at = start.row + i;
    const cells = cellsOf(rows[i] ?? []);
    const path = `tasks[${at}]`;
    const before = edits.length + waits.size;
    if (cells.name !== "" && cells.name !== task.name)
      edits.push({ path: `${path}.name`, value: cells.name });
    fillEstimate(task, path, cells, stated, edits, waits);
    if (cells.after !== "") {
      const links = readAfter(cells.after, `${path}.after`, statedAt(stated, `${path}.after`), task.id);
      if ("words" in links) waits.set(`${path}.after`, { cells: { value: cells.after }, words: links.words });
      else edits.push(...links.edits);
    }
    if (edits.length + waits.size > before) counts.filled++;
  }

  for (const [i, { id, cells }] of made.entries()) {
    const at = start.at + i;
    const path = `tasks[${at}]`;
    const own = { low: cells.low, likely: cells.likely, high: cells.high };
    const none = Object.values(own).every((cell) => cell === "");
    const read = none
      ? undefined
      : readEstimateCells(own, { kind: "fixed", value: 0, unit: "days" }, "", undefined, "working days");
    if (read !== undefined && "words" in read)
      waits.set(`${path}.duration`, { cells: own, words: read.words });
    const stands = read !== undefined && "edits" in read;
    if (!stands) counts.single++;
    const links = cells.after === "" ? undefined : readAfter(cells.after, "", undefined, id);
    if (links !== undefined && "words" in links)
      waits.set(`${path}.after`, { cells: { value: cells.after }, words: links.words });
    const after = links !== undefined && "edits" in links ? links.edits[0]?.value : undefined;
    edits.push({
      path: "tasks",
      add: at,
      value: {
        id,
        name: cells.name,
        ...(start.phase === undefined ? {} : { phase: start.phase }),
        duration: stands ? (read.edits[0]?.value ?? 0) : 1,
        ...(Array.isArray(after) ? { after: after.length === 1 ? after[0] : after } : {}),
      },
    });
  }
  return { edits, waits, told: toldOf(counts, waits.size, unread, alone) };
}

function fillEstimate(
  task: Task,
  path: string,
  cells: EstimateCells,
  stated: unknown,
  edits: Edit[],
  waits: Map<string, Pending>,
): void {
  const given = { low: cells.low, likely: cells.likely, high: cells.high };
  if (Object.values(given).every((cell) => cell === "")) return;
  const estimate = task.effort ?? task.duration;
  const field = `${path}.${task.effort === undefined ? "duration" : "effort"}`;
  const committed = estimate === undefined ? undefined : estimateCells(estimate);
  const refuse = (words: string, shown: EstimateCells = given): void => {
    waits.set(committed === undefined ? `${path}.name` : field, {
      cells: committed === undefined ? { value: task.name } : { ...shown },
      words,
    });
  };
  if (estimate === undefined || committed === undefined) {
    const why =
      estimate === undefined ? "a milestone takes no time" : "this duration is given by its outcomes";
    refuse(`“${Object.values(given).find((cell) => cell !== "")}” finds no place here: ${why}.`);
    return;
  }
  if (task.finished !== undefined) {
    refuse("This task is finished: its duration is a fact.");
    return;
  }
  const merged = { ...committed };
  for (const key of ["low", "likely", "high"] as const) if (given[key] !== "") merged[key] = given[key];
  const read = readEstimateCells(merged, estimate, field, statedAt(stated, field), taskUnit(task));
  if ("words" in read) refuse(read.words, merged);
  else edits.push(...read.edits);
}

function columnsOf(block: readonly (readonly string[])[], from: number) {
  const [first = []] = block;
  const isNumber = (cell: string | undefined): boolean => /^[-+−]?[\d.,\s]+$/.test(cell ?? "");
  const named = first.map((cell) => keys.find((key) => headings[key].test(cell.trim())));
  const header =
    named.some((key) => key !== undefined) && !first.some((cell) => cell !== "" && isNumber(cell));
  const columns = new Map<Key, number>();
  const unread: string[] = [];
  // A name and one number: it is the likely one.
  const alone = !header && from === 0 && first.length === 2 && block.some((row) => isNumber(row[1]));
  for (const [at, cell] of first.entries()) {
    const key = header ? named[at] : alone && at === 1 ? "likely" : keys[from + at];
    if (key !== undefined && !columns.has(key)) columns.set(key, at);
    else if (header ? cell !== "" : block.some((row) => (row[at] ?? "") !== ""))
      unread.push(header ? `“${cell}”` : `column ${at + 1}`);
  }
  return { columns, unread, header, alone };
}

function toldOf(
  { filled, added, single, nameless }: { filled: number; added: number; single: number; nameless: number },
  waiting: number,
  unread: readonly string[],
  alone: boolean,
): string {
  const tasks = (n: number): string => `${n} ${n === 1 ? "task" : "tasks"}`;
  const parts = [`Pasted: ${tasks(filled)} filled, ${added} added.`];
  if (single > 0)
    parts.push(
      `${tasks(single)} came without a duration that can be read and ${single === 1 ? "stands" : "stand"} at 1 working day.`,
    );
  if (waiting > 0)
    parts.push(`${waiting} ${waiting === 1 ? "entry waits" : "entries wait"} to be put right.`);
  if (nameless > 0)
    parts.push(
      `${nameless} ${nameless === 1 ? "row" : "rows"} without a name ${nameless === 1 ? "was" : "were"} left out.`,
    );
  if (alone) parts.push("The one number of each row was taken as the likely one.");
  if (unread.length > 0) parts.push(`Not read: ${unread.join(", ")}.`);
  return parts.join(" ");
}

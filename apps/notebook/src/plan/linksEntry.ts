import type { Link } from "@leeway/core";
import type { Edit } from "./edit.ts";
import { findTasks } from "./findTasks.ts";

interface Named {
  id: string;
  name: string;
}

/** The ids a task waits for, as its cell shows them. */
export function linksCell(after: readonly Link[]): string {
  return after.map((link) => link.task).join(", ");
}

/**
 * The edit that makes a task wait for those in the cell: ids, or names, or parts of names that only one task has. A link
 * that says more than an id (its kind, a lag) is kept as it stands while its id stays.
 *
 * @param stated  What stands at `path` now: an id, a link, or a list of them.
 * @param known  Every task id of the plan.
 * @param self  The task itself.
 * @param tasks  The tasks by name; left out: only ids are read.
 */
export function readLinksCell(
  cell: string,
  path: string,
  stated: unknown,
  known: ReadonlySet<string>,
  self: string,
  tasks: readonly Named[] = [],
): { edits: Edit[] } | { words: string } {
  const found = idsIn(cell, known, tasks);
  if ("words" in found) return found;
  const { ids } = found;
  for (const id of ids) {
    if (id === self) return { words: `“${id}” is this task itself. A task cannot wait for itself.` };
    if (!known.has(id)) {
      const like = closest(id, known);
      return { words: `No task has the id “${id}”.${like === undefined ? "" : ` Did you mean “${like}”?`}` };
    }
  }
  const before = stated === undefined ? [] : Array.isArray(stated) ? stated : [stated];
  if (before.map(linkedTask).join() === ids.join()) return { edits: [] };
  const value: unknown[] = [];
  for (const id of new Set(ids)) {
    const kept = before.filter((link) => linkedTask(link) === id);
    value.push(...(kept.length > 0 ? kept : [id]));
  }
  return { edits: [{ path, value: value.length === 0 ? undefined : value }] };
}

/** Ids as they stand; where some are none, parts between commas or semicolons, each an id, several, or a name. */
function idsIn(
  cell: string,
  known: ReadonlySet<string>,
  tasks: readonly Named[],
): { ids: string[] } | { words: string } {
  const plain = cell.split(/[\s,;]+/).filter((part) => part !== "");
  if (plain.every((id) => known.has(id))) return { ids: plain };
  const ids: string[] = [];
  const parts = cell.split(cell.includes(";") ? ";" : ",").map((part) => part.trim());
  for (const part of parts) {
    if (part === "") continue;
    const own = part.split(/[\s,]+/);
    const named = findTasks(part, tasks);
    if (own.every((id) => known.has(id))) ids.push(...own);
    else if ("ids" in named) ids.push(...named.ids);
    // A word that no name has is taken for an id: what is like it is told.
    else if (own.length > 1 || tasks.some(({ name }) => name.toLowerCase().includes(part.toLowerCase())))
      return named;
    else ids.push(part);
  }
  return { ids };
}

function linkedTask(link: unknown): unknown {
  return typeof link === "object" && link !== null && "task" in link ? link.task : link;
}

/** The known id that starts the same way, the shortest first. */
function closest(id: string, known: ReadonlySet<string>): string | undefined {
  const start = id.toLowerCase().slice(0, 2);
  const alike = [...known].filter((other) => other.startsWith(start));
  return alike.sort((a, b) => a.length - b.length || (a < b ? -1 : 1))[0];
}

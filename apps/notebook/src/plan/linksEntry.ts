import type { Link } from "@leeway/core";
import type { Edit } from "./edit.ts";
import { findTasks } from "./findTasks.ts";
import { inOneLine } from "./shownName.ts";

interface Named {
  id: string;
  name: string;
}

/** What a task waits for, as its cell shows it; `shown`: how each task is written there. */
export function linksCell(after: readonly Link[], shown: ReadonlyMap<string, string>): string {
  return after.map(({ task }) => shown.get(task) ?? task).join("; ");
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
    if (id === self) {
      const name = tasks.find((task) => task.id === id)?.name ?? id;
      return { words: `“${name}” is this task itself. A task cannot wait for itself.` };
    }
    if (!known.has(id)) {
      const like = closest(id, new Set([...known].filter((other) => other !== self)));
      const name = tasks.find((task) => task.id === like)?.name ?? like;
      return {
        words: `No task has the name or id “${id}”.${name === undefined ? "" : ` Did you mean “${name}”?`}`,
      };
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

/**
 * Ids, when all of it are ids. Else parts between semicolons: each a name as it stands, ids, or the part of a name; and where
 * it is none of them, the same between commas.
 */
function idsIn(
  cell: string,
  known: ReadonlySet<string>,
  tasks: readonly Named[],
): { ids: string[] } | { words: string } {
  const named = (part: string): string | undefined => {
    const small = inOneLine(part).toLowerCase();
    const own = tasks.filter(({ name }) => inOneLine(name).toLowerCase() === small);
    return own.length === 1 && (own[0]?.id === small || !known.has(small)) ? own[0]?.id : undefined;
  };
  const inPart = (part: string): { ids: string[] } | { words: string } => {
    const one = named(part);
    if (one !== undefined) return { ids: [one] };
    const own = part.split(/[\s,]+/).filter((word) => word !== "");
    if (own.every((id) => known.has(id))) return { ids: own };
    const found = findTasks(part, tasks);
    if ("ids" in found) return found;
    if (part.includes(",")) return inParts(part.split(","));
    // A word that no name has is taken for an id: what is like it is told.
    const some = own.length > 1 || tasks.some(({ name }) => name.toLowerCase().includes(part.toLowerCase()));
    return some ? found : { ids: [part] };
  };
  const inParts = (parts: readonly string[]): { ids: string[] } | { words: string } => {
    const ids: string[] = [];
    for (const part of parts.map((text) => text.trim())) {
      const found = part === "" ? { ids: [] } : inPart(part);
      if ("words" in found) return found;
      ids.push(...found.ids);
    }
    return { ids };
  };
  return inParts(cell.split(";"));
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

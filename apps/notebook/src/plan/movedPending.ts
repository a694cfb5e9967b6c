import type { Pending } from "../store/state.ts";
import type { Edit } from "./edit.ts";

/** Entries that wait, by the path of their field once rows have come, gone or moved; what was in a row that went is gone. */
export function movedPending(
  pending: ReadonlyMap<string, Pending>,
  edits: readonly Edit[],
): ReadonlyMap<string, Pending> {
  let now = pending;
  for (const edit of edits) {
    if (now.size === 0) return now;
    const place = placeAfter(edit);
    if (place === undefined) {
      now = withoutOrphans(now, edit);
      continue;
    }
    const next = new Map<string, Pending>();
    for (const [field, entry] of now) {
      const inside = field.startsWith(`${place.list}[`)
        ? /^\[(\d+)\](.*)$/.exec(field.slice(place.list.length))
        : null;
      const at = inside === null ? undefined : place.of(Number(inside[1]));
      if (inside === null) next.set(field, entry);
      else if (at !== undefined) next.set(`${place.list}[${at}]${inside[2]}`, entry);
    }
    now = next;
  }
  return now;
}

/** Something else stands in place of a list, or nothing: entries in rows that it no longer has are nowhere to be seen. */
function withoutOrphans(
  pending: ReadonlyMap<string, Pending>,
  { path, value, add }: Edit,
): ReadonlyMap<string, Pending> {
  if (add !== undefined) return pending;
  const length = Array.isArray(value) ? value.length : value === undefined ? 0 : Number.POSITIVE_INFINITY;
  const kept = [...pending].filter(([field]) => {
    if (!field.startsWith(`${path}[`)) return true;
    return Number(/^\[(\d+)\]/.exec(field.slice(path.length))?.[1]) < length;
  });
  return kept.length === pending.size ? pending : new Map(kept);
}

function placeAfter({
  path,
  value,
  add,
  swap,
  to = (swap ?? 0) + 1,
}: Edit): { list: string; of: (at: number) => number | undefined } | undefined {
  if (swap !== undefined)
    return {
      list: path,
      of: (at) => (at === swap ? to : at > swap && at <= to ? at - 1 : at < swap && at >= to ? at + 1 : at),
    };
  if (typeof add === "number") return { list: path, of: (at) => (at >= add ? at + 1 : at) };
  const item = /^(.*)\[(\d+)\]$/.exec(path);
  if (value !== undefined || add !== undefined || item === null) return undefined;
  const gone = Number(item[2]);
  return { list: item[1] ?? "", of: (at) => (at === gone ? undefined : at > gone ? at - 1 : at) };
}

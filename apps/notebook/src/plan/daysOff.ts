import { dayOf, isoOf } from "./days.ts";
import type { Edit } from "./edit.ts";
import { place } from "./removeTask.ts";
import { statedAt } from "./stated.ts";

/** What one entry of a list of days off covers: a date, or `{ from, to, ... }`; undefined: it is none. */
export function spanOf(entry: unknown): { from: number; to: number } | undefined {
  const span = typeof entry === "string" ? { from: entry, to: entry } : mapOf(entry);
  const { from, to = from } = span;
  if (typeof from !== "string" || typeof to !== "string") return undefined;
  return { from: dayOf(from), to: dayOf(to) };
}

/**
 * A list of days off after these days, both included, became days off, or working days again. What is written beside
 * dates, a name or a reason, stays with what remains of them; entries that are not touched are the same objects.
 */
export function withDays(entries: readonly unknown[], from: number, to: number, off: boolean): unknown[] {
  return off ? added(entries, from, to) : taken(entries, from, to);
}

/** The edits that make the list at `path` another: only what differs is touched, so that remarks beside the rest stay. */
export function listEdits(stated: unknown, path: string, next: readonly unknown[]): Edit[] {
  const before = statedAt(stated, path);
  if (next.length === 0) return before === undefined ? [] : [{ path, value: undefined }];
  if (!Array.isArray(before)) return [{ path, value: [...next] }];
  let head = 0;
  while (head < before.length && head < next.length && before[head] === next[head]) head++;
  let tail = 0;
  while (
    tail < before.length - head &&
    tail < next.length - head &&
    before[before.length - 1 - tail] === next[next.length - 1 - tail]
  )
    tail++;
  // What is new comes in first: the list is never empty in between.
  const comes = next
    .slice(head, next.length - tail)
    .map((value, k): Edit => ({ path, value, add: head + k }));
  const goes: Edit[] = [];
  for (let at = before.length - tail - 1; at >= head; at--)
    goes.push({ path: `${path}[${at + comes.length}]`, value: undefined });
  return [...comes, ...goes];
}

/** The edits that write a reason beside an entry; an empty one takes it away. */
export function reasonEdits(
  stated: unknown,
  path: string,
  at: number,
  key: "name" | "why",
  text: string,
): Edit[] {
  const one = place(stated, path, at);
  const entry = statedAt(stated, one);
  const value = text.trim() === "" ? undefined : text.trim();
  if (typeof entry === "string")
    return value === undefined ? [] : [{ path: one, value: { from: entry, [key]: value } }];
  return [{ path: `${one}.${key}`, value }];
}

/** Days that no entry covers yet come in; next to dates without anything beside them they make these longer. */
function added(entries: readonly unknown[], from: number, to: number): unknown[] {
  const next = [...entries];
  for (let day = from; day <= to; ) {
    if (covers(entries, day)) {
      day++;
      continue;
    }
    let last = day;
    while (last < to && !covers(entries, last + 1)) last++;
    join(next, day, last);
    day = last + 1;
  }
  return next;
}

function join(entries: unknown[], from: number, to: number): void {
  const before = entries.findIndex((entry) => plain(entry) && spanOf(entry)?.to === from - 1);
  const after = entries.findIndex((entry) => plain(entry) && spanOf(entry)?.from === to + 1);
  const first = spanOf(entries[before])?.from ?? from;
  const last = spanOf(entries[after])?.to ?? to;
  const value = first === last ? isoOf(first) : { from: isoOf(first), to: isoOf(last) };
  if (before >= 0) {
    entries[before] = value;
    if (after >= 0) entries.splice(after, 1);
  } else if (after >= 0) entries[after] = value;
  else {
    const later = entries.findIndex((entry) => (spanOf(entry)?.from ?? -Infinity) > to);
    entries.splice(later < 0 ? entries.length : later, 0, value);
  }
}

function taken(entries: readonly unknown[], from: number, to: number): unknown[] {
  return entries.flatMap((entry) => {
    const span = spanOf(entry);
    if (span === undefined || span.to < from || span.from > to) return [entry];
    const rest = [
      { from: span.from, to: Math.min(span.to, from - 1) },
      { from: Math.max(span.from, to + 1), to: span.to },
    ].filter((part) => part.from <= part.to);
    return rest.map((part) => {
      const dates =
        part.from === part.to ? { from: isoOf(part.from) } : { from: isoOf(part.from), to: isoOf(part.to) };
      if (plain(entry)) return part.from === part.to ? isoOf(part.from) : dates;
      const { from: _from, to: _to, ...beside } = mapOf(entry);
      return { ...dates, ...beside };
    });
  });
}

function covers(entries: readonly unknown[], day: number): boolean {
  return entries.some((entry) => {
    const span = spanOf(entry);
    return span !== undefined && full(entry) && span.from <= day && day <= span.to;
  });
}

/** Only a part of somebody is away: that does not make the day one off. */
function full(entry: unknown): boolean {
  const { share = 1 } = mapOf(entry);
  return share === 1;
}

/** Dates with nothing written beside them. */
function plain(entry: unknown): boolean {
  return (
    typeof entry === "string" || Object.keys(mapOf(entry)).every((key) => key === "from" || key === "to")
  );
}

function mapOf(entry: unknown): Record<string, unknown> {
  return typeof entry === "object" && entry !== null ? { ...entry } : {};
}

import { tolerance } from "../../calendar/tolerance.ts";
import { nextWork } from "../../calendar/workCalendar.ts";
import type { PartAway, SharedPerson, Sharer } from "../peopleLists.ts";

/**
 * Marks, where the task moves, whose end frees the person it waits for: who ends as it starts and, were it still going,
 * would leave too little. Answers whether one that comes later in the order was newly marked.
 */
export function markSharers(
  person: SharedPerson,
  moving: Uint8Array,
  start: Float64Array,
  duration: Float64Array,
  n: number,
): boolean {
  const { share, capacity, sharers, partial } = person;
  let later = false;
  for (const other of sharers) {
    if (!other.frees) continue;
    const { moves, pushed, finish, calendar } = other;
    for (let k = 0; k < n; k++) {
      if (moving[k] === 0 || moves[k] === 1) continue;
      if ((duration[k] as number) <= tolerance || (other.duration[k] as number) <= tolerance) continue;
      const s = start[k] as number;
      const f = finish[k] as number;
      if (f > s + tolerance || nextWork(calendar, f) < s - tolerance) continue;
      const load = loadBeside(sharers, other, s, k) + absentAt(partial, s);
      if (load + other.share + share <= capacity + tolerance) continue;
      moves[k] = 1;
      pushed[k] = 1;
      if (!other.before) later = true;
    }
  }
  return later;
}

/** What the person holds at moment s besides the task that starts and the one that ends: work already going, ties by order. */
function loadBeside(sharers: readonly Sharer[], except: Sharer, s: number, k: number): number {
  let load = 0;
  for (const other of sharers) {
    if (other === except) continue;
    const from = other.start[k] as number;
    const to = other.finish[k] as number;
    if (to <= s + tolerance || from > s + tolerance) continue;
    if (from < s - tolerance || other.before) load += other.share;
  }
  return load;
}

/** The part of a person's capacity that is away at moment s. */
function absentAt(spans: readonly PartAway[], s: number): number {
  for (const span of spans) if (span.from <= s + tolerance && span.to > s + tolerance) return span.gone;
  return 0;
}

import { tolerance } from "../../calendar/tolerance.ts";
import { type WorkCalendar, workAt } from "../../calendar/workCalendar.ts";
import type { Weeks } from "./weeks.ts";

/** Moments of one task, and the share it asks for. */
export interface Held {
  calendar: WorkCalendar;
  share: number;
  start: Float64Array;
  finish: Float64Array;
}

/**
 * Adds a task's person-days to a table of weeks by iterations: `table[(w - from) * n + k]` for the weeks from `from` up
 * to `to` (not included). A week gets the share times what the task's calendar works in it between start and finish,
 * so the weeks of an iteration add up to share times duration. Cost: a few steps a week the task lies in.
 */
export function addWork(
  table: Float64Array,
  n: number,
  { calendar, share, start, finish }: Held,
  weeks: Weeks,
  from: number,
  to: number,
): void {
  const ends = Float64Array.from({ length: to - from }, (_, w) =>
    workAt(calendar, Math.max(0, weeks.begins(from + w + 1))),
  );
  const before = workAt(calendar, Math.max(0, weeks.begins(from)));
  for (let k = 0; k < n; k++) {
    const s = start[k] as number;
    const f = finish[k] as number;
    if (f - s <= tolerance) continue;
    const first = Math.max(from, weeks.of(s));
    const last = Math.min(to - 1, weeks.of(f));
    const whole = workAt(calendar, f);
    let done = Math.max(workAt(calendar, s), before);
    for (let w = first; w <= last; w++) {
      const until = Math.min(whole, ends[w - from] as number);
      if (until <= done) continue;
      const at = (w - from) * n + k;
      table[at] = (table[at] as number) + share * (until - done);
      done = until;
    }
  }
}

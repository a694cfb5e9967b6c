import { tolerance } from "../../calendar/tolerance.ts";
import type { WorkCalendar } from "../../calendar/workCalendar.ts";
import type { Assignment } from "./assignments.ts";
import { works } from "./loadAsWritten.ts";
import type { TaskRows } from "./peopleRun.ts";

/**
 * The day from which on a person is needed most for a number of days present: where the share held by tasks that
 * cannot go on without them, averaged over the futures and summed over those days, is greatest; the first of equals. A
 * person who only goes along is taken where most goes along; one who is not asked for, at `earliest`.
 *
 * @param own  The person's calendar, full absences left out.
 *
 * Cost: two steps a task and future, and one a day.
 */
export function whenMostNeeded(
  assignments: readonly Assignment[],
  rows: TaskRows,
  own: WorkCalendar,
  earliest: number,
  days: number,
): number {
  const open = assignments.filter(({ task }) => task.progress?.finished !== true);
  const firm = open.filter(({ along }) => !along);
  const held = heldByDay(firm.length > 0 ? firm : open, rows);
  const present: number[] = [];
  for (let day = earliest; day < held.length + 7 * days && day + 1 < own.cum.length; day++) {
    if (works(own, day)) present.push(day);
  }
  let best = earliest;
  let most = 0;
  let sum = 0;
  present.forEach((day, i) => {
    sum += held[day] ?? 0;
    const first = i - days + 1;
    if (first > 0) sum -= held[present[first - 1] as number] ?? 0;
    if (first < 0 || sum <= most + tolerance * Math.max(1, most)) return;
    most = sum;
    best = present[first] as number;
  });
  return best;
}

/** Sum over the futures of the share held on each day since the start. */
function heldByDay(assignments: readonly Assignment[], rows: TaskRows): Float64Array {
  let last = 0;
  for (const { at } of assignments) for (const finish of rows.finish[at] ?? []) last = Math.max(last, finish);
  const change = new Float64Array(Math.ceil(last) + 2);
  for (const { at, share } of assignments) {
    const starts = rows.start[at] as Float64Array;
    const finishes = rows.finish[at] as Float64Array;
    for (let k = 0; k < starts.length; k++) {
      const from = Math.floor((starts[k] as number) + tolerance);
      const to = Math.ceil((finishes[k] as number) - tolerance);
      if (to <= from) continue;
      change[from] = (change[from] as number) + share;
      change[to] = (change[to] as number) - share;
    }
  }
  let held = 0;
  return change.map((step) => {
    held += step;
    return held;
  });
}

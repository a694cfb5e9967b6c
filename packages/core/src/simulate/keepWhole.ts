import { tolerance } from "../calendar/tolerance.ts";
import {
  finishMoment,
  lastDay,
  nextWork,
  startMoment,
  type WorkCalendar,
  workAt,
} from "../calendar/workCalendar.ts";

/**
 * Moves a task on until it spans no non-working day of `whole`. Each step jumps past the last such day in the
 * span, so it ends at the latest when the moment passes the calendar's last day.
 */
export function keepWhole(
  calendar: WorkCalendar,
  whole: WorkCalendar,
  start: Float64Array,
  finish: Float64Array,
  k: number,
  d: number,
): boolean {
  let moved = false;
  if (whole.everyDay) return moved;
  for (;;) {
    const first = Math.floor((start[k] as number) + tolerance);
    let last = Math.ceil((finish[k] as number) - tolerance) - 1;
    if (last > lastDay) return moved;
    const { cum } = whole;
    if ((cum[last + 1] as number) - (cum[first] as number) === last + 1 - first) return moved;
    // The last day of the span that does not work: walk back over the working days at its end.
    while ((cum[last + 1] as number) > (cum[last] as number)) last -= 1;
    const w = workAt(calendar, nextWork(calendar, last + 1));
    start[k] = startMoment(calendar, w);
    finish[k] = finishMoment(calendar, w + d);
    moved = true;
  }
}

import { addWork, type WorkCalendar } from "../../calendar/workCalendar.ts";

/** out = max(out, the moment `lag` working days from `from`); lag > 1e-9. */
export function raiseAfter(
  calendar: WorkCalendar,
  out: Float64Array,
  from: Float64Array,
  lag: number,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    const bound = addWork(calendar, from[k] as number, lag);
    if (bound > (out[k] as number)) out[k] = bound;
  }
}

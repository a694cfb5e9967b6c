import { tolerance } from "../../calendar/tolerance.ts";
import { finishMoment, startMoment, type WorkCalendar, workAt } from "../../calendar/workCalendar.ts";

/**
 * Start and finish of work that may begin from max(lower, earliest) on; answers the largest finish, at least 0. Work
 * of no length stands where its bound is.
 */
export function settle(
  calendar: WorkCalendar,
  lower: Float64Array,
  duration: Float64Array,
  start: Float64Array,
  finish: Float64Array,
  earliest: number,
  n: number,
): number {
  let latest = 0;
  if (calendar.everyDay) {
    for (let k = 0; k < n; k++) {
      const s = (lower[k] as number) > earliest ? (lower[k] as number) : earliest;
      const f = s + (duration[k] as number);
      start[k] = s;
      finish[k] = f;
      if (f > latest) latest = f;
    }
    return latest;
  }
  for (let k = 0; k < n; k++) {
    let s = (lower[k] as number) > earliest ? (lower[k] as number) : earliest;
    let f = s;
    const d = duration[k] as number;
    if (d > tolerance) {
      const w = workAt(calendar, s);
      s = startMoment(calendar, w);
      f = finishMoment(calendar, w + d);
    }
    start[k] = s;
    finish[k] = f;
    if (f > latest) latest = f;
  }
  return latest;
}

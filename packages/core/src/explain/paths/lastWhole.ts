import { tolerance } from "../../calendar/tolerance.ts";
import { finishMoment, startMoment, type WorkCalendar, workAt } from "../../calendar/workCalendar.ts";

/**
 * The latest start, at most `limit`, from which `d` working days span no non-working day of `whole`; at least `least`,
 * from which they span none. Starts in working days before them. Each step goes before the first such day in the span.
 *
 * @param reached  Whether `limit` itself may be the start, or only what comes before it.
 */
export function lastWhole(
  calendar: WorkCalendar,
  whole: WorkCalendar,
  limit: number,
  d: number,
  least: number,
  reached: boolean,
): number {
  if (whole.everyDay) return limit;
  const { cum } = whole;
  for (let w = limit; ; ) {
    if (w <= least + tolerance) return Math.max(w, least);
    const from =
      w < limit || reached ? startMoment(calendar, w) + tolerance : finishMoment(calendar, w) - tolerance;
    const first = Math.floor(from);
    const last = Math.min(Math.ceil(finishMoment(calendar, w + d) - tolerance), cum.length - 1);
    let day = first;
    while (day < last && (cum[day + 1] as number) > (cum[day] as number)) day += 1;
    if (day >= last) return w;
    w = Math.min(workAt(calendar, day) - d, w - tolerance);
  }
}

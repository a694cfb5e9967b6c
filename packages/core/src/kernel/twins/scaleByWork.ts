import { type WorkCalendar, workAt } from "../../calendar/workCalendar.ts";

/** Amounts for a day become amounts for the work in [from, to], 0 where there is none; no `from`: since the start. */
export function scaleByWork(
  calendar: WorkCalendar,
  amounts: Float64Array,
  from: Float64Array | undefined,
  to: Float64Array,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    const before = from === undefined ? 0 : workAt(calendar, from[k] as number);
    const held = workAt(calendar, to[k] as number) - before;
    amounts[k] = held > 0 ? (amounts[k] as number) * held : 0;
  }
}

import { addWork, type WorkCalendar } from "../../calendar/workCalendar.ts";

/** out = max(out, from + lag), the lag drawn (`lags`) or `value`, times `scale`; less than 0: a lead. */
export function raiseBy(
  calendar: WorkCalendar,
  out: Float64Array,
  from: Float64Array,
  lags: Float64Array | undefined,
  value: number,
  scale: number,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    const lag = (lags === undefined ? value : (lags[k] as number)) * scale;
    const bound = addWork(calendar, from[k] as number, lag);
    if (bound > (out[k] as number)) out[k] = bound;
  }
}

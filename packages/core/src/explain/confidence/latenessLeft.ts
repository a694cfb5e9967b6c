import { tolerance } from "../../calendar/tolerance.ts";
import type { LatenessRates } from "./latenessRates.ts";

/**
 * Expected cost of finishing after the end of a day: the mean of weeks late times `perWeek`, plus `once` where late
 * at all, over iterations `from` to `to` (plan format, "Money", with `after` at that day). `end`: the end of the day,
 * days since start.
 */
export function latenessLeft(
  finish: Float64Array,
  rates: LatenessRates,
  end: number,
  from = 0,
  to = finish.length,
): number {
  const { perWeek, once } = rates;
  let sum = 0;
  for (let k = from; k < to; k++) {
    const late = (finish[k] as number) - end;
    if (late > tolerance) sum += (late / 7) * (perWeek[k] as number) + (once[k] as number);
  }
  return sum / (to - from);
}

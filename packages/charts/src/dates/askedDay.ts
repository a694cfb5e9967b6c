import type { Forecast } from "@leeway/core";
import { dayMs, isoToMs } from "./dayToIso.ts";

/** The end of the day asked for, in days since the start; NaN when none is asked for. */
export function askedDay({ asked, plan }: Forecast): number {
  return asked.finishByDay ?? (isoToMs(asked.finishBy ?? "") - isoToMs(plan.start)) / dayMs + 1;
}

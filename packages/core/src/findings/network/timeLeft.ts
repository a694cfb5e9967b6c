import { workAt } from "../../calendar/workCalendar.ts";
import type { Written } from "./written.ts";

export interface TimeLeft {
  /** Working days of the plan's calendar from the day after the status date, or the start, to the finish as written. */
  path: number;
  /** ... from the finish as written to the end of the day asked for; negative where it comes too late. */
  float: number;
}

/** The path that is left against the date asked for; undefined without one, and once everything is done. */
export function timeLeft({ model, asWritten }: Written): TimeLeft | undefined {
  if (model.finishByDay === undefined) return undefined;
  const from = workAt(
    model.planCalendar,
    model.statusDay === undefined ? 0 : Math.max(0, model.statusDay + 1),
  );
  const path = asWritten.workingDays - from;
  if (path <= 0) return undefined;
  const asked = workAt(model.planCalendar, Math.max(0, model.finishByDay + 1));
  return { path, float: asked - asWritten.workingDays };
}

/** Critical path length index: (path + float) / path. Defense Acquisition University, dau.edu. */
export function pathLengthIndex({ path, float }: TimeLeft): number {
  return (path + float) / path;
}

import { dayOf, isoOf, weekdayOf } from "../plan/days.ts";

const friday = 4;

/** That day, or the Monday after it: a plan that names no calendar works from Monday to Friday (`weekdays`). */
export function firstDay(iso: string): string {
  let day = dayOf(iso);
  while (weekdayOf(day) > friday) day++;
  return isoOf(day);
}

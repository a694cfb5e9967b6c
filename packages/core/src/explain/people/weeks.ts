import { isoDate, weekdayOf } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";

/** Weeks from Monday to Sunday, counted from the one that holds the plan's start. */
export interface Weeks {
  /** Days since start at which week w begins; at most 0 for the first. */
  begins(w: number): number;
  /** The week that a moment lies in. */
  of(t: number): number;
  /** ISO date of its Monday. */
  monday(w: number): string;
}

/** @param startDay  Day number of the plan's start. */
export function weeksFrom(startDay: number): Weeks {
  const ahead = weekdayOf(startDay);
  return {
    begins: (w) => 7 * w - ahead,
    of: (t) => Math.floor((t + ahead + tolerance) / 7),
    monday: (w) => isoDate(startDay + 7 * w - ahead),
  };
}

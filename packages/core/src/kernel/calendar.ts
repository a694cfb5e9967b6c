import type { WorkCalendar } from "../calendar/workCalendar.ts";

/** A work calendar with tables in an arena, and what lets the kernel pass over slack without looking it up. */
export interface KernelCalendar extends WorkCalendar {
  /** By day, two entries: working days before it, and the first working day from it on (`never`: none). */
  readonly days: Float64Array;
  /** By number of working day: its day; the last entry is `never`. */
  readonly order: Float64Array;
  /** No moment before `end` lies further than this from the next work. */
  readonly gap: number;
  /** The last day that holds work, as a moment: after it none follows. */
  readonly end: number;
}

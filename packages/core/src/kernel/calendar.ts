import type { WorkCalendar } from "../calendar/workCalendar.ts";

/** A work calendar whose tables lie in an arena, and what lets the kernel pass over slack without looking it up. */
export interface KernelCalendar extends WorkCalendar {
  /** No moment before `end` lies further than this from the next work. */
  readonly gap: number;
  /** The last day that holds work, as a moment: after it none follows. */
  readonly end: number;
}

import type { KernelCalendar } from "./calendar.ts";

/** What `settleAny` places, in rows of an arena. */
export interface AnyWork {
  /** When its work is done, and the task's own calendar, by which it waits. */
  calendar: KernelCalendar;
  own: KernelCalendar;
  /** The earliest start, and the finish that a link requires, where one does. */
  lower: Float64Array;
  upper?: Float64Array | undefined;
  needed?: Uint8Array | undefined;
  /** Working days it waits once it might begin. */
  wait?: Float64Array | undefined;
  duration: Float64Array;
  start: Float64Array;
  finish: Float64Array;
  notBefore: number;
  /** Nothing starts before it; where it is not needed, before `statusFloor`. */
  floor: number;
  statusFloor: number;
  /** A milestone that stands where work may begin. */
  startsWork: boolean;
}

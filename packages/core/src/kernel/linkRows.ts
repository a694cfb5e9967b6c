import type { KernelCalendar } from "./calendar.ts";

/** A link between two tasks in a block of iterations, for the backward pass; rows of an arena. */
export interface LinkRows {
  /** The predecessor's moment that binds: its finish, or its start. */
  from: Float64Array;
  fromFinish: boolean;
  fromDuration: Float64Array;
  fromCalendar: KernelCalendar;
  fromMoves: Uint8Array;
  fromPushed: Uint8Array;
  /** The lag drawn, or `lag` where it is not; times `scale`. */
  lags: Float64Array | undefined;
  lag: number;
  scale: number;
  lagCalendar: KernelCalendar;
  /** Whether it is the task's finish that is bound. */
  toFinish: boolean;
  calendar: KernelCalendar;
  /** The calendar by which the task waits. */
  own: KernelCalendar;
  wait: Float64Array | undefined;
  needed: Uint8Array | undefined;
  start: Float64Array;
  duration: Float64Array;
  /** A milestone that stands where work may begin. */
  startsWork: boolean;
  moves: Uint8Array;
  pushed: Uint8Array;
}

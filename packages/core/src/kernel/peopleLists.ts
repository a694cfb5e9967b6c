import type { KernelCalendar } from "./calendar.ts";

/** A span in which a part of a person is away. */
export interface PartAway {
  from: number;
  to: number;
  gone: number;
}

/** A share that a task wants of a person who may have too little left, with the rows of those who may hold the rest. */
export interface WantedShare {
  /** What the others may hold together, tolerance included. */
  room: number;
  shares: readonly number[];
  starts: readonly Float64Array[];
  finishes: readonly Float64Array[];
  /** Absences that count: none for who goes along. */
  partial: readonly PartAway[];
}

/** Somebody else's work that holds a share of the person. */
export interface Sharer {
  share: number;
  /** Whether its place in the order is before the task that starts. */
  before: boolean;
  /** Whether its end may be what the task waits for: not for what follows the task by its links. */
  frees: boolean;
  calendar: KernelCalendar;
  start: Float64Array;
  finish: Float64Array;
  duration: Float64Array;
  moves: Uint8Array;
  pushed: Uint8Array;
}

/** A share that a task holds of a person, and all others that hold one. */
export interface SharedPerson {
  share: number;
  capacity: number;
  sharers: readonly Sharer[];
  /** Absences that count: none for who goes along. */
  partial: readonly PartAway[];
}

/** Bytes of scratch that one call takes for a task with so many holds, others in all of them, and absences likewise. */
export function bytesOfPeople(holds: number, others: number, absences: number): number {
  return 8 * (4 * holds + 9 * others + 3 * absences);
}

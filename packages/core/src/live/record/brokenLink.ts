import type { IsoDate, Link, Task } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/asWrittenValue.ts";

/** A link that recorded progress contradicts: one end was reached, and the end it waits for later or not at all. */
export interface BrokenLink {
  /** Which end of the task before is waited for. */
  from: "started" | "finished";
  to: "started" | "finished";
  /** The day of the task's own end. */
  mine: IsoDate;
  /** The day of the other; absent: not yet. */
  theirs?: IsoDate;
}

/**
 * Whether a task started or finished although what it waits for had not happened. A negative lag allows it, and a task
 * before that may not be needed is no reason.
 */
export function brokenLink(task: Task, { link, lag }: Link, before: Task): BrokenLink | undefined {
  if (before.chance < 1 || before.onlyIf !== undefined || asWrittenValue(lag) < 0) return undefined;
  const [from, to] = ENDS[link];
  // A milestone has one day, which stands for both ends.
  const day = (of: Task, end: "started" | "finished") => (of.milestone === false ? of[end] : of.finished);
  const mine = day(task, to);
  const theirs = day(before, from);
  if (mine === undefined) return undefined;
  if (theirs === undefined) return { from, to, mine };
  // A finish closes its day and a start opens its own, so a task can start the day after at the earliest.
  const point = task.milestone !== false || before.milestone !== false;
  const early = from === "finished" && to === "started" && !point;
  return (early ? theirs >= mine : theirs > mine) ? { from, to, mine, theirs } : undefined;
}

const ENDS = {
  "finish-to-start": ["finished", "started"],
  "start-to-start": ["started", "started"],
  "finish-to-finish": ["finished", "finished"],
  "start-to-finish": ["started", "finished"],
} as const;

import { tolerance } from "../../calendar/tolerance.ts";
import { addWork, nextWork, startMoment, type WorkCalendar, workAt } from "../../calendar/workCalendar.ts";
import type { LinkRows } from "../linkRows.ts";

/** Marks the predecessor where moving it moves the task: nudged on, and pushed to its next work. */
export function markLink(link: LinkRows, n: number): void {
  const { pushed: into, fromMoves, fromPushed } = link;
  for (let k = 0; k < n; k++) {
    if (into[k] === 0 || fromPushed[k] === 1) continue;
    if (binds(link, k, "nudge")) fromMoves[k] = 1;
    if (binds(link, k, "push")) fromPushed[k] = 1;
  }
}

/**
 * Whether, in iteration k, moving the link's predecessor moves the task and with it the plan's finish: nudged on
 * from where it stands, or pushed on to where its calendar next works (the two differ for points on a day off).
 */
export function binds(link: LinkRows, k: number, how: "nudge" | "push"): boolean {
  let at = link.from[k] as number;
  // A start of work is already at work; an end goes on when the task's calendar next works.
  const fromPoint = (link.fromDuration[k] as number) <= tolerance;
  if (fromPoint ? how === "push" : link.fromFinish) at = nextWork(link.fromCalendar, at);
  let nudged = true;
  const lag = (link.lags === undefined ? link.lag : (link.lags[k] as number)) * link.scale;
  if (Math.abs(lag) > tolerance) {
    nudged = works(link.lagCalendar, at);
    at = nudged ? fromRight(link.lagCalendar, at, lag) : addWork(link.lagCalendar, at, lag);
  }
  if (at < -tolerance) return false;
  const skipped = link.needed?.[k] === 0;
  const wait = skipped || link.wait === undefined ? 0 : (link.wait[k] as number);
  if (wait > tolerance) {
    const on = nudged && works(link.own, at);
    at = on ? fromRight(link.own, at, wait) : addWork(link.own, at, wait);
    nudged = on;
  }
  const { calendar } = link;
  const start = link.start[k] as number;
  const duration = link.duration[k] as number;
  if (duration <= tolerance && (!link.startsWork || skipped)) {
    if (nudged ? at < start - tolerance : at <= start + tolerance) return false;
    const byPush = at >= nextWork(calendar, start) - tolerance;
    return (byPush ? link.pushed : link.moves)[k] === 1;
  }
  if (link.moves[k] !== 1) return false;
  const on = nudged && works(calendar, at);
  if (link.toFinish && duration > tolerance) {
    const needs = workAt(calendar, at) - duration;
    const has = workAt(calendar, start);
    return on ? needs >= has - tolerance : needs > has + tolerance;
  }
  return on ? at >= start - tolerance : nextWork(calendar, at) > start + tolerance;
}

function works(calendar: WorkCalendar, t: number): boolean {
  return nextWork(calendar, t) <= t + tolerance;
}

/** The moment `lag` working days from just after t, t inside a working day of the calendar. */
function fromRight(calendar: WorkCalendar, t: number, lag: number): number {
  const w = workAt(calendar, t) + lag;
  return w < 0 ? w : startMoment(calendar, w);
}

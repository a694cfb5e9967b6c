import type { Ahead } from "./helpAhead.ts";

let ahead: Ahead | undefined;

/** Leaves a thread that was started already for whoever wants one first. */
export function leave(started: Ahead | undefined): void {
  ahead = started;
}

/** The thread that was left, once. */
export function takeUp(): Ahead | undefined {
  const taken = ahead;
  ahead = undefined;
  return taken;
}

import { widest } from "./spread.ts";

/** A row is tightened when fewer values than this, or than are left of a stretch, have room. */
export const leastStep = 512;

/**
 * How many values a row's list holds: twice as many as are ever kept, so that a list is seldom full, and room to go on
 * with; never more than n.
 */
export function listLength(n: number, ps: readonly number[]): number {
  const kept = ps.reduce((sum, p) => sum + widest(p, n), 0);
  return Math.min(n, Math.max(2 * kept, kept + leastStep));
}

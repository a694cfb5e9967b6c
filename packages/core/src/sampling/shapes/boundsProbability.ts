import type { Bounds } from "../../plan/types.ts";

/** The probability below `low` (and above `high`) that a kind of bounds stands for. */
export function boundsProbability(bounds: Bounds): number {
  return bounds === "extremes" ? 0 : bounds === "p10-p90" ? 0.1 : 0.05;
}

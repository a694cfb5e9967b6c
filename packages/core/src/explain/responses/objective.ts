import type { Objective } from "../types.ts";
import { type Gauge, meanBurden } from "./gauge.ts";

/** What counts of a gauge, the most important first; in each, less is better. */
export function scoreOf(gauge: Gauge, objective: Objective): number[] {
  switch (objective) {
    case "date":
      return [gauge.day, meanBurden(gauge)];
    case "chance":
      return [-gauge.onTime, meanBurden(gauge)];
    case "worth":
      return [meanBurden(gauge), gauge.day];
  }
}

/**
 * A figure that falls with every little improvement, to find a way by: percentiles and chances stand still on
 * plateaus where two parallel paths have to be helped together.
 */
export function slopeOf(gauge: Gauge, objective: Objective): number {
  return objective === "worth" ? meanBurden(gauge) : gauge.meanDay;
}

/** Whether score a is better than b: in the first figure in which they differ by more than rounding. */
export function isBetter(a: readonly number[], b: readonly number[]): boolean {
  for (let k = 0; k < a.length; k++) {
    const [x, y] = [a[k] as number, b[k] as number];
    if (Math.abs(x - y) > 1e-9 * Math.max(1, Math.abs(x), Math.abs(y))) return x < y;
  }
  return false;
}

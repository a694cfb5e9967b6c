import type { Drift, DriftPoint } from "@leeway/core";
import { dayMs, isoToMs } from "../dates/dayToIso.ts";
import type { DriftMark } from "./drawDrift.ts";

/** What the charts of the drift say of their marks. */
export const marksSaid = "filled square: signed; hollow square: the plan itself was changed";

/** The day from which the marks count: that of the first forecast. */
export function driftStart({ points }: Drift): string {
  return points[0]?.asOf ?? "2000-01-01";
}

/** Days of a date since the drift's start. */
export function daysSince(start: string, date: string): number {
  return Math.round((isoToMs(date) - isoToMs(start)) / dayMs);
}

/** Where a forecast stands along the axis, and how it is marked. */
export function markOf(point: DriftPoint, start: string): Pick<DriftMark, "at" | "kind"> {
  const signed = point.entry.approvals.some(({ decision }) => decision.startsWith("approve"));
  const changed = point.terms?.includes("plan") === true;
  return { at: daysSince(start, point.asOf), kind: signed ? "signed" : changed ? "changed" : "plain" };
}

import type { Drift, DriftPoint } from "@leeway/core";
import { dayMs, isoToMs } from "../dates/dayToIso.ts";
import type { DriftMark } from "./drawDrift.ts";

/** What the squares among the marks mean, as further sentences; empty where every mark is a plain one. */
export function marksSaid(marks: readonly Pick<DriftMark, "kind">[]): string {
  const has = (kind: DriftMark["kind"]) => marks.some((mark) => mark.kind === kind);
  const said = [
    ...(has("signed") ? ["filled square: signed"] : []),
    ...(has("changed") ? ["hollow square: the plan itself was changed"] : []),
  ].join("; ");
  return said === "" ? "" : `. ${said.slice(0, 1).toUpperCase()}${said.slice(1)}`;
}

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

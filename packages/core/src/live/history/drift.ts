import { dayNumber } from "../../calendar/dates.ts";
import type { Drift, DriftPoint, HistoryEntry, OtherTerm } from "./types.ts";

/**
 * How the commitment drifted over the lines of a history: each against the one before, and the last against the first.
 * Days are calendar days, which no change of a calendar can move; sums differ only where the currency is the same.
 * Absent without a line.
 */
export function driftOf(entries: readonly HistoryEntry[]): Drift | undefined {
  const [first] = entries;
  const last = entries.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const points = entries.map((entry, i): DriftPoint => {
    const before = entries[i - 1];
    return {
      asOf: asOf(entry),
      entry,
      ...(before === undefined ? {} : { moved: between(before, entry), terms: otherTerms(before, entry) }),
    };
  });
  // Lines are in the order in which they were written; where that is not the order of their days, the later day holds.
  let latest = "";
  for (const point of points) {
    if (point.asOf < latest) point.asOf = latest;
    latest = point.asOf;
  }
  const largest = points.reduce<DriftPoint | undefined>(
    (most, point) => (Math.abs(point.moved?.days ?? 0) > Math.abs(most?.moved?.days ?? 0) ? point : most),
    undefined,
  );
  return { points, moved: between(first, last), ...(largest === undefined ? {} : { largest }) };
}

/** The day a forecast speaks from: its status date; before there is any, the day it was written, at most the start. */
function asOf({ statusDate, date, start }: HistoryEntry): string {
  return statusDate ?? (date < start ? date : start);
}

function between(from: HistoryEntry, to: HistoryEntry): NonNullable<DriftPoint["moved"]> {
  return {
    days: dayNumber(to.finish.committed.date) - dayNumber(from.finish.committed.date),
    ...(from.currency === to.currency ? { money: to.cost.committed - from.cost.committed } : {}),
  };
}

/** What else is not the same, so that the two are not quite alike. */
function otherTerms(from: HistoryEntry, to: HistoryEntry): OtherTerm[] {
  return [
    ...(from.confidence === to.confidence ? [] : (["confidence"] as const)),
    ...(from.currency === to.currency ? [] : (["currency"] as const)),
    ...(from.seed === to.seed && from.iterations === to.iterations && from.design === to.design
      ? []
      : (["draws"] as const)),
    ...(from.version === to.version ? [] : (["version"] as const)),
    ...(from.asked.finishBy === to.asked.finishBy && from.asked.budget === to.asked.budget
      ? []
      : (["asked"] as const)),
    ...(from.approvalSha256 === to.approvalSha256 ? [] : (["plan"] as const)),
  ];
}

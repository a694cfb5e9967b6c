import { formatDate } from "@leeway/charts";
import type { Absence } from "@leeway/core";
import { readDate } from "./readDate.ts";

/** Absences as their cell shows them: "16 Aug 2027 to 20 Aug 2027; 3 Sep 2027". */
export function awayCell(away: readonly Absence[]): string {
  return away
    .map(({ from, to }) => (from === to ? formatDate(from) : `${formatDate(from)} to ${formatDate(to)}`))
    .join("; ");
}

/**
 * Absences from their cell; what is written beside the same dates, a reason or a share, stays.
 *
 * @param stated  What stands in the document: a date, an absence, or a list of them.
 */
export function readAway(text: string, stated: unknown): { value: unknown } | { words: string } {
  const before = stated === undefined ? [] : Array.isArray(stated) ? stated : [stated];
  const value: unknown[] = [];
  for (const part of text.split(";").map((one) => one.trim())) {
    if (part === "") continue;
    const [first = "", last, more] = part.split(/\s+(?:to|until|–|-)\s+|\s*–\s*/);
    const from = readDate(first);
    if ("words" in from) return from;
    const to = last === undefined ? from : readDate(last);
    if ("words" in to) return to;
    if (more !== undefined || to.value < from.value)
      return {
        words: `“${part}” ends before it begins. Write 16 Aug 2027 to 20 Aug 2027, and a semicolon before the next.`,
      };
    const kept = before.find((one) => datesOf(one) === `${from.value} ${to.value}`);
    value.push(kept ?? (from.value === to.value ? from.value : { from: from.value, to: to.value }));
  }
  return { value: value.length === 0 ? undefined : value };
}

function datesOf(absence: unknown): string {
  if (typeof absence === "string") return `${absence} ${absence}`;
  if (typeof absence !== "object" || absence === null || !("from" in absence)) return "";
  return `${absence.from} ${"to" in absence ? absence.to : absence.from}`;
}

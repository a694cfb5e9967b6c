import type { ScoreEntry } from "./types.ts";

/** Actual over what was said, of every entry where that is above nought. */
export function ratiosTo(entries: readonly ScoreEntry[], key: "likely" | "p50"): number[] {
  return entries.flatMap((entry) => (entry[key] > 0 ? [entry.actual / entry[key]] : []));
}

/** The middle value; of an even number the mean of the two in the middle; NaN of none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  const upper = sorted[Math.floor(half)] ?? Number.NaN;
  return Number.isInteger(half) ? ((sorted[half - 1] ?? Number.NaN) + upper) / 2 : upper;
}

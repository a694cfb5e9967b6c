import type { Plan } from "../../plan/types.ts";
import { dateWords, numberWords, percentWords } from "./words/numbers.ts";

/** What a reader has to know about how two plans were put side by side. */
export function comparisonWarnings(
  older: Plan,
  newer: Plan,
  used: { seed: string; iterations: number; confidence: number },
): string[] {
  const warnings: string[] = [];
  if (older.seed !== used.seed) {
    warnings.push(`The old plan's seed ${older.seed} is left aside: both plans run with ${used.seed}.`);
  }
  if (older.iterations !== used.iterations && older.iterations !== newer.iterations) {
    const runs = numberWords(used.iterations);
    warnings.push(
      `The old plan's ${numberWords(older.iterations)} iterations are left aside: both plans run with ${runs}.`,
    );
  }
  if (older.commitment.confidence !== used.confidence) {
    const level = percentWords(older.commitment.confidence);
    warnings.push(
      `The old plan is committed to at ${level}; both plans are read at ${percentWords(used.confidence)}.`,
    );
  }
  if (older.currency !== newer.currency) {
    warnings.push(
      `The old plan is in ${older.currency}, the new one in ${newer.currency}: sums are compared as they stand.`,
    );
  }
  if (older.start !== newer.start) {
    warnings.push(
      `The old plan starts on ${dateWords(older.start)}: its days are counted from the new plan's start, ${dateWords(newer.start)}.`,
    );
  }
  const ids = new Set(older.tasks.flatMap(({ id, was }) => [id, was ?? id]));
  if (!newer.tasks.some(({ id, was }) => ids.has(id) || (was !== undefined && ids.has(was)))) {
    warnings.push("The two plans have no task in common: are they plans of the same work?");
  }
  return warnings;
}

import type { Opinion } from "../plan/types.ts";
import type { OpinionOf } from "./askable.ts";

/**
 * What each person last said: one opinion a person, the one with the latest date (without a date: the earliest there
 * can be), of several on one day the last in the list. By person's id.
 */
export function latestOpinions(opinions: readonly Opinion[], of: OpinionOf): Opinion[] {
  const latest = new Map<string, Opinion>();
  for (const opinion of opinions) {
    if (opinion.of !== of) continue;
    const known = latest.get(opinion.by);
    if (known === undefined || (opinion.date ?? "") >= (known.date ?? "")) latest.set(opinion.by, opinion);
  }
  return [...latest.values()].sort((a, b) => (a.by < b.by ? -1 : 1));
}

import type { Forecast, Problem } from "@leeway/core";

/**
 * Answers by the hash of their plan, so that undo, redo and an entry computed while it was typed answer at once.
 * Same plan, same answer: it cannot go stale.
 */
export interface AnswerCache {
  get(plan: string): KnownAnswer | undefined;
  /** Keeps what is new; what was known of the same plan stays. */
  put(plan: string, answer: KnownAnswer): void;
}

/** `first` only until there is a `full` one. */
export interface KnownAnswer {
  first?: Forecast;
  full?: Forecast;
  problems?: readonly Problem[];
}

/** @param size  Answers kept; the one unused for longest goes first. */
export function createAnswerCache(size: number): AnswerCache {
  const answers = new Map<string, KnownAnswer>();
  const renew = (plan: string, answer: KnownAnswer): void => {
    answers.delete(plan);
    answers.set(plan, answer);
  };
  return {
    get(plan) {
      const kept = answers.get(plan);
      if (kept !== undefined) renew(plan, kept);
      return kept;
    },
    put(plan, answer) {
      renew(plan, { ...answers.get(plan), ...answer });
      const oldest = answers.keys().next();
      if (answers.size > size && !oldest.done) answers.delete(oldest.value);
    },
  };
}

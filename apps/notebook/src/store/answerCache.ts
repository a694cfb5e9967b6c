import type { Forecast } from "@leeway/core";

/** Full answers by plan text, so that undo and redo answer at once. Same text, same answer: it cannot go stale. */
export interface AnswerCache {
  get(text: string): Forecast | undefined;
  put(text: string, forecast: Forecast): void;
}

/** @param size  Answers kept; the one unused for longest goes first. */
export function createAnswerCache(size: number): AnswerCache {
  const answers = new Map<string, Forecast>();
  return {
    get(text) {
      const kept = answers.get(text);
      if (kept !== undefined) {
        answers.delete(text);
        answers.set(text, kept);
      }
      return kept;
    },
    put(text, forecast) {
      answers.delete(text);
      answers.set(text, forecast);
      const oldest = answers.keys().next();
      if (answers.size > size && !oldest.done) answers.delete(oldest.value);
    },
  };
}

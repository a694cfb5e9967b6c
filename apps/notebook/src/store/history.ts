/** Undo and redo over whole texts. A plan is small; keeping texts makes every step exact, comments included. */
export interface History {
  readonly past: readonly string[];
  readonly present: string;
  readonly future: readonly string[];
}

/** Oldest steps beyond this are forgotten. */
const longest = 500;

export function startHistory(text: string): History {
  return { past: [], present: text, future: [] };
}

/** A new text: what could be redone is gone. The same text is not a step. */
export function record(history: History, text: string): History {
  if (text === history.present) return history;
  return { past: [...history.past, history.present].slice(-longest), present: text, future: [] };
}

export function undo(history: History): History {
  const previous = history.past.at(-1);
  if (previous === undefined) return history;
  return { past: history.past.slice(0, -1), present: previous, future: [history.present, ...history.future] };
}

export function redo(history: History): History {
  const next = history.future[0];
  if (next === undefined) return history;
  return { past: [...history.past, history.present], present: next, future: history.future.slice(1) };
}

import { changeBetween, type TextChange, withChange, withoutChange } from "./textChange.ts";

/**
 * Undo and redo over whole texts, so that every step is exact, comments included. Of each step only what it changed is
 * kept: hundreds of whole texts would be most of the page's memory.
 */
export interface History {
  /** What led to the present, oldest first. */
  readonly past: readonly TextChange[];
  readonly present: string;
  /** What leads on from it, next first. */
  readonly future: readonly TextChange[];
}

/** Oldest steps beyond this are forgotten. */
const longest = 500;

export function startHistory(text: string): History {
  return { past: [], present: text, future: [] };
}

/** A new text: what could be redone is gone. The same text is not a step. */
export function record(history: History, text: string): History {
  const { past, present } = history;
  if (text === present) return history;
  return { past: [...past, changeBetween(present, text)].slice(-longest), present: text, future: [] };
}

export function undo(history: History): History {
  const { past, present, future } = history;
  const last = past.at(-1);
  if (last === undefined) return history;
  return { past: past.slice(0, -1), present: withoutChange(present, last), future: [last, ...future] };
}

export function redo(history: History): History {
  const { past, present, future } = history;
  const next = future[0];
  if (next === undefined) return history;
  return { past: [...past, next], present: withChange(present, next), future: future.slice(1) };
}

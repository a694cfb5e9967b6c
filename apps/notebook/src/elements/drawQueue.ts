/**
 * Draws one figure at a time with a breath between: six charts in a row would hold the page for as long as all
 * of them take. A key already waiting is replaced, not queued twice.
 */
export interface DrawQueue {
  add(key: object, draw: () => void): void;
  remove(key: object): void;
}

/** @param later  Runs a task after whatever the page has to do first. */
export function createDrawQueue(later: (task: () => void) => void): DrawQueue {
  const waiting = new Map<object, () => void>();
  let busy = false;
  const next = (): void => {
    const first = waiting.entries().next();
    if (first.done) {
      busy = false;
      return;
    }
    const [key, draw] = first.value;
    waiting.delete(key);
    try {
      draw();
    } finally {
      later(next);
    }
  };
  return {
    add(key, draw) {
      waiting.set(key, draw);
      if (busy) return;
      busy = true;
      later(next);
    },
    remove: (key) => waiting.delete(key),
  };
}

/** The page's one queue. */
export const drawQueue = createDrawQueue((task) => setTimeout(task, 0));

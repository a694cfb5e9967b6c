/**
 * Work on the page in turns: one piece, then a frame, then the next. A page that redrew its tables and charts at
 * once would hold its reader for as long as all of them take. What is in sight goes first, the rest when the page
 * has nothing else to do.
 */
export interface Turns {
  /** Work for an element, once its turn comes. Work that already waits for the element is replaced. */
  take(key: Element, work: () => void): void;
  drop(key: Element): void;
  /** Lets everything wait, for something that matters more; at most as long as said, in ms. */
  hold(ms: number): void;
  /** Ends the wait. */
  go(): void;
  /** Does all that waits, at once: paper waits for no turn. */
  all(): void;
}

/** What turns need of the page; tests hand in their own. */
export interface TurnsHost {
  /** Runs a task once the next frame is on the screen. */
  afterFrame(task: () => void): void;
  /** Runs a task when the page is idle. */
  whenIdle(task: () => void): void;
  /** Whether the element is in sight, or nearly. */
  isNear(element: Element): boolean;
  /** Something waits, or nothing does any more. */
  busy(waiting: boolean): void;
}

export function createTurns(host: TurnsHost): Turns {
  const waiting = new Map<Element, () => void>();
  let asked: "no" | "frame" | "idle" = "no";
  let held: ReturnType<typeof setTimeout> | undefined;

  const firstNear = (): Element | undefined => {
    for (const key of waiting.keys()) if (host.isNear(key)) return key;
    return undefined;
  };

  /** `asked` is the turn that was asked for last: an idle one may be overtaken by a frame, and then lapses. */
  function ask(): void {
    if (held !== undefined || waiting.size === 0) return;
    const kind = asked === "no" || firstNear() !== undefined ? "frame" : "idle";
    if (asked === kind || asked === "frame") return;
    asked = kind;
    host.afterFrame(() => {
      if (asked === "frame") turn(firstNear());
    });
  }

  function turn(key: Element | undefined): void {
    asked = "no";
    if (held !== undefined) return;
    const work = key === undefined ? undefined : waiting.get(key);
    if (key === undefined || work === undefined) {
      if (waiting.size === 0) return;
      asked = "idle";
      host.whenIdle(() => {
        if (asked === "idle") turn(firstNear() ?? waiting.keys().next().value);
      });
      return;
    }
    waiting.delete(key);
    try {
      work();
    } finally {
      if (waiting.size === 0) host.busy(false);
      ask();
    }
  }

  const go = (): void => {
    clearTimeout(held);
    held = undefined;
    ask();
  };

  return {
    take(key, work) {
      if (waiting.size === 0) host.busy(true);
      waiting.set(key, work);
      ask();
    },
    drop(key) {
      if (waiting.delete(key) && waiting.size === 0) host.busy(false);
    },
    hold(ms) {
      clearTimeout(held);
      held = setTimeout(go, ms);
    },
    go,
    all() {
      const due = [...waiting.values()];
      waiting.clear();
      for (const work of due) work();
      if (due.length > 0) host.busy(false);
    },
  };
}

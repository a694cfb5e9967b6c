import type { Forecast, Plan } from "@leeway/core";
import type { Edit } from "../plan/edit.ts";
import { movedPending } from "../plan/movedPending.ts";
import type { PlanRead } from "../worker/planMessages.ts";
import type { Reader } from "../worker/reader.ts";
import { createAnswering, firstFutures, merged, type StartRunner } from "./answering.ts";
import { type History, record, redo, startHistory, undo } from "./history.ts";
import { sharesWork } from "./sharesWork.ts";
import type { NotebookState, Pending } from "./state.ts";
import { refusedWords, takeInWaiting } from "./takeInWaiting.ts";

export interface Store {
  readonly state: NotebookState;
  /** Calls back after every change. Returns a function that ends it. */
  subscribe(listener: () => void): () => void;
  /**
   * Puts edits into the document, or keeps the entry waiting with the reason when they would break it.
   *
   * @param waits  Entries that could not be read, by their fields as they are after the edits.
   */
  edit(
    field: string,
    cells: Pending["cells"],
    edits: readonly Edit[],
    waits?: ReadonlyMap<string, Pending>,
  ): void;
  /** An entry is being typed and would be these edits now: its answer is computed ahead. Nothing shows. */
  foresee(edits: readonly Edit[]): void;
  /** Keeps an entry that could not be read. */
  refuse(field: string, pending: Pending): void;
  /** Gives up an entry that waits. */
  drop(field: string): void;
  setText(text: string): void;
  undo(): void;
  redo(): void;
  /** Stops the forecast that is running, or starts the one that was stopped. */
  stop(): void;
  resume(): void;
  stopTornado(): void;
  startTornado(): void;
}

/** Texts kept as they were read. */
const readsKept = 24;

/**
 * The page's one store. It owns no elements and no workers: both are handed in.
 *
 * @param text  The plan the page opens on.
 * @param reader  Reads and edits plans; edits are made one after the other, each on the text the last one left.
 * @param startRunner  Called twice: for forecasts, and for the tornado in their background.
 * @param stated  The text as plain data, where that is known: the first answer then comes before the text is read.
 * @param known  The full answer to the text, where that is known: it is shown at once.
 */
export function createStore(
  text: string,
  reader: Reader,
  startRunner: StartRunner,
  stated?: unknown,
  known?: Forecast,
): Store {
  const listeners = new Set<() => void>();
  let history: History = startHistory(text);
  let state: NotebookState = {
    text,
    plan: undefined,
    stated: undefined,
    reading: false,
    problems: [],
    pending: new Map(),
    answer: known === undefined ? undefined : { forecast: known, stage: "full", plan: known.plan.sha256 },
    current: known?.plan.sha256,
    detail: known,
    previous: undefined,
    previousText: undefined,
    origin: text,
    computing: false,
    progress: undefined,
    stopped: false,
    failure: undefined,
    tornado: { stopped: false },
    canUndo: false,
    canRedo: false,
  };

  const set = (change: Partial<NotebookState>): void => {
    // The answer is there: the text it answers need not wait any longer.
    if (state.computing && change.computing === false && state.reading) reader.hurry();
    state = { ...state, ...change };
    const { previous, previousText } = state;
    if (change.previous !== undefined || (previous === undefined) !== (previousText === undefined))
      state = { ...state, previousText: previous === undefined ? undefined : textOf(previous.plan.sha256) };
    for (const listener of listeners) listener();
  };

  const answering = createAnswering(
    {
      get state() {
        return state;
      },
      set,
    },
    startRunner,
    known,
  );

  /** The last texts as they were read, for undo and redo. */
  const reads = new Map<string, PlanRead>();
  function keepRead(text: string, read: PlanRead): void {
    reads.delete(text);
    reads.set(text, read);
    const oldest = reads.keys().next();
    if (reads.size > readsKept && !oldest.done) reads.delete(oldest.value);
  }

  /** The text of a plan that was read lately. */
  function textOf(sha256: string): string | undefined {
    for (const [read, { plan }] of reads) if (plan?.sha256 === sha256) return read;
    return undefined;
  }

  /** What the plan would be by the entry that was typed last, and of which text and edits that was said. */
  let foreseen: { of: string; plan: Plan } | undefined;

  let queue: Promise<void> = Promise.resolve();
  let queued = 0;

  /** Does one thing after all that were asked before it, so that undo never overtakes the edit it undoes. */
  function inTurn(work: () => Promise<void>): void {
    queued++;
    if (queued > 1) reader.hurry();
    // Where nothing waits it begins at once, and not when the page has dealt with the key that asked for it.
    const begun = queued === 1 ? work() : queue.then(work);
    if (!state.reading) set({ reading: true });
    queue = begun
      .catch((error: unknown) => {
        const words = error instanceof Error ? error.message : String(error);
        set({ failure: `The plan could not be read: ${words}` });
      })
      .then(() => {
        queued--;
        if (queued === 0) set({ reading: false });
      });
  }

  /** Reads `next` and takes it as the plan. */
  async function readAndTake(next: History): Promise<void> {
    if (next !== history || state.plan === undefined)
      take(next, reads.get(next.present) ?? (await reader.read(next.present, [])), new Map());
  }

  /** Takes `next`, which was read, as the plan; computes it when it could be read. */
  function take(next: History, read: PlanRead, keepPending: ReadonlyMap<string, Pending>): void {
    history = next;
    const { plan, problems, stated } = read;
    keepRead(next.present, read);
    const another = plan !== undefined && state.plan !== undefined && !sharesWork(state.plan, plan);
    set({
      text: next.present,
      ...(plan === undefined ? {} : { plan, stated }),
      ...(another ? { origin: next.present } : {}),
      problems: plan === undefined ? problems : merged(problems, answering.found(plan)),
      pending: keepPending,
      canUndo: next.past.length > 0,
      canRedo: next.future.length > 0,
    });
    if (plan === undefined) answering.halt();
    else answering.begin(plan);
  }

  function pendingWith(field: string, pending: Pending | undefined): ReadonlyMap<string, Pending> {
    const next = new Map(state.pending);
    if (pending === undefined) next.delete(field);
    else next.set(field, pending);
    return next;
  }

  inTurn(async () =>
    take(history, await reader.read(text, [], answering.begin, stated, firstFutures), new Map()),
  );

  return {
    get state() {
      return state;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    edit(field, cells, edits, waits = new Map()) {
      inTurn(async () => {
        const before = state.plan;
        const foreknown = foreseen?.of === asText(history.present, edits) ? foreseen.plan : undefined;
        let isAhead = foreknown !== undefined;
        if (foreknown === undefined) answering.giveWay();
        else answering.begin(foreknown);
        const begin = (plan: Plan): void => {
          isAhead = true;
          answering.begin(plan);
          // Its answer is known already: nothing goes before the text.
          if (!state.computing) reader.hurry();
        };
        const first = foreknown === undefined ? firstFutures : undefined;
        const read = await reader.read(history.present, edits, begin, undefined, first);
        const error = read.problems.find((problem) => problem.severity === "error");
        if (error === undefined && read.text !== history.present) {
          const stay = pendingWith(field, undefined);
          const pending = movedPending(stay, edits);
          // Places in lists are true for one plan only.
          const placed = pending === stay ? pending : withoutEdits(pending);
          const again = (text: string, more: readonly Edit[]) => reader.read(text, more);
          const all = await takeInWaiting(again, read, placed);
          take(record(history, all.now.text), all.now, new Map([...all.pending, ...waits]));
          return;
        }
        if (isAhead && before !== undefined) answering.begin(before);
        const entry =
          error === undefined
            ? undefined
            : { cells, words: refusedWords(error), ...(edits.every(isValue) ? { edits } : {}) };
        const pending = pendingWith(field, entry);
        set({ pending: error === undefined ? new Map([...pending, ...waits]) : pending });
      });
    },
    foresee(edits) {
      if (state.reading || state.computing) return;
      answering.giveWay();
      const { present } = history;
      reader.try(present, edits).then(
        (plan) => {
          if (plan === undefined || state.reading) return;
          foreseen = { of: asText(present, edits), plan };
          answering.foresee(plan);
        },
        () => {}, // the entry itself, once it is made, says what is wrong
      );
    },
    refuse: (field, pending) => set({ pending: pendingWith(field, pending) }),
    drop(field) {
      if (state.pending.has(field)) set({ pending: pendingWith(field, undefined) });
    },
    setText: (next) => inTurn(() => readAndTake(record(history, next))),
    undo: () =>
      inTurn(async () => {
        // An entry that waits is the latest thing the reader did: it goes first.
        if (state.pending.size > 0) set({ pending: new Map() });
        else await readAndTake(undo(history));
      }),
    redo: () => inTurn(() => readAndTake(redo(history))),
    stop: answering.stop,
    resume: answering.resume,
    stopTornado: answering.stopTornado,
    startTornado: answering.startTornado,
  };
}

function asText(text: string, edits: readonly Edit[]): string {
  return JSON.stringify([text, edits]);
}

/** It says what stands somewhere; it brings no row of a list, and moves and removes none. */
function isValue({ path, value, add, swap }: Edit): boolean {
  return add === undefined && swap === undefined && !(value === undefined && path.endsWith("]"));
}

function withoutEdits(pending: ReadonlyMap<string, Pending>): ReadonlyMap<string, Pending> {
  return new Map([...pending].map(([field, { cells, words }]) => [field, { cells, words }]));
}

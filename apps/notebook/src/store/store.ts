import { describeProblem, type Forecast, type Problem } from "@leeway/core";
import type { Edit } from "../plan/edit.ts";
import type { Reply, Request } from "../worker/messages.ts";
import type { PlanRead } from "../worker/planMessages.ts";
import type { Reader } from "../worker/reader.ts";
import type { Runner } from "../worker/runner.ts";
import { createAnswerCache } from "./answerCache.ts";
import { type History, record, redo, startHistory, undo } from "./history.ts";
import type { NotebookState, Pending } from "./state.ts";

/** Makes a runner that hands its messages to the store. */
export type StartRunner = (reply: (message: Reply) => void) => Runner;

export interface Store {
  readonly state: NotebookState;
  /** Calls back after every change. Returns a function that ends it. */
  subscribe(listener: () => void): () => void;
  /** Puts edits into the document, or keeps the entry waiting with the reason when they would break it. */
  edit(field: string, cells: Pending["cells"], edits: readonly Edit[]): void;
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

/** Futures behind the early answer: one block of draws. */
const firstFutures = 1024;

/**
 * The page's one store. It owns no elements and no workers: both are handed in.
 *
 * @param text  The plan the page opens on.
 * @param reader  Reads and edits plans; edits are made one after the other, each on the text the last one left.
 * @param startRunner  Called twice: for the forecast, and for the tornado in its background.
 */
export function createStore(text: string, reader: Reader, startRunner: StartRunner): Store {
  const listeners = new Set<() => void>();
  const cache = createAnswerCache(24);
  let history: History = startHistory(text);
  let run = 0;
  let state: NotebookState = {
    text,
    plan: undefined,
    stated: undefined,
    reading: false,
    problems: [],
    pending: new Map(),
    answer: undefined,
    previous: undefined,
    progress: undefined,
    stopped: false,
    failure: undefined,
    tornado: { stopped: false },
    canUndo: false,
    canRedo: false,
  };

  const set = (change: Partial<NotebookState>): void => {
    state = { ...state, ...change };
    for (const listener of listeners) listener();
  };

  const forecasts = startRunner(onForecast);
  const tornadoes = startRunner(onTornado);

  let queue: Promise<void> = Promise.resolve();
  let queued = 0;

  /** Does one thing after all that were asked before it, so that undo never overtakes the edit it undoes. */
  function inTurn(work: () => Promise<void>): void {
    queued++;
    if (!state.reading) set({ reading: true });
    queue = queue
      .then(work)
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
      take(next, await reader.read(next.present, []), new Map());
  }

  /** Takes `next`, which was read, as the plan; computes it when it could be read. */
  function take(next: History, read: PlanRead, keepPending: ReadonlyMap<string, Pending>): void {
    history = next;
    const { plan, problems, stated } = read;
    const settled = state.answer;
    const moved = settled?.stage === "full" && settled.text !== next.present;
    forecasts.stop();
    tornadoes.stop();
    set({
      text: next.present,
      ...(plan === undefined ? {} : { plan, stated }),
      problems,
      pending: keepPending,
      previous: moved ? settled.forecast : state.previous,
      progress: undefined,
      stopped: false,
      failure: undefined,
      tornado: without(state.tornado, "progress"),
      canUndo: next.past.length > 0,
      canRedo: next.future.length > 0,
    });
    if (plan !== undefined) compute();
  }

  function compute(): void {
    const kept = cache.get(state.text);
    if (kept !== undefined) {
      settle(kept);
      return;
    }
    run++;
    set({ progress: { stage: "first", done: 0, total: 0 }, stopped: false, failure: undefined });
    forecasts.run({ kind: "forecast", run, text: state.text, first: firstFutures });
  }

  function settle(forecast: Forecast): void {
    cache.put(state.text, forecast);
    set({ answer: { forecast, stage: "full", text: state.text }, progress: undefined });
    if (forecast.tornado !== undefined) {
      set({ tornado: { forecast, text: state.text, stopped: state.tornado.stopped } });
    } else if (!state.tornado.stopped) startTornado();
  }

  function onForecast(message: Reply): void {
    switch (message.kind) {
      case "progress":
        set({ progress: { stage: message.stage, done: message.done, total: message.total } });
        return;
      case "forecast":
        if (message.stage === "full") settle(message.forecast);
        else set({ answer: { forecast: message.forecast, stage: "first", text: state.text } });
        return;
      case "done":
        set({ progress: undefined, problems: merged(state.problems, message.problems) });
        return;
      case "failed":
        set({ progress: undefined, failure: `The computation failed: ${message.words}` });
    }
  }

  function startTornado(): void {
    if (state.answer?.stage !== "full" || state.answer.text !== state.text) {
      set({ tornado: { ...state.tornado, stopped: false } });
      return;
    }
    run++;
    set({ tornado: { ...state.tornado, stopped: false, progress: { stage: "tornado", done: 0, total: 0 } } });
    const request: Request = { kind: "tornado", run, text: state.text };
    tornadoes.run(request);
  }

  function onTornado(message: Reply): void {
    switch (message.kind) {
      case "progress":
        set({ tornado: { ...state.tornado, progress: message } });
        return;
      case "forecast":
        cache.put(state.text, message.forecast);
        set({ tornado: { forecast: message.forecast, text: state.text, stopped: false } });
        return;
      default:
        set({ tornado: without(state.tornado, "progress") });
    }
  }

  function pendingWith(field: string, pending: Pending | undefined): ReadonlyMap<string, Pending> {
    const next = new Map(state.pending);
    if (pending === undefined) next.delete(field);
    else next.set(field, pending);
    return next;
  }

  inTurn(() => readAndTake(history));

  return {
    get state() {
      return state;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    edit(field, cells, edits) {
      inTurn(async () => {
        const read = await reader.read(history.present, edits);
        const first = read.problems.find((problem) => problem.severity === "error");
        if (first !== undefined) set({ pending: pendingWith(field, { cells, words: problemWords(first) }) });
        else if (read.text === history.present) set({ pending: pendingWith(field, undefined) });
        else take(record(history, read.text), read, pendingWith(field, undefined));
      });
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
    stop() {
      forecasts.stop();
      set({
        progress: undefined,
        stopped: state.answer?.text !== state.text || state.answer.stage !== "full",
      });
    },
    resume: compute,
    stopTornado() {
      tornadoes.stop();
      set({ tornado: { ...without(state.tornado, "progress"), stopped: true } });
    },
    startTornado,
  };
}

function problemWords(problem: Problem): string {
  return `${problem.rule} ${problem.remedy}`.trim() || describeProblem(problem);
}

/** What reading found, and what computing found besides. */
function merged(read: readonly Problem[], computed: readonly Problem[]): readonly Problem[] {
  const known = new Set(read.map((problem) => `${problem.code} ${problem.path}`));
  const more = computed.filter((problem) => !known.has(`${problem.code} ${problem.path}`));
  return more.length === 0 ? read : [...read, ...more];
}

function without<T extends object, K extends keyof T>(object: T, key: K): Omit<T, K> {
  const { [key]: _left, ...rest } = object;
  return rest;
}

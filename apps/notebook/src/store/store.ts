import { describeProblem, type Forecast, type Problem, readPlan } from "@leeway/core";
import { applyEdits } from "../plan/applyEdits.ts";
import type { Edit } from "../plan/edit.ts";
import type { Reply, Request } from "../worker/messages.ts";
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
 * @param startRunner  Called twice: for the forecast, and for the tornado in its background.
 */
export function createStore(text: string, startRunner: StartRunner): Store {
  const listeners = new Set<() => void>();
  const cache = createAnswerCache(24);
  let history: History = startHistory(text);
  let run = 0;
  let state: NotebookState = {
    text,
    plan: undefined,
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

  /** Takes `next` as the plan: reads it, and computes it when it can be read. */
  function take(next: History, keepPending: ReadonlyMap<string, Pending>): void {
    history = next;
    const { plan, problems } = readPlan(next.present);
    const settled = state.answer;
    const moved = settled?.stage === "full" && settled.text !== next.present;
    forecasts.stop();
    tornadoes.stop();
    set({
      text: next.present,
      plan: plan ?? state.plan,
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

  take(history, new Map());

  return {
    get state() {
      return state;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    edit(field, cells, edits) {
      const { text: next, problems } = applyEdits(state.text, edits);
      const found = problems.length > 0 ? problems : readPlan(next).problems;
      const first = found.find((problem) => problem.severity === "error");
      if (first !== undefined) set({ pending: pendingWith(field, { cells, words: problemWords(first) }) });
      else if (next === state.text) set({ pending: pendingWith(field, undefined) });
      else take(record(history, next), pendingWith(field, undefined));
    },
    refuse: (field, pending) => set({ pending: pendingWith(field, pending) }),
    drop: (field) => set({ pending: pendingWith(field, undefined) }),
    setText(next) {
      if (next !== state.text) take(record(history, next), new Map());
    },
    undo() {
      // An entry that waits is the latest thing the reader did: it goes first.
      if (state.pending.size > 0) set({ pending: new Map() });
      else if (history.past.length > 0) take(undo(history), new Map());
    },
    redo() {
      if (history.future.length > 0) take(redo(history), new Map());
    },
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

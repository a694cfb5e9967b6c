import type { Forecast, Plan, Problem } from "@leeway/core";
import type { Reply, Unasked } from "../worker/messages.ts";
import type { Runner } from "../worker/runner.ts";
import { createAnswerCache } from "./answerCache.ts";
import { sharesWork } from "./sharesWork.ts";
import type { NotebookState } from "./state.ts";

/** Makes a runner that hands its messages to the store. */
export type StartRunner = (kind: "forecast" | "tornado", reply: (message: Reply | Unasked) => void) => Runner;

/** Computes answers and puts them into the state. */
export interface Answering {
  /** This plan is now the current one: its answer is recalled, or computed and shown as it comes. */
  begin(plan: Plan): void;
  /** This plan may become the current one: its answer is computed for then. Nothing of it is shown. */
  foresee(plan: Plan): void;
  /** The reader is at work: what goes on in the background gives way at once, and is taken up again later. */
  giveWay(): void;
  /** Leaves whatever is being computed. */
  halt(): void;
  /** What computing this plan found besides its answer. */
  found(plan: Plan): readonly Problem[];
  stop(): void;
  resume(): void;
  stopTornado(): void;
  startTornado(): void;
}

interface Holder {
  readonly state: NotebookState;
  set(change: Partial<NotebookState>): void;
}

/** Futures behind the early answer: one block of draws. */
export const firstFutures = 1024;

/** Ms after which a computation's progress is told; below, telling it would only flicker. */
const tellAfter = 200;

/** Ms that tables and charts wait for the full answer before they show the early one. */
const detailAfter = 300;

/** Ms without an edit before the re-runs of the tornado take a processor for themselves. */
const tornadoAfter = 500;

/** @param known  A full answer that is known from the beginning. */
export function createAnswering(holder: Holder, startRunner: StartRunner, known?: Forecast): Answering {
  const { set } = holder;
  const cache = createAnswerCache(24);
  if (known !== undefined) cache.put(known.plan.sha256, { full: known });
  const forecasts = startRunner("forecast", onForecast);
  const tornadoes = startRunner("tornado", onTornado);
  let run = 0;
  let plan: Plan | undefined;
  /** What the forecast worker is at; of the current plan, or of one foreseen. */
  let running: Plan | undefined;
  let since = 0;
  let tornadoTimer: ReturnType<typeof setTimeout> | undefined;
  let detailTimer: ReturnType<typeof setTimeout> | undefined;

  const isFull = (): boolean =>
    holder.state.answer?.stage === "full" && holder.state.answer.plan === plan?.sha256;

  function launch(next: Plan): void {
    run++;
    running = next;
    forecasts.run({ kind: "forecast", run, plan: next, first: firstFutures });
  }

  function leave(): void {
    if (running !== undefined) forecasts.stop();
    running = undefined;
  }

  function begin(next: Plan): void {
    const { sha256 } = next;
    if (plan?.sha256 === sha256 && (isFull() || running?.sha256 === sha256)) return;
    const another = plan !== undefined && !sharesWork(plan, next);
    plan = next;
    clearTimeout(tornadoTimer);
    clearTimeout(detailTimer);
    tornadoes.stop();
    const { answer, previous, tornado } = holder.state;
    const known = cache.get(sha256);
    const settled = answer?.stage === "full" && answer.plan !== sha256 ? answer.forecast : previous;
    const change = {
      current: sha256,
      // Of another plan: that one has not moved to this.
      previous: another ? undefined : settled,
      progress: undefined,
      stopped: false,
      failure: undefined,
      tornado: without(tornado, "progress"),
    };
    if (known?.full !== undefined) {
      leave();
      settle(known.full, change);
      return;
    }
    since = performance.now();
    if (running?.sha256 !== sha256) launch(next);
    set({ ...change, computing: true });
    if (known?.first !== undefined) showFirst(known.first);
  }

  function showFirst(forecast: Forecast): void {
    const sha256 = forecast.plan.sha256;
    set({ answer: { forecast, stage: "first", plan: sha256 } });
    clearTimeout(detailTimer);
    detailTimer = setTimeout(() => {
      const { answer } = holder.state;
      if (answer?.stage === "first" && answer.forecast === forecast) set({ detail: forecast });
    }, detailAfter);
  }

  function settle(forecast: Forecast, change: Partial<NotebookState>): void {
    const sha256 = plan?.sha256 ?? "";
    clearTimeout(detailTimer);
    const { stopped } = holder.state.tornado;
    const known = forecast.tornado === undefined ? {} : { tornado: { forecast, plan: sha256, stopped } };
    set({
      ...change,
      answer: { forecast, stage: "full", plan: sha256 },
      detail: forecast,
      computing: false,
      progress: undefined,
      ...known,
    });
    if (forecast.tornado === undefined && !stopped) tornadoSoon();
  }

  function tornadoSoon(): void {
    clearTimeout(tornadoTimer);
    tornadoTimer = setTimeout(startTornado, tornadoAfter);
  }

  function onForecast(message: Reply | Unasked): void {
    if (message.kind === "unasked") {
      takeUnasked(message.forecast);
      return;
    }
    const of = running;
    if (of === undefined) return;
    const { sha256 } = of;
    const isShown = sha256 === plan?.sha256;
    switch (message.kind) {
      case "progress":
        if (isShown && performance.now() - since > tellAfter)
          set({ progress: { stage: message.stage, done: message.done, total: message.total } });
        return;
      case "forecast":
        cache.put(sha256, { [message.stage]: message.forecast });
        if (!isShown) return;
        if (message.stage === "full") settle(message.forecast, {});
        else showFirst(message.forecast);
        return;
      case "done":
        running = undefined;
        if (message.problems.length > 0) cache.put(sha256, { problems: message.problems });
        if (isShown && (holder.state.computing || message.problems.length > 0))
          set({
            computing: false,
            progress: undefined,
            problems: merged(holder.state.problems, message.problems),
          });
        return;
      case "failed":
        running = undefined;
        if (isShown)
          set({ computing: false, progress: undefined, failure: `The computation failed: ${message.words}` });
    }
  }

  /** The worker was told of a plan before this page was: its early answer is shown, or kept until the plan is known here. */
  function takeUnasked(forecast: Forecast): void {
    const { sha256 } = forecast.plan;
    if (cache.get(sha256) !== undefined) return;
    cache.put(sha256, { first: forecast });
    if (plan?.sha256 === sha256) showFirst(forecast);
  }

  function startTornado(): void {
    clearTimeout(tornadoTimer);
    const { answer, tornado } = holder.state;
    if (!isFull() || answer === undefined || plan === undefined) {
      set({ tornado: { ...tornado, stopped: false } });
      return;
    }
    run++;
    set({ tornado: { ...tornado, stopped: false, progress: { stage: "tornado", done: 0, total: 0 } } });
    const { seed, design, iterations, committed } = answer.forecast;
    tornadoes.run({ kind: "tornado", run, plan, from: { seed, design, iterations, committed } });
  }

  function onTornado(message: Reply | Unasked): void {
    const { answer, tornado } = holder.state;
    switch (message.kind) {
      case "begun":
        return;
      case "progress":
        set({ tornado: { ...tornado, progress: message } });
        return;
      case "tornado": {
        if (answer === undefined || !isFull()) return;
        const forecast = { ...answer.forecast, tornado: message.bars };
        cache.put(answer.plan, { full: forecast });
        set({ tornado: { forecast, plan: answer.plan, stopped: false } });
        return;
      }
      default:
        if (tornado.progress !== undefined) set({ tornado: without(tornado, "progress") });
    }
  }

  return {
    begin,
    foresee(next) {
      // What is shown comes first; and what is known, or under way, need not be asked for.
      if (holder.state.computing || running?.sha256 === next.sha256) return;
      if (cache.get(next.sha256)?.full !== undefined) return;
      launch(next);
    },
    giveWay() {
      const { tornado } = holder.state;
      clearTimeout(tornadoTimer);
      if (tornado.progress !== undefined) tornadoes.stop();
      // An entry that is given up leaves the tornado to be worked out after all.
      if (isFull() && tornado.plan !== plan?.sha256 && !tornado.stopped)
        tornadoTimer = setTimeout(startTornado, 4 * tornadoAfter);
    },
    halt() {
      clearTimeout(tornadoTimer);
      clearTimeout(detailTimer);
      leave();
      tornadoes.stop();
      const { tornado } = holder.state;
      set({
        computing: false,
        progress: undefined,
        stopped: false,
        failure: undefined,
        tornado: without(tornado, "progress"),
      });
    },
    found: (of) => cache.get(of.sha256)?.problems ?? [],
    stop() {
      leave();
      clearTimeout(detailTimer);
      const { answer } = holder.state;
      // What there is, is shown everywhere.
      const detail = answer?.plan === plan?.sha256 ? { detail: answer?.forecast } : {};
      set({ ...detail, computing: false, progress: undefined, stopped: !isFull() });
    },
    resume() {
      if (plan === undefined) return;
      since = performance.now();
      launch(plan);
      // At once, as it was asked for: the button to stop it stands where the one to start it stood.
      const progress = { stage: "full" as const, done: 0, total: 0 };
      set({ computing: true, stopped: false, failure: undefined, progress });
    },
    stopTornado() {
      clearTimeout(tornadoTimer);
      tornadoes.stop();
      set({ tornado: { ...without(holder.state.tornado, "progress"), stopped: true } });
    },
    startTornado,
  };
}

/** What reading found, and what computing found besides. */
export function merged(read: readonly Problem[], computed: readonly Problem[]): readonly Problem[] {
  const known = new Set(read.map((problem) => `${problem.code} ${problem.path}`));
  const more = computed.filter((problem) => !known.has(`${problem.code} ${problem.path}`));
  return more.length === 0 ? read : [...read, ...more];
}

function without<T extends object, K extends keyof T>(object: T, key: K): Omit<T, K> {
  const { [key]: _left, ...rest } = object;
  return rest;
}

import type { Forecast, Plan, Problem } from "@leeway/core";
import { forecastInSlices } from "./forecastInSlices.ts";
import type { Help } from "./help.ts";
import type { HeadStart, Leave, Reply, Request, Unasked } from "./messages.ts";

/** At most this many progress messages a second: more would cost the page more than they tell. */
const progressPerSecond = 20;

/** Plans asked for that are remembered, so that none is taken for one still to come. */
const remembered = 64;

type ForecastRequest = Extract<Request, { kind: "forecast" }>;
type Outcome = { forecast?: Forecast; problems: Problem[] };

/** Computes a plan on several threads; rejects when the signal is given. */
export type OnThreads = (
  plan: Plan,
  signal: AbortSignal,
  onProgress: (done: number, total: number) => void,
) => Promise<Outcome>;

/** What the desk needs of its thread. */
export interface DeskTools {
  post: (reply: Reply | Unasked) => void;
  /** Resolves after messages that have arrived meanwhile were taken. */
  breathe: () => Promise<void>;
  /** Chosen for a plan large enough to pay for threads; undefined: it is not. */
  onThreads: (plan: Plan) => OnThreads | undefined;
  /** Somebody who helps, where there is a processor for them. */
  help: () => Help | undefined;
}

/**
 * Computes forecasts, the newest request first: it listens while it works, and leaves an older run between two
 * slices. So the thread stays, warm, where ending it would cost the next answer more than the simulation does.
 * A plan may come ahead of its request, from who read it.
 */
export function forecastDesk({
  post,
  breathe,
  onThreads,
  help,
}: DeskTools): (message: Request | Leave | HeadStart) => void {
  let wanted = 0;
  let abort = new AbortController();
  /** What is computed, or was computed last. */
  let latest: Work | undefined;
  /** Hashes of the plans that were asked for last. */
  let asked: readonly string[] = [];

  async function compute(work: Work, turn: number): Promise<void> {
    const { plan, first, say } = work;
    const { signal } = abort;
    let told = 0;
    const progress = (done: number, total: number): void => {
      const now = performance.now();
      if (now - told < 1000 / progressPerSecond && done < total) return;
      told = now;
      say({ kind: "progress", stage: "full", done, total });
    };
    const left = async (): Promise<boolean> => {
      await breathe();
      return turn !== wanted;
    };
    const early = (forecast: Forecast): void => say({ kind: "forecast", stage: "first", forecast });
    const threads = onThreads(plan);
    let outcome: Outcome | undefined;
    if (threads === undefined) {
      outcome = await forecastInSlices(plan, { first, early, progress, left, help: help() });
    } else {
      const answered = await forecastInSlices(
        { ...plan, iterations: first },
        { first, early, progress: () => {}, left },
      );
      if (answered?.forecast === undefined) outcome = answered;
      else {
        early(answered.forecast);
        outcome = await threads(plan, signal, progress);
      }
    }
    if (outcome === undefined || turn !== wanted) return;
    const { forecast, problems } = outcome;
    if (forecast !== undefined) say({ kind: "forecast", stage: "full", forecast });
    say({ kind: "done", problems });
  }

  return (message) => {
    if (message.kind === "ahead") {
      // It took longer than the request: that stands, and what was asked for since.
      if (asked.includes(message.plan.sha256)) return;
    } else if (message.kind === "forecast") {
      asked = [message.plan.sha256, ...asked].slice(0, remembered);
      if (latest !== undefined && latest.run === undefined && latest.plan.sha256 === message.plan.sha256) {
        latest.adopt(message.run);
        return;
      }
    }
    const turn = ++wanted;
    abort.abort();
    abort = new AbortController();
    latest = undefined;
    if (message.kind !== "forecast" && message.kind !== "ahead") return;
    const work = newWork(message, post);
    latest = work;
    compute(work, turn).catch((error: unknown) => {
      if (turn !== wanted) return;
      work.say({ kind: "failed", words: error instanceof Error ? error.message : String(error) });
    });
  };
}

/** A plan being computed: for a request, or ahead of one that may come. */
interface Work {
  readonly plan: Plan;
  readonly first: number;
  /** The request it answers; undefined as long as nobody asked. */
  readonly run: number | undefined;
  say(reply: Said): void;
  /** It was asked for: what there is to say so far is said. */
  adopt(run: number): void;
}
type Said = Reply extends infer R ? (R extends Reply ? Omit<R, "run"> : never) : never;

function newWork(message: ForecastRequest | HeadStart, post: DeskTools["post"]): Work {
  let run: number | undefined;
  const kept: Said[] = [];
  const work: Work = {
    plan: message.plan,
    first: message.first,
    get run() {
      return run;
    },
    say(reply) {
      if (run !== undefined) post({ ...reply, run });
      // The page is busy with the edit that asks for it: said now, it need not be asked for first.
      else if (reply.kind === "forecast" && reply.stage === "first")
        post({ kind: "unasked", forecast: reply.forecast });
      else kept.push(reply);
    },
    adopt(by) {
      run = by;
      post({ kind: "begun", run });
      for (const reply of kept.splice(0)) post({ ...reply, run });
    },
  };
  if (message.kind === "forecast") work.adopt(message.run);
  return work;
}

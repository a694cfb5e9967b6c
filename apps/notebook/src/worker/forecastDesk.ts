import type { Forecast, Plan, Problem } from "@leeway/core";
import { forecastInSlices } from "./forecastInSlices.ts";
import type { Help } from "./help.ts";
import type { Leave, Reply, Request } from "./messages.ts";

/** At most this many progress messages a second: more would cost the page more than they tell. */
const progressPerSecond = 20;

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
  post: (reply: Reply) => void;
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
 */
export function forecastDesk({
  post,
  breathe,
  onThreads,
  help,
}: DeskTools): (message: Request | Leave) => void {
  let wanted = 0;
  let abort = new AbortController();

  async function compute({ plan, run, first }: ForecastRequest, turn: number): Promise<void> {
    const { signal } = abort;
    let told = 0;
    const progress = (done: number, total: number): void => {
      const now = performance.now();
      if (now - told < 1000 / progressPerSecond && done < total) return;
      told = now;
      post({ kind: "progress", run, stage: "full", done, total });
    };
    const left = async (): Promise<boolean> => {
      await breathe();
      return turn !== wanted;
    };
    const early = (forecast: Forecast): void => post({ kind: "forecast", run, stage: "first", forecast });
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
    if (forecast !== undefined) post({ kind: "forecast", run, stage: "full", forecast });
    post({ kind: "done", run, problems });
  }

  return (message) => {
    const turn = ++wanted;
    abort.abort();
    abort = new AbortController();
    if (message.kind !== "forecast") return;
    post({ kind: "begun", run: message.run });
    compute(message, turn).catch((error: unknown) => {
      if (turn !== wanted) return;
      const words = error instanceof Error ? error.message : String(error);
      post({ kind: "failed", run: message.run, words });
    });
  };
}

import { workAt } from "../calendar/workCalendar.ts";
import { tornado } from "../explain/tornado.ts";
import { applyScenario } from "../plan/applyScenario.ts";
import type { Problem } from "../plan/problem.ts";
import type { Plan } from "../plan/types.ts";
import type { Design } from "../sampling/design.ts";
import { compile } from "../simulate/compile.ts";
import type { Model } from "../simulate/model.ts";
import { simulate } from "../simulate/simulate.ts";
import { leaveTrials } from "../simulate/trials.ts";
import { summarise } from "./summarise.ts";
import type { Forecast } from "./types.ts";

/** How a plan is lived through: what stands in for the plan's own settings, and which scenario of it. */
export interface ForecastOptions {
  /** Defaults: the plan's own. */
  iterations?: number;
  seed?: string;
  confidence?: number;
  /** Default `latin-hypercube`. */
  design?: Design;
  /** Adds the tornado: two re-runs per uncertain item, same draws. */
  tornado?: boolean;
  /** Ids taken in: unadopted responses. */
  with?: readonly string[];
  /** Ids left out: risks, assumptions, optional scope items, adopted responses. */
  without?: readonly string[];
  /** Phases the cost by month even when the plan names no funds. */
  months?: boolean;
  /**
   * Doubles the iterations until the 95 % limits of the committed finish are at most this many working days
   * apart, or a million iterations are reached.
   */
  withinDays?: number;
  onProgress?: (done: number, total: number) => void;
  /** A clock in seconds, handed in by an app that wants `timing`. */
  clock?: () => number;
}

/** The forecast, or the problems for which there is none; warnings may stand beside a forecast. */
export interface ForecastResult {
  forecast?: Forecast;
  problems: Problem[];
  timing?: { compile: number; simulate: number; summarise: number };
}

/** Plan in, forecast out: scenario, compile, simulate, summarise. Problems are values; nothing is thrown. */
export function forecast(plan: Plan, options: ForecastOptions = {}): ForecastResult {
  const clock = options.clock ?? (() => 0);
  const scenario = applyScenario(plan, options);
  if (scenario.problems.length > 0) return { problems: scenario.problems };
  const t0 = clock();
  const model = compile(scenario.plan);
  const t1 = clock();
  let run = simulate(model, options);
  let t2 = clock();
  if (run.trials === undefined || run.asWritten === undefined) return { problems: run.problems };
  let result = summarise(model, run.trials, run.asWritten, options);
  for (let n = result.iterations * 2; n <= 1_000_000 && tooWide(model, result, options.withinDays); n *= 2) {
    leaveTrials(run.trials);
    run = simulate(model, { ...options, iterations: n });
    t2 = clock();
    if (run.trials === undefined || run.asWritten === undefined) return { problems: run.problems };
    result = summarise(model, run.trials, run.asWritten, options);
  }
  const t3 = clock();
  if (options.tornado === true)
    result.tornado = tornado(model, run.trials, run.asWritten, result.committed, options.onProgress);
  leaveTrials(run.trials);
  return {
    forecast: result,
    problems: run.problems,
    ...(options.clock === undefined
      ? {}
      : { timing: { compile: t1 - t0, simulate: t2 - t1, summarise: t3 - t2 } }),
  };
}

/** Whether the limits of the committed finish are further apart, in working days, than asked for. */
export function tooWide(model: Model, result: Forecast, withinDays: number | undefined): boolean {
  if (withinDays === undefined) return false;
  const row = result.finish.percentiles.find((entry) => entry.p === result.committed.confidence);
  if (row === undefined) return false;
  return workAt(model.planCalendar, row.high) - workAt(model.planCalendar, row.low) > withinDays;
}

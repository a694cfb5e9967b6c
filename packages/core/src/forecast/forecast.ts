import { tornado } from "../explain/tornado.ts";
import { applyScenario } from "../plan/applyScenario.ts";
import type { Problem } from "../plan/problem.ts";
import type { Plan } from "../plan/types.ts";
import type { Design } from "../sampling/design.ts";
import { compile } from "../simulate/compile.ts";
import { simulate } from "../simulate/simulate.ts";
import { summarise } from "./summarise.ts";
import type { Forecast } from "./types.ts";

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
  onProgress?: (done: number, total: number) => void;
  /** A clock in seconds, handed in by an app that wants `timing`. */
  clock?: () => number;
}

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
  const { trials, asWritten, problems } = simulate(model, options);
  const t2 = clock();
  if (trials === undefined || asWritten === undefined) return { problems };
  const result = summarise(model, trials, asWritten, options);
  const t3 = clock();
  if (options.tornado === true)
    result.tornado = tornado(model, trials, asWritten, result.committed, options.onProgress);
  return {
    forecast: result,
    problems,
    ...(options.clock === undefined
      ? {}
      : { timing: { compile: t1 - t0, simulate: t2 - t1, summarise: t3 - t2 } }),
  };
}

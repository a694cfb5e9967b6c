import {
  type ContingencyLeft,
  contingencyLeft,
  evaluateTriggers,
  type Forecast,
  type Plan,
  type Problem,
  signedHere,
  type TriggersNow,
} from "@leeway/core";
import type { EngineOptions } from "../call/engineOptions.ts";
import { computeForecast } from "../compute/computeForecast.ts";

/** Where a plan stands: its forecast, what is left of its contingency, its return triggers. */
export interface Standing {
  plan: Plan;
  forecast: Forecast;
  left: ContingencyLeft | undefined;
  triggers: TriggersNow;
}
export interface StandingJob {
  text: string;
  plan: Plan;
  options: EngineOptions;
  workers?: number | undefined;
  /** The version that was signed, where it was kept: what was agreed is read from it. */
  signed?: Plan | undefined;
  /** The day of today: whether conditions of an approval have lapsed. */
  today?: string | undefined;
}

/** All of one run, so that no two figures can disagree. `standing` is absent when a problem is an error. */
export async function computeStanding(
  job: StandingJob,
): Promise<{ standing?: Standing; problems: readonly Problem[] }> {
  const { text, plan, options, workers, today } = job;
  // Without a kept version: what an approval covers is this plan.
  const signed = job.signed ?? signedHere(plan);
  const result = await computeForecast({ text, options, ...(workers === undefined ? {} : { workers }) });
  // What is wrong with the plan itself was said when it was read.
  const problems = result.problems.filter(({ line }) => line === undefined);
  const { forecast } = result;
  if (forecast === undefined) return { problems: result.problems };
  const { left } = contingencyLeft(plan, {
    ...options,
    ...(signed === undefined ? {} : { signed }),
    ahead: false,
    settled: false,
  });
  const triggers = evaluateTriggers(plan, forecast, left, today);
  return { standing: { plan, forecast, left, triggers }, problems };
}

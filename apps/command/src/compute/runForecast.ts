import { type Forecast, type ForecastOptions, forecast, type Problem, readPlan } from "@leeway/core";
import { memoryProblem } from "./memoryProblem.ts";

/** Seconds spent in each step. */
export interface Timing {
  read: number;
  compile: number;
  simulate: number;
  summarise: number;
}
export interface ForecastJob {
  text: string;
  options: ForecastOptions;
}
/** `forecast` is absent when a problem is an error. Plain data: it may cross to another thread. */
export interface ForecastResult {
  forecast?: Forecast;
  problems: Problem[];
  timing: Timing;
}

const seconds = () => performance.now() / 1000;

/** Plan text in, forecast out. The clock is handed to the engine, which has none. */
export function runForecast(job: ForecastJob, onProgress?: ForecastOptions["onProgress"]): ForecastResult {
  const begun = seconds();
  const { plan, problems } = readPlan(job.text);
  const timing: Timing = { read: seconds() - begun, compile: 0, simulate: 0, summarise: 0 };
  if (plan === undefined) return { problems, timing };
  const tooLarge = memoryProblem(plan.tasks.length, job.options.iterations ?? plan.iterations);
  if (tooLarge !== undefined) return { problems: [...problems, tooLarge], timing };
  const options = { ...job.options, clock: seconds, ...(onProgress === undefined ? {} : { onProgress }) };
  const result = forecast(plan, options);
  return {
    ...(result.forecast === undefined ? {} : { forecast: result.forecast }),
    problems: [...problems, ...result.problems],
    timing: { ...timing, ...result.timing },
  };
}

import {
  compile,
  type Forecast,
  type ForecastOptions,
  forecast,
  type Model,
  type Plan,
  planFromData,
  type SimulateOptions,
  type Simulation,
  simulate,
  type Trials,
} from "@leeway/core";

/** The plan of a document, which has to be correct. */
export function planOfDocument(document: unknown): Plan {
  const { plan, problems } = planFromData(document);
  if (plan === undefined) throw new Error(`not a plan: ${JSON.stringify(problems.slice(0, 3))}`);
  return plan;
}

/** The forecast of a document; throws with the problems where there is none. */
export function forecastOf(document: unknown, options: ForecastOptions = {}): Forecast {
  const result = forecast(planOfDocument(document), options);
  if (result.forecast === undefined) throw new Error(`no forecast: ${JSON.stringify(result.problems)}`);
  return result.forecast;
}

export interface Run {
  model: Model;
  trials: Trials;
  asWritten: NonNullable<Simulation["asWritten"]>;
}

/** Model and trials of a document; undefined where a moment lies beyond the calendars' end. */
export function runOf(document: unknown, options: SimulateOptions = {}): Run | undefined {
  const model = compile(planOfDocument(document));
  const { trials, asWritten } = simulate(model, options);
  return trials === undefined || asWritten === undefined ? undefined : { model, trials, asWritten };
}

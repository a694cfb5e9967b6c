import {
  compile,
  type Forecast,
  type ForecastOptions,
  forecast,
  type Model,
  type Plan,
  planFromData,
  simulate,
  type Trials,
} from "../../../packages/core/src/index.ts";

/** One seed for every reference case, so that a case that passes keeps passing. */
export const seed = "reference";

/** The plan of a document that is expected to be free of errors; says what is wrong where it is not. */
export function planFrom(document: unknown): Plan {
  const { plan, problems } = planFromData(document);
  if (plan === undefined) throw new Error(JSON.stringify(problems, null, 2));
  return plan;
}

/** Document in, forecast out: the way every reader of the library goes. */
export function forecastOf(document: unknown, options: ForecastOptions = {}): Forecast {
  const result = forecast(planFrom(document), { seed, ...options });
  if (result.forecast === undefined) throw new Error(JSON.stringify(result.problems, null, 2));
  return result.forecast;
}

/** The iterations themselves, where a case asks for more than a forecast reports. */
export function trialsOf(document: unknown, options: ForecastOptions = {}): { model: Model; trials: Trials } {
  const model = compile(planFrom(document));
  const { trials, problems } = simulate(model, { seed, ...options });
  if (trials === undefined) throw new Error(JSON.stringify(problems, null, 2));
  return { model, trials };
}

/** The forecast's percentile `p` of the finish in days, or an error where it is not reported. */
export function finishAt(result: Forecast, p: number): number {
  const found = result.finish.percentiles.find((entry) => Math.abs(entry.p - p) < 1e-12);
  if (found === undefined) throw new Error(`no percentile ${p}`);
  return found.day;
}

/** The forecast's percentile `p` of cost. */
export function costAt(result: Forecast, p: number): number {
  const found = result.cost.percentiles.find((entry) => Math.abs(entry.p - p) < 1e-12);
  if (found === undefined) throw new Error(`no percentile ${p}`);
  return found.value;
}

/** Date of the day that ends `days` days after 2027-03-01 begins: the models' start. */
export function dateAfter(days: number): string {
  return new Date(Date.UTC(2027, 2, 1) + (days - 1) * 86_400_000).toISOString().slice(0, 10);
}

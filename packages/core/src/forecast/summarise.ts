import { isoDate } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import { workAt } from "../calendar/workCalendar.ts";
import type { AsWritten } from "../simulate/asWritten.ts";
import type { Model } from "../simulate/model.ts";
import type { Trials } from "../simulate/trials.ts";
import { version } from "../version.ts";
import { summariseDrivers } from "./drivers.ts";
import { meanAndSd } from "./moments.ts";
import { limitRanks, rankOf } from "./ranks.ts";
import { taskRanks } from "./taskRanks.ts";
import { summariseIntervals, summariseTasks } from "./tasks.ts";
import type { CostPercentile, Curve, FinishPercentile, Forecast } from "./types.ts";
import { forecastWarnings } from "./warnings.ts";
import { summariseWorth } from "./worth.ts";

const standardLevels = [0.05, 0.1, 0.2, 0.5, 0.8, 0.9, 0.95];

/** Probabilities of the curves that charts draw: every half per cent. */
const curveLevels = Array.from({ length: 199 }, (_, k) => (k + 1) / 200);

/**
 * Reads the forecast off the trials. `confidence` defaults to the plan's; `ranks` of all tasks (`taskRanks`) may be given
 * when others have read them. Adds no randomness: the same trials
 * give the same object, key order included. Cost: sorts of two arrays of n, plus 6 n steps per task.
 */
export function summarise(
  model: Model,
  trials: Trials,
  asWritten: AsWritten,
  options: { confidence?: number; ranks?: Float64Array } = {},
): Forecast {
  return beginSummary(model, trials, asWritten, options.confidence)(options.ranks);
}

/**
 * `summarise` in two steps: all that needs no `ranks`, then, called once, the rest. So the first step can be taken while
 * others read them.
 */
export function beginSummary(
  model: Model,
  trials: Trials,
  asWritten: AsWritten,
  confidence = model.confidence,
): (ranks?: Float64Array) => Forecast {
  const { plan } = model;
  const n = trials.iterations;
  const dateOf = (day: number) => isoDate(model.startDay + day);
  const levels = [...new Set([...standardLevels, confidence])].sort((a, b) => a - b);

  const finishes = trials.finish.slice().sort();
  const days = trials.finishDay.slice().sort();
  const costs = trials.cost.slice().sort();
  const at = <T extends Float64Array | Int32Array>(sorted: T, rank: number) => sorted[rank - 1] as number;

  const finishPercentiles = levels.map((p): FinishPercentile => {
    const rank = rankOf(p, n);
    const limits = limitRanks(p, n);
    const day = at(finishes, rank);
    return {
      p,
      date: dateOf(at(days, rank)),
      day,
      workingDays: workAt(model.planCalendar, day),
      low: at(finishes, limits.low),
      high: at(finishes, limits.high),
      lowDate: dateOf(at(days, limits.low)),
      highDate: dateOf(at(days, limits.high)),
    };
  });
  const costPercentiles = levels.map((p): CostPercentile => {
    const limits = limitRanks(p, n);
    return { p, value: at(costs, rankOf(p, n)), low: at(costs, limits.low), high: at(costs, limits.high) };
  });
  const committedFinish = finishPercentiles.find((entry) => entry.p === confidence) as FinishPercentile;
  const committedCost = costPercentiles.find((entry) => entry.p === confidence) as CostPercentile;
  const both = countBoth(trials, at(days, rankOf(confidence, n)), committedCost.value) / n;
  const chance = chances(model, trials);
  const curve = (sorted: Float64Array): Curve => ({
    p: curveLevels,
    at: curveLevels.map((p) => at(sorted, rankOf(p, n))),
  });

  const forecast: Forecast = {
    plan: { title: plan.title, sha256: plan.sha256, currency: plan.currency, start: plan.start },
    seed: trials.seed,
    iterations: n,
    version,
    design: trials.design,
    asWritten: {
      finish: dateOf(asWritten.finishDay),
      day: asWritten.finish,
      workingDays: asWritten.workingDays,
      cost: asWritten.cost,
    },
    committed: {
      confidence,
      date: committedFinish.date,
      lowDate: committedFinish.lowDate,
      highDate: committedFinish.highDate,
      day: committedFinish.day,
      workingDays: committedFinish.workingDays,
      cost: committedCost.value,
      costLow: committedCost.low,
      costHigh: committedCost.high,
      both,
    },
    contingency: {
      workingDays: committedFinish.workingDays - asWritten.workingDays,
      calendarDays: committedFinish.day - asWritten.finish,
      money: committedCost.value - asWritten.cost,
    },
    finish: {
      ...meanAndSd(trials.finish),
      percentiles: finishPercentiles,
      curve: curve(finishes),
      asWrittenChance: shareUpTo(finishes, asWritten.finish),
    },
    cost: {
      ...meanAndSd(trials.cost),
      percentiles: costPercentiles,
      curve: curve(costs),
      asWrittenChance: shareUpTo(costs, asWritten.cost),
    },
    chance,
    asked: {
      ...(plan.commitment.finishBy === undefined
        ? {}
        : { finishBy: plan.commitment.finishBy, finishByDay: (model.finishByDay ?? 0) + 1 }),
      ...(model.budget === undefined ? {} : { budget: model.budget }),
    },
    tasks: [],
    intervals: summariseIntervals(model, trials),
    drivers: summariseDrivers(model, trials, asWritten),
    ...limitedPeople(model, trials, confidence, committedFinish.workingDays, committedCost.value),
    ...summariseWorth(model, trials, confidence),
    warnings: forecastWarnings(model, trials, asWritten),
  };
  return (ranks = taskRanks({ model, asWritten, trials }, confidence, 0, model.tasks.length)) => {
    forecast.tasks = summariseTasks(model, trials, asWritten, ranks);
    return forecast;
  };
}

/** Share of the sorted values at or below x (equal within the tolerance). */
function shareUpTo(sorted: Float64Array, x: number): number {
  let low = 0;
  let high = sorted.length;
  const limit = x + tolerance * Math.max(1, Math.abs(x));
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) <= limit) low = middle + 1;
    else high = middle;
  }
  return low / sorted.length;
}

function countBoth(trials: Trials, day: number, sum: number): number {
  const { finishDay, cost } = trials;
  let count = 0;
  for (let k = 0; k < trials.iterations; k++) {
    if ((finishDay[k] as number) <= day && (cost[k] as number) <= sum) count++;
  }
  return count;
}

function chances(model: Model, trials: Trials): Forecast["chance"] {
  const n = trials.iterations;
  const day = model.finishByDay;
  const sum =
    model.budget === undefined ? undefined : model.budget + tolerance * Math.max(1, Math.abs(model.budget));
  let onTime = 0;
  let inBudget = 0;
  let both = 0;
  for (let k = 0; k < n; k++) {
    const timely = day === undefined || (trials.finishDay[k] as number) <= day;
    const paid = sum === undefined || (trials.cost[k] as number) <= sum;
    if (timely) onTime++;
    if (paid) inBudget++;
    if (timely && paid) both++;
  }
  return {
    ...(day === undefined ? {} : { finishBy: onTime / n }),
    ...(sum === undefined ? {} : { budget: inBudget / n }),
    ...(day === undefined || sum === undefined ? {} : { both: both / n }),
  };
}

/** What limited people cost at the committed level: with them less without, same draws. */
function limitedPeople(
  model: Model,
  trials: Trials,
  confidence: number,
  workingDays: number,
  money: number,
): Pick<Forecast, "people"> {
  if (trials.unlimited === undefined) return {};
  const rank = rankOf(confidence, trials.iterations);
  const free = trials.unlimited.finish.slice().sort()[rank - 1] as number;
  const freeCost = trials.unlimited.cost.slice().sort()[rank - 1] as number;
  return { people: { workingDays: workingDays - workAt(model.planCalendar, free), money: money - freeCost } };
}

import { isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import type { RankSelector } from "../../forecast/rankSelector.ts";
import { rankOf } from "../../forecast/ranks.ts";
import type { Model } from "../../simulate/model.ts";
import type { Outcome } from "../stage.ts";
import type { Outlook } from "../types.ts";

/** What an outcome is measured against. */
export interface Targets {
  confidence: number;
  /** Days since start of the date asked for, and the sum. */
  finishByDay?: number;
  budget?: number;
}

/** What is kept of an outcome. */
export interface Gauge {
  /** At the confidence: the finish, the day its date falls on, working days, the sum. */
  day: number;
  dateDay: number;
  workingDays: number;
  cost: number;
  /** Iterations that meet the date, the sum, and both; all of them where nothing is asked. */
  onTime: number;
  inBudget: number;
  both: number;
  meanDay: number;
  meanCost: number;
  meanLateness: number | undefined;
  /** The mean burden of each of `batches` stretches of the iterations, in order. */
  burdens: number[];
}

/** Stretches that a standard error of a difference is read from; fewer where there are fewer iterations. */
export const batches = 20;

/**
 * Reads a gauge off an outcome, as the forecast reads percentiles, chances and means. Cost: about 8 n steps.
 *
 * @param select  Made by `rankSelector` for at least as many iterations.
 */
export function gaugeOf(outcome: Outcome, model: Model, targets: Targets, select: RankSelector): Gauge {
  const { finish, finishDay, cost, lateness } = outcome;
  const n = finish.length;
  const rank = rankOf(targets.confidence, n);
  const { finishByDay = Number.POSITIVE_INFINITY, budget = Number.POSITIVE_INFINITY } = targets;
  const sum = Number.isFinite(budget) ? budget + tolerance * Math.max(1, Math.abs(budget)) : budget;
  let [onTime, inBudget, both] = [0, 0, 0];
  for (let k = 0; k < n; k++) {
    const timely = (finishDay[k] as number) <= finishByDay;
    const paid = (cost[k] as number) <= sum;
    if (timely) onTime++;
    if (paid) inBudget++;
    if (timely && paid) both++;
  }
  const [day] = select(finish, [rank]) as [number];
  const [money] = select(cost, [rank]) as [number];
  return {
    day,
    dateDay: dayAtRank(finishDay, rank),
    workingDays: workAt(model.planCalendar, day),
    cost: money,
    onTime,
    inBudget,
    both,
    meanDay: mean(finish),
    meanCost: mean(cost),
    meanLateness: lateness === undefined ? undefined : mean(lateness),
    burdens: batchMeans(cost, lateness),
  };
}

/** A gauge as it is reported. */
export function outlookOf(gauge: Gauge, model: Model, targets: Targets, n: number): Outlook {
  const { finishByDay, budget } = targets;
  return {
    date: isoDate(model.startDay + gauge.dateDay),
    day: gauge.day,
    workingDays: gauge.workingDays,
    cost: gauge.cost,
    chance: {
      ...(finishByDay === undefined ? {} : { finishBy: gauge.onTime / n }),
      ...(budget === undefined ? {} : { budget: gauge.inBudget / n }),
      ...(finishByDay === undefined || budget === undefined ? {} : { both: gauge.both / n }),
    },
    mean: {
      day: gauge.meanDay,
      cost: gauge.meanCost,
      ...(gauge.meanLateness === undefined ? {} : { lateness: gauge.meanLateness }),
    },
  };
}

/** What a plan costs its owner on average: the total, and what finishing late costs where that is said. */
export function meanBurden({ meanCost, meanLateness }: Gauge): number {
  return meanCost + (meanLateness ?? 0);
}

function batchMeans(cost: Float64Array, lateness: Float64Array | undefined): number[] {
  const n = cost.length;
  const count = Math.min(batches, n);
  return Array.from({ length: count }, (_, i) => {
    const from = Math.floor((i * n) / count);
    const to = Math.floor(((i + 1) * n) / count);
    let sum = 0;
    for (let k = from; k < to; k++) sum += (cost[k] as number) + (lateness?.[k] ?? 0);
    return sum / (to - from);
  });
}

function mean(values: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < values.length; k++) sum += values[k] as number;
  return sum / values.length;
}

/** The value at a rank by counting: days are whole numbers that lie close together. */
function dayAtRank(days: Int32Array, rank: number): number {
  let low = Number.POSITIVE_INFINITY;
  let high = 0;
  for (let k = 0; k < days.length; k++) {
    const day = days[k] as number;
    if (day < low) low = day;
    if (day > high) high = day;
  }
  const counts = new Uint32Array(high - low + 1);
  for (let k = 0; k < days.length; k++) {
    const at = (days[k] as number) - low;
    counts[at] = (counts[at] as number) + 1;
  }
  let before = 0;
  for (let at = 0; at < counts.length; at++) {
    before += counts[at] as number;
    if (before >= rank) return low + at;
  }
  return high;
}

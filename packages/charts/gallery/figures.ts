import {
  applyScenario,
  type Budget,
  budget,
  compare,
  driftOf,
  drivingPaths,
  explain,
  type Forecast,
  forecast,
  future,
  historyFacts,
  linked,
  type Plan,
  peopleLoad,
  responses,
  whyConfidence,
} from "@leeway/core";
import {
  type ChartOptions,
  confidenceSteps,
  contingencyLeftDays,
  contingencyLeftMoney,
  costCurve,
  driftDates,
  driftSums,
  driversBars,
  type Figure,
  fiftyFutures,
  finishCurve,
  fundsMonths,
  futureBars,
  jointDensity,
  movesDays,
  movesMoney,
  pathBars,
  peopleWeeks,
  planBars,
  responseWorth,
  sharesDays,
  sharesMoney,
  spending,
  tasksAtStake,
  tornadoDays,
  tornadoMoney,
  walkDays,
  walkMoney,
} from "../src/index.ts";

/** A chart of the gallery: its call, and the drawing. */
export interface Shown {
  call: string;
  draw: (options: ChartOptions) => Figure;
}

/**
 * Every chart of one plan, in reading order. Throws when the plan cannot be forecast: an example can.
 *
 * @param run  Fewer iterations than the plan says, for a quick look.
 */
export function figuresOf(plan: Plan, run: { iterations?: number } = {}): Shown[] {
  const answer = given(forecast(plan, { ...run, tornado: true }).forecast);
  const why = given(explain(plan, run).explanation);
  const levels = given(whyConfidence(plan, run).confidence);
  const worth = given(responses(plan, run).responses);
  const paths = given(drivingPaths(plan, run).paths);
  const load = given(peopleLoad(plan, run).people);
  const funds = given(budget(plan, run).budget);
  const one = given(future(plan, { at: levels.confidence }, run).future);
  // What moves when every response is adopted: the plan against itself.
  const adopted = applyScenario(plan, {
    with: worth.responses.filter((each) => !each.adopted).map(({ id }) => id),
  });
  const moved = given(compare(plan, adopted.plan, run).comparison);
  // Kept a month ahead of the start, and at the start with every response adopted.
  const keep = (of: Plan, at: Forecast, date: string) =>
    historyFacts(of, at, undefined, { date, what: "forecast kept" });
  const before = new Date(Date.parse(`${plan.start}T00:00:00Z`) - 30 * 86_400_000).toISOString().slice(0, 10);
  const earlier = linked(keep(plan, answer, before));
  const later = linked(keep(adopted.plan, given(forecast(adopted.plan, run).forecast), plan.start), earlier);
  const drift = given(driftOf([earlier, later]));
  return [
    { call: "finishCurve(forecast)", draw: (options) => finishCurve(answer, options) },
    { call: "fiftyFutures(forecast)", draw: (options) => fiftyFutures(answer, options) },
    { call: "costCurve(forecast)", draw: (options) => costCurve(answer, options) },
    { call: "jointDensity(confidence)", draw: (options) => jointDensity(levels, options) },
    { call: "confidenceSteps(confidence)", draw: (options) => confidenceSteps(levels, options) },
    { call: "walkDays(explanation)", draw: (options) => walkDays(why, options) },
    { call: "walkMoney(explanation)", draw: (options) => walkMoney(why, options) },
    { call: "sharesDays(explanation)", draw: (options) => sharesDays(why, options) },
    { call: "sharesMoney(explanation)", draw: (options) => sharesMoney(why, options) },
    { call: "tornadoDays(forecast)", draw: (options) => tornadoDays(answer, options) },
    { call: "tornadoMoney(forecast)", draw: (options) => tornadoMoney(answer, options) },
    { call: "driversBars(forecast)", draw: (options) => driversBars(answer, options) },
    { call: "responseWorth(responses)", draw: (options) => responseWorth(worth, options) },
    { call: "movesDays(comparison)", draw: (options) => movesDays(moved, options) },
    { call: "movesMoney(comparison)", draw: (options) => movesMoney(moved, options) },
    { call: "driftDates(drift)", draw: (options) => driftDates(drift, options) },
    { call: "driftSums(drift)", draw: (options) => driftSums(drift, options) },
    { call: "pathBars(paths)", draw: (options) => pathBars(paths, options) },
    { call: "tasksAtStake(paths)", draw: (options) => tasksAtStake(paths, options) },
    { call: "peopleWeeks(load)", draw: (options) => peopleWeeks(load, options) },
    { call: "spending(forecast)", draw: (options) => spending(answer, options) },
    { call: "fundsMonths(budget)", draw: (options) => fundsMonths(funds, options) },
    ...leftOf(funds),
    { call: "futureBars(future)", draw: (options) => futureBars(one, options) },
    { call: "planBars(forecast)", draw: (options) => planBars(answer, options) },
  ];
}

function leftOf({ left }: Budget): Shown[] {
  if (left === undefined) return [];
  return [
    { call: "contingencyLeftMoney(left)", draw: (options) => contingencyLeftMoney(left, options) },
    { call: "contingencyLeftDays(left)", draw: (options) => contingencyLeftDays(left, options) },
  ];
}

function given<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("The plan could not be forecast.");
  return value;
}

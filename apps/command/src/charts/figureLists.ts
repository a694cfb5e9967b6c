import {
  confidenceSteps,
  contingencyLeftDays,
  contingencyLeftMoney,
  costCurve,
  driftDates,
  driftSums,
  driversBars,
  fiftyFutures,
  finishCurve,
  forecastSpends,
  fundsMonths,
  futureBars,
  hasSums,
  jointDensity,
  keptSum,
  levelsSpend,
  movesDays,
  movesMoney,
  opinionsBars,
  pathBars,
  peopleWeeks,
  responseWorth,
  scorecardBars,
  sharesDays,
  sharesMoney,
  spending,
  spends,
  tasksAtStake,
  tornadoDays,
  tornadoMoney,
  walkDays,
  walkMoney,
} from "@leeway/charts";
import type {
  Budget,
  Comparison,
  Confidence,
  Drift,
  Explanation,
  Forecast,
  Future,
  Paths,
  PeopleLoad,
  Responses,
  Scorecard,
} from "@leeway/core";
import type { Pooled } from "../text/poolText.ts";
import type { FigureFile } from "./writeFigures.ts";

/** Verbs whose answers are drawn, and the answer of each. */
export interface Drawn {
  forecast: Forecast;
  explain: Explanation;
  compare: Comparison;
  responses: Responses;
  confidence: Confidence;
  paths: Paths;
  future: Future;
  people: PeopleLoad;
  money: Budget;
  history: Drift;
  scorecard: Scorecard;
  /** With the name of a person by id. */
  pool: { pooled: readonly Pooled[]; name: (id: string) => string };
}

/** What `--charts` draws of each verb's answer, in reading order. */
export const figureLists: { [V in keyof Drawn]: (answer: Drawn[V]) => FigureFile[] } = {
  forecast: (forecast) => [
    ["finish-curve", (options) => finishCurve(forecast, options)],
    ["fifty-futures", (options) => fiftyFutures(forecast, options)],
    ...where(forecastSpends(forecast), ["cost-curve", (options) => costCurve(forecast, options)]),
    ["drivers", (options) => driversBars(forecast, options)],
    ...where(forecast.months !== undefined && forecastSpends(forecast), [
      "spending",
      (options) => spending(forecast, options),
    ]),
    ...where(forecast.tornado !== undefined, ["tornado-days", (options) => tornadoDays(forecast, options)]),
    ...where(forecast.tornado !== undefined && forecastSpends(forecast), [
      "tornado-money",
      (options) => tornadoMoney(forecast, options),
    ]),
  ],
  explain: (explanation) => [
    ["shares-days", (options) => sharesDays(explanation, options)],
    ...where(spends(explanation), ["shares-money", (options) => sharesMoney(explanation, options)]),
    ["walk-days", (options) => walkDays(explanation, options)],
    ...where(spends(explanation), ["walk-money", (options) => walkMoney(explanation, options)]),
  ],
  compare: (comparison) => [
    ["moves-days", (options) => movesDays(comparison, options)],
    ...where(hasSums(comparison), ["moves-money", (options) => movesMoney(comparison, options)]),
  ],
  responses: (responses) => [["response-worth", (options) => responseWorth(responses, options)]],
  confidence: (confidence) => [
    ["confidence-steps", (options) => confidenceSteps(confidence, options)],
    ...where(levelsSpend(confidence), ["joint-density", (options) => jointDensity(confidence, options)]),
  ],
  paths: (paths) => [
    ["paths", (options) => pathBars(paths, options)],
    ["tasks-at-stake", (options) => tasksAtStake(paths, options)],
  ],
  future: (future) => [["future", (options) => futureBars(future, options)]],
  people: (load) => [["people-weeks", (options) => peopleWeeks(load, options)]],
  money: (budget) => [
    ...where(budget.months.length > 0 && budget.components.length > 0, [
      "funds-months",
      (options) => fundsMonths(budget, options),
    ]),
    ...leftFigures(budget),
  ],
  history: (drift) => [
    ["drift-dates", (options) => driftDates(drift, options)],
    ...where(
      drift.points.some((point) => keptSum(point) !== undefined),
      ["drift-sums", (options) => driftSums(drift, options)],
    ),
  ],
  scorecard: (card) => [["scorecard", (options) => scorecardBars(card, options)]],
  pool: ({ pooled, name }) =>
    pooled.map(
      ({ task, pooling, unitWords }): FigureFile => [
        `opinions-${task.id}-${pooling.of}`,
        (options) => opinionsBars(pooling, { task: task.name, unitWords, name }, options),
      ],
    ),
};

/** What is drawn only where there is something to draw: a plan without money has no chart of it. */
function where(there: boolean, figure: FigureFile): FigureFile[] {
  return there ? [figure] : [];
}

function leftFigures({ left, components }: Budget): FigureFile[] {
  if (left === undefined) return [];
  return [
    ...where(components.length > 0, [
      "contingency-left-money",
      (options) => contingencyLeftMoney(left, options),
    ]),
    ["contingency-left-days", (options) => contingencyLeftDays(left, options)],
  ];
}

// What draws, apart from the rest: it is large, and the answer comes before the pictures of it.
import {
  type ChartOptions,
  confidenceSteps,
  contingencyLeftDays,
  contingencyLeftMoney,
  costCurve,
  driversBars,
  estimateCurve,
  type Figure,
  fiftyFutures,
  figureSvg,
  finishCurve,
  fundsMonths,
  futureBars,
  jointDensity,
  movesDays,
  movesMoney,
  renderFigure,
  responseWorth,
  sharesDays,
  sharesMoney,
  tornadoDays,
  tornadoMoney,
  walkDays,
  walkMoney,
} from "@leeway/charts";

export const charts = {
  confidenceSteps,
  contingencyLeftDays,
  contingencyLeftMoney,
  costCurve,
  driversBars,
  fiftyFutures,
  finishCurve,
  fundsMonths,
  futureBars,
  jointDensity,
  movesDays,
  movesMoney,
  responseWorth,
  sharesDays,
  sharesMoney,
  tornadoDays,
  tornadoMoney,
  walkDays,
  walkMoney,
};

export type ChartName = keyof typeof charts;
/** What a chart is drawn from. */
export type AnswerOf<N extends ChartName = ChartName> = Parameters<(typeof charts)[N]>[0];

/** Draws a chart by name. The answer must be the one that chart is drawn from. */
export function drawChart<N extends ChartName>(name: N, answer: AnswerOf<N>, options: ChartOptions): Figure {
  return (charts[name] as (answer: AnswerOf<N>, options: ChartOptions) => Figure)(answer, options);
}

export { estimateCurve, figureSvg, renderFigure };

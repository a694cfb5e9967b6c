import type { ContingencyLeft, Cover, Effect } from "@leeway/core";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { limitStep, roundToStep } from "../words/roundToLimits.ts";

/** Contingency in money or in working days: where the figures are, and how they are spoken. */
export interface LeftMeasure {
  cover: Cover | undefined;
  amount: (effect: Effect) => number;
  /** To the digits shown: what is said of two figures is said of these. */
  round: (value: number) => number;
  /** With its unit. */
  say: (value: number) => string;
  /** For a column whose heading has the unit. */
  column: (value: number) => string;
  unit: string;
  /** "sum" or "date". */
  what: string;
}

/** Money to the digits that the limits of the committed sum support, or of the exposure where there is none. */
export function leftMoney({ money, plan, ahead }: ContingencyLeft): LeftMeasure {
  const size = money?.committed ?? ahead[0]?.exposure.money ?? 0;
  const step = money === undefined ? limitStep(size, size, size) : limitStep(size, money.low, money.high);
  const rounded = (value: number) => roundToStep(value, step);
  return {
    cover: money,
    amount: (effect) => effect.money,
    round: rounded,
    say: (value) => formatMoney(rounded(value), plan.currency),
    column: (value) => formatMoney(rounded(value), ""),
    unit: plan.currency,
    what: "sum",
  };
}

/** The working days of contingency, as the chart of what is left reads them. */
export function leftDays({ days }: ContingencyLeft): LeftMeasure {
  return {
    cover: days,
    amount: (effect) => effect.workingDays,
    round: (value) => (Math.abs(value) < 9.95 ? Math.round(10 * value) / 10 : Math.round(value)),
    say: (value) => formatDays(value),
    column: (value) => formatDays(value, ""),
    unit: "working days",
    what: "date",
  };
}

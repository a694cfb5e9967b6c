import {
  formatMoney,
  limitStep,
  roundSignificant,
  roundTogether,
  roundToStep,
  statedSum,
} from "@leeway/charts";
import type { Budget } from "@leeway/core";

/** Sums of one answer, all on the place that the limits of the committed sum support. */
export interface Sums {
  step: number;
  /** With the currency. */
  say: (value: number) => string;
  /** For a column: without the currency. */
  column: (value: number) => string;
  /** Parts for a column, rounded so that they add up to their sum as rounded. */
  together: (values: readonly number[]) => string[];
  /** A sum that the plan states, or adds up from what it states: to the unit, with the currency; and for a column. */
  stated: (value: number) => string;
  statedColumn: (value: number) => string;
  /** A mean or a difference: two significant digits, with the currency. */
  rough: (value: number) => string;
}

export function sumsOf({ total, plan }: Budget): Sums {
  const step = limitStep(total.committed, total.low, total.high);
  const column = (value: number) => formatMoney(roundToStep(value, step), "");
  return {
    step,
    say: (value) => formatMoney(roundToStep(value, step), plan.currency),
    column,
    together: (values) => roundTogether(values, step).map((value) => formatMoney(value, "")),
    stated: (value) => statedSum(value, plan.currency),
    statedColumn: (value) => statedSum(value, ""),
    rough: (value) => formatMoney(roundSignificant(value, 2), plan.currency),
  };
}

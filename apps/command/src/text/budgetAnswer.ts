import { formatPercent } from "@leeway/charts";
import type { Budget } from "@leeway/core";
import { sumsOf } from "./budgetSums.ts";

/** The committed sum, what it is made of, who holds the contingency; the budget's chance; the reserve, apart. */
export function budgetSentences(budget: Budget): { first: string; others: string[] } {
  const { total, contingency, confidence, asked, reserve } = budget;
  const { say, stated } = sumsOf(budget);
  const level = formatPercent(confidence);
  const { holder, releaseRule } = contingency;
  const held = holder === undefined ? "; the plan names no holder" : `, held by ${holder.name}`;
  const made =
    contingency.money > 0
      ? `${stated(total.asWritten)} as written and ${say(contingency.money)} of contingency${held}`
      : `no more than the ${stated(total.asWritten)} as written`;
  return {
    first: `At ${level} the plan costs ${say(total.committed)} at most: ${made}.`,
    others: [
      ...(asked === undefined
        ? []
        : [`The budget of ${stated(asked.budget)} holds in ${formatPercent(asked.chance)} of futures.`]),
      ...(releaseRule === undefined ? [] : [`How contingency is released: ${releaseRule}`]),
      ...(reserve === undefined
        ? []
        : [
            `The sponsor's reserve of ${stated(reserve)} is for what nobody foresaw: it is no contingency and in none of these figures.`,
          ]),
    ],
  };
}

import type { Budget } from "@leeway/core";
import { formatDate } from "../words/formatDate.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { limitStep, roundToStep, roundUpToStep } from "../words/roundToLimits.ts";
import { monthName } from "./monthName.ts";

/** Whether the money released covers every month, the first that it does not, and what would cure it. */
export function fundsFinding(budget: Budget): string {
  const { funds, months, confidence, total, plan } = budget;
  const level = formatPercent(confidence);
  if (months.length === 0) return "The plan has no money by month";
  if (funds === undefined) {
    const step = limitStep(total.committed, total.low, total.high);
    const sum = (value: number) => formatMoney(roundToStep(value, step), "");
    const most = months.reduce((so, one) => (one.spent.split > so.spent.split ? one : so));
    return `${plan.currency} ${sum(most.spent.split)} of ${sum(total.committed)} falls due in ${monthName(most.month)}, the month that takes most`;
  }
  const { firstShort } = funds;
  if (firstShort === undefined) return `Money released covers every month in at least ${level} of futures`;
  const runs = `Money runs short by the end of ${monthName(firstShort.month)}, covered in ${formatPercent(firstShort.chanceCovered)} and not ${level}`;
  return `${runs}: ${fundsCureWords(budget).join(", or ")}`;
}

/** The ways to cover every month at the level: more money, or the same earlier. None where every month is covered. */
export function fundsCureWords({ funds, total, plan }: Budget): string[] {
  if (funds?.more === undefined) return [];
  // Up, so that the sum said does cover.
  const step = limitStep(total.committed, total.low, total.high);
  const sum = formatMoney(roundUpToStep(funds.more.amount, Math.max(1, step)), plan.currency);
  const more = `${sum} more by ${formatDate(funds.more.by)} would do`;
  const [first, ...others] = funds.earlier;
  if (first === undefined || funds.lacking > 0) return [more];
  const days = first.days === 1 ? "1 day" : `${first.days} days`;
  const rest =
    others.length === 0
      ? ""
      : ` and ${others.length === 1 ? "one later release" : `${others.length} later releases`} with it`;
  return [more, `the release of ${formatDate(first.from)} ${days} earlier${rest}`];
}

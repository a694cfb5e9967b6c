import { formatDate, formatPercent, groupDigits } from "@leeway/charts";
import type { Budget, WorthSpread } from "@leeway/core";
import { sumsOf } from "./budgetSums.ts";
import { wrap } from "./page.ts";

/** Benefit against cost, doing nothing, and what delay costs. */
export function worthLines(budget: Budget, width: number): string[][] {
  const { worth, delay } = budget;
  const { rough } = sumsOf(budget);
  const said: string[] = [];
  if (worth !== undefined) {
    const { appraisal, benefitCost, returnRate, doNothing } = worth;
    const { net, payback } = appraisal;
    said.push(
      `Net value over ${appraisal.years} years at ${percents(appraisal.discountRate)}: ${rough(net.p50)} in the middle, ` +
        `${rough(net.p10)} at P10, ${rough(net.p90)} at P90; above nought in ${formatPercent(appraisal.chancePositive)} of futures. Costs are not discounted.`,
      `Benefits per unit of cost: ${range(benefitCost, (value) => groupDigits(value, 2))}; more than 1 in ${formatPercent(benefitCost.chanceAboveOne)}.`,
      returnRate.p50 === undefined
        ? "No rate of return: in most futures no rate would make benefits and cost even."
        : `Yearly rate of return, cost counted at the start: ${range(returnRate, percents)}.`,
      payback.p50 === undefined
        ? `Paid back within those years in ${formatPercent(payback.chance)} of futures.`
        : `Paid back by ${formatDate(payback.p50)} in half of the futures${payback.p80 === undefined ? "" : `, by ${formatDate(payback.p80)} in 80 %`}.`,
      `Doing nothing has a net value of 0 from here; going on has ${rough(doNothing.goingOn)} on average and is worth more in ${formatPercent(doNothing.chanceBetter)}.` +
        (doNothing.spent > 0 ? ` ${rough(doNothing.spent)} are spent either way.` : "") +
        (doNothing.text === undefined ? "" : ` The plan says of doing nothing: ${doNothing.text}`),
    );
  }
  const late: string[] = [];
  const { lateness } = delay;
  if (lateness !== undefined)
    late.push(
      `Late after ${formatDate(lateness.after)}: ${rough(lateness.perWeek)} a week${lateness.once === 0 ? "" : ` and ${rough(lateness.once)} once`}. ` +
        `The chance of that is ${formatPercent(lateness.chanceLate)}; over all futures it is ${groupDigits(lateness.weeksLate, 1)} weeks and ${rough(lateness.expected)}, beside the total and not in it.`,
    );
  if (delay.overheadsPerWeek !== 0)
    late.push(`Each week longer costs ${rough(delay.overheadsPerWeek)} of overheads; they are in the total.`);
  if (delay.benefitsPerWeek !== undefined)
    late.push(
      `Each week that benefits begin later loses ${rough(delay.benefitsPerWeek)} of net value.` +
        (lateness === undefined ? "" : " Lateness may price the same loss: do not add the two."),
    );
  const block = (heading: string, sentences: readonly string[]) =>
    sentences.length === 0
      ? []
      : [[heading, ...sentences.flatMap((one) => wrap(one, width - 2).map((line) => `  ${line}`))]];
  return [...block("Benefit against cost", said), ...block("What delay costs", late)];
}

function percents(rate: number): string {
  return `${groupDigits(100 * rate, 1).replace(/\.0$/, "")} %`;
}

function range({ p10, p50, p90 }: WorthSpread, say: (value: number) => string): string {
  const middle = p50 === undefined ? "not known in the middle" : `${say(p50)} in the middle`;
  return [
    middle,
    ...(p10 === undefined ? [] : [`${say(p10)} at P10`]),
    ...(p90 === undefined ? [] : [`${say(p90)} at P90`]),
  ].join(", ");
}

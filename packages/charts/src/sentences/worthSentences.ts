import type { ResponseEffect, Responses, ResponseWorth } from "@leeway/core";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { quoteName } from "../words/plainName.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { responsesSpend } from "./speaksOfMoney.ts";
import { statedSum } from "./statedSum.ts";

/** The sentence everything else explains: what the response most worth having costs and buys. */
export function worthSentence(answer: Responses): string {
  const { responses, confidence } = answer;
  const open = rankedResponses(answer).filter(({ adopted }) => !adopted);
  if (responses.length === 0) return "The plan names no response to a risk or an assumption.";
  const [best] = open;
  if (best === undefined) return "Every response of the plan is adopted; below is what each of them holds.";
  if (!responsesSpend(answer)) return `${quoteName(best.action)} ${buys(best, formatPercent(confidence))}.`;
  return `${quoteName(best.action)} ${costs(best, answer)}, ${buys(best, formatPercent(confidence))}, ${pays(best)}.`;
}

/** The most worth having first: by net worth, and by days bought where the plan has no money; then by id. */
export function rankedResponses(answer: Responses): ResponseWorth[] {
  const spends = responsesSpend(answer);
  const worth = ({ given }: ResponseWorth) => (spends ? given.netWorth : -given.workingDays);
  return [...answer.responses].sort(
    (a, b) => worth(b) - worth(a) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
  );
}

function costs({ cost }: ResponseWorth, { plan }: Responses): string {
  return cost < 0.005 ? "costs nothing" : `costs ${statedSum(cost, plan.currency)}`;
}

function buys({ given }: ResponseWorth, level: string): string {
  const days = -given.workingDays;
  if (Math.abs(days) < 0.05) return `moves the finish at ${level} by less than a tenth of a day`;
  return days > 0
    ? `buys ${formatDays(days)} at ${level}`
    : `makes the finish at ${level} ${formatDays(-days)} later`;
}

function pays({ given }: ResponseWorth): string {
  if (isEven(given)) return "about breaks even: its net worth lies within the sampling limits";
  return given.netWorth > 0 ? "pays for itself" : "does not pay for itself";
}

/** Whether a net worth cannot be told from nought: within its 95 % sampling limits. */
export function isEven({ netWorth, netWorthError }: ResponseEffect): boolean {
  return Math.abs(netWorth) <= 1.96 * netWorthError;
}

/** How many pay for themselves, and what that means. */
export function countSentences(answer: Responses): string[] {
  const { responses, plan, stands } = answer;
  if (responses.length === 0) return [];
  const adopted = responses.filter((one) => one.adopted).length;
  const paying = responses.filter(({ given }) => given.netWorth > 0 && !isEven(given)).length;
  const even = responses.filter(({ given }) => isEven(given) && given.netWorth !== 0).length;
  const untold =
    even === 0
      ? ""
      : even === 1
        ? " One lies too close to nought to tell."
        : ` ${even} lie too close to nought to tell.`;
  const many = responses.length === 1 ? "1 response" : `${responses.length} responses`;
  const taken =
    adopted === 0 ? "none adopted" : adopted === responses.length ? "all adopted" : `${adopted} adopted`;
  if (!responsesSpend(answer)) {
    const buying = responses.filter(({ given }) => given.workingDays <= -0.05).length;
    return [
      `${many}, ${taken}; ${buying} of ${responses.length} ${buying === 1 ? "brings" : "bring"} the committed finish forward. The plan has no costs to weigh that against.`,
    ];
  }
  const priced = stands.mean.lateness !== undefined;
  const counted = priced ? "and being late" : "(the plan does not say what being late costs)";
  return [
    `${many}, ${taken}; ${paying} of ${responses.length} ${paying === 1 ? "saves more on average than it costs" : "save more on average than they cost"}, risks, running costs ${counted} counted.${untold}`,
    ...(priced ? [] : [`Add \`lateness\` to the plan to have days counted in ${plan.currency}.`]),
  ];
}

/** A mean of money as a figure of two digits; nought below half a unit. */
export function roughSum(value: number, currency: string, signed = false): string {
  return formatMoney(Math.abs(value) < 0.5 ? 0 : roundSignificant(value, 2), currency, signed);
}

import type { Comparison } from "@leeway/core";
import { formatChance } from "../words/formatChance.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { roundMove } from "../words/roundMove.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { roundToLimits } from "../words/roundToLimits.ts";
import { statedSum } from "./statedSum.ts";

/** Whether either plan speaks of money at all. */
export function hasSums({ from, to }: Comparison): boolean {
  return from.cost !== 0 || to.cost !== 0;
}

/** From which date to which, how far that is, and how much dearer. */
export function movedSentence(comparison: Comparison): string {
  const { from, to, difference, plan } = comparison;
  const days = daysWords(difference.workingDays);
  const was = formatDate(from.date, "weekday");
  const sum = hasSums(comparison) ? moneyWords(difference.money, plan.currency) : "";
  if (from.date !== to.date) {
    const parts = [days === "" ? "no working day lies between them" : days, sum].filter(
      (part) => part !== "",
    );
    return `The committed date moved from ${was} to ${formatDate(to.date, "weekday")}: ${parts.join(", and ")}.`;
  }
  if (days === "" && (sum === "" || roundMove(difference.money) === 0)) {
    return `The committed date stays ${was}: nothing moved.`;
  }
  return `The committed date stays ${was}: ${[days, sum].filter((part) => part !== "").join(", and ")}.`;
}

function daysWords(days: number): string {
  const text = formatDays(Math.abs(days));
  return text.startsWith("0 ") ? "" : `${text} ${days < 0 ? "earlier" : "later"}`;
}

function moneyWords(money: number, currency: string): string {
  const rounded = roundMove(money);
  if (rounded === 0) return "for the same sum";
  return `${formatMoney(Math.abs(rounded), currency)} ${rounded < 0 ? "cheaper" : "dearer"}`;
}

/** What the commitment is now, and what the chances of what was asked for have become. */
export function standsSentences(comparison: Comparison): string[] {
  const { to, plan, confidence, asked } = comparison;
  const sum = formatMoney(roundToLimits(to.cost, to.costLow, to.costHigh), plan.currency);
  const held = `holds ${formatChance(confidence)}`;
  const date = formatDate(to.date, "long");
  const now = hasSums(comparison) ? `Now ${date} and ${sum}: each ${held}.` : `Now ${date}: it ${held}.`;
  const chances: string[] = [];
  const change = (from: number, is: number) =>
    formatPercent(from) === formatPercent(is)
      ? `stays at ${formatPercent(is)}`
      : `goes from ${formatPercent(from)} to ${formatPercent(is)}`;
  if (asked.finishBy !== undefined) {
    const { date: by, from, to: is } = asked.finishBy;
    chances.push(`of finishing by ${formatDate(by, "weekday")} ${change(from, is)}`);
  }
  if (asked.budget !== undefined) {
    const { sum: within, from, to: is } = asked.budget;
    chances.push(`of staying within ${statedSum(within, plan.currency)} ${change(from, is)}`);
  }
  return chances.length === 0 ? [now] : [now, `The chance ${chances.join(", that ")}.`];
}

/** What a move is; how far sampled orders may be off. */
export function meaningOfMoves(comparison: Comparison): string | undefined {
  const { orders, moves, plan } = comparison;
  if (orders.groups < 2) return undefined;
  const how = orders.all
    ? "every order in which the changes can be made"
    : `${orders.taken} orders in which the changes can be made`;
  const meaning = `Each move is what its change adds, averaged over ${how}, on the same draws; together they are the difference.`;
  if (orders.all) return meaning;
  const days = Math.max(...moves.map(({ error }) => error.workingDays));
  const money = Math.max(...moves.map(({ error }) => error.money));
  const sum = hasSums(comparison) ? ` and ${statedSum(roundSignificant(money, 1), plan.currency)}` : "";
  return `${meaning} Standard error of a move from the orders sampled: at most ${formatDays(days)}${sum}.`;
}

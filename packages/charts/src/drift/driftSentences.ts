import type { Drift, DriftPoint, OtherTerm } from "@leeway/core";
import { enumerated } from "../sentences/enumerated.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { roundMove } from "../words/roundMove.ts";
import { roundToLimits } from "../words/roundToLimits.ts";

/** How date and sum drifted from the first forecast to the last. */
export function driftSentence({ points, moved }: Drift): string {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined) return "No forecast was kept yet.";
  const date = formatDate(last.entry.finish.committed.date, "weekday");
  const sum = keptSum(last);
  if (points.length === 1) return `One forecast was kept: ${date}${sum === undefined ? "" : ` and ${sum}`}.`;
  const from = formatDate(first.entry.finish.committed.date, "weekday");
  const days =
    moved.days === 0
      ? `The committed date stays ${date}`
      : `The committed date moved from ${from} to ${date}: ${daysWords(moved.days)}`;
  const was = keptSum(first);
  if (sum === undefined || was === undefined || moved.money === undefined) return `${days}.`;
  const money = roundMove(moved.money);
  return money === 0
    ? `${days}; the committed sum stays ${sum}.`
    : `${days}; the committed sum from ${was} to ${sum}: ${moneyWords(money, last.entry.currency)}.`;
}

/** With which forecast the date moved most; undefined where it never did, or in one step. */
export function largestSentence({ points, largest }: Drift): string | undefined {
  if (largest?.moved === undefined || largest.moved.days === 0) return undefined;
  if (points.filter(({ moved }) => (moved?.days ?? 0) !== 0).length < 2) return undefined;
  const { what } = largest.entry.change;
  return `It moved most with the forecast of ${formatDate(largest.asOf, "weekday")}, ${daysWords(largest.moved.days)}: ${what}`;
}

/** What makes two forecasts in a row less than alike, in words; undefined where they differ by progress alone. */
export function termsWords({ terms = [], entry }: DriftPoint): string | undefined {
  const words: Record<OtherTerm, string> = {
    plan: "the plan itself was changed",
    asked: "another date or sum is asked for",
    confidence: `the level is ${formatPercent(entry.confidence)} now`,
    currency: `sums are in ${entry.currency} now`,
    draws: "other futures were drawn",
    version: `another version of the program, ${entry.version}`,
  };
  return terms.length === 0 ? undefined : enumerated(terms.map((term) => words[term]));
}

/** The committed sum of a forecast, to the digits its limits support; undefined where the plan speaks of no money. */
export function keptSum({ entry }: Pick<DriftPoint, "entry">): string | undefined {
  const { committed, low, high, p10 } = entry.cost;
  if (committed === 0 && p10 === 0 && entry.asked.budget === undefined) return undefined;
  return formatMoney(roundToLimits(committed, low, high), entry.currency);
}

/** "5 calendar days later". */
export function daysWords(days: number): string {
  if (days === 0) return "the same day";
  return `${formatDays(Math.abs(days), "calendar day")} ${days < 0 ? "earlier" : "later"}`;
}

function moneyWords(rounded: number, currency: string): string {
  return `${formatMoney(Math.abs(rounded), currency)} ${rounded < 0 ? "cheaper" : "dearer"}`;
}

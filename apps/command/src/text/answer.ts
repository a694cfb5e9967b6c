import {
  formatChance,
  formatDate,
  formatDays,
  formatMoney,
  groupDigits,
  holdsWords,
  roundToLimits,
  statedSum,
} from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { committedSum, hasMoney } from "./moneyWords.ts";

/** The sentence everything else explains: what to commit to, and how often it holds. */
export function commitSentence(forecast: Forecast): string {
  const { committed } = forecast;
  const date = formatDate(committed.date, "long");
  const money = hasMoney(forecast);
  const holds = holdsWords({
    each: formatChance(committed.confidence),
    both: formatChance(committed.both, "tenths"),
    date: forecast.finish.sd === 0,
    sum: forecast.cost.sd === 0,
    money,
  });
  return `Commit to ${date}${money ? ` and ${committedSum(forecast)}` : ""}: ${holds}.`;
}

/** A chance of one of the two; where no future moves it, it is certain or it cannot be. */
function chanceOf(p: number, { sd }: { sd: number }, style: "closest" | "tenths"): string {
  if (sd > 0) return formatChance(p, style);
  return p >= 1 ? "certain" : "certainly not";
}

/** The chance of what the plan's commitment asks for; undefined when it asks for nothing. */
export function askedSentence(forecast: Forecast): string | undefined {
  const { asked, chance, plan } = forecast;
  const wanted: string[] = [];
  const chances: string[] = [];
  if (asked.finishBy !== undefined && chance.finishBy !== undefined) {
    wanted.push(formatDate(asked.finishBy, "long"));
    chances.push(`${chanceOf(chance.finishBy, forecast.finish, "tenths")} by that day`);
  }
  if (asked.budget !== undefined && chance.budget !== undefined) {
    wanted.push(statedSum(asked.budget, plan.currency));
    chances.push(`${chanceOf(chance.budget, forecast.cost, "tenths")} within that sum`);
  }
  if (wanted.length === 0) return undefined;
  if (chance.both !== undefined) {
    const sd = Math.max(forecast.finish.sd, forecast.cost.sd);
    chances.push(`${chanceOf(chance.both, { sd }, "tenths")} both`);
  }
  return `You asked for ${wanted.join(" and ")}: ${chances.join(", ")}.`;
}

/** What the plan says when every estimate goes its written way, and how rarely a future does as well. */
export function asWrittenSentence(forecast: Forecast): string {
  const { asWritten, finish, cost, plan } = forecast;
  const date = formatDate(asWritten.finish, "long");
  const early = chanceOf(finish.asWrittenChance, finish, "closest");
  if (!hasMoney(forecast)) {
    return `The plan as written says ${date}. Chance of finishing as early: ${early}.`;
  }
  const sum = statedSum(asWritten.cost, plan.currency);
  const cheap = chanceOf(cost.asWrittenChance, cost, "closest");
  return (
    `The plan as written says ${date} and ${sum}. ` +
    `Chance of finishing as early: ${early}; of costing no more: ${cheap}.`
  );
}

/** What the commitment holds above the plan as written. */
export function contingencySentence(forecast: Forecast): string {
  const { contingency, committed, people, plan } = forecast;
  const half = (committed.costHigh - committed.costLow) / 2;
  const money = roundToLimits(contingency.money, contingency.money - half, contingency.money + half);
  const days = formatDays(contingency.workingDays);
  const calendar = formatDays(contingency.calendarDays, "calendar day");
  const sum = hasMoney(forecast) ? ` and ${formatMoney(money, plan.currency)}` : "";
  const waiting =
    people === undefined
      ? ""
      : ` Limited people account for ${formatDays(people.workingDays)} of the finish.`;
  return `Contingency: ${days} (${calendar})${sum}.${waiting}`;
}

/** What is needed to get the same figures again. */
export function stampSentence(forecast: Forecast): string {
  return (
    `Run: seed ${forecast.seed}, ${groupDigits(forecast.iterations)} ${forecast.iterations === 1 ? "future" : "futures"}, ${forecast.design} design, ` +
    `plan ${forecast.plan.sha256.slice(0, 12)}, engine ${forecast.version}.`
  );
}

import {
  enumerated,
  formatDate,
  formatDays,
  formatMoney,
  formatPercent,
  quoteName,
  statedSum,
  worthRounding,
} from "@leeway/charts";
import type { BestSet, Objective, Responses } from "@leeway/core";
import { inset } from "./inset.ts";

const aims: Record<Objective, string> = {
  date: "for the earliest committed date",
  chance: "for the best chance of the asked date",
  worth: "for the most net worth",
};

/** Which responses to adopt with the sum asked about, what that changes, and how they were found. */
export function bestLines(answer: Responses, width: number): string[] {
  const { best } = answer;
  if (best === undefined) return [];
  const sum = statedSum(best.sum, answer.plan.currency);
  const title = `With ${sum}, ${aims[best.objective]}`;
  return [title, ...sentences(answer, best).flatMap((text) => inset(text, width))];
}

function sentences(answer: Responses, best: BestSet): string[] {
  const names = new Map(answer.responses.map(({ id, action }) => [id, action]));
  const list = (ids: readonly string[]) => enumerated(ids.map((id) => quoteName(names.get(id) ?? id)));
  if (best.ids.length === 0) return ["No response that it pays for helps.", best.how.text];
  const { effect, outlook } = best;
  const cost = statedSum(best.cost, answer.plan.currency);
  const from = formatDate(answer.stands.date, "weekday");
  const to = formatDate(outlook.date, "weekday");
  const level = formatPercent(answer.confidence);
  const days = formatDays(Math.abs(effect.workingDays));
  const way = effect.workingDays <= 0 ? "earlier" : "later";
  const moved =
    outlook.date === answer.stands.date
      ? `The date at ${level} stays ${to}.`
      : `The date at ${level} moves from ${from} to ${to}, ${days} ${way}.`;
  const { finishBy } = outlook.chance;
  const was = answer.stands.chance.finishBy;
  const chance =
    finishBy === undefined || was === undefined
      ? ""
      : ` The chance of the asked date goes from ${formatPercent(was)} to ${formatPercent(finishBy)}.`;
  const net = Math.abs(effect.netWorth) < 0.5 ? 0 : worthRounding(answer)(effect.netWorth);
  const worth =
    net >= 0
      ? `It saves ${formatMoney(net, answer.plan.currency)} more than it costs on average.`
      : `On average it costs ${formatMoney(-net, answer.plan.currency)} more than it saves.`;
  const idle =
    best.idle.length === 0
      ? []
      : [`One at a time, ${list(best.idle)} could be left out without moving that date.`];
  return [`Adopt ${list(best.ids)}: ${cost}. ${moved}${chance} ${worth}`, ...idle, best.how.text];
}

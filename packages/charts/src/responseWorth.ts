import type { Responses, ResponseWorth } from "@leeway/core";
import { drawBarPanels } from "./bars/drawBarPanels.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { moneyColumn } from "./measure/moneyColumn.ts";
import { worthRounding } from "./measure/worthRounding.ts";
import { palette } from "./palette.ts";
import { responsesSpend } from "./sentences/speaksOfMoney.ts";
import { rankedResponses } from "./sentences/worthSentences.ts";
import { columnDays } from "./words/columnDays.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatDays } from "./words/formatDays.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { groupDigits } from "./words/groupDigits.ts";
import { plainName, quoteName } from "./words/plainName.ts";
import { roundSignificant } from "./words/roundSignificant.ts";

const most = 12;

/**
 * What each response costs, the working days it buys at the committed level and what it is worth net, given the
 * adopted ones; adopted ones are filled in the colour of the commitment. The twelve worth most. Of a plan without money:
 * the days alone, the twelve that buy most.
 *
 * Reads `responses`, `confidence`, `asked`, `stands.mean`, `plan.currency`.
 */
export function responseWorth(answer: Responses, options: ChartOptions): Figure {
  const { confidence, asked } = answer;
  const { currency } = answer.plan;
  const colours = palette(options.theme);
  const level = formatPercent(confidence);
  const spends = responsesSpend(answer);
  const responses = rankedResponses(answer);
  const costs = moneyColumn(
    responses.map((each) => each.cost),
    currency,
  );
  const nets = moneyColumn(
    responses.map((each) => each.given.netWorth),
    currency,
  );
  const shown = responses.length <= most + 1 ? responses : responses.slice(0, most);
  const rest = responses.length - shown.length;
  const anyChance = asked.finishBy !== undefined;
  const anyLateness = responses.some((each) => each.given.latenessAvoided !== undefined);
  const round = worthRounding(answer);
  const title = spends ? finding(responses, currency, round) : findingOfDays(responses);
  return {
    title,
    subtitle: !spends
      ? `The working days each response buys at ${level}, with the adopted ones as they are; full bars: adopted`
      : `What each response costs on average, the working days it buys at ${level}, and its worth: money saved less its cost${anyLateness ? ", lateness priced in" : ""}. Each with the adopted ones as they are; full bars: adopted`,
    summary:
      responses.length === 0
        ? "The plan names no response to a risk or an assumption."
        : `${responses.length === 1 ? "One response" : `${responses.length} responses`}, ${responses.filter((each) => each.adopted).length} adopted, in the order of ${spends ? "their worth" : "the days they buy"}: ${responses
            .slice(0, 4)
            .map((each) => (spends ? say(each, currency, round) : sayDays(each)))
            .join("; ")}.`,
    table: {
      columns: [
        { name: "Response", align: "start" },
        { name: "Answers", align: "start" },
        { name: "Adopted", align: "start" },
        ...(spends ? [{ name: "Costs", unit: costs.unit, align: "end" as const }] : []),
        { name: "Buys", unit: "working days", align: "end" },
        { name: "Buys alone", unit: "working days", align: "end" },
        ...(anyChance
          ? [{ name: `Chance of ${formatDate(asked.finishBy ?? "")}`, unit: "points", align: "end" as const }]
          : []),
        ...(anyLateness ? [{ name: "Lateness avoided", unit: currency, align: "end" as const }] : []),
        ...(spends
          ? [
              { name: "Net worth", unit: nets.unit, align: "end" as const },
              { name: "Net worth alone", unit: nets.unit, align: "end" as const },
            ]
          : []),
      ],
      rows: responses.map((each) => [
        plainName(each.action),
        plainName(each.entry.name),
        each.adopted ? "yes" : "no",
        ...(spends ? [costs.text(each.cost)] : []),
        columnDays(-each.given.workingDays),
        columnDays(-each.alone.workingDays),
        ...(anyChance ? [points(each.given.finishBy)] : []),
        ...(anyLateness ? [lateness(each.given.latenessAvoided)] : []),
        ...(spends ? [nets.text(each.given.netWorth, true), nets.text(each.alone.netWorth, true)] : []),
      ]),
    },
    svg:
      responses.length === 0
        ? emptyDrawing("The plan names no response to a risk or an assumption.", options)
        : drawBarPanels(
            shown.map((each) => ({
              name: each.action,
              word: each.adopted ? "adopted" : "",
              paint: each.adopted
                ? { fill: colours.committed, stroke: colours.committed }
                : { fill: colours.paper, stroke: colours.ink, "stroke-width": 1.25 },
              bars: [
                ...(spends ? [{ value: each.cost, text: costs.text(each.cost) }] : []),
                { value: seen(-each.given.workingDays), text: columnDays(-each.given.workingDays) },
                ...(spends
                  ? [{ value: each.given.netWorth, text: nets.text(each.given.netWorth, true) }]
                  : []),
              ],
            })),
            [
              ...(spends ? [{ name: "Costs", unit: costs.unit }] : []),
              { name: "Buys", unit: "working days" },
              ...(spends ? [{ name: "Net worth", unit: nets.unit }] : []),
            ],
            rest === 0
              ? ""
              : `and ${rest} more, none ${spends ? "worth more" : "buying more"} than those above`,
            options,
          ),
  };
}

/** Nought where no digit would show it. */
function seen(days: number): number {
  return columnDays(days) === "0" ? 0 : days;
}

function points(change: number | undefined): string {
  if (change === undefined) return "";
  const rounded = Math.round(change * 100);
  return `${rounded > 0 ? "+" : ""}${groupDigits(rounded)}`;
}

function lateness(value: number | undefined): string {
  return value === undefined ? "" : formatMoney(roundSignificant(value, 2), "");
}

type Round = (worth: number) => number;

function finding(ranked: readonly ResponseWorth[], currency: string, round: Round): string {
  const [best] = ranked;
  if (best === undefined) return "The plan names no responses";
  const worth = round(best.given.netWorth);
  if (worth > 0) {
    const lead =
      ranked.length === 1
        ? `${quoteName(best.action)} is worth its cost`
        : `${quoteName(best.action)} is worth most`;
    return `${lead}: ${bought(best, currency)}, ${formatMoney(worth, currency)} net`;
  }
  return ranked.length === 1
    ? `${quoteName(best.action)} is not worth its cost: ${bought(best, currency)}`
    : `No response is worth its cost; nearest comes ${quoteName(best.action)}: ${bought(best, currency)}`;
}

/** "EUR 2,000 buys 4 working days". */
function bought({ cost, given }: ResponseWorth, currency: string): string {
  const price = formatMoney(roundSignificant(cost, 2), currency);
  const days = seen(-given.workingDays);
  if (days === 0) return `${price} buys no day`;
  return days > 0 ? `${price} buys ${formatDays(days)}` : `${price} loses ${formatDays(-days)}`;
}

/** Of a plan without money: the days alone. */
function findingOfDays([best, ...others]: readonly ResponseWorth[]): string {
  if (best === undefined) return "The plan names no responses";
  const days = seen(-best.given.workingDays);
  if (days <= 0 && others.length > 0) return "No response buys a day";
  return `${quoteName(best.action)} ${others.length > 0 ? "buys most: " : ""}${daysBought(days, others.length === 0)}`;
}

function daysBought(days: number, verb: boolean): string {
  if (days === 0) return "buys no day";
  return days > 0 ? `${verb ? "buys " : ""}${formatDays(days)}` : `loses ${formatDays(-days)}`;
}

function sayDays({ action, adopted, given }: ResponseWorth): string {
  return `${quoteName(action)}${adopted ? " (adopted)" : ""} ${daysBought(seen(-given.workingDays), true)}`;
}

function say(response: ResponseWorth, currency: string, round: Round): string {
  const net = formatMoney(round(response.given.netWorth), currency);
  return `${quoteName(response.action)}${response.adopted ? " (adopted)" : ""}: ${bought(response, currency)}, ${net} net`;
}

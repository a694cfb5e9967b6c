import {
  columnDays,
  formatMoney,
  formatPercent,
  groupDigits,
  plainName,
  rankedResponses,
  responsesSpend,
  roundSignificant,
  worthRounding,
} from "@leeway/charts";
import type { ResponseEffect, Responses } from "@leeway/core";
import { inset } from "./inset.ts";
import { type Column, table } from "./page.ts";

/** What stands in a table of responses: each given the adopted ones, or each alone. */
export type Basis = "given" | "alone";

/** The responses side by side. */
export function responseLines(answer: Responses, basis: Basis, width: number): string[] {
  const { plan, confidence } = answer;
  const responses = rankedResponses(answer);
  if (responses.length === 0) return [];
  const spends = responsesSpend(answer);
  const level = formatPercent(confidence);
  const chance = chanceOf(answer);
  const priced = answer.stands.mean.lateness !== undefined;
  const wide = width >= 80;
  const adopted = responses.some((one) => one.adopted);
  const round = worthRounding(answer);
  const columns: Column[] = [
    { heading: "", align: "left" },
    ...(spends ? [right("costs")] : []),
    right("days"),
    ...(spends ? [right(plan.currency)] : []),
    ...(chance === undefined ? [] : [{ heading: "chance", align: "right" } as const]),
    ...(priced && wide ? [{ heading: "lateness", align: "right" } as const] : []),
    ...(spends ? [right("net worth"), ...(wide ? [right("±")] : [])] : []),
  ];
  const rows = responses.map((one) => {
    const effect = one[basis];
    return [
      // In front, where a narrow page does not cut it off.
      (adopted ? (one.adopted ? "* " : "  ") : "") + plainName(one.action),
      ...(spends ? [groupDigits(Math.round(one.cost))] : []),
      columnDays(effect.workingDays, true),
      ...(spends ? [money(effect.money)] : []),
      ...(chance === undefined ? [] : [points(chance.of(effect))]),
      ...(priced && wide ? [money(-(effect.latenessAvoided ?? 0))] : []),
      ...(spends ? [money(effect.netWorth, round), ...(wide ? [limits(effect.netWorthError)] : [])] : []),
    ];
  });
  const title =
    basis === "alone"
      ? `Alone, no other response adopted, at ${level}`
      : adopted
        ? `With the adopted ones as they are (* adopted), at ${level}`
        : `What each response changes at ${level}`;
  const legend = [
    spends
      ? "costs: mean; days and sum: at the level committed to"
      : "days: of the finish at the level committed to",
    ...(chance === undefined ? [] : [`chance: of ${chance.what}, in points of 100`]),
    ...(priced && wide ? ["lateness: its mean cost"] : []),
    ...(spends
      ? [`net worth: mean money saved less the cost${wide ? ", ± its 95 % sampling limits" : ""}`]
      : []),
  ];
  return [title, ...table(columns, rows, width), ...inset(`${legend.join("; ")}.`, width)];
}

function right(heading: string): Column {
  return { heading, align: "right" };
}

/** The chance a table shows: of date and sum together where both are asked for. */
function chanceOf({
  asked,
}: Responses): { what: string; of: (effect: ResponseEffect) => number } | undefined {
  if (asked.finishBy !== undefined && asked.budget !== undefined) {
    return { what: "the asked date and budget together", of: ({ both }) => both ?? 0 };
  }
  if (asked.finishBy !== undefined) return { what: "the asked date", of: ({ finishBy }) => finishBy ?? 0 };
  if (asked.budget !== undefined) return { what: "the budget", of: ({ budget }) => budget ?? 0 };
  return undefined;
}

function points(change: number): string {
  const rounded = Math.round(100 * change);
  return rounded === 0 ? "0" : `${rounded < 0 ? "−" : "+"}${Math.abs(rounded)}`;
}

function limits(error: number): string {
  const half = 1.96 * error;
  return half < 0.5 ? "0" : groupDigits(roundSignificant(half, 2));
}

function money(value: number, round = (sum: number) => roundSignificant(sum, 2)): string {
  return Math.abs(value) < 0.5 ? "0" : formatMoney(round(value), "", true);
}

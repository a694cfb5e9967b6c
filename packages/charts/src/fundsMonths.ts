import type { Budget } from "@leeway/core";
import { dayMs, isoToMs } from "./dates/dayToIso.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { fundsFinding } from "./fundsMonths/fundsFinding.ts";
import { monthName } from "./fundsMonths/monthName.ts";
import { monthsToShow } from "./fundsMonths/monthsToShow.ts";
import { drawSpending, type SpendMonth } from "./spending/drawSpending.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { limitStep, roundToStep } from "./words/roundToLimits.ts";

/**
 * Money spent by the end of each month, from P50 to P80, against what is released by then, as steps; what would cure the
 * first month that runs short is the title. Beneath: each month's part of the committed sum, which add up to it.
 *
 * Reads `months`, `funds`, `total`, `confidence`, `plan`.
 */
export function fundsMonths(budget: Budget, options: ChartOptions): Figure {
  const { months, total, plan, funds } = budget;
  const { currency } = plan;
  const place = limitStep(total.committed, total.low, total.high);
  const sum = (value: number) => formatMoney(roundToStep(value, place), "");
  const sums = months.map(({ byEnd }) => [byEnd.p50, byEnd.p80, byEnd.committed]);
  const marked = months.findIndex(({ month }) => month === funds?.firstShort?.month);
  const shown = months.slice(0, Math.max(monthsToShow(sums, place), marked + 2));
  const day = (iso: string) => (isoToMs(iso) - isoToMs(plan.start)) / dayMs;
  const view = shown.map(({ month, byEnd, spent, released }): SpendMonth => {
    const from = day(`${month}-01`);
    return {
      from,
      to: from + daysIn(month),
      mean: spent.split,
      p50: byEnd.p50,
      p80: byEnd.p80,
      ...(released === undefined ? {} : { released }),
    };
  });
  const short = funds?.firstShort;
  const title = fundsFinding(budget);
  const last = months.at(-1);
  return {
    title,
    subtitle: `Money spent by the end of each month: the band runs from what half of the futures stay within (P50) to what 80 % do (P80)${funds === undefined ? "" : "; dashes: money released by then"}; bars: how the sum that ${formatPercent(budget.confidence)} stay within falls on the months. In ${currency}`,
    summary:
      last === undefined
        ? "The plan says nothing of when money is spent."
        : `A band that rises to between ${currency} ${sum(last.byEnd.p50)} (P50) and ${currency} ${sum(last.byEnd.p80)} (P80)${last.released === undefined ? "" : `, against ${currency} ${sum(last.released)} released by the end`}. ${title}.`,
    table: {
      columns: [
        { name: "Month", align: "start" },
        { name: "Spent in it, P50", unit: currency, align: "end" },
        { name: "Spent in it, P80", unit: currency, align: "end" },
        { name: "Part of the committed sum", unit: currency, align: "end" },
        { name: "By its end, P50", unit: currency, align: "end" },
        { name: "By its end, P80", unit: currency, align: "end" },
        ...(funds === undefined
          ? []
          : [
              { name: "Released", unit: currency, align: "end" as const },
              { name: "Covered", align: "end" as const },
              { name: "Short", unit: currency, align: "end" as const },
            ]),
      ],
      rows: months.map(({ month, spent, byEnd, released, chanceCovered, short: lacking = 0 }) => [
        monthName(month),
        sum(spent.p50),
        sum(spent.p80),
        sum(spent.split),
        sum(byEnd.p50),
        sum(byEnd.p80),
        ...(funds === undefined
          ? []
          : [
              released === undefined ? "" : sum(released),
              chanceCovered === undefined ? "" : formatPercent(chanceCovered),
              lacking > 0 ? sum(lacking) : "",
            ]),
      ]),
    },
    svg:
      view.length === 0
        ? emptyDrawing("The plan says nothing of when money is spent.", options)
        : drawSpending(
            {
              start: plan.start,
              currency,
              months: view,
              means: `Each month's part of ${sum(total.committed)}`,
              ...(short === undefined
                ? {}
                : {
                    mark: {
                      level: "half" as const,
                      title: `${sum(short.short)} short`,
                      detail: `end of ${monthName(short.month)} · covered in ${formatPercent(short.chanceCovered)}`,
                      day: day(`${short.month}-01`) + daysIn(short.month),
                    },
                  }),
              sum,
            },
            options,
          ),
  };
}

function daysIn(month: string): number {
  const [year = 0, number = 1] = month.split("-").map(Number);
  const next = `${String(number === 12 ? year + 1 : year).padStart(4, "0")}-${String((number % 12) + 1).padStart(2, "0")}-01`;
  return (isoToMs(next) - isoToMs(`${month}-01`)) / dayMs;
}

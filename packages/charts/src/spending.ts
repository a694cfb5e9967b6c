import type { Forecast } from "@leeway/core";
import { dayMs, isoToMs } from "./dates/dayToIso.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { monthsToShow } from "./fundsMonths/monthsToShow.ts";
import { drawSpending, type SpendMonth } from "./spending/drawSpending.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { roundSignificant } from "./words/roundSignificant.ts";
import { limitStep, roundToStep } from "./words/roundToLimits.ts";

type Month = NonNullable<Forecast["months"]>[number];

/**
 * Spending by the end of each month as a band from P50 to P80, against the money released by then; beneath it what is
 * spent in each month on average. The first month that the money does not cover is marked.
 *
 * Reads `months`, `firstShortfall`, `committed`. Months after the last one in which a digit moves are left out of the
 * drawing, not of the table.
 */
export function spending(forecast: Forecast, options: ChartOptions): Figure {
  const { months = [], firstShortfall, committed, plan } = forecast;
  const { currency } = plan;
  const place = limitStep(committed.cost, committed.costLow, committed.costHigh);
  const sum = (value: number) => formatMoney(roundToStep(value, place), "");
  const funded = months.some((month) => month.released !== undefined);
  const sums = months.map(({ cumulative }) => [cumulative.p50, cumulative.p80]);
  const marked = months.findIndex(({ month }) => month === firstShortfall?.month);
  const shown = months.slice(0, Math.max(monthsToShow(sums, place), marked + 2));
  const day = (iso: string) => (isoToMs(iso) - isoToMs(plan.start)) / dayMs;
  const view: SpendMonth[] = shown.map((month) => ({
    from: day(`${month.month}-01`),
    to: day(`${nextMonth(month.month)}-01`),
    mean: month.mean,
    ...month.cumulative,
    ...(month.released === undefined ? {} : { released: month.released }),
  }));
  const short = firstShortfall && {
    level: "half" as const,
    title: "Runs short",
    detail: `end of ${monthName(firstShortfall.month)} · covered in ${formatPercent(firstShortfall.chanceCovered)}`,
    day: day(`${nextMonth(firstShortfall.month)}-01`),
  };
  const title = finding(forecast, funded);
  const peak = peakOf(months);
  const means = peak === undefined ? "" : `; most in ${monthName(peak.month)}, ${sum(peak.mean)}`;
  const end = months[months.length - 1];
  return {
    title,
    subtitle: `Money spent by the end of each month: the band runs from what half of the futures stay within (P50) to what 80 % do (P80)${funded ? "; dashes: money released by then" : ""}. In ${currency}`,
    summary:
      end === undefined
        ? "The plan says nothing of when money is spent."
        : `A band that rises from nothing to between ${currency} ${sum(end.cumulative.p50)} (P50) and ${currency} ${sum(end.cumulative.p80)} (P80)${end.released === undefined ? "" : `, against ${currency} ${sum(end.released)} released by the end`}. ${title}.`,
    table: {
      columns: [
        { name: "Month", align: "start" },
        { name: "Spent in it, mean", unit: currency, align: "end" },
        { name: "By its end, P50", unit: currency, align: "end" },
        { name: "By its end, P80", unit: currency, align: "end" },
        ...(funded
          ? [
              { name: "Released", unit: currency, align: "end" as const },
              { name: "Covered", align: "end" as const },
            ]
          : []),
      ],
      rows: months.map((month) => [
        monthName(month.month),
        sum(month.mean),
        sum(month.cumulative.p50),
        sum(month.cumulative.p80),
        ...(funded
          ? [
              month.released === undefined ? "" : sum(month.released),
              month.chanceCovered === undefined ? "" : formatPercent(month.chanceCovered),
            ]
          : []),
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
              means: `In each month, on average${means}`,
              ...(short && { mark: short }),
              sum,
            },
            options,
          ),
  };
}

function nextMonth(month: string): string {
  const [year = 0, number = 1] = month.split("-").map(Number);
  return number === 12
    ? `${String(year + 1).padStart(4, "0")}-01`
    : `${String(year).padStart(4, "0")}-${String(number + 1).padStart(2, "0")}`;
}

/** "Oct 2027". */
function monthName(month: string): string {
  return formatDate(`${month}-01`).replace(/^\d+ /, "");
}

/** The month in which most is spent on average; undefined where nothing is. */
function peakOf(months: readonly Month[]): Month | undefined {
  const [first] = months;
  const peak = months.reduce((most, month) => (month.mean > most.mean ? month : most), first ?? none);
  return peak.mean > 0 ? peak : undefined;
}
const none: Month = { month: "", mean: 0, cumulative: { p50: 0, p80: 0 } };

function finding({ months = [], firstShortfall, committed, plan }: Forecast, funded: boolean): string {
  if (months.length === 0) return "The plan has no money by month";
  const level = formatPercent(committed.confidence);
  if (firstShortfall !== undefined)
    return `Money runs short by the end of ${monthName(firstShortfall.month)}: what is released covers ${formatPercent(firstShortfall.chanceCovered)} of futures, not ${level}`;
  if (funded)
    return `Money released covers the spending to the end of every month in at least ${level} of futures`;
  const peak = peakOf(months);
  if (peak === undefined) return "Nothing is spent in any month";
  return `Spending peaks in ${monthName(peak.month)}, at ${formatMoney(roundSignificant(peak.mean, 2), plan.currency)} on average`;
}

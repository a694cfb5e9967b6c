import type { FinishPercentile, Forecast } from "@leeway/core";
import { type CurveMark, drawCurve } from "./curves/drawCurve.ts";
import { shareAt, valueAt } from "./curves/interpolate.ts";
import { askedDay } from "./dates/askedDay.ts";
import { calendarTicks } from "./dates/calendarTicks.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { formatChance } from "./words/formatChance.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { groupDigits } from "./words/groupDigits.ts";

/**
 * The finish as a cumulative curve on the calendar: the share of futures that are done by each date, with
 * the level committed to, the plan as written and the date asked for.
 *
 * Reads `finish`, `committed`, `asWritten`, `asked`, `chance`. Cost: under 300 elements whatever the plan.
 */
export function finishCurve(forecast: Forecast, options: ChartOptions): Figure {
  const { finish, committed, asWritten, asked } = forecast;
  const half = finish.percentiles.find((each) => each.p === 0.5);
  const marks: CurveMark[] = [];
  const written = finish.asWrittenChance;
  marks.push({
    level: "asWritten",
    value: asWritten.day,
    chance: written,
    title: "As written",
    detail: `${formatDate(asWritten.finish)} · ${formatPercent(written)}`,
  });
  if (asked.finishBy !== undefined) {
    const chance = askedChance(forecast);
    marks.push({
      level: "asked",
      value: askedDay(forecast),
      chance,
      title: "Asked for",
      detail: `${formatDate(asked.finishBy)} · ${formatPercent(chance)}`,
    });
  }
  if (half !== undefined && committed.confidence !== 0.5)
    marks.push({
      level: "half",
      value: half.day,
      chance: 0.5,
      title: "Half",
      detail: `${formatDate(half.date)} · 50 %`,
    });
  const level = formatPercent(committed.confidence);
  marks.push({
    level: "committed",
    value: committed.day,
    chance: committed.confidence,
    title: "Committed",
    detail: `${formatDate(committed.date)} · ${level}`,
  });
  const svg = drawCurve(
    {
      curve: finish.curve,
      iterations: forecast.iterations,
      confidence: committed.confidence,
      marks,
      padding: 14,
      ticks: (from, to, width) =>
        calendarTicks(forecast.plan.start, from, to, Math.floor(width / 62)).map((tick) => ({
          at: tick.day,
          label: tick.label,
          below: tick.below,
        })),
      centred: false,
    },
    options,
  );
  return {
    title: finding(forecast, half),
    subtitle: subtitle(forecast),
    summary: summary(forecast),
    table: {
      columns: [
        { name: "Level", align: "start" },
        { name: "Chance", align: "end" },
        { name: "Finish by", align: "end" },
        { name: "Limits, earliest", align: "end" },
        { name: "Limits, latest", align: "end" },
      ],
      rows: table(forecast),
    },
    svg,
  };
}

function askedChance(forecast: Forecast): number {
  return forecast.chance.finishBy ?? shareAt(forecast.finish.curve, askedDay(forecast));
}

function finding({ finish, committed }: Forecast, half: FinishPercentile | undefined): string {
  const level = formatPercent(committed.confidence);
  const by = formatDate(committed.date, "weekday");
  const first = finish.curve.at[0];
  const last = finish.curve.at[finish.curve.at.length - 1];
  if (first !== undefined && first === last) return `Every future finishes on ${by}`;
  if (half === undefined || committed.confidence === 0.5) return `${level} of all futures finish by ${by}`;
  const [p10, p90] = [valueAt(finish.curve, 0.1), valueAt(finish.curve, 0.9)];
  // Where the futures fall into two groups, the date of the half is not known to the day, nor to the month.
  if (half.high - half.low > (p90 - p10) / 4 && half.lowDate !== half.highDate)
    return `Half of all futures finish by a date between ${formatDate(half.lowDate)} and ${formatDate(half.highDate)}; ${level} by ${by}`;
  if (half.date === committed.date) return `Half of all futures, and ${level}, finish by ${by}`;
  const sameYear = half.date.slice(0, 4) === committed.date.slice(0, 4);
  const halfBy = formatDate(half.date, sameYear ? "weekday-no-year" : "weekday");
  return committed.confidence > 0.5
    ? `Half of all futures finish by ${halfBy}; ${level} by ${by}`
    : `${level} of all futures finish by ${formatDate(committed.date, sameYear ? "weekday-no-year" : "weekday")}; half by ${formatDate(half.date, "weekday")}`;
}

function subtitle({ finish, iterations }: Forecast): string {
  const what = `Share of ${groupDigits(iterations)} futures that are finished by each date`;
  const p10 = finish.percentiles.find((each) => each.p === 0.1);
  const p90 = finish.percentiles.find((each) => each.p === 0.9);
  if (p10 === undefined || p90 === undefined || p10.date === p90.date) return what;
  return `${what}; the stronger tint, P10 to P90, runs from ${formatDate(p10.date)} to ${formatDate(p90.date)}`;
}

function summary(forecast: Forecast): string {
  const { finish, committed, asWritten, asked } = forecast;
  const p10 = finish.percentiles.find((each) => each.p === 0.1);
  const p90 = finish.percentiles.find((each) => each.p === 0.9);
  const range =
    p10 === undefined || p90 === undefined
      ? "The curve shows the share of futures finished by each date."
      : `A curve rising from one future in ten finished by ${formatDate(p10.date)} to nine in ten by ${formatDate(p90.date)}.`;
  const request =
    asked.finishBy === undefined
      ? ""
      : `; the date asked for, ${formatDate(asked.finishBy)}, holds ${formatChance(askedChance(forecast))}`;
  return `${range} Committed: ${formatDate(committed.date, "long")} (sampling limits ${formatDate(committed.lowDate)} to ${formatDate(committed.highDate)}); the plan as written says ${formatDate(asWritten.finish)} (${formatChance(finish.asWrittenChance)})${request}.`;
}

function table(forecast: Forecast): string[][] {
  const { finish, committed, asWritten, asked } = forecast;
  const rows = finish.percentiles.map((each) => [
    each.p === committed.confidence ? "Committed" : "",
    formatPercent(each.p),
    formatDate(each.date, "weekday"),
    formatDate(each.lowDate, "weekday"),
    formatDate(each.highDate, "weekday"),
  ]);
  rows.push([
    "Plan as written",
    formatPercent(finish.asWrittenChance),
    formatDate(asWritten.finish, "weekday"),
    "",
    "",
  ]);
  if (asked.finishBy !== undefined)
    rows.push([
      "Asked for",
      formatPercent(askedChance(forecast)),
      formatDate(asked.finishBy, "weekday"),
      "",
      "",
    ]);
  return rows;
}

import { formatDate, formatDays, formatPercent } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { table } from "./page.ts";

const SHOWN = 8;

/** Tasks and milestones with a target date, the least certain first. */
export function targetLines(forecast: Forecast, width: number): string[] {
  const rows = forecast.tasks
    .flatMap(({ name, target, finishDates }) => (target === undefined ? [] : [{ name, target, finishDates }]))
    .sort((a, b) => a.target.chance - b.target.chance || (a.name < b.name ? -1 : 1));
  if (rows.length === 0) return [];
  const columns = [
    { heading: "", align: "left" },
    { heading: "target", align: "left" },
    { heading: "met in", align: "right" },
    { heading: "committed to", align: "left" },
  ] as const;
  const cells = rows
    .slice(0, SHOWN)
    .map(({ name, target, finishDates }) => [
      name,
      formatDate(target.date, "short"),
      formatPercent(target.chance),
      formatDate(finishDates.committed, "short"),
    ]);
  const more = rows.length > SHOWN ? [`  and ${rows.length - SHOWN} more, more certain than these`] : [];
  return ["Targets, least certain first", ...table(columns, cells, width), ...more];
}

/** The spans the plan watches, in calendar days. */
export function intervalLines(forecast: Forecast, width: number): string[] {
  if (forecast.intervals.length === 0) return [];
  const columns = [
    { heading: "", align: "left" },
    { heading: "half within", align: "right" },
    { heading: "8 in 10 lie in", align: "left" },
    { heading: "wanted", align: "left" },
  ] as const;
  const days = (value: number) => formatDays(value, "");
  const cells = forecast.intervals.map(({ name, p10, p50, p90, atMost, chance }) => [
    name,
    days(p50),
    `${days(p10)} to ${days(p90)}`,
    atMost === undefined || chance === undefined ? "" : `at most ${days(atMost)}: ${formatPercent(chance)}`,
  ]);
  return ["Spans, in calendar days", ...table(columns, cells, width)];
}

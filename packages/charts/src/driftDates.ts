import type { Drift } from "@leeway/core";
import { calendarTicks } from "./dates/calendarTicks.ts";
import { dayToIso } from "./dates/dayToIso.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import { drawDrift } from "./drift/drawDrift.ts";
import { daysSince, driftStart, markOf, marksSaid } from "./drift/driftMarks.ts";
import { daysWords } from "./drift/driftSentences.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatPercent } from "./words/formatPercent.ts";

/**
 * How the committed date drifted: each kept forecast over the day it speaks from, with its band from P10 to P90, the
 * date asked for, and marks where the plan was signed or changed. Reads the drift and nothing else.
 */
export function driftDates(drift: Drift, options: ChartOptions): Figure {
  const { points } = drift;
  const start = driftStart(drift);
  const day = (date: string) => daysSince(start, date);
  const marks = points.map((point) => {
    const { finish, asked } = point.entry;
    return {
      ...markOf(point, start),
      value: day(finish.committed.date),
      low: day(finish.p10.date),
      high: day(finish.p90.date),
      ...(asked.finishBy === undefined ? {} : { asked: day(asked.finishBy) }),
    };
  });
  const dated = points.some(({ entry }) => entry.asked.finishBy !== undefined);
  const title = finding(drift);
  return {
    title,
    subtitle: `Committed date of each forecast kept, over the day it speaks from; the band runs from P10 to P90${dated ? "; dots: the date asked for" : ""}${marksSaid(marks)}`,
    summary: `${points.length === 1 ? "One forecast" : `A line over ${points.length} forecasts`} of the committed date${dated ? ", against the date asked for" : ""}. ${title}.`,
    table: {
      columns: [
        { name: "As of", align: "start" },
        { name: "Committed", align: "end" },
        { name: "P10", align: "end" },
        { name: "P90", align: "end" },
        { name: "Moved", unit: "calendar days", align: "end" },
        ...(dated
          ? [
              { name: "Asked for", align: "end" as const },
              { name: "Chance of it", align: "end" as const },
            ]
          : []),
        { name: "Why", align: "start" },
      ],
      rows: points.map(({ asOf, entry, moved }) => [
        formatDate(asOf, "weekday"),
        formatDate(entry.finish.committed.date, "weekday"),
        formatDate(entry.finish.p10.date, "weekday"),
        formatDate(entry.finish.p90.date, "weekday"),
        moved === undefined
          ? ""
          : moved.days < 0
            ? `−${-moved.days}`
            : `${moved.days > 0 ? "+" : ""}${moved.days}`,
        ...(dated
          ? [
              entry.asked.finishBy === undefined ? "" : formatDate(entry.asked.finishBy, "weekday"),
              entry.chance.finishBy === undefined ? "" : formatPercent(entry.chance.finishBy),
            ]
          : []),
        entry.change.why ?? entry.change.what,
      ]),
    },
    svg:
      marks.length === 0
        ? emptyDrawing("No forecast was kept yet.", options)
        : drawDrift(
            {
              start,
              marks,
              unit: "Committed date",
              padding: 14,
              ticks: (from, to, most) =>
                calendarTicks(start, from, to, most).flatMap(({ day: at, label, below }) =>
                  label === "" ? [] : [{ at, label: below === "" ? label : `${label} ${below}` }],
                ),
              text: (value) => formatDate(dayToIso(start, value)),
            },
            options,
          ),
  };
}

function finding({ points, moved }: Drift): string {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined) return "No forecast was kept yet";
  const date = formatDate(last.entry.finish.committed.date, "weekday");
  if (points.length === 1) return `The first forecast kept commits to ${date}`;
  const since = formatDate(first.asOf);
  if (moved.days === 0) return `The committed date is ${date}, as it was on ${since}`;
  return `The committed date is ${date}, ${daysWords(moved.days)} than on ${since}`;
}

import type { Forecast, TaskForecast } from "@leeway/core";
import { calendarAxis } from "../axes/calendarAxis.ts";
import { askedDay } from "../dates/askedDay.ts";
import { type CalendarTick, calendarTicks } from "../dates/calendarTicks.ts";
import { fitText } from "../draw/fitText.ts";
import { drawFlags, type FlagText, planFlags } from "../draw/flags.ts";
import { itemLabel } from "../draw/itemLabel.ts";
import { levelShape } from "../draw/levels.ts";
import { make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { type Palette, palette } from "../palette.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { plainName } from "../words/plainName.ts";
import { barHalf, drawTaskBar } from "./drawTaskBar.ts";
import { planRows } from "./planRows.ts";

/** Tasks on a calendar under their phases, each with its date at the committed level at the end of the row. */
export function drawPlan(forecast: Forecast, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const inline = width < 560;
  const rows = planRows(forecast.tasks);
  const level = formatPercent(forecast.committed.confidence);
  const dateWidth = 82;
  let widest = 90;
  for (const task of forecast.tasks)
    widest = Math.max(widest, textWidth(plainName(task.name), 13) + 12, textWidth(share(task), 12) + 12);
  const nameWidth = inline ? width - dateWidth - 12 : Math.min(width * 0.3, widest);
  const left = inline ? 4 : nameWidth + 20;
  const right = inline ? width - 10 : width - dateWidth - 14;
  const [from, to] = range(forecast);
  const x = (day: number) => left + ((day - from) / (to - from)) * (right - left);

  const marks: (FlagText & { day: number })[] = [
    {
      level: "committed",
      title: "Committed",
      detail: `${formatDate(forecast.committed.date)} · ${level}`,
      day: forecast.committed.day,
    },
  ];
  const { finishBy } = forecast.asked;
  const asked = askedDay(forecast);
  if (finishBy !== undefined && asked >= from && asked <= to)
    marks.push({ level: "asked", title: "Asked for", detail: formatDate(finishBy), day: asked });
  const at = marks.map((mark) => x(mark.day));
  // In a narrow drawing the heading of the dates has a line of its own under the labels.
  const plan = planFlags(marks, at, 2, inline ? width - 2 : right + 8);
  const top = plan.height + (inline ? 34 : 12);

  const phaseHeight = 30;
  const rowHeight = inline ? 52 : 34;
  const middles: number[] = [];
  let y = top;
  for (const row of rows) {
    middles.push(y + (row.kind === "phase" ? 19 : inline ? 34 : rowHeight / 2));
    y += row.kind === "phase" ? phaseHeight : rowHeight;
  }
  const bottom = y + 4;
  const svg = openSvg(document, width, bottom + 50, colours);
  const ticks = calendarTicks(forecast.plan.start, from, to, Math.floor((right - left) / 62));

  const grid = make(document, "g", { stroke: colours.hairline });
  const bars = make(document, "g");
  const texts = make(document, "g");
  texts.append(
    make(
      document,
      "text",
      { x: width - 2, y: top - 8, "text-anchor": "end", fill: colours.committed },
      `${level} by`,
    ),
  );
  const { poles, labels } = drawFlags(
    document,
    marks,
    at,
    plan,
    top - (inline ? 24 : 0),
    inline ? top - 24 : bottom,
    colours,
  );
  rows.forEach((row, k) => {
    const middle = middles[k] ?? 0;
    if (row.kind === "phase") {
      const heading = { x: inline ? 2 : 0, y: middle, "font-size": 13, "font-weight": 600 };
      texts.append(
        make(document, "text", heading, fitText(row.name, inline ? width - 4 : nameWidth, 13, true)),
      );
      // The axis is far from the first rows of a long plan: each phase repeats it.
      if (!inline && rows.length > 20)
        texts.append(...tickWords(document, ticks, x, middle, right, at, colours));
      return;
    }
    // Month lines stand beside the bars only, so that nothing runs through a name.
    for (const tick of ticks) {
      const line = { x1: x(tick.day), x2: x(tick.day), y1: middle - barHalf, y2: middle + barHalf };
      grid.append(make(document, "line", line));
    }
    const place = { x: inline ? 2 : 8, y: inline ? middle - 18 : middle, width: nameWidth - 8, inline };
    const { task } = row;
    bars.append(make(document, "title", {}, describe(task, level)));
    bars.append(drawTaskBar(document, task, x, middle, colours));
    texts.append(itemLabel(document, plainName(task.name), share(task), place, colours));
    const date = { x: width - 2, y: inline ? middle - 18 : middle + 4.5, "text-anchor": "end" };
    texts.append(make(document, "text", date, formatDate(task.finishDates.committed)));
  });
  svg.append(grid, poles, bars, calendarAxis(document, ticks, x, bottom, left, right, colours));
  marks.forEach((mark, k) => {
    if (mark.level === "asked") svg.append(levelShape(document, "asked", at[k] ?? 0, bottom, colours));
  });
  svg.append(texts, labels);
  return svg;
}

function tickWords(
  document: Document,
  ticks: readonly CalendarTick[],
  x: (day: number) => number,
  y: number,
  right: number,
  poles: readonly number[],
  colours: Palette,
): SVGElement[] {
  return ticks.flatMap(({ day, label, below }) => {
    const words = below === "" ? label : `${label} ${below}`;
    const from = x(day) + 4;
    const to = from + textWidth(words, 12);
    const hidden = label === "" || to > right + 12 || poles.some((pole) => pole > from - 3 && pole < to + 3);
    return hidden ? [] : [make(document, "text", { x: from, y, fill: colours.inkQuiet }, words)];
  });
}

/** A task that is not always needed says in how many futures it is. */
function share(task: TaskForecast): string {
  return task.needed < 1 ? `in ${formatPercent(task.needed)} of futures` : "";
}

function describe(task: TaskForecast, level: string): string {
  const { p10, p50, p90, committed } = task.finishDates;
  return `${plainName(task.name)}: finishes ${formatDate(p10)} to ${formatDate(p90)}, half by ${formatDate(p50)}, ${level} by ${formatDate(committed)}`;
}

function range({ tasks, committed }: Forecast): [number, number] {
  let from = Math.min(0, committed.day);
  let to = committed.day;
  for (const { start, finish, asWritten } of tasks) {
    from = Math.min(from, start.p10, finish.p10);
    to = Math.max(to, finish.p90);
    if (!asWritten.needed) continue;
    from = Math.min(from, asWritten.start);
    to = Math.max(to, asWritten.finish);
  }
  const margin = Math.max(1, (to - from) * 0.015);
  return [from - margin, to + margin];
}

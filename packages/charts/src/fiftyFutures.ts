import type { Forecast } from "@leeway/core";
import * as Plot from "@observablehq/plot";
import { calendarAxis } from "./axes/calendarAxis.ts";
import { valueAt } from "./curves/interpolate.ts";
import { askedDay } from "./dates/askedDay.ts";
import { calendarTicks } from "./dates/calendarTicks.ts";
import { finishDate } from "./dates/dayToIso.ts";
import { arrangeDots, type DotArrangement } from "./dots/arrangeDots.ts";
import { drawFlags, type FlagText, planFlags } from "./draw/flags.ts";
import { levelShape } from "./draw/levels.ts";
import { drawingWidth, openSvg } from "./draw/openSvg.ts";
import { plotLayer } from "./draw/plotLayer.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { palette } from "./palette.ts";
import { formatDate } from "./words/formatDate.ts";
import { groupDigits } from "./words/groupDigits.ts";

const count = 50;

/** A level on the axis, and how many of the dots make it. */
interface DotMark extends FlagText {
  day: number;
  made: number;
}

/**
 * Fifty ways it could go: fifty finishes spread evenly over the quantiles, as dots on the calendar. Full dots
 * make the committed date, rings do not. Counted in whole days: a future that ends on a date ends by that date.
 *
 * Reads `finish.curve`, `committed`, `asWritten`, `asked`.
 * Source: quantile dots as a display of 50, Fernandes, Walls, Munson, Hullman & Kay (2018), Uncertainty
 * displays using quantile dotplots or CDFs improve transit decision-making, CHI; recalled from memory.
 */
export function fiftyFutures(forecast: Forecast, options: ChartOptions): Figure {
  const { finish, committed, asWritten, asked, plan, iterations } = forecast;
  // To the end of the day: who finishes on the committed date, at whatever hour, has made it.
  const end = (day: number) => Math.ceil(day - 1e-9);
  const due = end(committed.day);
  const days = Array.from({ length: count }, (_, k) => valueAt(finish.curve, (k + 0.5) / count)).map((day) =>
    Number.isFinite(day) ? end(day) : due,
  );
  const madeBy = (day: number) => days.filter((each) => each <= end(day)).length;
  const mark = (level: FlagText["level"], title: string, iso: string, day: number): DotMark => ({
    level,
    title,
    detail: `${formatDate(iso)} · ${madeBy(day)} of ${count}`,
    day: end(day),
    made: madeBy(day),
  });
  const marks = [mark("asWritten", "As written", asWritten.finish, asWritten.day)];
  if (asked.finishBy !== undefined)
    marks.push(mark("asked", "Asked for", asked.finishBy, askedDay(forecast)));
  const commitment = mark("committed", "Committed", committed.date, committed.day);
  marks.push(commitment);
  const first = days[0] ?? due;
  const last = days[count - 1] ?? due;
  const { svg, arrangement } = drawDots(days, marks, plan.start, due, options);

  const by = formatDate(committed.date, "weekday");
  const request =
    asked.finishBy === undefined
      ? ""
      : `, ${madeBy(askedDay(forecast))} by ${formatDate(asked.finishBy)} as asked`;
  const all = first === last;
  return {
    title: all
      ? `All ${count} futures finish on ${by}`
      : `${commitment.made} of ${count} futures finish by ${by}${request}`,
    subtitle: `Each dot is one way this could go: ${count} finishes that stand for ${groupDigits(iterations)}. ${columnWords(arrangement.days)}; rings finish after the committed date`,
    summary: `${count} dots on a calendar, from ${formatDate(finishDate(plan.start, first))} to ${formatDate(finishDate(plan.start, last))}: ${commitment.made} finish by the committed date, ${formatDate(committed.date, "long")}, and ${madeBy(asWritten.day)} by the date of the plan as written, ${formatDate(asWritten.finish)}.`,
    table: {
      columns: [
        { name: "Future", align: "end" },
        { name: "Finishes", align: "end" },
        { name: "Committed date", align: "start" },
      ],
      rows: days.map((day, k) => [
        String(k + 1),
        formatDate(finishDate(plan.start, day), "weekday"),
        day <= due ? "made" : "missed",
      ]),
    },
    svg,
  };
}

function columnWords(days: number): string {
  if (days === 1) return "One column is one day";
  return days === 7 ? "One column is one week" : `One column is ${groupDigits(days / 7)} weeks`;
}

function drawDots(
  days: readonly number[],
  marks: readonly DotMark[],
  start: string,
  anchor: number,
  options: ChartOptions,
): { svg: SVGSVGElement; arrangement: DotArrangement } {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const [left, right] = [2, width - 16];
  const first = days[0] ?? anchor;
  const last = days[days.length - 1] ?? anchor;
  const own = Math.max(last - first, 14);
  const near = marks.filter(({ day }) => Math.max(last, day) - Math.min(first, day) <= 2.5 * own);
  const from = Math.min(first - 1, ...near.map(({ day }) => day - own * 0.03));
  const to = Math.max(last, ...near.map(({ day }) => day + own * 0.03));
  const room = width < 520 ? 210 : 240;
  const arrangement = arrangeDots(days, anchor, from, to, right - left, room);
  const scale = (day: number) =>
    left + ((day - arrangement.from) / (arrangement.to - arrangement.from)) * (right - left);
  const inside = (day: number) => Math.max(arrangement.from, Math.min(arrangement.to, day));
  const at = marks.map(({ day }) => scale(inside(day)));
  const flags = marks.map((each) => {
    const beyond = each.day < arrangement.from ? "← " : "";
    return { ...each, title: `${beyond}${each.title}${each.day > arrangement.to ? " →" : ""}` };
  });
  const plan = planFlags(flags, at, 2, width - 2);
  const top = plan.height + 12;
  const bottom = top + Math.max(70, arrangement.height + 6);
  const height = bottom + 50;
  const svg = openSvg(document, width, height, colours);
  const radius = Math.max(1.2, arrangement.pitch / 2 - 1.5);
  const dots = arrangement.dots.map((dot, k) => ({
    x: left + dot.x,
    y: bottom - 2 - dot.y,
    made: (days[k] ?? 0) <= anchor,
  }));
  const layer = plotLayer(document, {
    width,
    height,
    margin: 0,
    x: { type: "identity" },
    y: { type: "identity" },
    marks: [
      Plot.dot(
        dots.filter((dot) => dot.made),
        { x: "x", y: "y", r: radius, fill: colours.committed, stroke: "none" },
      ),
      Plot.dot(
        dots.filter((dot) => !dot.made),
        {
          x: "x",
          y: "y",
          r: Math.max(0.8, radius - 0.75),
          fill: colours.paper,
          stroke: colours.ink,
          strokeWidth: 1.5,
        },
      ),
    ],
  });
  const ticks = calendarTicks(start, arrangement.from, arrangement.to, Math.floor((right - left) / 62));
  const { poles, labels } = drawFlags(document, flags, at, plan, top, bottom, colours);
  svg.append(poles, layer.group, calendarAxis(document, ticks, scale, bottom, left, right, colours));
  marks.forEach(({ level }, k) => {
    if (level !== "committed") svg.append(levelShape(document, level, at[k] ?? 0, bottom, colours));
  });
  svg.append(labels);
  return { svg, arrangement };
}

import { calendarAxis } from "../axes/calendarAxis.ts";
import { moneyUnit, roundTicks, tickLabels } from "../axes/roundTicks.ts";
import { calendarTicks } from "../dates/calendarTicks.ts";
import { drawFlags, type FlagText, planFlags } from "../draw/flags.ts";
import { make, px } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { placeAlong } from "../labels/placeAlong.ts";
import { palette } from "../palette.ts";

/** One month: its first day and the day after its last, in days since the start. */
export interface SpendMonth {
  from: number;
  to: number;
  /** Spent in it, on average. */
  mean: number;
  /** Spent by its end, at least as much as in half and in eight tenths of the futures. */
  p50: number;
  p80: number;
  released?: number;
}

export interface SpendingView {
  start: string;
  currency: string;
  months: SpendMonth[];
  /** Marked at the end of its month. */
  mark?: FlagText & { day: number };
  /** Heading of the bars of each month. */
  means: string;
  /** A sum beside the end of a line, and as it is written on an axis. */
  sum: (value: number) => string;
}

/** Money spent by the end of each month as a band against money released, and under it the mean of each month. */
export function drawSpending(view: SpendingView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const { months, mark } = view;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const last = months[months.length - 1];
  const days: [number, number] = [months[0]?.from ?? 0, last?.to ?? 1];
  const spent = months.flatMap(({ p50, p80 }) => [p50, p80]);
  const low = Math.min(0, ...spent);
  const most = Math.max(low + 1e-9, ...spent);
  const released = months.map((month) => month.released).filter((each) => each !== undefined);
  // Money far beyond what is spent would press the band to the ground: it is cut, with an arrow at its name.
  const high = Math.min(Math.max(most, ...released), low + 1.8 * (most - low));

  const unit = moneyUnit(Math.max(Math.abs(low), high), view.currency);
  const plotHeight = width < 520 ? 200 : 260;
  const ticks = roundTicks(low, high, Math.floor(plotHeight / 44));
  const labels = tickLabels(ticks, unit.divisor);
  const left = 12 + labels.reduce((widest, label) => Math.max(widest, textWidth(label, 12)), 0);
  const ends = [
    { name: "P80", value: last?.p80 ?? 0 },
    { name: "P50", value: last?.p50 ?? 0 },
    ...(last?.released === undefined ? [] : [{ name: "Released", value: last.released }]),
  ].map(({ name, value }) => ({
    name: value > high ? `${name} ↑` : name,
    value,
    text: view.sum(value),
  }));
  const endWidth = ends.reduce(
    (widest, { name, text }) => Math.max(widest, textWidth(name, 12, true), textWidth(text, 12)),
    0,
  );
  const right = width - 12 - endWidth;
  const x = (day: number) => left + ((day - days[0]) / (days[1] - days[0])) * (right - left);
  const flags = mark === undefined ? [] : [mark];
  const at = flags.map(({ day }) => x(day));
  const plan = planFlags(flags, at, 2, width - 2);
  const top = plan.height + 30;
  const bottom = top + plotHeight;
  const y = (value: number) => bottom - ((Math.min(value, high) - low) / (high - low)) * plotHeight;
  const barTop = bottom + 34;
  const barHeight = 46;
  const base = barTop + barHeight;
  const svg = openSvg(document, width, base + 50, colours);

  const band = make(document, "g");
  const upper = corners(months, (month) => month.p80);
  const lower = corners(months, (month) => month.p50);
  const line = (points: [number, number][]) => points.map(([a, b]) => `${px(x(a))},${px(y(b))}`).join("L");
  const around = `M${line([...upper, ...lower.reverse()])}Z`;
  band.append(make(document, "path", { d: around, fill: colours.rangeCore }));
  for (const points of [upper, lower])
    band.append(
      make(document, "path", {
        d: `M${line(points)}`,
        fill: "none",
        stroke: colours.rangeEdge,
        "stroke-width": 1.5,
      }),
    );
  const funds = make(document, "g", { fill: "none" });
  const steps = months.flatMap(({ from, to, released: sum }) =>
    sum === undefined
      ? []
      : ([
          [from, sum],
          [to, sum],
        ] as [number, number][]),
  );
  if (steps.length > 0)
    funds.append(
      make(document, "path", {
        d: `M${line(steps)}`,
        stroke: colours.ink,
        "stroke-width": 2,
        "stroke-dasharray": "11 4",
      }),
    );

  const axes = make(document, "g", { fill: colours.inkQuiet });
  axes.append(make(document, "text", { x: 2, y: top - 8 }, unit.name));
  axes.append(make(document, "line", { x1: left, x2: left, y1: top, y2: bottom, stroke: colours.ink }));
  axes.append(make(document, "line", { x1: left, x2: right, y1: y(0), y2: y(0), stroke: colours.ink }));
  ticks.forEach((tick, k) => {
    const short = { x1: left - 5, x2: left, y1: y(tick), y2: y(tick), stroke: colours.ink };
    axes.append(make(document, "line", short));
    if (y(tick) > top + 6)
      axes.append(
        make(document, "text", { x: left - 8, y: y(tick) + 4, "text-anchor": "end" }, labels[k] ?? ""),
      );
  });

  const wishes = ends.map(({ value }) => ({ at: y(value), size: 28 }));
  const rows = placeAlong(wishes, top - 12, bottom + 14, 2) ?? wishes.map((wish) => wish.at);
  const words = make(document, "g");
  ends.forEach(({ name, text }, k) => {
    const label = { x: right + 8, fill: name.startsWith("P") ? colours.inkQuiet : colours.ink };
    const row = rows[k] ?? 0;
    words.append(make(document, "text", { ...label, y: row - 2, "font-weight": 600 }, name));
    words.append(make(document, "text", { ...label, y: row + 12, fill: colours.ink }, text));
  });

  const means = make(document, "g");
  const scale = months.reduce((largest, { mean }) => Math.max(largest, Math.abs(mean)), 1e-9);
  for (const { from, to, mean } of months) {
    const tall = (Math.abs(mean) / scale) * barHeight;
    const wide = Math.max(1, x(to) - x(from) - 2);
    const paint =
      mean < 0
        ? { fill: colours.paper, stroke: colours.ink }
        : { fill: colours.rangeCore, stroke: colours.rangeEdge };
    if (tall > 0.05)
      if (tall > 0.05)
        means.append(
          make(document, "rect", { x: x(from) + 1, y: base - tall, width: wide, height: tall, ...paint }),
        );
  }
  means.append(make(document, "text", { x: 2, y: barTop - 10, fill: colours.inkQuiet }, view.means));
  const { poles, labels: flagLabels } = drawFlags(document, flags, at, plan, top - 18, bottom, colours);
  const months12 = calendarTicks(view.start, days[0], days[1], Math.floor((right - left) / 52));
  svg.append(band, axes, funds, poles, words, means);
  svg.append(calendarAxis(document, months12, x, base, left, right, colours), flagLabels);
  return svg;
}

/** Spent by the end of each month, from nothing at the start of the first. */
function corners(months: readonly SpendMonth[], value: (month: SpendMonth) => number): [number, number][] {
  const first = months[0];
  const start: [number, number][] = first === undefined ? [] : [[first.from, 0]];
  return [...start, ...months.map((month): [number, number] => [month.to, value(month)])];
}

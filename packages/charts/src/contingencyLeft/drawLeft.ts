import { calendarAxis } from "../axes/calendarAxis.ts";
import { moneyUnit, roundTicks, tickLabels } from "../axes/roundTicks.ts";
import { calendarTicks } from "../dates/calendarTicks.ts";
import { make, px } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { placeAlong } from "../labels/placeAlong.ts";
import { palette } from "../palette.ts";

export interface LeftView {
  start: string;
  /** The currency, or "working days". */
  unit: string;
  money: boolean;
  /** Exposure from a day (since the start) on; the last ends at nothing. */
  steps: { day: number; value: number }[];
  /** What is left now, where something was agreed. */
  left?: number;
  say: (value: number) => string;
}

/** Exposure ahead as a falling staircase against what is left, a level line. */
export function drawLeft(view: LeftView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const { steps, left: kept } = view;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const values = [...steps.map(({ value }) => value), ...(kept === undefined ? [] : [kept])];
  const low = Math.min(0, ...values);
  const high = Math.max(low + 1e-9, ...values);
  const unit = view.money ? moneyUnit(high, view.unit) : { divisor: 1, name: view.unit };
  const plotHeight = width < 520 ? 180 : 240;
  const ticks = roundTicks(low, high, Math.floor(plotHeight / 44));
  const labels = tickLabels(ticks, unit.divisor);
  const left = 12 + labels.reduce((widest, label) => Math.max(widest, textWidth(label, 12)), 0);
  const first = steps[0] ?? { day: 0, value: 0 };
  const last = steps.at(-1) ?? first;
  const names = [
    { name: "May be needed", value: first.value, text: view.say(first.value), fill: colours.inkQuiet },
    ...(kept === undefined
      ? []
      : [{ name: "Left", value: kept, text: view.say(kept), fill: colours.committed }]),
  ];
  const side = names.reduce(
    (widest, { name, text }) => Math.max(widest, textWidth(name, 12, true), textWidth(text, 12)),
    0,
  );
  const right = width - 16 - side;
  const span = Math.max(1, last.day - first.day);
  const x = (day: number) => left + ((day - first.day) / span) * (right - left);
  const top = 34;
  const bottom = top + plotHeight;
  const y = (value: number) => bottom - ((value - low) / (high - low)) * plotHeight;
  const svg = openSvg(document, width, bottom + 50, colours);

  // Each value holds until the day of the next: it falls when a month is behind.
  const corners = steps.flatMap(({ day, value }, i): [number, number][] => {
    const next = steps[i + 1];
    return next === undefined
      ? [[day, value]]
      : [
          [day, value],
          [next.day, value],
        ];
  });
  const line = corners.map(([day, value]) => `${px(x(day))},${px(y(value))}`).join("L");
  const area = make(document, "g");
  area.append(
    make(document, "path", {
      d: `M${px(x(first.day))},${px(y(0))}L${line}L${px(x(last.day))},${px(y(0))}Z`,
      fill: colours.rangeCore,
    }),
    make(document, "path", { d: `M${line}`, fill: "none", stroke: colours.rangeEdge, "stroke-width": 1.5 }),
  );
  const axes = make(document, "g", { fill: colours.inkQuiet });
  axes.append(make(document, "text", { x: 2, y: top - 16 }, unit.name));
  axes.append(make(document, "line", { x1: left, x2: left, y1: top, y2: bottom, stroke: colours.ink }));
  if (low < 0)
    axes.append(make(document, "line", { x1: left, x2: right, y1: y(0), y2: y(0), stroke: colours.ink }));
  ticks.forEach((tick, k) => {
    axes.append(
      make(document, "line", { x1: left - 5, x2: left, y1: y(tick), y2: y(tick), stroke: colours.ink }),
    );
    if (y(tick) > top - 4)
      axes.append(
        make(document, "text", { x: left - 8, y: y(tick) + 4, "text-anchor": "end" }, labels[k] ?? ""),
      );
  });
  const words = make(document, "g");
  if (kept !== undefined)
    words.append(
      make(document, "line", {
        x1: left,
        x2: right,
        y1: y(kept),
        y2: y(kept),
        stroke: colours.committed,
        "stroke-width": 2,
      }),
    );
  const wishes = names.map(({ value }) => ({ at: y(value), size: 28 }));
  const rows = placeAlong(wishes, top - 14, bottom + 14, 2) ?? wishes.map(({ at }) => at);
  names.forEach(({ name, text, fill }, k) => {
    const row = rows[k] ?? 0;
    words.append(
      make(document, "text", { x: right + 8, y: row - 2, "font-weight": 600, fill }, name),
      make(document, "text", { x: right + 8, y: row + 12 }, text),
    );
  });
  const months = calendarTicks(view.start, first.day, last.day, Math.floor((right - left) / 52));
  svg.append(area, axes, words, calendarAxis(document, months, x, bottom, left, right, colours));
  return svg;
}

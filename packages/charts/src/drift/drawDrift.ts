import { calendarAxis } from "../axes/calendarAxis.ts";
import { calendarTicks } from "../dates/calendarTicks.ts";
import { levelLine, levelShape } from "../draw/levels.ts";
import { make, px } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { placeAlong } from "../labels/placeAlong.ts";
import { type Palette, palette } from "../palette.ts";

/** One kept forecast: the day it speaks from, and what it committed to, in one unit going up. */
export interface DriftMark {
  /** Days since `start` of the view. */
  at: number;
  value: number;
  low: number;
  high: number;
  /** What was asked for then. */
  asked?: number;
  /** Signed, or not only progress since the one before. */
  kind: "plain" | "changed" | "signed";
}

export interface DriftView {
  /** The day from which `at` counts. */
  start: string;
  marks: DriftMark[];
  /** What goes up, over the axis. */
  unit: string;
  /** Ticks of what goes up, ascending. */
  ticks: (from: number, to: number, most: number) => { at: number; label: string }[];
  /** A value beside the end of its line. */
  text: (value: number) => string;
  /** Least range of the axis that goes up. */
  padding: number;
}

/** Commitments over the days they speak from: a band from P10 to P90, the line committed to, what was asked for. */
export function drawDrift(view: DriftView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const { marks } = view;
  const first = marks[0]?.at ?? 0;
  const last = marks.at(-1);
  const span: [number, number] = [first, Math.max(last?.at ?? 0, first + 7)];
  const values = marks.flatMap(({ low, high, value, asked }) => [low, high, value, asked ?? value]);
  const [low, high] = padded(Math.min(...values), Math.max(...values), view.padding);

  const plotHeight = width < 520 ? 220 : 270;
  const ticks = view.ticks(low, high, Math.floor(plotHeight / 40));
  const left = 12 + ticks.reduce((widest, { label }) => Math.max(widest, textWidth(label, 12)), 0);
  const ends = endsOf(view);
  const endWidth = ends.reduce(
    (widest, { name, text }) => Math.max(widest, textWidth(name, 12, true), textWidth(text, 12)),
    0,
  );
  const right = Math.max(left + 40, width - 14 - endWidth);
  const top = 34;
  const bottom = top + plotHeight;
  // Half a mark of room on either side, so that the first and last stand free of the axes.
  const x = (day: number) => left + 10 + ((day - span[0]) / (span[1] - span[0])) * (right - left - 18);
  const y = (value: number) => bottom - ((value - low) / (high - low)) * plotHeight;
  const svg = openSvg(document, width, bottom + 52, colours);

  const axes = make(document, "g", { fill: colours.inkQuiet });
  axes.append(make(document, "text", { x: 2, y: top - 16 }, view.unit));
  axes.append(make(document, "line", { x1: left, x2: left, y1: top, y2: bottom, stroke: colours.ink }));
  for (const { at, label } of ticks) {
    axes.append(
      make(document, "line", { x1: left - 5, x2: left, y1: y(at), y2: y(at), stroke: colours.ink }),
    );
    axes.append(make(document, "text", { x: left - 8, y: y(at) + 4, "text-anchor": "end" }, label));
  }
  const months = calendarTicks(view.start, span[0], span[1], Math.floor((right - left) / 58));
  svg.append(band(document, marks, x, y, colours), asked(document, marks, x, y, colours), axes);
  svg.append(line(document, marks, x, y, colours));
  svg.append(calendarAxis(document, months, x, bottom, left, right, colours));
  svg.append(endLabels(document, ends, right, top, bottom, y, colours));
  return svg;
}

function padded(low: number, high: number, least: number): [number, number] {
  const margin = Math.max((high - low) * 0.06, (least - (high - low)) / 2, 1e-9);
  return [low - margin, high + margin];
}

type Scale = (value: number) => number;

function band(
  document: Document,
  marks: readonly DriftMark[],
  x: Scale,
  y: Scale,
  colours: Palette,
): SVGGElement {
  const group = make(document, "g", { fill: "none" });
  const corner = (of: "low" | "high") => (mark: DriftMark) => `${px(x(mark.at))},${px(y(mark[of]))}`;
  const around = [...marks.map(corner("high")), ...[...marks].reverse().map(corner("low"))];
  if (marks.length > 1) {
    group.append(make(document, "path", { d: `M${around.join("L")}Z`, fill: colours.rangeCore }));
    for (const of of ["low", "high"] as const) {
      const d = `M${marks.map(corner(of)).join("L")}`;
      group.append(make(document, "path", { d, stroke: colours.rangeEdge, "stroke-width": 1.5 }));
    }
  }
  // Between forecasts nothing was known anew: each stands on a stroke of its own.
  for (const { at, low, high } of marks) {
    const stroke = { stroke: colours.rangeEdge, "stroke-width": marks.length > 1 ? 1 : 3 };
    group.append(make(document, "line", { x1: x(at), x2: x(at), y1: y(low), y2: y(high), ...stroke }));
  }
  return group;
}

/** What was asked for, in steps: it holds from the forecast that first has it. */
function asked(
  document: Document,
  marks: readonly DriftMark[],
  x: Scale,
  y: Scale,
  colours: Palette,
): SVGGElement {
  const group = make(document, "g", { fill: "none" });
  marks.forEach(({ at, asked: value }, k) => {
    if (value === undefined) return;
    const next = marks[k + 1];
    const until = next === undefined ? x(at) + 8 : x(next.at);
    const here = { x1: x(at), x2: until, y1: y(value), y2: y(value) };
    group.append(make(document, "line", { ...here, ...levelLine("asked", colours) }));
  });
  return group;
}

function line(
  document: Document,
  marks: readonly DriftMark[],
  x: Scale,
  y: Scale,
  colours: Palette,
): SVGGElement {
  const group = make(document, "g");
  const points = marks.map(({ at, value }) => `${px(x(at))},${px(y(value))}`);
  if (points.length > 1) {
    const d = `M${points.join("L")}`;
    group.append(make(document, "path", { d, fill: "none", ...levelLine("committed", colours) }));
  }
  for (const { at, value, kind } of marks) {
    const [cx, cy] = [x(at), y(value)];
    if (kind === "plain") group.append(levelShape(document, "committed", cx, cy, colours));
    else {
      // A square for what was signed; hollow where the plan itself was changed.
      const fill = kind === "signed" ? colours.committed : colours.paper;
      const stroke = { stroke: colours.committed, "stroke-width": 2 };
      group.append(make(document, "rect", { x: cx - 5, y: cy - 5, width: 10, height: 10, fill, ...stroke }));
    }
  }
  return group;
}

interface End {
  name: string;
  text: string;
  at: number;
  strong: boolean;
}

function endsOf({ marks, text }: DriftView): End[] {
  const last = marks.at(-1);
  if (last === undefined) return [];
  const wide = last.high > last.low;
  return [
    { name: "Committed", text: text(last.value), at: last.value, strong: true },
    ...(wide && last.high > last.value
      ? [{ name: "P90", text: text(last.high), at: last.high, strong: false }]
      : []),
    ...(wide && last.low < last.value
      ? [{ name: "P10", text: text(last.low), at: last.low, strong: false }]
      : []),
    ...(last.asked === undefined
      ? []
      : [{ name: "Asked for", text: text(last.asked), at: last.asked, strong: false }]),
  ];
}

function endLabels(
  document: Document,
  ends: readonly End[],
  right: number,
  top: number,
  bottom: number,
  y: Scale,
  colours: Palette,
): SVGGElement {
  const wishes = ends.map(({ at }) => ({ at: y(at), size: 28 }));
  const rows = placeAlong(wishes, top - 20, bottom + 14, 2) ?? wishes.map(({ at }) => at);
  const group = make(document, "g");
  ends.forEach(({ name, text, strong }, k) => {
    const row = rows[k] ?? 0;
    const fill = strong ? colours.committed : colours.inkQuiet;
    group.append(make(document, "text", { x: right + 10, y: row - 2, "font-weight": 600, fill }, name));
    group.append(make(document, "text", { x: right + 10, y: row + 12 }, text));
  });
  return group;
}

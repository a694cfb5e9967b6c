import { roundTicks, tickLabels } from "../axes/roundTicks.ts";
import { itemLabel } from "../draw/itemLabel.ts";
import { make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { rowFrame } from "../draw/rowFrame.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { palette } from "../palette.ts";

/** A range with its likely value, and what happened where that is known. */
export interface RangeRow {
  name: string;
  /** Beside the name, quiet. */
  word: string;
  low: number;
  likely: number;
  high: number;
  actual?: number;
  /** The figures in words, at the right. */
  text: string;
  /** Drawn heavier: what the others come to. */
  strong?: boolean;
}
export interface RangeAxis {
  /** Above the axis. */
  name: string;
  /** A level that is marked through all rows, with its name. */
  at?: { value: number; name: string };
}

const TOP = 40;

/**
 * A bar from low to high per row, a tick at the likely value, a dot at what happened: filled inside the bar, a ring
 * outside. Values on one axis for all rows.
 */
export function drawRanges(rows: readonly RangeRow[], axis: RangeAxis, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const text = Math.max(0, ...rows.map((row) => textWidth(row.text, 13) + 12));
  const frame = rowFrame(width, {
    names: rows.map(({ name }) => name),
    words: rows.map(({ word }) => word),
    beside: text,
  });
  const right = frame.inline ? width - 10 : width - text - 10;
  const values = rows.flatMap(({ low, high, actual }) => [
    low,
    high,
    ...(actual === undefined ? [] : [actual]),
  ]);
  const most = Math.max(...values, axis.at?.value ?? 0);
  const least = Math.min(0, ...values);
  const span = most - least || 1;
  const left = frame.left + 8;
  const x = (value: number) => left + ((value - least) / span) * (right - left);
  const bottom = TOP + frame.height;
  const svg = openSvg(document, width, bottom + 6, colours);
  const put = (node: SVGElement) => svg.append(node);
  const line = (x1: number, y1: number, y2: number, more: Record<string, string | number>) =>
    put(make(document, "line", { x1, x2: x1, y1, y2, ...more }));

  put(make(document, "text", { x: left, y: 12, fill: colours.inkQuiet }, axis.name));
  const ticks = roundTicks(least, most, Math.max(2, (right - left) / 90));
  tickLabels(ticks).forEach((label, k) => {
    const at = x(ticks[k] ?? 0);
    put(make(document, "text", { x: at, y: 28, "text-anchor": "middle", fill: colours.inkQuiet }, label));
    line(at, 32, 36, { stroke: colours.inkQuiet });
  });
  if (axis.at !== undefined) {
    const at = x(axis.at.value);
    const drawn = { stroke: colours.asWritten, "stroke-dasharray": "4 3" };
    // In a narrow drawing names stand above their bars: the line keeps clear of them.
    if (!frame.inline) line(at, 36, bottom, drawn);
    else for (const k of rows.keys()) line(at, TOP + frame.middle(k) - 9, TOP + frame.middle(k) + 9, drawn);
    const anchor = at > width - 80 ? "end" : "start";
    const place = { x: at + (anchor === "end" ? -4 : 4), y: bottom + 9, "text-anchor": anchor };
    put(make(document, "text", { ...place, fill: colours.asWritten }, axis.at.name));
    svg.setAttribute("height", String(bottom + 16));
    svg.setAttribute("viewBox", `0 0 ${width} ${bottom + 16}`);
  }
  rows.forEach((row, k) => {
    put(itemLabel(document, row.name, row.word, frame.label(k, TOP), colours));
    const y = TOP + frame.middle(k);
    const fill = row.strong === true ? colours.committed : colours.rangeCore;
    const bar = { x: x(row.low), y: y - 6, width: Math.max(1, x(row.high) - x(row.low)), height: 12 };
    put(make(document, "rect", { ...bar, fill, stroke: row.strong === true ? fill : colours.rangeEdge }));
    const tick = row.strong === true ? colours.paper : colours.ink;
    line(x(row.likely), y - 6, y + 6, { stroke: tick, "stroke-width": 2 });
    if (row.actual !== undefined) {
      const inside = row.actual >= row.low && row.actual <= row.high;
      const dot = { cx: x(row.actual), cy: y, r: 5, stroke: colours.ink, "stroke-width": 2 };
      put(make(document, "circle", { ...dot, fill: inside ? colours.ink : colours.paper }));
    }
    const foot = { x: width - 2, y: TOP + frame.figureAt(k), "text-anchor": "end", "font-size": 13 };
    put(make(document, "text", { ...foot, ...(row.strong === true && { "font-weight": 600 }) }, row.text));
  });
  return svg;
}

import type { JointConfidence } from "@leeway/core";
import { calendarAxis } from "../axes/calendarAxis.ts";
import { moneyUnit, roundTicks, tickLabels } from "../axes/roundTicks.ts";
import { calendarTicks } from "../dates/calendarTicks.ts";
import { drawFlags, type FlagText, planFlags } from "../draw/flags.ts";
import { levelLine, levelShape } from "../draw/levels.ts";
import { make, px } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { palette } from "../palette.ts";
import { densityCells, densityRange } from "./densityCells.ts";

/** A pair that is marked: on a pole at its day, with a line to its sum. */
export interface JointMark extends FlagText {
  day: number;
  cost: number;
}

export interface JointView {
  currency: string;
  start: string;
  joint: JointConfidence;
  marks: JointMark[];
  /** Words at the curve of equal confidence. */
  curve: string;
}

/** Futures by day and sum as a density, the curve of equal confidence, and the pairs that are marked. */
export function drawJoint(view: JointView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const { density, frontier } = view.joint;
  const { currency, start } = view;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const range = densityRange(density);
  const days = widened(
    range.days,
    view.marks.map((mark) => mark.day),
    1,
  );
  const costs = widened(
    range.costs,
    view.marks.map((mark) => mark.cost),
    1,
  );

  const unit = moneyUnit(Math.max(Math.abs(costs[0]), Math.abs(costs[1])), currency);
  const plotHeight = width < 520 ? 240 : 340;
  const sums = roundTicks(costs[0], costs[1], Math.floor(plotHeight / 44));
  const sumLabels = tickLabels(sums, unit.divisor);
  const left = 12 + sumLabels.reduce((most, label) => Math.max(most, textWidth(label, 12)), 0);
  const right = width - 14;
  const x = (day: number) => left + ((inside(day, days) - days[0]) / (days[1] - days[0])) * (right - left);
  const at = view.marks.map((mark) => x(mark.day));
  const flags = view.marks.map((mark) => beyond(mark, days, costs));
  const plan = planFlags(flags, at, 2, width - 2);
  const top = plan.height + 30;
  const bottom = top + plotHeight;
  const y = (cost: number) =>
    bottom - ((inside(cost, costs) - costs[0]) / (costs[1] - costs[0])) * plotHeight;
  const svg = openSvg(document, width, bottom + 50, colours);

  const cells = make(document, "g");
  const tints = [colours.rangeEdge, colours.rangeCore, colours.rangeWide];
  for (const run of densityCells(density)) {
    const [x1, x2, y1, y2] = [x(run.fromDay), x(run.toDay), y(run.toCost), y(run.fromCost)];
    if (x2 - x1 < 0.01 || y2 - y1 < 0.01) continue;
    // Some overlap closes the seams between cells.
    const box = { x: x1, y: y1, width: x2 - x1 + 0.6, height: y2 - y1 + 0.6 };
    cells.append(make(document, "rect", { ...box, fill: tints[run.tint] }));
  }
  const curve = make(document, "g");
  const points = frontier.pairs
    .filter(({ day, cost }) => day >= days[0] && day <= days[1] && cost >= costs[0] && cost <= costs[1])
    .map(({ day, cost }) => [x(day), y(cost)] as const);
  if (points.length > 1) {
    const d = thinned(points).map(([a, b], k) => `${k === 0 ? "M" : "L"}${px(a)},${px(b)}`);
    const line = { d: d.join(""), fill: "none", "stroke-linejoin": "round" };
    curve.append(make(document, "path", { ...line, stroke: colours.paper, "stroke-width": 5 }));
    curve.append(make(document, "path", { ...line, stroke: colours.ink, "stroke-width": 2 }));
  }
  const { poles, labels } = drawFlags(document, flags, at, plan, top - 18, bottom, colours);
  const guides = make(document, "g", { fill: "none" });
  const shapes = make(document, "g");
  view.marks.forEach(({ level, cost }, k) => {
    const ends = { x1: left, x2: at[k], y1: y(cost), y2: y(cost) };
    guides.append(make(document, "line", { ...ends, ...levelLine(level, colours) }));
    shapes.append(levelShape(document, level, at[k] ?? left, y(cost), colours));
  });
  const axes = make(document, "g", { fill: colours.inkQuiet });
  axes.append(make(document, "text", { x: 2, y: top - 8 }, unit.name));
  axes.append(make(document, "line", { x1: left, x2: left, y1: top, y2: bottom, stroke: colours.ink }));
  sums.forEach((tick, k) => {
    const line = { x1: left - 5, x2: left, y1: y(tick), y2: y(tick), stroke: colours.ink };
    axes.append(make(document, "line", line));
    const text = { x: left - 8, y: y(tick) + 4, "text-anchor": "end" };
    // The name of the unit stands where a label at the very top would.
    if (y(tick) > top + 6) axes.append(make(document, "text", text, sumLabels[k] ?? ""));
  });
  const ticks = calendarTicks(start, days[0], days[1], Math.floor((right - left) / 62));
  axes.append(calendarAxis(document, ticks, x, bottom, left, right, colours));
  svg.append(cells, axes, guides, poles, curve, shapes, labels);
  const place = placeWords(view, points, at, y, textWidth(view.curve, 12), [left, right, top, bottom]);
  if (place !== undefined) {
    const [wordX, wordY] = place;
    const box = { x: wordX - 3, y: wordY - 11, width: textWidth(view.curve, 12) + 6, height: 15 };
    svg.append(make(document, "rect", { ...box, fill: colours.paper }));
    svg.append(make(document, "text", { x: wordX, y: wordY }, view.curve));
  }
  return svg;
}

type Range = [number, number];

function inside(value: number, [from, to]: Range): number {
  return Math.max(from, Math.min(to, value));
}

/** The range, and every mark that would not squeeze it to half of the room; never empty. */
function widened([from, to]: Range, marks: readonly number[], least: number): Range {
  let [low, high] = [from, to];
  for (const mark of marks) {
    if (Math.max(high, mark) - Math.min(low, mark) > 2 * (to - from)) continue;
    low = Math.min(low, mark);
    high = Math.max(high, mark);
  }
  const margin = Math.max((high - low) * 0.03, high - low < least ? least : 0);
  return [low - (low < from ? margin : 0), high + (high > to ? margin : 0) + (high > low ? 0 : least)];
}

/** A mark that lies beyond an axis says so: an arrow on its label. */
function beyond({ level, title, detail, day, cost }: JointMark, days: Range, costs: Range): FlagText {
  const before = day < days[0] ? "← " : "";
  const after = day > days[1] ? " →" : "";
  const aside = cost < costs[0] ? " ↓" : cost > costs[1] ? " ↑" : "";
  return { level, title: `${before}${title}${after}${aside}`, detail };
}

/** Points closer than half a px to the last one kept are left out. */
function thinned(points: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  const kept: (readonly [number, number])[] = [];
  for (const point of points) {
    const last = kept[kept.length - 1];
    if (last === undefined || Math.hypot(point[0] - last[0], point[1] - last[1]) >= 0.5) kept.push(point);
  }
  return kept;
}

/** A place beside the curve where its words touch no pole, no guide and no mark; none where there is no such place. */
function placeWords(
  { marks }: JointView,
  points: readonly (readonly [number, number])[],
  poles: readonly number[],
  y: (cost: number) => number,
  wide: number,
  [left, right, top, bottom]: readonly [number, number, number, number],
): [number, number] | undefined {
  const guides = marks.map(({ cost }, k) => ({ y: y(cost), to: poles[k] ?? left }));
  const free = (a: number, b: number) =>
    a >= left + 4 &&
    a + wide <= right &&
    b - 12 >= top &&
    b + 4 <= bottom - 2 &&
    poles.every((pole) => pole < a - 5 || pole > a + wide + 5) &&
    guides.every((guide) => guide.to < a - 5 || guide.y < b - 16 || guide.y > b + 8) &&
    points.every(([p, q]) => p < a - 4 || p > a + wide + 4 || q < b - 14 || q > b + 6);
  for (const [p, q] of [...points].reverse())
    for (const [a, b] of [
      [p - wide, q - 10],
      [p + 8, q - 8],
      [p - wide, q + 20],
    ] as const)
      if (free(a, b)) return [a, b];
  return undefined;
}

import * as Plot from "@observablehq/plot";
import { roundTicks, tickLabels } from "../axes/roundTicks.ts";
import { drawFlags, type FlagText, planFlags } from "../draw/flags.ts";
import { levelShape } from "../draw/levels.ts";
import { make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { plotLayer } from "../draw/plotLayer.ts";
import type { ChartOptions } from "../figure/types.ts";
import { palette } from "../palette.ts";
import type { DensityPoint } from "./densityPoints.ts";

export interface DensityView {
  points: DensityPoint[];
  /** The stronger tint runs between these. */
  core: { from: number; to: number };
  marks: (FlagText & { value: number })[];
  /** Under the axis. */
  unit: string;
}

const PLOT = 96;
const SIDE = 16;

/** A density with its one-in-ten ends, its levels on poles, and an axis of values. */
export function drawDensity(
  { points, core, marks, unit }: DensityView,
  options: ChartOptions,
): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const from = points[0]?.at ?? 0;
  const to = points[points.length - 1]?.at ?? 1;
  const scale = (value: number) => SIDE + ((value - from) / (to - from)) * (width - 2 * SIDE);
  const at = marks.map(({ value }) => scale(Math.max(from, Math.min(to, value))));
  const plan = planFlags(marks, at, 2, width - 2);
  const top = plan.height + 8;
  const bottom = top + PLOT;
  const height = bottom + 46;
  const svg = openSvg(document, width, height, colours);
  const most = points.reduce((high, { density }) => Math.max(high, density), 0);
  const layer = plotLayer(document, {
    width,
    height,
    marginLeft: SIDE,
    marginRight: SIDE,
    marginTop: top,
    marginBottom: height - bottom,
    x: { type: "linear", domain: [from, to] },
    y: { type: "linear", domain: [0, most] },
    marks: [
      Plot.areaY(points, { x: "at", y1: 0, y2: "density", fill: colours.rangeWide }),
      Plot.areaY(within(points, core), { x: "at", y1: 0, y2: "density", fill: colours.rangeCore }),
      Plot.lineY(points, {
        x: "at",
        y: "density",
        stroke: colours.ink,
        strokeWidth: 2,
        strokeLinejoin: "round",
      }),
    ],
  });
  const { poles, labels } = drawFlags(document, marks, at, plan, top, bottom, colours);
  const axis = make(document, "g", { fill: colours.inkQuiet });
  axis.append(
    make(document, "line", { x1: SIDE, x2: width - SIDE, y1: bottom, y2: bottom, stroke: colours.ink }),
  );
  const ticks = roundTicks(from, to, Math.max(2, width / 70));
  tickLabels(ticks).forEach((label, k) => {
    const x = layer.x(ticks[k] ?? 0);
    axis.append(
      make(document, "line", { x1: x, x2: x, y1: bottom, y2: bottom + 6, stroke: colours.ink }),
      make(document, "text", { x, y: bottom + 21, "text-anchor": "middle" }, label),
    );
  });
  axis.append(make(document, "text", { x: width / 2, y: bottom + 39, "text-anchor": "middle" }, unit));
  const shapes = make(document, "g");
  marks.forEach(({ level }, k) => {
    shapes.append(levelShape(document, level, at[k] ?? 0, bottom, colours));
  });
  svg.append(layer.group, axis, poles, shapes, labels);
  return svg;
}

/** The part of a curve between two values, with points at its ends. */
function within(points: DensityPoint[], { from, to }: DensityView["core"]): DensityPoint[] {
  const inside = points.filter(({ at }) => at > from && at < to);
  return [
    { at: from, density: heightAt(points, from) },
    ...inside,
    { at: to, density: heightAt(points, to) },
  ];
}

function heightAt(points: DensityPoint[], value: number): number {
  const next = points.findIndex(({ at }) => at >= value);
  const [before, after] = [points[next - 1], points[next]];
  if (after === undefined) return 0;
  if (before === undefined || after.at === before.at) return after.density;
  return before.density + ((value - before.at) / (after.at - before.at)) * (after.density - before.density);
}

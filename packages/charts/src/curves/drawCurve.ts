import type { Curve } from "@leeway/core";
import * as Plot from "@observablehq/plot";
import { drawFlags, type FlagText, planFlags } from "../draw/flags.ts";
import { levelLine, levelShape } from "../draw/levels.ts";
import { make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { plotLayer } from "../draw/plotLayer.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { placeAlong } from "../labels/placeAlong.ts";
import { palette } from "../palette.ts";
import { keepCurvePlace } from "./curvePlace.ts";
import { valueAt } from "./interpolate.ts";

export interface CurveMark extends FlagText {
  value: number;
  /** Share of futures at or below the value. */
  chance: number;
}

export interface CurveView {
  curve: Curve;
  iterations: number;
  confidence: number;
  marks: CurveMark[];
  /** Range of the axis where the values themselves leave none. */
  padding: number;
  /** What opens to the right of each tick, or stands under it when `centred`. */
  ticks: (from: number, to: number, width: number) => { at: number; label: string; below: string }[];
  centred: boolean;
}

/** A cumulative curve with its sampling limits, its levels on poles, and an axis that is read. */
export function drawCurve(view: CurveView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const left = 46;
  const right = 14;
  const [from, to] = span(view);
  const scale = (value: number) => left + ((value - from) / (to - from)) * (width - left - right);
  const inside = (value: number) => Math.max(from, Math.min(to, value));

  const at = view.marks.map((mark) => scale(inside(mark.value)));
  const flags = view.marks.map((mark) => beyond(mark, from, to));
  const plan = planFlags(flags, at, 2, width - 2);
  const plotHeight = width < 520 ? 220 : 270;
  const top = plan.height + 12;
  const bottom = top + plotHeight;
  const height = bottom + 52;
  const svg = openSvg(document, width, height, colours);

  const points = shown(view.curve);
  const p10 = valueAt(view.curve, 0.1);
  const p90 = valueAt(view.curve, 0.9);
  const core = [
    { p: 0.1, at: p10 },
    ...points.filter((point) => point.p > 0.1 && point.p < 0.9),
    { p: 0.9, at: p90 },
  ];
  const layer = plotLayer(document, {
    width,
    height,
    marginLeft: left,
    marginRight: right,
    marginTop: top,
    marginBottom: height - bottom,
    x: { type: "linear", domain: [from, to] },
    y: { type: "linear", domain: [0, 1] },
    marks: [
      Plot.areaY(points, { x: "at", y1: 0, y2: "p", fill: colours.rangeWide }),
      Plot.areaY(core, { x: "at", y1: 0, y2: "p", fill: colours.rangeCore }),
      Plot.areaY(band(view), { x: "at", y1: "low", y2: "high", fill: colours.rangeEdge, fillOpacity: 0.55 }),
      Plot.lineY(points, { x: "at", y: "p", stroke: colours.ink, strokeWidth: 2, strokeLinejoin: "round" }),
    ],
  });
  const { poles, labels } = drawFlags(document, flags, at, plan, top, bottom, colours);
  const axes = make(document, "g", { fill: colours.inkQuiet });

  const shares = [...new Set([0, 0.1, 0.5, 0.9, 1, Math.round(view.confidence * 100) / 100])].sort(
    (a, b) => a - b,
  );
  const wishes = shares.map((share) => ({ at: layer.y(share), size: 13 }));
  const rows = placeAlong(wishes, top - 8, bottom + 8, 1) ?? wishes.map((wish) => wish.at);
  shares.forEach((share, k) => {
    const isCommitted = Math.abs(share - view.confidence) < 0.005;
    axes.append(
      make(
        document,
        "text",
        {
          x: left - 8,
          y: (rows[k] ?? 0) + 4,
          "text-anchor": "end",
          fill: isCommitted ? colours.committed : colours.inkQuiet,
          "font-weight": isCommitted ? 600 : undefined,
        },
        `${Math.round(share * 100)} %`,
      ),
    );
  });
  const guide = { x1: left, y1: layer.y(view.confidence), y2: layer.y(view.confidence) };
  const committed = view.marks.find((mark) => mark.level === "committed");
  const guides = make(document, "g");
  if (committed !== undefined)
    guides.append(
      make(document, "line", {
        ...guide,
        x2: scale(inside(committed.value)),
        ...levelLine("committed", colours),
        "stroke-width": 1,
      }),
    );
  axes.append(
    make(document, "line", { x1: left, x2: width - right, y1: bottom, y2: bottom, stroke: colours.ink }),
  );
  let free = Number.NEGATIVE_INFINITY;
  let freeBelow = Number.NEGATIVE_INFINITY;
  for (const tick of view.ticks(from, to, width - left - right)) {
    const x = layer.x(tick.at);
    const wide = textWidth(tick.label, 12);
    const begins = view.centred ? x - wide / 2 : x + 4;
    const anchor = view.centred ? "middle" : "start";
    axes.append(make(document, "line", { x1: x, x2: x, y1: bottom, y2: bottom + 6, stroke: colours.ink }));
    if (begins < free || begins + wide > width) continue;
    free = begins + wide + 6;
    const textX = view.centred ? x : begins;
    axes.append(make(document, "text", { x: textX, y: bottom + 27, "text-anchor": anchor }, tick.label));
    if (tick.below !== "" && begins >= freeBelow) {
      freeBelow = begins + textWidth(tick.below, 12) + 6;
      axes.append(make(document, "text", { x: textX, y: bottom + 43, "text-anchor": anchor }, tick.below));
    }
  }
  const shapes = make(document, "g");
  view.marks.forEach((mark, k) => {
    const y = mark.level === "asked" ? bottom : layer.y(mark.chance);
    shapes.append(levelShape(document, mark.level, at[k] ?? 0, y, colours));
  });
  svg.append(layer.group, guides, axes, poles, shapes, labels);
  keepCurvePlace(svg, {
    width,
    height,
    left,
    top,
    bottom,
    x: (value) => scale(inside(value)),
    y: (share) => bottom - share * (bottom - top),
  });
  return svg;
}

/**
 * What is drawn of the curve: from P1 to P99. The last future in a hundred may lie so far out that the rest
 * would be squeezed to a step.
 */
function shown(curve: Curve): { p: number; at: number }[] {
  return curve.p.flatMap((p, k) => (p < 0.01 || p > 0.99 ? [] : [{ p, at: curve.at[k] ?? 0 }]));
}

/** The range of the axis: the curve, and every mark that would not squeeze it to a quarter of the width. */
function span(view: CurveView): [number, number] {
  const points = shown(view.curve);
  let from = points[0]?.at ?? view.marks[0]?.value ?? 0;
  let to = points[points.length - 1]?.at ?? from;
  const own = Math.max(to - from, view.padding);
  for (const { value } of view.marks) {
    if (Math.max(to, value) - Math.min(from, value) > 4 * own) continue;
    from = Math.min(from, value);
    to = Math.max(to, value);
  }
  const margin = Math.max((to - from) * 0.03, (view.padding - (to - from)) / 2);
  return [from - margin, to + margin];
}

/** A mark that lies beyond the axis says so: an arrow on its label. */
function beyond(mark: CurveMark, from: number, to: number): FlagText {
  const { level, title, detail } = mark;
  if (mark.value < from) return { level, title: `← ${title}`, detail };
  return { level, title: mark.value > to ? `${title} →` : title, detail };
}

/**
 * The 95 % limits, as a band along the curve: the percentile p lies between the values at ranks
 * np ± 1.96 √(np(1 − p)), so read across at height p the band is as wide as the limits of p, and read upwards it
 * is p ± 1.96 √(p(1 − p)/n). Drawn upwards it stays with the curve where that stands still or jumps; limits
 * joined from percentile to percentile would not.
 *
 * Source: the distribution-free limits the forecast itself uses (order statistics, normal approximation).
 */
function band({ curve, iterations }: CurveView): { at: number; low: number; high: number }[] {
  return shown(curve).map(({ p, at }) => {
    const half = iterations > 0 ? 1.96 * Math.sqrt((p * (1 - p)) / iterations) : 0;
    return { at, low: Math.max(0, p - half), high: Math.min(1, p + half) };
  });
}

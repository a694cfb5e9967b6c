import type { TornadoBar, TornadoSide } from "@leeway/core";
import * as Plot from "@observablehq/plot";
import { fitText } from "../draw/fitText.ts";
import { drawFlags, type FlagText, planFlags } from "../draw/flags.ts";
import { itemLabel } from "../draw/itemLabel.ts";
import { kindFill, kindWord } from "../draw/kinds.ts";
import { levelLine } from "../draw/levels.ts";
import { make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { plotLayer } from "../draw/plotLayer.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { type Palette, palette } from "../palette.ts";
import { plainName } from "../words/plainName.ts";
import { fitScale } from "./fitScale.ts";

export interface TornadoView {
  /** In the order drawn. */
  bars: TornadoBar[];
  amount: (side: TornadoSide) => number;
  /** A change with its sign, without its unit. */
  format: (change: number) => string;
  /** What a side of an item is held at, in words. */
  held: (bar: TornadoBar, side: "low" | "high") => string;
  flag: FlagText;
  /** Which way is which: "earlier" and "later". */
  less: string;
  more: string;
  /** What is left out, or "". */
  rest: string;
}

interface End {
  value: number;
  held: string;
  isHigh: boolean;
}

const gap = 15;
const markRadius = 4.5;

/** Bars from the low to the high side of each item around the committed value. */
export function drawTornado(view: TornadoView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const inline = width < 560;
  const names = view.bars.map((bar) => plainName(bar.name));
  const nameWidth = inline
    ? width - 4
    : Math.min(width * 0.32, Math.max(90, ...names.map((name) => textWidth(name, 13) + 4)));
  const areaLeft = inline ? 2 : nameWidth + 16;
  const rowHeight = inline ? 54 : 38;
  const heldWidth = inline ? Math.min(84, width * 0.23) : 120;

  const rows = view.bars.map((bar) => {
    const ends = orderedEnds(bar, view);
    return { bar, ends, labels: ends.map((end) => endLabel(end, view.format, heldWidth)) };
  });
  const scale = fitScale(
    [
      { from: 0, to: 0, before: 4, after: 4 },
      ...rows.map(({ ends, labels }) => ({
        from: ends[0].value,
        to: ends[1].value,
        before: (labels[0]?.width ?? 0) + gap,
        after: (labels[1]?.width ?? 0) + gap,
      })),
    ],
    areaLeft,
    width - 2,
  );
  const zero = scale(0);
  const plan = planFlags([view.flag], [zero], 2, width - 2);
  const top = plan.height + 8;
  const bottom = top + rows.length * rowHeight + 4;
  const height = bottom + 24 + (view.rest === "" ? 0 : 22);
  const svg = openSvg(document, width, height, colours);
  const centre = (k: number) => top + k * rowHeight + (inline ? 38 : rowHeight / 2);

  const { poles, labels: flagLabels } = drawFlags(
    document,
    [view.flag],
    [zero],
    plan,
    top,
    inline ? top : bottom,
    colours,
  );
  const layer = plotLayer(document, {
    width,
    height,
    margin: 0,
    x: { type: "identity" },
    y: { type: "identity" },
    marks: rows.map(({ bar, ends }, k) => {
      const { fill, stroke } = kindFill(bar.kind, colours);
      return Plot.rect([ends], {
        x1: scale(ends[0].value),
        x2: scale(ends[1].value),
        y1: centre(k) - 6,
        y2: centre(k) + 6,
        fill: String(fill),
        stroke: String(stroke),
      });
    }),
  });
  const zeros = make(document, "g");
  // Where names stand above the bars, the line of no change is drawn beside the bars only.
  const line = levelLine("committed", colours);
  if (inline)
    for (const k of rows.keys())
      zeros.append(
        make(document, "line", { x1: zero, x2: zero, y1: centre(k) - 10, y2: centre(k) + 10, ...line }),
      );
  const texts = make(document, "g");
  rows.forEach(({ bar, ends, labels }, k) => {
    const row = make(document, "g");
    const place = { x: inline ? 2 : 0, y: inline ? centre(k) - 15 : centre(k), width: nameWidth, inline };
    row.append(make(document, "title", {}, describe(bar, ends, view.format)));
    row.append(itemLabel(document, names[k] ?? "", kindWord(bar.kind), place, colours));
    ends.forEach((end, side) => {
      const x = scale(end.value);
      const outside = x + (side === 0 ? -markRadius : markRadius);
      row.append(endMark(document, end, outside, centre(k), colours));
      const label = labels[side];
      if (label !== undefined) row.append(endText(document, label, x, centre(k), side, colours));
    });
    texts.append(row);
  });
  const quiet = { y: bottom + 14, fill: colours.inkQuiet };
  const ways = make(document, "g");
  ways.append(
    make(document, "text", { ...quiet, x: zero - 8, "text-anchor": "end" }, `← ${view.less}`),
    make(document, "text", { ...quiet, x: zero + 8 }, `${view.more} →`),
  );
  if (view.rest !== "")
    ways.append(make(document, "text", { ...quiet, x: inline ? 2 : 0, y: bottom + 38 }, view.rest));
  svg.append(layer.group, poles, zeros, texts, ways, flagLabels);
  return svg;
}

/** The two ends from left to right. */
function orderedEnds(bar: TornadoBar, { amount, held }: TornadoView): [End, End] {
  const low: End = { value: amount(bar.low), held: held(bar, "low"), isHigh: false };
  const high: End = { value: amount(bar.high), held: held(bar, "high"), isHigh: true };
  return low.value <= high.value ? [low, high] : [high, low];
}

interface EndLabel {
  change: string;
  held: string;
  width: number;
}

function endLabel(end: End, format: (change: number) => string, most: number): EndLabel {
  const change = format(end.value);
  const held = fitText(end.held, most, 12);
  return { change, held, width: textWidth(change, 13, true) + 7 + textWidth(held, 12) };
}

function endText(
  document: Document,
  label: EndLabel,
  x: number,
  y: number,
  side: number,
  colours: Palette,
): SVGGElement {
  const sign = side === 0 ? -1 : 1;
  const anchor = side === 0 ? "end" : "start";
  const changeAt = x + sign * gap;
  const heldAt = changeAt + sign * (textWidth(label.change, 13, true) + 7);
  return make(
    document,
    "g",
    { "text-anchor": anchor },
    make(document, "text", { x: changeAt, y: y + 4.5, "font-size": 13, "font-weight": 600 }, label.change),
    make(document, "text", { x: heldAt, y: y + 4.5, fill: colours.inkQuiet }, label.held),
  );
}

/** A ring at the low side, a disc at the high side; outside the bar, so that they stay apart on a short one. */
function endMark(document: Document, end: End, x: number, y: number, colours: Palette): SVGElement {
  return make(document, "circle", {
    cx: x,
    cy: y,
    r: markRadius,
    fill: end.isHigh ? colours.ink : colours.paper,
    stroke: end.isHigh ? colours.paper : colours.ink,
    "stroke-width": 1.5,
  });
}

function describe(bar: TornadoBar, ends: readonly End[], format: (change: number) => string): string {
  return `${plainName(bar.name)}: ${ends.map((end) => `${end.held} ${format(end.value)}`).join(", ")}`;
}

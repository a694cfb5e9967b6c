import { drawFlags, planFlags } from "../draw/flags.ts";
import { itemLabel } from "../draw/itemLabel.ts";
import { levelLine, levelShape } from "../draw/levels.ts";
import { make, px } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { rowFrame } from "../draw/rowFrame.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { type Palette, palette } from "../palette.ts";
import { plainName } from "../words/plainName.ts";
import type { Fall, WaterfallView } from "./types.ts";

const barHeight = 14;
/** Half the width of 95 % limits, in standard errors. */
const limits = 1.96;

/**
 * Steps from one value to another, each bar beginning where the one before it ended; the end a step arrives at
 * is the one with the thick edge. Below them their sum, from mark to mark.
 */
export function drawWaterfall(view: WaterfallView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const { falls, total, measure } = view;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const names = [...falls.map((fall) => plainName(fall.name)), total.name];
  const figures = [...falls.map((fall) => fall.value), total.value].map(measure.column);
  const errors = falls.map((fall) => {
    const text = unsigned(measure.column(limits * fall.error));
    return text === "0" ? "" : `± ${text}`; // one that shows no digit says nothing
  });
  const errorWidth = widest(errors, 12, false);
  const figureWidth = Math.max(widest(figures, 13, true), textWidth(measure.unit, 12) - errorWidth);
  const figureRight = width - 2 - (errorWidth > 0 ? errorWidth + 6 : 0);
  const frame = rowFrame(width, {
    names,
    words: falls.map((fall) => fall.word),
    beside: figureWidth + errorWidth + 20,
    share: view.nameShare ?? 0.32,
    lines: view.nameLines ?? 2,
  });
  const { inline } = frame;
  const left = frame.left + 6;
  const right = inline ? width - 8 : figureRight - figureWidth - 16;
  const scale = fit(falls, total.value, left, right);

  const ends = [scale(0), scale(total.value)];
  const plan = planFlags([view.from, view.to], ends, 2, inline ? width - 2 : right + 8);
  // In a narrow drawing the heading of the figures has a line of its own under the labels.
  const top = plan.height + (inline ? 24 : 10);
  const at = (row: number) => top + frame.middle(row);
  const last = falls.length;
  const lastAt = inline ? top + frame.figureAt(last) + 18 : at(last);
  const bottom = lastAt + (inline ? 14 : 18);
  const svg = openSvg(document, width, bottom + 24, colours);

  const { poles, labels } = drawFlags(
    document,
    [view.from, view.to],
    ends,
    plan,
    inline ? top - 16 : top,
    inline ? top - 16 : lastAt,
    colours,
  );
  const bars = make(document, "g");
  const texts = make(document, "g");
  const heading = { x: width - 2, y: top - 4, "text-anchor": "end", fill: colours.inkQuiet };
  texts.append(make(document, "text", heading, measure.unit));

  let sum = 0;
  falls.forEach((fall, k) => {
    const [from, to] = [scale(sum), scale(sum + fall.value)];
    sum += fall.value;
    if (!inline && k > 0) bars.append(joint(document, from, at(k - 1), at(k), colours));
    const half = Math.abs(scale(limits * fall.error) - scale(0));
    const told = make(document, "title", {}, `${names[k]}: ${figures[k]} ${errors[k]}`.trimEnd());
    bars.append(make(document, "g", {}, told, ...bar(document, fall, [from, to], half, at(k), colours)));
    texts.append(itemLabel(document, names[k] ?? "", fall.word, frame.label(k, top), colours));
    const y = top + frame.figureAt(k);
    texts.append(figure(document, figures[k] ?? "", figureRight, y));
    if (errors[k])
      texts.append(
        make(
          document,
          "text",
          { x: width - 2, y, "text-anchor": "end", fill: colours.inkQuiet },
          errors[k] ?? "",
        ),
      );
  });

  const y = top + frame.figureAt(last);
  const rule = y - (inline ? 14 : 22.5);
  const line = { stroke: colours.inkQuiet, y1: rule, y2: rule };
  texts.append(make(document, "line", { ...line, x1: figureRight - figureWidth, x2: width - 2 }));
  const bold = { "font-size": 13, "font-weight": 600 };
  texts.append(make(document, "text", { x: inline ? 2 : 0, y, ...bold }, total.name));
  texts.append(figure(document, figures[last] ?? "", figureRight, y));
  const span = { x1: ends[0], x2: ends[1], y1: lastAt, y2: lastAt };
  bars.append(make(document, "line", { ...span, stroke: colours.ink, "stroke-width": 1.5 }));
  bars.append(levelShape(document, view.from.level, ends[0] ?? 0, lastAt, colours));
  bars.append(levelShape(document, view.to.level, ends[1] ?? 0, lastAt, colours));
  if (inline) for (let k = 0; k < last; k++) bars.prepend(...stubs(document, view, ends, at(k), colours));

  const quiet = { y: bottom + 14, fill: colours.inkQuiet };
  texts.append(make(document, "text", { ...quiet, x: left }, `← ${measure.less}`));
  texts.append(make(document, "text", { ...quiet, x: right, "text-anchor": "end" }, `${measure.more} →`));
  svg.append(poles, bars, texts, labels);
  return svg;
}

function widest(texts: readonly string[], size: number, bold: boolean): number {
  return texts.reduce((most, text) => Math.max(most, Math.ceil(textWidth(text, size, bold))), 0);
}

function unsigned(text: string): string {
  return text.replace(/^[+−]/, "");
}

/** Data to px: all places the steps pass, with their whiskers, from `left` to `right`. */
function fit(falls: readonly Fall[], total: number, left: number, right: number): (value: number) => number {
  let [low, high, sum] = [Math.min(0, total), Math.max(0, total), 0];
  for (const { value, error } of falls) {
    sum += value;
    low = Math.min(low, sum - limits * error);
    high = Math.max(high, sum + limits * error);
  }
  if (!(high > low)) return () => (left + right) / 2;
  return (value) => left + ((value - low) / (high - low)) * (right - left);
}

/** A step, the 95 % limits of where it arrives (`half` px to either side), and that end as a thick edge. */
function bar(
  document: Document,
  fall: Fall,
  [from, to]: [number, number],
  half: number,
  y: number,
  colours: Palette,
): SVGElement[] {
  const paint =
    fall.tint === "register"
      ? { fill: colours.register, stroke: colours.register }
      : fall.tint === "people"
        ? { fill: colours.paper, stroke: colours.ink }
        : { fill: colours.rangeCore, stroke: colours.rangeEdge };
  const box = { x: Math.min(from, to), y: y - barHeight / 2, width: Math.abs(to - from), height: barHeight };
  const edge = { x1: to, x2: to, y1: y - barHeight / 2 - 2, y2: y + barHeight / 2 + 2 };
  return [
    make(document, "rect", { ...box, ...paint }),
    ...(half > 0 ? whisker(document, to, half, y, colours) : []),
    make(document, "line", { ...edge, stroke: colours.ink, "stroke-width": 2 }),
  ];
}

/** From where a step arrives down to where the next begins. */
function joint(document: Document, x: number, above: number, y: number, colours: Palette): SVGElement {
  const ends = { x1: x, x2: x, y1: above + barHeight / 2 + 2, y2: y - barHeight / 2 };
  return make(document, "line", { ...ends, stroke: colours.rangeEdge });
}

/** Limits around the end of a step, on a ground that keeps them apart from the bar. */
function whisker(document: Document, x: number, half: number, y: number, colours: Palette): SVGElement[] {
  const [from, to, up, down] = [x - half, x + half, y - 3.5, y + 3.5].map(px);
  const d = `M${from},${px(y)}H${to}M${from},${up}V${down}M${to},${up}V${down}`;
  const line = { d, fill: "none" };
  return [
    make(document, "path", { ...line, stroke: colours.paper, "stroke-width": 3.5 }),
    make(document, "path", { ...line, stroke: colours.ink, "stroke-width": 1.25 }),
  ];
}

function figure(document: Document, text: string, x: number, y: number): SVGElement {
  return make(document, "text", { x, y, "text-anchor": "end", "font-size": 13, "font-weight": 600 }, text);
}

/** The two marks beside a bar, where names stand between the rows. */
function stubs(
  document: Document,
  view: WaterfallView,
  ends: readonly number[],
  y: number,
  colours: Palette,
): SVGElement[] {
  return [view.from, view.to].map(({ level }, k) =>
    make(document, "line", {
      x1: ends[k],
      x2: ends[k],
      y1: y - 9,
      y2: y + 9,
      ...levelLine(level, colours),
    }),
  );
}

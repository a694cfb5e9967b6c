import { itemLabel } from "../draw/itemLabel.ts";
import { type Attributes, make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { rowFrame } from "../draw/rowFrame.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { type Palette, palette } from "../palette.ts";
import { fitScale } from "../tornado/fitScale.ts";
import { plainName } from "../words/plainName.ts";

/** One row of bars: how they are painted, and one value for each panel. */
export interface BarRow {
  name: string;
  /** Quietly beside the name; "" needs none. */
  word: string;
  paint: Attributes;
  bars: { value: number; text: string }[];
}

/** Above a panel: what it shows and its unit, on one line or, in a narrow drawing, on two. */
export interface Heading {
  name: string;
  unit: string;
}

const gap = 7;
const between = 22;

/**
 * Bars for each row in several panels side by side, each panel from its own nought; names beside them or, in a narrow
 * drawing, above. `rest` is a line beneath: what is left out, or "".
 */
export function drawBarPanels(
  rows: readonly BarRow[],
  headings: readonly Heading[],
  rest: string,
  options: ChartOptions,
): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const names = rows.map((row) => plainName(row.name));
  const frame = rowFrame(width, { names, words: rows.map((row) => row.word) });
  const lines = headings.map(({ name, unit }) => (frame.inline ? [name, unit] : [`${name}, ${unit}`]));
  const top = frame.inline ? 40 : 28;
  const bottom = top + frame.height;
  const svg = openSvg(document, width, bottom + (rest === "" ? 6 : 28), colours);
  rows.forEach((row, k) => {
    svg.append(itemLabel(document, names[k] ?? "", row.word, frame.label(k, top), colours));
  });
  // Each panel has room for its labels; what is left is shared alike.
  const needs = lines.map((words, p) => labelRoom(rows, p, words));
  const spare = width - 2 - frame.left - between * (headings.length - 1) - needs.reduce((a, b) => a + b, 0);
  let from = frame.left;
  lines.forEach((words, p) => {
    const to = from + (needs[p] ?? 0) + Math.max(0, spare / headings.length);
    svg.append(panel(words, p, from, Math.min(width - 2, to)));
    from = to + between;
  });
  if (rest !== "")
    svg.append(
      make(document, "text", { x: frame.inline ? 2 : 0, y: bottom + 18, fill: colours.inkQuiet }, rest),
    );
  return svg;

  function panel(words: readonly string[], p: number, left: number, right: number): SVGGElement {
    const group = make(document, "g");
    const scale = fitScale(
      rows.map((row) => {
        const { value, text } = row.bars[p] ?? { value: 0, text: "" };
        const label = textWidth(text, 13, true) + gap;
        const [before, after] = value < 0 ? [label, 1] : [1, label];
        return { from: Math.min(0, value), to: Math.max(0, value), before, after };
      }),
      left,
      right,
    );
    const zero = scale(0);
    // The heading begins at nought where there is room to its right, and ends at the panel's end where not.
    const wide = widest(words);
    const at = Math.max(left, Math.min(zero, right - wide));
    words.forEach((line, k) => {
      group.append(make(document, "text", { x: at, y: 14 + k * 14, fill: colours.inkQuiet }, line));
    });
    const axis = { x1: zero, x2: zero, stroke: colours.ink };
    if (!frame.inline) group.append(make(document, "line", { ...axis, y1: top - 6, y2: bottom }));
    rows.forEach((row, k) => {
      const { value, text } = row.bars[p] ?? { value: 0, text: "" };
      const y = top + frame.middle(k);
      const x = scale(value);
      const bar = { x: Math.min(zero, x), y: y - 7, width: Math.abs(x - zero), height: 14 };
      if (value !== 0) group.append(make(document, "rect", { ...bar, ...row.paint }));
      if (frame.inline) group.append(make(document, "line", { ...axis, y1: y - 9, y2: y + 9 }));
      group.append(endLabel(document, text, x, y, value < 0, colours));
    });
    return group;
  }
}

function endLabel(
  document: Document,
  text: string,
  x: number,
  y: number,
  left: boolean,
  colours: Palette,
): SVGElement {
  const at = { x: x + (left ? -gap : gap), y: y + 4.5, "text-anchor": left ? "end" : "start" };
  return make(document, "text", { ...at, "font-size": 13, "font-weight": 600, fill: colours.ink }, text);
}

/** Px the labels of a panel need, before its bars and after them, and its heading. */
function labelRoom(rows: readonly BarRow[], p: number, words: readonly string[]): number {
  let [before, after] = [1, 1];
  for (const row of rows) {
    const { value, text } = row.bars[p] ?? { value: 0, text: "" };
    const label = textWidth(text, 13, true) + gap;
    if (value < 0) before = Math.max(before, label);
    else after = Math.max(after, label);
  }
  return Math.max(before + after, widest(words));
}

function widest(words: readonly string[]): number {
  return words.reduce((most, line) => Math.max(most, textWidth(line, 12)), 0);
}

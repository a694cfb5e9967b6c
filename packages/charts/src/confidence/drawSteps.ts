import { itemLabel } from "../draw/itemLabel.ts";
import { levelLine, levelShape } from "../draw/levels.ts";
import { make, px } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { type Palette, palette } from "../palette.ts";

export interface StepRow {
  name: string;
  word: string;
  committed: boolean;
}

/** One measure of every row: a bar from `base` to the value, with its limits and in words. */
export interface StepPanel {
  heading: string;
  base: number;
  /** Words under the line at the base, when it is the plan as written. */
  written?: string;
  values: { at: number; low?: number; high?: number; text: string }[];
}

const rowHeight = 30;
const barHeight = 11;
const between = 28;

/** Panels of bars over the same rows: side by side where there is room, else one under the other. */
export function drawSteps(
  rows: readonly StepRow[],
  panels: readonly StepPanel[],
  options: ChartOptions,
): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const abreast = width >= 660;
  const nameWidth = rows.reduce(
    (most, { name, word }) => Math.max(most, textWidth(name, 13), textWidth(word, 12)),
    40,
  );
  const head = 26;
  const panelHeight = head + rows.length * rowHeight + 24;
  const left = nameWidth + 16;
  const room = width - 2 - left;
  const columns = abreast ? panels.length : 1;
  const panelWidth = (room - between * (columns - 1)) / columns;
  const height = abreast ? panelHeight : panelHeight * panels.length + 12 * (panels.length - 1);
  const svg = openSvg(document, width, height + 2, colours);
  panels.forEach((panel, k) => {
    const x = left + (abreast ? k * (panelWidth + between) : 0);
    const y = abreast ? 0 : k * (panelHeight + 12);
    if (k === 0 || !abreast)
      rows.forEach(({ name, word }, row) => {
        const place = { x: 2, y: y + head + (row + 0.5) * rowHeight, width: nameWidth, inline: false };
        svg.append(itemLabel(document, name, word, place, colours));
      });
    svg.append(...drawPanel(document, rows, panel, x, y, panelWidth, colours));
  });
  return svg;

  function drawPanel(
    document: Document,
    rows: readonly StepRow[],
    panel: StepPanel,
    left: number,
    top: number,
    width: number,
    colours: Palette,
  ): SVGElement[] {
    const bars = make(document, "g");
    const texts = make(document, "g");
    const figureWidth = panel.values.reduce((most, { text }) => Math.max(most, textWidth(text, 13, true)), 0);
    const right = left + width - figureWidth - 14;
    const [from, to] = span(panel);
    const scale = (value: number) =>
      to > from ? left + 6 + ((value - from) / (to - from)) * (right - left - 12) : (left + right) / 2;
    const zero = scale(panel.base);
    const first = top + head;
    const last = first + rows.length * rowHeight;
    texts.append(make(document, "text", { x: left, y: top + 14, fill: colours.inkQuiet }, panel.heading));
    const line = panel.written === undefined ? { stroke: colours.ink } : levelLine("asWritten", colours);
    bars.append(make(document, "line", { x1: zero, x2: zero, y1: first, y2: last, ...line }));
    if (panel.written !== undefined) {
      const wide = textWidth(panel.written, 12);
      const at = Math.max(left, Math.min(left + width - wide, zero - wide / 2));
      texts.append(make(document, "text", { x: at, y: last + 14, fill: colours.asWritten }, panel.written));
    }
    panel.values.forEach(({ at, low, high, text }, k) => {
      const committed = rows[k]?.committed === true;
      const y = first + (k + 0.5) * rowHeight;
      const x = scale(at);
      const paint = committed
        ? { fill: colours.committed, stroke: colours.committed }
        : { fill: colours.rangeCore, stroke: colours.rangeEdge };
      const box = {
        x: Math.min(zero, x),
        y: y - barHeight / 2,
        width: Math.abs(x - zero),
        height: barHeight,
      };
      bars.append(make(document, "rect", { ...box, ...paint }));
      if (low !== undefined && high !== undefined && high > low) {
        const [a, b] = [px(scale(low)), px(scale(high))];
        const d = `M${a},${px(y)}H${b}M${a},${px(y - 3)}V${px(y + 3)}M${b},${px(y - 3)}V${px(y + 3)}`;
        for (const [stroke, wide] of [
          [colours.paper, 3.5],
          [colours.ink, 1.25],
        ] as const)
          bars.append(make(document, "path", { d, fill: "none", stroke, "stroke-width": wide }));
      }
      if (committed) bars.append(levelShape(document, "committed", x, y, colours));
      const type = committed ? { fill: colours.committed, "font-weight": 600 } : {};
      const place = { x: left + width, y: y + 4.5, "text-anchor": "end", "font-size": 13 };
      texts.append(make(document, "text", { ...place, ...type }, text));
    });
    return [bars, texts];
  }
}

function span({ base, values }: StepPanel): [number, number] {
  let [from, to] = [base, base];
  for (const { at, low, high } of values) {
    from = Math.min(from, at, low ?? at);
    to = Math.max(to, at, high ?? at);
  }
  return [from, to];
}

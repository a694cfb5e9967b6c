import type { PersonLoad } from "@leeway/core";
import { calendarAxis } from "../axes/calendarAxis.ts";
import { calendarTicks } from "../dates/calendarTicks.ts";
import { itemLabel } from "../draw/itemLabel.ts";
import { make, px } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { type Palette, palette } from "../palette.ts";
import { plainName } from "../words/plainName.ts";

export interface WeeksView {
  start: string;
  /** First day of each week, in days since the start; ascending. */
  weeks: number[];
  people: PersonLoad[];
  /** What is said of each person at the end of the row. */
  figures: string[];
  heading: string;
  rest: string;
}

const barHeight = 40;

/**
 * A strip for each person: what each week asks of them as a bar, dark where it is more than there is and open where it
 * falls into an absence; the capacity present as a stepped line, and a tick at the load that 80 % of the futures stay
 * within.
 */
export function drawWeeks(view: WeeksView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const inline = width < 560;
  const names = view.people.map((person) => plainName(person.name));
  const words = view.people.map((person) => (person.role === undefined ? "" : plainName(person.role, 40)));
  const figureWidth = [...view.figures, view.heading].reduce(
    (most, text) => Math.max(most, textWidth(text, 13, true)),
    0,
  );
  const widest = names.reduce(
    (most, name, k) => Math.max(most, textWidth(name, 13), textWidth(words[k] ?? "", 12)),
    60,
  );
  const nameWidth = inline ? width - figureWidth - 16 : Math.min(width * 0.26, widest + 4);
  const left = inline ? 4 : nameWidth + 16;
  const right = inline ? width - 12 : width - figureWidth - 16;
  const rowHeight = inline ? barHeight + 30 : barHeight + 12;
  const top = 24;
  const base = (row: number) => top + (row + 1) * rowHeight - 4;
  const bottom = top + view.people.length * rowHeight + 6;
  const svg = openSvg(document, width, bottom + (view.rest === "" ? 50 : 72), colours);

  const [from, to] = [view.weeks[0] ?? 0, (view.weeks[view.weeks.length - 1] ?? 0) + 7];
  const x = (day: number) => left + ((day - from) / (to - from)) * (right - left);
  const texts = make(document, "g");
  const head = { x: width - 2, y: 12, "text-anchor": "end", fill: colours.inkQuiet };
  texts.append(make(document, "text", head, view.heading));
  const strips = make(document, "g");
  view.people.forEach((person, row) => {
    const y = base(row);
    const nameY = inline ? y - barHeight - 9 : y - barHeight / 2;
    const place = { x: inline ? 2 : 0, y: nameY, width: nameWidth, inline };
    texts.append(itemLabel(document, names[row] ?? "", words[row] ?? "", place, colours));
    const figure = { x: width - 2, y: inline ? nameY : nameY + 4.5, "text-anchor": "end" };
    texts.append(
      make(document, "text", { ...figure, "font-size": 13, "font-weight": 600 }, view.figures[row] ?? ""),
    );
    strips.append(...strip(document, person, view.weeks, x, y, colours));
  });
  const ticks = calendarTicks(view.start, from, to, Math.floor((right - left) / 62));
  svg.append(strips, calendarAxis(document, ticks, x, bottom, left, right, colours));
  if (view.rest !== "")
    texts.append(make(document, "text", { x: 2, y: bottom + 66, fill: colours.inkQuiet }, view.rest));
  svg.append(texts);
  return svg;
}

/** Each strip has a scale of its own: a person of two days a week is as readable as one of five. */
function strip(
  document: Document,
  person: PersonLoad,
  weeks: readonly number[],
  x: (day: number) => number,
  base: number,
  colours: Palette,
): SVGElement[] {
  const { unlimited, present, p80 } = person;
  let most = 1e-9;
  weeks.forEach((_, k) => {
    most = Math.max(most, unlimited.asked[k] ?? 0, present[k] ?? 0, p80[k] ?? 0);
  });
  const y = (days: number) => base - (days / most) * barHeight;
  const parts: SVGElement[] = [];
  const line: string[] = [];
  const ticks = make(document, "g", { stroke: colours.ink, "stroke-width": 1.5 });
  weeks.forEach((day, k) => {
    const [a, b] = [x(day), x(day + 7)];
    const asked = unlimited.asked[k] ?? 0;
    const over = Math.min(asked, unlimited.over[k] ?? 0);
    const wide = Math.max(0.6, b - a - (b - a > 4 ? 1 : 0));
    const bar = (low: number, high: number, paint: { fill: string; stroke: string }) => {
      if (high - low < most * 1e-6) return;
      parts.push(
        make(document, "rect", {
          x: a,
          y: y(high),
          width: wide,
          height: y(low) - y(high),
          "stroke-width": 0.75,
          ...paint,
        }),
      );
    };
    // Asked for while the person is away, though within their whole capacity: somebody stands in, or nobody.
    const there = Math.min(asked - over, present[k] ?? 0);
    bar(0, there, { fill: colours.rangeCore, stroke: colours.rangeEdge });
    bar(there, asked - over, { fill: colours.paper, stroke: colours.ink });
    bar(asked - over, asked, { fill: colours.ink, stroke: colours.ink });
    const level = px(y(present[k] ?? 0));
    line.push(`${line.length === 0 ? "M" : "L"}${px(a)},${level}`, `L${px(b)},${level}`);
    const load = p80[k] ?? 0;
    if (load > most * 1e-6)
      ticks.append(
        make(document, "line", { x1: a + wide * 0.15, x2: a + wide * 0.85, y1: y(load), y2: y(load) }),
      );
  });
  const d = line.join("");
  parts.push(
    make(document, "path", { d, fill: "none", stroke: colours.paper, "stroke-width": 3.5 }),
    make(document, "path", { d, fill: "none", stroke: colours.ink, "stroke-width": 1.5 }),
    ticks,
    make(document, "line", {
      x1: x(weeks[0] ?? 0),
      x2: x((weeks[weeks.length - 1] ?? 0) + 7),
      y1: base,
      y2: base,
      stroke: colours.rangeEdge,
    }),
  );
  return parts;
}

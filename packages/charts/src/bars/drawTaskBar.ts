import type { TaskForecast } from "@leeway/core";
import { levelShape } from "../draw/levels.ts";
import { make } from "../draw/make.ts";
import type { Palette } from "../palette.ts";

/** Room a row's bars need above and below their middle, px. */
export const barHalf = 12;

/**
 * One task at height `y`: the faint band of its start, the edged band of its finish, both P10 to P90, joined at
 * their middles; beneath them the plan as written as a thin line that ends in a diamond.
 */
export function drawTaskBar(
  document: Document,
  task: TaskForecast,
  x: (day: number) => number,
  y: number,
  colours: Palette,
): SVGGElement {
  const group = make(document, "g");
  const { start, finish, asWritten } = task;
  const [upper, lower] = [y - 4, y + 8];
  const band = (from: number, to: number, paint: { fill: string; stroke: string }) => {
    // A band of no width still shows: a line of one px.
    const width = Math.max(1, x(to) - x(from));
    group.append(make(document, "rect", { x: x(from), y: upper - 5, width, height: 10, ...paint }));
  };
  if (!task.milestone) {
    band(start.p10, start.p90, { fill: colours.rangeWide, stroke: colours.hairline });
    const joined = { x1: x(start.p50), x2: x(finish.p50), y1: upper, y2: upper };
    group.append(make(document, "line", { ...joined, stroke: colours.ink, "stroke-width": 1.5 }));
  }
  band(finish.p10, finish.p90, { fill: colours.rangeCore, stroke: colours.rangeEdge });
  const tick = (day: number, half: number, wide: number) =>
    group.append(
      make(document, "line", {
        x1: x(day),
        x2: x(day),
        y1: upper - half,
        y2: upper + half,
        stroke: colours.ink,
        "stroke-width": wide,
      }),
    );
  if (!task.milestone) tick(start.p50, 4, 1.5);
  tick(finish.p50, 7, 2.5);
  if (asWritten.needed) {
    const line = { x1: x(asWritten.start), x2: x(asWritten.finish), y1: lower, y2: lower };
    if (!task.milestone)
      group.append(make(document, "line", { ...line, stroke: colours.asWritten, "stroke-width": 2 }));
    group.append(levelShape(document, "asWritten", x(asWritten.finish), lower, colours));
  }
  return group;
}

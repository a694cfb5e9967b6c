import type { DrivingPath } from "@leeway/core";
import { make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import type { ChartOptions } from "../figure/types.ts";
import { palette } from "../palette.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { plainName } from "../words/plainName.ts";
import { flow, type Piece } from "./flow.ts";

const size = 13;
const lineHeight = 18;

/**
 * Each path as a bar of its share and, beneath, its tasks in order; from the second on, tasks that the first does not
 * pass are bold and those it does are quiet. `rest` is a line at the end, or "".
 */
export function drawPaths(paths: readonly DrivingPath[], rest: string, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const [first] = paths;
  const usual = new Set(first?.tasks);
  const most = paths.reduce((largest, path) => Math.max(largest, path.share), 0);
  const barRoom = Math.min(width * 0.55, 420);
  const indent = 2;
  let y = 4;
  const marks = make(document, "g");
  const texts = make(document, "g");
  for (const path of paths) {
    const long = most > 0 ? (path.share / most) * barRoom : 0;
    const bar = { x: indent, y, width: Math.max(1, long), height: 14 };
    marks.append(make(document, "rect", { ...bar, fill: colours.rangeCore, stroke: colours.rangeEdge }));
    const label = { x: indent + Math.max(1, long) + 8, y: y + 11.5, "font-size": 13, "font-weight": 600 };
    texts.append(make(document, "text", label, formatPercent(path.share)));
    y += 14;
    const { placed, lines } = flow(pieces(path, usual), width - 2 * indent, size, 8);
    for (const { text, bold, x, line } of placed) {
      const at = { x: indent + x, y: y + 17 + line * lineHeight, "font-size": size };
      const type = bold ? { "font-weight": 600 } : { fill: path === first ? colours.ink : colours.inkQuiet };
      texts.append(make(document, "text", { ...at, ...type }, text));
    }
    y += lines * lineHeight + 22;
  }
  const svg = openSvg(document, width, y + (rest === "" ? 0 : 16), colours);
  if (rest !== "")
    texts.append(make(document, "text", { x: indent, y: y + 6, fill: colours.inkQuiet }, rest));
  svg.append(marks, texts);
  return svg;
}

/** Names with arrows after all but the last; where a task waited for a person, whom. */
function pieces(path: DrivingPath, usual: ReadonlySet<string>): Piece[] {
  return path.tasks.map((id, k) => {
    const next = path.ways[k + 1];
    const person =
      next?.kind === "person" && next.person !== undefined ? ` (${plainName(next.person.name, 40)})` : "";
    const arrow = k === path.tasks.length - 1 ? "" : `${person} →`;
    return { text: `${plainName(path.names[k] ?? id)}${arrow}`, bold: !usual.has(id) };
  });
}

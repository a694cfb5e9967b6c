import { countCrossings, type PlacedFlag, placeFlags } from "../labels/placeFlags.ts";
import type { Palette } from "../palette.ts";
import { type Level, levelColour, levelLine } from "./levels.ts";
import { make } from "./make.ts";
import { textWidth } from "./textWidth.ts";

/** A level with its label: what it is, and a short line of words whose parts stand between " · ". */
export interface FlagText {
  level: Level;
  title: string;
  detail: string;
}

export interface FlagPlan {
  places: PlacedFlag[];
  /** The lines of each label, the title first. */
  lines: string[][];
  widths: number[];
  /** Room the labels need above the drawing, px. */
  height: number;
  rowHeight: number;
}

/**
 * Works out rows and sides for labels whose poles stand at `at` px. Where labels of two lines would be run
 * through by a pole, they become narrower: one part of the detail to a line.
 */
export function planFlags(
  flags: readonly FlagText[],
  at: readonly number[],
  min: number,
  max: number,
): FlagPlan {
  const two = layOut(
    flags.map((flag) => [flag.title, flag.detail]),
    at,
    min,
    max,
  );
  return two.crossings === 0
    ? two.plan
    : layOut(
        flags.map((flag) => [flag.title, ...flag.detail.split(" · ")]),
        at,
        min,
        max,
      ).plan;
}

function layOut(
  lines: string[][],
  at: readonly number[],
  min: number,
  max: number,
): { plan: FlagPlan; crossings: number } {
  const widths = lines.map((each) =>
    Math.ceil(Math.max(...each.map((line, k) => textWidth(line, k === 0 ? 13 : 12, k === 0)))),
  );
  const wishes = widths.map((width, k) => ({ at: at[k] ?? min, width }));
  const places = placeFlags(wishes, min, max);
  const rowHeight = 7 + 15 * lines.reduce((most, each) => Math.max(most, each.length), 0);
  const rows = places.reduce((most, place) => Math.max(most, place.row + 1), 0);
  const height = rows * rowHeight + (rows > 0 ? 6 : 0);
  return { plan: { places, lines, widths, height, rowHeight }, crossings: countCrossings(wishes, places) };
}

/**
 * Draws poles from `bottom` up to their labels, and the labels. `top` is where the drawing begins: the lowest
 * row of labels sits on it.
 */
export function drawFlags(
  document: Document,
  flags: readonly FlagText[],
  at: readonly number[],
  plan: FlagPlan,
  top: number,
  bottom: number,
  colours: Palette,
): { poles: SVGGElement; labels: SVGGElement } {
  const poles = make(document, "g", { fill: "none" });
  const labels = make(document, "g");
  flags.forEach(({ level }, k) => {
    const place = plan.places[k];
    const lines = plan.lines[k];
    const x = at[k];
    if (place === undefined || lines === undefined || x === undefined) return;
    const floor = top - 6 - place.row * plan.rowHeight;
    const poleTop = place.side === "over" ? floor : floor - plan.rowHeight + 4;
    poles.append(
      make(document, "line", { x1: x, x2: x, y1: bottom, y2: poleTop, ...levelLine(level, colours) }),
    );
    const anchor = place.side === "left" ? "end" : "start";
    const side = place.side === "left" ? place.from + (plan.widths[k] ?? 0) : place.from;
    lines.forEach((line, n) => {
      const y = floor - 5 - 15 * (lines.length - 1 - n);
      const type = n === 0 ? { "font-size": 13, "font-weight": 600 } : {};
      const fill = n === 0 ? levelColour(level, colours) : colours.ink;
      labels.append(make(document, "text", { x: side, y, "text-anchor": anchor, ...type, fill }, line));
    });
  });
  return { poles, labels };
}

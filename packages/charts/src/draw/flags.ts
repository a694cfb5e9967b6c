import { type PlacedFlag, placeFlags } from "../labels/placeFlags.ts";
import type { Palette } from "../palette.ts";
import { type Level, levelColour, levelLine } from "./levels.ts";
import { make } from "./make.ts";
import { textWidth } from "./textWidth.ts";

/** A level with its label: two short lines of words. */
export interface FlagText {
  level: Level;
  title: string;
  detail: string;
}

export interface FlagPlan {
  places: PlacedFlag[];
  /** Room the labels need above the drawing, px. */
  height: number;
}

const rowHeight = 37;

/** Works out rows and sides for labels whose poles stand at `at` px. */
export function planFlags(
  flags: readonly FlagText[],
  at: readonly number[],
  min: number,
  max: number,
): FlagPlan {
  const places = placeFlags(
    flags.map((flag, k) => ({ at: at[k] ?? min, width: flagWidth(flag) })),
    min,
    max,
  );
  const rows = places.reduce((most, place) => Math.max(most, place.row + 1), 0);
  return { places, height: rows * rowHeight + (rows > 0 ? 6 : 0) };
}

function flagWidth(flag: FlagText): number {
  return Math.ceil(Math.max(textWidth(flag.title, 13, true), textWidth(flag.detail, 12)));
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
  flags.forEach((flag, k) => {
    const place = plan.places[k];
    const x = at[k];
    if (place === undefined || x === undefined) return;
    const floor = top - 6 - place.row * rowHeight;
    const poleTop = place.side === "over" ? floor : floor - rowHeight + 4;
    poles.append(
      make(document, "line", { x1: x, x2: x, y1: bottom, y2: poleTop, ...levelLine(flag.level, colours) }),
    );
    const anchor = place.side === "left" ? "end" : "start";
    const left = place.side === "left" ? place.from + flagWidth(flag) : place.from;
    labels.append(
      make(
        document,
        "text",
        {
          x: left,
          y: floor - 20,
          "text-anchor": anchor,
          "font-size": 13,
          "font-weight": 600,
          fill: levelColour(flag.level, colours),
        },
        flag.title,
      ),
      make(
        document,
        "text",
        { x: left, y: floor - 5, "text-anchor": anchor, fill: colours.ink },
        flag.detail,
      ),
    );
  });
  return { poles, labels };
}

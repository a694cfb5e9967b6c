import type { Palette } from "../palette.ts";
import { type Attributes, make } from "./make.ts";

/** The values every chart marks, always the same way. */
export type Level = "committed" | "asWritten" | "asked" | "half";

/** Line of a level: its colour and dash differ, and so does the shape of `levelShape`. */
export function levelLine(level: Level, colours: Palette): Attributes {
  switch (level) {
    case "committed":
      return { stroke: colours.committed, "stroke-width": 2 };
    case "asWritten":
      return { stroke: colours.asWritten, "stroke-width": 1.75, "stroke-dasharray": "7 4" };
    case "asked":
      return {
        stroke: colours.ink,
        "stroke-width": 2,
        "stroke-dasharray": "0.1 4.5",
        "stroke-linecap": "round",
      };
    case "half":
      return { stroke: colours.inkQuiet, "stroke-width": 1 };
  }
}

/** Colour of the words that name a level. */
export function levelColour(level: Level, colours: Palette): string {
  if (level === "committed") return colours.committed;
  if (level === "asWritten") return colours.asWritten;
  return level === "asked" ? colours.ink : colours.inkQuiet;
}

/**
 * Shape of a level, centred on (x, y): a full disc for what is committed to, a diamond for the plan as
 * written, a peg pointing up at what was asked for, a ring for the half.
 */
export function levelShape(
  document: Document,
  level: Level,
  x: number,
  y: number,
  colours: Palette,
): SVGElement {
  switch (level) {
    case "committed":
      return make(document, "circle", {
        cx: x,
        cy: y,
        r: 5,
        fill: colours.committed,
        stroke: colours.paper,
        "stroke-width": 1.5,
      });
    case "asWritten":
      return make(document, "rect", {
        x: x - 4.2,
        y: y - 4.2,
        width: 8.4,
        height: 8.4,
        transform: `rotate(45 ${Math.round(x * 100) / 100} ${Math.round(y * 100) / 100})`,
        fill: colours.asWritten,
        stroke: colours.paper,
        "stroke-width": 1.5,
      });
    case "asked":
      return make(document, "path", {
        d: `M${Math.round(x * 100) / 100},${Math.round((y + 1) * 100) / 100}l5.5,9h-11z`,
        fill: colours.paper,
        stroke: colours.ink,
        "stroke-width": 1.75,
        "stroke-linejoin": "round",
      });
    case "half":
      return make(document, "circle", {
        cx: x,
        cy: y,
        r: 3.75,
        fill: colours.paper,
        stroke: colours.inkQuiet,
        "stroke-width": 1.5,
      });
  }
}

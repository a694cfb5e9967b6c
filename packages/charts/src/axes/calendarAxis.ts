import type { CalendarTick } from "../dates/calendarTicks.ts";
import { make } from "../draw/make.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { Palette } from "../palette.ts";

/**
 * Ticks down from `y` and, to the right of each, what begins there; beneath, the year where it changes. Room
 * for a peg is left between the line and the words. Labels that would run into the one before are left out.
 */
export function calendarAxis(
  document: Document,
  ticks: readonly CalendarTick[],
  x: (day: number) => number,
  y: number,
  left: number,
  right: number,
  colours: Palette,
): SVGGElement {
  const axis = make(document, "g", { fill: colours.inkQuiet });
  axis.append(make(document, "line", { x1: left, x2: right, y1: y, y2: y, stroke: colours.ink }));
  let free = Number.NEGATIVE_INFINITY;
  let freeBelow = Number.NEGATIVE_INFINITY;
  for (const tick of ticks) {
    const at = x(tick.day);
    axis.append(make(document, "line", { x1: at, x2: at, y1: y, y2: y + 6, stroke: colours.ink }));
    const begins = at + 4;
    const wide = textWidth(tick.label, 12);
    if (tick.label === "" || begins < free || begins + wide > right + 14) continue;
    free = begins + wide + 6;
    axis.append(make(document, "text", { x: begins, y: y + 27 }, tick.label));
    if (tick.below === "" || begins < freeBelow || begins + textWidth(tick.below, 12) > right + 14) continue;
    freeBelow = begins + textWidth(tick.below, 12) + 6;
    axis.append(make(document, "text", { x: begins, y: y + 43 }, tick.below));
  }
  return axis;
}

import type { Palette } from "../palette.ts";
import { sans } from "./fonts.ts";
import { make, px } from "./make.ts";

/** Widths outside of these are drawn at the nearer one; the page scales the picture. */
export function drawingWidth(width = 720): number {
  return Number.isFinite(width) ? Math.max(320, Math.min(1600, Math.round(width))) : 720;
}

/**
 * An empty drawing: label type, ink, left to right whatever the page around it does. No style sheet, no
 * class, no id: nothing in it depends on the page, and a page may hold any number of them.
 */
export function openSvg(document: Document, width: number, height: number, colours: Palette): SVGSVGElement {
  return make(document, "svg", {
    width,
    height,
    viewBox: `0 0 ${px(width)} ${px(height)}`,
    "font-family": sans,
    "font-size": 12,
    "font-variant-numeric": "tabular-nums",
    fill: colours.ink,
    direction: "ltr",
  });
}

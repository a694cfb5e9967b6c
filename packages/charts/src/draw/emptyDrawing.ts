import type { ChartOptions } from "../figure/types.ts";
import { palette } from "../palette.ts";
import { wrapText } from "./fitText.ts";
import { make } from "./make.ts";
import { drawingWidth, openSvg } from "./openSvg.ts";

/** A drawing that says in a sentence why there is nothing to draw. */
export function emptyDrawing(sentence: string, options: ChartOptions): SVGSVGElement {
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const lines = wrapText(sentence, width - 4, 14);
  const svg = openSvg(options.document, width, 24 + lines.length * 20, colours);
  lines.forEach((line, k) => {
    const at = { x: 2, y: 28 + k * 20, "font-size": 14, fill: colours.inkQuiet };
    svg.append(make(options.document, "text", at, line));
  });
  return svg;
}

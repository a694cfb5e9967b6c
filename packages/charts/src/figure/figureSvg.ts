import { wrapEvenly } from "../draw/fitText.ts";
import { sans, serif } from "../draw/fonts.ts";
import { make, svgNamespace } from "../draw/make.ts";
import type { Palette } from "../palette.ts";
import { palette } from "../palette.ts";
import { serialise } from "./serialise.ts";
import type { Figure } from "./types.ts";

const margin = 20;

/**
 * A figure as the text of an SVG file that stands alone: its own ground, the finding and the subtitle inside
 * the picture, `title` and `desc` for a screen reader, fonts that end in a generic family, no style sheet,
 * script or link. The same figure gives the same text, to the byte.
 */
export function figureSvg(figure: Figure): string {
  const document = figure.svg.ownerDocument;
  const colours = paletteOf(figure.svg);
  const width = Number(figure.svg.getAttribute("width"));
  const height = Number(figure.svg.getAttribute("height"));
  const titleSize = width < 520 ? 17 : 21;
  const titleLines = wrapEvenly(figure.title, width, titleSize, 5, true);
  const subtitleLines = wrapEvenly(figure.subtitle, width, 13, 4);
  let y = margin;
  const heading = make(document, "g");
  for (const line of titleLines) {
    y += titleSize * 1.25;
    heading.append(
      make(
        document,
        "text",
        {
          x: margin,
          y: y - titleSize * 0.25,
          "font-family": serif,
          "font-size": titleSize,
          "font-weight": 600,
          fill: colours.ink,
        },
        line,
      ),
    );
  }
  y += 4;
  for (const line of subtitleLines) {
    y += 18;
    heading.append(
      make(document, "text", { x: margin, y: y - 4, "font-size": 13, fill: colours.inkQuiet }, line),
    );
  }
  y += 14;
  const total = { width: width + 2 * margin, height: y + height + margin };
  const inner = make(document, "g", { transform: `translate(${margin} ${Math.round(y * 100) / 100})` });
  for (const child of Array.from(figure.svg.childNodes)) inner.append(child.cloneNode(true));
  const file = make(
    document,
    "svg",
    {
      xmlns: svgNamespace,
      ...total,
      viewBox: `0 0 ${total.width} ${Math.round(total.height * 100) / 100}`,
      role: "img",
      "aria-labelledby": "figure-title",
      "aria-describedby": "figure-summary",
      "font-family": sans,
      "font-size": 12,
      "font-variant-numeric": "tabular-nums",
      fill: colours.ink,
      direction: "ltr",
    },
    make(document, "title", { id: "figure-title" }, figure.title),
    make(document, "desc", { id: "figure-summary" }, figure.summary),
    make(document, "rect", { ...total, fill: colours.paper }),
    heading,
    inner,
  );
  return `${serialise(file)}\n`;
}

/** The theme a drawing was made in, told by its ink. */
function paletteOf(svg: SVGSVGElement): Palette {
  const dark = palette("dark");
  return svg.getAttribute("fill") === dark.ink ? dark : palette("light");
}

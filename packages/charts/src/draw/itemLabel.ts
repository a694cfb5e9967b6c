import type { Palette } from "../palette.ts";
import { fitText, wrapText } from "./fitText.ts";
import { make } from "./make.ts";
import { textWidth } from "./textWidth.ts";

/**
 * The name of a row and, quietly, a word on what it is. In a column: the word on a second line, or the name on
 * two lines where there is no word. `inline`: all on one line, its foot at `y`.
 */
export function itemLabel(
  document: Document,
  name: string,
  word: string,
  at: { x: number; y: number; width: number; inline: boolean },
  colours: Palette,
): SVGGElement {
  const group = make(document, "g");
  const line = (text: string, x: number, y: number, quiet: boolean) =>
    group.append(
      make(
        document,
        "text",
        { x, y, "font-size": quiet ? 12 : 13, fill: quiet ? colours.inkQuiet : colours.ink },
        text,
      ),
    );
  if (at.inline) {
    const wordWidth = word === "" ? 0 : textWidth(word, 12) + 8;
    const shown = fitText(name, at.width - wordWidth, 13);
    line(shown, at.x, at.y, false);
    if (word !== "") line(word, at.x + textWidth(shown, 13) + 8, at.y, true);
    return group;
  }
  const lines = wrapText(name, at.width, 13, word === "" ? 2 : 1);
  const both = word === "" ? lines : [...lines, word];
  both.forEach((each, k) => {
    line(each, at.x, at.y + 4.5 + (k - (both.length - 1) / 2) * 15, word !== "" && k === both.length - 1);
  });
  return group;
}

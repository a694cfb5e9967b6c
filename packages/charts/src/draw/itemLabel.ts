import type { Palette } from "../palette.ts";
import { fitText, wrapText } from "./fitText.ts";
import { make } from "./make.ts";
import { textWidth } from "./textWidth.ts";

/**
 * The name of a row and, quietly, a word on what it is. In a column: on up to two lines, the word at
 * the end of the second. `inline`: all on one line, its foot at `y`.
 */
export function itemLabel(
  document: Document,
  name: string,
  said: string,
  at: { x: number; y: number; width: number; inline: boolean },
  colours: Palette,
): SVGGElement {
  const group = make(document, "g");
  let word = said;
  const line = (text: string, x: number, y: number, quiet: boolean) =>
    group.append(
      make(
        document,
        "text",
        { x, y, "font-size": quiet ? 12 : 13, fill: quiet ? colours.inkQuiet : colours.ink },
        text,
      ),
    );
  // A long word gives way before the name does: it may take six tenths of a line they share.
  const most = at.width * 0.6;
  if (at.inline) {
    word = fitText(word, most, 12);
    const wordWidth = word === "" ? 0 : textWidth(word, 12) + 8;
    const shown = fitText(name, at.width - wordWidth, 13);
    line(shown, at.x, at.y, false);
    if (word !== "") line(word, at.x + textWidth(shown, 13) + 8, at.y, true);
    return group;
  }
  const [first, ...more] = wrapText(name, at.width, 13, 2);
  const second = more.join(" ");
  word = fitText(word, second === "" ? at.width : most, 12);
  const middle = at.y + 4.5;
  const two = second !== "" || word !== "";
  line(first ?? "", at.x, two ? middle - 7.5 : middle, false);
  // A long name takes both lines and the word stands after its end.
  const shown =
    word === "" || second === "" ? second : fitText(second, at.width - textWidth(word, 12) - 8, 13);
  if (shown !== "") line(shown, at.x, middle + 7.5, false);
  if (word !== "") line(word, at.x + (shown === "" ? 0 : textWidth(shown, 13) + 8), middle + 7.5, true);
  return group;
}

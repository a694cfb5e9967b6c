import type { Palette } from "../palette.ts";
import { fitText, wrapText } from "./fitText.ts";
import { make } from "./make.ts";
import type { LabelPlace } from "./rowFrame.ts";
import { textWidth } from "./textWidth.ts";

/**
 * The name of a row and, quietly, a word on what it is. In a column: on up to two lines or `lines`, the word at
 * the end of the last. `inline`: all on one line, its foot at `y`.
 */
export function itemLabel(
  document: Document,
  name: string,
  said: string,
  at: LabelPlace,
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
  const lines = wrapText(name, at.width, 13, at.lines ?? 2);
  const room = lines.length < (at.lines ?? 2);
  word = fitText(word, room ? at.width : most, 12);
  const beside = word === "" ? 0 : textWidth(word, 12) + 8;
  const end = lines.at(-1) ?? "";
  // The word stands after the end of the name; below it where that has no room and a line is left.
  const below = word !== "" && room && (lines.length === 1 || textWidth(end, 13) + beside > at.width);
  if (!below) lines[lines.length - 1] = fitText(end, at.width - beside, 13);
  const middle = at.y + 4.5;
  const top = middle - 7.5 * (lines.length - (below ? 0 : 1));
  for (const [k, text] of lines.entries()) line(text, at.x, top + 15 * k, false);
  if (word === "") return group;
  if (below) line(word, at.x, top + 15 * lines.length, true);
  else line(word, at.x + textWidth(lines.at(-1) ?? "", 13) + 8, top + 15 * (lines.length - 1), true);
  return group;
}

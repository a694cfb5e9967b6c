import { keepTogether } from "./keepTogether.ts";
import { textWidth } from "./textWidth.ts";

/** Characters as a reader counts them, so that no accent or emoji is cut in two. */
function graphemes(text: string): string[] {
  return Array.from(new Intl.Segmenter("en", { granularity: "grapheme" }).segment(text), (s) => s.segment);
}

/** The text, cut with "…" where it is wider than `width` px. */
export function fitText(text: string, width: number, size: number, bold = false): string {
  if (textWidth(text, size, bold) <= width) return text;
  // One letter is never narrower than a fifth of the size: the rest of a very long name is not looked at.
  const letters = graphemes(text.slice(0, Math.ceil((width / size) * 5) + 20));
  while (letters.length > 0 && textWidth(`${letters.join("").trimEnd()}…`, size, bold) > width) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

/**
 * Breaks text into lines of at most `width` px, at spaces; a word wider than a line is cut with "…".
 * A figure stays with its unit or currency, a day with its month.
 *
 * @param most  No more lines than this; the last one is cut with "…".
 */
export function wrapText(text: string, width: number, size: number, most = 4, bold = false): string[] {
  const words = keepTogether(text).split(" ");
  const lines: string[] = [];
  let line = "";
  for (const word of words) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line === "" || textWidth(longer, size, bold) <= width) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  lines.push(line);
  const kept = lines.slice(0, most);
  if (lines.length > most) kept[most - 1] = `${kept[most - 1]} ${lines.slice(most).join(" ")}`;
  return kept.map((each) => fitText(each, width, size, bold));
}

/** As `wrapText`, with the lines of about one length: no last word on a line of its own. */
export function wrapEvenly(text: string, width: number, size: number, most = 4, bold = false): string[] {
  const lines = wrapText(text, width, size, most, bold);
  const joined = lines.join(" ");
  for (let narrower = width - 8; narrower > width / 2; narrower -= 8) {
    const tried = wrapText(text, narrower, size, lines.length, bold);
    if (tried.join(" ") !== joined) return wrapText(text, narrower + 8, size, most, bold);
  }
  return lines;
}

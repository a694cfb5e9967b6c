import { wrapText } from "./fitText.ts";
import { textWidth } from "./textWidth.ts";

/** Where a name and its word stand: on one line with its foot at `y`, or on up to so many lines about it. */
export interface LabelPlace {
  x: number;
  y: number;
  width: number;
  inline: boolean;
  lines?: number;
}

/** Where the rows of a chart stand: names in a column of their own, or (`inline`) above their bars. */
export interface RowFrame {
  inline: boolean;
  /** Where the bars may begin. */
  left: number;
  /** Of all rows together. */
  height: number;
  /** Height of a row's bar, from the top of the rows. */
  middle: (row: number) => number;
  /** Foot of a figure that stands level with the name. */
  figureAt: (row: number) => number;
  /** How `itemLabel` is to place the name and its word. */
  label: (row: number, top: number) => LabelPlace;
}

export interface RowNames {
  names: readonly string[];
  /** What stands beside each name. */
  words?: readonly string[];
  /** Room that a narrow drawing keeps free to the right of the names, px. */
  beside?: number;
  /** Most of the width that the column of names may take. */
  share?: number;
  /** The most lines a name may take; default two. */
  lines?: number;
}

/** Height of a row, of its bar and of its name in it, px; a name on two lines is given by their middle. */
const beside = { height: 36, bar: 18, name: 18, figure: 22.5 };
const above = { height: 46, bar: 32, name: 18, figure: 18 };
const twoAbove = { height: 62, bar: 47, name: 19, figure: 16 };
/** What a line more than two adds to a row, px. */
const line = 15;

/**
 * Rows for a drawing of `width` px. Names stand beside the bars from 560 px on; in a narrower drawing above them, on one
 * line or, where one does not hold a name and its word, on two; on more where the drawing lets them.
 */
export function rowFrame(width: number, rows: RowNames): RowFrame {
  const { names, words = [], share = 0.32, lines: most = 2 } = rows;
  const inline = width < 560;
  let widest = 90;
  for (const [k, name] of names.entries())
    widest = Math.max(widest, textWidth(name, 13) + 4, textWidth(words[k] ?? "", 12) + 4);
  const nameWidth = inline ? width - 4 - (rows.beside ?? 0) : Math.min(width * share, widest);
  const kinds = names.map((name, k) => {
    const word = words[k] ?? "";
    const long = textWidth(name, 13) + (word === "" ? 0 : textWidth(word, 12) + 8);
    if (inline && long <= nameWidth) return { ...above, lines: 1 };
    const lines = Math.max(2, most === 2 ? 2 : linesOf(name, word, nameWidth, most));
    const more = (lines - 2) * line;
    const kind = inline ? twoAbove : beside;
    return {
      lines,
      height: kind.height + more,
      bar: kind.bar + (inline ? more : more / 2),
      name: kind.name + more / 2,
      figure: kind.figure + (inline ? 0 : more / 2),
    };
  });
  let height = 0;
  const tops = kinds.map((kind) => {
    height += kind.height;
    return height - kind.height;
  });
  const at = (row: number, what: "bar" | "name" | "figure") =>
    (tops[row] ?? height) + (kinds[row] ?? beside)[what];
  return {
    inline,
    left: inline ? 2 : nameWidth + 18,
    height,
    middle: (row) => at(row, "bar"),
    figureAt: (row) => at(row, "figure"),
    label: (row, top) => ({
      x: inline ? 2 : 0,
      y: top + at(row, "name"),
      width: nameWidth,
      inline: inline && kinds[row]?.lines === 1,
      lines: kinds[row]?.lines ?? 2,
    }),
  };
}

/** How many lines a name takes with its word at the end of the last. */
function linesOf(name: string, word: string, width: number, most: number): number {
  const lines = wrapText(name, width, 13, most);
  const end = textWidth(lines.at(-1) ?? "", 13) + (word === "" ? 0 : textWidth(word, 12) + 8);
  return Math.min(most, lines.length + (end > width ? 1 : 0));
}

import { textWidth } from "./textWidth.ts";

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
  label: (row: number, top: number) => { x: number; y: number; width: number; inline: boolean };
}

export interface RowNames {
  names: readonly string[];
  /** What stands beside each name. */
  words?: readonly string[];
  /** Room that a narrow drawing keeps free to the right of the names, px. */
  beside?: number;
  /** Most of the width that the column of names may take. */
  share?: number;
}

/** Height of a row, of its bar and of its name in it, px; a name on two lines is given by their middle. */
const beside = { height: 36, bar: 18, name: 18, figure: 22.5 };
const above = { height: 46, bar: 32, name: 18, figure: 18 };
const twoAbove = { height: 62, bar: 47, name: 19, figure: 16 };

/**
 * Rows for a drawing of `width` px. Names stand beside the bars from 560 px on; in a narrower drawing above them, on one
 * line or, where one does not hold a name and its word, on two.
 */
export function rowFrame(width: number, rows: RowNames): RowFrame {
  const { names, words = [], share = 0.32 } = rows;
  const inline = width < 560;
  let widest = 90;
  for (const [k, name] of names.entries())
    widest = Math.max(widest, textWidth(name, 13) + 4, textWidth(words[k] ?? "", 12) + 4);
  const nameWidth = inline ? width - 4 - (rows.beside ?? 0) : Math.min(width * share, widest);
  const kinds = names.map((name, k) => {
    const word = words[k] ?? "";
    const long = textWidth(name, 13) + (word === "" ? 0 : textWidth(word, 12) + 8);
    return !inline ? beside : long > nameWidth ? twoAbove : above;
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
      inline: kinds[row] === above,
    }),
  };
}

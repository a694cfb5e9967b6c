import { textWidth } from "./textWidth.ts";

/** Where the rows of a chart stand: names in a column of their own, or (`inline`) above their bars. */
export interface RowFrame {
  inline: boolean;
  /** Room for a name, px. */
  nameWidth: number;
  /** Where the bars may begin. */
  left: number;
  rowHeight: number;
  /** Height of a row's bar, from the top of the rows. */
  middle: (row: number) => number;
  /** Foot of the name above a bar; the bar's own height where names stand beside. */
  nameAt: (row: number) => number;
}

/**
 * Rows for a drawing of `width` px: names stand beside the bars from 560 px on.
 *
 * @param words  What stands beside each name on a line of its own, so that the column is as wide as it needs.
 */
export function rowFrame(width: number, names: readonly string[], words: readonly string[] = []): RowFrame {
  const inline = width < 560;
  let widest = 90;
  for (const name of names) widest = Math.max(widest, textWidth(name, 13) + 4);
  for (const word of words) widest = Math.max(widest, textWidth(word, 12) + 4);
  const nameWidth = inline ? width - 4 : Math.min(width * 0.32, widest);
  const rowHeight = inline ? 46 : 36;
  const middle = (row: number) => row * rowHeight + (inline ? 32 : rowHeight / 2);
  return {
    inline,
    nameWidth,
    left: inline ? 2 : nameWidth + 18,
    rowHeight,
    middle,
    nameAt: (row) => middle(row) - (inline ? 14 : 0),
  };
}

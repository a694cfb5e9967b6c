import { textWidth } from "./textWidth.ts";

/** Where the rows of a chart stand: names in a column of their own, or (`inline`) above their bars. */
export interface RowFrame {
  inline: boolean;
  /** Where the bars may begin. */
  left: number;
  rowHeight: number;
  /** Height of a row's bar, from the top of the rows. */
  middle: (row: number) => number;
  /** Height of the middle of a row's name; of its foot where the label is on one line of its own. */
  nameAt: (row: number) => number;
  /** Foot of a figure that stands level with the name. */
  figureAt: (row: number) => number;
  /** How `itemLabel` is to place the name and its word. */
  label: (row: number, top: number) => { x: number; y: number; width: number; inline: boolean; two: boolean };
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

/**
 * Rows for a drawing of `width` px. Names stand beside the bars from 560 px on; in a narrower drawing above them, on one
 * line or, where one does not hold them, on two.
 */
export function rowFrame(width: number, { names, words = [], beside = 0, share = 0.32 }: RowNames): RowFrame {
  const inline = width < 560;
  let widest = 90;
  let longest = 0;
  names.forEach((name, k) => {
    const [long, said] = [textWidth(name, 13), textWidth(words[k] ?? "", 12)];
    widest = Math.max(widest, long + 4, said + 4);
    longest = Math.max(longest, long + (said > 0 ? said + 8 : 0));
  });
  const nameWidth = inline ? width - 4 - beside : Math.min(width * share, widest);
  const two = inline && longest > nameWidth;
  const rowHeight = two ? 62 : inline ? 46 : 36;
  const middle = (row: number) => row * rowHeight + (two ? 47 : inline ? 32 : rowHeight / 2);
  const nameAt = (row: number) => (two ? row * rowHeight + 19 : middle(row) - (inline ? 14 : 0));
  return {
    inline,
    left: inline ? 2 : nameWidth + 18,
    rowHeight,
    middle,
    nameAt,
    figureAt: (row) => nameAt(row) + (two ? -3 : inline ? 0 : 4.5),
    label: (row, top) => ({
      x: inline ? 2 : 0,
      y: top + nameAt(row),
      width: nameWidth,
      inline: inline && !two,
      two,
    }),
  };
}

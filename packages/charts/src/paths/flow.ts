import { fitText } from "../draw/fitText.ts";
import { textWidth } from "../draw/textWidth.ts";

/** A piece of running text that is not broken. */
export interface Piece {
  text: string;
  bold: boolean;
}

export interface PlacedPiece extends Piece {
  x: number;
  line: number;
}

/**
 * Places pieces one after another on lines of at most `width` px, like words; a piece wider than a line is cut.
 *
 * @param most  No more lines than this: where there are more pieces, "… and n more" ends the last line.
 */
export function flow(
  pieces: readonly Piece[],
  width: number,
  size: number,
  most: number,
): { placed: PlacedPiece[]; lines: number } {
  const space = textWidth(" ", size) + 1;
  const placed: PlacedPiece[] = [];
  let [x, line] = [0, 0];
  for (const [k, piece] of pieces.entries()) {
    const rest = pieces.length - k;
    const last = line === most - 1;
    // Room for the words that stand for the rest, on the last line, unless this is all there is.
    const more = last && rest > 1 ? textWidth(`… and ${rest} more`, size) + space : 0;
    const text = fitText(piece.text, width, size, piece.bold);
    const wide = textWidth(text, size, piece.bold);
    if (x > 0 && x + wide + more > width) {
      if (last) {
        placed.push({ text: `… and ${rest} more`, bold: false, x, line });
        break;
      }
      line++;
      x = 0;
    }
    placed.push({ text, bold: piece.bold, x, line });
    x += wide + space;
  }
  return { placed, lines: placed.length === 0 ? 0 : line + 1 };
}

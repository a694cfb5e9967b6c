/** A label at a pole: `at` and `wide` in px. */
export interface PoleLabel {
  at: number;
  wide: number;
}

/** Px between a pole and its words. */
const gap = 4;

/**
 * Puts a few labels in rows from the top, one to a row, each left or right of its pole, so that words are run through by
 * as few poles as possible: a pole goes down from its own row through all below. Of equals, words to the right and in the
 * order given. Tries every way: for three labels 48.
 */
export function arrangeLabels<T extends PoleLabel>(
  labels: readonly T[],
  width: number,
): (T & { left: boolean })[] {
  let best: (T & { left: boolean })[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const order of orders(labels)) {
    for (let sides = 0; sides < 2 ** order.length; sides++) {
      const rows = order.map((label, row) => ({ ...label, left: ((sides >> row) & 1) === 1 }));
      const cost = rows.reduce((sum, { at, wide, left }, row) => {
        const from = left ? at - gap - wide : at + gap;
        const outside = Math.max(0, -from) + Math.max(0, from + wide - width);
        const crossed = rows.filter(
          (other, above) => above < row && other.at > from - 1 && other.at < from + wide + 1,
        ).length;
        return sum + 1000 * outside + 10 * crossed + (left ? 1 : 0);
      }, 0);
      if (cost < least) {
        least = cost;
        best = rows;
      }
    }
  }
  return best;
}

function orders<T>(items: readonly T[]): T[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((item, at) => orders(items.filter((_, i) => i !== at)).map((rest) => [item, ...rest]));
}

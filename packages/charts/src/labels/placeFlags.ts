/** A label that hangs on a pole: the pole stands at `at`, the label is `width` px wide. */
export interface Flag {
  at: number;
  width: number;
}

/** Where a label goes: `row` 0 is the lowest; the label covers `from` to `from + width`. */
export interface PlacedFlag {
  row: number;
  from: number;
  side: "right" | "left" | "over";
}

const clear = 6;

/**
 * Places labels on poles so that no two labels overlap and no pole runs through another's label.
 *
 * Poles rise from the drawing; each label flies right or left of the top of its own pole, or sits over it.
 * All ways are tried (at most 12 to the power of the number of flags, cut short early); the best uses the
 * fewest rows, then the lowest ones, then flies right. Labels never overlap; should no way keep every pole
 * clear (only when the span is narrower than three labels), the one with the fewest crossings is taken.
 *
 * @param flags  Up to five; `at` within `min` and `max`. In any order.
 * @returns One place for each flag, in the same order.
 */
export function placeFlags(flags: readonly Flag[], min: number, max: number): PlacedFlag[] {
  const n = flags.length;
  let best: PlacedFlag[] = [];
  let bestCost = Number.POSITIVE_INFINITY;
  const placed: PlacedFlag[] = [];

  function extend(cost: number): void {
    if (cost >= bestCost) return;
    const k = placed.length;
    const flag = flags[k];
    if (flag === undefined) {
      best = placed.map((p) => ({ ...p }));
      bestCost = cost;
      return;
    }
    for (let row = 0; row < n; row++) {
      for (const option of options(flag, row, min, max)) {
        let extra = rowCost * row + (option.side === "right" ? 0 : option.side === "left" ? 1 : 3);
        for (let j = 0; j < k && extra < Number.POSITIVE_INFINITY; j++) {
          const [other, otherFlag] = [placed[j], flags[j]];
          if (other === undefined || otherFlag === undefined) continue;
          if (overlaps(option, flag, other, otherFlag)) extra = Number.POSITIVE_INFINITY;
          else if (crosses(flag.at, option, other, otherFlag)) extra += crossingCost;
          else if (crosses(otherFlag.at, other, option, flag)) extra += crossingCost;
        }
        if (extra === Number.POSITIVE_INFINITY) continue;
        placed.push(option);
        extend(cost + extra);
        placed.pop();
      }
    }
  }
  extend(0);
  return best;
}

/** How many times a pole runs through the label of another: nought but in a drawing too narrow for them. */
export function countCrossings(flags: readonly Flag[], placed: readonly PlacedFlag[]): number {
  let count = 0;
  flags.forEach((pole, i) => {
    flags.forEach((label, j) => {
      const [a, b] = [placed[i], placed[j]];
      if (i !== j && a !== undefined && b !== undefined && crosses(pole.at, a, b, label)) count++;
    });
  });
  return count;
}

const rowCost = 20;
const crossingCost = 10_000;

function options(flag: Flag, row: number, min: number, max: number): PlacedFlag[] {
  const over = Math.max(min, Math.min(max - flag.width, flag.at - flag.width / 2));
  const list: PlacedFlag[] = [];
  if (flag.at + clear + flag.width <= max) list.push({ row, from: flag.at + clear, side: "right" });
  if (flag.at - clear - flag.width >= min)
    list.push({ row, from: flag.at - clear - flag.width, side: "left" });
  list.push({ row, from: over, side: "over" });
  return list;
}

function overlaps(a: PlacedFlag, flagA: Flag, b: PlacedFlag, flagB: Flag): boolean {
  return a.row === b.row && a.from < b.from + flagB.width + clear && b.from < a.from + flagA.width + clear;
}

/** Whether the pole at `at`, which rises to `pole.row`, runs through the label. */
function crosses(at: number, pole: PlacedFlag, label: PlacedFlag, flag: Flag): boolean {
  const reaches = pole.side === "over" ? pole.row > label.row : pole.row >= label.row;
  return reaches && at > label.from - clear / 2 && at < label.from + flag.width + clear / 2;
}

import { type Bracket, bracketAt, doublesOfBracket as five, type RankRows } from "./rankRows.ts";
import { spread } from "./spread.ts";

/** A bracket to be: its ends, and the bracket it was cut from. */
interface Cut {
  low: number;
  high: number;
  from: number;
}

/** Where an end stands: a value, or a rank in the list. */
type Place = { value: number } | { rank: number };

/**
 * Tightens the brackets of a row to what its wanted ranks can still be, and keeps of `values`, its list (or the first
 * values it sees, in place of a list), what is inside them: no more than `widest` for each probability. Exact whatever
 * the values: new ends are values of the old brackets, or their ends. Gives the row up where one would be negative.
 *
 * Cost: about 5 nanoseconds a value where WebAssembly is.
 */
export function tighten(rows: RankRows, row: number, values: Float64Array, length: number): void {
  const { kernel, ps, spare } = rows;
  const count = rows.counts[row] as number;
  const old = rows.brackets[row] as Float64Array;
  const owners = rows.owners.subarray(row * ps.length, (row + 1) * ps.length);
  const before = countBefore(rows, old, count, values, length);
  const places = placesOf(rows, row, old, owners, before);
  const ends = valuesAt(rows, places, values, length);
  if (ends.some((end) => end < 0 && end > Number.NEGATIVE_INFINITY)) {
    rows.counts[row] = 0;
    return;
  }
  // Adding 0 makes 0 of -0.
  const cuts = merge(
    Array.from(owners, (from, i) => ({
      low: (ends[2 * i] as number) + 0,
      high: (ends[2 * i + 1] as number) + 0,
      from,
    })),
    owners,
  );

  cuts.forEach(({ low, high }, i) => {
    spare.fill(0, five * i, five * (i + 1));
    spare[five * i] = low;
    spare[five * i + 1] = high;
  });
  const list = rows.lists[row] as Float64Array;
  rows.held[row] = kernel.absorb(values, 0, length, spare, cuts.length, list, 0);
  cuts.forEach(({ from }, i) => {
    addOld(spare, i, bracketAt(old, from), before[from] as number);
  });
  old.set(spare);
  rows.counts[row] = cuts.length;
}

/** How many of the values are in the brackets before each; last: in all. */
function countBefore(
  rows: RankRows,
  old: Float64Array,
  count: number,
  values: Float64Array,
  length: number,
): number[] {
  const before = [0];
  if (count > 1) {
    // Brackets without inside: nothing is stored.
    const { spare } = rows;
    for (let i = 1; i < count; i++) {
      spare.fill(0, five * (i - 1), five * i);
      spare[five * (i - 1)] = old[five * i] as number;
      spare[five * (i - 1) + 1] = old[five * i] as number;
    }
    rows.kernel.absorb(values, 0, length, spare, count - 1, values, 0);
    for (let i = 1; i < count; i++) before.push(spare[five * (i - 1) + 2] as number);
  }
  before.push(length);
  return before;
}

/** Where the ends of each probability's new bracket stand, two a probability. */
function placesOf(
  rows: RankRows,
  row: number,
  old: Float64Array,
  owners: Uint8Array,
  before: readonly number[],
): Place[] {
  return rows.ps.flatMap((p, i) => {
    const owner = owners[i] as number;
    const { low, high, below, atLow } = bracketAt(old, owner);
    const start = before[owner] as number;
    const inside = (before[owner + 1] as number) - start;
    const place = (rank: number): Place => {
      const k = rank - below - atLow;
      return k < 1 ? { value: low } : k > inside ? { value: high } : { rank: start + k };
    };
    const ranks = spread(p, rows.seen[row] as number, rows.total);
    return [place(ranks.low), place(ranks.high)];
  });
}

function valuesAt(rows: RankRows, places: readonly Place[], values: Float64Array, length: number): number[] {
  const ranks = places.flatMap((place) => ("rank" in place ? [place.rank] : []));
  const selected = ranks.length === 0 ? [] : rows.kernel.selectRanks(values.subarray(0, length), ranks);
  let next = 0;
  return places.map((place) => ("rank" in place ? (selected[next++] as number) : place.value));
}

/**
 * Brackets that overlap become one; a bracket of one value is left out where it is an end of another. Two that touch
 * stay two, as their common end may be a value that occurs in any number. Owners become indices in the answer.
 */
function merge(cuts: readonly Cut[], owners: Uint8Array): Cut[] {
  const merged: Cut[] = [];
  const ascending = cuts
    .map((cut, i) => ({ cut, i }))
    .sort((a, b) => a.cut.low - b.cut.low || a.cut.high - b.cut.high);
  let last: Cut | undefined;
  for (const { cut, i } of ascending) {
    if (last === undefined || !(cut.low < last.high || joins(last, cut))) {
      last = { ...cut };
      merged.push(last);
    } else {
      if (last.low === last.high) last.from = cut.from;
      last.high = Math.max(last.high, cut.high);
    }
    owners[i] = merged.length - 1;
  }
  return merged;
}

/** Whether they touch, and one of them is nothing but the place where they do. */
function joins(a: Cut, b: Cut): boolean {
  return b.low === a.high && (a.low === a.high || b.low === b.high);
}

/**
 * Adds to a new bracket, counted over the list, what was counted before: `start` of the list are in earlier brackets.
 * (A list that holds all may hold values at its bracket's end, Infinity, too.)
 */
function addOld(brackets: Float64Array, i: number, old: Bracket, start: number): void {
  const { low, high, below, atLow, atHigh } = bracketAt(brackets, i);
  const at = five * i;
  brackets[at + 2] = below - start + old.below + (low > old.low ? old.atLow : 0);
  brackets[at + 3] = atLow + (low === old.low ? old.atLow : low === old.high ? old.atHigh : 0);
  brackets[at + 4] = low === high ? 0 : atHigh + (high === old.high ? old.atHigh : 0);
}

import type { Kernel } from "../../kernel/index.ts";
import { listLength } from "./listLength.ts";

/** Entries of a bracket, as in `Kernel.absorb`: low end, high end, how many below, at the low end, at the high end. */
export const doublesOfBracket = 5;

export interface Bracket {
  low: number;
  high: number;
  below: number;
  atLow: number;
  atHigh: number;
}

/** Bracket i of a row. */
export function bracketAt(brackets: Float64Array, i: number): Bracket {
  const at = doublesOfBracket * i;
  return {
    low: brackets[at] as number,
    high: brackets[at + 1] as number,
    below: brackets[at + 2] as number,
    atLow: brackets[at + 3] as number,
    atHigh: brackets[at + 4] as number,
  };
}

/** What a keeper knows of its rows. */
export interface RankRows {
  kernel: Kernel;
  ps: readonly number[];
  /** How many values a row will have had in the end, over all keepers. */
  total: number;
  /** By row: values inside brackets, the first `held` of them. */
  lists: Float64Array[];
  held: Uint32Array;
  /** By row: its brackets, and how many there are; 0: given up. */
  brackets: Float64Array[];
  counts: Uint8Array;
  /** By row and probability: its bracket. */
  owners: Uint8Array;
  /** By row: values seen. */
  seen: Float64Array;
  /** Room for the brackets of a row while they are made. */
  spare: Float64Array;
}

/** Rows that have seen nothing yet: one bracket without ends. */
export function rankRows(kernel: Kernel, rows: number, n: number, ps: readonly number[]): RankRows {
  const { arena } = kernel;
  const brackets = arena.rows(rows, doublesOfBracket * ps.length);
  for (const row of brackets) {
    row[0] = Number.NEGATIVE_INFINITY;
    row[1] = Number.POSITIVE_INFINITY;
  }
  return {
    kernel,
    ps,
    total: n,
    lists: arena.rows(rows, listLength(n, ps)),
    held: new Uint32Array(rows),
    brackets,
    counts: new Uint8Array(rows).fill(1),
    owners: new Uint8Array(rows * ps.length),
    seen: new Float64Array(rows),
    spare: arena.rows(1, doublesOfBracket * ps.length)[0] as Float64Array,
  };
}

/** Whether everything a row has seen is in its list: its bracket has no ends. */
export function holdsAll(rows: RankRows, row: number): boolean {
  const brackets = rows.brackets[row] as Float64Array;
  return brackets[0] === Number.NEGATIVE_INFINITY && brackets[1] === Number.POSITIVE_INFINITY;
}

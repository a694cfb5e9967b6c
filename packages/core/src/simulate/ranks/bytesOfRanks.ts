import { bytesOfRows } from "../../kernel/index.ts";
import { listLength } from "./listLength.ts";
import { doublesOfBracket } from "./rankRows.ts";

/**
 * Bytes that a `rankKeeper` of the same arguments takes in a kernel's arena, scratch for reading ranks included.
 *
 * About 112 sqrt(p (1 - p) n) a row, summed over the probabilities: for 0.1, 0.5 and 0.9 39 KB at n = 100,000 and
 * 121 KB at 1,000,000.
 */
export function bytesOfRanks(rows: number, n: number, ps: readonly number[]): number {
  const length = listLength(n, ps);
  return (
    bytesOfRows(rows, length, 8) +
    bytesOfRows(rows + 1, doublesOfBracket * ps.length, 8) +
    bytesOfRows(1, (length >> 2) + 2, 8)
  );
}

import { choleskyFactor } from "./choleskyFactor.ts";
import { repairBlock } from "./repairBlock.ts";

/** The nearest set of correlations that can hold together, and how far it lies from what was stated. */
export interface NearestCorrelation {
  /** The nearest correlation matrix, row-major, n x n; the given one, untouched, where nothing contradicts. */
  readonly matrix: Float64Array;
  readonly changed: boolean;
  /** Square root of the sum of squared changes. */
  readonly frobenius: number;
  /** The largest change of one coefficient, and where it is (row < column); 0 and (0, 0) without a change. */
  readonly largest: number;
  readonly row: number;
  readonly column: number;
}

/**
 * The correlation matrix (positive semi-definite, unit diagonal) with the least sum of squared changes.
 *
 * Things that are not correlated, not even by way of others, are repaired apart: the nearest matrix of separate
 * blocks consists of the nearest matrices of the blocks, and a block that needs no repair keeps its very bits.
 *
 * @param matrix  Symmetric, unit diagonal, row-major, n x n; only read.
 *
 * Error  entries within 1e-9 (tests/reference/sampling/dependence.test.ts).
 * Cost   nothing to speak of without contradiction; else some tens of eigenvalue problems of the block: about 1 s
 *        for a block of 100.
 * Source Higham (2002), Computing the nearest correlation matrix, IMA Journal of Numerical Analysis 22(3), 329-343.
 */
export function nearestCorrelation(matrix: Float64Array, n: number): NearestCorrelation {
  const result = Float64Array.from(matrix);
  let changed = false;
  for (const members of connected(matrix, n)) {
    const m = members.length;
    const block = new Float64Array(m * m);
    for (let i = 0; i < m; i++) {
      for (let j = 0; j < m; j++) {
        block[i * m + j] = matrix[(members[i] as number) * n + (members[j] as number)] as number;
      }
    }
    if (choleskyFactor(block, m) !== undefined) continue;
    const repaired = repairBlock(block, m);
    changed = true;
    for (let i = 0; i < m; i++) {
      for (let j = 0; j < m; j++) {
        result[(members[i] as number) * n + (members[j] as number)] = repaired[i * m + j] as number;
      }
    }
  }
  let square = 0;
  let largest = 0;
  let row = 0;
  let column = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const change = Math.abs((result[i * n + j] as number) - (matrix[i * n + j] as number));
      square += 2 * change * change;
      if (change > largest) {
        largest = change;
        row = i;
        column = j;
      }
    }
  }
  return { matrix: result, changed, frobenius: Math.sqrt(square), largest, row, column };
}

/** The sets of indices that are tied together by non-zero entries, each ascending. */
function connected(matrix: Float64Array, n: number): number[][] {
  const groups: number[][] = [];
  const seen = new Uint8Array(n);
  for (let first = 0; first < n; first++) {
    if (seen[first] === 1) continue;
    const group = [first];
    seen[first] = 1;
    for (let k = 0; k < group.length; k++) {
      const i = group[k] as number;
      for (let j = 0; j < n; j++) {
        if (seen[j] === 0 && matrix[i * n + j] !== 0) {
          seen[j] = 1;
          group.push(j);
        }
      }
    }
    groups.push(group.sort((a, b) => a - b));
  }
  return groups;
}

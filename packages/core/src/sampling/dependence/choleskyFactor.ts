/** What is left of a pivot when its row depends on the rows before it: rounding, and no more. */
const pivotTolerance = 1e-11;

/**
 * The lower triangular L with L L^T = the matrix, rows whose pivot vanishes kept without a part of their own; or
 * undefined when the matrix is not positive semi-definite.
 *
 * @param matrix  Symmetric with unit diagonal, row-major, n x n; only read.
 *
 * Error  L L^T is within 1e-14 of a matrix that is clearly definite or exactly singular; between the two (an
 *        eigenvalue near 1e-11) within 1e-5. Cost  n^3 / 3 operations.
 */
export function choleskyFactor(matrix: Float64Array, n: number): Float64Array | undefined {
  const factor = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    let pivot = matrix[j * n + j] as number;
    for (let k = 0; k < j; k++) pivot -= (factor[j * n + k] as number) ** 2;
    if (pivot < -1e-9) return undefined;
    const vanishes = pivot <= pivotTolerance;
    const root = vanishes ? 0 : Math.sqrt(pivot);
    factor[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let sum = matrix[i * n + j] as number;
      for (let k = 0; k < j; k++) sum -= (factor[i * n + k] as number) * (factor[j * n + k] as number);
      // Of a positive semi-definite matrix nothing is left beside a vanished pivot.
      if (vanishes && Math.abs(sum) > 1e-5) return undefined;
      factor[i * n + j] = vanishes ? 0 : sum / root;
    }
  }
  return factor;
}

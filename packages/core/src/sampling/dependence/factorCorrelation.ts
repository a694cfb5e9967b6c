import { choleskyFactor } from "./choleskyFactor.ts";

/**
 * The lower triangular factor that correlates scores: with z independent standard normal, L z has the correlations
 * of the matrix, and every row of L has length 1, so each score stays standard normal.
 *
 * Singular matrices (two things that always move together) are welcome; see `choleskyFactor` for the error.
 *
 * @param matrix  A correlation matrix, row-major, n x n, as `nearestCorrelation` returns it; only read.
 * Throws when the matrix is not positive semi-definite.
 */
export function factorCorrelation(matrix: Float64Array, n: number): Float64Array {
  const factor = choleskyFactor(matrix, n);
  if (factor === undefined) {
    throw new Error("These correlations contradict each other: take the nearest correlation matrix first.");
  }
  for (let i = 0; i < n; i++) {
    let square = 0;
    for (let k = 0; k <= i; k++) square += (factor[i * n + k] as number) ** 2;
    const length = Math.sqrt(square);
    for (let k = 0; k <= i; k++) factor[i * n + k] = (factor[i * n + k] as number) / length;
  }
  return factor;
}

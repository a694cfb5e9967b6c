import { bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import { loadKernel } from "../../../packages/core/src/kernel/kernel.ts";
import { plainKernel } from "../../../packages/core/src/kernel/plainKernel.ts";
import type { Kernel } from "../../../packages/core/src/kernel/types.ts";
import { bytesOfRanks, type KeptRanks, rankKeeper } from "../../../packages/core/src/simulate/ranks/index.ts";

export type Lane = "simd" | "plain";

export function kernelOf(lane: Lane, room: number): Kernel {
  const kernel = lane === "simd" ? loadKernel(room) : plainKernel(room);
  if (kernel === undefined) throw new Error("This host refuses WebAssembly or its vectors.");
  return kernel;
}

/**
 * What a keeper of one row, for runs of `total` values, keeps of these values when they come in stretches of these
 * lengths, taken in turn.
 */
export function keep(
  lane: Lane,
  values: Float64Array,
  total: number,
  ps: readonly number[],
  stretches: readonly number[],
): KeptRanks {
  const longest = Math.max(...stretches);
  const kernel = kernelOf(lane, bytesOfRanks(1, total, ps) + bytesOfRows(1, longest, 8));
  const [window] = kernel.arena.rows(1, longest) as [Float64Array];
  const keeper = rankKeeper(kernel, 1, total, ps);
  for (let at = 0, turn = 0; at < values.length; turn++) {
    const n = Math.min(values.length - at, stretches[turn % stretches.length] as number);
    window.set(values.subarray(at, at + n));
    keeper.absorb(0, window, n);
    at += n;
  }
  return keeper.result();
}

/** By the definition of the plan format: the smallest value such that at least p of the n are not larger. */
export function sortedAt(values: Float64Array, ps: readonly number[]): number[] {
  const sorted = values.slice().sort();
  const n = values.length;
  return ps.map((p) => sorted[Math.min(n, Math.max(1, Math.ceil(p * n - 1e-9))) - 1] as number);
}

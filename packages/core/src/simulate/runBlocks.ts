import type { AsWritten } from "./asWritten.ts";
import { blockSize } from "./block.ts";
import { blockRunner, type Reuse } from "./blockRunner.ts";
import type { Model } from "./model.ts";
import type { TrialSums, Trials } from "./trials.ts";

/** Called with each block's sums, in order, before the next block is begun. */
export type OnBlock = (sums: TrialSums, iterations: number) => void;

/**
 * Computes a stretch of blocks, `into.iterations` iterations from block `fromBlock` on, into the rows of `into`.
 * The sums go to `onBlock` block by block: whoever merges stretches adds them up in address order, so that the
 * result is the same to the bit whoever computed what.
 *
 * Returns the index of a task that runs past the calendar's end, or -1.
 */
export function runBlocks(
  model: Model,
  asWritten: AsWritten,
  into: Trials,
  fromBlock: number,
  onBlock: OnBlock,
  reuse?: Reuse,
): number {
  const runner = blockRunner(model, asWritten, into, reuse);
  for (let first = 0, b = fromBlock; first < into.iterations; first += blockSize, b++) {
    const n = Math.min(blockSize, into.iterations - first);
    const sums = runner.run(b, first, n);
    if (typeof sums === "number") return sums;
    onBlock(sums, n);
  }
  runner.settle(into);
  return -1;
}

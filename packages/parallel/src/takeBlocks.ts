import {
  type AsWritten,
  blockRunner,
  blockSize,
  type Model,
  type MomentRanks,
  type TrialSums,
  type Trials,
} from "@leeway/core";

/** What one of several threads computed. */
export interface Taken {
  blocks: { block: number; sums: TrialSums }[];
  /** The block in which a task ran past its calendar, and the task; -1: none did. */
  beyond: { block: number; task: number };
  /** What was kept of tasks' moments, where they have no rows. */
  moments: MomentRanks[];
}

/**
 * Takes block after block from a counter that threads share and computes them into rows that they share, until none is
 * left. Who computes which block depends on who is free; what is computed does not.
 */
export function takeBlocks(
  model: Model,
  asWritten: AsWritten,
  trials: Trials,
  counter: SharedArrayBuffer,
  onBlock?: () => void,
): Taken {
  const next = new Int32Array(counter);
  const n = trials.iterations;
  const count = Math.ceil(n / blockSize);
  const taken: Taken = {
    blocks: [],
    beyond: { block: Number.POSITIVE_INFINITY, task: -1 },
    moments: [],
  };
  let runner: ReturnType<typeof blockRunner> | undefined;
  for (let block = Atomics.add(next, 0, 1); block < count; block = Atomics.add(next, 0, 1)) {
    runner ??= blockRunner(model, asWritten, trials);
    const first = block * blockSize;
    const sums = runner.run(block, first, Math.min(blockSize, n - first));
    if (typeof sums === "number") {
      // Blocks ahead of it are all taken already; those behind are not needed.
      Atomics.store(next, 0, count);
      taken.beyond = { block, task: sums };
      break;
    }
    taken.blocks.push({ block, sums });
    onBlock?.();
  }
  if (runner !== undefined && trials.moments !== undefined) {
    runner.settle(trials);
    taken.moments = trials.moments.parts;
  }
  return taken;
}

import type { AsWritten } from "../simulate/asWritten.ts";
import { blockSize } from "../simulate/block.ts";
import { blockRunner } from "../simulate/blockRunner.ts";
import type { Model } from "../simulate/model.ts";
import { ranksFrom } from "../simulate/ranks/index.ts";
import { kernelOf, type Moments, newTrials, type Trials } from "../simulate/trials.ts";
import { rankSelector } from "./rankSelector.ts";
import { rankOf } from "./ranks.ts";

/** Entries a task has in the ranks: start at P10, P50, P90; finish at P10, P50, P90 and the committed level. */
export const ranksPerTask = 7;

/**
 * The percentiles of the starts and finishes of tasks `from` up to `to` (not included), seven entries a task: the part
 * of a summary that grows with the iterations, and may be shared out.
 *
 * Throws a RangeError when moments were not kept row by row and another level was read instead of `confidence`.
 * Cost: about 2 ns per task and iteration.
 */
export function taskRanks(
  { model, asWritten, trials }: { model: Model; asWritten: AsWritten; trials: Trials },
  confidence: number,
  from: number,
  to: number,
): Float64Array {
  if (trials.moments !== undefined)
    return keptRanks(model, asWritten, trials, trials.moments, confidence, from, to);
  const select = kernelOf(trials.starts[0])?.selectRanks ?? rankSelector(trials.iterations);
  const found = new Float64Array(ranksPerTask * (to - from));
  for (let j = from, at = 0; j < to; j++, at += ranksPerTask) {
    fill(found, at, trials.starts[j] as Float64Array, trials.finishes[j] as Float64Array, confidence, select);
  }
  return found;
}

/** The ranks that are read of each start and of each finish of n iterations. */
export function ranksRead(confidence: number, n: number): { starts: number[]; finishes: number[] } {
  const ranks = [0.1, 0.5, 0.9, confidence].map((p) => rankOf(p, n));
  return { starts: ranks.slice(0, 3), finishes: ranks };
}

function fill(
  found: Float64Array,
  at: number,
  starts: Float64Array,
  finishes: Float64Array,
  confidence: number,
  select: (values: Float64Array, ranks: readonly number[]) => number[],
): void {
  const ranks = ranksRead(confidence, starts.length);
  found.set(select(starts, ranks.starts), at);
  found.set(select(finishes, ranks.finishes), at + 3);
}

function keptRanks(
  model: Model,
  asWritten: AsWritten,
  trials: Trials,
  { parts, confidence: kept }: Moments,
  confidence: number,
  from: number,
  to: number,
): Float64Array {
  if (kept !== confidence) {
    throw new RangeError(
      `Moments were read at ${kept}, as they are too many to be kept; simulate with confidence ${confidence} to read that.`,
    );
  }
  const starts = parts.map((part) => part.starts);
  const finishes = parts.map((part) => part.finishes);
  const found = new Float64Array(ranksPerTask * (to - from));
  const missed: number[] = [];
  for (let j = from, at = 0; j < to; j++, at += ranksPerTask) {
    const values = [...ranksFrom(starts, j), ...ranksFrom(finishes, j)];
    if (values.every((value) => value !== undefined)) found.set(values, at);
    else missed.push(j);
  }
  if (missed.length > 0)
    readAgain(model, asWritten, trials, missed, (j, ofStart, ofFinish) => {
      const select = rankSelector(trials.iterations);
      fill(found, ranksPerTask * (j - from), ofStart, ofFinish, confidence, select);
    });
  return found;
}

/**
 * Tasks whose early iterations were so unlike the others that their percentiles were not kept (expected less than once
 * in a billion rows): everything is computed once more, and their moments are kept in full.
 */
function readAgain(
  model: Model,
  asWritten: AsWritten,
  { seed, design, iterations }: Trials,
  tasks: readonly number[],
  use: (task: number, starts: Float64Array, finishes: Float64Array) => void,
): void {
  const size = Math.min(iterations, blockSize);
  const block = newTrials(model, asWritten, { seed, design, iterations: size });
  const runner = blockRunner(model, asWritten, block);
  const rows = tasks.map(() => ({
    starts: new Float64Array(iterations),
    finishes: new Float64Array(iterations),
  }));
  for (let first = 0; first < iterations; first += blockSize) {
    const n = Math.min(blockSize, iterations - first);
    runner.run(first / blockSize, 0, n);
    tasks.forEach((j, i) => {
      rows[i]?.starts.set((block.starts[j] as Float64Array).subarray(0, n), first);
      rows[i]?.finishes.set((block.finishes[j] as Float64Array).subarray(0, n), first);
    });
  }
  tasks.forEach((j, i) => {
    const { starts, finishes } = rows[i] as (typeof rows)[0];
    use(j, starts, finishes);
  });
}

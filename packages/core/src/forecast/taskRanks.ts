import { kernelOf, type Trials } from "../simulate/trials.ts";
import { rankSelector } from "./rankSelector.ts";
import { rankOf } from "./ranks.ts";

/** Entries a task has in the ranks: start at P10, P50, P90; finish at P10, P50, P90 and the committed level. */
export const ranksPerTask = 7;

/**
 * The percentiles of the starts and finishes of tasks `from` up to `to` (not included), seven entries a task: the part
 * of a summary that grows with the iterations, and may be shared out.
 *
 * Cost: about 2 ns per task and iteration.
 */
export function taskRanks(trials: Trials, confidence: number, from: number, to: number): Float64Array {
  const n = trials.iterations;
  const ranks = [0.1, 0.5, 0.9, confidence].map((p) => rankOf(p, n));
  const ofStarts = ranks.slice(0, 3);
  const select = kernelOf(trials.starts[0])?.selectRanks ?? rankSelector(n);
  const found = new Float64Array(ranksPerTask * (to - from));
  for (let j = from, at = 0; j < to; j++, at += ranksPerTask) {
    found.set(select(trials.starts[j] as Float64Array, ofStarts), at);
    found.set(select(trials.finishes[j] as Float64Array, ranks), at + 3);
  }
  return found;
}

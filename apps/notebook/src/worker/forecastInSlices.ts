import {
  addSums,
  beyondCalendar,
  blockSize,
  compile,
  type Forecast,
  newTrials,
  type Plan,
  type Problem,
  planAsWritten,
  runBlocks,
  summarise,
} from "@leeway/core";
import { partOfTrials } from "./partOfTrials.ts";

export interface Slices {
  /** Futures behind the early answer: whole blocks. It is left out where the full one is hardly longer. */
  first: number;
  early: (forecast: Forecast) => void;
  progress: (done: number, total: number) => void;
  /** Lets messages in; true: someone wants the run left. */
  left: () => Promise<boolean>;
}

/** A slice takes about this long, in ms: so long does a newer request wait at most. */
const sliceLength = 40;

/**
 * The library's forecast of a plan, to the bit, computed a few blocks at a time. The early answer is read off the
 * same trials, which are then filled up: nothing is computed twice.
 *
 * @returns undefined when it was left.
 */
export async function forecastInSlices(
  plan: Plan,
  { first, early, progress, left }: Slices,
): Promise<{ forecast?: Forecast; problems: Problem[] } | undefined> {
  const model = compile(plan);
  const asWritten = planAsWritten(model);
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(model, asWritten.beyond)] };
  const trials = newTrials(model, asWritten, {});
  const n = trials.iterations;
  const answerEarly = first * 2 < n;
  let done = 0;
  let size = answerEarly ? first : blockSize;
  while (done < n) {
    const count = Math.min(size, n - done);
    const from = performance.now();
    const into = partOfTrials(trials, done, count, trials.sums);
    const beyond = runBlocks(model, asWritten, into, done / blockSize, (sums) => addSums(trials.sums, sums));
    if (beyond >= 0) return { problems: [beyondCalendar(model, beyond)] };
    const took = performance.now() - from;
    done += count;
    if (answerEarly && done === first)
      early(summarise(model, partOfTrials(trials, 0, done, trials.sums), asWritten));
    progress(done, n);
    if (await left()) return undefined;
    const blocks = Math.floor((sliceLength / Math.max(took, 0.1)) * (count / blockSize));
    size = blockSize * Math.max(1, blocks);
  }
  return { forecast: summarise(model, trials, asWritten), problems: [] };
}

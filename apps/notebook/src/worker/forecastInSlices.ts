import {
  addSums,
  beyondCalendar,
  blockRunner,
  blockSize,
  compile,
  type Forecast,
  newTrials,
  type Plan,
  type Problem,
  planAsWritten,
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
const sliceLength = 20;

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
  const trials = newTrials(model, asWritten, {}, "in kernel");
  const runner = blockRunner(model, asWritten, trials);
  const n = trials.iterations;
  const earlyAt = first * 2 < n && trials.moments === undefined ? first : n;
  let from = performance.now();
  for (let done = 0; done < n; ) {
    const count = Math.min(blockSize, n - done);
    const sums = runner.run(done / blockSize, done, count);
    if (typeof sums === "number") return { problems: [beyondCalendar(model, sums)] };
    addSums(trials.sums, sums);
    done += count;
    if (done === earlyAt && done < n) {
      early(summarise(model, partOfTrials(trials, 0, done, trials.sums), asWritten));
    } else if (performance.now() - from < sliceLength && done < n) continue;
    progress(done, n);
    if (await left()) return undefined;
    from = performance.now();
  }
  return { forecast: summarise(model, trials, asWritten), problems: [] };
}

import {
  addSums,
  beyondCalendar,
  blockRunner,
  blockSize,
  compile,
  type Forecast,
  leaveTrials,
  newTrials,
  type Plan,
  type Problem,
  planAsWritten,
  summarise,
  type TrialSums,
  type Trials,
} from "@leeway/core";
import type { Help } from "./help.ts";
import { partOfTrials } from "./partOfTrials.ts";
import { rowsIn } from "./rowsIn.ts";

export interface Slices {
  /** Futures behind the early answer: whole blocks. It is left out where the full one is hardly longer. */
  first: number;
  early: (forecast: Forecast) => void;
  progress: (done: number, total: number) => void;
  /** Lets messages in; true: someone wants the run left. */
  left: () => Promise<boolean>;
  /** Computes blocks from the other end meanwhile. */
  help?: Help | undefined;
}

/** A slice takes about this long, in ms: so long does a newer request wait at most. */
const sliceLength = 20;

/** Blocks from which a helper is asked: below, it would hardly have begun. */
const blocksForHelp = 4;

/**
 * The library's forecast of a plan, to the bit, computed a few blocks at a time. The early answer is read off the
 * same trials, which are then filled up: nothing is computed twice, except a block where two meet.
 *
 * @returns undefined when it was left.
 */
export async function forecastInSlices(
  plan: Plan,
  { first, early, progress, left, help }: Slices,
): Promise<{ forecast?: Forecast; problems: Problem[] } | undefined> {
  const count = Math.ceil(plan.iterations / blockSize);
  let helper = count >= blocksForHelp ? help : undefined;
  let done = (): void => {};
  try {
    const model = compile(plan);
    const asWritten = planAsWritten(model);
    if (asWritten.beyond >= 0) return { problems: [beyondCalendar(model, asWritten.beyond)] };
    const trials = newTrials(model, asWritten, {}, "in kernel");
    done = () => leaveTrials(trials);
    const runner = blockRunner(model, asWritten, trials);
    const n = trials.iterations;
    const keepsAll = trials.moments === undefined;
    if (!keepsAll) helper = undefined;
    const earlyAt = keepsAll && first * 2 < n ? first / blockSize : count;
    const sums: TrialSums[] = [];
    let summed = 0;
    /** In address order, as far as there are no gaps. */
    const add = (): void => {
      for (let next = sums[summed]; next !== undefined; next = sums[++summed]) addSums(trials.sums, next);
    };
    let from = performance.now();
    for (let block = 0; block < count; block++) {
      if (sums[block] !== undefined) continue;
      const start = block * blockSize;
      const found = runner.run(block, start, Math.min(blockSize, n - start));
      if (typeof found === "number") return { problems: [beyondCalendar(model, found)] };
      sums[block] = found;
      add();
      const isEarly = block + 1 === earlyAt;
      if (isEarly) {
        early(summarise(model, partOfTrials(trials, 0, first, trials.sums), asWritten));
        // Not before: the early answer has the processors to itself.
        helper?.begin(plan);
      }
      if (!isEarly && helper === undefined && performance.now() - from < sliceLength && block + 1 < count)
        continue;
      progress(Math.min(n, (block + 1) * blockSize), n);
      if (await left()) return undefined;
      from = performance.now();
      for (const one of helper?.taken() ?? []) {
        if (sums[one.block] !== undefined) continue;
        place(one.rows, trials, one.block * blockSize);
        sums[one.block] = one.sums;
      }
    }
    add();
    return { forecast: summarise(model, trials, asWritten), problems: [] };
  } finally {
    helper?.end();
    done();
  }
}

/** Puts a block's rows, one after the other in `from`, to their places. */
function place(from: Float64Array, trials: Trials, first: number): void {
  const count = Math.min(blockSize, trials.iterations - first);
  let at = 0;
  for (const row of rowsIn(partOfTrials(trials, first, count, trials.sums))) {
    row.set(from.subarray(at, at + row.length));
    at += row.length;
  }
}

import type { Model } from "../simulate/model.ts";
import { type RunEntry, type SharedRun, shareRun } from "../simulate/program/sharedRun.ts";
import type { SimulateOptions } from "../simulate/simulate.ts";
import type { Trials } from "../simulate/trials.ts";
import { rankSelector } from "./rankSelector.ts";
import { ranksPerTask, ranksRead } from "./taskRanks.ts";

/** `shareRun` with the ranks that a summary at this level reads. */
export function shareForecast(
  model: Model,
  options: SimulateOptions,
  threads: number,
  begun: (entry: RunEntry) => void,
): SharedRun | undefined {
  const n = options.iterations ?? model.plan.iterations;
  const { starts, finishes } = ranksRead(options.confidence ?? model.confidence, n);
  const wanted = { starts: ascending(starts), finishes: ascending(finishes) };
  return shareRun(model, options, threads, wanted, begun);
}

/** What `taskRanks` would read of a run whose ranks are done. */
export function sharedRanks(run: SharedRun, trials: Trials, confidence: number): Float64Array {
  const read = run.ranks();
  const { starts, finishes } = ranksRead(confidence, trials.iterations);
  const placeOfStarts = starts.map((rank) => ascending(starts).indexOf(rank));
  const placeOfFinishes = finishes.map((rank) => 3 + ascending(finishes).indexOf(rank));
  const found = new Float64Array(read.length);
  let select: ReturnType<typeof rankSelector> | undefined;
  for (let j = 0, at = 0; at < read.length; j++, at += ranksPerTask) {
    placeOfStarts.forEach((place, i) => {
      found[at + i] = read[at + place] as number;
    });
    placeOfFinishes.forEach((place, i) => {
      found[at + 3 + i] = read[at + place] as number;
    });
    // Rows whose values crowd together are sorted instead.
    if (Number.isNaN(read[at])) {
      select ??= rankSelector(trials.iterations);
      found.set(select(run.starts(j), starts), at);
    }
    if (Number.isNaN(read[at + 3])) {
      select ??= rankSelector(trials.iterations);
      found.set(select(trials.finishes[j] as Float64Array, finishes), at + 3);
    }
  }
  return found;
}

function ascending(ranks: readonly number[]): number[] {
  return [...new Set(ranks)].sort((a, b) => a - b);
}

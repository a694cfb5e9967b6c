import { rankSelector } from "../../forecast/rankSelector.ts";
import type { Draw } from "../variants.ts";
import { type Gauge, gaugeOf, type Targets } from "./gauge.ts";
import { runSets } from "./runSets.ts";
import type { Scenarios, SwitchSet } from "./scenarios.ts";

/** Sets to be gauged in so many iterations; whoever can computes them, here or on other threads. */
export interface Ask {
  sets: readonly SwitchSet[];
  iterations: number;
  /** Part of the work still ahead that this is, roughly: for progress only. */
  part: number;
}
/** Work that asks for gauges as it goes, in the order of the sets, and ends with its result. */
export type Asking<T> = Generator<Ask, T, readonly Gauge[]>;

/** Gauges of sets of switches, each asked for once. */
export interface Gauges {
  n: number;
  /** Asks for those of these sets that are not known yet. */
  need(sets: readonly SwitchSet[], part?: number): Asking<void>;
  /** Of a set that was needed before. */
  of(set: SwitchSet): Gauge;
  /** How many sets are known. */
  readonly tried: number;
}

export function newGauges(iterations: number): Gauges {
  const known = new Map<SwitchSet, Gauge>();
  return {
    n: iterations,
    *need(sets, part = 0.1) {
      const missing = [...new Set(sets)].filter((set) => !known.has(set));
      if (missing.length === 0) return;
      const answers = yield { sets: missing, iterations, part };
      missing.forEach((set, at) => {
        known.set(set, answers[at] as Gauge);
      });
    },
    of(set) {
      const gauge = known.get(set);
      if (gauge === undefined) throw new RangeError(`Set ${set} was not asked for.`);
      return gauge;
    },
    get tried() {
      return known.size;
    },
  };
}

/** What gauges of sets are computed from. */
export interface Gauging {
  scenarios: Scenarios;
  draw: Draw;
  targets: Targets;
}

/** Gauges of these sets, in their order. Cost: see `runSets`; 80 bytes a set are kept. */
export function gaugeSets(
  { scenarios, draw, targets }: Gauging,
  { sets, iterations }: Pick<Ask, "sets" | "iterations">,
  onProgress?: (done: number, total: number) => void,
): Gauge[] {
  const select = rankSelector(iterations);
  return runSets(
    scenarios,
    { ...draw, iterations },
    sets,
    (outcome) => gaugeOf(outcome, scenarios.drawn, targets, select),
    onProgress,
  );
}

/** Does work that asks, on this thread. */
export function answered<T>(
  work: Asking<T>,
  gauging: Gauging,
  onProgress?: (done: number, total: number) => void,
): T {
  const progress = progressOfAsks(onProgress);
  let step = work.next();
  while (step.done !== true) step = work.next(gaugeSets(gauging, step.value, progress(step.value)));
  onProgress?.(1000, 1000);
  return step.value;
}

/** Progress over asks of which nobody knows how many there will be: each takes its part of what is still ahead. */
export function progressOfAsks(
  onProgress: ((done: number, total: number) => void) | undefined,
): (ask: Ask) => ((done: number, total: number) => void) | undefined {
  let ahead = 1000;
  return ({ part }) => {
    if (onProgress === undefined) return undefined;
    const from = 1000 - ahead;
    const share = ahead * part;
    ahead -= share;
    return (done, total) => onProgress(from + (share * done) / Math.max(1, total), 1000);
  };
}

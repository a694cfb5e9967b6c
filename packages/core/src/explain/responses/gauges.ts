import type { Draw } from "../variants.ts";
import { type Gauge, gaugeOf, type Targets } from "./gauge.ts";
import { runSets } from "./runSets.ts";
import type { Scenarios, SwitchSet } from "./scenarios.ts";

/** Gauges of sets of switches, each computed once however often it is asked for. */
export interface Gauges {
  n: number;
  /** Computes those of these sets that are not known yet, in one run. */
  need(sets: readonly SwitchSet[]): void;
  /** Of a set that was needed before. */
  of(set: SwitchSet): Gauge;
  /** How many sets have been computed. */
  readonly tried: number;
}

/** Cost: see `runSets`; 80 bytes a set are kept. */
export function gaugesOf(
  scenarios: Scenarios,
  draw: Draw,
  targets: Targets,
  onProgress?: (done: number, total: number) => void,
): Gauges {
  const known = new Map<SwitchSet, Gauge>();
  const need = (sets: readonly SwitchSet[]): void => {
    const missing = [...new Set(sets)].filter((set) => !known.has(set));
    if (missing.length === 0) return;
    const measured = runSets(
      scenarios,
      draw,
      missing,
      (outcome) => gaugeOf(outcome, scenarios.drawn, targets),
      onProgress,
    );
    missing.forEach((set, at) => {
      known.set(set, measured[at] as Gauge);
    });
  };
  return {
    n: draw.iterations,
    need,
    of(set) {
      need([set]);
      return known.get(set) as Gauge;
    },
    get tried() {
      return known.size;
    },
  };
}

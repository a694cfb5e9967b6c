import { blockSize } from "../simulate/block.ts";
import type { Model } from "../simulate/model.ts";
import type { Trials } from "../simulate/trials.ts";
import { drain } from "./drain.ts";
import type { Settings } from "./settings.ts";
import { BeyondCalendarError, type Outcome, stage } from "./stage.ts";

export { BeyondCalendarError, type Outcome, type Settings };

/** What re-runs share with the simulation they explain: the same seed, design and iterations are the same draws. */
export type Draw = Pick<Trials, "seed" | "design" | "iterations">;

/** Variants with the same `model` object share its draws. */
export interface Variant {
  model: Model;
  settings?: Settings;
}

/** Rows of outcomes kept at once. */
const keptBytes = 64e6;

/**
 * Runs variants of one or several models on the same draws and hands each one's outcome to `measure`, in no
 * particular order; what it answers comes back in the order of the variants.
 *
 * Two plans that differ (a response adopted, an estimate changed) are two models made by `compile`: draws are
 * addressed by item, so differences between their outcomes are differences of the plans and not noise.
 *
 * @param measure  Gets rows of `draw.iterations` values that are used again afterwards: copy what is to be kept.
 *
 * Throws BeyondCalendarError when a task of a variant runs past what calendars cover.
 * Cost    blocks outside, variants inside: one run of each model for every 64 MB of outcomes (28 bytes an
 *         iteration), and for each variant the placing of what differs from the variant before it or from the
 *         model as it is, whichever reaches less. Variants that differ by little should follow each other.
 */
export function runVariants<T>(
  draw: Draw,
  variants: readonly Variant[],
  measure: (outcome: Outcome, at: number) => T,
  onProgress?: (done: number, total: number) => void,
): T[] {
  return drain(variantSteps(draw, variants, measure, onProgress));
}

/** The same, pausing after each variant of each block: for a thread that has to listen while it works. */
export function* variantSteps<T>(
  draw: Draw,
  variants: readonly Variant[],
  measure: (outcome: Outcome, at: number) => T,
  onProgress?: (done: number, total: number) => void,
): Generator<void, T[]> {
  const n = draw.iterations;
  const results = new Array<T>(variants.length);
  const total = variants.length * n;
  let done = 0;
  for (const [model, places] of byModel(variants)) {
    const bytes = n * (20 + (model.lateness === undefined ? 0 : 8));
    const most = Math.max(1, Math.floor(keptBytes / bytes));
    const settingsAt = (place: number): Settings => variants[place]?.settings ?? {};
    const run = stage(model, draw, places.map(settingsAt));
    const rows = places.slice(0, most).map(() => newOutcome(model, n));
    for (let from = 0; from < places.length; from += most) {
      const batch = places.slice(from, from + most);
      const steps = run.prepare(batch.map(settingsAt));
      for (let first = 0, b = 0; first < n; first += blockSize, b++) {
        const size = Math.min(blockSize, n - first);
        run.load(b, size);
        for (let i = 0; i < steps.length; i++) {
          run.compute(steps[i] as (typeof steps)[number], rows[i] as Outcome, first);
          yield;
        }
        done += size * batch.length;
        onProgress?.(done, total);
      }
      batch.forEach((place, i) => {
        results[place] = measure(rows[i] as Outcome, place);
      });
    }
  }
  return results;
}

function byModel(variants: readonly Variant[]): Map<Model, number[]> {
  const places = new Map<Model, number[]>();
  variants.forEach(({ model }, place) => {
    const known = places.get(model);
    if (known === undefined) places.set(model, [place]);
    else known.push(place);
  });
  return places;
}

function newOutcome(model: Model, n: number): Outcome {
  return {
    finish: new Float64Array(n),
    finishDay: new Int32Array(n),
    cost: new Float64Array(n),
    ...(model.lateness === undefined ? {} : { lateness: new Float64Array(n) }),
  };
}

import type { Design } from "../sampling/design.ts";
import { blockSize } from "./block.ts";
import type { Model, Slot } from "./model.ts";

/** The draws of one estimate, all iterations, and how many were cut at zero in each block. */
export interface KeptRow {
  values: Float64Array;
  cuts: Float64Array;
}

/** Draws kept for the next simulation: of estimates by what they are drawn from, of events by their stream. */
export interface KeptDraws {
  readonly seed: string;
  readonly design: Design;
  readonly iterations: number;
  readonly rows: Map<string, KeptRow>;
  readonly uniforms: Map<string, Float64Array>;
}

export function newKeptDraws(seed: string, design: Design, iterations: number): KeptDraws {
  return { seed, design, iterations, rows: new Map(), uniforms: new Map() };
}

/**
 * Whether draws kept from one simulation are those of another. It may be longer; as cuts were counted by block, the
 * other then has to end with one.
 */
export function sameDice(kept: KeptDraws | undefined, of: KeptDraws): kept is KeptDraws {
  return (
    kept !== undefined &&
    kept.seed === of.seed &&
    kept.design === of.design &&
    (kept.iterations === of.iterations ||
      (kept.iterations > of.iterations && of.iterations % blockSize === 0))
  );
}

/** By slot: a text that is the same exactly when the draws are, seed, design and iterations apart. */
export function drawNames(model: Model): string[] {
  const set = model.correlated;
  // A member of a correlated set depends on all members before it, and on the factor of the matrix.
  const together =
    set === undefined
      ? ""
      : JSON.stringify([...set.slots].map((s) => addressOf(model.slots[s] as Slot))) + String(set.factor);
  const correlated = new Set(set?.slots);
  return model.slots.map((slot, s) =>
    JSON.stringify([addressOf(slot), slot.estimate, slot.cut, correlated.has(s) ? together : ""]),
  );
}

function addressOf({ item, purpose }: Slot): string[] {
  return [item, purpose];
}

export function newKeptRow(iterations: number): KeptRow {
  return {
    values: new Float64Array(iterations),
    cuts: new Float64Array(Math.ceil(iterations / blockSize)),
  };
}

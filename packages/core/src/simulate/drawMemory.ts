import { blockSize } from "./block.ts";
import { drawNames, type KeptDraws, type KeptRow, newKeptRow, sameDice } from "./keptDraws.ts";
import type { Model } from "./model.ts";

/** What filling asks of earlier draws, and tells of its own. */
export interface DrawMemory {
  /** Whether the draws of a slot are there already. */
  has(slot: number): boolean;
  /** Copies them; answers how many were cut at zero. */
  take(slot: number, block: number, n: number, out: Float64Array): number;
  /** Keeps what was drawn; `cut`: how many were cut at zero since the last block began. */
  keep(slot: number, block: number, n: number, drawn: Float64Array, cut: number): void;
  /** Copies the uniforms of a stream, where they are there already. */
  takeUniforms(item: string, purpose: string, block: number, n: number, out: Float64Array): boolean;
  keepUniforms(item: string, purpose: string, block: number, n: number, drawn: Float64Array): void;
}

export const noMemory: DrawMemory = {
  has: () => false,
  take: () => 0,
  keep: () => {},
  takeUniforms: () => false,
  keepUniforms: () => {},
};

/**
 * Takes over from `before` what is the same in this model, and keeps everything in `into`.
 *
 * Memory: 8 bytes per slot and iteration, and per event; what is taken over is shared.
 */
export function drawMemory(model: Model, into: KeptDraws, before: KeptDraws | undefined): DrawMemory {
  const names = drawNames(model);
  const known = sameDice(before, into) ? before : undefined;
  const taken = names.map((name) => known?.rows.get(name));
  const kept = names.map((name, s): KeptRow => {
    const row = taken[s] ?? newKeptRow(into.iterations);
    into.rows.set(name, row);
    return row;
  });
  const stream = (item: string, purpose: string) => JSON.stringify([item, purpose]);
  return {
    has: (s) => taken[s] !== undefined,
    take(s, block, n, out) {
      const { values, cuts } = taken[s] as KeptRow;
      const first = block * blockSize;
      out.set(values.subarray(first, first + n));
      return cuts[block] as number;
    },
    keep(s, block, n, drawn, cut) {
      const { values, cuts } = kept[s] as KeptRow;
      values.set(drawn.subarray(0, n), block * blockSize);
      cuts[block] = cut;
    },
    takeUniforms(item, purpose, block, n, out) {
      const name = stream(item, purpose);
      const row = known?.uniforms.get(name);
      if (row === undefined) return false;
      into.uniforms.set(name, row);
      const first = block * blockSize;
      out.set(row.subarray(first, first + n));
      return true;
    },
    keepUniforms(item, purpose, block, n, drawn) {
      const name = stream(item, purpose);
      let row = into.uniforms.get(name);
      if (row === undefined) {
        row = new Float64Array(into.iterations);
        into.uniforms.set(name, row);
      }
      row.set(drawn.subarray(0, n), block * blockSize);
    },
  };
}

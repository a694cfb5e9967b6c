import { bodyOffset, upperStart } from "./layout.ts";

/**
 * Reads a quantile table at u in [0, 1]: a straight line within a cell, rising everywhere.
 *
 * Cost   2 to 4 ns; + - * / and integer operations only, so the same bits in every engine.
 */
export function standardQuantile(values: Float64Array, u: number): number {
  if (u >= 0.03125 && u < 0.96875) {
    const t = u * 1024;
    const cell = t | 0;
    const from = values[bodyOffset + cell] as number;
    return from + (t - cell) * ((values[bodyOffset + cell + 1] as number) - from);
  }
  // A tail: v = 16 ... 31 within octave 0, each next octave twice as far; below 16 the cell that reaches 0.
  const upper = u >= 0.5;
  const v = (upper ? 1 - u : u) * 68719476736; // 2^36
  let entry = upper ? upperStart : 0;
  let within = v * 0.0625;
  if (v >= 16) {
    const octave = 27 - Math.clz32(v);
    const t = v / (1 << octave);
    const cell = t | 0;
    entry += 16 * octave + cell - 15;
    within = t - cell;
  }
  const from = values[entry] as number;
  return from + within * ((values[entry + 1] as number) - from);
}

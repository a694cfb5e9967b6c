import fc from "fast-check";
import type { Kernel } from "../../../packages/core/src/kernel/types.ts";

/** A seed for the values of a row, and how many iterations are worked on: ends of blocks, odd ends, whole blocks. */
export const seedAndLength: fc.Arbitrary<{ seed: number; n: number }> = fc.record({
  seed: fc.integer({ min: 1, max: 2 ** 31 - 1 }),
  n: fc.oneof(
    fc.integer({ min: 1, max: 40 }),
    fc.integer({ min: 1, max: 1024 }),
    fc.constantFrom(1, 2, 15, 16, 17, 1023, 1024),
  ),
});

/** A row of 1,024 with these values in a kernel's arena: behind the first n, too, so that touching them shows. */
export function rowOf(kernel: Kernel, values: Float64Array): Float64Array {
  const [row] = kernel.arena.rows(1, values.length) as [Float64Array];
  row.set(values);
  return row;
}

export function bytesOf(kernel: Kernel, values: Uint8Array): Uint8Array {
  const [row] = kernel.arena.bytes(1, values.length) as [Uint8Array];
  row.set(values);
  return row;
}

/** 1,024 values. */
export function values(next: () => number): Float64Array {
  return Float64Array.from({ length: 1024 }, next);
}

/** 1,024 bytes, 1 with the given chance. */
export function marks(random: () => number, chance: number): Uint8Array {
  return Uint8Array.from({ length: 1024 }, () => (random() < chance ? 1 : 0));
}

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import { bytesOfRanks, rankKeeper, ranksFrom } from "../../../packages/core/src/simulate/ranks/index.ts";
import { rng } from "../kernel/kernels.ts";
import { laws } from "./laws.ts";
import { keep, kernelOf, sortedAt } from "./rows.ts";

const usual = [0.1, 0.5, 0.8, 0.9];

describe("bytesOfRanks(rows, n, ps)", () => {
  it("grows as the square root of n", () => {
    for (const n of [100_000, 1_000_000]) {
      const ratio = bytesOfRanks(1000, 100 * n, usual) / bytesOfRanks(1000, n, usual);
      expect(ratio).toBeGreaterThan(9);
      expect(ratio).toBeLessThan(10);
    }
    // Against 8 bytes for each value.
    expect(bytesOfRanks(1000, 1_000_000, usual)).toBeLessThan((1000 * 8_000_000) / 40);
  });

  it("is what a keeper takes, to the byte and without asking for more", () => {
    for (const n of [1, 100, 20_000]) {
      const room = bytesOfRanks(3, n, usual);
      const kernel = kernelOf("simd", room + bytesOfRows(1, n, 8));
      const [values] = kernel.arena.rows(1, n) as [Float64Array];
      const random = rng(n);
      for (let k = 0; k < n; k++) values[k] = random();
      const before = kernel.arena.room;
      const keeper = rankKeeper(kernel, 3, n, usual);
      expect(before - kernel.arena.room).toBeLessThanOrEqual(room);
      for (let row = 0; row < 3; row++) keeper.absorb(row, values, n);
      const kept = keeper.result();
      for (let row = 0; row < 3; row++) expect(ranksFrom([kept], row)).toEqual(sortedAt(values, usual));
    }
  });
});

describe("what a keeper keeps", () => {
  it("is nothing of a value that comes again and again", () => {
    for (const law of ["constant", "constant at the start", "of two values"]) {
      const values = Float64Array.from({ length: 100_000 }, (laws[law] as (typeof laws)[string])(rng(5)));
      // Half of all values seen: brackets are still wide.
      const kept = keep("simd", values, 200_000, usual, [10_240]);
      expect(kept.values.length).toBe(0);
      expect(ranksFrom([kept], 0)).toEqual(sortedAt(values, usual));
    }
  });

  it("is the same in WebAssembly and in TypeScript", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2 ** 31 - 1 }),
        fc.constantFrom(...Object.values(laws)),
        fc.integer({ min: 1, max: 40_000 }),
        fc.constantFrom([10_240], [1024], [700, 1]),
        (seed, law, n, stretches) => {
          const values = Float64Array.from({ length: n }, law(rng(seed)));
          expect(keep("simd", values, 2 * n, usual, stretches)).toEqual(
            keep("plain", values, 2 * n, usual, stretches),
          );
        },
      ),
      { numRuns: 80 },
    );
  });

  it("is plain data that survives being sent", () => {
    const values = Float64Array.from({ length: 30_000 }, (laws.skewed as (typeof laws)[string])(rng(9)));
    const kept = keep("simd", values, 60_000, usual, [1024]);
    const buffers = Object.values(kept).map(({ buffer }: Float64Array) => buffer as ArrayBuffer);
    const wanted = ranksFrom([kept], 0);
    expect(wanted).toEqual(sortedAt(values, usual));
    expect(ranksFrom([structuredClone(kept, { transfer: buffers })], 0)).toEqual(wanted);
    expect(kept.values.length).toBe(0);
  });

  it("may be looked at on the way", () => {
    const values = Float64Array.from({ length: 50_000 }, (laws.skewed as (typeof laws)[string])(rng(3)));
    const kernel = kernelOf("simd", bytesOfRanks(1, values.length, usual) + bytesOfRows(1, values.length, 8));
    const [row] = kernel.arena.rows(1, values.length) as [Float64Array];
    row.set(values);
    const keeper = rankKeeper(kernel, 1, values.length, usual);
    expect(ranksFrom([keeper.result()], 0)).toEqual([undefined, undefined, undefined, undefined]);
    for (let at = 0; at < values.length; at += 10_000) {
      keeper.absorb(0, row.subarray(at, at + 10_000), 10_000);
      expect(ranksFrom([keeper.result()], 0)).toEqual(sortedAt(values.slice(0, at + 10_000), usual));
    }
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import { differing, moment, rng, simd } from "./kernels.ts";

// Against the definition: the values in ascending order, as typed arrays sort them (ECMA-262, %TypedArray%.sort).

const kinds: Record<string, (random: () => number) => number> = {
  spread: (random) => random() * 100,
  "bell-shaped": (random) => 50 + random() + random() + random() + random() + random() + random(),
  moments: (random) => moment(random, 200),
  "one far outlier": (random) => (random() < 0.001 ? 1e9 : random()),
  "few different": (random) => Math.floor(random() * 4),
  "whole days": (random) => Math.floor(random() * 300),
  "all equal": () => 12.5,
  "signed zeros": (random) => (random() < 0.5 ? 0 : -0) + (random() < 0.3 ? Math.floor(random() * 5) - 2 : 0),
  "with infinity": (random) => (random() < 0.1 ? Number.POSITIVE_INFINITY : random()),
  tiny: (random) => random() * 1e-310,
};

describe("selectRanks in WebAssembly", () => {
  for (const [kind, draw] of Object.entries(kinds)) {
    it(`picks what sorting picks: ${kind}`, () => {
      fc.assert(
        fc.property(
          fc.integer({ min: 1, max: 2 ** 31 - 1 }),
          fc.oneof(fc.integer({ min: 1, max: 600 }), fc.integer({ min: 256, max: 70_000 })),
          fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 16 }),
          fc.boolean(),
          (seed, n, shares, inside) => {
            const random = rng(seed);
            const kernel = simd(bytesOfRows(3, n, 8));
            const values = inside ? (kernel.arena.rows(1, n)[0] as Float64Array) : new Float64Array(n);
            for (let k = 0; k < n; k++) values[k] = draw(random);
            const before = values.slice();
            const ranks = shares.map((share) => Math.max(1, Math.ceil(share * n)));
            const sorted = Float64Array.from(values).sort();
            const picked = kernel.selectRanks(values, ranks);
            // Equal values at both ends are answered as they came; elsewhere the bits of a sort.
            const expected = ranks.map((rank) => sorted[rank - 1] as number);
            expect(picked.every((value, i) => value === expected[i])).toBe(true);
            if (kind !== "signed zeros") expect(picked).toEqual(expected);
            expect(differing(values, before)).toEqual([]);
          },
        ),
        { numRuns: 60 },
      );
    });
  }

  it("does without room for scratch", () => {
    const values = Float64Array.from({ length: 1000 }, (_, k) => (k * 7919) % 1000);
    expect(simd(0).selectRanks(values, [1, 500, 1000])).toEqual([0, 499, 999]);
  });
});

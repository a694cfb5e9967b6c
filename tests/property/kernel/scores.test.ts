import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { both, differing, rng } from "./kernels.ts";
import { rowOf, seedAndLength, values } from "./rows.ts";

// What the functions should give is checked in tests/reference/sampling/functions.test.ts; here that both kernels give
// the same bits, and leave what lies behind a row alone.

const room = 100_000;

/** Anywhere in (0, 1), now and then far out in a tail. */
function chance(random: () => number): number {
  const kind = random();
  if (kind < 0.15) return 2 ** -Math.ceil(random() * 53) * (0.5 + random() / 2);
  if (kind < 0.3) return 1 - 2 ** -Math.ceil(random() * 52) * (0.5 + random() / 2);
  return kind < 0.4 ? 0.5 + (Math.round(random()) - 0.5) * 0.85 : 0.001 + random() * 0.998;
}

describe("toScores(row) and toChances(row)", () => {
  it("give the same bits in WebAssembly and in TypeScript", () => {
    fc.assert(
      fc.property(seedAndLength, ({ seed, n }) => {
        const random = rng(seed);
        const chances = values(() => chance(random));
        const scores = values(() => (random() < 0.1 ? (random() - 0.5) * 100 : (random() - 0.5) * 18));
        const [a, b] = both(room).map((kernel) => {
          const [x, z] = [rowOf(kernel, chances), rowOf(kernel, scores)] as const;
          kernel.toScores(x, n);
          kernel.toChances(z, n);
          return { x, z };
        }) as [Record<"x" | "z", Float64Array>, Record<"x" | "z", Float64Array>];
        expect(differing(a.x, b.x)).toEqual([]);
        expect(differing(a.z, b.z)).toEqual([]);
        expect([...a.x.subarray(n)]).toEqual([...chances.subarray(n)]);
        expect([...a.z.subarray(n)]).toEqual([...scores.subarray(n)]);
      }),
    );
  });

  it("are each other's way back, and the known points of the law", () => {
    for (const kernel of both(room)) {
      // NIST/SEMATECH e-Handbook, 1.3.6.7.1: P(Z <= 1.96) = 0.97500, P(Z <= 1) = 0.84134.
      const known = rowOf(kernel, Float64Array.of(1.96, 1, 0, -1.96));
      kernel.toChances(known, 4);
      [0.975, 0.84134, 0.5, 0.025].forEach((p, k) => {
        expect(known[k]).toBeCloseTo(p, 5);
      });
      kernel.toScores(known, 4);
      [1.96, 1, 0, -1.96].forEach((z, k) => {
        expect(known[k]).toBeCloseTo(z, 12);
      });
    }
  });
});

describe("addScaled(out, row, factor)", () => {
  it("adds what it says to the first n", () => {
    fc.assert(
      fc.property(seedAndLength, ({ seed, n }) => {
        const random = rng(seed);
        const out = values(() => random() - 0.5);
        const row = values(() => random() - 0.5);
        const factor = random() * 2 - 1;
        const expected = out.map((value, k) => (k < n ? value + factor * (row[k] as number) : value));
        for (const kernel of both(room)) {
          const into = rowOf(kernel, out);
          kernel.addScaled(into, rowOf(kernel, row), factor, n);
          expect(differing(into, expected)).toEqual([]);
        }
      }),
    );
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ranksFrom } from "../../../packages/core/src/simulate/ranks/index.ts";
import { rng } from "../kernel/kernels.ts";
import { laws, stratified } from "./laws.ts";
import { keep, type Lane, sortedAt } from "./rows.ts";

// Against the definition in the plan format, over all values sorted (ECMA-262, %TypedArray%.prototype.sort). A bracket
// misses a random sample with a probability below 1e-9: no seed here is expected to.

const seed = fc.integer({ min: 1, max: 2 ** 31 - 1 });
const lane = fc.constantFrom<Lane>("simd", "plain");
const usual = [0.1, 0.5, 0.9];
const ps = fc.oneof(
  fc.constant(usual),
  fc.constant([...usual, 0.8]),
  fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 9 }),
  fc.constantFrom([0, 1], [0.5, 0.5, 0.5], [0.001, 0.01, 0.99, 0.999], [0.49, 0.5, 0.51], [0.9, 0.1, 0.5]),
);
const stretches = fc.oneof(
  fc.constant([10_240]),
  fc.constant([1024]),
  fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 1, maxLength: 5 }),
);
const length = fc.oneof(
  fc.integer({ min: 1, max: 50 }),
  fc.integer({ min: 1, max: 5000 }),
  fc.integer({ min: 5000, max: 60_000 }),
);

describe("a keeper and ranksFrom", () => {
  for (const [name, law] of Object.entries(laws)) {
    it(`answer what sorting answers: values ${name}`, () => {
      fc.assert(
        fc.property(seed, lane, length, ps, stretches, (s, on, n, shares, lengths) => {
          const values = Float64Array.from({ length: n }, law(rng(s)));
          const kept = keep(on, values, n, shares, lengths);
          expect(ranksFrom([kept], 0)).toEqual(sortedAt(values, shares));
        }),
        { numRuns: 40 },
      );
    });
  }

  it("answer what sorting answers: Latin hypercube blocks", () => {
    fc.assert(
      fc.property(seed, lane, length, ps, stretches, (s, on, n, shares, lengths) => {
        const values = stratified(rng(s), n);
        expect(ranksFrom([keep(on, values, n, shares, lengths)], 0)).toEqual(sortedAt(values, shares));
      }),
      { numRuns: 40 },
    );
  });

  it("answer what sorting answers, over several keepers with stretches of their own", () => {
    const names = Object.keys(laws);
    fc.assert(
      fc.property(
        seed,
        fc.constantFrom(...names),
        length,
        ps,
        fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 6 }),
        (s, name, n, shares, weights) => {
          const values = Float64Array.from({ length: n }, (laws[name] as (typeof laws)[string])(rng(s)));
          const all = weights.reduce((sum, weight) => sum + weight, 0) + 1;
          let from = 0;
          const parts = [...weights, 1].map((weight) => {
            const to = Math.min(n, from + Math.ceil((n * weight) / all));
            const part = keep("simd", values.subarray(from, to), n, shares, [1024]);
            from = to;
            return part;
          });
          parts.push(keep("plain", values.subarray(from), n, shares, [512]));
          expect(ranksFrom(parts, 0)).toEqual(sortedAt(values, shares));
        },
      ),
      { numRuns: 150 },
    );
  });

  it("answer for fewer values than were announced", () => {
    fc.assert(
      fc.property(
        seed,
        fc.integer({ min: 1, max: 30_000 }),
        fc.integer({ min: 1, max: 50 }),
        (s, n, times) => {
          const values = stratified(rng(s), n);
          const half = n >> 1;
          const parts = [values.subarray(0, half), values.subarray(half)].map((part) =>
            keep("simd", part, n * times, usual, [1024]),
          );
          expect(ranksFrom(parts, 0)).toEqual(sortedAt(values, usual));
        },
      ),
      { numRuns: 60 },
    );
  });

  it("answer for 400,000 values, by one keeper and by three", () => {
    for (const [name, law] of Object.entries(laws)) {
      const values = Float64Array.from({ length: 400_000 }, law(rng(name.length)));
      const shares = [0.1, 0.5, 0.8, 0.9];
      const wanted = sortedAt(values, shares);
      const whole = keep("simd", values, values.length, shares, [10_240]);
      expect(ranksFrom([whole], 0)).toEqual(wanted);
      // One keeper that has seen all keeps next to nothing: what a skewed law could still need.
      expect(whole.values.length).toBeLessThan(80);
      const parts = [0, 1, 2].map((i) =>
        keep(
          "simd",
          values.subarray(i * 133_000, i === 2 ? undefined : (i + 1) * 133_000),
          values.length,
          shares,
          [10_240],
        ),
      );
      expect(ranksFrom(parts, 0)).toEqual(wanted);
    }
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ranksFrom } from "../../../packages/core/src/simulate/ranks/index.ts";
import { rng } from "../kernel/kernels.ts";
import { keep, type Lane, sortedAt } from "./rows.ts";

// Whatever comes, and however unlike what came first: the right value or none. The right ones are those of sorting.

const usual = [0.1, 0.5, 0.9];
const lane = fc.constantFrom<Lane>("simd", "plain");
const stretches = fc.constantFrom([10_240], [1024], [100, 3000], [1]);

function check(
  values: Float64Array,
  answers: readonly (number | undefined)[],
  ps: readonly number[],
): number {
  const wanted = sortedAt(values, ps);
  expect(answers.length).toBe(ps.length);
  answers.forEach((answer, i) => {
    if (answer !== undefined) expect(answer).toBe(wanted[i]);
  });
  return answers.filter((answer) => answer === undefined).length;
}

describe("values that are not like those before them", () => {
  it("give no answer where all that comes later is larger, or smaller", () => {
    for (const on of ["simd", "plain"] as const) {
      for (const factor of [2, 0.25]) {
        const random = rng(11);
        const values = Float64Array.from(
          { length: 100_000 },
          (_, k) => (100 + random()) * (k < 10_240 ? 1 : factor),
        );
        const answers = ranksFrom([keep(on, values, values.length, [0.5, 0.8], [10_240])], 0);
        expect(answers).toEqual([undefined, undefined]);
      }
    }
  });

  it("give no wrong answer where they rise, fall, swing or come in bursts", () => {
    const kinds: Record<string, (k: number, n: number, random: () => number) => number> = {
      rising: (k, n, random) => (100 * k) / n + 5 * random(),
      "rising in order": (k) => k,
      falling: (k, n, random) => 100 - (100 * k) / n + 5 * random(),
      "falling in order": (k) => 1e6 - k,
      swinging: (k, n, random) => 50 + 30 * Math.sin((20 * k) / n) + random(),
      "in runs of equal values": (k) => (Math.floor(k / 3000) * 7919) % 101,
      "wider and wider": (k, n, random) => 50 + (random() - 0.5) * (1 + (90 * k) / n),
      "narrower and narrower": (k, n, random) => 50 + (random() - 0.5) * (91 - (90 * k) / n),
      "ending in one value": (k, n, random) => (k < n / 5 ? 100 * random() : 50.5),
      "ending far below": (k, n, random) => (k < n / 2 ? 100 + random() : random()),
    };
    let missed = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2 ** 31 - 1 }),
        fc.constantFrom(...Object.values(kinds)),
        fc.integer({ min: 1, max: 30_000 }),
        lane,
        stretches,
        fc.integer({ min: 1, max: 3 }),
        (seed, kind, n, on, lengths, count) => {
          const random = rng(seed);
          const values = Float64Array.from({ length: n }, (_, k) => kind(k, n, random));
          const parts = Array.from({ length: count }, (_, i) =>
            keep(
              on,
              values.subarray(Math.floor((i * n) / count), Math.floor(((i + 1) * n) / count)),
              n,
              usual,
              lengths,
            ),
          );
          missed += check(values, ranksFrom(parts, 0), usual);
        },
      ),
      { numRuns: 300 },
    );
    // Otherwise this would have tried nothing.
    expect(missed).toBeGreaterThan(100);
  });

  it("give no wrong answer in any order of a few values", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 1, max: 2500 })), {
          minLength: 1,
          maxLength: 12,
        }),
        lane,
        stretches,
        (runs, on, lengths) => {
          const values = Float64Array.from(
            runs.flatMap(([value, times]) => new Array<number>(times).fill(value / 4)),
          );
          check(values, ranksFrom([keep(on, values, values.length, usual, lengths)], 0), usual);
        },
      ),
      { numRuns: 150 },
    );
  });

  it("give no wrong answer where some are negative, zero of either sign, tiny or infinite", () => {
    const odd = [-5, -1e-300, -0, 0, 1e-310, 2.5, Number.POSITIVE_INFINITY];
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2 ** 31 - 1 }),
        fc.integer({ min: 1, max: 20_000 }),
        fc.integer({ min: 1, max: odd.length }),
        lane,
        stretches,
        (seed, n, count, on, lengths) => {
          const random = rng(seed);
          const values = Float64Array.from({ length: n }, () =>
            random() < 0.5 ? (odd[Math.floor(random() * count)] as number) : 4 * random() - 1,
          );
          const wanted = sortedAt(values, usual);
          ranksFrom([keep(on, values, n, usual, lengths)], 0).forEach((answer, i) => {
            // 0 and -0 are equal values.
            if (answer !== undefined) expect(answer === wanted[i]).toBe(true);
          });
        },
      ),
      { numRuns: 150 },
    );
  });
});

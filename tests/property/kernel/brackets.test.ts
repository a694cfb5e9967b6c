import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import { both, moment, rng } from "./kernels.ts";

// Against the definition, value by value: below the low end, equal to an end, strictly inside.

/** Values of which many are equal, lie next to each other, or share the high half of their bits. */
function valueBy(random: () => number): number {
  const kind = random();
  if (kind < 0.3) return Math.floor(random() * 6);
  if (kind < 0.5) return 2 + (Math.floor(random() * 9) - 4) * 2 ** -51;
  if (kind < 0.6) return 3 + Math.floor(random() * 5) * 2 ** -40;
  if (kind < 0.61) return Number.POSITIVE_INFINITY;
  if (kind < 0.62) return -0;
  if (kind < 0.65) return -random();
  return moment(random, 6);
}

/** Ends of `count` brackets as the kernel wants them; some are points, some touch. */
function bracketsBy(random: () => number, count: number): Float64Array {
  const ends: number[] = [];
  while (ends.length < 2 * count) ends.push(Math.max(0, valueBy(random)) + 0);
  ends.sort((a, b) => a - b);
  if (random() < 0.3) ends[0] = Number.NEGATIVE_INFINITY;
  if (random() < 0.3) ends[2 * count - 1] = Number.POSITIVE_INFINITY;
  const brackets = new Float64Array(5 * count);
  for (let i = 0; i < count; i++) {
    brackets[5 * i] = ends[2 * i] as number;
    brackets[5 * i + 1] = ends[2 * i + 1] as number;
    // Counts go on from what they are.
    for (let c = 2; c < 5; c++) brackets[5 * i + c] = Math.floor(random() * 1e10);
  }
  return brackets;
}

function expected(values: Float64Array, before: Float64Array): { brackets: number[]; inside: number[] } {
  const brackets = [...before];
  const inside: number[] = [];
  for (let at = 0; at < brackets.length; at += 5) {
    const [low, high] = brackets.slice(at, at + 2) as [number, number];
    const counts = [
      values.filter((value) => value < low),
      values.filter((value) => value === low),
      values.filter((value) => value === high && low < high),
    ];
    counts.forEach((list, c) => {
      brackets[at + 2 + c] = (brackets[at + 2 + c] as number) + list.length;
    });
    inside.push(...values.filter((value) => value > low && value < high));
  }
  return { brackets, inside: ascending(inside) };
}

const ascending = (values: Iterable<number>) => [...Float64Array.from(values).sort()];

const settings = {
  seed: fc.integer({ min: 1, max: 2 ** 31 - 1 }),
  n: fc.oneof(
    fc.integer({ min: 0, max: 40 }),
    fc.integer({ min: 0, max: 2600 }),
    fc.constantFrom(1023, 1024, 1025, 2048),
  ),
  count: fc.integer({ min: 1, max: 11 }),
};

describe("absorb(values, from, to, brackets, count, list, held)", () => {
  it("counts and keeps what the definition says", () => {
    fc.assert(
      fc.property(
        fc.record(settings),
        fc.integer({ min: 0, max: 9 }),
        fc.integer({ min: 0, max: 5 }),
        ({ seed, n, count }, from, held) => {
          const random = rng(seed);
          const values = Float64Array.from({ length: from + n }, () => valueBy(random));
          const brackets = bracketsBy(random, count);
          const wanted = expected(values.subarray(from), brackets);
          for (const kernel of both(bytesOfRows(3, 6000, 8))) {
            const [row, list, own] = kernel.arena.rows(3, 6000) as [Float64Array, Float64Array, Float64Array];
            row.set(values);
            own.set(brackets);
            own.fill(7, brackets.length);
            list.fill(-1);
            const end = kernel.absorb(row, from, from + n, own, count, list, held);
            expect(ascending(list.subarray(held, end))).toEqual(wanted.inside);
            expect([...own.subarray(0, 5 * count)]).toEqual(wanted.brackets);
            // What is not its own stays: the values, the list before, what follows the brackets.
            expect([...row.subarray(0, from + n)]).toEqual([...values]);
            expect([...list.subarray(0, held)]).toEqual(new Array(held).fill(-1));
            expect(own.subarray(5 * count).every((value) => value === 7)).toBe(true);
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it("keeps a list in its own place", () => {
    fc.assert(
      fc.property(fc.record(settings), fc.boolean(), ({ seed, n, count }, all) => {
        const random = rng(seed);
        const values = Float64Array.from({ length: n }, () => valueBy(random));
        const brackets = bracketsBy(random, count);
        if (all) {
          // Everything is kept.
          brackets[0] = Number.NEGATIVE_INFINITY;
          brackets[1] = 100;
          for (let i = 1; i < count; i++) brackets.fill(100 + i, 5 * i, 5 * i + 2);
        }
        const wanted = expected(values, brackets);
        for (const kernel of both(bytesOfRows(2, 3000, 8))) {
          const [list, own] = kernel.arena.rows(2, 3000) as [Float64Array, Float64Array];
          list.set(values);
          list.fill(-5, n);
          own.set(brackets);
          const end = kernel.absorb(list, 0, n, own, count, list, 0);
          expect(ascending(list.subarray(0, end))).toEqual(wanted.inside);
          expect([...own.subarray(0, 5 * count)]).toEqual(wanted.brackets);
          expect(list.subarray(n).every((value) => value === -5)).toBe(true);
        }
      }),
      { numRuns: 400 },
    );
  });

  it("does the same in WebAssembly and in TypeScript, order included, with up to four brackets", () => {
    fc.assert(
      fc.property(fc.record({ ...settings, count: fc.integer({ min: 1, max: 4 }) }), ({ seed, n, count }) => {
        const random = rng(seed);
        const values = Float64Array.from({ length: n }, () => valueBy(random));
        const brackets = bracketsBy(random, count);
        const [one, two] = both(bytesOfRows(3, 3000, 8)).map((kernel) => {
          const [row, list, own] = kernel.arena.rows(3, 3000) as [Float64Array, Float64Array, Float64Array];
          row.set(values);
          own.set(brackets);
          return [...list.subarray(0, kernel.absorb(row, 0, n, own, count, list, 0))];
        });
        expect(one).toEqual(two);
      }),
      { numRuns: 200 },
    );
  });
});

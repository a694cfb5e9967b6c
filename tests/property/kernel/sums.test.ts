import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tolerance } from "../../../packages/core/src/calendar/tolerance.ts";
import type { Kernel } from "../../../packages/core/src/kernel/types.ts";
import { both, differing, duration, rng } from "./kernels.ts";
import { bytesOf, marks, rowOf, seedAndLength, values } from "./rows.ts";

// Both kernels give the same bits; sums are checked against sums taken differently, within the rounding of either.

const room = 400_000;
/** Rounding of a sum of up to 1,024 terms, either way: 1,024 half units in the last place of the sum of sizes. */
const rounding = (terms: number[]) => 1024 * 2 ** -52 * terms.reduce((sum, term) => sum + Math.abs(term), 0);
const sum = (terms: number[]) => terms.reduce((total, term) => total + term, 0);

interface Rows {
  d: Float64Array;
  x: Float64Array;
  y: Float64Array;
  moves: Uint8Array;
  base: number;
}

function rowsOf(seed: number): Rows {
  const random = rng(seed);
  return {
    d: values(() => duration(random, 60)),
    x: values(() => (random() < 0.2 ? -0 : (random() - 0.3) * 1e5)),
    y: values(() => random() * 3),
    moves: marks(random, random()),
    base: (random() - 0.5) * 20,
  };
}

/** Runs `use` on copies in both kernels; expects the same bits in every row and answer. */
function same(
  seed: number,
  use: (kernel: Kernel, rows: Rows) => number[],
): { rows: Rows; answers: number[] } {
  const results = both(room).map((kernel) => {
    const { d, x, y, moves, base } = rowsOf(seed);
    const rows = {
      d: rowOf(kernel, d),
      x: rowOf(kernel, x),
      y: rowOf(kernel, y),
      moves: bytesOf(kernel, moves),
      base,
    };
    return { answers: use(kernel, rows), rows };
  });
  const [a, b] = results as [(typeof results)[0], (typeof results)[0]];
  expect(differing(Float64Array.from(a.answers), Float64Array.from(b.answers))).toEqual([]);
  for (const name of ["d", "x", "y"] as const) expect(differing(a.rows[name], b.rows[name])).toEqual([]);
  return a;
}

describe("impacts", () => {
  it("are preceded by a scaled copy of the draws", () => {
    fc.assert(
      fc.property(seedAndLength, ({ seed, n }) => {
        const { x, y, base } = rowsOf(seed);
        const scaled = same(seed, (kernel, rows) => {
          kernel.scaleTo(rows.y, rows.x, rows.base, n);
          return [];
        }).rows.y;
        expect(
          differing(
            scaled,
            y.map((v, k) => (k < n ? (x[k] as number) * base : v)),
          ),
        ).toEqual([]);
      }),
    );
  });

  it("change durations where they occur and nowhere else", () => {
    fc.assert(
      fc.property(seedAndLength, ({ seed, n }) => {
        const { d, y, moves, base } = rowsOf(seed);
        const added = same(seed, (kernel, rows) => {
          kernel.addImpact(rows.d, rows.moves, rows.y, rows.base, n);
          return [];
        }).rows.d;
        const factored = same(seed, (kernel, rows) => {
          kernel.multiplyImpact(rows.d, rows.moves, rows.y, rows.base, n);
          return [];
        }).rows.d;
        const occurs = (k: number) => k < n && moves[k] === 1;
        const more = d.map((v, k) => (occurs(k) ? v + base * (y[k] as number) : v));
        const times = d.map((v, k) => (occurs(k) ? v * (1 + base * ((y[k] as number) - 1)) : v));
        expect(differing(added, more)).toEqual([]);
        expect(differing(factored, times)).toEqual([]);
      }),
    );
  });
});

describe("money", () => {
  it("adds rows up to the total and answers their sum", () => {
    fc.assert(
      fc.property(seedAndLength, ({ seed, n }) => {
        const { d, x, y, moves, base } = rowsOf(seed);
        const within = <T>(map: (k: number) => T) => Array.from({ length: n }, (_, k) => map(k));
        const check = (parts: number[], run: (kernel: Kernel, rows: Rows) => number) => {
          const { rows, answers } = same(seed, (kernel, own) => [run(kernel, own)]);
          expect(Math.abs((answers[0] as number) - sum(parts))).toBeLessThanOrEqual(rounding(parts));
          const total = x.map((v, k) => (k < n ? v + (parts[k] as number) : v));
          // Where nothing is added -0 may stay or become 0: the same number.
          expect([...rows.x].every((v, k) => v === total[k])).toBe(true);
        };
        check(
          within((k) => d[k] as number),
          (kernel, rows) => kernel.addCost(rows.x, rows.d, n),
        );
        check(
          within((k) => (moves[k] === 1 ? base * (y[k] as number) : 0)),
          (kernel, rows) => kernel.addCostWhere(rows.x, rows.moves, rows.y, rows.base, n),
        );
        check(
          within((k) => (y[k] as number) + ((y[k] as number) + base) * (d[k] as number)),
          (kernel, rows) => kernel.addTaskCost(rows.x, rows.y, rows.y, rows.base, rows.d, n),
        );
        // In one pass what a copy, addDaily and addCost do in three.
        const inOne = same(seed, (kernel, rows) => [
          kernel.addDailyCost(rows.x, rows.y, rows.base, rows.d, n),
        ]);
        const inThree = same(seed, (kernel, rows) => {
          const part = rowOf(kernel, rows.y);
          kernel.addDaily(part, rows.d, rows.base, n);
          return [kernel.addCost(rows.x, part, n)];
        });
        expect(inOne.answers).toEqual(inThree.answers);
        expect(differing(inOne.rows.x, inThree.rows.x)).toEqual([]);
        const daily = same(seed, (kernel, rows) => {
          kernel.addDaily(rows.x, rows.d, rows.base, n);
          return [];
        }).rows.x;
        expect(
          differing(
            daily,
            x.map((v, k) => (k < n ? v + base * (d[k] as number) : v)),
          ),
        ).toEqual([]);
      }),
    );
  });
});

describe("sumMasked and sumProducts", () => {
  it("count exactly and add up within rounding", () => {
    fc.assert(
      fc.property(seedAndLength, ({ seed, n }) => {
        const { d, y, moves, base } = rowsOf(seed);
        const days = [...d.subarray(0, n)];
        const own = days.filter((_, k) => moves[k] === 1).map((v) => v - base);
        const masked = same(seed, (kernel, rows) => {
          const into = new Float64Array(4);
          kernel.sumMasked(rows.d, rows.moves, rows.base, n, into);
          return [...into];
        }).answers as [number, number, number, number];
        expect(Math.abs(masked[0] - sum(own))).toBeLessThanOrEqual(rounding(own));
        expect(Math.abs(masked[1] - sum(days))).toBeLessThanOrEqual(rounding(days));
        expect(masked[2]).toBe(own.length);
        expect(masked[3]).toBe(days.filter((v) => v <= tolerance).length);

        const products = same(seed, (kernel, rows) => {
          const into = new Float64Array(5);
          kernel.sumProducts(rows.d, rows.y, n, into);
          return [...into];
        }).answers;
        const others = [...y.subarray(0, n)];
        const terms = [
          days,
          others,
          days.map((v) => v * v),
          others.map((v) => v * v),
          days.map((v, k) => v * (others[k] as number)),
        ];
        terms.forEach((list, i) => {
          expect(Math.abs((products[i] as number) - sum(list))).toBeLessThanOrEqual(rounding(list));
        });
      }),
    );
  });

  it("take their lanes as written down: iteration k in lane k mod 4, (0 + 1) + (2 + 3)", () => {
    // 2^53 + 1 is lost, 2^53 - 2^53 + 1 is not: only this order gives 2 here.
    const row = Float64Array.of(2 ** 53, -(2 ** 53), 1, 1);
    for (const kernel of both(room)) {
      const total = rowOf(kernel, new Float64Array(4));
      expect(kernel.addCost(total, rowOf(kernel, row), 4)).toBe(2);
      const late = rowOf(kernel, Float64Array.of(2 ** 53, 1, 0, 0, -(2 ** 53), 0, 0, 0));
      expect(kernel.addCost(rowOf(kernel, new Float64Array(8)), late, 8)).toBe(1);
    }
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import {
  bytesOfRanks,
  type KeptRanks,
  rankKeeper,
  ranksFrom,
  settledRanks,
} from "../../../packages/core/src/simulate/ranks/index.ts";
import { rng } from "../kernel/kernels.ts";
import { laws } from "./laws.ts";
import { kernelOf, sortedAt } from "./rows.ts";

const ps = [0.1, 0.5, 0.9, 0.8];

/** A keeper that has seen these rows of a run of `total` values: what it kept of some of them. */
function kept(rows: readonly Float64Array[], total: number): (from?: number, to?: number) => KeptRanks {
  const n = rows[0]?.length ?? 0;
  const kernel = kernelOf("simd", bytesOfRanks(rows.length, total, ps) + bytesOfRows(1, n, 8));
  const [window] = kernel.arena.rows(1, n) as [Float64Array];
  const keeper = rankKeeper(kernel, rows.length, total, ps);
  rows.forEach((row, r) => {
    window.set(row);
    keeper.absorb(r, window, n);
  });
  return (from, to) => keeper.result(from, to);
}

describe("settledRanks(rows, ps)", () => {
  it("has the values of all that several keepers saw, whatever the slices, and no lists", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2 ** 31 - 1 }),
        fc.constantFrom(...Object.values(laws)),
        fc.integer({ min: 1, max: 30_000 }),
        fc.integer({ min: 1, max: 30_000 }),
        fc.integer({ min: 1, max: 5 }),
        (seed, law, one, other, slice) => {
          const random = rng(seed);
          const rows = Array.from({ length: 5 }, () =>
            Float64Array.from({ length: one + other }, law(random)),
          );
          const parts = [rows.map((row) => row.slice(0, one)), rows.map((row) => row.slice(one))].map(
            (part) => kept(part, one + other),
          );
          const { kept: all, settle } = settledRanks(rows.length, ps);
          for (let from = 0; from < rows.length; from += slice) {
            const to = Math.min(rows.length, from + slice);
            settle(
              from,
              parts.map((part) => part(from, to)),
            );
          }
          expect(all.values.length).toBe(0);
          rows.forEach((row, r) => {
            const answers = ranksFrom([all], r);
            const wanted = sortedAt(row, ps);
            // What comes first may be unlike what comes later, under some of the laws; then nothing is said.
            answers.forEach((answer, i) => {
              if (answer !== undefined) expect(answer).toBe(wanted[i]);
            });
            const whole = parts.map((part) => part());
            expect(answers).toEqual(ranksFrom(whole, r));
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  it("says nothing of rows that were not settled, nor of one that a keeper missed", () => {
    const random = rng(3);
    const early = Float64Array.from({ length: 50_000 }, () => 100 + random());
    const late = Float64Array.from({ length: 50_000 }, () => 300 + random());
    const { kept: all, settle } = settledRanks(2, [...ps]);
    const parts = [kept([early, late], 200_000), kept([late, early], 200_000)].map((part) => part(0, 1));
    settle(0, parts);
    expect(ranksFrom([all], 0)).toEqual(ranksFrom(parts, 0));
    expect(ranksFrom([all], 0)).toContain(undefined);
    expect(ranksFrom([all], 1)).toEqual([undefined, undefined, undefined, undefined]);
  });
});

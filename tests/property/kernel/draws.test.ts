import { SHAPES, type Shape, shapeRules } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Kernel } from "../../../packages/core/src/kernel/types.ts";
import {
  fillFromOutcomes,
  fillFromTable,
  fillUniforms,
  outcomeTable,
  quantileTable,
  seedBlock,
  streamText,
} from "../../../packages/core/src/sampling/index.ts";
import { both, differing, rng } from "./kernels.ts";
import { bytesOf, marks, rowOf, seedAndLength, values } from "./rows.ts";

// Both kernels against the functions of sampling/, whose own reference tests are in tests/reference/sampling: the
// same bits (law of the house: the same answer everywhere).

const address = fc.tuple(fc.string(), fc.string(), fc.string(), fc.nat({ max: 1_000_000 }));
const room = 400_000;

/** Uniforms, the ends of cells and tails among them. */
function uniform(random: () => number): number {
  const kind = random();
  if (kind < 0.1) return random() * 2 ** -Math.floor(random() * 40);
  if (kind < 0.2) return 1 - random() * 2 ** -Math.floor(random() * 40);
  if (kind < 0.3) return Math.floor(random() * 1025) / 1024;
  if (kind < 0.35)
    return [0, 1, 0.03125, 0.96875, 0.5, 2 ** -32, 1 - 2 ** -32][Math.floor(random() * 7)] as number;
  return random();
}

function rangeTable(random: () => number, kernel?: Kernel) {
  const shape = SHAPES[Math.floor(random() * SHAPES.length)] as Shape;
  const { takesLikely, ends } = shapeRules[shape];
  const low = ends === "above-nought" ? 1 + random() : random() * 10 - 6;
  const high = low + 0.1 + random() * 10;
  const table = quantileTable({
    kind: "range",
    low,
    high,
    shape,
    bounds: ends === "both" ? "extremes" : "p10-p90",
    unit: "days",
    ...(takesLikely ? { likely: low + random() * (high - low) } : {}),
  });
  return kernel === undefined ? table : { ...table, values: kernel.arena.table(table.values) };
}

function cutAtZero(row: Float64Array, n: number): number {
  const below = row.subarray(0, n).filter((value) => value < 0).length;
  for (let k = 0; k < n; k++) if ((row[k] as number) < 0) row[k] = 0;
  return below;
}

describe("the kernels' draws", () => {
  it("fill blocks as fillUniforms does", () => {
    fc.assert(
      fc.property(address, (a) => {
        const latin = fillUniforms("latin-hypercube", ...a, new Float64Array(1024));
        const plain = fillUniforms("plain", ...a, new Float64Array(1024));
        for (const kernel of both(room)) {
          const [x, y] = kernel.arena.rows(2, 1024) as [Float64Array, Float64Array];
          kernel.fillLatin(seedBlock(...a), x);
          kernel.fillPlain(seedBlock(...a), y);
          expect(differing(x, latin)).toEqual([]);
          expect(differing(y, plain)).toEqual([]);
        }
      }),
    );
  });

  it("read quantile tables as fillFromTable does, cut at zero, and touch nothing behind the row", () => {
    fc.assert(
      fc.property(seedAndLength, fc.boolean(), ({ seed, n }, cut) => {
        const u = values(() => uniform(rng(seed + 1)));
        const random = rng(seed);
        for (let k = 0; k < 1024; k++) u[k] = uniform(random);
        const expected = new Float64Array(1024).fill(7);
        fillFromTable(rangeTable(rng(seed)), u, expected, n);
        const below = cut ? cutAtZero(expected, n) : 0;
        for (const kernel of both(room)) {
          const row = rowOf(kernel, u);
          const out = rowOf(kernel, new Float64Array(1024).fill(7));
          expect(kernel.lookUp(rangeTable(rng(seed), kernel), row, out, n, cut)).toBe(below);
          expect(differing(out, expected)).toEqual([]);
          // In place.
          kernel.lookUp(rangeTable(rng(seed), kernel), row, row, n, cut);
          expect(differing(row.subarray(0, n), expected.subarray(0, n))).toEqual([]);
        }
      }),
    );
  });

  it("draw in one go what the two steps draw", () => {
    fc.assert(
      fc.property(seedAndLength, address, fc.boolean(), ({ seed, n }, a, cut) => {
        const expected = new Float64Array(1024).fill(7);
        const u = fillUniforms("latin-hypercube", ...a, new Float64Array(1024));
        fillFromTable(rangeTable(rng(seed)), u, expected, n);
        const below = cut ? cutAtZero(expected, n) : 0;
        for (const kernel of both(room)) {
          const out = rowOf(kernel, new Float64Array(1024).fill(7));
          const cuts = kernel.drawLatin(seedBlock(...a), rangeTable(rng(seed), kernel), out, n, cut);
          expect(cuts).toBe(below);
          expect(differing(out, expected)).toEqual([]);
        }
      }),
    );
  });

  it("draw many estimates at once what they draw one by one, whatever the block and however many", () => {
    fc.assert(
      fc.property(
        seedAndLength,
        fc.array(fc.tuple(address, fc.boolean()), { minLength: 1, maxLength: 9 }),
        fc.constantFrom(0, 1, 9, 10, 37, 99, 100, 976),
        ({ seed, n }, list, block) => {
          const expected = list.map(([[seedText, item, purpose], cut], i) => {
            const row = new Float64Array(1024).fill(7);
            const u = fillUniforms("latin-hypercube", seedText, item, purpose, block, new Float64Array(1024));
            fillFromTable(rangeTable(rng(seed + i)), u, row, n);
            return { row, below: cut ? cutAtZero(row, n) : 0 };
          });
          for (const kernel of both(room)) {
            const drawer = kernel.drawer(
              list.map(([[seedText, item, purpose], cut], i) => ({
                stream: streamText(seedText, item, purpose),
                table: rangeTable(rng(seed + i), kernel),
                cut,
              })),
            );
            const outs = list.map(() => rowOf(kernel, new Float64Array(1024).fill(7)));
            const below = new Float64Array(list.length);
            // Asked for another block first: what is kept of it must not show.
            drawer.draw(block + 11, outs, n, below);
            for (const out of outs) out.fill(7);
            below.fill(0);
            drawer.draw(block, outs, n, below);
            expect([...below]).toEqual(expected.map((one) => one.below));
            expected.forEach(({ row }, i) => {
              expect(differing(outs[i] as Float64Array, row)).toEqual([]);
            });
          }
        },
      ),
    );
  });

  it("seed ten blocks as seedBlock seeds each, long texts and other scripts included", () => {
    const long = fc.string({ unit: "binary", maxLength: 50 }).map((text) => text.repeat(200));
    fc.assert(
      fc.property(
        fc.oneof(address, fc.tuple(long, fc.string(), fc.string(), fc.constant(0))),
        fc.constantFrom(0, 1, 2, 9, 10, 97, 1000),
        ([seedText, item, purpose], decade) => {
          const expected = Array.from({ length: 10 }, (_, k) => [
            ...seedBlock(seedText, item, purpose, 10 * decade + k),
          ]).flat();
          for (const kernel of both(room)) {
            const words = new Uint32Array(40);
            kernel.seedTen(streamText(seedText, item, purpose), decade, words);
            expect([...words]).toEqual(expected);
          }
        },
      ),
    );
  });

  it("draw outcomes as fillFromOutcomes does", () => {
    const outcomes = fc.uniqueArray(fc.double({ min: -5, max: 50, noNaN: true }), {
      minLength: 1,
      maxLength: 40,
      comparator: "IsStrictlyEqual",
    });
    fc.assert(
      fc.property(seedAndLength, outcomes, fc.boolean(), ({ seed, n }, list, cut) => {
        const random = rng(seed);
        const weights = list.map(() => 0.05 + random());
        const sum = weights.reduce((total, weight) => total + weight, 0);
        const table = outcomeTable({
          kind: "outcomes",
          outcomes: [...list]
            .sort((a, b) => a - b)
            .map((value, k) => ({ value, chance: (weights[k] as number) / sum })),
          unit: "days",
        });
        // Chances met exactly, and within a billionth.
        const u = values(() => {
          const edge = (table.upTo[Math.floor(random() * list.length)] as number) - random() * 2e-9;
          return random() < 0.3 && edge < 1 ? edge : random();
        });
        const expected = new Float64Array(1024).fill(7);
        fillFromOutcomes(table, u, expected, n);
        const below = cut ? cutAtZero(expected, n) : 0;
        for (const kernel of both(room)) {
          const own = { values: rowOf(kernel, table.values), upTo: rowOf(kernel, table.upTo) };
          const out = rowOf(kernel, new Float64Array(1024).fill(7));
          expect(kernel.lookUpOutcomes(own, rowOf(kernel, u), out, n, cut)).toBe(below);
          expect(differing(out, expected)).toEqual([]);
        }
      }),
    );
  });

  it("let an entry occur where lo <= u < hi", () => {
    fc.assert(
      fc.property(seedAndLength, ({ seed, n }) => {
        const random = rng(seed);
        const [lo, hi] = [random(), random()].sort((a, b) => a - b) as [number, number];
        const u = values(() => [lo, hi, random(), random()][Math.floor(random() * 4)] as number);
        const before = marks(random, 0.5);
        const expected = before.map((mark, k) =>
          k >= n ? mark : (u[k] as number) >= lo && (u[k] as number) < hi ? 1 : 0,
        );
        for (const kernel of both(room)) {
          const occurs = bytesOf(kernel, before);
          kernel.occur(rowOf(kernel, u), lo, hi, occurs, n);
          expect([...occurs]).toEqual([...expected]);
        }
      }),
    );
  });
});

import { averageOverOrders, type OrderAverage } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededRng } from "../../oracle/seededRng.ts";

// The laws are Shapley's own axioms (1953, recalled): efficiency, symmetry, null player, additivity. Random games from
// the seeds fast-check prints; exact averages up to rounding, sampled ones within standard errors as said beside them.

/** A value for every set of players, in two dimensions; nothing at the empty set. */
function randomGame(players: number, seed: number): number[][] {
  const rng = seededRng(seed);
  return Array.from({ length: 2 ** players }, (_, set) =>
    set === 0 ? [0, 0] : [100 * rng(), 1e6 * rng() - 5e5],
  );
}

function average(
  game: readonly number[][],
  options: Parameters<typeof averageOverOrders>[2] = {},
): OrderAverage {
  return averageOverOrders(Math.log2(game.length), (sets) => sets.map((set) => game[set] ?? []), options);
}

function sum(rows: readonly number[][], d: number): number {
  return rows.reduce((total, row) => total + (row[d] ?? Number.NaN), 0);
}

const players = fc.integer({ min: 1, max: 7 });

describe("averageOverOrders(players, valuesOf)", () => {
  it("shares out exactly v(all) - v(none), every order taken or some", () => {
    fc.assert(
      fc.property(players, fc.nat(), fc.boolean(), (k, seed, sampled) => {
        const game = randomGame(k, seed);
        const found = average(game, sampled ? { exactUpTo: 0, most: 16 } : {});
        expect(found.all).toBe(!sampled);
        for (const d of [0, 1]) {
          const whole = game.at(-1)?.[d] ?? Number.NaN;
          expect(Math.abs(sum(found.shares, d) - whole)).toBeLessThanOrEqual(1e-9 * Math.abs(whole));
        }
      }),
    );
  });

  it("gives players that do the same the same, and a player that does nothing nothing", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 6 }), fc.nat(), (k, seed) => {
        const base = randomGame(k + 2, seed);
        // Players 0 and 1 count only by how many of them are there, player 2 not at all.
        const game = base.map((_, set) => {
          const twins = (set & 1) + ((set >> 1) & 1);
          return base[(set & ~7) | (twins === 2 ? 3 : twins)] ?? [];
        });
        const { shares } = average(game);
        for (const d of [0, 1]) {
          const scale = 1e-9 * Math.max(...game.map((row) => Math.abs(row[d] ?? 0)));
          expect(Math.abs((shares[0]?.[d] ?? Number.NaN) - (shares[1]?.[d] ?? Number.NaN))).toBeLessThan(
            scale,
          );
          expect(Math.abs(shares[2]?.[d] ?? Number.NaN)).toBeLessThan(scale);
        }
      }),
    );
  });

  it("of a sum of two games is the sum of their averages", () => {
    fc.assert(
      fc.property(players, fc.nat(), fc.nat(), (k, one, other) => {
        const a = randomGame(k, one);
        const b = randomGame(k, other);
        const both = average(a.map((row, set) => row.map((x, d) => x + (b[set]?.[d] ?? Number.NaN)))).shares;
        const [left, right] = [average(a).shares, average(b).shares];
        both.forEach((row, i) => {
          row.forEach((x, d) => {
            expect(Math.abs(x - (left[i]?.[d] ?? 0) - (right[i]?.[d] ?? 0))).toBeLessThan(1e-9 * 1e6);
          });
        });
      }),
    );
  });

  // 60 games of 6 players, two dimensions: 720 shares. A standard error from 16 to 200 pairs is itself uncertain, so
  // the limit is six of them: by Student's law with 15 degrees of freedom one share misses it once in 40,000.
  it("from sampled orders lies within its stated errors of the exact average", () => {
    const missed: string[] = [];
    let sampledErrors = 0;
    for (let seed = 0; seed < 60; seed++) {
      const game = randomGame(6, seed);
      const exact = average(game);
      const sampled = average(game, { exactUpTo: 0, most: 200, within: 0.02, seed: `s${seed}` });
      sampled.shares.forEach((row, i) => {
        row.forEach((x, d) => {
          const error = sampled.errors[i]?.[d] ?? Number.NaN;
          sampledErrors += Number(error > 0);
          const off = Math.abs(x - (exact.shares[i]?.[d] ?? Number.NaN));
          // The largest share also carries the rounding dust of all.
          if (!(off <= 6 * error + 1e-6))
            missed.push(`game ${seed}, player ${i}, dimension ${d}: ${off} of ${error}`);
        });
      });
    }
    expect(missed).toEqual([]);
    expect(sampledErrors).toBe(720);
  });

  it("asks for no set twice and for no set that is known", () => {
    const game = randomGame(10, 7);
    const asked: number[] = [];
    const known = new Map([[1, game[1] ?? []]]);
    averageOverOrders(
      10,
      (sets) => {
        asked.push(...sets);
        return sets.map((set) => game[set] ?? []);
      },
      { none: game[0] ?? [], all: game[1023] ?? [], known, most: 40, within: 0 },
    );
    expect(asked.length).toBeGreaterThan(100);
    expect(new Set(asked).size).toBe(asked.length);
    expect(asked.filter((set) => set === 0 || set === 1 || set === 1023)).toEqual([]);
  });
});

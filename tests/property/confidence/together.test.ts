/** Laws of date and money together, on points with many ties, against counting every pair. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { correlation } from "../../../packages/core/src/explain/joint/correlation.ts";
import { densityGrid } from "../../../packages/core/src/explain/joint/densityGrid.ts";
import { equalLevel } from "../../../packages/core/src/explain/joint/equalLevel.ts";
import { equalPairs } from "../../../packages/core/src/explain/joint/equalPairs.ts";
import { jointChance } from "../../../packages/core/src/explain/joint/jointChance.ts";

const cloud = fc
  .record({
    points: fc.array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: -5, max: 9 })), {
      minLength: 1,
      maxLength: 40,
    }),
    part: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ points, part }) => ({
    days: points.map(([day]) => day),
    costs: points.map(([, cost]) => cost * 1000),
    count: Math.max(1, Math.ceil(part * points.length)),
  }));

const kept = (days: number[], costs: number[], day: number, cost: number) =>
  days.filter((each, k) => each <= day && (costs[k] ?? 0) <= cost).length;

it("equalPairs are the least pairs that enough points keep, all of them and no other", () => {
  fc.assert(
    fc.property(cloud, ({ days, costs, count }) => {
      const reaches = (day: number, cost: number) => kept(days, costs, day, cost) >= count;
      const least = [];
      for (const day of [...new Set(days)].sort((a, b) => a - b)) {
        for (const cost of [...new Set(costs)].sort((a, b) => a - b)) {
          // Values are whole days and whole thousands, so just below is half of one less.
          if (reaches(day, cost) && !reaches(day - 0.5, cost) && !reaches(day, cost - 500)) {
            least.push({ day, cost });
          }
        }
      }
      expect(equalPairs(days, costs, count)).toEqual(least);
    }),
    { numRuns: 500 },
  );
});

it("equalLevel is the smallest rank whose day and sum enough points keep", () => {
  fc.assert(
    fc.property(cloud, ({ days, costs, count }) => {
      const byDay = [...days].sort((a, b) => a - b);
      const byCost = [...costs].sort((a, b) => a - b);
      const rank = byDay.findIndex((day, r) => kept(days, costs, day, byCost[r] ?? 0) >= count) + 1;
      expect(equalLevel(days, costs, count)).toEqual({
        level: rank / days.length,
        day: byDay[rank - 1],
        cost: byCost[rank - 1],
      });
    }),
    { numRuns: 500 },
  );
});

// Frechet bounds: max(0, a + b - 1) <= chance of both <= min(a, b) (recalled; any two events).
it("jointChance lies between the bounds that hold for any two events", () => {
  fc.assert(
    fc.property(
      cloud,
      fc.integer({ min: -1, max: 13 }),
      fc.integer({ min: -6, max: 10 }),
      (points, day, cost) => {
        const { finish, cost: paid, both } = jointChance(points.days, points.costs, day, cost * 1000);
        expect(both).toBeLessThanOrEqual(Math.min(finish, paid));
        expect(both).toBeGreaterThanOrEqual(Math.max(0, finish + paid - 1) - 1e-12);
      },
    ),
  );
});

it("densityGrid counts every point once, in the cell that holds it", () => {
  fc.assert(
    fc.property(cloud, ({ days, costs }) => {
      const grid = densityGrid(days, costs);
      const inside = (value: number, edges: number[], at: number) =>
        value >= (edges[at] as number) && value < (edges[at + 1] as number);
      const expected = grid.costs
        .slice(1)
        .map((_, row) =>
          grid.days
            .slice(1)
            .map(
              (__, column) =>
                days.filter(
                  (day, k) => inside(day, grid.days, column) && inside(costs[k] as number, grid.costs, row),
                ).length,
            ),
        );
      expect(grid.counts).toEqual(expected);
      expect(grid.counts.flat().reduce((sum, count) => sum + count, 0)).toBe(days.length);
      expect(grid.days.length).toBeLessThanOrEqual(41);
      expect(grid.costs.length).toBeLessThanOrEqual(29);
    }),
  );
});

// Cauchy and Schwarz; two rows on a line correlate by 1 or -1 (textbook, recalled).
it("correlation is 1 on a rising line, -1 on a falling one, 0 where one row stands still", () => {
  const rising = [1, 2, 4, 8];
  expect(correlation(rising, [3, 5, 9, 17])).toBeCloseTo(1, 12);
  expect(correlation(rising, [-1, -2, -4, -8])).toBeCloseTo(-1, 12);
  expect(correlation(rising, [0.1, 0.1, 0.1, 0.1])).toBe(0);
  // By hand: deviations -1 0 1 and -1 2 -1, products 1 + 0 - 1.
  expect(correlation([1, 2, 3], [0, 3, 0])).toBeCloseTo(0, 12);
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tolerance } from "../../../packages/core/src/calendar/tolerance.ts";
import { bytesOfCalendar } from "../../../packages/core/src/kernel/arena.ts";
import { calendars } from "./calendars.ts";
import { both, differing, duration, moment, rng } from "./kernels.ts";
import { rowOf, seedAndLength, values } from "./rows.ts";

// Both kernels give the same bits; what they should give in the first place is worked out by hand below.

const room = 200_000;

describe("settle(calendar, lower, duration, ...)", () => {
  it("places work on a week of five days as worked out by hand", () => {
    const week = calendars[1]?.calendar as (typeof calendars)[number]["calendar"];
    // Moments are days since a Monday. [lower, duration, start, finish]
    const cases: [number, number, number, number][] = [
      [0, 5, 0, 5], // Monday morning to Friday evening
      [0, 6, 0, 8], // over the weekend to Monday evening
      [5, 1, 7, 8], // Friday evening is Monday morning for what starts
      [4.5, 1, 4.5, 7.5], // half of Friday, half of Monday
      [6.25, 2, 7, 9], // a start on Sunday waits for Monday
      [5, 0, 5, 5], // no work: stands where its bound is
      [2, 10, 2, 16], // ten days of work hold two weekends
    ];
    for (const kernel of both(room + bytesOfCalendar(week))) {
      const [lower, length, start, finish] = kernel.arena.rows(4, cases.length) as [
        Float64Array,
        Float64Array,
        Float64Array,
        Float64Array,
      ];
      lower.set(cases.map(([bound]) => bound));
      length.set(cases.map(([, days]) => days));
      const latest = kernel.settle(
        kernel.arena.calendar(week),
        lower,
        length,
        start,
        finish,
        0,
        cases.length,
      );
      expect([...start]).toEqual(cases.map(([, , s]) => s));
      expect([...finish]).toEqual(cases.map(([, , , f]) => f));
      expect(latest).toBe(16);
    }
  });

  for (const { name, calendar } of calendars) {
    it(`gives the same bits in WebAssembly and in TypeScript: ${name}`, () => {
      const kernels = both(8_000_000 + bytesOfCalendar(calendar));
      fc.assert(
        fc.property(seedAndLength, fc.constantFrom(20, 120, 500, 40_000, 2e7), ({ seed, n }, most) => {
          const random = rng(seed);
          const lower = values(() => moment(random, most));
          const length = values(() => duration(random, most / 10));
          const earliest = random() < 0.5 ? 0 : moment(random, most / 2);
          const results = kernels.map((kernel) => {
            const [start, finish] = [rowOf(kernel, lower), rowOf(kernel, length)] as const;
            const latest = kernel.settle(
              kernel.arena.calendar(calendar),
              rowOf(kernel, lower),
              rowOf(kernel, length),
              start,
              finish,
              earliest,
              n,
            );
            return { latest, start, finish };
          });
          const [a, b] = results as [(typeof results)[0], (typeof results)[0]];
          expect(a.latest).toBe(b.latest);
          expect(differing(a.start, b.start)).toEqual([]);
          expect(differing(a.finish, b.finish)).toEqual([]);
        }),
      );
    });
  }
});

describe("raiseAfter(calendar, out, from, lag)", () => {
  it("counts working days from a moment as worked out by hand", () => {
    const week = calendars[1]?.calendar as (typeof calendars)[number]["calendar"];
    for (const kernel of both(room + bytesOfCalendar(week))) {
      // Two working days from Monday morning, Thursday noon, Friday evening and Sunday noon; and a bound that is later.
      const from = rowOf(kernel, Float64Array.of(0, 3.5, 5, 6.5, 0));
      const out = rowOf(kernel, Float64Array.of(0, 0, 0, 0, 3));
      kernel.raiseAfter(kernel.arena.calendar(week), out, from, 2, 5);
      expect([...out]).toEqual([2, 7.5, 9, 9, 3]);
    }
  });

  for (const { name, calendar } of calendars) {
    it(`gives the same bits in WebAssembly and in TypeScript: ${name}`, () => {
      const kernels = both(4_000_000 + bytesOfCalendar(calendar));
      fc.assert(
        fc.property(seedAndLength, fc.constantFrom(20, 120, 500, 40_000, 2e7), ({ seed, n }, most) => {
          const random = rng(seed);
          const from = values(() => moment(random, most));
          const out = values(() => moment(random, most));
          const lag = Math.max(tolerance * (1 + 2 ** -52), duration(random, most / 5));
          const [a, b] = kernels.map((kernel) => {
            const row = rowOf(kernel, out);
            kernel.raiseAfter(kernel.arena.calendar(calendar), row, rowOf(kernel, from), lag, n);
            return row;
          }) as [Float64Array, Float64Array];
          expect(differing(a, b)).toEqual([]);
        }),
      );
    });
  }
});

describe("raiseTo(out, from)", () => {
  it("keeps the larger of two moments, of equal ones the first, and touches nothing behind the row", () => {
    fc.assert(
      fc.property(seedAndLength, ({ seed, n }) => {
        const random = rng(seed);
        const pick = () => [0, -0, moment(random, 50), 12][Math.floor(random() * 4)] as number;
        const out = values(pick);
        const from = values(pick);
        const expected = out.map((value, k) =>
          k < n && (from[k] as number) > value ? (from[k] as number) : value,
        );
        for (const kernel of both(room)) {
          const row = rowOf(kernel, out);
          kernel.raiseTo(row, rowOf(kernel, from), n);
          expect(differing(row, expected)).toEqual([]);
        }
      }),
    );
  });
});

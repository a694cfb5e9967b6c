import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfCalendar } from "../../../packages/core/src/kernel/arena.ts";
import { calendars } from "./calendars.ts";
import { both, differing, duration, moment, rng } from "./kernels.ts";
import { bytesOf, marks, rowOf, seedAndLength, values } from "./rows.ts";

// Both kernels give the same bits; what they should give in the first place is worked out by hand below.

type Named = (typeof calendars)[number];
const [everyDay, week] = calendars as [Named, Named];
const other = calendars[2] as Named;
const room = 200_000;

describe("settleAny(work)", () => {
  it("places what waits, must end, is not needed or begins work, as worked out by hand", () => {
    // Moments are days since a Monday; one iteration each. The status date leaves nothing before day 1.
    const cases: {
      is: string;
      lower: number;
      upper?: number;
      needed?: 0 | 1;
      wait?: number;
      days: number;
      startsWork?: boolean;
      start: number;
      finish: number;
    }[] = [
      { is: "waits three days from Thursday", lower: 3, wait: 3, days: 2, start: 8, finish: 10 },
      { is: "must not end before Tuesday evening", lower: 1, upper: 9, days: 3, start: 4, finish: 9 },
      {
        is: "not needed, a point at its bound",
        lower: 5.5,
        upper: 6,
        needed: 0,
        days: 4,
        start: 6,
        finish: 6,
      },
      { is: "not needed, a point at the status date", lower: 0, needed: 0, days: 4, start: 1, finish: 1 },
      { is: "begins work on Monday", lower: 5, days: 0, startsWork: true, start: 7, finish: 7 },
      { is: "no work, stands where its bound is", lower: 5, days: 0, start: 5, finish: 5 },
    ];
    for (const kernel of both(room + bytesOfCalendar(week.calendar))) {
      const calendar = kernel.arena.calendar(week.calendar);
      for (const { is, lower, upper, needed, wait, days, startsWork, start, finish } of cases) {
        const row = (value: number) => rowOf(kernel, Float64Array.of(value));
        const work = {
          calendar,
          own: calendar,
          lower: row(lower),
          upper: upper === undefined ? undefined : row(upper),
          needed: needed === undefined ? undefined : bytesOf(kernel, Uint8Array.of(needed)),
          wait: wait === undefined ? undefined : row(wait),
          duration: row(days),
          start: row(0),
          finish: row(0),
          notBefore: 0,
          floor: 1,
          statusFloor: 1,
          startsWork: startsWork === true,
        };
        expect({ is, latest: kernel.settleAny(work, 1) }).toEqual({ is, latest: finish });
        expect({ is, start: work.start[0], finish: work.finish[0] }).toEqual({ is, start, finish });
      }
    }
  });

  for (const { name, calendar } of calendars) {
    it(`gives the same bits in WebAssembly and in TypeScript: ${name}`, () => {
      fc.assert(
        fc.property(seedAndLength, fc.constantFrom(20, 120, 500, 40_000), ({ seed, n }, most) => {
          const random = rng(seed);
          const given = {
            lower: values(() => moment(random, most)),
            upper: random() < 0.5 ? values(() => moment(random, most)) : undefined,
            needed: random() < 0.5 ? marks(random, 0.7) : undefined,
            wait: random() < 0.5 ? values(() => duration(random, most / 10)) : undefined,
            duration: values(() => duration(random, most / 10)),
          };
          const bounds = {
            notBefore: random() < 0.5 ? 0 : moment(random, most / 2),
            floor: random() < 0.5 ? 0 : moment(random, most / 2),
            statusFloor: random() < 0.5 ? 0 : Math.floor(random() * 9),
            startsWork: random() < 0.2,
          };
          const bytes = bytesOfCalendar(calendar) + bytesOfCalendar(other.calendar);
          const [a, b] = both(room + bytes).map((kernel) => {
            const row = (from: Float64Array | undefined) => from && rowOf(kernel, from);
            const work = {
              ...bounds,
              calendar: kernel.arena.calendar(calendar),
              own: kernel.arena.calendar(other.calendar),
              lower: rowOf(kernel, given.lower),
              upper: row(given.upper),
              needed: given.needed && bytesOf(kernel, given.needed),
              wait: row(given.wait),
              duration: rowOf(kernel, given.duration),
              start: rowOf(kernel, given.lower),
              finish: rowOf(kernel, given.lower),
            };
            const latest = kernel.settleAny(work, n);
            return { latest, start: work.start, finish: work.finish };
          }) as [Settled, Settled];
          expect(a.latest).toBe(b.latest);
          expect(differing(a.start, b.start)).toEqual([]);
          expect(differing(a.finish, b.finish)).toEqual([]);
        }),
        { numRuns: 40 },
      );
    });
  }
});

interface Settled {
  latest: number;
  start: Float64Array;
  finish: Float64Array;
}

describe("raiseBy(calendar, out, from, lags, value, scale)", () => {
  it("counts working days forward and back as worked out by hand", () => {
    for (const kernel of both(room + bytesOfCalendar(week.calendar))) {
      // Thursday noon and two days; Tuesday noon less two days; Monday less one: before the start, so the bound stands.
      const from = rowOf(kernel, Float64Array.of(3.5, 8.5, 0));
      const out = rowOf(kernel, Float64Array.of(0, 0, 0.25));
      const lags = rowOf(kernel, Float64Array.of(2, -2, -1));
      kernel.raiseBy(kernel.arena.calendar(week.calendar), out, from, lags, 9, 1, 3);
      expect([...out]).toEqual([7.5, 4.5, 0.25]);
    }
  });

  for (const { name, calendar } of calendars) {
    it(`gives the same bits in WebAssembly and in TypeScript: ${name}`, () => {
      fc.assert(
        fc.property(seedAndLength, fc.constantFrom(20, 120, 500, 40_000), ({ seed, n }, most) => {
          const random = rng(seed);
          const from = values(() => moment(random, most));
          const out = values(() => moment(random, most));
          const lags = random() < 0.6 ? values(() => duration(random, 20) - 10) : undefined;
          const value = duration(random, 20) - 10;
          const scale = random() < 0.5 ? 1 : random() * 2 - 0.5;
          const [a, b] = both(room + bytesOfCalendar(calendar)).map((kernel) => {
            const row = rowOf(kernel, out);
            const drawn = lags && rowOf(kernel, lags);
            kernel.raiseBy(kernel.arena.calendar(calendar), row, rowOf(kernel, from), drawn, value, scale, n);
            return row;
          }) as [Float64Array, Float64Array];
          expect(differing(a, b)).toEqual([]);
        }),
        { numRuns: 40 },
      );
    });
  }
});

describe("scaleByWork(calendar, amounts, from, to) and largestOf(row)", () => {
  it("charge working days and find the largest as worked out by hand", () => {
    for (const kernel of both(room + bytesOfCalendar(week.calendar))) {
      const row = (...of: number[]) => rowOf(kernel, Float64Array.from(of));
      const calendar = kernel.arena.calendar(week.calendar);
      // Wednesday to Tuesday of the week after: five days; the other way round: none.
      const amounts = row(10, 10);
      kernel.scaleByWork(calendar, amounts, row(2, 9), row(9, 2), 2);
      expect([...amounts]).toEqual([50, 0]);
      const sinceStart = row(10);
      kernel.scaleByWork(calendar, sinceStart, undefined, row(12), 1);
      expect([...sinceStart]).toEqual([100]);
      const each = row(3);
      kernel.scaleByWork(kernel.arena.calendar(everyDay.calendar), each, undefined, row(12), 1);
      expect([...each]).toEqual([36]);
      expect(kernel.largestOf(row(3, 12, 7, 99), 3)).toBe(12);
      expect(kernel.largestOf(row(-1), 1)).toBe(0);
    }
  });

  for (const { name, calendar } of calendars) {
    it(`gives the same bits in WebAssembly and in TypeScript: ${name}`, () => {
      fc.assert(
        fc.property(seedAndLength, ({ seed, n }) => {
          const random = rng(seed);
          const [from, to] = [values(() => moment(random, 90)), values(() => moment(random, 300))];
          const amounts = values(() => random() * 1000);
          const since = random() < 0.3;
          const [a, b] = both(room + bytesOfCalendar(calendar)).map((kernel) => {
            const row = rowOf(kernel, amounts);
            const begins = since ? undefined : rowOf(kernel, from);
            kernel.scaleByWork(kernel.arena.calendar(calendar), row, begins, rowOf(kernel, to), n);
            return { row, most: kernel.largestOf(row, n) };
          }) as [{ row: Float64Array; most: number }, { row: Float64Array; most: number }];
          expect(differing(a.row, b.row)).toEqual([]);
          expect(a.most).toBe(b.most);
        }),
        { numRuns: 30 },
      );
    });
  }
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfCalendar } from "../../../packages/core/src/kernel/arena.ts";
import { bytesOfLedger, newLedger } from "../../../packages/core/src/kernel/ledger.ts";
import { calendars } from "./calendars.ts";
import { both, differing, duration, moment, rng } from "./kernels.ts";
import { rowOf, seedAndLength, values } from "./rows.ts";

// Both kernels give the same bits; what they should give in the first place is worked out by hand below.

/** Months that end after so many days. */
function monthsOf(ends: readonly number[]): { ends: Float64Array; byDay: Uint8Array } {
  const byDay = Uint8Array.from({ length: (ends.at(-1) as number) + 1 }, (_, day) =>
    ends.findIndex((end) => day <= end),
  );
  return { ends: Float64Array.from(ends), byDay };
}

describe("spreadByMonth(calendar, ledger, start, finish, amounts, per)", () => {
  it("spreads money over working days as worked out by hand", () => {
    const week = calendars[1]?.calendar as (typeof calendars)[number]["calendar"];
    // Two months of 14 days from a Monday, then the rest.
    const months = monthsOf([14, 28, 42]);
    // [start, finish, amount, by month]: moments are days since the Monday.
    const cases: [number, number, number, number[]][] = [
      [0, 5, 100, [100, 0, 0]], // a week in the first month
      [7, 19, 100, [50, 50, 0]], // a week on either side of the end of a month
      [9, 18, 70, [30, 40, 0]], // three working days before it, four after
      [14, 14, 30, [30, 0, 0]], // no work, on the last evening of the month
      [14.5, 14.5, 30, [0, 30, 0]], // and the next noon
      [28, 68, 60, [0, 0, 60]], // past the last month: it takes the rest
      [5, 7, 20, [20, 0, 0]], // a weekend holds no work: at its end
    ];
    for (const kernel of both(100_000 + bytesOfCalendar(week))) {
      const ledger = newLedger(kernel.arena, months, cases.length);
      const [start, finish, amounts] = kernel.arena.rows(3, cases.length) as [
        Float64Array,
        Float64Array,
        Float64Array,
      ];
      start.set(cases.map(([s]) => s));
      finish.set(cases.map(([, f]) => f));
      amounts.set(cases.map(([, , amount]) => amount));
      const calendar = kernel.arena.calendar(week);
      kernel.spreadByMonth(calendar, ledger, start, finish, amounts, "whole", cases.length);
      const booked = cases.map((_, k) => [0, 1, 2].map((m) => ledger.booked[m * cases.length + k]));
      expect(booked).toEqual(cases.map(([, , , by]) => by));
    }
  });

  it("charges an amount for each working day as worked out by hand", () => {
    const week = calendars[1]?.calendar as (typeof calendars)[number]["calendar"];
    for (const kernel of both(100_000 + bytesOfCalendar(week))) {
      const ledger = newLedger(kernel.arena, monthsOf([14, 28]), 1);
      const row = (value: number) => rowOf(kernel, Float64Array.of(value));
      // Thursday of the second week to Tuesday of the third: two days of work, then two.
      kernel.spreadByMonth(kernel.arena.calendar(week), ledger, row(10), row(16), row(5), "daily", 1);
      expect([...ledger.booked]).toEqual([10, 10]);
      // An end before the start charges nothing.
      kernel.spreadByMonth(kernel.arena.calendar(week), ledger, row(16), row(10), row(5), "daily", 1);
      expect([...ledger.booked]).toEqual([10, 10]);
    }
  });

  for (const { name, calendar } of calendars) {
    it(`gives the same bits in WebAssembly and in TypeScript: ${name}`, () => {
      const months = monthsOf([17, 47, 78, 106, 137]);
      const room = 60_000 + bytesOfCalendar(calendar) + bytesOfLedger(months, 1024);
      fc.assert(
        fc.property(seedAndLength, fc.constantFrom(20, 120, 500, 40_000), ({ seed, n }, most) => {
          const random = rng(seed);
          const start = values(() => moment(random, most));
          const finish = start.map((s) =>
            random() < 0.1 ? moment(random, most) : s + duration(random, most / 4),
          );
          const amounts = values(() => (random() < 0.2 ? 0 : (random() - 0.2) * 1e5));
          const per = random() < 0.5 ? "whole" : "daily";
          const [a, b] = both(room).map((kernel) => {
            const ledger = newLedger(kernel.arena, months, 1024);
            const [from, to, money] = [start, finish, amounts].map((row) => rowOf(kernel, row)) as [
              Float64Array,
              Float64Array,
              Float64Array,
            ];
            kernel.spreadByMonth(kernel.arena.calendar(calendar), ledger, from, to, money, per, n);
            kernel.bookByMonth(ledger, to, money, n);
            return ledger.booked;
          }) as [Float64Array, Float64Array];
          expect(differing(a, b)).toEqual([]);
        }),
        { numRuns: 40 },
      );
    });
  }
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tolerance } from "../../../packages/core/src/calendar/tolerance.ts";
import { nextWork, workCalendar } from "../../../packages/core/src/calendar/workCalendar.ts";
import { bytesOfCalendar } from "../../../packages/core/src/kernel/arena.ts";
import { calendars } from "./calendars.ts";
import { both, moment, rng } from "./kernels.ts";
import { bytesOf, marks, rowOf, seedAndLength, values } from "./rows.ts";

// Both kernels against the rule as it is written down: a finish that the next work brings up to the moment.

/** Finishes and moments that often meet: equal, beside each other, or with days off between them. */
function meetings(random: () => number, most: number): { finish: Float64Array; at: Float64Array } {
  const at = values(() => moment(random, most));
  const finish = at.map((t) => {
    const kind = random();
    if (kind < 0.3) return t;
    if (kind < 0.5) return Math.max(0, t - tolerance * (1 + (Math.floor(random() * 5) - 2) * 2 ** -30));
    if (kind < 0.8) return Math.max(0, t - Math.floor(random() * 4));
    return moment(random, most);
  });
  return { finish, at };
}

describe("markFinish and markSimple", () => {
  it("count a weekend as no slack", () => {
    const week = workCalendar((day) => day % 7 < 5);
    for (const kernel of both(200_000 + bytesOfCalendar(week))) {
      const calendar = kernel.arena.calendar(week);
      // Friday evening meets Monday morning (day 7), Friday noon does not, Monday noon is late for it.
      const finish = rowOf(kernel, Float64Array.of(5, 4.5, 7.5, 7));
      const at = rowOf(kernel, Float64Array.of(7, 7, 7, 7));
      const moves = bytesOf(kernel, new Uint8Array(4));
      kernel.markFinish(calendar, at, finish, moves, 4);
      expect([...moves]).toEqual([1, 0, 1, 1]);
      const from = bytesOf(kernel, new Uint8Array(4));
      kernel.markSimple(calendar, from, bytesOf(kernel, Uint8Array.of(1, 1, 0, 1)), finish, at, 4);
      expect([...from]).toEqual([1, 0, 0, 1]);
    }
  });

  for (const { name, calendar } of calendars) {
    it(`mark what the rule marks: ${name}`, () => {
      const kernels = both(8_000_000 + bytesOfCalendar(calendar));
      fc.assert(
        fc.property(seedAndLength, fc.constantFrom(20, 120, 500, 36_500), ({ seed, n }, most) => {
          const random = rng(seed);
          const { finish, at } = meetings(random, most);
          const before = marks(random, 0.3);
          const into = marks(random, [0, 0.1, 0.9, 1][Math.floor(random() * 4)] as number);
          const reaches = (k: number) =>
            nextWork(calendar, finish[k] as number) >= (at[k] as number) - tolerance;
          const finished = before.map((mark, k) => (k >= n ? mark : reaches(k) ? 1 : 0));
          const linked = before.map((mark, k) => (k < n && into[k] === 1 && reaches(k) ? 1 : mark));
          for (const kernel of kernels) {
            const own = kernel.arena.calendar(calendar);
            const [f, t] = [rowOf(kernel, finish), rowOf(kernel, at)] as const;
            const moves = bytesOf(kernel, before);
            kernel.markFinish(own, t, f, moves, n);
            expect([...moves]).toEqual([...finished]);
            const from = bytesOf(kernel, before);
            kernel.markSimple(own, from, bytesOf(kernel, into), f, t, n);
            expect([...from]).toEqual([...linked]);
          }
        }),
      );
    });
  }
});

describe("anySet(row, n)", () => {
  it("sees a single 1 before n and none behind", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1024 }), fc.nat({ max: 1023 }), (n, at) => {
        for (const kernel of both(10_000)) {
          const [row] = kernel.arena.bytes(1, 1024) as [Uint8Array];
          expect(kernel.anySet(row, n)).toBe(false);
          row[at] = 1;
          expect(kernel.anySet(row, n)).toBe(at < n);
        }
      }),
    );
  });
});

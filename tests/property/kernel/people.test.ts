import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfCalendar, bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import { bytesOfPeople } from "../../../packages/core/src/kernel/peopleLists.ts";
import type { Kernel } from "../../../packages/core/src/kernel/types.ts";
import { calendars } from "./calendars.ts";
import { both, differing, duration, moment, rng } from "./kernels.ts";
import { bytesOf, marks, rowOf, seedAndLength, values } from "./rows.ts";

// What limited people should give is worked out in tests/reference/people; here that both kernels give the same bits,
// with room for the lists and without, when the one in WebAssembly does it in TypeScript.

const lastDay = 36525;
const length = 1024;
type Rows = Float64Array[];

/** Rows of work that stand about within a month, so that they meet. */
function work(random: () => number, count: number): { starts: Rows; finishes: Rows } {
  const starts = Array.from({ length: count }, () => values(() => moment(random, 30)));
  const finishes = starts.map((row) => row.map((s) => s + duration(random, 8)));
  return { starts, finishes };
}

function absences(random: () => number): { from: number; to: number; gone: number }[] {
  return Array.from({ length: Math.floor(random() * 3) }, () => {
    const from = Math.floor(random() * 30);
    return { from, to: from + 1 + Math.floor(random() * 6), gone: random() < 0.5 ? 0.5 : 0.25 };
  });
}

/** The room that rows, rows of bytes and one list take, with the list or without. */
const roomFor = (rows: number, bytes: number, lists: "with" | "without", more: number) =>
  bytesOfRows(rows, length, 8) +
  bytesOfRows(bytes, length, 1) +
  (lists === "with" ? bytesOfPeople(4, 24, 12) + 8 : 0) +
  more;

describe("freeFrom(calendar, wanted, start, finish, duration)", () => {
  for (const { name, calendar } of calendars) {
    for (const lists of ["with", "without"] as const) {
      it(`gives the same bits in WebAssembly and in TypeScript: ${name}, ${lists} room for lists`, () => {
        fc.assert(
          fc.property(seedAndLength, ({ seed, n }) => {
            const random = rng(seed);
            const people = Array.from({ length: 1 + Math.floor(random() * 3) }, () => {
              const others = work(random, 1 + Math.floor(random() * 4));
              return {
                ...others,
                room: 1 - (random() < 0.5 ? 0.5 : 1) + 1e-9,
                shares: others.starts.map(() => (random() < 0.5 ? 0.5 : 0.25)),
                partial: absences(random),
              };
            });
            const start = values(() => moment(random, 30));
            const long = values(() => duration(random, 8));
            const finish = start.map((s, k) => s + (long[k] as number));
            const rows = 3 + 2 * people.reduce((sum, { starts }) => sum + starts.length, 0);
            const [a, b] = both(roomFor(rows, 0, lists, bytesOfCalendar(calendar))).map((kernel) => {
              const [s, f, d] = [start, finish, long].map((row) => rowOf(kernel, row)) as [
                Float64Array,
                Float64Array,
                Float64Array,
              ];
              const wanted = people.map((person) => ({
                ...person,
                starts: person.starts.map((row) => rowOf(kernel, row)),
                finishes: person.finishes.map((row) => rowOf(kernel, row)),
              }));
              kernel.freeFrom(kernel.arena.calendar(calendar), wanted, s, f, d, lastDay, n);
              return { s, f };
            }) as [Record<"s" | "f", Float64Array>, Record<"s" | "f", Float64Array>];
            expect(differing(a.s, b.s)).toEqual([]);
            expect(differing(a.f, b.f)).toEqual([]);
            expect([...a.s.subarray(n)]).toEqual([...start.subarray(n)]);
          }),
          { numRuns: 15 },
        );
      });
    }
  }
});

describe("markSharers(person, moving, start, duration)", () => {
  for (const { name, calendar } of calendars) {
    it(`gives the same bits in WebAssembly and in TypeScript: ${name}`, () => {
      let marked = 0;
      fc.assert(
        fc.property(
          seedAndLength,
          fc.constantFrom("with" as const, "without" as const),
          ({ seed, n }, lists) => {
            const random = rng(seed);
            const others = work(random, 1 + Math.floor(random() * 5));
            // The task starts as one of the others ends, mostly.
            const start = values(() => 0).map((_, k) =>
              random() < 0.7 ? ((others.finishes[0] as Float64Array)[k] as number) : moment(random, 30),
            );
            const long = values(() => duration(random, 8));
            const moving = marks(random, 0.8);
            const each = others.starts.map((_, i) => ({
              share: random() < 0.5 ? 1 : 0.5,
              before: random() < 0.6,
              frees: random() < 0.8,
              duration: values(() => duration(random, 8)),
              moves: marks(random, i / 10),
            }));
            const partial = absences(random);
            const share = random() < 0.5 ? 1 : 0.5;
            const room = roomFor(2 + 3 * each.length, 1 + 2 * each.length, lists, bytesOfCalendar(calendar));
            const run = (kernel: Kernel) => {
              const sharers = each.map((one, i) => ({
                ...one,
                calendar: kernel.arena.calendar(calendar),
                start: rowOf(kernel, others.starts[i] as Float64Array),
                finish: rowOf(kernel, others.finishes[i] as Float64Array),
                duration: rowOf(kernel, one.duration),
                moves: bytesOf(kernel, one.moves),
                pushed: bytesOf(kernel, one.moves),
              }));
              const person = { share, capacity: 1, partial, sharers };
              const later = kernel.markSharers(
                person,
                bytesOf(kernel, moving),
                rowOf(kernel, start),
                rowOf(kernel, long),
                n,
              );
              return { later, rows: sharers.map(({ moves, pushed }) => [[...moves], [...pushed]]) };
            };
            const [a, b] = both(room).map(run);
            expect(a).toEqual(b);
            for (const [i, [row]] of (a?.rows ?? []).entries()) {
              for (let k = 0; k < n; k++) if (row?.[k] !== each[i]?.moves[k]) marked++;
            }
          },
        ),
        { numRuns: 20 },
      );
      // Not a comparison of nothing with nothing.
      expect(marked).toBeGreaterThan(0);
    });
  }
});

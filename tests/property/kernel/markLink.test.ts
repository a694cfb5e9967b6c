import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfCalendar, bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import { bytesOfLink } from "../../../packages/core/src/kernel/linkWriter.ts";
import { calendars } from "./calendars.ts";
import { both, duration, moment, rng } from "./kernels.ts";
import { bytesOf, marks, rowOf, seedAndLength, values } from "./rows.ts";

// What the backward pass should give is worked out in tests/reference/paths and compared with a second program in
// tests/reference/oracle; here that both kernels give the same bits, with room for the list and without.

describe("markLink(link)", () => {
  for (const { name, calendar } of calendars) {
    it(`gives the same bits in WebAssembly and in TypeScript: ${name}`, () => {
      let marked = 0;
      fc.assert(
        fc.property(
          seedAndLength,
          fc.constantFrom("with" as const, "without" as const),
          fc.nat(calendars.length - 1),
          ({ seed, n }, list, another) => {
            const random = rng(seed);
            const other = (calendars[another] as (typeof calendars)[number]).calendar;
            const pick = () => (random() < 0.6 ? calendar : other);
            const chosen = { fromCalendar: pick(), lagCalendar: pick(), calendar: pick(), own: pick() };
            const from = values(() => moment(random, 30));
            const lag = random() < 0.5 ? 0 : duration(random, 6) - 3;
            const rows = {
              from,
              // The task mostly stands where the link puts it, or a little after.
              start: from.map((t) => Math.max(0, t + lag) + (random() < 0.6 ? 0 : duration(random, 3))),
              fromDuration: values(() => duration(random, 8)),
              duration: values(() => duration(random, 8)),
            };
            const lags = random() < 0.4 ? values(() => duration(random, 6) - 3) : undefined;
            const wait = random() < 0.4 ? values(() => duration(random, 4)) : undefined;
            const bytes = {
              fromMoves: marks(random, 0.1),
              fromPushed: marks(random, 0.1),
              moves: marks(random, 0.7),
              pushed: marks(random, 0.8),
            };
            const needed = random() < 0.4 ? marks(random, 0.8) : undefined;
            const flags = {
              fromFinish: random() < 0.6,
              toFinish: random() < 0.4,
              startsWork: random() < 0.2,
              lag,
              scale: random() < 0.7 ? 1 : random(),
            };
            const room =
              bytesOfRows(6, 1024, 8) -
              (lags === undefined ? bytesOfRows(1, 1024, 8) : 0) -
              (wait === undefined ? bytesOfRows(1, 1024, 8) : 0) +
              bytesOfRows(needed === undefined ? 4 : 5, 1024, 1) +
              [...new Set(Object.values(chosen))].reduce((sum, one) => sum + bytesOfCalendar(one), 0) +
              (list === "with" ? bytesOfLink : 0);
            const [a, b] = both(room).map((kernel) => {
              const { arena } = kernel;
              const link = {
                ...flags,
                fromCalendar: arena.calendar(chosen.fromCalendar),
                lagCalendar: arena.calendar(chosen.lagCalendar),
                calendar: arena.calendar(chosen.calendar),
                own: arena.calendar(chosen.own),
                from: rowOf(kernel, rows.from),
                start: rowOf(kernel, rows.start),
                fromDuration: rowOf(kernel, rows.fromDuration),
                duration: rowOf(kernel, rows.duration),
                lags: lags && rowOf(kernel, lags),
                wait: wait && rowOf(kernel, wait),
                fromMoves: bytesOf(kernel, bytes.fromMoves),
                fromPushed: bytesOf(kernel, bytes.fromPushed),
                moves: bytesOf(kernel, bytes.moves),
                pushed: bytesOf(kernel, bytes.pushed),
                needed: needed && bytesOf(kernel, needed),
              };
              kernel.markLink(link, n);
              return { moves: [...link.fromMoves], pushed: [...link.fromPushed] };
            });
            expect(a).toEqual(b);
            for (let k = 0; k < n; k++) if (a?.pushed[k] !== bytes.fromPushed[k]) marked++;
          },
        ),
        { numRuns: 40 },
      );
      expect(marked).toBeGreaterThan(0);
    });
  }
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import type { BenefitStream } from "../../../packages/core/src/kernel/benefitStream.ts";
import { bytesOfStreams } from "../../../packages/core/src/kernel/benefitWriter.ts";
import type { Kernel } from "../../../packages/core/src/kernel/types.ts";
import { both, differing, duration, moment, rng } from "./kernels.ts";
import { rowOf, seedAndLength, values } from "./rows.ts";

// What net value and payback should give is worked out in tests/reference; here a case by hand, and that both kernels
// give the same bits, with room for the list of streams and without.

/** So many rows of 1,024, sums of up to 400 payments, and the list or not. */
const roomFor = (streams: number, list: "with" | "without") =>
  bytesOfRows(3 + 3 * streams, 1024, 8) +
  bytesOfRows(streams, 401, 8) +
  (list === "with" ? bytesOfStreams(streams) : 0);

function streamOf(kernel: Kernel, stream: BenefitStream): BenefitStream {
  const { begins, worth, last, sums } = stream;
  return {
    ...stream,
    begins: rowOf(kernel, begins),
    worth: rowOf(kernel, worth),
    last: rowOf(kernel, last),
    sums: rowOf(kernel, sums),
  };
}

describe("appraise(streams, daily, cost, net, payback, gained)", () => {
  it("adds up monthly payments as worked out by hand", () => {
    // 10 a month from day 30 on, twelve times at most, not discounted; and 50 at once on day 100.
    const month = 365.25 / 12;
    const monthly: BenefitStream = {
      once: false,
      factor: 1,
      end: 10_000,
      begins: Float64Array.of(30, 30, 30, 10_001),
      worth: Float64Array.of(10, 10, 10, 10),
      last: new Float64Array(4),
      sums: Float64Array.from({ length: 13 }, (_, k) => k),
    };
    const once: BenefitStream = {
      once: true,
      factor: 2,
      end: 10_000,
      begins: Float64Array.of(100, 100, 100, 100),
      worth: Float64Array.of(25, 25, 25, 25),
      last: new Float64Array(4),
      sums: Float64Array.of(0, 1),
    };
    for (const kernel of both(50_000)) {
      const [cost, net, payback] = kernel.arena.rows(3, 4) as [Float64Array, Float64Array, Float64Array];
      cost.set([20, 90, 500, 0]);
      const gained = new Float64Array(2);
      const streams = [monthly, once].map((stream) => streamOf(kernel, stream));
      kernel.appraise(streams, 0, cost, net, payback, gained, 4);
      // In the fourth the monthly one begins too late to count.
      expect([...net]).toEqual([150, 80, -330, 50]);
      // 20 are covered by the second payment, on day 30 and two months; 90 by four payments and the 50.
      const days = [30 + 2 * month, 30 + 4 * month, Number.POSITIVE_INFINITY, 0];
      expect([...payback]).toEqual(days);
      expect([...gained]).toEqual([360, 200]);
    }
  });

  it("gives the same bits in WebAssembly and in TypeScript", () => {
    fc.assert(
      fc.property(
        seedAndLength,
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom("with" as const, "without" as const),
        ({ seed, n }, count, list) => {
          const random = rng(seed);
          const rate = [0, 0.03, 0.2, 5, -0.05, 80][Math.floor(random() * 6)] as number;
          const daily = Math.log(1 + rate) / 365.25;
          const streams = Array.from({ length: count }, (): BenefitStream => {
            const once = random() < 0.3;
            const most = once ? 1 : Math.floor(random() * 400);
            let sum = 0;
            return {
              once,
              factor: random() < 0.5 ? 1 : random() * 1000 - 100,
              end: moment(random, 2000),
              begins: values(() => (random() < 0.05 ? random() * 36_525 : moment(random, 1500))),
              worth: values(() => duration(random, 1000) - 50),
              last: values(() => 0),
              sums: Float64Array.from({ length: most + 1 }, (_, k) => {
                sum += k === 0 ? 0 : random();
                return sum;
              }),
            };
          });
          const cost = values(() => (random() < 0.1 ? 0 : random() * 20_000));
          const [a, b] = both(roomFor(count, list)).map((kernel) => {
            const [c, net, payback] = [cost, values(() => 7), values(() => 7)].map((row) =>
              rowOf(kernel, row),
            ) as [Float64Array, Float64Array, Float64Array];
            const gained = new Float64Array(count);
            kernel.appraise(
              streams.map((stream) => streamOf(kernel, stream)),
              daily,
              c,
              net,
              payback,
              gained,
              n,
            );
            return [net, payback, gained];
          }) as [Float64Array[], Float64Array[]];
          a.forEach((row, i) => {
            expect(differing(row, b[i] as Float64Array)).toEqual([]);
          });
        },
      ),
      { numRuns: 60 },
    );
  });
});

import { blockSize } from "../sampling/streams/blockSize.ts";
import { bytesOfRows } from "./arena.ts";
import { bytesOfStreams } from "./benefitWriter.ts";
import type { KernelCalendar } from "./calendar.ts";
import { bytesOfLedger, newLedger } from "./ledger.ts";
import { bytesOfPeople } from "./peopleLists.ts";
import type { Kernel } from "./types.ts";

const months = {
  ends: Float64Array.of(31, 59, 90),
  byDay: Uint8Array.from({ length: 91 }, (_, day) => day >> 5),
};
const rowCount = 9;
type Rows = [
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
];

/** Bytes that `longRound` takes of the kernel's arena. */
export const bytesOfLongRound =
  bytesOfRows(rowCount, blockSize, 8) +
  bytesOfRows(2, blockSize, 1) +
  bytesOfLedger(months, blockSize) +
  bytesOfPeople(1, 2, 1) +
  bytesOfStreams(2) +
  16;

/** One round of what is done for people, for money by month and for benefits: with numbers of no meaning. */
export function longRound(kernel: Kernel, calendar: KernelCalendar): () => void {
  const n = blockSize;
  const { arena } = kernel;
  const [start, finish, duration, amount, spare, last, net, payback, sums] = arena.rows(rowCount, n) as Rows;
  const [moves, pushed] = arena.bytes(2, n) as [Uint8Array, Uint8Array];
  const ledger = newLedger(arena, months, n);
  const gained = new Float64Array(2);
  const partial = [{ from: 10, to: 12, gone: 0.5 }];
  const others = { shares: [0.5, 0.25], starts: [net, net], finishes: [payback, payback] };
  const sharer = { share: 1, before: true, frees: true, calendar, moves: pushed, pushed };
  const stream = { once: false, factor: 1, end: 900, begins: finish, worth: amount, last, sums };
  return () => {
    for (let k = 0; k < n; k++) {
      start[k] = k % 50;
      finish[k] = (k % 50) + 20;
    }
    sums.set(start);
    net.set(start);
    payback.set(finish);
    duration.fill(15);
    kernel.freeFrom(calendar, [{ ...others, room: 0.5, partial }], start, finish, duration, 1000, n);
    moves.fill(1);
    pushed.fill(0);
    const rows = { start, finish, duration };
    const sharers = [
      { ...sharer, ...rows },
      { ...sharer, ...rows },
    ];
    kernel.markSharers({ share: 1, capacity: 1, sharers, partial }, moves, finish, duration, n);
    amount.fill(1);
    kernel.spreadByMonth(calendar, ledger, start, finish, amount, "whole", n);
    kernel.bookByMonth(ledger, finish, amount, n);
    kernel.toScores(spare.fill(0.3), n);
    kernel.addScaled(spare, amount, 1, n);
    kernel.toChances(spare, n);
    kernel.appraise([stream, stream], 0.0001, duration.fill(20), net, payback, gained, n);
  };
}

import { workCalendar } from "../calendar/workCalendar.ts";
import { blockSize } from "../sampling/streams/blockSize.ts";
import { bytesOfCalendar, bytesOfRows } from "./arena.ts";
import { bytesOfDrawer } from "./drawerBy.ts";
import { loadKernel } from "./kernel.ts";
import { bytesOfLongRound, longRound } from "./longRound.ts";
import { bytesOfPieces, bytesOfTable } from "./tablesFor.ts";
import type { Kernel } from "./types.ts";

/** One in each of the four intervals of which pieces are made. */
const modes = [0.1, 0.2, 0.3, 0.45];
const rowCount = 16;
/** Calls until the engine compiles a function well; it then does so for every thread of the process. */
const rounds = 40;
/** Fewer of what has more to do in a call. */
const longRounds = 10;

/** Makes everything that PERT tables are made from. */
export function makePieces(): void {
  const kernel = loadKernel(bytesOfPieces + modes.length * bytesOfTable);
  for (const mode of modes) kernel?.table("pert", mode);
}

/**
 * Has the kernel compiled, quick code included, and the pieces made from which PERT tables come, so that the first
 * simulation need not: for a thread that waits for its plan. Changes no number.
 *
 * Cost: about 30 milliseconds, once.
 */
export function warmUp(): void {
  const everyDay = workCalendar(() => true);
  const weekdays = workCalendar((day) => day % 7 < 5);
  const room =
    bytesOfPieces +
    modes.length * bytesOfTable +
    bytesOfDrawer(modes.length) +
    bytesOfRows(rowCount, blockSize, 8) +
    bytesOfRows(4, blockSize, 1) +
    bytesOfRows(1, 4 * blockSize, 8) +
    bytesOfLongRound +
    bytesOfCalendar(weekdays);
  const kernel = loadKernel(room);
  if (kernel === undefined) return;
  const tables = modes.map((mode) => ({ values: kernel.table("pert", mode), shift: 1, scale: 1 }));
  const drawer = kernel.drawer(tables.map((table, i) => ({ stream: `warm ${i}`, table, cut: true })));
  const outs = kernel.arena.rows(modes.length, blockSize);
  const rows = [...outs, ...kernel.arena.rows(6, blockSize)];
  const marks = kernel.arena.bytes(2, blockSize);
  const below = new Float64Array(modes.length);
  const round = longRound(kernel, kernel.arena.calendar(weekdays));
  for (let k = 0; k < longRounds; k++) round();
  for (let turn = 0; turn < rounds; turn++) {
    drawer.draw(turn, outs, blockSize, below);
    for (const calendar of [everyDay, weekdays]) pass(kernel, kernel.arena.calendar(calendar), rows, marks);
  }
}

type Row = Float64Array;
type Ten = [Row, Row, Row, Row, Row, Row, Row, Row, Row, Row];

/** One round of what a block does with its rows. */
function pass(
  kernel: Kernel,
  calendar: ReturnType<Kernel["arena"]["calendar"]>,
  rows: Float64Array[],
  marks: Uint8Array[],
): void {
  const [duration, once, a, b, lower, start, finish, latest, total, sums] = rows as Ten;
  const [mine, other] = marks as [Uint8Array, Uint8Array];
  const n = blockSize;
  lower.fill(0);
  latest.fill(0);
  kernel.raiseTo(lower, a, n);
  kernel.settle(calendar, lower, duration, start, finish, 0, n);
  kernel.raiseTo(latest, finish, n);
  kernel.markFinish(calendar, latest, finish, mine, n);
  kernel.markSimple(calendar, other, mine, finish, start, n);
  kernel.anySet(other, n);
  kernel.addImpact(total, mine, b, 1, n);
  kernel.addCost(total, once, n);
  kernel.addCostWhere(total, mine, once, 1, n);
  kernel.addDailyCost(total, once, 1, duration, n);
  kernel.addTaskCost(total, once, b, 1, duration, n);
  kernel.sumMasked(duration, mine, 1, n, sums);
  kernel.selectRanks(finish, [100, 500, 900]);
}

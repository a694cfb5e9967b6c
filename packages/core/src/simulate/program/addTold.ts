import { bytesOfRows, type Kernel } from "../../kernel/index.ts";
import type { AsWritten } from "../asWritten.ts";
import type { Model } from "../model.ts";
import type { TrialSums } from "../trials.ts";
import { costsOf } from "./told.ts";

/** What the blocks of a run told: where, bytes a block, blocks, iterations. */
interface AllTold {
  at: number;
  bytes: number;
  blocks: number;
  n: number;
}

const header = 16;

function lengths(model: Model): { impacts: number; sums: number } {
  const { tasks, register, responses, pairs, slots } = model;
  let impacts = 0;
  for (const task of tasks) impacts += task.impacts.length;
  return {
    impacts,
    sums: 7 * tasks.length + 4 * register.length + responses.length + 5 * pairs.length + slots.length,
  };
}

/** Bytes that `addToldTo` takes in an arena. */
export function bytesOfAllTold(model: Model): number {
  const { impacts, sums } = lengths(model);
  const { tasks, register } = model;
  return (
    bytesOfRows(1, header + tasks.length + register.length + impacts, 4) +
    bytesOfRows(1, tasks.length + register.length + sums, 8)
  );
}

/**
 * Adds to `sums` what all blocks told, in the kernel: `sumsTold` and `addSums`, block by block, to the bit. A thousand tasks
 * in ten blocks take as long as one in ten thousand, which is where a first call of TypeScript is slow.
 */
export function addToldTo(
  sums: TrialSums,
  { arena, wasm }: Kernel,
  model: Model,
  { money }: AsWritten,
  { at, bytes, blocks, n }: AllTold,
): void {
  const { tasks, register, responses, pairs, slots } = model;
  const { impacts, sums: count } = lengths(model);
  const what = arena.int32(1, header + tasks.length + register.length + impacts)[0] as Int32Array;
  const rows = arena.rows(1, tasks.length + register.length + count)[0] as Float64Array;
  const impactsOf = header;
  const costs = impactsOf + tasks.length;
  let next = costs + register.length;
  const address = (word: number) => what.byteOffset + 4 * word;
  const moneyOfEntries = rows.byteOffset + 8 * tasks.length;
  what.set([tasks.length, register.length, responses.length, 5 * pairs.length, slots.length]);
  what.set([address(impactsOf), address(costs), address(next), rows.byteOffset, moneyOfEntries], 5);
  for (let j = 0; j < tasks.length; j++) {
    const { impacts } = tasks[j] as Model["tasks"][number];
    what[impactsOf + j] = impacts.length;
    for (const { entry } of impacts) what[next++] = entry;
  }
  register.forEach((entry, e) => {
    what[costs + e] = costsOf(entry);
  });
  rows.set(money.tasks);
  rows.set(money.entries, tasks.length);
  const out = tasks.length + register.length;
  wasm?.addTold(what.byteOffset, at, bytes, blocks, n, rows.byteOffset + 8 * out);
  let from = out;
  const take = (into: Float64Array) => {
    into.set(rows.subarray(from, from + into.length));
    from += into.length;
  };
  take(sums.critical);
  take(sums.needed);
  take(sums.points);
  take(sums.duration);
  take(sums.taskMoney);
  take(sums.ownDays);
  take(sums.ownMoney);
  take(sums.entryDays);
  take(sums.entryMoney);
  take(sums.responses);
  take(sums.pairs);
  take(sums.cuts);
}

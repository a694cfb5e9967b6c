import type { Problem } from "../../plan/problem.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import { blockSize, kernelFor, newBlock } from "../../simulate/block.ts";
import { draws } from "../../simulate/draws.ts";
import type { Model } from "../../simulate/model.ts";
import { newCapacity } from "../../simulate/people.ts";
import { place } from "../../simulate/place.ts";
import { realise } from "../../simulate/realise.ts";
import type { Draw } from "../variants.ts";
import { findWaits, type OnWait } from "./waits.ts";

/** Moments of the tasks that name people, n each; undefined for the others. */
export interface TaskRows {
  start: (Float64Array | undefined)[];
  finish: (Float64Array | undefined)[];
}

/**
 * Places the tasks of every iteration and keeps the moments of those in `keep`; with limited people also tells of every
 * wait, `k` counting over all iterations.
 *
 * Returns the rows, or the task that runs past what calendars cover. Memory: 16 bytes * n per task kept.
 */
export function peopleRun(
  model: Model,
  draw: Draw,
  asWritten: AsWritten,
  keep: ReadonlySet<number>,
  onWait: OnWait,
  onProgress?: (done: number, total: number) => void,
): { rows: TaskRows } | { problem: Problem } {
  const n = draw.iterations;
  const size = Math.min(n, blockSize);
  const kernel = kernelFor(model, size, 2);
  const block = newBlock(model, size, kernel);
  const spare = kernel.arena.rows(2, size) as [Float64Array, Float64Array]; // two rows, as asked
  const source = draws(model, draw.seed, draw.design);
  const row = (j: number) => (keep.has(j) ? new Float64Array(n) : undefined);
  const rows = { start: model.tasks.map((_, j) => row(j)), finish: model.tasks.map((_, j) => row(j)) };
  for (let first = 0, b = 0; first < n; first += blockSize, b++) {
    block.n = Math.min(blockSize, n - first);
    source.fill(b, block);
    realise(model, block);
    const capacity = model.limitedPeople ? newCapacity(model) : undefined;
    const beyond = place(model, block, asWritten.starts, capacity);
    if (beyond >= 0) return { problem: beyondCalendar(model, beyond) };
    for (const j of keep) {
      rows.start[j]?.set((block.start[j] as Float64Array).subarray(0, block.n), first);
      rows.finish[j]?.set((block.finish[j] as Float64Array).subarray(0, block.n), first);
    }
    if (model.limitedPeople) {
      findWaits(model, block, asWritten.starts, spare, (task, person, behind, k, days) =>
        onWait(task, person, behind, first + k, days),
      );
    }
    onProgress?.(first + block.n, n);
  }
  return { rows };
}

import { workAt } from "../../calendar/workCalendar.ts";
import { rankOf } from "../../forecast/ranks.ts";
import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import { type Block, newBlock } from "../../simulate/block.ts";
import { markFinish } from "../../simulate/critical.ts";
import type { Model } from "../../simulate/model.ts";
import { newCapacity } from "../../simulate/people.ts";
import { place } from "../../simulate/place.ts";
import { reachOf, touchesOf } from "../settings.ts";
import { BeyondCalendarError } from "../stage.ts";
import type { Draw } from "../variants.ts";
import { eachBlock } from "./eachBlock.ts";

/**
 * By task asked for: the working days by which the finish at a level would come earlier if the task never took longer
 * than `asWritten` (working days, by task of the model), everything else on the same draws. Negative where people, once
 * a task is shorter, meet a different task first.
 *
 * Cost: one run without marking, and for each task the placing of all that can move with it; 8 n bytes a task.
 */
export function daysAtStake(
  model: Model,
  draw: Draw,
  planned: Float64Array,
  tasks: readonly number[],
  asWritten: ArrayLike<number>,
  confidence: number,
  onBlock: (iterations: number) => void,
): number[] {
  const touches = touchesOf(model);
  const none: ReadonlySet<number> = new Set();
  const again = tasks.map(
    (j) =>
      reachOf(
        model,
        touches,
        { slots: none, entries: none, needed: new Set([j]), people: false },
        model.limitedPeople,
      ).placed,
  );
  const before = new Float64Array(draw.iterations);
  const after = tasks.map(() => new Float64Array(draw.iterations));
  let work: Block | undefined;
  eachBlock(model, draw, planned, (block, first) => {
    work ??= newBlock(model, block.n, block.kernel);
    const { n } = block;
    markFinish(model, block);
    before.set(block.planFinish.subarray(0, n), first);
    tasks.forEach((j, at) => {
      const held = copyFor(block, work as Block, again[at] as Uint8Array);
      const duration = (work as Block).scratch;
      const most = asWritten[j] as number;
      const drawn = block.duration[j] as Float64Array;
      for (let k = 0; k < n; k++) duration[k] = Math.min(drawn[k] as number, most);
      held.duration = [...block.duration];
      held.duration[j] = duration;
      const capacity = model.limitedPeople ? newCapacity(model) : undefined;
      const beyond = place(model, held, planned, capacity, again[at]);
      if (beyond >= 0) throw new BeyondCalendarError(beyondCalendar(model, beyond));
      markFinish(model, held);
      (after[at] as Float64Array).set(held.planFinish.subarray(0, n), first);
    });
    onBlock(n);
  });
  const rank = rankOf(confidence, draw.iterations) - 1;
  const level = (row: Float64Array) => workAt(model.planCalendar, row.sort()[rank] as number);
  const now = level(before);
  return after.map((row) => now - level(row));
}

/** The block with rows of its own for the tasks to be placed again, and for what is read off them. */
function copyFor(block: Block, work: Block, again: Uint8Array): Block {
  const own = (j: number) => again[j] === 1;
  return {
    ...block,
    start: block.start.map((row, j) => (own(j) ? (work.start[j] as Float64Array) : row)),
    finish: block.finish.map((row, j) => (own(j) ? (work.finish[j] as Float64Array) : row)),
    moves: work.moves,
    pushed: work.pushed,
    planFinish: work.planFinish,
    planFinishDay: work.planFinishDay,
  };
}

import { tolerance } from "../../calendar/tolerance.ts";
import { finishMoment, nextWork, workAt } from "../../calendar/workCalendar.ts";
import type { Block } from "../../simulate/block.ts";
import { keepWhole } from "../../simulate/keepWhole.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";
import { place } from "../../simulate/place.ts";
import { type Holding, overloadAt } from "./overload.ts";

/** Told of one wait: task `waits`, for a person held by task `behind` (-1: partly away), in iteration k of the block. */
export type OnWait = (waits: number, person: number, behind: number, k: number, workingDays: number) => void;

/**
 * Finds every wait for a person in a block whose tasks have been placed with people limited. A task's start is what
 * its links and dates allow, the others standing where they stand, moved on over one overload after the other to where
 * it was placed; each move is a wait for the task whose end made room. So the waits of a task add up to what it lost,
 * in working days of the plan's calendar.
 *
 * A wait is not the same as days at the finish: a task off the driving path may wait at no cost.
 *
 * @param spare  A row for a start and one for a finish, in the block's kernel.
 *
 * Returns nothing. Cost: one placing of each task with people, and for each wait the tasks its person holds.
 */
export function findWaits(
  model: Model,
  block: Block,
  hold: Float64Array | undefined,
  spare: readonly [Float64Array, Float64Array],
  onWait: OnWait,
): void {
  const held: Holding[][] = model.people.map(() => []);
  for (const j of model.order) {
    const task = model.tasks[j] as ModelTask;
    if (task.progress === undefined && task.holds.length > 0) {
      const [start, finish] = spare;
      const alone: Block = { ...block, start: [...block.start], finish: [...block.finish] };
      alone.start[j] = start;
      alone.finish[j] = finish;
      const only = new Uint8Array(model.tasks.length);
      only[j] = 1;
      place(model, alone, hold, undefined, only);
      const placed = block.start[j] as Float64Array;
      const duration = block.duration[j] as Float64Array;
      for (let k = 0; k < block.n; k++) {
        if ((placed[k] as number) - (start[k] as number) <= tolerance) continue;
        follow(model, block, j, held, k, [start, finish], duration[k] as number, onWait);
      }
    }
    if (task.progress?.finished === true) continue;
    for (const { person, share } of task.holds) held[person]?.push({ task: j, share });
  }
}

/** Moves one task in one iteration from where it could start to where everybody is free. */
function follow(
  model: Model,
  block: Block,
  j: number,
  held: readonly Holding[][],
  k: number,
  [start, finish]: readonly [Float64Array, Float64Array],
  d: number,
  onWait: OnWait,
): void {
  const task = model.tasks[j] as ModelTask;
  const { calendar } = task;
  const placed = (block.start[j] as Float64Array)[k] as number;
  for (let h = 0; h < task.holds.length; ) {
    const hold = task.holds[h] as ModelTask["holds"][number];
    const s = start[k] as number;
    const found = overloadAt(model, block, hold, held[hold.person] ?? [], k, s, finish[k] as number);
    if (found === undefined) {
      h += 1;
      continue;
    }
    // Never past where it was placed: rounding must not turn a wait into a longer one.
    const next = Math.min(placed, nextWork(calendar, found.end));
    if (next - s <= tolerance) break;
    start[k] = next;
    finish[k] = finishMoment(calendar, workAt(calendar, next) + d);
    if (task.unbroken !== undefined) keepWhole(calendar, task.unbroken, start, finish, k, d);
    const lost = workAt(model.planCalendar, start[k] as number) - workAt(model.planCalendar, s);
    onWait(j, hold.person, found.behind, k, lost);
    h = 0;
  }
}

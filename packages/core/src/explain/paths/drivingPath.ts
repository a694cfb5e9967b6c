import { tolerance } from "../../calendar/tolerance.ts";
import type { ModelTask } from "../../simulate/model.ts";
import type { Bound } from "./boundsOf.ts";
import { bindingBounds } from "./driverOf.ts";
import type { Placed } from "./placed.ts";

/** A task of a chain, and the bound that holds its start: `by.from` is the task before it. */
export interface Step {
  task: number;
  by: Bound;
}

/**
 * The chain that holds the start of task j in iteration k, j first: back over what bound each start, to a date, a
 * recorded start or finish, or the plan's start. Each step goes to a task placed earlier, so it ends.
 */
export function chainTo(placed: Placed, j: number, k: number): Step[] {
  const steps: Step[] = [];
  for (let task = j; task >= 0; ) {
    const by = bindingBounds(placed, task, k)[0] as Bound; // the latest of the bounds: there is always one
    steps.push({ task, by });
    task = by.from;
  }
  return steps;
}

/**
 * The task that set the finish in iteration k: of those that stand at it, needed ones, the last in the order of
 * placement, which no other of them follows.
 */
export function finishingTask({ model, block }: Placed, k: number): number {
  if (model.finishOf >= 0) return model.finishOf;
  const finish = block.planFinish[k] as number;
  let last = -1;
  for (let o = model.order.length - 1; o >= 0; o--) {
    const j = model.order[o] as number;
    const task = model.tasks[j] as ModelTask;
    if (block.needed[j]?.[k] === 0) continue;
    if (((block.finish[j] as Float64Array)[k] as number) < finish - tolerance) continue;
    if (task.progress?.finished !== true) return j;
    if (last < 0) last = j;
  }
  return last;
}

import { tolerance } from "../calendar/tolerance.ts";
import type { Block } from "../simulate/block.ts";
import { finishDay } from "../simulate/critical.ts";
import type { Model, ModelTask } from "../simulate/model.ts";

/** Fills the block's `planFinish` and `planFinishDay`. `all`: a task that is always needed may have been left out. */
export type LastFinish = (block: Block, all: boolean) => void;

/**
 * The plan's finish and its date, as `markFinish` finds them, without its marks.
 *
 * It looks only at tasks that can be the last: one that a task always needed follows, finish to start, ends no later
 * than that one (to the bit: points stand where their bounds are, work takes more than the tolerance, which is
 * more than rounding). Likewise only points with an earliest date of their own, or that mark a start, can put the
 * date past the day of the finish.
 */
export function lastFinish(model: Model): LastFinish {
  const everyone = model.tasks.map((_, j) => j);
  const followed = new Set<number>();
  for (const task of model.tasks) {
    if (task.progress !== undefined || task.chance < 1) continue;
    for (const { from, kind, direct } of task.links)
      if (direct && kind === "finish-to-start") followed.add(from);
  }
  const last = everyone.filter((j) => !followed.has(j));
  const dated = everyone.filter((j) => {
    const task = model.tasks[j] as ModelTask;
    if (!task.mayBePoint && task.progress === undefined) return false;
    return task.progress?.finished !== true && (task.kind === "milestone-start" || task.readingFloor > 0);
  });
  return (block, all) => {
    if (model.finishOf >= 0) finishOfTask(model, block);
    else {
      latest(block, all ? everyone : last);
      for (const j of dated) dateOfPoint(model.tasks[j] as ModelTask, j, block);
    }
  };
}

function finishOfTask(model: Model, { n, planFinish, planFinishDay, ...block }: Block): void {
  const j = model.finishOf;
  const task = model.tasks[j] as ModelTask;
  const finish = block.finish[j] as Float64Array;
  const duration = block.duration[j] as Float64Array;
  const needed = block.needed[j];
  for (let k = 0; k < n; k++) {
    const t = finish[k] as number;
    planFinish[k] = t;
    planFinishDay[k] = finishDay(task, t, (duration[k] as number) <= tolerance, needed?.[k] !== 0);
  }
}

function latest(block: Block, tasks: readonly number[]): void {
  const { n, planFinish, planFinishDay, kernel } = block;
  planFinish.fill(0, 0, n);
  for (const j of tasks) {
    const finish = block.finish[j] as Float64Array;
    const needed = block.needed[j];
    if (needed === undefined) {
      kernel.raiseTo(planFinish, finish, n);
      continue;
    }
    for (let k = 0; k < n; k++) {
      const t = finish[k] as number;
      if (needed[k] === 1 && t > (planFinish[k] as number)) planFinish[k] = t;
    }
  }
  for (let k = 0; k < n; k++) {
    planFinishDay[k] = Math.max(0, Math.ceil((planFinish[k] as number) - tolerance) - 1);
  }
}

/** A point may stand on a later day than work that ends at the same moment: at its own earliest date. */
function dateOfPoint(task: ModelTask, j: number, block: Block): void {
  const { n, planFinish, planFinishDay } = block;
  const finish = block.finish[j] as Float64Array;
  const duration = block.duration[j] as Float64Array;
  const needed = block.needed[j];
  for (let k = 0; k < n; k++) {
    const t = finish[k] as number;
    if (needed?.[k] === 0 || t < (planFinish[k] as number) - tolerance) continue;
    if ((duration[k] as number) > tolerance) continue;
    const day = finishDay(task, t, true);
    if (day > (planFinishDay[k] as number)) planFinishDay[k] = day;
  }
}

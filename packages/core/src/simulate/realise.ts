import type { Block } from "./block.ts";
import type { Amount, Model, ModelTask } from "./model.ts";

/**
 * Turns draws into realised durations and waits, task by task:
 * duration = max(0, sampled * product of factors + sum of delays), over the impacts that occur.
 * A started task keeps the work already held; a finished one is a fact.
 */
export function realise(model: Model, block: Block): void {
  for (let j = 0; j < model.tasks.length; j++) realiseTask(model, block, j);
}

/** The realised duration and wait of one task. */
export function realiseTask(model: Model, block: Block, j: number): void {
  const task = model.tasks[j] as ModelTask;
  const duration = block.duration[j] as Float64Array;
  fillBase(task, block, duration);
  realiseWait(model, task, block, block.wait[j]);
  if (task.progress?.finished === true) return;
  applyImpacts(model, task, block, duration);
  finishDuration(task, block, duration, block.needed[j]);
}

/** The sampled duration (or what remains of a started task) before any impact. */
function fillBase(task: ModelTask, block: Block, out: Float64Array): void {
  const { progress } = task;
  if (progress?.finished === true) {
    out.fill(progress.held, 0, block.n);
    return;
  }
  const amount = progress?.remaining ?? task.duration;
  const scale = progress?.remaining === undefined ? task.durationScale : progress.remainingScale;
  if (amount.slot < 0) {
    out.fill(amount.value * scale, 0, block.n);
    return;
  }
  const draws = block.draws[amount.slot] as Float64Array;
  if (out !== draws) block.kernel.scaleTo(out, draws, scale, block.n);
}

/** All factors first, then the delays: the order of the register cannot matter. */
function applyImpacts(model: Model, task: ModelTask, block: Block, out: Float64Array): void {
  const { kernel, n, scratch } = block;
  for (const at of task.impacts) {
    const entry = model.register[at.entry] as Model["register"][number];
    const factor = entry.impacts[at.impact]?.factor;
    if (factor === undefined) continue;
    const draws = drawsOf(factor, block, scratch);
    kernel.multiplyImpact(out, block.occurs[at.entry] as Uint8Array, draws, entry.scale, n);
  }
  for (const at of task.impacts) {
    const delay = model.register[at.entry]?.impacts[at.impact]?.delay;
    if (delay === undefined) continue;
    const draws = drawsOf(delay, block, scratch);
    kernel.addImpact(out, block.occurs[at.entry] as Uint8Array, draws, at.delayScale, n);
  }
}

function finishDuration(
  task: ModelTask,
  block: Block,
  out: Float64Array,
  needed: Uint8Array | undefined,
): void {
  const { progress } = task;
  const { n } = block;
  // Impacts that cannot take all of a task's duration cannot take more.
  if ((task.impacts.length > 0 && task.mayBePoint) || progress !== undefined) {
    for (let k = 0; k < n; k++) if ((out[k] as number) < 0) out[k] = 0;
  }
  if (progress !== undefined) {
    const { held } = progress;
    if (progress.remaining !== undefined) for (let k = 0; k < n; k++) out[k] = held + (out[k] as number);
    else for (let k = 0; k < n; k++) if ((out[k] as number) < held) out[k] = held;
  }
  if (needed !== undefined) for (let k = 0; k < n; k++) if (needed[k] === 0) out[k] = 0;
}

function realiseWait(model: Model, task: ModelTask, block: Block, out: Float64Array | undefined): void {
  if (out === undefined) return;
  out.fill(0, 0, block.n);
  for (const at of task.impacts) {
    const wait = model.register[at.entry]?.impacts[at.impact]?.wait;
    if (wait === undefined) continue;
    const draws = drawsOf(wait, block, block.scratch);
    block.kernel.addImpact(out, block.occurs[at.entry] as Uint8Array, draws, at.waitScale, block.n);
  }
}

/** The row of an amount's draws; a constant is written into `spare`. */
function drawsOf(amount: Amount, block: Block, spare: Float64Array): Float64Array {
  return amount.slot < 0 ? spare.fill(amount.value, 0, block.n) : (block.draws[amount.slot] as Float64Array);
}

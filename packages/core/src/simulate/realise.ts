import type { Block } from "./block.ts";
import type { Model, ModelTask } from "./model.ts";

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
  if (scale === 1) {
    out.set(draws.subarray(0, block.n));
    return;
  }
  for (let k = 0; k < block.n; k++) out[k] = (draws[k] as number) * scale;
}

function applyImpacts(model: Model, task: ModelTask, block: Block, out: Float64Array): void {
  // All factors first, then the delays: the order of the register cannot matter.
  for (const at of task.impacts) {
    const entry = model.register[at.entry] as Model["register"][number];
    const factor = entry.impacts[at.impact]?.factor;
    if (factor === undefined) continue;
    const occurs = block.occurs[at.entry] as Uint8Array;
    const draws = factor.slot < 0 ? undefined : (block.draws[factor.slot] as Float64Array);
    for (let k = 0; k < block.n; k++) {
      if (occurs[k] === 0) continue;
      const value = draws === undefined ? factor.value : (draws[k] as number);
      out[k] = (out[k] as number) * (1 + entry.scale * (value - 1));
    }
  }
  for (const at of task.impacts) {
    const entry = model.register[at.entry] as Model["register"][number];
    const delay = entry.impacts[at.impact]?.delay;
    if (delay === undefined) continue;
    const occurs = block.occurs[at.entry] as Uint8Array;
    const draws = delay.slot < 0 ? undefined : (block.draws[delay.slot] as Float64Array);
    for (let k = 0; k < block.n; k++) {
      if (occurs[k] === 0) continue;
      out[k] =
        (out[k] as number) + at.delayScale * (draws === undefined ? delay.value : (draws[k] as number));
    }
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
  if (task.impacts.length > 0 || progress !== undefined) {
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
    const occurs = block.occurs[at.entry] as Uint8Array;
    const draws = wait.slot < 0 ? undefined : (block.draws[wait.slot] as Float64Array);
    for (let k = 0; k < block.n; k++) {
      if (occurs[k] === 0) continue;
      out[k] = (out[k] as number) + at.waitScale * (draws === undefined ? wait.value : (draws[k] as number));
    }
  }
}

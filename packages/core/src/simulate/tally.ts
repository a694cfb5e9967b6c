import { tolerance } from "../calendar/tolerance.ts";
import type { Block } from "./block.ts";
import { finishDay } from "./critical.ts";
import type { Model, ModelTask, TaskImpact } from "./model.ts";
import { type MoneySums, rowOf } from "./money.ts";
import type { TrialSums } from "./trials.ts";

const four = new Float64Array(4);

/**
 * Adds one computed block to the sums: criticality, targets, and what each item added.
 *
 * Days: on a task critical in an iteration, each impact that occurs adds its delay, its wait, and the sampled
 * duration times (factor - 1), factors taken one after the other in id order; the task's own draw adds what is
 * left over its as-written duration. Money: the same parts times the task's rate, plus cost draws. So the money
 * of all items adds up to the mean total less the plan as written.
 */
export function tally(
  model: Model,
  block: Block,
  money: MoneySums,
  asWritten: { duration: Float64Array; money: MoneySums },
  sums: TrialSums,
): void {
  const { n, kernel } = block;
  model.tasks.forEach((task, j) => {
    const moves = block.pushed[j] as Uint8Array;
    const duration = block.duration[j] as Float64Array;
    const needed = block.needed[j];
    const finish = block.finish[j] as Float64Array;
    const finished = task.progress?.finished === true;
    const base = asWritten.duration[j] as number;
    let own: number;
    if (needed === undefined && !finished) {
      kernel.sumMasked(duration, moves, base, n, four);
      own = four[0] as number;
      sums.duration[j] = four[1] as number;
      sums.critical[j] = four[2] as number;
      sums.points[j] = four[3] as number;
      sums.needed[j] = n;
    } else own = tallyAny(duration, moves, needed, finished, base, n, j, sums);
    sums.onTarget[j] =
      task.targetDay === undefined ? 0 : onTarget(task, duration, finish, needed, task.targetDay, n);
    sums.taskMoney[j] = money.tasks[j] as number;
    let ownMoney = (money.tasks[j] as number) - n * (asWritten.money.tasks[j] as number);
    if (!finished) {
      for (const at of task.impacts) {
        const part = impactOn(model, block, task, at, j);
        own -= part.inDuration;
        ownMoney -= part.money;
        sums.entryDays[at.entry] = (sums.entryDays[at.entry] as number) + part.inDuration + part.wait;
        sums.entryMoney[at.entry] = (sums.entryMoney[at.entry] as number) + part.money;
      }
    }
    sums.ownDays[j] = own;
    sums.ownMoney[j] = ownMoney;
  });
  model.register.forEach((_, e) => {
    const add = (money.entries[e] as number) - n * (asWritten.money.entries[e] as number);
    sums.entryMoney[e] = (sums.entryMoney[e] as number) + add;
  });
  model.pairs.forEach(([a, b], p) => {
    const x = block.duration[a] as Float64Array;
    const y = block.duration[b] as Float64Array;
    kernel.sumProducts(x, y, n, sums.pairs.subarray(5 * p, 5 * p + 5));
  });
  sums.responses.set(money.responses);
  sums.overheads.set(money.overheads);
}

/** A task that may not be needed, or is finished; answers what its own draw added where it was critical. */
function tallyAny(
  duration: Float64Array,
  moves: Uint8Array,
  needed: Uint8Array | undefined,
  finished: boolean,
  base: number,
  n: number,
  j: number,
  sums: TrialSums,
): number {
  let critical = 0;
  let count = 0;
  let points = 0;
  let total = 0;
  let own = 0;
  for (let k = 0; k < n; k++) {
    const d = duration[k] as number;
    total += d;
    if (d <= tolerance) points++;
    if (needed !== undefined && needed[k] === 0) continue;
    count++;
    if (moves[k] === 1 && !finished) {
      critical++;
      own += d - base;
    }
  }
  sums.critical[j] = critical;
  sums.needed[j] = count;
  sums.points[j] = points;
  sums.duration[j] = total;
  return own;
}

/** In how many iterations the task meets its target. */
export function onTarget(
  task: ModelTask,
  duration: Float64Array,
  finish: Float64Array,
  needed: Uint8Array | undefined,
  target: number,
  n: number,
): number {
  let met = 0;
  for (let k = 0; k < n; k++) {
    const point = (duration[k] as number) <= tolerance;
    if (finishDay(task, finish[k] as number, point, needed?.[k] !== 0) <= target) met++;
  }
  return met;
}

/** What one impact added to one task over the block: days to critical iterations, money to all. */
function impactOn(
  model: Model,
  block: Block,
  task: ModelTask,
  at: TaskImpact,
  j: number,
): { inDuration: number; wait: number; money: number } {
  const entry = model.register[at.entry] as Model["register"][number];
  const impact = entry.impacts[at.impact] as Model["register"][number]["impacts"][number];
  const occurs = block.occurs[at.entry] as Uint8Array;
  const moves = block.pushed[j] as Uint8Array;
  const needed = block.needed[j];
  const amount = task.progress?.remaining ?? task.duration;
  const scale = task.progress?.remaining === undefined ? task.durationScale : task.progress.remainingScale;
  const sampled = rowOf(amount, block);
  const delay = impact.delay === undefined ? undefined : rowOf(impact.delay, block);
  const factor = impact.factor === undefined ? undefined : rowOf(impact.factor, block);
  const wait = impact.wait === undefined ? undefined : rowOf(impact.wait, block);
  const perDay = rowOf(task.costPerDay, block);
  const paid = task.progress?.spent === undefined || !task.progress.finished;
  let inDuration = 0;
  let waited = 0;
  let money = 0;
  for (let k = 0; k < block.n; k++) {
    if (occurs[k] === 0 || (needed !== undefined && needed[k] === 0)) continue;
    let days = 0;
    if (impact.delay !== undefined) {
      days += at.delayScale * (delay === undefined ? impact.delay.value : (delay[k] as number));
    }
    if (impact.factor !== undefined) {
      const before = factorsBefore(model, block, task, at, k);
      const value = factor === undefined ? impact.factor.value : (factor[k] as number);
      const draw = (sampled === undefined ? amount.value : (sampled[k] as number)) * scale;
      days += draw * before * entry.scale * (value - 1);
    }
    if (paid) {
      money +=
        days * ((perDay === undefined ? task.costPerDay.value : (perDay[k] as number)) + task.peoplePerDay);
    }
    if (moves[k] === 0) continue;
    inDuration += days;
    if (impact.wait !== undefined) {
      waited += at.waitScale * (wait === undefined ? impact.wait.value : (wait[k] as number));
    }
  }
  return { inDuration, wait: waited, money };
}

/** Product of the factors that act on the task before this one, in register order. */
function factorsBefore(model: Model, block: Block, task: ModelTask, at: TaskImpact, k: number): number {
  let product = 1;
  for (const other of task.impacts) {
    if (other === at) break;
    const entry = model.register[other.entry] as Model["register"][number];
    const factor = entry.impacts[other.impact]?.factor;
    if (factor === undefined || (block.occurs[other.entry] as Uint8Array)[k] === 0) continue;
    const value = factor.slot < 0 ? factor.value : ((block.draws[factor.slot] as Float64Array)[k] as number);
    product *= 1 + entry.scale * (value - 1);
  }
  return product;
}

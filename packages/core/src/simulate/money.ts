import { tolerance } from "../calendar/tolerance.ts";
import type { Block } from "./block.ts";
import type { Amount, Model, ModelTask } from "./model.ts";

/** Sums over the iterations of a block, by item; they add up to the sum of the totals. */
export interface MoneySums {
  tasks: Float64Array;
  entries: Float64Array;
  responses: Float64Array;
  overheads: Float64Array;
}

export function newMoneySums(model: Model): MoneySums {
  return {
    tasks: new Float64Array(model.tasks.length),
    entries: new Float64Array(model.register.length),
    responses: new Float64Array(model.responses.length),
    overheads: new Float64Array(model.overheads.length),
  };
}

/**
 * Total cost of each iteration into `block.cost`, in id order: tasks, register, adopted responses, overheads
 * (plan format, "Money"). Fractions of days are charged.
 */
export function addMoney(model: Model, block: Block, sums: MoneySums): void {
  const { n, cost: total, scratch: part, scratch2: spare, kernel } = block;
  total.fill(0, 0, n);
  for (let j = 0; j < model.tasks.length; j++) {
    const task = model.tasks[j] as ModelTask;
    const once = rowOf(task.cost, block);
    if (once !== undefined && task.progress?.spent === undefined && block.needed[j] === undefined) {
      sums.tasks[j] = addDrawnCost(task, j, block, once);
    } else if (taskCost(task, j, block, part)) sums.tasks[j] = kernel.addCost(total, part, n);
  }
  model.register.forEach((entry, e) => {
    let sum = 0;
    for (const { cost } of entry.impacts) {
      if (cost === undefined) continue;
      const draws = rowOf(cost, block) ?? spare.fill(cost.value, 0, n);
      sum += kernel.addCostWhere(total, block.occurs[e] as Uint8Array, draws, entry.scale, n);
    }
    sums.entries[e] = sum;
  });
  model.responses.forEach((response, r) => {
    fillAmount(response.cost, block, part);
    sums.responses[r] = kernel.addCost(total, part, n);
  });
  addOverheads(model, block, sums);
}

/** What overheads add, the last part of the total. */
export function addOverheads(model: Model, block: Block, { overheads }: Pick<MoneySums, "overheads">): void {
  const { n, cost: total, scratch: part, kernel } = block;
  model.overheads.forEach((overhead, o) => {
    fillAmount(overhead.perDay, block, part);
    const from = overhead.from < 0 ? undefined : (block.start[overhead.from] as Float64Array);
    const to = overhead.to < 0 ? block.planFinish : (block.finish[overhead.to] as Float64Array);
    kernel.scaleByWork(kernel.arena.calendar(model.planCalendar), part, from, to, n);
    overheads[o] = kernel.addCost(total, part, n);
  });
}

/** The cost of a task whose `cost` is drawn, added in one pass; as `taskCost`, and to the bit. */
function addDrawnCost(task: ModelTask, j: number, block: Block, once: Float64Array): number {
  const { kernel, n, cost: total } = block;
  const { costPerDay, peoplePerDay } = task;
  const duration = block.duration[j] as Float64Array;
  const perDay = rowOf(costPerDay, block);
  if (perDay !== undefined) return kernel.addTaskCost(total, once, perDay, peoplePerDay, duration, n);
  if (costPerDay.value === 0 && peoplePerDay === 0) return kernel.addCost(total, once, n);
  return kernel.addDailyCost(total, once, costPerDay.value + peoplePerDay, duration, n);
}

/** Cost of one task in each iteration into `out`, a row of the block; false when it can never cost anything. */
export function taskCost(task: ModelTask, j: number, block: Block, out: Float64Array): boolean {
  const { n } = block;
  const { cost, costPerDay, peoplePerDay, progress } = task;
  const spends = progress?.spent !== undefined;
  const once = cost.slot >= 0 || cost.value !== 0;
  const daily = costPerDay.slot >= 0 || costPerDay.value !== 0 || peoplePerDay !== 0;
  if (!once && !daily && !spends) return false;
  if (spends && progress.finished) {
    out.fill(progress.spent as number, 0, n);
    return true;
  }
  const duration = block.duration[j] as Float64Array;
  fillAmount(cost, block, out);
  const perDay = rowOf(costPerDay, block);
  if (spends) {
    const spent = progress.spent as number;
    for (let k = 0; k < n; k++) {
      const d = duration[k] as number;
      const remains = d - progress.held > 0 ? d - progress.held : 0;
      const rate = (perDay === undefined ? costPerDay.value : (perDay[k] as number)) + peoplePerDay;
      const share = d > tolerance ? ((out[k] as number) * remains) / d : 0;
      out[k] = spent + remains * rate + share;
    }
    return true;
  }
  if (daily && perDay === undefined) {
    block.kernel.addDaily(out, duration, costPerDay.value + peoplePerDay, n);
  } else if (perDay !== undefined) {
    for (let k = 0; k < n; k++) {
      out[k] = (out[k] as number) + ((perDay[k] as number) + peoplePerDay) * (duration[k] as number);
    }
  }
  const needed = block.needed[j];
  if (needed !== undefined) for (let k = 0; k < n; k++) if (needed[k] === 0) out[k] = 0;
  return true;
}

/** The row of an amount's draws, or undefined when it is constant. */
export function rowOf(amount: Amount, block: Block): Float64Array | undefined {
  return amount.slot < 0 ? undefined : (block.draws[amount.slot] as Float64Array);
}

export function fillAmount(amount: Amount, block: Block, out: Float64Array): void {
  if (amount.slot < 0) out.fill(amount.value, 0, block.n);
  else out.set((block.draws[amount.slot] as Float64Array).subarray(0, block.n));
}

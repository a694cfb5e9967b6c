import { workAt } from "../calendar/workCalendar.ts";
import type { Block } from "../simulate/block.ts";
import type { Model, ModelTask } from "../simulate/model.ts";
import { fillAmount, rowOf, taskCost } from "../simulate/money.ts";

/** Rows of what each task costs, one list as the model is and one for the variant computed last. */
export interface TotalCost {
  /** Prices every task of the block as the model is. */
  load(base: Block): void;
  /** From here on tasks cost what they cost as the model is. */
  reset(): void;
  /** Prices a task again; `own`: on settings of its own, otherwise as the model is. */
  price(block: Block, j: number, own: boolean): void;
  /** Total cost into the block's `cost`. */
  sum(block: Block): void;
}

/**
 * The cost of a variant, as `addMoney` adds it up, with tasks whose cost has not changed taken from rows instead of
 * priced again. Additions are those of `addMoney` in its order, so the totals are the same to the bit.
 *
 * Memory: two rows for each task that costs anything.
 */
export function totalCost(model: Model, { kernel }: Block, size: number): TotalCost {
  const costly = model.tasks.flatMap(({ cost, costPerDay, peoplePerDay, progress }, j) =>
    [cost, costPerDay].some(({ slot, value }) => slot >= 0 || value !== 0) ||
    peoplePerDay !== 0 ||
    progress?.spent !== undefined
      ? [j]
      : [],
  );
  const rows = () => new Map(costly.map((j) => [j, kernel.arena.rows(1, size)[0] as Float64Array]));
  const base = rows();
  const work = rows();
  const parts = new Map(base);
  return {
    load(block) {
      for (const [j, part] of base) taskCost(model.tasks[j] as ModelTask, j, block, part);
    },
    reset() {
      for (const [j, part] of base) parts.set(j, part);
    },
    price(block, j, own) {
      const part = (own ? work : base).get(j);
      if (part === undefined) return;
      if (own) taskCost(model.tasks[j] as ModelTask, j, block, part);
      parts.set(j, part);
    },
    sum(block) {
      const { n, cost } = block;
      cost.fill(0, 0, n);
      for (const part of parts.values()) kernel.addCost(cost, part, n);
      addOthers(model, block);
    },
  };
}

/** Register, responses, overheads, onto the tasks: few, and their rows depend on occurrences and dates. */
export function addOthers(model: Model, block: Block): void {
  const { n, cost: total, scratch: part, scratch2: spare, kernel } = block;
  model.register.forEach((entry, e) => {
    const occurs = block.occurs[e] as Uint8Array;
    for (const { cost } of entry.impacts) {
      if (cost === undefined) continue;
      kernel.addCostWhere(total, occurs, rowOf(cost, block) ?? spare.fill(cost.value, 0, n), entry.scale, n);
    }
  });
  for (const response of model.responses) {
    fillAmount(response.cost, block, part);
    kernel.addCost(total, part, n);
  }
  for (const overhead of model.overheads) {
    fillAmount(overhead.perDay, block, part);
    const from = overhead.from < 0 ? undefined : (block.start[overhead.from] as Float64Array);
    const to = overhead.to < 0 ? block.planFinish : (block.finish[overhead.to] as Float64Array);
    for (let k = 0; k < n; k++) {
      const before = from === undefined ? 0 : workAt(model.planCalendar, from[k] as number);
      const days = workAt(model.planCalendar, to[k] as number) - before;
      part[k] = days > 0 ? (part[k] as number) * days : 0;
    }
    kernel.addCost(total, part, n);
  }
}

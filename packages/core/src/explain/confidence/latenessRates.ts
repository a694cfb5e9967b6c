import { blockSize, kernelFor, newBlock } from "../../simulate/block.ts";
import { draws } from "../../simulate/draws.ts";
import type { Amount, Model } from "../../simulate/model.ts";
import type { Draw } from "../variants.ts";

/** What a week of lateness costs, and being late at all, in each iteration. */
export interface LatenessRates {
  perWeek: Float64Array;
  once: Float64Array;
}

/**
 * The draws of `lateness.perWeek` and `lateness.once`, the very ones the simulation prices lateness with; undefined
 * when the plan says neither. Only these two estimates are drawn: every draw is addressed, so leaving out the others
 * changes nothing.
 */
export function latenessRates(model: Model, draw: Draw): LatenessRates | undefined {
  const { lateness } = model;
  const stated = model.plan.lateness;
  if (lateness === undefined || (stated?.perWeek ?? stated?.once) === undefined) return undefined;
  const n = draw.iterations;
  const amounts = [lateness.perWeek, lateness.once];
  const rows = amounts.map(({ value }) => new Float64Array(n).fill(value));
  const drawn = amounts.flatMap((amount, row) => (amount.slot < 0 ? [] : [{ amount, row }]));
  if (drawn.length > 0) {
    const only: Model = {
      ...model,
      tasks: [],
      order: new Int32Array(0),
      register: [],
      groups: [],
      correlated: undefined,
      slots: drawn.map(({ amount }) => slotOf(model, amount)),
    };
    const source = draws(only, draw.seed, draw.design);
    const size = Math.min(n, blockSize);
    const block = newBlock(only, size, kernelFor(only, size));
    for (let first = 0, b = 0; first < n; first += blockSize, b++) {
      block.n = Math.min(blockSize, n - first);
      source.fill(b, block);
      drawn.forEach(({ row }, s) => {
        const values = block.draws[s] as Float64Array;
        (rows[row] as Float64Array).set(values.subarray(0, block.n), first);
      });
    }
  }
  return { perWeek: rows[0] as Float64Array, once: rows[1] as Float64Array };
}

function slotOf(model: Model, amount: Amount): Model["slots"][number] {
  return model.slots[amount.slot] as Model["slots"][number];
}

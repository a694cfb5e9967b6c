import { type Block, blockSize, kernelFor, newBlock } from "../simulate/block.ts";
import { markFinish } from "../simulate/critical.ts";
import { draws } from "../simulate/draws.ts";
import type { Model, ModelTask } from "../simulate/model.ts";
import { addMoney, newMoneySums } from "../simulate/money.ts";
import { newCapacity } from "../simulate/people.ts";
import { place } from "../simulate/place.ts";
import { realise, realiseTask } from "../simulate/realise.ts";
import type { Trials } from "../simulate/trials.ts";

/** One thing held: a slot's draw at a value, or an entry made to occur (1) or not (0). */
export interface Held {
  slot?: number;
  entry?: number;
  value: number;
}

/** Re-runs blocks of a simulation with one thing held, on the same draws. */
export interface Rerunner {
  /** Draws block `b` and computes it as it is: `n` iterations. */
  load(b: number, n: number): void;
  /** Finish and cost of the loaded block with one thing held; views, valid until the next call. */
  with(held: Held): { finish: Float64Array; cost: Float64Array };
}

/**
 * Only what the held thing can reach is placed again: tasks whose duration, wait or lag it changes, everything
 * that follows them by links, and, with limited people, tasks placed later that share a person with those. The
 * rest keeps the moments of the block as it is.
 */
export function rerunner(
  model: Model,
  trials: Pick<Trials, "seed" | "design" | "iterations">,
  planned: Float64Array,
): Rerunner {
  const size = Math.min(trials.iterations, blockSize);
  const kernel = kernelFor(model, size, 3);
  const base = newBlock(model, size, kernel);
  const spare = newBlock(model, size, kernel);
  const heldRow = kernel.arena.rows(1, size)[0] as Float64Array;
  const heldFlags = kernel.arena.bytes(1, size)[0] as Uint8Array;
  const source = draws(model, trials.seed, trials.design);
  const reaches = new Map<string, { seeds: number[]; reached: Uint8Array }>();
  const capacity = () => (model.limitedPeople ? newCapacity(model) : undefined);
  return {
    load(b, n) {
      base.n = n;
      spare.n = n;
      source.fill(b, base);
      realise(model, base);
      place(model, base, planned, capacity());
      markFinish(model, base);
    },
    with(held) {
      const key = `${held.slot ?? "-"}/${held.entry ?? "-"}`;
      const known = reaches.get(key);
      const { seeds, reached } = known ?? reachOf(model, held);
      if (known === undefined) reaches.set(key, { seeds, reached });
      const pick = <T>(own: T[], others: T[]) =>
        own.map((row, j) => (reached[j] === 1 ? row : (others[j] as T)));
      const block: Block = {
        ...base,
        draws: [...base.draws],
        occurs: [...base.occurs],
        duration: [...base.duration],
        wait: [...base.wait],
        start: pick(spare.start, base.start),
        finish: pick(spare.finish, base.finish),
        planFinish: spare.planFinish,
        planFinishDay: spare.planFinishDay,
        cost: spare.cost,
      };
      if (held.slot !== undefined) block.draws[held.slot] = heldRow.fill(held.value);
      if (held.entry !== undefined) block.occurs[held.entry] = heldFlags.fill(held.value);
      for (const j of seeds) {
        block.duration[j] = spare.duration[j] as Float64Array;
        block.wait[j] = spare.wait[j];
        realiseTask(model, block, j);
      }
      if (seeds.length > 0) {
        place(model, block, planned, capacity(), reached);
        markFinish(model, block);
      } else {
        block.planFinish.set(base.planFinish.subarray(0, base.n));
      }
      addMoney(model, block, newMoneySums(model));
      return {
        finish: block.planFinish.subarray(0, base.n),
        cost: block.cost.subarray(0, base.n),
      };
    },
  };
}

/** Tasks whose own numbers the held thing changes, and all that can move with them. */
function reachOf(model: Model, held: Held): { seeds: number[]; reached: Uint8Array } {
  const seeds: number[] = [];
  model.tasks.forEach((task, j) => {
    if (changes(model, task, held)) seeds.push(j);
  });
  const reached = new Uint8Array(model.tasks.length);
  for (const j of seeds) reached[j] = 1;
  const busy = new Set<number>();
  for (const j of model.order) {
    const task = model.tasks[j] as ModelTask;
    const follows = task.links.some((link) => reached[link.from] === 1);
    const shares = model.limitedPeople && task.holds.some((hold) => busy.has(hold.person));
    if (follows || shares) reached[j] = 1;
    if (reached[j] === 1) for (const hold of task.holds) busy.add(hold.person);
  }
  return { seeds, reached };
}

function changes(model: Model, task: ModelTask, held: Held): boolean {
  if (held.entry !== undefined) {
    return task.impacts.some((at) => {
      const impact = model.register[at.entry]?.impacts[at.impact];
      return at.entry === held.entry && (impact?.delay ?? impact?.factor ?? impact?.wait) !== undefined;
    });
  }
  const { slot } = held;
  return (
    task.impacts.some((at) => {
      const impact = model.register[at.entry]?.impacts[at.impact];
      return [impact?.delay, impact?.factor, impact?.wait].some((part) => part?.slot === slot);
    }) ||
    task.duration.slot === slot ||
    task.progress?.remaining?.slot === slot ||
    task.links.some((link) => link.lag.slot === slot)
  );
}

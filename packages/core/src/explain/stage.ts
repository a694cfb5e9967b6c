import type { Problem } from "../plan/problem.ts";
import { planAsWritten } from "../simulate/asWritten.ts";
import { beyondCalendar } from "../simulate/beyondCalendar.ts";
import { type Block, blockSize, drawnAsIs, kernelFor, newBlock } from "../simulate/block.ts";
import { draws } from "../simulate/draws.ts";
import type { Model, ModelTask } from "../simulate/model.ts";
import { newCapacity } from "../simulate/people.ts";
import { place } from "../simulate/place.ts";
import { realise, realiseTask } from "../simulate/realise.ts";
import type { Trials } from "../simulate/trials.ts";
import { lateCost } from "../simulate/worth.ts";
import { lastFinish } from "./lastFinish.ts";
import { difference, type Reach, reachOf, type Settings, touchesOf } from "./settings.ts";
import { totalCost } from "./totalCost.ts";

/** Rows of length n, one value an iteration. */
export interface Outcome {
  /** Days since start. */
  finish: Float64Array;
  /** The day its date falls on. */
  finishDay: Int32Array;
  cost: Float64Array;
  /** What finishing late costs; only when the plan prices lateness. */
  lateness?: Float64Array;
}

/** A task of a re-run runs past the end of what calendars cover. */
export class BeyondCalendarError extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(`${problem.received}: ${problem.rule} ${problem.remedy}`);
    this.name = "BeyondCalendarError";
    this.problem = problem;
  }
}

/** How one variant is computed once the one before it has been: from that, or from the model as it is. */
interface Step extends Reach {
  settings: Settings;
  fromBase: boolean;
  limited: boolean;
  /** 1 for tasks whose duration, wait or need the settings touch at all; likewise for their cost. */
  own: Uint8Array;
  ownCost: Uint8Array;
  /** A task that is needed in every iteration of the model is made needed or not. */
  dropped: boolean;
}

/** A model with its draws, on which variants are computed block by block. */
export interface Stage {
  /** How a list of variants will be computed, to be gone through in its order in every block. */
  prepare(settings: readonly Settings[]): Step[];
  /** Draws block `b` and computes it as it is: `n` iterations. */
  load(b: number, n: number): void;
  /** Computes a prepared variant of the loaded block into the rows from iteration `first` on. */
  compute(step: Step, into: Outcome, first: number): void;
}

/**
 * Rows for the model as it is and for one variant, and rows of held values.
 *
 * @param all  Every settings that will be prepared: their held values get rows here.
 */
export function stage(
  model: Model,
  draw: Pick<Trials, "seed" | "design" | "iterations">,
  all: readonly Settings[],
): Stage {
  const size = Math.min(draw.iterations, blockSize);
  const values = heldValues(all);
  const rowsOfBlock = model.slots.length + 4 * model.tasks.length + 8;
  const kernel = kernelFor(model, size, 3 + Math.ceil((values.size + 2 * model.tasks.length) / rowsOfBlock));
  const base = newBlock(model, size, kernel);
  const work = newBlock(model, size, kernel);
  const held = new Map<number, Float64Array>();
  for (const value of values) held.set(value, (kernel.arena.rows(1, size)[0] as Float64Array).fill(value));
  const [never, always] = kernel.arena.bytes(2, size) as [Uint8Array, Uint8Array];
  always.fill(1);
  const source = draws(model, draw.seed, draw.design);
  const planned = planAsWritten(model).starts;
  const touches = touchesOf(model);
  const block: Block = { ...work };
  const finish = lastFinish(model);
  const money = totalCost(model, base, size);

  const standAsBase = (): void => {
    block.draws = [...base.draws];
    block.occurs = [...base.occurs];
    block.needed = [...base.needed];
    block.duration = [...base.duration];
    block.wait = [...base.wait];
    block.start = [...base.start];
    block.finish = [...base.finish];
  };

  /** Points the block's draws at what the settings hold; the rest are the model's own. */
  const hold = ({ slots, entries, needed }: Settings): void => {
    block.draws = [...base.draws];
    block.occurs = [...base.occurs];
    block.needed = [...base.needed];
    for (const [slot, value] of slots ?? []) block.draws[slot] = held.get(value) as Float64Array;
    for (const [entry, occurs] of entries ?? []) block.occurs[entry] = occurs === 1 ? always : never;
    for (const [task, is] of needed ?? []) block.needed[task] = is === 1 ? always : never;
  };

  const realiseAgain = (j: number, own: boolean): void => {
    const task = model.tasks[j] as ModelTask;
    if (!own) {
      block.duration[j] = base.duration[j] as Float64Array;
      block.wait[j] = base.wait[j];
    } else if (drawnAsIs(task) && block.needed[j] === undefined) {
      block.duration[j] = block.draws[task.duration.slot] as Float64Array;
    } else {
      block.duration[j] = work.duration[j] as Float64Array;
      block.wait[j] = work.wait[j];
      realiseTask(model, block, j);
    }
  };

  const check = (beyond: number): void => {
    if (beyond >= 0) throw new BeyondCalendarError(beyondCalendar(model, beyond));
  };

  return {
    prepare(settings) {
      let before: Settings | undefined;
      return settings.map((now) => {
        const limited = model.limitedPeople && now.people !== false;
        const fromModel = reachOf(model, touches, difference({}, now), limited);
        const fromLast =
          before === undefined ? undefined : reachOf(model, touches, difference(before, now), limited);
        before = now;
        const fromBase = fromLast === undefined || fromModel.count <= fromLast.count;
        return {
          settings: now,
          fromBase,
          limited,
          own: flags(model, fromModel.changed),
          ownCost: flags(model, fromModel.priced),
          dropped: [...(now.needed?.keys() ?? [])].some((j) => (model.tasks[j]?.chance ?? 1) >= 1),
          ...(fromBase ? fromModel : fromLast),
        };
      });
    },
    load(b, n) {
      base.n = n;
      block.n = n;
      source.fill(b, base);
      realise(model, base);
      const capacity = model.limitedPeople ? newCapacity(model) : undefined;
      check(place(model, base, planned, capacity));
      finish(base, false);
      money.load(base);
    },
    compute(step, into, first) {
      const { n } = block;
      if (step.fromBase) {
        standAsBase();
        money.reset();
        block.planFinish.set(base.planFinish.subarray(0, n));
        block.planFinishDay.set(base.planFinishDay.subarray(0, n));
      }
      hold(step.settings);
      for (const j of step.changed) realiseAgain(j, step.own[j] === 1);
      if (step.count > 0) {
        step.placed.forEach((again, j) => {
          if (again === 0) return;
          block.start[j] = work.start[j] as Float64Array;
          block.finish[j] = work.finish[j] as Float64Array;
        });
        check(place(model, block, planned, step.limited ? newCapacity(model) : undefined, step.placed));
        finish(block, step.dropped);
      }
      for (const j of step.priced) money.price(block, j, step.ownCost[j] === 1);
      money.sum(block);
      into.finish.set(block.planFinish.subarray(0, n), first);
      into.finishDay.set(block.planFinishDay.subarray(0, n), first);
      into.cost.set(block.cost.subarray(0, n), first);
      if (into.lateness !== undefined) lateCost(model, block, first, into.lateness);
    },
  };
}

function flags(model: Model, tasks: readonly number[]): Uint8Array {
  const row = new Uint8Array(model.tasks.length);
  for (const j of tasks) row[j] = 1;
  return row;
}

function heldValues(all: readonly Settings[]): Set<number> {
  const values = new Set<number>();
  for (const { slots } of all) for (const value of slots?.values() ?? []) values.add(value);
  return values;
}

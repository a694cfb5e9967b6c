import type { Design } from "../sampling/design.ts";
import type { Model } from "./model.ts";
import type { Months } from "./months.ts";
import type { WorthRows } from "./worth.ts";

/**
 * What a simulation leaves behind: the plan's finish and cost in every iteration, the moments of every task,
 * and sums over iterations. Iterations are in address order whatever computed them.
 */
export interface Trials {
  seed: string;
  design: Design;
  iterations: number;
  /** Length n: days since start, the day its date falls on, money. */
  finish: Float64Array;
  finishDay: Int32Array;
  cost: Float64Array;
  /** By task, length n: moments. */
  starts: Float64Array[];
  finishes: Float64Array[];
  /** By interval, length n: calendar days. */
  intervals: Float64Array[];
  sums: TrialSums;
  /** Length n, when the plan says what lateness costs. */
  lateness: Float64Array | undefined;
  /** When the plan is appraised. */
  worth: WorthRows | undefined;
  /** When the plan has funds, or on request: cost by the end of each month, one row of n per month. */
  months: { months: Months; rows: Float64Array[] } | undefined;
  /** The same draws with people without limit; only when people are limited. */
  unlimited: { finish: Float64Array; cost: Float64Array } | undefined;
}

/** Sums over iterations; added up block by block in address order, so that they do not depend on who computed. */
export interface TrialSums {
  /** By task: iterations in which it was critical, was needed, met its target, was a point. */
  critical: Float64Array;
  needed: Float64Array;
  onTarget: Float64Array;
  points: Float64Array;
  /** By task: realised durations; money. */
  duration: Float64Array;
  taskMoney: Float64Array;
  /** By task: working days its own draw added where it was critical, money its own draw added. */
  ownDays: Float64Array;
  ownMoney: Float64Array;
  /** By entry: working days added to critical tasks, money added. */
  entryDays: Float64Array;
  entryMoney: Float64Array;
  /** By task and link, flattened by `linkOffsets`. */
  lagDays: Float64Array;
  responses: Float64Array;
  overheads: Float64Array;
  /** By pair: sums of x, y, x x, y y, x y of realised durations, five a pair. */
  pairs: Float64Array;
  /** By slot: draws cut at zero. */
  cuts: Float64Array;
}

export function newSums(model: Model): TrialSums {
  const tasks = () => new Float64Array(model.tasks.length);
  const entries = () => new Float64Array(model.register.length);
  return {
    critical: tasks(),
    needed: tasks(),
    onTarget: tasks(),
    points: tasks(),
    duration: tasks(),
    taskMoney: tasks(),
    ownDays: tasks(),
    ownMoney: tasks(),
    entryDays: entries(),
    entryMoney: entries(),
    lagDays: new Float64Array(linkCount(model)),
    responses: new Float64Array(model.responses.length),
    overheads: new Float64Array(model.overheads.length),
    pairs: new Float64Array(5 * model.pairs.length),
    cuts: new Float64Array(model.slots.length),
  };
}

export function linkCount(model: Model): number {
  return model.tasks.reduce((sum, task) => sum + task.links.length, 0);
}

/** into += block, field by field. */
export function addSums(into: TrialSums, block: TrialSums): void {
  for (const name of Object.keys(into) as (keyof TrialSums)[]) {
    const a = into[name];
    const b = block[name];
    for (let i = 0; i < a.length; i++) a[i] = (a[i] as number) + (b[i] as number);
  }
}

import { bytesOfLedger, bytesOfRows, type Kernel, leaveMemory } from "../kernel/index.ts";
import type { Design } from "../sampling/design.ts";
import type { AsWritten } from "./asWritten.ts";
import { blockSize, kernelFor } from "./block.ts";
import type { Model } from "./model.ts";
import { type Months, monthsUpTo } from "./months.ts";
import type { KeptRanks } from "./ranks/index.ts";
import type { SimulateOptions } from "./simulate.ts";
import { bytesOfAppraisal, type WorthRows } from "./worth.ts";

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
  /** By task, length n: moments. None where they would take too much memory: see `moments`. */
  starts: Float64Array[];
  finishes: Float64Array[];
  /** What is kept of moments instead of rows, when these would take more than a quarter of a gigabyte. */
  moments: Moments | undefined;
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

/** What the percentiles of tasks' moments are read from, in memory that grows with the square root of the iterations. */
export interface Moments {
  /** The level read besides P10, P50 and P90. */
  confidence: number;
  /** Iterations of the whole simulation, which several runners may share. */
  total: number;
  /** One of each runner. */
  parts: MomentRanks[];
}
/** Exact order statistics of a moment, days since the start. */
export interface MomentRanks {
  starts: KeptRanks;
  finishes: KeptRanks;
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
  /** By benefit: its discounted worth. */
  benefits: Float64Array;
  /** By slot: draws cut at zero. */
  cuts: Float64Array;
}

/** Up to this much memory is taken for tasks' moments; beyond it only what percentiles are read from is kept. */
const mostForMoments = 250e6;

/** Whether the moments of a simulation are kept iteration by iteration. */
export function keepsMoments(model: Model, iterations: number): boolean {
  return 16 * model.tasks.length * iterations <= mostForMoments;
}

/** Whether finishes alone are: in a kernel that threads share, where starts are had from them. */
export function keepsFinishes(model: Model, iterations: number): boolean {
  return 8 * model.tasks.length * iterations <= mostForMoments;
}

/**
 * Empty trials with rows for all that the model and the options ask to be kept.
 *
 * @param asWritten  Needed only where cost is phased by month.
 * @param where  "in kernel": tasks' moments lie in the memory of the kernel that computes them (`kernelOf`), where there
 *               is room; such trials cannot be handed to another thread. "apart": in one piece of memory of their own.
 *               A kernel: all rows lie in its memory, and there are none of starts, which can be had from the finishes. A buffer of `bytesOfTrials`: in that one, which several threads may share; what it holds stays.
 */
export function newTrials(
  model: Model,
  asWritten: AsWritten | undefined,
  options: SimulateOptions,
  where: "in kernel" | "apart" | SharedArrayBuffer | { kernel: Kernel } = "apart",
): Trials {
  const n = options.iterations ?? model.plan.iterations;
  const total = options.total ?? n;
  const given = typeof where === "object" && "kernel" in where ? where.kernel : undefined;
  const kept = given === undefined ? keepsMoments(model, total) : keepsFinishes(model, total);
  const tasks = kept ? model.tasks.length : 0;
  if (given !== undefined) kernels.set(given.arena.buffer, given);
  const { rows: count, months } = rowsNeeded(model, asWritten, options);
  const kernel =
    given ?? (where === "in kernel" && tasks > 0 ? kernelWithRoom(model, n, 2 * tasks, months) : undefined);
  const moments = kernel === undefined ? 2 * tasks : 0;
  // One piece of memory for all rows: two thousand small ones would cost more than filling them. A page without special
  // headers has no SharedArrayBuffer, so its name is asked for in types only.
  const buffer =
    typeof where === "object" && !("kernel" in where)
      ? where
      : new ArrayBuffer(given === undefined ? (8 * (count + moments) + 4) * n : 0);
  let taken = 0;
  const row = () =>
    given === undefined
      ? new Float64Array(buffer, 8 * n * taken++, n)
      : (given.arena.rows(1, n)[0] as Float64Array);
  const rows = (number: number) => Array.from({ length: number }, row);
  const appraised = isAppraised(model);
  return {
    seed: options.seed ?? model.plan.seed,
    design: options.design ?? "latin-hypercube",
    iterations: n,
    finish: row(),
    finishDay:
      given === undefined
        ? new Int32Array(buffer, 8 * n * (count + moments), n)
        : (given.arena.int32(1, n)[0] as Int32Array),
    cost: row(),
    starts: given === undefined ? (kernel?.arena.rows(tasks, n) ?? rows(tasks)) : [],
    finishes: kernel?.arena.rows(tasks, n) ?? rows(tasks),
    moments:
      tasks > 0 || model.tasks.length === 0
        ? undefined
        : { confidence: options.confidence ?? model.confidence, total, parts: [] },
    intervals: rows(model.intervals.length),
    sums: newSums(model),
    lateness: model.lateness === undefined ? undefined : row(),
    worth: appraised ? { net: row(), payback: row() } : undefined,
    months: months === undefined ? undefined : { months, rows: rows(months.names.length) },
    unlimited: model.limitedPeople ? { finish: row(), cost: row() } : undefined,
  };
}

/** Memory for the rows of trials, tasks' moments included where they are kept. */
export function bytesOfTrials(model: Model, asWritten: AsWritten, options: SimulateOptions): number {
  const n = options.iterations ?? model.plan.iterations;
  const moments = keepsMoments(model, options.total ?? n) ? 2 * model.tasks.length : 0;
  return (8 * (rowsNeeded(model, asWritten, options).rows + moments) + 4) * n;
}

function isAppraised(model: Model): boolean {
  return model.plan.appraisal !== undefined && model.benefits.length > 0;
}

/** Rows of doubles besides tasks' moments, and the months that are phased, if any. */
function rowsNeeded(
  model: Model,
  asWritten: AsWritten | undefined,
  options: SimulateOptions,
): { rows: number; months: Months | undefined } {
  const phased = options.months === true || model.plan.commitment.funds.length > 0;
  const months = phased && asWritten !== undefined ? monthsOf(model, asWritten) : undefined;
  const rows =
    2 +
    model.intervals.length +
    (model.lateness === undefined ? 0 : 1) +
    (isAppraised(model) ? 2 : 0) +
    (months?.names.length ?? 0) +
    (model.limitedPeople ? 2 : 0);
  return { rows, months };
}

// Which kernel rows lie in, by its memory. Trials stay plain data.
const kernels = new WeakMap<ArrayBufferLike, Kernel>();

/** The kernel in whose memory a row lies. */
export function kernelOf(row: Float64Array | undefined): Kernel | undefined {
  return row === undefined ? undefined : kernels.get(row.buffer);
}

/**
 * Leaves the memory in which trials were computed "in kernel" to the next that need about as much (`leaveMemory`). The
 * trials, and whatever was computed with them, must not be used any more; a summary of them may.
 */
export function leaveTrials(trials: Trials): void {
  const kernel = kernelOf(trials.finishes[0]);
  if (kernel === undefined) return;
  kernels.delete(kernel.arena.buffer);
  leaveMemory(kernel);
}

/** A kernel for the blocks of a simulation with room for rows, for reading ranks off them, and for phasing and appraising money. */
function kernelWithRoom(model: Model, n: number, rows: number, months: Months | undefined): Kernel {
  const size = Math.min(n, blockSize);
  const bytes =
    bytesOfRows(rows, n, 8) +
    bytesOfRows(1, n, 4) +
    (isAppraised(model) ? bytesOfAppraisal(model, size) : 0) +
    (months === undefined ? 0 : bytesOfLedger(months, size));
  const kernel = kernelFor(model, size, model.limitedPeople ? 2 : 1, bytes);
  kernels.set(kernel.arena.buffer, kernel);
  return kernel;
}

/** Months enough for twice the plan as written; later money counts to the last. */
function monthsOf(model: Model, asWritten: AsWritten): Months {
  const latest = asWritten.block.finish.reduce((most, row) => Math.max(most, row[0] as number), 0);
  return monthsUpTo(model, 2 * latest + 62);
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
    benefits: new Float64Array(model.benefits.length),
    cuts: new Float64Array(model.slots.length),
  };
}

const linkCounts = new WeakMap<Model, number>();

export function linkCount(model: Model): number {
  let count = linkCounts.get(model);
  if (count === undefined) {
    count = model.tasks.reduce((sum, task) => sum + task.links.length, 0);
    linkCounts.set(model, count);
  }
  return count;
}

/** into += block, field by field. */
export function addSums(into: TrialSums, block: TrialSums): void {
  for (const name of Object.keys(into) as (keyof TrialSums)[]) {
    const a = into[name];
    const b = block[name];
    for (let i = 0; i < a.length; i++) a[i] = (a[i] as number) + (b[i] as number);
  }
}

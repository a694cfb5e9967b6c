import type { Problem } from "../plan/problem.ts";
import type { Design } from "../sampling/design.ts";
import { type AsWritten, planAsWritten } from "./asWritten.ts";
import { type Block, blockSize, newBlock } from "./block.ts";
import { markFinish, markMoving } from "./critical.ts";
import { draws } from "./draws.ts";
import type { Model } from "./model.ts";
import { addMoney, newMoneySums } from "./money.ts";
import { monthsUpTo, phaseMoney } from "./months.ts";
import { newCapacity } from "./people.ts";
import { place } from "./place.ts";
import { realise } from "./realise.ts";
import { tally } from "./tally.ts";
import { addSums, newSums, type TrialSums, type Trials } from "./trials.ts";
import { appraise, lateCost } from "./worth.ts";

export interface SimulateOptions {
  /** Defaults: the plan's. */
  seed?: string;
  iterations?: number;
  design?: Design;
  /** Phase the cost by month even when the plan names no funds. */
  months?: boolean;
  onProgress?: (done: number, total: number) => void;
}

export interface Simulation {
  trials?: Trials;
  asWritten?: AsWritten;
  problems: Problem[];
}

/**
 * Runs the model: n iterations in blocks of 1,024, each draw a function of (seed, item, purpose, iteration).
 *
 * Returns the trials, or the task that runs past the end of its calendar as a problem.
 * Cost: n * (tasks + links) steps of a few nanoseconds; memory 16 bytes * n per task.
 */
export function simulate(model: Model, options: SimulateOptions = {}): Simulation {
  const seed = options.seed ?? model.plan.seed;
  const n = options.iterations ?? model.plan.iterations;
  const design = options.design ?? "latin-hypercube";
  const asWritten = planAsWritten(model);
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(model, asWritten.beyond)] };
  const rows = (count: number) => Array.from({ length: count }, () => new Float64Array(n));
  const trials: Trials = {
    seed,
    design,
    iterations: n,
    finish: new Float64Array(n),
    finishDay: new Int32Array(n),
    cost: new Float64Array(n),
    starts: rows(model.tasks.length),
    finishes: rows(model.tasks.length),
    intervals: rows(model.intervals.length),
    sums: newSums(model),
    lateness: model.lateness === undefined ? undefined : new Float64Array(n),
    worth:
      model.plan.appraisal === undefined || model.benefits.length === 0
        ? undefined
        : {
            net: new Float64Array(n),
            payback: new Float64Array(n),
            benefits: new Float64Array(model.benefits.length),
          },
    months:
      options.months === true || model.plan.commitment.funds.length > 0
        ? monthRows(model, asWritten, n)
        : undefined,
    unlimited: model.limitedPeople ? { finish: new Float64Array(n), cost: new Float64Array(n) } : undefined,
  };
  const source = draws(model, seed, design);
  const block = newBlock(model, Math.min(n, blockSize));
  const free = model.limitedPeople ? freeCopy(block) : undefined;
  for (let first = 0, b = 0; first < n; first += blockSize, b++) {
    block.n = Math.min(blockSize, n - first);
    source.fill(b, block);
    realise(model, block);
    const capacity = model.limitedPeople ? newCapacity(model) : undefined;
    const beyond = place(model, block, asWritten.starts, capacity);
    if (beyond >= 0) return { problems: [beyondCalendar(model, beyond)] };
    const sums = newSums(model);
    const lags = lagViews(model, sums);
    markMoving(model, block, model.limitedPeople, lags);
    const money = newMoneySums(model);
    addMoney(model, block, money);
    tally(model, block, money, { duration: asWritten.bareDurations, money: asWritten.money }, sums);
    addSums(trials.sums, sums);
    keep(model, block, trials, first);
    if (trials.lateness !== undefined) lateCost(model, block, first, trials.lateness);
    if (trials.worth !== undefined) appraise(model, block, first, trials.worth);
    if (trials.months !== undefined)
      phaseMoney(model, block, trials.months.months, first, trials.months.rows);
    if (free !== undefined && trials.unlimited !== undefined) {
      free.n = block.n;
      place(model, free, asWritten.starts, undefined);
      markFinish(model, free);
      addMoney(model, free, newMoneySums(model));
      trials.unlimited.finish.set(free.planFinish.subarray(0, free.n), first);
      trials.unlimited.cost.set(free.cost.subarray(0, free.n), first);
    }
    options.onProgress?.(Math.min(n, first + blockSize), n);
  }
  trials.sums.cuts.set(source.cuts);
  return { trials, asWritten, problems: [] };
}

/** Months enough for twice the plan as written; later money counts to the last. */
function monthRows(model: Model, asWritten: AsWritten, n: number): Trials["months"] {
  const latest = asWritten.block.finish.reduce((most, row) => Math.max(most, row[0] as number), 0);
  const months = monthsUpTo(model, 2 * latest + 62);
  return { months, rows: months.names.map(() => new Float64Array(n)) };
}

/** A block that shares draws and durations with `block` but has moments of its own. */
function freeCopy(block: Block): Block {
  const size = block.planFinish.length;
  const own = (rows: Float64Array[]) => rows.map(() => new Float64Array(size));
  return {
    ...block,
    start: own(block.start),
    finish: own(block.finish),
    moves: block.moves.map(() => new Uint8Array(size)),
    pushed: block.moves.map(() => new Uint8Array(size)),
    planFinish: new Float64Array(size),
    planFinishDay: new Int32Array(size),
    cost: new Float64Array(size),
  };
}

function lagViews(model: Model, sums: TrialSums): Float64Array[] {
  let at = 0;
  return model.tasks.map((task) => {
    const view = sums.lagDays.subarray(at, at + task.links.length);
    at += task.links.length;
    return view;
  });
}

function keep(model: Model, block: Block, trials: Trials, first: number): void {
  const { n } = block;
  trials.finish.set(block.planFinish.subarray(0, n), first);
  trials.finishDay.set(block.planFinishDay.subarray(0, n), first);
  trials.cost.set(block.cost.subarray(0, n), first);
  model.tasks.forEach((_, j) => {
    trials.starts[j]?.set((block.start[j] as Float64Array).subarray(0, n), first);
    trials.finishes[j]?.set((block.finish[j] as Float64Array).subarray(0, n), first);
  });
  model.intervals.forEach((interval, i) => {
    const from = block.finish[interval.from] as Float64Array;
    const to = block.start[interval.to] as Float64Array;
    const row = trials.intervals[i] as Float64Array;
    for (let k = 0; k < n; k++) row[first + k] = (to[k] as number) - (from[k] as number);
  });
}

export function beyondCalendar(model: Model, task: number): Problem {
  const { id } = model.tasks[task] as Model["tasks"][number];
  const index = model.plan.tasks.findIndex((candidate) => candidate.id === id);
  return {
    code: "beyond-calendar",
    severity: "error",
    path: index < 0 ? "tasks" : `tasks: ${id}`,
    received: `task ${id}`,
    rule: "It finds no working day within 366 days, or runs past day 36,525 after the start.",
    remedy: "Give its calendar (and its people) working days, or shorten what it waits for.",
  };
}

import { bytesOfLedger, newLedger } from "../kernel/index.ts";
import type { AsWritten } from "./asWritten.ts";
import { type Block, blockSize, kernelFor, newBlock } from "./block.ts";
import { markFinish, markMoving } from "./critical.ts";
import type { DrawMemory } from "./drawMemory.ts";
import { draws } from "./draws.ts";
import type { Model } from "./model.ts";
import { bytesOfMoments, momentKeeper } from "./momentKeeper.ts";
import { addMoney, newMoneySums } from "./money.ts";
import { phaseMoney } from "./months.ts";
import { newCapacity } from "./people.ts";
import { place } from "./place.ts";
import { programRunner } from "./program/programRunner.ts";
import { realise } from "./realise.ts";
import { tally } from "./tally.ts";
import { kernelOf, newSums, type TrialSums, type Trials } from "./trials.ts";
import { appraise, bytesOfAppraisal, lateCost, newAppraisal } from "./worth.ts";

/** Computes blocks of a simulation, any of them in any order, with one set of rows. */
export interface BlockRunner {
  /**
   * Computes `n` iterations of block `b` into the rows of the trials (others than those it was made for, if given) from
   * place `first` on.
   *
   * Returns the block's sums, or the index of a task that runs past the calendar's end.
   */
  run(b: number, first: number, n: number, into?: Trials): TrialSums | number;
  /**
   * Adds what was kept of moments that have no rows to the trials' `moments`, once all blocks are run: of tasks `from` up
   * to `to`, or of all.
   */
  settle(into: Trials, from?: number, to?: number): void;
}

/** What a simulation takes over from one before it, on the same dice. */
export interface Reuse {
  memory: DrawMemory;
  /** Trials whose moments still hold, except those of tasks that are `reached`. */
  moments?: { reached: Uint8Array; trials: Pick<Trials, "starts" | "finishes"> };
}

/** @param how  "step by step": never by a program, for comparison. */
export function blockRunner(
  model: Model,
  asWritten: AsWritten,
  own: Trials,
  reuse?: Reuse,
  how: "quickest" | "step by step" = "quickest",
): BlockRunner {
  const source = draws(model, own.seed, own.design, {}, reuse?.memory);
  const { moments } = own;
  const size = Math.min(Math.max(own.iterations, moments?.total ?? 0), blockSize);
  const kernel = kernelOf(own.starts[0]);
  const inKernel = kernel !== undefined;
  const blocks = model.limitedPeople ? 2 : 1;
  const block = newBlock(model, size, kernel ?? kernelFor(model, size, blocks, moreRoom(model, own, size)));
  const ledger =
    own.months === undefined ? undefined : newLedger(block.kernel.arena, own.months.months, size);
  const worth = own.worth === undefined ? undefined : newAppraisal(model, block.kernel, size);
  const keeper = moments === undefined ? undefined : momentKeeper(block.kernel, model, moments);
  const programmed =
    how === "quickest" && reuse === undefined && own.months === undefined && own.design === "latin-hypercube"
      ? programRunner(model, asWritten, own, block, inKernel)
      : undefined;
  const free = model.limitedPeople ? freeCopy(block, size) : undefined;
  return {
    run(b, first, n, into = own) {
      block.n = n;
      if (programmed !== undefined) {
        const sums = programmed.run(b, first, n);
        if (typeof sums === "number") return sums;
        if (programmed.reads) {
          if (inKernel) placeInto(block, into, first);
          programmed.finish(block, sums);
        }
        keep(model, block, into, first, inKernel);
        keeper?.absorb(block);
        if (into.lateness !== undefined) lateCost(model, block, first, into.lateness);
        if (into.worth !== undefined && worth !== undefined) {
          appraise(worth, block, first, into.worth, sums.benefits);
        }
        return sums;
      }
      if (inKernel) placeInto(block, into, first);
      source.fill(b, block);
      realise(model, block);
      const capacity = model.limitedPeople ? newCapacity(model) : undefined;
      if (reuse?.moments !== undefined) takeMoments(block, reuse.moments, first);
      const beyond = place(model, block, asWritten.starts, capacity, reuse?.moments?.reached);
      if (beyond >= 0) return beyond;
      const sums = newSums(model);
      markMoving(model, block, model.limitedPeople, lagViews(model, sums));
      const money = newMoneySums(model);
      addMoney(model, block, money);
      tally(model, block, money, { duration: asWritten.bareDurations, money: asWritten.money }, sums);
      keep(model, block, into, first, inKernel);
      keeper?.absorb(block);
      if (into.lateness !== undefined) lateCost(model, block, first, into.lateness);
      if (into.worth !== undefined && worth !== undefined) {
        appraise(worth, block, first, into.worth, sums.benefits);
      }
      if (into.months !== undefined && ledger !== undefined) {
        phaseMoney(model, block, ledger, first, into.months.rows);
      }
      if (free !== undefined && into.unlimited !== undefined) {
        free.n = n;
        place(model, free, asWritten.starts, undefined);
        markFinish(model, free);
        addMoney(model, free, newMoneySums(model));
        into.unlimited.finish.set(free.planFinish.subarray(0, n), first);
        into.unlimited.cost.set(free.cost.subarray(0, n), first);
      }
      sums.cuts.set(source.cuts);
      source.cuts.fill(0);
      return sums;
    },
    settle(into, from, to) {
      if (keeper !== undefined) into.moments?.parts.push(keeper.result(from, to));
    },
  };
}

/** Bytes that trials take in a kernel of the blocks' own, besides these. */
function moreRoom(model: Model, { moments, months, worth }: Trials, size: number): number {
  return (
    (worth === undefined ? 0 : bytesOfAppraisal(model, size)) +
    (moments === undefined ? 0 : bytesOfMoments(model, moments)) +
    (months === undefined ? 0 : bytesOfLedger(months.months, size))
  );
}

/** A block that shares draws and durations with `block` but has moments of its own. */
function freeCopy(block: Block, size: number): Block {
  const { arena } = block.kernel;
  const tasks = block.start.length;
  const [planFinish, cost] = arena.rows(2, size) as [Float64Array, Float64Array];
  return {
    ...block,
    start: arena.rows(tasks, size),
    finish: arena.rows(tasks, size),
    moves: arena.bytes(tasks, size),
    pushed: arena.bytes(tasks, size),
    planFinish,
    planFinishDay: new Int32Array(size),
    cost,
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

/** Copies the moments of tasks that stand where they stood. */
function takeMoments(block: Block, { reached, trials }: NonNullable<Reuse["moments"]>, first: number): void {
  const end = first + block.n;
  for (let j = 0; j < reached.length; j++) {
    if (reached[j] === 1) continue;
    block.start[j]?.set((trials.starts[j] as Float64Array).subarray(first, end));
    block.finish[j]?.set((trials.finishes[j] as Float64Array).subarray(first, end));
  }
}

/** Lets the block's moments be written where they are kept. */
function placeInto(block: Block, trials: Trials, first: number): void {
  const end = first + block.n;
  for (let j = 0; j < block.start.length; j++) {
    block.start[j] = (trials.starts[j] as Float64Array).subarray(first, end);
    block.finish[j] = (trials.finishes[j] as Float64Array).subarray(first, end);
  }
}

function keep(model: Model, block: Block, trials: Trials, first: number, inKernel: boolean): void {
  const { n } = block;
  trials.finish.set(block.planFinish.subarray(0, n), first);
  trials.finishDay.set(block.planFinishDay.subarray(0, n), first);
  trials.cost.set(block.cost.subarray(0, n), first);
  if (!inKernel) {
    for (let j = 0; j < trials.starts.length; j++) {
      trials.starts[j]?.set((block.start[j] as Float64Array).subarray(0, n), first);
      trials.finishes[j]?.set((block.finish[j] as Float64Array).subarray(0, n), first);
    }
  }
  model.intervals.forEach((interval, i) => {
    const from = block.finish[interval.from] as Float64Array;
    const to = block.start[interval.to] as Float64Array;
    const row = trials.intervals[i] as Float64Array;
    for (let k = 0; k < n; k++) row[first + k] = (to[k] as number) - (from[k] as number);
  });
}

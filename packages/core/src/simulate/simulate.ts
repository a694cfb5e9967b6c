import type { Problem } from "../plan/problem.ts";
import type { Design } from "../sampling/design.ts";
import { type AsWritten, planAsWritten } from "./asWritten.ts";
import { beyondCalendar } from "./beyondCalendar.ts";
import type { Reuse } from "./blockRunner.ts";
import { drawMemory } from "./drawMemory.ts";
import { type KeptDraws, newKeptDraws, sameDice } from "./keptDraws.ts";
import type { Model } from "./model.ts";
import { reachedTasks } from "./reached.ts";
import { runBlocks } from "./runBlocks.ts";
import { addSums, newTrials, type TrialSums, type Trials } from "./trials.ts";

/** How many futures, from which seed, by which design. */
export interface SimulateOptions {
  /** Defaults: the plan's. */
  seed?: string;
  iterations?: number;
  design?: Design;
  /** Phase the cost by month even when the plan names no funds. */
  months?: boolean;
  /** The level that is read besides P10, P50 and P90 where moments are not kept row by row. Default: the plan's. */
  confidence?: number;
  /** Iterations of the whole, when this is a stretch of it that is computed apart. */
  total?: number;
  /** Keeps what the next simulation of this plan, changed a little, can take over: see `previous`. */
  keep?: boolean;
  /**
   * An earlier simulation that was asked to keep. What did not change is taken over: draws, and the moments of tasks
   * that no change reaches. The result is that of a simulation from scratch, to the bit.
   */
  previous?: Simulation;
  onProgress?: (done: number, total: number) => void;
}

/** A finished run: model, plan as written and every future's figures. */
export interface Simulation {
  trials?: Trials;
  asWritten?: AsWritten;
  problems: Problem[];
  /** What was kept, when asked for: 8 bytes per estimate, event and iteration. */
  kept?: Kept;
}

/** Opaque: what one simulation leaves to the next. */
export interface Kept {
  readonly model: Model;
  readonly draws: KeptDraws;
}

/**
 * Runs the model: n iterations in blocks of 1,024, each draw a function of (seed, item, purpose, iteration).
 *
 * Returns the trials, or the task that runs past the end of its calendar as a problem.
 * Cost: n * (tasks + links) steps of a few nanoseconds; memory 16 bytes * n per task up to a quarter of a gigabyte, from
 * there on about 300 bytes * sqrt(n) per task; and 24 bytes * n.
 */
export function simulate(model: Model, options: SimulateOptions = {}): Simulation {
  const asWritten = planAsWritten(model);
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(model, asWritten.beyond)] };
  const trials = newTrials(model, asWritten, options, "in kernel");
  const kept =
    options.keep === true || options.previous !== undefined
      ? { model, draws: newKeptDraws(trials.seed, trials.design, trials.iterations) }
      : undefined;
  let done = 0;
  const onBlock = (sums: TrialSums, iterations: number) => {
    addSums(trials.sums, sums);
    done += iterations;
    options.onProgress?.(done, trials.iterations);
  };
  const reuse = kept === undefined ? undefined : reuseOf(kept, asWritten, options.previous);
  const beyond = runBlocks(model, asWritten, trials, 0, onBlock, reuse);
  if (beyond >= 0) return { problems: [beyondCalendar(model, beyond)] };
  return { trials, asWritten, problems: [], ...(kept === undefined ? {} : { kept }) };
}

/** What is taken over from the simulation before, and where its successor finds what it may take over. */
function reuseOf({ model, draws }: Kept, asWritten: AsWritten, previous: Simulation | undefined): Reuse {
  const before = previous?.kept;
  const memory = drawMemory(model, draws, before?.draws);
  const { trials, asWritten: written } = previous ?? {};
  if (before === undefined || trials === undefined || written === undefined) return { memory };
  if (!sameDice(before.draws, draws) || trials.moments !== undefined) return { memory };
  const reached = reachedTasks({ model: before.model, asWritten: written }, { model, asWritten });
  return reached === undefined ? { memory } : { memory, moments: { reached, trials } };
}

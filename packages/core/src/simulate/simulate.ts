import type { Problem } from "../plan/problem.ts";
import type { Design } from "../sampling/design.ts";
import { type AsWritten, planAsWritten } from "./asWritten.ts";
import { beyondCalendar } from "./beyondCalendar.ts";
import type { Model } from "./model.ts";
import { runBlocks } from "./runBlocks.ts";
import { addSums, newTrials, type Trials } from "./trials.ts";

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
  const asWritten = planAsWritten(model);
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(model, asWritten.beyond)] };
  const trials = newTrials(model, asWritten, options, "in kernel");
  let done = 0;
  const beyond = runBlocks(model, asWritten, trials, 0, (sums, iterations) => {
    addSums(trials.sums, sums);
    done += iterations;
    options.onProgress?.(done, trials.iterations);
  });
  if (beyond >= 0) return { problems: [beyondCalendar(model, beyond)] };
  return { trials, asWritten, problems: [] };
}

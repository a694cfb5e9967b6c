import {
  compile,
  type Plan,
  planAsWritten,
  type SimulateOptions,
  type Simulation,
  simulate,
} from "@leeway/core";
import { withCrew } from "./crew.ts";
import type { ParallelOptions } from "./options.ts";
import { simulationPerThread, threadsFor, workOf } from "./share.ts";
import { simulateOn } from "./simulateOn.ts";

/**
 * `simulate(compile(plan), options)` on several threads: the same result, to the bit, however many there are.
 * Small work, and all work where no thread can be had, is done on the caller's thread.
 *
 * Rejects with the signal's reason when aborted, and with the error of a thread that broke; then no thread of
 * the run is left. Memory: that of `simulate`, and for each thread what it keeps of moments that have no rows and up to
 * 128 MB on their way.
 */
export async function simulateInParallel(
  plan: Plan,
  options: SimulateOptions & ParallelOptions = {},
): Promise<Simulation> {
  const { pool, signal } = options;
  signal?.throwIfAborted();
  const n = options.iterations ?? plan.iterations;
  const threads = threadsFor(workOf(plan, n), n, options, simulationPerThread);
  if (pool !== undefined && threads > 0) {
    const run = await withCrew({ pool, threads, plan, options }, (crew) => {
      const model = compile(plan); // while the threads start
      return simulateOn(crew, model, planAsWritten(model), options);
    });
    if (run !== undefined) return run;
  }
  return simulate(compile(plan), options);
}

import { blockSize, type Plan } from "@leeway/core";
import type { ParallelOptions } from "./options.ts";

/**
 * Work that pays for a thread of its own, in task-iterations. Measured on two cores, Node 20 (tests/bench/threads.md):
 * starting threads, compiling there and warming up costs 150-250 ms; a task-iteration costs about 50 ns.
 */
const workPerThread = 3_000_000;

/** Placing on limited people costs about this many times as much. */
const peopleFactor = 4;

/** Memory that one stretch may take before it is handed over. */
const stretchBytes = 128e6;

/** Stretches per thread: enough that a thread that starts late or is held up does not keep the others waiting. */
const stretchesPerThread = 4;

/** Blocks in a stretch at least, where there are as many for each thread: beginning a stretch costs half a block. */
const leastBlocks = 8;

/** A rough measure of a simulation: tasks times iterations, limited people counted in. */
export function workOf(plan: Plan, iterations: number): number {
  const limited = plan.respectCapacity && plan.tasks.some((task) => task.people.length > 0);
  return plan.tasks.length * iterations * (limited ? peopleFactor : 1);
}

/** How many times a simulation's work a tornado is: two partial re-runs for each range and each register entry. */
export function tornadoFactor(plan: Plan): number {
  const ranges = plan.tasks.reduce(
    (sum, { duration, effort, remaining, cost, costPerDay }) =>
      sum +
      [duration, effort, remaining, cost, costPerDay].filter((e) => e !== undefined && e.kind !== "fixed")
        .length,
    0,
  );
  return ranges + plan.risks.length + plan.assumptions.length;
}

/** Threads to use; 0: the caller's own is best. */
export function threadsFor(work: number, iterations: number, options: ParallelOptions): number {
  const { pool, aside = false, workPerThread: least = workPerThread } = options;
  if (pool === undefined) return 0;
  const paid = least > 0 ? Math.floor(work / least) : Number.POSITIVE_INFINITY;
  const blocks = Math.ceil(iterations / blockSize);
  const threads = Math.min(options.workers ?? pool.cores, blocks, paid);
  if (threads >= 2) return threads;
  return aside && paid >= 1 ? 1 : 0;
}

export interface Stretch {
  fromBlock: number;
  iterations: number;
}

/** Cuts n iterations into stretches of whole blocks (the last block may be short), in address order. */
export function stretchesOf(n: number, threads: number, bytesPerIteration: number): Stretch[] {
  const blocks = Math.ceil(n / blockSize);
  const most = Math.max(1, Math.floor(stretchBytes / (bytesPerIteration * blockSize)));
  const least = Math.min(leastBlocks, Math.ceil(blocks / threads));
  const size = Math.min(most, Math.max(least, Math.ceil(blocks / (threads * stretchesPerThread))));
  const stretches: Stretch[] = [];
  for (let fromBlock = 0; fromBlock < blocks; fromBlock += size) {
    const first = fromBlock * blockSize;
    stretches.push({ fromBlock, iterations: Math.min(size * blockSize, n - first) });
  }
  return stretches;
}

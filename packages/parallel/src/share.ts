import { blockSize, type Plan } from "@leeway/core";
import type { ParallelOptions } from "./options.ts";

/**
 * Work that pays for a thread of its own, in task-iterations of about 50 ns. Measured on Node 20, two cores: starting
 * threads, compiling in each, warming up and handing over costs 200 ms (100 tasks) to 350 ms (1,000 tasks), so two threads
 * begin to pay where one needs 0.4 to 0.7 s; what is below twice this stays where it is.
 */
const workPerThread = 8_000_000;

/**
 * The same for a simulation, whose threads also share what their memory can carry: 30 million take 1.9 s on one thread and
 * 2.2 s on two, 100 million 2.9 s on either.
 */
export const simulationPerThread = 40_000_000;

/** What placing on limited people adds to a task's share: 100 and 1,000 tasks took 2 to 3 times as long. */
const peopleFactor = 2.5;

/** An item of the tornado in simulations: two re-runs of the part it reaches, without marks and sums. */
const itemFactor = 0.15;

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

/** Work from which helpers in shared memory pay, if they are there already. */
const leastShared = 1_000_000;

/** Helpers worth starting for so many task-iterations in shared memory (`simulateShared`). */
export function sharersFor(work: number, iterations: number, options: ParallelOptions): number {
  const { pool, workers, workPerThread, together } = options;
  if (pool?.shares !== true || together === true || workPerThread !== undefined) return 0;
  if (work < leastShared) return 0;
  return Math.min(workers ?? pool.cores, Math.ceil(iterations / blockSize), mostSharers + 1) - 1;
}

/** More would wait for each other. */
const mostSharers = 7;

/** How many simulations' work a tornado is, from the number of ranges and register entries. */
export function tornadoFactor(plan: Plan): number {
  const ranges = plan.tasks.reduce(
    (sum, { duration, effort, remaining, cost, costPerDay }) =>
      sum +
      [duration, effort, remaining, cost, costPerDay].filter((e) => e !== undefined && e.kind !== "fixed")
        .length,
    0,
  );
  return itemFactor * (ranges + plan.risks.length + plan.assumptions.length);
}

/**
 * Threads to use; 0: the caller's own is best.
 *
 * @param perThread  Work that pays for a second thread and each further one, where that is more than for the first.
 */
export function threadsFor(
  work: number,
  iterations: number,
  options: ParallelOptions,
  perThread = workPerThread,
): number {
  const { pool, aside = false, workPerThread: given } = options;
  if (pool === undefined) return 0;
  if (work < 2 * (given ?? workPerThread)) return 0;
  const least = given ?? perThread;
  const paid = least > 0 ? Math.floor(work / least) : Number.POSITIVE_INFINITY;
  const blocks = Math.ceil(iterations / blockSize);
  const threads = Math.min(options.workers ?? pool.cores, blocks, paid);
  return threads >= 2 || aside ? Math.max(1, threads) : 0;
}

/**
 * Helpers that share memory with the caller, who computes too; 0: none. Only where `together` asks for it: on two cores
 * that share what their memory can carry, 1,000 tasks x 10,000 took 0.54 s so, and 0.45 s on one thread.
 */
export function helpersFor(iterations: number, { pool, workers, together }: ParallelOptions): number {
  if (pool?.shares !== true || together !== true) return 0;
  return Math.min(workers ?? pool.cores, Math.ceil(iterations / blockSize)) - 1;
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

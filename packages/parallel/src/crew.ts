import type { Plan } from "@leeway/core";
import type { Helper } from "./helper.ts";
import type { RunOptions } from "./messages.ts";
import type { ParallelOptions } from "./options.ts";
import type { Pool } from "./pool.ts";

/** What a crew is told before it works. */
export interface Task {
  pool: Pool;
  threads: number;
  plan: Plan;
  options: RunOptions & Pick<ParallelOptions, "signal">;
}

/**
 * Takes threads from the pool, tells them the plan, lets them work, and gives them back. When the work fails or
 * is aborted the threads are ended first, so that nothing is left running when the promise rejects.
 */
export async function withCrew<T>(task: Task, work: (crew: readonly Helper[]) => Promise<T>): Promise<T> {
  const { pool, threads, plan, options } = task;
  const { signal, seed, design, months, confidence } = options;
  signal?.throwIfAborted();
  const crew = pool.take(threads);
  let abort = (): void => {};
  const aborted = new Promise<never>((_, reject) => {
    abort = () => reject(signal?.reason);
  });
  signal?.addEventListener("abort", abort, { once: true });
  try {
    const told = {
      ...(seed === undefined ? {} : { seed }),
      ...(design === undefined ? {} : { design }),
      ...(months === undefined ? {} : { months }),
      ...(confidence === undefined ? {} : { confidence }),
    };
    for (const helper of crew) helper.tell({ kind: "plan", plan, options: told });
    const result = await Promise.race([work(crew), aborted]);
    pool.giveBack(crew);
    // Those that could not be started are seen off too.
    await Promise.all(crew.filter(({ alive }) => !alive).map((helper) => helper.end()));
    return result;
  } catch (error) {
    await Promise.all(crew.map((helper) => helper.end()));
    throw error;
  } finally {
    signal?.removeEventListener("abort", abort);
  }
}

/**
 * Has jobs done by whoever is free, in order. Threads that could not be started are passed over.
 *
 * @returns false when no thread could be had: no job was begun.
 */
export async function shareOut<Job>(
  crew: readonly Helper[],
  jobs: readonly Job[],
  work: (helper: Helper, job: Job) => Promise<void>,
): Promise<boolean> {
  let next = 0;
  let done = 0;
  let finish = (_: boolean): void => {};
  // Whoever is still starting when the last job is done is not waited for.
  const allDone = new Promise<boolean>((resolve) => {
    finish = resolve;
  });
  const everyone = Promise.all(
    crew.map(async (helper) => {
      if (!(await helper.ready)) return;
      while (next < jobs.length) {
        const job = jobs[next++] as Job; // in bounds: just checked
        await work(helper, job);
        done++;
      }
      if (done === jobs.length) finish(true);
    }),
  );
  return Promise.race([allDone, everyone.then(() => done === jobs.length)]);
}

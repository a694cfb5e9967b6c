import type { Pool } from "./pool.ts";

/** How a run is shared out. None of it changes a digit of the answer. */
export interface ParallelOptions {
  /** Where threads come from; without it everything runs on the caller's thread. */
  pool?: Pool;
  /** Threads at most. Default: the cores. Small work takes fewer, or none. */
  workers?: number;
  /**
   * Keeps large work off the caller's thread even when one thread is all there is to gain: a page stays alive,
   * a signal is heard.
   */
  aside?: boolean;
  /**
   * The caller's thread computes too, in memory that it shares with its helpers, where the pool can share: nothing is
   * handed over, and nobody waits for a thread that starts. Default: false.
   */
  together?: boolean;
  /** Aborting ends the threads at once; the promise rejects with the signal's reason. */
  signal?: AbortSignal;
  /** Work that pays for a thread, in the unit of `workOf`. Default: measured, see share.ts. 0 shares out everything. */
  workPerThread?: number;
}

import { spareMemory } from "@leeway/core";
import { type Helper, startHelper } from "./helper.ts";
import type { StartThread } from "./thread.ts";

/** Threads, started when first wanted and kept for the next run. */
export interface Pool {
  /** Processor cores there are: as many threads are worth having. */
  readonly cores: number;
  /** Whether threads and caller can share memory. */
  readonly shares: boolean;
  /**
   * Starts threads that will be wanted, as far as so many are not resting yet; they practise meanwhile, and make memory
   * ready for the next run.
   *
   * @param room  Bytes that it may need, roughly; 0: it is not known.
   */
  prepare(count: number, room?: number): void;
  /** That many threads, resting ones first. */
  take(count: number): Helper[];
  /** Threads whose work is done and who may be asked again. */
  giveBack(helpers: readonly Helper[]): void;
  /** Ends the resting threads; the pool can be used again. */
  close(): Promise<void>;
}

/**
 * @param start  `nodeThread` or `webThread`, or another way to have work done aside.
 * @param cores  From `os.availableParallelism()` or `navigator.hardwareConcurrency`.
 * @param shares Whether a SharedArrayBuffer can be posted to such a thread: in a page only under special headers.
 */
export function createPool(start: StartThread, cores: number, shares = false): Pool {
  let resting: Helper[] = [];
  return {
    cores,
    shares,
    prepare(count, room = 0) {
      resting = resting.filter(({ alive }) => alive);
      while (resting.length < count) {
        const helper = startHelper(start);
        if (shares) helper.tell({ kind: "practise" });
        helper.rest(true);
        resting.push(helper);
      }
      const memory = shares && room > 0 && count > 0 ? spareMemory(room) : undefined;
      if (memory !== undefined) resting[0]?.tell({ kind: "touch", memory });
    },
    take(count) {
      resting = resting.filter(({ alive }) => alive);
      const taken = resting.splice(0, count);
      for (const helper of taken) helper.rest(false);
      while (taken.length < count) taken.push(startHelper(start));
      return taken;
    },
    giveBack(helpers) {
      for (const helper of helpers.filter(({ alive }) => alive)) {
        helper.tell({ kind: "forget" });
        helper.rest(true);
        resting.push(helper);
      }
    },
    async close() {
      const ended = resting;
      resting = [];
      await Promise.all(ended.map((helper) => helper.end()));
    },
  };
}

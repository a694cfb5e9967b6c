import { bytesOfSharedPieces, sharePieces } from "@leeway/core";
import { type Helper, startHelper } from "./helper.ts";
import type { StartThread } from "./thread.ts";

/** Threads, started when first wanted and kept for the next run. */
export interface Pool {
  /** Processor cores there are: as many threads are worth having. */
  readonly cores: number;
  /** Whether threads and caller can share memory. */
  readonly shares: boolean;
  /**
   * Starts that many threads ahead of the work; they get ready and rest until they are taken. `pieces`: memory that
   * `sharePieces` of core was given.
   */
  warm(count: number, pieces?: SharedArrayBuffer): void;
  /** That many threads, resting ones first. */
  take(count: number): Helper[];
  /** Threads whose work is done and who may be asked again. */
  giveBack(helpers: readonly Helper[]): void;
  /** Ends the resting threads; the pool can be used again. */
  close(): Promise<void>;
}

/** Memory for what tables are made from, made by whoever needs it first. */
function sharedPieces(): SharedArrayBuffer {
  const pieces = new SharedArrayBuffer(bytesOfSharedPieces);
  sharePieces(pieces);
  return pieces;
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
    warm(count, given) {
      const pieces = shares && count > 0 ? (given ?? sharedPieces()) : undefined;
      while (resting.length < count) {
        const helper = startHelper(start);
        helper.tell({ kind: "warm", pieces });
        helper.rest(true);
        resting.push(helper);
      }
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

import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { FromThread } from "./messages.ts";
import { createPool, type Pool } from "./pool.ts";
import type { Listener, Thread } from "./thread.ts";

/**
 * Threads of Node.
 *
 * @param file  nodeWorker.ts as built: Node runs JavaScript only.
 */
export function nodePool(file: URL): Pool {
  return createPool((listener) => nodeThread(file, listener), availableParallelism(), true);
}

function nodeThread(file: URL, { message, lost }: Listener): Thread {
  const worker = new Worker(file);
  worker.on("message", (said: FromThread) => message(said));
  worker.on("error", lost);
  worker.on("messageerror", lost);
  worker.on("exit", (code) => lost(new Error(`The thread ended with code ${code}.`)));
  return {
    post: (request, transfer) => worker.postMessage(request, transfer),
    end: async () => {
      await worker.terminate();
    },
    rest: (resting) => (resting ? worker.unref() : worker.ref()),
  };
}

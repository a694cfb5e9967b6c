import type { FromThread, ToThread } from "./messages.ts";
import { createPool, type Pool } from "./pool.ts";
import type { Listener, Thread } from "./thread.ts";

/** Threads of a page: module workers, messages and handed-over memory; no shared memory, so no special headers. */
export function webPool(): Pool {
  return createPool(webThread, navigator.hardwareConcurrency);
}

function webThread({ message, lost }: Listener): Thread {
  // The address is written out so that the build finds and bundles the worker.
  const worker = new Worker(new URL("./webWorker.ts", import.meta.url), { type: "module", name: "leeway" });
  worker.onmessage = (event: MessageEvent<FromThread>) => message(event.data);
  worker.onerror = (event) => lost(new Error(event.message || "The thread could not be started."));
  worker.onmessageerror = () => lost(new Error("The thread's answer could not be read."));
  return {
    post: (request: ToThread, transfer) => worker.postMessage(request, transfer),
    end: async () => worker.terminate(),
    rest: () => {},
  };
}

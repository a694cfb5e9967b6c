import { createPool, type FromThread, type Listener, type Pool, type Thread } from "@leeway/parallel";

/** Threads for large plans: module workers and memory that is handed over, so the page needs no special headers. */
export function threadPool(): Pool {
  return createPool(startThread, navigator.hardwareConcurrency);
}

function startThread({ message, lost }: Listener): Thread {
  // The address is written out so that the build finds and bundles the worker.
  const worker = new Worker(new URL("./threadWorker.ts", import.meta.url), {
    type: "module",
    name: "thread",
  });
  worker.onmessage = (event: MessageEvent<FromThread>) => message(event.data);
  worker.onerror = (event) => lost(new Error(event.message || "The thread could not be started."));
  worker.onmessageerror = () => lost(new Error("The thread's answer could not be read."));
  return {
    post: (request, transfer) => worker.postMessage(request, transfer),
    end: async () => worker.terminate(),
    rest: () => {},
  };
}

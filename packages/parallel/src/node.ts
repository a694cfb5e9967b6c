import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { FromThread, ToThread } from "./messages.ts";
import { createPool, type Pool } from "./pool.ts";
import type { Listener, Thread } from "./thread.ts";

export type { ToThread };

/** What is needed of a `Worker` of Node; written out, as a program that uses this need not have Node's types. */
export interface NodeWorker {
  on(event: "message", listener: (said: FromThread) => void): unknown;
  on(event: "error", listener: (error: Error) => void): unknown;
  on(event: "messageerror", listener: (error: Error) => void): unknown;
  on(event: "exit", listener: (code: number) => void): unknown;
  removeAllListeners(event: "message" | "error"): unknown;
  postMessage(message: unknown, transfer?: readonly ArrayBuffer[]): void;
  terminate(): Promise<unknown>;
  ref(): void;
  unref(): void;
}

/** A thread that somebody started before there was a pool, with what it said and why it was lost, if it was, until now. */
export interface StartedThread {
  worker: NodeWorker;
  said: FromThread[];
  lost: Error[];
}

/**
 * Threads of Node.
 *
 * @param file     nodeWorker.ts as built: Node runs JavaScript only.
 * @param started  The first of them.
 */
export function nodePool(file: URL, started?: StartedThread): Pool {
  let first = started;
  const start = (listener: Listener): Thread => {
    const worker: NodeWorker = first?.worker ?? new Worker(file);
    // By name: a Worker listens to itself too, to know when it is listened to.
    first?.worker.removeAllListeners("message");
    first?.worker.removeAllListeners("error");
    const thread = nodeThread(worker, listener);
    first?.said.forEach(listener.message);
    first?.lost.forEach(listener.lost);
    first = undefined;
    return thread;
  };
  return createPool(start, availableParallelism(), true);
}

function nodeThread(worker: NodeWorker, { message, lost }: Listener): Thread {
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

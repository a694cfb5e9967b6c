import { statSync } from "node:fs";
import { Worker } from "node:worker_threads";
import type { StartedThread, ToThread } from "@leeway/parallel/node";

export type Ahead = StartedThread;

/** Bytes of a plan of some two hundred tasks. */
export const longText = 40_000;

/**
 * Starts the thread that a call will want as far as can be told from its words alone: a forecast of a long plan, on more
 * than one thread. It starts while the program itself is read, which takes as long. Never throws.
 */
export function helpAhead(words: readonly string[], file: URL): Ahead | undefined {
  const [verb, plan] = words;
  if (verb !== "forecast" || plan === undefined || words.some((word) => word.startsWith("--workers"))) return;
  try {
    if (statSync(plan).size < longText) return;
    const worker = new Worker(file);
    const ahead: Ahead = { worker, said: [], lost: [] };
    worker.on("message", (said) => ahead.said.push(said));
    worker.on("error", (error) => ahead.lost.push(error));
    worker.postMessage({ kind: "practise" } satisfies ToThread);
    worker.unref();
    return ahead;
  } catch {
    // The program says in words what is wrong with the plan; without a thread it does alone.
    return undefined;
  }
}

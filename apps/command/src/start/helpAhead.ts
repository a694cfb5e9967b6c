import { readFileSync, statSync } from "node:fs";
import { Worker } from "node:worker_threads";
import type { StartedThread, ToThread } from "@leeway/parallel/node";
import { roughTasks } from "./roughTasks.ts";

export type Ahead = StartedThread;

/**
 * Tasks from which a thread started ahead shortens the command, at 10,000 iterations: one of 100 by a sixth, one of 300 by
 * half of its computing. With the forty of the examples a start costs what it brings.
 */
export const manyTasks = 80;

/** Bytes of the shortest text that could name so many, and of one that surely does. */
const shortest = 4_000;
const longest = 250_000;

/**
 * Starts the thread that a call will want as far as can be told from its words alone: a forecast of a long plan, on more
 * than one thread. It starts while the program itself is read, which takes as long. Never throws.
 */
export function helpAhead(words: readonly string[], file: URL): Ahead | undefined {
  const [verb, plan] = words;
  if (verb !== "forecast" || plan === undefined || words.some((word) => word.startsWith("--workers"))) return;
  try {
    if (!isLarge(plan)) return;
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

function isLarge(plan: string): boolean {
  const { size } = statSync(plan);
  if (size < shortest || size > longest) return size > longest;
  return roughTasks(readFileSync(plan, "utf8")) >= manyTasks;
}

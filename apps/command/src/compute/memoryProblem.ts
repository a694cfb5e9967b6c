import { totalmem } from "node:os";
import type { Problem } from "@leeway/core";

/** Two numbers of eight bytes in every future: what `simulate` keeps of a task, as long as that is little. */
const BYTES = 16;
/** The rest is for everything else on the machine. */
const PART = 0.6;

/**
 * The problem of a run that would not fit into memory, instead of a crash half-way.
 *
 * @returns undefined where it fits
 */
export function memoryProblem(tasks: number, iterations: number): Problem | undefined {
  const limit = process.constrainedMemory();
  const memory = limit !== undefined && limit > 0 ? Math.min(totalmem(), limit) : totalmem();
  const needed = tasks * iterations * BYTES;
  if (needed <= memory * PART) return undefined;
  const gigabytes = (bytes: number) => (bytes / 1e9).toPrecision(2);
  const most = Math.floor((memory * PART) / (tasks * BYTES) / 1000) * 1000;
  return {
    code: "too-large",
    severity: "error",
    path: "iterations",
    received: String(iterations),
    rule: `That many futures need ${gigabytes(needed)} GB of ${gigabytes(memory)} GB of memory.`,
    remedy: `Ask for at most ${most}.`,
  };
}

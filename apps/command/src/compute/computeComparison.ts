import type { ComparedProblem, CompareOptions, Comparison, Plan } from "@leeway/core";
import { compareInParallel } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { memoryProblem } from "./memoryProblem.ts";
import { progressLine } from "./progressLine.ts";

/** Rows of n values at once, on every thread: outcomes and what is read from them; counted as `memoryProblem` does. */
const ROWS_AS_TASKS = 16;

/** The file the build puts beside the command's own. */
const worker = new URL("./worker.mjs", import.meta.url);

export interface ComparisonJob {
  oldPlan: Plan;
  newPlan: Plan;
  options: CompareOptions;
  /** Threads at most; default: the cores. */
  workers?: number;
}
/** `comparison` is absent when a problem is an error. */
export interface ComparisonAnswer {
  comparison?: Comparison;
  problems: ComparedProblem[];
}

/** Two plans in, what moved out; on threads, so that it is quick and a signal is heard while it runs. */
export async function computeComparison({
  oldPlan,
  newPlan,
  options,
  workers,
}: ComparisonJob): Promise<ComparisonAnswer> {
  const tooLarge = memoryProblem(ROWS_AS_TASKS, options.iterations ?? newPlan.iterations);
  if (tooLarge !== undefined) return { problems: [{ ...tooLarge, of: "new" }] };
  const line = progressLine();
  const result = await compareInParallel(oldPlan, newPlan, {
    ...options,
    ...(workers === undefined ? {} : { workers }),
    pool: nodePool(worker),
    aside: true,
    onProgress: line.show,
  });
  line.clear();
  return result;
}

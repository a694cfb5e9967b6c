import { type ExplainOptions, type Explanation, type Problem, readPlan, scenarioNotes } from "@leeway/core";
import { explainInParallel } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { memoryProblem } from "./memoryProblem.ts";
import { progressLine } from "./progressLine.ts";

/** Rows of n values at once, on every thread: outcomes and what is read from them; counted as `memoryProblem` does. */
const ROWS_AS_TASKS = 16;

/** The file the build puts beside the command's own. */
const worker = new URL("./worker.mjs", import.meta.url);

export interface ExplanationJob {
  text: string;
  options: ExplainOptions;
  /** Threads at most; default: the cores. */
  workers?: number;
}
/** `explanation` is absent when a problem is an error. */
export interface ExplanationAnswer {
  explanation?: Explanation;
  problems: Problem[];
}

/** Plan text in, explanation out; on threads, so that it is quick and a signal is heard while it runs. */
export async function computeExplanation({
  text,
  options,
  workers,
}: ExplanationJob): Promise<ExplanationAnswer> {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) return { problems };
  const tooLarge = memoryProblem(ROWS_AS_TASKS, options.iterations ?? plan.iterations);
  if (tooLarge !== undefined) return { problems: [...problems, tooLarge] };
  const line = progressLine();
  const result = await explainInParallel(plan, {
    ...options,
    ...(workers === undefined ? {} : { workers }),
    pool: nodePool(worker),
    aside: true,
    onProgress: line.show,
  });
  line.clear();
  return { ...result, problems: [...problems, ...scenarioNotes(plan, options), ...result.problems] };
}

import { type Forecast, type ForecastOptions, type Plan, type Problem, scenarioNotes } from "@leeway/core";
import { forecastInParallel } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { memoryProblem } from "../compute/memoryProblem.ts";
import { takePieces } from "../compute/pieces.ts";
import { progressLine } from "../compute/progressLine.ts";

/** Rows of finish and cost, their sorted copies, and the tasks kept. */
const ROWS_AS_TASKS = 8;

/** The file the build puts beside the command's own. */
const worker = new URL("./worker.mjs", import.meta.url);

/** Forecasts of several plans on the same draws, one after the other; none where a problem is an error. */
export async function forecastEach(
  plans: readonly Plan[],
  options: ForecastOptions,
): Promise<{ forecasts?: Forecast[]; problems: Problem[] }> {
  const forecasts: Forecast[] = [];
  const [first] = plans;
  const problems: Problem[] = first === undefined ? [] : [...scenarioNotes(first, options)];
  const line = progressLine();
  takePieces();
  const pool = nodePool(worker);
  for (const plan of plans) {
    const iterations = options.iterations ?? plan.iterations;
    const tooLarge = memoryProblem(ROWS_AS_TASKS + plan.tasks.length, iterations);
    if (tooLarge !== undefined) return { problems: [...problems, tooLarge] };
    const result = await forecastInParallel(plan, { ...options, pool, aside: true, onProgress: line.show });
    line.clear();
    if (plan === first || result.forecast === undefined) problems.push(...result.problems);
    if (result.forecast === undefined) return { problems };
    forecasts.push(result.forecast);
  }
  return { forecasts, problems };
}

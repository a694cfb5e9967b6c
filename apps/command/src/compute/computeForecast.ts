import { type Forecast, type ForecastOptions, type Problem, readPlan, scenarioNotes } from "@leeway/core";
import { forecastInParallel } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { manyTasks } from "../start/helpAhead.ts";
import { roughTasks } from "../start/roughTasks.ts";
import { takeUp } from "../start/takeUp.ts";
import { memoryProblem } from "./memoryProblem.ts";
import { takePieces } from "./pieces.ts";
import { progressLine } from "./progressLine.ts";
import { roughRoom } from "./roughRoom.ts";

/** Seconds spent in each step. */
export interface Timing {
  read: number;
  compile: number;
  simulate: number;
  summarise: number;
}
export interface ForecastJob {
  text: string;
  options: ForecastOptions;
  /** Threads at most; default: the cores. */
  workers?: number;
}
/** `forecast` is absent when a problem is an error. */
export interface ForecastResult {
  forecast?: Forecast;
  /** Whether the plan has responses, adopted or not. */
  responses: boolean;
  problems: Problem[];
  timing: Timing;
}

const seconds = () => performance.now() / 1000;

/** Rows of finish and cost, sorted copies and the like, counted in tasks as `memoryProblem` does. */
const ROWS_AS_TASKS = 6;

/** As many tasks kept future by future take the memory of these, of which large runs keep only brackets. */
function heldTasks(tasks: number, iterations: number): number {
  const kept = 16 * tasks * iterations <= 250e6;
  return ROWS_AS_TASKS + (kept ? tasks : Math.ceil((40 * tasks) / Math.sqrt(iterations)));
}

/** The file the build puts beside the command's own. */
const worker = new URL("./worker.mjs", import.meta.url);

/**
 * Plan text in, forecast out; large work on threads, so that it is quick and a signal is heard while it runs.
 * The figures do not depend on how many. The clock is handed to the engine, which has none.
 */
export async function computeForecast({ text, options, workers }: ForecastJob): Promise<ForecastResult> {
  const begun = seconds();
  takePieces();
  const pool = nodePool(worker, takeUp());
  // A plan this large will want help; a thread starts while it is read.
  if (roughTasks(text) >= manyTasks && workers !== 1) pool.prepare(1, roughRoom(text, options.iterations));
  const { plan, problems } = readPlan(text);
  const timing: Timing = { read: seconds() - begun, compile: 0, simulate: 0, summarise: 0 };
  if (plan === undefined) return { responses: false, problems, timing };
  const responses = [...plan.risks, ...plan.assumptions].some((entry) => entry.responses.length > 0);
  const iterations = options.iterations ?? plan.iterations;
  const tooLarge = memoryProblem(heldTasks(plan.tasks.length, iterations), iterations);
  if (tooLarge !== undefined) return { responses, problems: [...problems, tooLarge], timing };
  const line = progressLine();
  const result = await forecastInParallel(plan, {
    ...options,
    ...(workers === undefined ? {} : { workers }),
    pool,
    aside: true,
    clock: seconds,
    onProgress: line.show,
  });
  line.clear();
  return {
    ...(result.forecast === undefined ? {} : { forecast: result.forecast }),
    responses,
    problems: [...problems, ...scenarioNotes(plan, options), ...result.problems],
    timing: { ...timing, ...result.timing },
  };
}

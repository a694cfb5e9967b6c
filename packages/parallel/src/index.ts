export { compareInParallel } from "./compareInParallel.ts";
export { explainInParallel } from "./explainInParallel.ts";
export { forecastInParallel } from "./forecastInParallel.ts";
export type { FromThread, RunOptions, ToThread } from "./messages.ts";
export type { ParallelOptions } from "./options.ts";
export { createPool, type Pool } from "./pool.ts";
export { serve } from "./serve.ts";
export { simulateInParallel } from "./simulateInParallel.ts";
export type { Listener, StartThread, Thread } from "./thread.ts";

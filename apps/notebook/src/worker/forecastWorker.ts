import "./sharedMemory.ts";
import { warmUp } from "@leeway/core";
import { forecastInParallel } from "@leeway/parallel";
import { breathe } from "./breathe.ts";
import { forecastDesk, type OnThreads } from "./forecastDesk.ts";
import type { Leave, Request } from "./messages.ts";
import { threadPool } from "./threadPool.ts";

/**
 * Tasks times iterations from which threads of their own are worth a start; the library then says how many. Below,
 * this thread alone answers sooner, as it is warm.
 */
const largeWork = 12_000_000;

let pool: ReturnType<typeof threadPool> | undefined;
const onThreads: OnThreads = (plan, signal, onProgress) => {
  pool ??= threadPool();
  return forecastInParallel(plan, { pool, signal, onProgress, aside: true });
};

const take = forecastDesk({
  post: (reply) => self.postMessage(reply),
  breathe,
  onThreads: (plan) => (plan.tasks.length * plan.iterations > largeWork ? onThreads : undefined),
});
self.addEventListener("message", (event: MessageEvent<Request | Leave>) => take(event.data));

// While the first plan is still being read.
warmUp();

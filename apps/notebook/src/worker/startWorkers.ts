import type { AskWorker } from "../asking/asker.ts";
import type { PlanWorkerLike } from "./reader.ts";
import type { WorkerLike } from "./runner.ts";

// The addresses are written out so that the build finds and bundles the workers.

/** Starts a worker that computes forecasts; it listens while it works. */
export function startForecastWorker(): WorkerLike {
  return new Worker(new URL("./forecastWorker.ts", import.meta.url), { type: "module", name: "forecast" });
}

/** Starts a worker that computes the tornado; it does not listen while it works. */
export function startTornadoWorker(): WorkerLike {
  return new Worker(new URL("./tornadoWorker.ts", import.meta.url), { type: "module", name: "tornado" });
}

/** Starts a worker that answers questions about a plan; it does not listen while it works. */
export function startAskWorker(): AskWorker {
  return new Worker(new URL("../asking/askWorker.ts", import.meta.url), { type: "module", name: "ask" });
}

/** Starts the worker that reads and edits plans. */
export function startPlanWorker(): PlanWorkerLike {
  return new Worker(new URL("./planWorker.ts", import.meta.url), { type: "module", name: "plan" });
}

import type { WorkerLike } from "./runner.ts";

/** Starts the forecast worker. The address is written out so that the build finds and bundles it. */
export function startWorker(): WorkerLike {
  return new Worker(new URL("./forecastWorker.ts", import.meta.url), { type: "module", name: "forecast" });
}

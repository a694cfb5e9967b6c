import type { AskWorker } from "../asking/asker.ts";
import type { Hear } from "./messages.ts";
import type { Onward } from "./planMessages.ts";
import type { PlanWorkerLike } from "./reader.ts";
import type { WorkerLike } from "./runner.ts";

// The addresses are written out so that the build finds and bundles the workers.

/** Who reads plans, once started. */
let reading: Worker | undefined;

/** Workers that were started before the page asked for them. */
let first: { plan: Worker; forecast: Worker } | undefined;

/** Starts what every page needs, as early as can be. */
export function startFirst(): void {
  first = { plan: startReading(), forecast: startForecasts() };
}

/** A worker that computes forecasts; it listens while it works, also to the one that reads plans. */
export function startForecastWorker(): WorkerLike {
  const worker = first?.forecast ?? startForecasts();
  first = undefined;
  return worker;
}

function startForecasts(): Worker {
  const worker = new Worker(new URL("./forecastWorker.ts", import.meta.url), {
    type: "module",
    name: "forecast",
  });
  const { port1, port2 } = new MessageChannel();
  worker.postMessage({ kind: "hear", from: port1 } satisfies Hear, [port1]);
  reading?.postMessage({ onward: port2 } satisfies Onward, [port2]);
  return worker;
}

/** Starts a worker that computes the tornado; it listens while it works. */
export function startTornadoWorker(): WorkerLike {
  return new Worker(new URL("./tornadoWorker.ts", import.meta.url), { type: "module", name: "tornado" });
}

/** Starts a worker that answers questions about a plan; it does not listen while it works. */
export function startAskWorker(): AskWorker {
  return new Worker(new URL("../asking/askWorker.ts", import.meta.url), { type: "module", name: "ask" });
}

/** The worker that reads and edits plans. */
export function startPlanWorker(): PlanWorkerLike {
  return first?.plan ?? startReading();
}

function startReading(): Worker {
  reading = new Worker(new URL("./planWorker.ts", import.meta.url), { type: "module", name: "plan" });
  return reading;
}

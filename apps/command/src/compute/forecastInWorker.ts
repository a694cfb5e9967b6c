import { parentPort, workerData } from "node:worker_threads";
import type { WorkerMessage } from "./computeForecast.ts";
import { type ForecastJob, runForecast } from "./runForecast.ts";

/** The thread's side: does the job it was started with, says how far it is, answers, ends. */
export function forecastInWorker(): void {
  const say = (message: WorkerMessage) => parentPort?.postMessage(message);
  const job: ForecastJob = workerData;
  say({ result: runForecast(job, (done, of) => say({ done, of })) });
}

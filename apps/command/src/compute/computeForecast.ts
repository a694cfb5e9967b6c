import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { type ForecastJob, type ForecastResult, runForecast } from "./runForecast.ts";

/** What the other thread says. */
export type WorkerMessage = { done: number; of: number } | { result: ForecastResult };

/**
 * Tasks times futures above which the work moves to a thread of its own, so that a signal is heard while it
 * runs. Below, starting the thread would take longer than the work (about 60 ms against 40).
 */
const LARGE = 3_000_000;

/** A rough count of the tasks, from the text alone: enough to tell a large plan from a small one. */
function roughTasks(text: string): number {
  return text.match(/\b(duration|effort|milestone)\b/g)?.length ?? 0;
}

function iterationsOf(job: ForecastJob): number {
  const stated = Number(/^\W*iterations\W+(\d+)/m.exec(job.text)?.[1] ?? 10_000);
  return job.options.iterations ?? stated;
}

/** A line that redraws itself, on a terminal only. */
function progressLine(): (done: number, of: number) => void {
  if (!process.stderr.isTTY) return () => {};
  process.once("exit", () => process.stderr.write("\r\u001b[K"));
  return (done, of) => {
    const share = of > 0 ? Math.min(1, done / of) : 0;
    const filled = Math.round(share * 30);
    process.stderr.write(`\r${"█".repeat(filled)}${"░".repeat(30 - filled)} ${Math.round(share * 100)} %`);
  };
}

/** Runs the forecast here, or on a thread when it is large. The figures are the same. */
export function computeForecast(job: ForecastJob): Promise<ForecastResult> {
  const work = roughTasks(job.text) * iterationsOf(job) * (job.options.tornado === true ? 10 : 1);
  if (work < LARGE) return Promise.resolve(runForecast(job));
  const show = progressLine();
  return new Promise((resolve, reject) => {
    const worker = new Worker(fileURLToPath(import.meta.url), { workerData: job });
    worker.on("message", (message: WorkerMessage) => {
      if ("result" in message) resolve(message.result);
      else show(message.done, message.of);
    });
    worker.on("error", reject);
    worker.on("exit", (code) => reject(new Error(`The computing thread ended with code ${code}.`)));
  });
}

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

/** A line that redraws itself, on a terminal only; `clear` takes it away again. */
function progressLine(): { show: (done: number, of: number) => void; clear: () => void } {
  if (!process.stderr.isTTY) return { show: () => {}, clear: () => {} };
  let shown = -1;
  return {
    show: (done, of) => {
      const percent = of > 0 ? Math.min(100, Math.floor((100 * done) / of)) : 0;
      if (percent === shown) return;
      shown = percent;
      const filled = Math.round(percent * 0.3);
      process.stderr.write(`\r${"█".repeat(filled)}${"░".repeat(30 - filled)} ${percent} %`);
    },
    clear: () => process.stderr.write("\r\u001b[K"),
  };
}

/** Runs the forecast here, or on a thread when it is large. The figures are the same. */
export function computeForecast(job: ForecastJob): Promise<ForecastResult> {
  const work = roughTasks(job.text) * iterationsOf(job) * (job.options.tornado === true ? 10 : 1);
  if (work < LARGE) return Promise.resolve(runForecast(job));
  const line = progressLine();
  return new Promise((resolve, reject) => {
    const worker = new Worker(fileURLToPath(import.meta.url), { workerData: job });
    worker.on("message", (message: WorkerMessage) => {
      if ("done" in message) return line.show(message.done, message.of);
      line.clear();
      resolve(message.result);
    });
    worker.on("error", reject);
    worker.on("exit", (code) => reject(new Error(`The computing thread ended with code ${code}.`)));
  });
}

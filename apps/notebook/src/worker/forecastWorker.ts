import { warmUp } from "@leeway/core";
import { forecastInParallel } from "@leeway/parallel";
import { webPool } from "@leeway/parallel/web";
import { breathe } from "./breathe.ts";
import { forecastDesk, type OnThreads } from "./forecastDesk.ts";
import { createHelp, type Help } from "./help.ts";
import type { HeadStart, Hear, Leave, Request } from "./messages.ts";

/**
 * Tasks times iterations from which threads of their own are worth a start; the library then says how many. Below,
 * this thread alone answers sooner, as it is warm.
 */
const largeWork = 12_000_000;

let pool: ReturnType<typeof webPool> | undefined;
const onThreads: OnThreads = (plan, signal, onProgress) => {
  pool ??= webPool();
  return forecastInParallel(plan, { pool, signal, onProgress, aside: true });
};

/** Ms after the first plan that the helper is started: the page is then loaded. */
const helpAfter = 1500;

let helper: Help | "soon" | undefined;
/**
 * A second thread that computes half of each plan, where there are processors for it, this one and the page: on two it
 * was measured to take as much from them as it gives. Started once the first plan is answered.
 */
function help(): Help | undefined {
  if (helper === undefined && navigator.hardwareConcurrency > 2) {
    helper = "soon";
    setTimeout(() => {
      // The address is written out so that the build finds and bundles the worker.
      helper = createHelp(
        new Worker(new URL("./helpWorker.ts", import.meta.url), { type: "module", name: "help" }),
      );
    }, helpAfter);
  }
  return helper === "soon" ? undefined : helper;
}

const take = forecastDesk({
  post: (reply) => self.postMessage(reply),
  breathe,
  onThreads: (plan) => (plan.tasks.length * plan.iterations > largeWork ? onThreads : undefined),
  help,
});
self.addEventListener("message", ({ data }: MessageEvent<Request | Leave | Hear>) => {
  if (data.kind !== "hear") take(data);
  else data.from.onmessage = (event: MessageEvent<HeadStart>) => take(event.data);
});

// While the first plan is still being read.
warmUp();

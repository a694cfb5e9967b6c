import { forecast, type Plan, readPlan } from "@leeway/core";
import type { Reply, Request, Stage } from "./messages.ts";

/** At most this many progress messages a second: more would cost the page more than they tell. */
const progressPerSecond = 20;

const post = (reply: Reply): void => self.postMessage(reply);

self.addEventListener("message", (event: MessageEvent<Request>) => {
  const request = event.data;
  try {
    answer(request);
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    post({ kind: "failed", run: request.run, words });
  }
});

function answer(request: Request): void {
  const { plan, problems } = readPlan(request.text);
  if (plan === undefined) {
    post({ kind: "done", run: request.run, problems });
    return;
  }
  if (request.kind === "tornado") {
    post({
      kind: "done",
      run: request.run,
      problems: compute(plan, request.run, "tornado", plan.iterations),
    });
    return;
  }
  // The first answer is skipped where the full one is hardly longer.
  if (request.first * 2 < plan.iterations) {
    const early = compute(plan, request.run, "first", request.first);
    if (early.some((problem) => problem.severity === "error")) {
      post({ kind: "done", run: request.run, problems: early });
      return;
    }
  }
  post({ kind: "done", run: request.run, problems: compute(plan, request.run, "full", plan.iterations) });
}

function compute(plan: Plan, run: number, stage: Stage, iterations: number) {
  let told = 0;
  const result = forecast(plan, {
    iterations,
    tornado: stage === "tornado",
    onProgress: (done: number, total: number) => {
      const now = performance.now();
      if (now - told < 1000 / progressPerSecond && done < total) return;
      told = now;
      post({ kind: "progress", run, stage, done, total });
    },
  });
  if (result.forecast !== undefined) post({ kind: "forecast", run, stage, forecast: result.forecast });
  return result.problems;
}

import { compile, planAsWritten, tornado } from "@leeway/core";
import type { Reply, Request } from "./messages.ts";

/** At most this many progress messages a second. */
const progressPerSecond = 10;

const post = (reply: Reply): void => self.postMessage(reply);

// The re-runs are one long call: whoever wants to leave them ends the worker.
self.addEventListener("message", (event: MessageEvent<Request>) => {
  const { data } = event;
  if (data.kind !== "tornado") return;
  const { run, plan, from } = data;
  let told = 0;
  try {
    const model = compile(plan);
    const bars = tornado(model, from, planAsWritten(model), from.committed, (done, total) => {
      const now = performance.now();
      if (now - told < 1000 / progressPerSecond && done < total) return;
      told = now;
      post({ kind: "progress", run, stage: "tornado", done, total });
    });
    post({ kind: "tornado", run, bars });
    post({ kind: "done", run, problems: [] });
  } catch (error) {
    post({ kind: "failed", run, words: error instanceof Error ? error.message : String(error) });
  }
});

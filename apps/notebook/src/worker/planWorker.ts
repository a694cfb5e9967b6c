import type { HeadStart } from "./messages.ts";
import { planDesk } from "./planDesk.ts";
import type { Hurry, Onward, PlanRequest } from "./planMessages.ts";

/** Ms at most that a text waits for the answer to the plan it is going to say. */
const patience = 250;

let onward: MessagePort | undefined;

const answer = planDesk(
  (reply) => self.postMessage(reply),
  (task) => setTimeout(task, patience),
  (plan, first) => onward?.postMessage({ kind: "ahead", plan, first } satisfies HeadStart),
);
self.addEventListener("message", ({ data }: MessageEvent<PlanRequest | Hurry | Onward>) => {
  if ("onward" in data) onward = data.onward;
  else answer(data);
});

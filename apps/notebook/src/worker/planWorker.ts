import { planDesk } from "./planDesk.ts";
import type { Hurry, PlanRequest } from "./planMessages.ts";

/** Ms at most that a text waits for the answer to the plan it is going to say. */
const patience = 250;

const answer = planDesk(
  (reply) => self.postMessage(reply),
  (task) => setTimeout(task, patience),
);
self.addEventListener("message", (event: MessageEvent<PlanRequest | Hurry>) => answer(event.data));

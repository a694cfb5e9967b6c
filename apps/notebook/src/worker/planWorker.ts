import { planDesk } from "./planDesk.ts";
import type { PlanRequest } from "./planMessages.ts";

const answer = planDesk((reply) => self.postMessage(reply));
self.addEventListener("message", (event: MessageEvent<PlanRequest>) => answer(event.data));

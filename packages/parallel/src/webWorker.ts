import type { ToThread } from "./messages.ts";
import { serve } from "./serve.ts";

const take = serve((message, transfer) => self.postMessage(message, { transfer }));
self.addEventListener("message", (event: MessageEvent<ToThread>) => take(event.data));

import "./sharedMemory.ts";
import { serve, type ToThread } from "@leeway/parallel";

const take = serve((message, transfer) => self.postMessage(message, { transfer }));
self.addEventListener("message", (event: MessageEvent<ToThread>) => take(event.data));

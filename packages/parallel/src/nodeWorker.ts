import { parentPort } from "node:worker_threads";
import type { ToThread } from "./messages.ts";
import { serve } from "./serve.ts";

const take = serve((message, transfer) => parentPort?.postMessage(message, transfer));
parentPort?.on("message", (message: ToThread) => take(message));

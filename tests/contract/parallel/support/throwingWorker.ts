// Starts well, then breaks at the first stretch asked of it.
import { parentPort } from "node:worker_threads";

parentPort?.on("message", (message: { kind: string }) => {
  if (message.kind === "stretch") throw new RangeError("the floor gave way");
});
parentPort?.postMessage({ kind: "ready" });

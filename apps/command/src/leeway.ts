import { isMainThread } from "node:worker_threads";
import { forecastInWorker } from "./compute/forecastInWorker.ts";
import { main } from "./main.ts";

// One built file serves as the command and as the thread a large forecast runs on.
if (isMainThread) process.exitCode = await main(process.argv.slice(2));
else forecastInWorker();

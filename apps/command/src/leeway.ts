import { isMainThread } from "node:worker_threads";
import { answerInThread } from "./compute/answerAside.ts";
import { main } from "./main.ts";

if (isMainThread) process.exitCode = await main(process.argv.slice(2));
else answerInThread();

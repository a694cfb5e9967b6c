import { isMainThread } from "node:worker_threads";
import { helpAhead } from "./start/helpAhead.ts";
import { beside, loadProgram } from "./start/loadProgram.ts";

const words = process.argv.slice(2);
const ahead = isMainThread ? helpAhead(words, new URL("./worker.mjs", import.meta.url)) : undefined;
// Built from the module named in the type.
const program = loadProgram(beside(import.meta.url, "./program.cjs")) as typeof import("./program.ts");
if (isMainThread) process.exitCode = await program.main(words, ahead);
else await program.answerInThread();

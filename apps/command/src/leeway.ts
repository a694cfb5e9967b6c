import { isMainThread } from "node:worker_threads";
import { helpAhead } from "./start/helpAhead.ts";
import { beside, loadProgram } from "./start/loadProgram.ts";

const words = process.argv.slice(2);
const ahead = isMainThread ? helpAhead(words, new URL("./worker.mjs", import.meta.url)) : undefined;
// Built from the module named in the type.
const program = loadProgram(beside(import.meta.url, "./program.cjs")) as typeof import("./program.ts");
if (isMainThread) endWith(await program.main(words, ahead));
else await program.answerInThread();

/** Ends when all is written, and at once then: to take the engine apart in order is a tenth of a second's work for nobody. */
function endWith(code: number): void {
  const streams = [process.stdout, process.stderr];
  let open = streams.length;
  for (const stream of streams) {
    stream.write("", () => {
      open -= 1;
      if (open === 0) process.exit(code);
    });
  }
}

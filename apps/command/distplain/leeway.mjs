import { r as loadProgram, t as beside } from "./loadProgram-B5wgumI1.mjs";
import { Worker, isMainThread } from "node:worker_threads";
import { statSync } from "node:fs";
/**
* Starts the thread that a call will want as far as can be told from its words alone: a forecast of a long plan, on more
* than one thread. It starts while the program itself is read, which takes as long. Never throws.
*/
function helpAhead(words, file) {
	const [verb, plan] = words;
	if (verb !== "forecast" || plan === void 0 || words.some((word) => word.startsWith("--workers"))) return;
	try {
		if (statSync(plan).size < 4e4) return;
		const worker = new Worker(file);
		const ahead = {
			worker,
			said: [],
			lost: []
		};
		worker.on("message", (said) => ahead.said.push(said));
		worker.on("error", (error) => ahead.lost.push(error));
		worker.postMessage({ kind: "practise" });
		worker.unref();
		return ahead;
	} catch {
		return;
	}
}
// src/leeway.ts
var words = process.argv.slice(2);
var ahead = isMainThread ? helpAhead(words, new URL("./worker.mjs", import.meta.url)) : void 0;
var program = loadProgram(beside(import.meta.url, "./program.cjs"));
if (isMainThread) endWith(await program.main(words, ahead));
else await program.answerInThread();
/** Ends when all is written, and at once then: to take the engine apart in order is a tenth of a second's work for nobody. */
function endWith(code) {
	const streams = [process.stdout, process.stderr];
	let open = streams.length;
	for (const stream of streams) stream.write("", () => {
		open -= 1;
		if (open === 0) process.exit(code);
	});
}
export {};

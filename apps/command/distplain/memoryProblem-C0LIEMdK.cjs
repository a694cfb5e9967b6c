let node_os = require("node:os");
// src/compute/memoryProblem.ts
/** Two numbers of eight bytes in every future: what `simulate` keeps of a task, as long as that is little. */
var BYTES = 16;
/** The rest is for everything else on the machine. */
var PART = .6;
/**
* The problem of a run that would not fit into memory, instead of a crash half-way.
*
* @returns undefined where it fits
*/
function memoryProblem(tasks, iterations) {
	const limit = process.constrainedMemory();
	const memory = limit !== void 0 && limit > 0 ? Math.min((0, node_os.totalmem)(), limit) : (0, node_os.totalmem)();
	const needed = tasks * iterations * BYTES;
	if (needed <= memory * PART) return void 0;
	const gigabytes = (bytes) => (bytes / 1e9).toPrecision(2);
	const most = Math.floor(memory * PART / (tasks * BYTES) / 1e3) * 1e3;
	return {
		code: "too-large",
		severity: "error",
		path: "iterations",
		received: String(iterations),
		rule: `That many futures need ${gigabytes(needed)} GB of ${gigabytes(memory)} GB of memory.`,
		remedy: `Ask for at most ${most}.`
	};
}
Object.defineProperty(exports, "memoryProblem", {
	enumerable: true,
	get: function() {
		return memoryProblem;
	}
});

const require_compareInParallel = require("./compareInParallel-CPHQl1pV.cjs");
const require_node = require("./node-6FCbc_om.cjs");
const require_memoryProblem = require("./memoryProblem-C0LIEMdK.cjs");
const require_progressLine = require("./progressLine-jaZtntmq.cjs");
// src/compute/computeComparison.ts
/** Rows of n values at once, on every thread: outcomes and what is read from them; counted as `memoryProblem` does. */
var ROWS_AS_TASKS = 16;
/** The file the build puts beside the command's own. */
var worker = new URL("./worker.mjs", require("url").pathToFileURL(__filename).href);
/** Two plans in, what moved out; on threads, so that it is quick and a signal is heard while it runs. */
async function computeComparison({ oldPlan, newPlan, options, workers }) {
	const tooLarge = require_memoryProblem.memoryProblem(ROWS_AS_TASKS, options.iterations ?? newPlan.iterations);
	if (tooLarge !== void 0) return { problems: [{
		...tooLarge,
		of: "new"
	}] };
	const line = require_progressLine.progressLine();
	const result = await require_compareInParallel.compareInParallel(oldPlan, newPlan, {
		...options,
		...workers === void 0 ? {} : { workers },
		pool: require_node.nodePool(worker),
		aside: true,
		onProgress: line.show
	});
	line.clear();
	return result;
}
Object.defineProperty(exports, "computeComparison", {
	enumerable: true,
	get: function() {
		return computeComparison;
	}
});

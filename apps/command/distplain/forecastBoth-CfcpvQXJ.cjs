const require_applyScenario = require("./applyScenario-C_221t4T.cjs");
const require_forecastInParallel = require("./forecastInParallel-C4KNg4av.cjs");
const require_node = require("./node-6FCbc_om.cjs");
const require_memoryProblem = require("./memoryProblem-C0LIEMdK.cjs");
const require_pieces = require("./pieces-DaW56MuW.cjs");
const require_progressLine = require("./progressLine-jaZtntmq.cjs");
// src/estimating/forecastBoth.ts
/** Rows of finish and cost, their sorted copies, and the tasks kept. */
var ROWS_AS_TASKS = 8;
/** The file the build puts beside the command's own. */
var worker = new URL("./worker.mjs", require("url").pathToFileURL(__filename).href);
/** Forecasts of several plans on the same draws, one after the other; none where a problem is an error. */
async function forecastEach(plans, options) {
	const forecasts = [];
	const [first] = plans;
	const problems = first === void 0 ? [] : [...require_applyScenario.scenarioNotes(first, options)];
	const line = require_progressLine.progressLine();
	require_pieces.takePieces();
	const pool = require_node.nodePool(worker);
	for (const plan of plans) {
		const iterations = options.iterations ?? plan.iterations;
		const tooLarge = require_memoryProblem.memoryProblem(ROWS_AS_TASKS + plan.tasks.length, iterations);
		if (tooLarge !== void 0) return { problems: [...problems, tooLarge] };
		const result = await require_forecastInParallel.forecastInParallel(plan, {
			...options,
			pool,
			aside: true,
			onProgress: line.show
		});
		line.clear();
		if (plan === first || result.forecast === void 0) problems.push(...result.problems);
		if (result.forecast === void 0) return { problems };
		forecasts.push(result.forecast);
	}
	return {
		forecasts,
		problems
	};
}
Object.defineProperty(exports, "forecastEach", {
	enumerable: true,
	get: function() {
		return forecastEach;
	}
});

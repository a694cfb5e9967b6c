const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_applyScenario = require("./applyScenario-C_221t4T.cjs");
const require_forecastInParallel = require("./forecastInParallel-C4KNg4av.cjs");
const require_node = require("./node-6FCbc_om.cjs");
const require_program = require("./program.cjs");
const require_memoryProblem = require("./memoryProblem-C0LIEMdK.cjs");
const require_pieces = require("./pieces-DaW56MuW.cjs");
const require_progressLine = require("./progressLine-jaZtntmq.cjs");
require("node:worker_threads");
require("node:fs");
// src/compute/roughRoom.ts
/** More is left to be asked for when it is known to be needed. */
var most = 16e7;
var usual = 1e4;
/** Of rows that do not grow with iterations, by task. */
var besides = 2e4;
/**
* Bytes that forecasting a plan may take, guessed from its text: the finishes of as many tasks as durations or efforts are
* named. A wrong guess costs time or memory, never a figure.
*/
function roughRoom(text, iterations = stated(text)) {
	const tasks = text.match(/\b(?:duration|effort)"?:/g)?.length ?? 0;
	return Math.min(most, tasks * (8 * iterations + besides));
}
function stated(text) {
	return Number(/\biterations"?:\s*(\d{1,7})\b/.exec(text)?.[1] ?? usual);
}
// src/compute/computeForecast.ts
var seconds = () => performance.now() / 1e3;
/** Rows of finish and cost, sorted copies and the like, counted in tasks as `memoryProblem` does. */
var ROWS_AS_TASKS = 6;
/** As many tasks kept future by future take the memory of these, of which large runs keep only brackets. */
function heldTasks(tasks, iterations) {
	return ROWS_AS_TASKS + (16 * tasks * iterations <= 25e7 ? tasks : Math.ceil(40 * tasks / Math.sqrt(iterations)));
}
/** The file the build puts beside the command's own. */
var worker = new URL("./worker.mjs", require("url").pathToFileURL(__filename).href);
/**
* Plan text in, forecast out; large work on threads, so that it is quick and a signal is heard while it runs.
* The figures do not depend on how many. The clock is handed to the engine, which has none.
*/
async function computeForecast({ text, options, workers }) {
	const begun = seconds();
	require_pieces.takePieces();
	const pool = require_node.nodePool(worker, require_program.takeUp());
	if (text.length > 4e4 && workers !== 1) pool.prepare(1, roughRoom(text, options.iterations));
	const { plan, problems } = require_readPlan.readPlan(text);
	const timing = {
		read: seconds() - begun,
		compile: 0,
		simulate: 0,
		summarise: 0
	};
	if (plan === void 0) return {
		responses: false,
		problems,
		timing
	};
	const responses = [...plan.risks, ...plan.assumptions].some((entry) => entry.responses.length > 0);
	const iterations = options.iterations ?? plan.iterations;
	const tooLarge = require_memoryProblem.memoryProblem(heldTasks(plan.tasks.length, iterations), iterations);
	if (tooLarge !== void 0) return {
		responses,
		problems: [...problems, tooLarge],
		timing
	};
	const line = require_progressLine.progressLine();
	const result = await require_forecastInParallel.forecastInParallel(plan, {
		...options,
		...workers === void 0 ? {} : { workers },
		pool,
		aside: true,
		clock: seconds,
		onProgress: line.show
	});
	line.clear();
	return {
		...result.forecast === void 0 ? {} : { forecast: result.forecast },
		responses,
		problems: [
			...problems,
			...require_applyScenario.scenarioNotes(plan, options),
			...result.problems
		],
		timing: {
			...timing,
			...result.timing
		}
	};
}
Object.defineProperty(exports, "computeForecast", {
	enumerable: true,
	get: function() {
		return computeForecast;
	}
});

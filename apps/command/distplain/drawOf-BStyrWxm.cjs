// ../../packages/core/src/explain/responses/drawOf.ts
/** The draws of a forecast with these options. */
function drawOf(plan, { iterations, seed, design }) {
	return {
		seed: seed ?? plan.seed,
		design: design ?? "latin-hypercube",
		iterations: iterations ?? plan.iterations
	};
}
/** The plan format's own limit. */
var mostIterations = 1e7;
/** Options that mean nothing, all at once. */
function runProblems({ confidence, iterations, design }) {
	const problems = [];
	const report = (path, received, rule, remedy) => problems.push({
		code: "option-value",
		severity: "error",
		path,
		received: String(received),
		rule,
		remedy
	});
	if (confidence !== void 0 && !(confidence > 0 && confidence < 1)) report("--confidence", confidence, "It must be above 0 and below 1.", "Write e.g. 0.8.");
	if (iterations !== void 0 && !(Number.isInteger(iterations) && iterations >= 1 && iterations <= mostIterations)) report("--iterations", iterations, `It must be a whole number from 1 to ${mostIterations}.`, "Write e.g. 10000.");
	if (design !== void 0 && design !== "latin-hypercube" && design !== "plain") report("--design", design, "There is no such design.", "Write latin-hypercube or plain.");
	return problems;
}
Object.defineProperty(exports, "drawOf", {
	enumerable: true,
	get: function() {
		return drawOf;
	}
});
Object.defineProperty(exports, "runProblems", {
	enumerable: true,
	get: function() {
		return runProblems;
	}
});

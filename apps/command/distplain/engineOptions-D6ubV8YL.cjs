// src/call/engineOptions.ts
/** The plan format's own limit. */
var MOST_ITERATIONS = 1e7;
/** Leaves out what was not given: an absent key and an undefined one are not the same to the engine. */
function given(options) {
	const kept = Object.entries(options).filter(([, value]) => value !== void 0);
	return Object.fromEntries(kept);
}
/** Reads them; those a verb does not have are never in its call. Values that break their rule become problems. */
function engineOptions(values) {
	return given({
		iterations: values.count("iterations", MOST_ITERATIONS),
		seed: values.text("seed"),
		confidence: values.chance("confidence"),
		design: values.oneOf("design", ["latin-hypercube", "plain"]),
		with: values.ids("with"),
		without: values.ids("without")
	});
}
Object.defineProperty(exports, "MOST_ITERATIONS", {
	enumerable: true,
	get: function() {
		return MOST_ITERATIONS;
	}
});
Object.defineProperty(exports, "engineOptions", {
	enumerable: true,
	get: function() {
		return engineOptions;
	}
});
Object.defineProperty(exports, "given", {
	enumerable: true,
	get: function() {
		return given;
	}
});

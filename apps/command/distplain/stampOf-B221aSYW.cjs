const require_version = require("./version-BsDMLdbb.cjs");
// ../../packages/core/src/explain/confidence/stampOf.ts
/** The run stamp of an explanation: what is needed to get the same figures again. */
function stampOf(model, { seed, iterations, design }) {
	return {
		seed,
		iterations,
		version: require_version.version,
		design,
		sha256: model.plan.sha256
	};
}
Object.defineProperty(exports, "stampOf", {
	enumerable: true,
	get: function() {
		return stampOf;
	}
});

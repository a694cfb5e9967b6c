const require_node = require("./node-6FCbc_om.cjs");
// src/compute/threadsOf.ts
/** The file the build puts beside the command's own. */
var worker = new URL("./worker.mjs", require("url").pathToFileURL(__filename).href);
/** Threads for a question, so that it is quick and a signal is heard meanwhile. They never change a digit. */
function threadsOf(workers) {
	const shared = {
		pool: require_node.nodePool(worker),
		aside: true
	};
	return workers === void 0 ? shared : {
		...shared,
		workers
	};
}
Object.defineProperty(exports, "threadsOf", {
	enumerable: true,
	get: function() {
		return threadsOf;
	}
});

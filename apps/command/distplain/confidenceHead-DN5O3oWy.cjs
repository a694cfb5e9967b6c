const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_program = require("./program.cjs");
// src/text/confidenceHead.ts
/** The first line of an explanation: the plan's title, and how many futures it speaks of. */
function explanationHead(title, stamp, { width, strong }) {
	const run = futures(stamp.iterations);
	const shown = require_program.cut(title, width - run.length - 2);
	return strong(shown) + " ".repeat(Math.max(2, width - [...shown].length - run.length)) + run;
}
function futures(n) {
	return n === 1 ? "1 future" : `${require_groupDigits.groupDigits(n)} futures`;
}
/** Below this many the forecast warns as well. */
var ENOUGH = 1e3;
/** What is needed to get the same figures again; of few futures also that they are few. */
function explanationStamp({ seed, iterations, design, sha256, version }) {
	const few = iterations < ENOUGH ? ` Only ${futures(iterations)}: another seed may give quite other figures.` : "";
	return `Run: seed ${require_program.plainName(seed)}, ${futures(iterations)}, ${design} design, plan ${sha256.slice(0, 12)}, engine ${version}.${few}`;
}
Object.defineProperty(exports, "explanationHead", {
	enumerable: true,
	get: function() {
		return explanationHead;
	}
});
Object.defineProperty(exports, "explanationStamp", {
	enumerable: true,
	get: function() {
		return explanationStamp;
	}
});

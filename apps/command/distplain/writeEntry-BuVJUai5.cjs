const require_program = require("./program.cjs");
const require_unwritable = require("./unwritable-BJ47CraP.cjs");
const require_writePlan = require("./writePlan-DZpkkTD3.cjs");
// src/signing/refusalProblem.ts
/** A refusal of the library as a problem of the call. */
function refusalProblem({ code, received, rule, remedy }) {
	return require_program.callProblem(code, received, rule, remedy);
}
// src/signing/writeEntry.ts
/**
* Writes the plan anew where it still says what was read; what went wrong is printed.
*
* @param before  Done first: what it cannot do keeps the plan from being written.
*/
async function writeEntry(file, text, before = () => {}) {
	try {
		before();
		if (await require_writePlan.writePlan(file.path, file.text, text)) return true;
		require_program.printProblems([require_program.callProblem("changed-meanwhile", file.path, "Somebody changed it meanwhile; nothing was written.", "Look at it, and try again.")]);
	} catch (error) {
		require_program.printProblems([require_unwritable.unwritable(file.path, error)]);
		require_program.printNote("Nothing was written.");
	}
	return false;
}
Object.defineProperty(exports, "refusalProblem", {
	enumerable: true,
	get: function() {
		return refusalProblem;
	}
});
Object.defineProperty(exports, "writeEntry", {
	enumerable: true,
	get: function() {
		return writeEntry;
	}
});

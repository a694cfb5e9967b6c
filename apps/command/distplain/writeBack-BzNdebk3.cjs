const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_program = require("./program.cjs");
const require_unwritable = require("./unwritable-BJ47CraP.cjs");
const require_writePlan = require("./writePlan-DZpkkTD3.cjs");
// src/estimating/writeBack.ts
/**
* Puts the changed text of a plan where it came from, whole or not at all; of standard input, on standard output. The
* text is read again first: what would not be a plan any more is never written.
*
* @returns Whether it was written.
*/
async function writeBack({ name, text: before }, text) {
	const problem = await problemOf(name, before, text);
	if (problem !== void 0) require_program.printProblems([problem]);
	return problem === void 0;
}
/** A plan from standard input goes back to standard output, where there is no room for JSON beside it. */
function outputClash(call, values) {
	if (call.subject !== "-" || !values.has("json") || values.has("dry-run")) return [];
	return [require_program.callProblem("output-clash", "--json", "Standard output is the changed plan's, since it came from standard input.", "Leave it out, add --dry-run, or name the plan's file.")];
}
/** Where the change went, for a sentence. */
function writtenTo(name) {
	return name === "standard input" ? "Written to standard output" : `Written to ${name}`;
}
async function problemOf(name, before, text) {
	if (require_readPlan.readPlan(text).plan === void 0) return require_program.callProblem("cannot-edit", name, "With this change it would not be a plan any more; it stays as it was.", "Change it in the text.");
	await require_program.hearStops();
	if (name === "standard input") {
		require_program.printAnswer(text);
		return;
	}
	if (text === before) return void 0;
	try {
		if (await require_writePlan.writePlan(name, before, text)) return void 0;
		return require_program.callProblem("changed-meanwhile", name, "Somebody changed it meanwhile; nothing was written.", "Look at it, and try again.");
	} catch (error) {
		return require_unwritable.unwritable(name, error);
	}
}
Object.defineProperty(exports, "outputClash", {
	enumerable: true,
	get: function() {
		return outputClash;
	}
});
Object.defineProperty(exports, "writeBack", {
	enumerable: true,
	get: function() {
		return writeBack;
	}
});
Object.defineProperty(exports, "writtenTo", {
	enumerable: true,
	get: function() {
		return writtenTo;
	}
});

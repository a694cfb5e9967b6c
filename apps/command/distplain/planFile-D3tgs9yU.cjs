const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_program = require("./program.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
// src/history/planFile.ts
/** Reads a plan that something stands beside; its problems are printed. Standard input has no beside. */
async function planFile(subject, verb) {
	if (subject === "-") {
		const rule = `${verb} keeps files beside the plan, and standard input has no place.`;
		require_program.printProblems([require_program.callProblem("needs-file", "-", rule, "Name the plan's file.")]);
		return;
	}
	const { name, text, problem } = await require_readDocument.readDocument(subject);
	if (text === void 0) {
		if (problem !== void 0) require_program.printProblems([problem], name);
		return;
	}
	const { plan, problems } = require_readPlan.readPlan(text);
	if (problems.length > 0) require_program.printProblems(problems, name);
	return plan === void 0 ? void 0 : {
		path: subject,
		text,
		plan
	};
}
/** What is wrong with `--as WHO`: nobody of that id is in the plan. */
function whoProblems({ people, stakeholders }, who) {
	const ids = [...people, ...stakeholders].map(({ id }) => id).sort();
	if (who === void 0 || ids.includes(who)) return [];
	const near = require_program.nearest(who, ids);
	const known = ids.length === 0 ? "This plan names nobody: leave it out." : `Name one of: ${ids.join(", ")}.`;
	const remedy = near === void 0 ? known : `Did you mean ${near}?`;
	return [require_program.callProblem("unknown-id", `--as ${who}`, "There is nobody of that id in the plan.", remedy)];
}
Object.defineProperty(exports, "planFile", {
	enumerable: true,
	get: function() {
		return planFile;
	}
});
Object.defineProperty(exports, "whoProblems", {
	enumerable: true,
	get: function() {
		return whoProblems;
	}
});

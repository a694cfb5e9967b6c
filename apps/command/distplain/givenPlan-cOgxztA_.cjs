const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_program = require("./program.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
// src/estimating/givenPlan.ts
/** Reads a plan document; its problems are printed with its name. Undefined where there is no plan to work on. */
async function givenPlan(subject) {
	const { name, text, problem } = await require_readDocument.readDocument(subject);
	if (text === void 0) {
		if (problem !== void 0) require_program.printProblems([problem], name);
		return;
	}
	const { plan, problems } = require_readPlan.readPlan(text);
	if (problems.length > 0) require_program.printProblems(problems, name);
	return plan === void 0 ? void 0 : {
		plan,
		text,
		name
	};
}
/** The task of that id, or what is wrong. */
function taskOf(plan, id) {
	return plan.tasks.find((task) => task.id === id) ?? unknown(id, "The plan has no such task.", plan.tasks);
}
/** A person or stakeholder of the plan by id, or what is wrong. */
function speakerOf(plan, option, id) {
	const known = [...plan.people, ...plan.stakeholders];
	const found = known.find((each) => each.id === id);
	if (found !== void 0) return found;
	return unknown(`--${option} ${id}`, "The plan has no person or stakeholder of this id.", known, id);
}
function unknown(word, rule, known, id = word) {
	const ids = known.map((each) => each.id);
	const near = require_program.nearest(id, ids);
	const listed = `${ids.slice(0, 6).join(", ")}${ids.length > 6 ? ", ..." : ""}`;
	const remedy = near !== void 0 ? `Did you mean ${near}?` : ids.length === 0 ? "Add it to the plan first." : `Known: ${listed}.`;
	return require_program.callProblem("unknown-id", word, rule, remedy);
}
function isProblem(value) {
	return "rule" in value && "remedy" in value;
}
/** The name of a person or stakeholder; the id where the plan has none. */
function nameIn(plan) {
	const names = new Map([...plan.stakeholders, ...plan.people].map(({ id, name }) => [id, name]));
	return (id) => names.get(id) ?? id;
}
Object.defineProperty(exports, "givenPlan", {
	enumerable: true,
	get: function() {
		return givenPlan;
	}
});
Object.defineProperty(exports, "isProblem", {
	enumerable: true,
	get: function() {
		return isProblem;
	}
});
Object.defineProperty(exports, "nameIn", {
	enumerable: true,
	get: function() {
		return nameIn;
	}
});
Object.defineProperty(exports, "speakerOf", {
	enumerable: true,
	get: function() {
		return speakerOf;
	}
});
Object.defineProperty(exports, "taskOf", {
	enumerable: true,
	get: function() {
		return taskOf;
	}
});

const require_program = require("./program.cjs");
// src/text/signNames.ts
/** The name of a person or stakeholder, to be printed. */
function nameOf(plan, id) {
	const one = plan.stakeholders.find((each) => each.id === id) ?? plan.people.find((each) => each.id === id);
	return require_program.plainName(one?.name ?? id);
}
Object.defineProperty(exports, "nameOf", {
	enumerable: true,
	get: function() {
		return nameOf;
	}
});

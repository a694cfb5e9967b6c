const require_program = require("./program.cjs");
// src/text/scenarioLines.ts
/** What was switched, so that a page on the table says that it is not the plan as it stands. */
function scenarioLines(choice, width) {
	const parts = [...choice.with === void 0 ? [] : [`with ${choice.with.join(", ")}`], ...choice.without === void 0 ? [] : [`without ${choice.without.join(", ")}`]];
	return parts.length === 0 ? [] : require_program.wrap(`What if: ${parts.join("; ")}.`, width);
}
/** For JSON: the same as a key of its own, or nothing where the plan is as it stands. */
function scenarioKey(choice) {
	const { with: taken, without: left } = choice;
	if (taken === void 0 && left === void 0) return {};
	return { scenario: {
		...taken === void 0 ? {} : { with: taken },
		...left === void 0 ? {} : { without: left }
	} };
}
Object.defineProperty(exports, "scenarioKey", {
	enumerable: true,
	get: function() {
		return scenarioKey;
	}
});
Object.defineProperty(exports, "scenarioLines", {
	enumerable: true,
	get: function() {
		return scenarioLines;
	}
});

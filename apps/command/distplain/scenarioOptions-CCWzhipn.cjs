// src/text/scenarioOptions.ts
/** The options that take these ids in and leave those out, in a command to be typed; a space before each. */
function scenarioOptions({ with: taken = [], without: left = [] }) {
	const option = (name, ids) => ids.length === 0 ? "" : ` --${name} ${ids.join(",")}`;
	return option("with", taken) + option("without", left);
}
Object.defineProperty(exports, "scenarioOptions", {
	enumerable: true,
	get: function() {
		return scenarioOptions;
	}
});

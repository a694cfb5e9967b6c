// src/charts/chartsWritten.ts
/**
* `--charts DIR`: writes the charts of a verb's answer into the folder; nothing where it was not asked for.
*
* @returns false when a file could not be written, after saying so
*/
async function chartsWritten(verb, answer, folder) {
	if (folder === void 0) return true;
	const [{ figureLists }, { writeFigures }] = await Promise.all([Promise.resolve().then(() => require("./figureLists-BZCnQIEc.cjs")), Promise.resolve().then(() => require("./writeFigures-Cl4JfTDx.cjs"))]);
	return writeFigures(figureLists[verb](answer), folder);
}
Object.defineProperty(exports, "chartsWritten", {
	enumerable: true,
	get: function() {
		return chartsWritten;
	}
});

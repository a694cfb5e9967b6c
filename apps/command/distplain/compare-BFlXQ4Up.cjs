const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_chartsWritten = require("./chartsWritten-SZDOadPC.cjs");
const require_computeComparison = require("./computeComparison-BgSru7LC.cjs");
const require_program = require("./program.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_compareMoves = require("./compareMoves-Bv86O8FV.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// src/text/compareText.ts
/**
* What moved between two plans, as a person reads it: how far date and sum moved, what moved them change by change
* with the sum of all, what a move is, and what changed without moving anything. Every figure is the comparison's own.
*
* @param planName  The new plan as the caller named it, for the commands that come next.
* @returns text ending with a newline
*/
function compareText(given, page, planName) {
	const comparison = require_program.plainTexts(given);
	const { width, strong } = page;
	const { plan, stamp, warnings } = comparison;
	const meaning = require_movedSentences.meaningOfMoves(comparison);
	return `${[
		[require_confidenceHead.explanationHead(plan.title, stamp, page)],
		[...require_program.wrap(require_movedSentences.movedSentence(comparison), width).map(strong), ...require_movedSentences.standsSentences(comparison).flatMap((sentence) => require_program.wrap(sentence, width))],
		require_compareMoves.moveLines(comparison, width),
		meaning === void 0 ? [] : require_program.wrap(meaning, width),
		require_compareMoves.alsoLines(comparison, width),
		warnings.flatMap((warning) => require_program.wrap(`Warning: ${warning}`, width, "  ")),
		[
			"What to look at next",
			`  leeway forecast ${planName}`,
			`  leeway explain ${planName}`
		],
		require_program.wrap(require_confidenceHead.explanationStamp(stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/verbs/compare.ts
/** The plan of a document; its problems are printed with the document's name. */
async function planOf(subject) {
	const { name, text, problem } = await require_readDocument.readDocument(subject);
	if (text === void 0) {
		if (problem !== void 0) require_program.printProblems([problem], name);
		return { name };
	}
	const { plan, problems } = require_readPlan.readPlan(text);
	if (problems.length > 0) require_program.printProblems(problems, name);
	return plan === void 0 ? { name } : {
		plan,
		name
	};
}
/** What moved between two plans, change by change. The problems of both are listed before anything is run. */
async function compareVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const charts = values.text("charts");
	const options = require_engineOptions.engineOptions(values);
	const workers = values.count("workers", 64);
	if (values.problems.length > 0) {
		require_program.printProblems(values.problems);
		return require_program.exitCodes.invalid;
	}
	const older = await planOf(call.subject ?? "-");
	const newer = call.second === call.subject ? older : await planOf(call.second ?? "-");
	if (older.plan === void 0 || newer.plan === void 0) return require_program.exitCodes.invalid;
	const { comparison, problems } = await require_computeComparison.computeComparison({
		oldPlan: older.plan,
		newPlan: newer.plan,
		options,
		...workers === void 0 ? {} : { workers }
	});
	await require_program.hearStops();
	for (const problem of problems) require_program.printProblems([problem], problem.of === "old" ? older.name : newer.name);
	if (comparison === void 0) return require_program.exitCodes.invalid;
	if (!await require_chartsWritten.chartsWritten("compare", comparison, charts)) return require_program.exitCodes.invalid;
	if (values.has("json")) require_program.printJson(comparison);
	else {
		const page = require_program.pageOf(process.env, process.stdout);
		require_program.printAnswer(compareText(comparison, page, require_shellWord.shellWord(newer.name)));
	}
	return require_program.exitCodes.done;
}
exports.compareVerb = compareVerb;

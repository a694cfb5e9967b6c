const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_applyScenario = require("./applyScenario-C_221t4T.cjs");
const require_chartsWritten = require("./chartsWritten-SZDOadPC.cjs");
const require_memoryProblem = require("./memoryProblem-C0LIEMdK.cjs");
const require_progressLine = require("./progressLine-jaZtntmq.cjs");
const require_program = require("./program.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// src/verbs/answerVerb.ts
/** The charts of a verb, into the folder that `--charts` names. */
function drawing(verb, values) {
	const folder = values.text("charts");
	return (answer) => require_chartsWritten.chartsWritten(verb, answer, folder);
}
/**
* What every verb about one plan does: all problems of the call at once, the plan and its problems, whether there is
* memory, the answer, its charts, and then text or JSON. Answers the exit code.
*/
async function answerVerb(call, values, question) {
	const { options, problems: wrong = [] } = question;
	if (values.problems.length + wrong.length > 0) {
		require_program.printProblems([...values.problems, ...wrong]);
		return require_program.exitCodes.invalid;
	}
	const document = await require_readDocument.readDocument(call.subject ?? "-");
	if (document.text === void 0) {
		if (document.problem !== void 0) require_program.printProblems([document.problem], document.name);
		return require_program.exitCodes.invalid;
	}
	const { plan, problems } = require_readPlan.readPlan(document.text);
	if (problems.length > 0) require_program.printProblems(problems, document.name);
	if (plan === void 0) return require_program.exitCodes.invalid;
	const tooLarge = require_memoryProblem.memoryProblem(question.rowsAsTasks(plan), options.iterations ?? plan.iterations);
	const unfit = [...question.unfit?.(plan) ?? [], ...tooLarge === void 0 ? [] : [tooLarge]];
	if (unfit.length > 0) {
		require_program.printProblems(unfit, document.name);
		return require_program.exitCodes.invalid;
	}
	const line = require_progressLine.progressLine();
	const { answer, problems: found } = await question.ask(plan, line.show);
	line.clear();
	await require_program.hearStops();
	const told = [...require_applyScenario.scenarioNotes(plan, options), ...found];
	if (told.length > 0) require_program.printProblems(told, document.name);
	if (answer === void 0) return require_program.exitCodes.invalid;
	if (question.draw !== void 0 && !await question.draw(answer)) return require_program.exitCodes.invalid;
	if (values.has("json")) require_program.printJson({
		...require_scenarioLines.scenarioKey(options),
		...answer
	});
	else {
		const page = require_program.pageOf(process.env, process.stdout);
		require_program.printAnswer(question.text(answer, page, require_shellWord.shellWord(document.name)));
	}
	return require_program.exitCodes.done;
}
Object.defineProperty(exports, "answerVerb", {
	enumerable: true,
	get: function() {
		return answerVerb;
	}
});
Object.defineProperty(exports, "drawing", {
	enumerable: true,
	get: function() {
		return drawing;
	}
});

const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_answerAside = require("./answerAside-BsrttFoz.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
const require_program = require("./program.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_scenarioOptions = require("./scenarioOptions-CCWzhipn.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// src/text/assumptionsText.ts
/**
* What the plan counts on, the most load-bearing first, and what each would move were it false.
*
* @returns text ending with a newline
*/
function assumptionsText(given, page, planWord, scenario = {}) {
	const answer = require_program.plainTexts(given);
	const { width, strong } = page;
	const { assumptions, plan, stamp } = answer;
	const first = assumptions.find(({ ifFalse, noImpact }) => ifFalse !== void 0 && noImpact === void 0);
	return `${[
		[require_confidenceHead.explanationHead(plan.title, stamp, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		require_program.wrap(headSentence(answer, first), width).map(strong),
		tableLines(answer, width),
		...assumptions.map((one) => watchLines(one, width)),
		require_nextLines.nextLines([
			...first === void 0 || assumptions.length === 1 ? [] : [[`leeway assumptions ${planWord} --if-false ${first.id}${require_scenarioOptions.scenarioOptions(scenario)}`, "this one alone, as JSON with --json"]],
			[`leeway responses ${planWord}`, "what can be done about them, and what it buys"],
			[`leeway triggers ${planWord}`, "whether a signpost was seen"]
		], width),
		require_program.wrap(require_confidenceHead.explanationStamp(stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
function headSentence(answer, first) {
	const { assumptions, base, confidence } = answer;
	if (assumptions.length === 0) return "The plan states no assumption that could still prove wrong.";
	if (first?.ifFalse === void 0) return "No assumption of this plan moves its date or its sum: none states what happens when it is wrong.";
	const { standing, moved } = first.ifFalse;
	return `The most load-bearing: “${first.statement}”. Were it false, the ${require_formatPercent.formatPercent(confidence)} level would go from ${require_formatDate.formatDate(base.date, "weekday")} to ${require_formatDate.formatDate(standing.date, "weekday")}: ${movedWords(moved, answer)}.`;
}
function movedWords({ workingDays, money }, { plan }) {
	const days = require_formatDays.formatDays(Math.abs(workingDays));
	const time = days.startsWith("0 ") ? "no day" : `${days} ${workingDays < 0 ? "earlier" : "later"}`;
	const sum = require_movedSentences.roundMove(money);
	return sum === 0 ? `${time}, for the same sum` : `${time}, and ${require_formatMoney.formatMoney(Math.abs(sum), plan.currency)} ${sum < 0 ? "less" : "more"}`;
}
function tableLines({ assumptions, plan, asked, chance }, width) {
	const tested = assumptions.filter(({ ifFalse }) => ifFalse !== void 0);
	if (tested.length === 0) return [];
	const right = (heading) => ({
		heading,
		align: "right"
	});
	const date = asked.finishBy !== void 0;
	const sum = asked.budget !== void 0;
	const rows = tested.map(({ statement, chanceWrong, ifFalse }) => [
		statement,
		require_formatPercent.formatPercent(chanceWrong),
		require_columnDays.columnDays(ifFalse?.moved.workingDays ?? 0, true),
		signed(require_movedSentences.roundMove(ifFalse?.moved.money ?? 0)),
		...date ? [require_formatPercent.formatPercent(ifFalse?.chance.finishBy ?? 0)] : [],
		...sum ? [require_formatPercent.formatPercent(ifFalse?.chance.budget ?? 0)] : []
	]);
	const now = [...date ? [`by ${require_formatDate.formatDate(asked.finishBy ?? "", "short")} ${require_formatPercent.formatPercent(chance.finishBy ?? 0)}`] : [], ...sum ? [`within ${require_formatMoney.formatMoney(asked.budget ?? 0, plan.currency)} ${require_formatPercent.formatPercent(chance.budget ?? 0)}`] : []];
	return [
		"Were it false: what the commitment moves by, from the plan as it stands",
		...require_program.table([
			{
				heading: "",
				align: "left"
			},
			right("wrong"),
			right("days"),
			right(plan.currency),
			...date ? [right("date asked")] : [],
			...sum ? [right("sum asked")] : []
		], rows, width),
		...now.length === 0 ? [] : require_program.wrap(`As it stands: ${now.join(", ")}.`, width - 2).map((line) => `  ${line}`)
	];
}
function signed(value) {
	return value > 0 ? `+${require_groupDigits.groupDigits(value)}` : require_groupDigits.groupDigits(value);
}
/** How it would be noticed, and by whom. */
function watchLines(one, width) {
	const { statement, owner, signpost, reviewBy, tripped, noImpact, occurred } = one;
	const parts = [
		...occurred === true ? ["It has proved wrong, and every figure counts it."] : [],
		...noImpact === true && occurred !== true ? ["It states no impact, so nothing moves were it false: say in `impacts` what would, or name the risk that does."] : [],
		signpost === void 0 ? "No signpost is stated." : `Signpost: ${ended(signpost)}`,
		...tripped === void 0 ? [] : [`Seen on ${require_formatDate.formatDate(tripped, "weekday")}.`],
		owner === void 0 ? "Nobody owns it." : `${owner.name} watches it.`,
		reviewBy === void 0 ? "No day of review is stated." : `To be looked at by ${require_formatDate.formatDate(reviewBy, "weekday")}.`
	];
	return [...require_program.wrap(ended(statement), width), ...require_program.wrap(parts.join(" "), width - 2).map((line) => `  ${line}`)];
}
function ended(text) {
	return /[.!?…]$/.test(text) ? text : `${text}.`;
}
// src/verbs/assumptions.ts
var ROWS_AS_TASKS = 16;
/** What the plan counts on: who watches it, how it would be noticed, and the plan with each of them false. */
function assumptionsVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const only = values.ids("if-false");
	const options = {
		...require_engineOptions.engineOptions(values),
		...only === void 0 ? {} : { only }
	};
	return require_answerVerb.answerVerb(call, values, {
		options,
		rowsAsTasks: () => ROWS_AS_TASKS,
		async ask(plan, onProgress) {
			const found = await require_answerAside.answerAside({
				kind: "tested",
				plan,
				options
			}, onProgress);
			return {
				answer: found.tested,
				problems: found.problems
			};
		},
		text: (answer, page, plan) => assumptionsText(answer, page, plan, options)
	});
}
exports.assumptionsVerb = assumptionsVerb;

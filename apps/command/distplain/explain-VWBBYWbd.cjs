const require_explainInParallel = require("./explainInParallel-BCf8X8Zn.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_threadsOf = require("./threadsOf-af1Xi_1i.cjs");
const require_formatChance = require("./formatChance-DsebNIGf.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_statedSum = require("./statedSum-C9RA2TpO.cjs");
const require_causes = require("./causes-DQqJ4n_i.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_program = require("./program.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// ../../packages/charts/src/sentences/explainMoney.ts
/** Whether the plan speaks of money at all. */
function spends({ committed, contingency }) {
	return committed.cost !== 0 || contingency.money !== 0;
}
/** A committed sum, or what it holds above the plan as written, to the digits its sampling limits support. */
function supportedSum({ committed, limits, plan }, value) {
	const { cost } = committed;
	const step = require_roundToLimits.limitStep(cost, limits?.low.money ?? cost, limits?.high.money ?? cost);
	return require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, step), plan.currency);
}
/** A part of it for a column, without the currency: two significant digits. */
function partSum(value, signed = false) {
	const text = require_groupDigits.groupDigits(require_roundSignificant.roundSignificant(value, 2));
	return signed && value > 0 && text !== "0" ? `+${text}` : text;
}
// ../../packages/charts/src/sentences/nothingMoves.ts
/** No cause is left that moves the commitment, as in a plan that is finished: only tables of zeros could be shown. */
function nothingMoves({ shares, contingency, walk, tornado = [] }) {
	return [
		contingency,
		...shares.flatMap((share) => [share, share.ifRemoved]),
		...walk,
		...tornado.flatMap(({ low, high }) => [low, high])
	].every(({ workingDays, money }) => Math.abs(workingDays) < 1e-9 && Math.abs(money) < 1e-6);
}
// ../../packages/charts/src/sentences/explainSentences.ts
/** What is explained: from where to where, and how far that is. */
function gapSentence(explanation) {
	const { asWritten, committed, contingency, plan, confidence } = explanation;
	const money = spends(explanation);
	if (nothingMoves(explanation)) {
		const sum = money ? ` and costs ${require_statedSum.statedSum(asWritten.cost, plan.currency)}` : "";
		return `Every future ends on ${require_formatDate.formatDate(asWritten.date, "long")}${sum}, as the plan is written.`;
	}
	const from = require_formatDate.formatDate(asWritten.date, "long") + (money ? ` and ${require_statedSum.statedSum(asWritten.cost, plan.currency)}` : "");
	const to = require_formatDate.formatDate(committed.date, "long") + (money ? ` and ${supportedSum(explanation, committed.cost)}` : "");
	const days = require_formatDays.formatDays(contingency.workingDays);
	const sum = money ? ` and ${supportedSum(explanation, contingency.money)}` : "";
	return `The plan as written says ${from}; ${to} is what holds ${require_formatChance.formatChance(confidence)}. ` + (contingency.workingDays < 0 || contingency.money < 0 ? `The difference is ${days}${sum}.` : `Between the two lie ${days}${sum}.`);
}
/** What the largest parts come from. */
function reasonSentence(explanation) {
	const { shares, contingency } = explanation;
	if (nothingMoves(explanation)) return "Nothing in the plan is uncertain, so there is no contingency to explain.";
	const named = shares.filter(({ gathers }) => gathers === void 0);
	const days = contingency.workingDays < 0 ? -1 : 1;
	const sums = contingency.money < 0 ? -1 : 1;
	const byDays = largest(named, (share) => days * share.workingDays);
	const byMoney = largest(named, (share) => sums * share.money);
	const parts = [];
	if (byDays !== void 0 && days * byDays.workingDays >= .05) {
		const of = Math.abs(contingency.workingDays) > Math.abs(byDays.workingDays) ? ` of the ${require_formatDays.formatDays(contingency.workingDays, "")}` : "";
		parts.push(`The largest cause of the time is “${byDays.name}”: ${require_formatDays.formatDays(byDays.workingDays)}${of}`);
	}
	if (spends(explanation) && byMoney !== void 0 && sums * byMoney.money > 0) parts.push(`${parts.length > 0 ? "that of the money" : "The largest cause of the money"} is “${byMoney.name}”: ${supportedSum(explanation, byMoney.money)}`);
	return parts.length === 0 ? "No single cause adds to it." : `${parts.join("; ")}.`;
}
function largest(shares, of) {
	return shares.reduce((best, share) => best === void 0 || of(share) > of(best) ? share : best, void 0);
}
/** What a share is, and that the other columns answer another question. */
function meaningSentence({ orders }) {
	if (orders.causes === 1) return "\"If gone\": how the commitment would move if the cause vanished. With one cause its share is the whole.";
	return `A share is what a cause adds, averaged over ${orders.all ? `every order in which the ${orders.causes} causes can come` : `${orders.taken} orders in which the ${orders.causes} causes can come`}; shares add up to the whole. "If gone" is another question: how the commitment would move if that cause alone vanished; those figures do not add up.`;
}
/** How far sampled shares may be off; undefined where every order was taken. */
function errorSentence(explanation) {
	const { orders, shares } = explanation;
	if (orders.all) return void 0;
	const days = Math.max(...shares.map(({ error }) => error.workingDays));
	const money = Math.max(...shares.map(({ error }) => error.money));
	const sum = spends(explanation) ? ` and ${require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(money, 2), explanation.plan.currency)}` : "";
	return `Standard error of a share from the orders sampled: at most ${require_formatDays.formatDays(days)}${sum}.`;
}
// src/text/explainShares.ts
var left = {
	heading: "",
	align: "left"
};
var right = (heading) => ({
	heading,
	align: "right"
});
/** Days, and money where the plan speaks of it. */
function cells(effect, money, signed = false) {
	return [require_columnDays.columnDays(effect.workingDays, signed), ...money ? [partSum(effect.money, signed)] : []];
}
/** More ids than this say nothing. */
var MOST_IDS = 12;
/** Narrower pages keep their room for names. */
var roomForBars = 76;
/** The shares with bars for their days, then what would change without each cause. */
function shareLines(explanation, width) {
	const { shares, contingency, plan } = explanation;
	if (shares.length === 0) return [];
	const money = spends(explanation);
	const sums = money ? [right(plan.currency)] : [];
	const most = Math.max(...shares.map(({ workingDays }) => workingDays));
	const room = width < roomForBars ? 0 : Math.max(6, Math.min(20, width - (money ? 68 : 52)));
	const drawn = (text) => room > 0 ? [text] : [];
	const columns = [
		left,
		right("days"),
		...sums,
		...room > 0 ? [left] : [],
		right("if gone"),
		...sums
	];
	const all = shares.map((share) => ({
		name: share.name,
		share: cells(share, money),
		bar: share.workingDays < .05 ? "" : require_program.bar(share.workingDays, most, room),
		gone: cells(share.ifRemoved, money, true)
	}));
	const moving = all.filter(({ share, gone }) => [...share, ...gone].some((text) => text !== "0"));
	const still = all.filter((row) => !moving.includes(row)).map(({ name }) => name);
	const rows = [...moving.map((row) => [
		row.name,
		...row.share,
		...drawn(row.bar),
		...row.gone
	]), [
		"The whole",
		...cells(contingency, money),
		...drawn(""),
		...money ? ["", ""] : [""]
	]];
	return [
		money ? "What it is held for: shares, in working days and money" : "What it is held for: shares, in working days",
		...require_program.table(columns, rows, width),
		...still.length === 0 ? [] : require_program.wrap(`Of no effect: ${still.join(", ")}.`, width),
		...shares.filter(({ name }) => !still.includes(name)).flatMap((share) => idLines(share, width))
	];
}
/** Which risks or assumptions are gathered in a row, by the ids that `--without` takes. */
function idLines({ name, kind, gathers = [] }, width) {
	return (kind === "risk" || kind === "assumption") && gathers.length > 0 && gathers.length <= MOST_IDS ? require_program.wrap(`${name}, by id: ${gathers.join(", ")}.`, width) : [];
}
/** The way from the plan as written, step by step; each step is added to those above it. */
function walkLines(explanation, width) {
	const { walk, contingency, plan } = explanation;
	if (explanation.shares.length === 0) return [];
	const money = spends(explanation);
	const columns = [
		left,
		right("days"),
		...money ? [right(plan.currency)] : [],
		left
	];
	const most = Math.max(...walk.map(({ workingDays }) => workingDays));
	const room = Math.max(6, Math.min(20, width - (money ? 54 : 44)));
	const rows = walk.map((step) => [
		step.step,
		...cells(step, money),
		require_program.bar(step.workingDays, most, room)
	]);
	rows.push([
		"The whole",
		...cells(contingency, money),
		""
	]);
	return ["How it comes about, each step added to those above it", ...require_program.table(columns, rows, width)];
}
// src/text/explainText.ts
/**
* Why this much contingency, as a person reads it: how much it is and what most of it is held for, the shares of all
* causes, what a share is, the way there step by step, and one item at a time. Every figure is the explanation's own.
*
* @param scenario  What was taken in and left out: it is said.
* @returns text ending with a newline
*/
function explainText(given, page, planName, scenario = {}) {
	const explanation = require_program.plainTexts(given);
	const { width, strong } = page;
	const { plan, stamp, tornado = [] } = explanation;
	const error = errorSentence(explanation);
	const some = !nothingMoves(explanation);
	return `${[
		[require_confidenceHead.explanationHead(plan.title, stamp, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		[...require_program.wrap(gapSentence(explanation), width).map(strong), ...require_program.wrap(reasonSentence(explanation), width)],
		some ? shareLines(explanation, width) : [],
		some ? [...require_program.wrap(meaningSentence(explanation), width), ...error === void 0 ? [] : require_program.wrap(error, width)] : [],
		some ? walkLines(explanation, width) : [],
		some ? require_causes.tornadoLines(tornado, {
			money: spends(explanation),
			currency: plan.currency
		}, width) : [],
		[
			"What to look at next",
			`  leeway confidence ${planName}`,
			...some ? [`  leeway forecast ${planName} --without IDS`] : []
		],
		require_program.wrap(require_confidenceHead.explanationStamp(stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/verbs/explain.ts
/** Outcomes and what is read from them, on every thread. */
var ROWS_AS_TASKS = 16;
/** Why this much contingency: its causes with their shares, the way there step by step, and one item at a time. */
function explainVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	const workers = values.count("workers", 64);
	return require_answerVerb.answerVerb(call, values, {
		options,
		rowsAsTasks: () => ROWS_AS_TASKS,
		async ask(plan, onProgress) {
			const asked = {
				...options,
				...require_threadsOf.threadsOf(workers),
				onProgress
			};
			const { explanation: answer, problems } = await require_explainInParallel.explainInParallel(plan, asked);
			return {
				answer,
				problems
			};
		},
		text: (answer, page, plan) => explainText(answer, page, plan, options),
		draw: require_answerVerb.drawing("explain", values)
	});
}
exports.explainVerb = explainVerb;

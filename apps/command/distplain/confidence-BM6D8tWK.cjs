const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_answerAside = require("./answerAside-BsrttFoz.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_program = require("./program.cjs");
const require_formatChance = require("./formatChance-DsebNIGf.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// src/text/confidenceMoney.ts
/** Whether the plan speaks of money at all. */
function spendsMoney({ steps, joint }) {
	return joint.asked !== void 0 || steps.some(({ cost }) => cost !== 0);
}
/** A sum to the digits that the sampling limits of the nearest level support. */
function sumAt(confidence, cost) {
	const nearest = confidence.steps.reduce((best, step) => best === void 0 || Math.abs(step.cost - cost) < Math.abs(best.cost - cost) ? step : best);
	const step = nearest === void 0 ? 1 : require_roundToLimits.limitStep(nearest.cost, nearest.costLow, nearest.costHigh);
	return require_formatMoney.formatMoney(require_roundToLimits.roundToStep(cost, step), confidence.plan.currency);
}
/** A sum for a column: without the currency. */
function bareSum(confidence, cost) {
	return sumAt(confidence, cost).replace(`${confidence.plan.currency} `, "");
}
/** A mean or a difference of sums: two significant digits, with the currency. */
function roughSum({ plan }, value) {
	return require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), plan.currency);
}
/** ... for a column. */
function roughDigits(value) {
	return require_groupDigits.groupDigits(require_roundSignificant.roundSignificant(value, 2));
}
// src/text/confidenceAnswer.ts
/** What the level committed to means, and the neighbours a meeting would ask about. */
function levelSentence(confidence) {
	const { committed } = confidence;
	const level = require_formatPercent.formatPercent(confidence.confidence);
	const sum = spendsMoney(confidence) ? ` and ${sumAt(confidence, committed.cost)}` : "";
	return `At ${level} the plan commits to ${require_formatDate.formatDate(committed.date, "long")}${sum}.`;
}
/** What lateness costs says about the level; or that the plan does not say what lateness costs. */
function stopSentences(confidence) {
	const { stop, missing, steps } = confidence;
	if (missing !== void 0) return [missing];
	if (stop === void 0) return [];
	const level = confidence.confidence;
	const own = steps.find(({ p }) => p === level);
	const best = steps.find(({ p }) => p === stop.p);
	if (own === void 0 || best === void 0) return [];
	const close = stop.clear ? "" : " The figures on either side are too close to call with this many futures.";
	return [verdict(confidence, own, best) + close, ...heldSentence(confidence, best)];
}
function verdict(confidence, own, best) {
	const { stop, steps } = confidence;
	const at = require_formatPercent.formatPercent(best.p);
	const lowest = best === steps[0] ? ", the lowest level looked at" : "";
	const next = stop?.next === void 0 ? `No step up to it costs more than it avoids.` : `The next step, to ${require_formatPercent.formatPercent(stop.next.p)}, holds ${roughSum(confidence, stop.next.costs)} more and avoids ${roughSum(confidence, stop.next.avoids)} of expected lateness.`;
	if (best.p === own.p) return `By what lateness costs, ${at} is where to stop. ${next}`;
	if (best.p < own.p) {
		const more = own.cost - best.cost;
		const avoided = (best.latenessLeft ?? 0) - (own.latenessLeft ?? 0);
		return `By what lateness costs, ${at} would do${lowest}. ${next} All the steps up to ${require_formatPercent.formatPercent(own.p)} hold ${roughSum(confidence, more)} more and avoid ${roughSum(confidence, avoided)}.`;
	}
	const more = best.cost - own.cost;
	const avoided = (own.latenessLeft ?? 0) - (best.latenessLeft ?? 0);
	return `By what lateness costs, go on to ${at}: it holds ${roughSum(confidence, more)} more than ${require_formatPercent.formatPercent(own.p)} and avoids ${roughSum(confidence, avoided)} of expected lateness.`;
}
/** Money held is not money spent: what holding it may cost for the next step to pay after all. */
function heldSentence(confidence, best) {
	const next = confidence.stop?.next;
	if (next === void 0 || !(next.costs > 0) || !spendsMoney(confidence)) return [];
	const share = Math.max(0, next.avoids / next.costs);
	const each = `${confidence.plan.currency} 1`;
	return [`The step from ${require_formatPercent.formatPercent(best.p)} is priced as if all the money held were gone. Held money is spent only when needed: where holding ${each} costs less than ${require_groupDigits.groupDigits(share, 2)}, that step pays too.`];
}
/** What it looks like when the commitment fails: how late, how dear. */
function missedSentence(confidence) {
	const own = confidence.steps.find(({ p }) => p === confidence.confidence);
	if (own === void 0) return "";
	const late = own.late.chance === 0 ? "No future ends later" : `In the ${require_formatPercent.formatPercent(own.late.chance)} that end later it is by ${require_formatDays.formatDays(own.late.days, "calendar day")} on average`;
	if (!spendsMoney(confidence)) return `${late}.`;
	return `${late}; ${own.over.chance === 0 ? "none costs more" : `in the ${require_formatPercent.formatPercent(own.over.chance)} that cost more it is by ${roughSum(confidence, own.over.money)}`}.`;
}
// src/text/confidenceLevels.ts
var right = (heading) => ({
	heading,
	align: "right"
});
var left = (heading) => ({
	heading,
	align: "left"
});
/** Narrower pages leave the sampling limits to the JSON. */
var roomForLimits = 76;
function limits(low, high) {
	return low === high ? low : `${low} to ${high}`;
}
function label(confidence, { p }) {
	return `${require_formatPercent.formatPercent(p)}${p === confidence.confidence ? " *" : "  "}`;
}
/** Dates by level: what each step buys in days, and how late it gets beyond. */
function dateLines(confidence, width) {
	const room = width >= roomForLimits;
	const columns = [
		right("level  "),
		left("finish by"),
		...room ? [left("sampling limits")] : [],
		right("days bought"),
		right("late by, if late")
	];
	const rows = confidence.steps.map((step) => [
		label(confidence, step),
		require_formatDate.formatDate(step.date, "weekday"),
		...room ? [limits(require_formatDate.formatDate(step.lowDate, "shortest"), require_formatDate.formatDate(step.highDate, "shortest"))] : [],
		step.bought === void 0 ? "" : require_columnDays.columnDays(step.bought.workingDays),
		step.late.chance === 0 ? "never" : require_columnDays.columnDays(step.late.days)
	]);
	return [...require_program.wrap("Dates by level (* committed to); bought in working days, late in calendar days", width), ...require_program.table(columns, rows)];
}
/** Sums by level: what each step holds, and what of the lateness it avoids. */
function moneyLines(confidence, width) {
	if (!spendsMoney(confidence) && confidence.lateness === void 0) return [];
	const priced = confidence.lateness !== void 0;
	const remaining = width < roomForLimits ? "left" : "lateness left";
	const head = [
		right("level  "),
		right("cost"),
		...width >= 90 || !priced ? [left("sampling limits")] : [],
		right("more held"),
		...priced ? [
			right(remaining),
			right("avoided"),
			left("pays")
		] : []
	];
	const rows = confidence.steps.map((step) => [
		label(confidence, step),
		bareSum(confidence, step.cost),
		...width >= 90 || !priced ? [limits(bareSum(confidence, step.costLow), bareSum(confidence, step.costHigh))] : [],
		step.bought === void 0 ? "" : roughDigits(step.bought.money),
		...priced ? [roughDigits(step.latenessLeft ?? 0), ...paying(step)] : []
	]);
	const lateness = priced ? `; ${remaining}: the expected cost of finishing after the level's date` : "";
	return [...require_program.wrap(`Money by level, ${confidence.plan.currency}${lateness}`, width), ...require_program.table(head, rows)];
}
function paying({ avoided, bought, netError, worthIt }) {
	if (avoided === void 0 || bought === void 0) return ["", ""];
	const close = netError === void 0 || Math.abs(avoided - bought.money) <= 2 * netError;
	return [roughDigits(avoided), `${worthIt === true ? "yes" : "no"}${close ? ", close" : ""}`];
}
// src/text/jointLines.ts
/** Where between the wanted chance and certainty the pairs of the table lie, by the date's own chance. */
var PLACES = [
	.05,
	.25,
	.45,
	.65,
	.85
];
/** A few of the pairs, the dates spread over those that matter. */
function chosen(pairs, joint) {
	const picked = PLACES.map((place) => {
		const wanted = joint + (1 - joint) * place;
		return pairs.reduce((best, pair) => Math.abs(pair.finishLevel - wanted) < Math.abs(best.finishLevel - wanted) ? pair : best);
	});
	return pairs.filter((pair) => picked.includes(pair));
}
/** How strongly dear futures are late ones, in words. */
function together(correlation) {
	if (Math.abs(correlation) < .05) return "Late futures are no dearer than others";
	const how = Math.abs(correlation) < .3 ? "a little" : Math.abs(correlation) < .7 ? "clearly" : "nearly always";
	return correlation > 0 ? `Late futures are ${how} dearer ones` : `Late futures are ${how} cheaper ones`;
}
/** Where many futures share one date and sum, the smallest level that has them says less than what they keep. */
function levelOfEach({ level, joint, both }) {
	return level < joint ? `: they hold in ${require_formatPercent.formatPercent(both)}` : `: the ${require_formatPercent.formatPercent(level)} level of each`;
}
/** The chance of keeping date and sum at once, what it takes to have the wanted one, and pairs that share it. */
function jointLines(confidence, width) {
	const { joint, committed } = confidence;
	if (!spendsMoney(confidence)) return [];
	const { equal, frontier, asked } = joint;
	const level = require_formatPercent.formatPercent(confidence.confidence);
	const sentences = [
		`${require_formatDate.formatDate(committed.date, "long")} and ${sumAt(confidence, committed.cost)} hold ${level} each, both together ${require_formatPercent.formatPercent(joint.atCommitted)}. ${together(joint.correlation)} (correlation ${joint.correlation.toFixed(2).replace("-", "−")}).`,
		`For both together ${require_formatChance.formatChance(equal.joint)}, promise ${require_formatDate.formatDate(equal.date, "long")} and ${sumAt(confidence, equal.cost)}${levelOfEach(equal)}.`,
		...asked === void 0 ? [] : [`You asked for ${require_formatDate.formatDate(asked.date, "long")} and ${sumAt(confidence, asked.cost)}: ${require_formatPercent.formatPercent(asked.finishLevel)} by that day, ${require_formatPercent.formatPercent(asked.costLevel)} within that sum, ${require_formatPercent.formatPercent(asked.both)} both.`]
	];
	const columns = [
		{
			heading: "finish by",
			align: "left"
		},
		{
			heading: "alone",
			align: "right"
		},
		{
			heading: `with ${confidence.plan.currency}`,
			align: "right"
		},
		{
			heading: "alone",
			align: "right"
		}
	];
	const rows = chosen(frontier.pairs, frontier.joint).map((pair) => [
		require_formatDate.formatDate(pair.date, "weekday"),
		require_formatPercent.formatPercent(pair.finishLevel),
		bareSum(confidence, pair.cost),
		require_formatPercent.formatPercent(pair.costLevel)
	]);
	return [
		"Date and money together",
		...sentences.flatMap((sentence) => require_program.wrap(sentence, width - 2).map((line) => `  ${line}`)),
		"",
		...require_program.wrap(`Pairs that hold together ${require_formatChance.formatChance(frontier.joint)}; take one whole, not parts of two`, width),
		...require_program.table(columns, rows)
	];
}
// src/text/confidenceText.ts
/**
* Why this confidence, as a person reads it: what the level means, what lateness costs says about it, the levels
* side by side, then date and money together. Every figure is the library's own.
*
* @returns text ending with a newline
*/
function confidenceText(given, page, planName, scenario = {}) {
	const confidence = require_program.plainTexts(given);
	const { width, strong } = page;
	return `${[
		[require_confidenceHead.explanationHead(confidence.plan.title, confidence.stamp, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		[
			...require_program.wrap(levelSentence(confidence), width).map(strong),
			...stopSentences(confidence).flatMap((sentence) => require_program.wrap(sentence, width)),
			...require_program.wrap(missedSentence(confidence), width)
		],
		dateLines(confidence, width),
		moneyLines(confidence, width),
		jointLines(confidence, width),
		[
			"What to look at next",
			`  leeway confidence ${planName} --joint 0.7`,
			`  leeway confidence ${planName} --without IDS`
		],
		require_program.wrap(require_confidenceHead.explanationStamp(confidence.stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/verbs/confidence.ts
/** Outcomes, prices of lateness, sorted copies. */
var ROWS_AS_TASKS = 8;
/** Why this confidence and not another: levels side by side, where to stop, date and money together. */
function confidenceVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = {
		...require_engineOptions.engineOptions(values),
		...require_engineOptions.given({ joint: values.chance("joint") })
	};
	return require_answerVerb.answerVerb(call, values, {
		options,
		rowsAsTasks: () => ROWS_AS_TASKS,
		async ask(plan, onProgress) {
			const found = await require_answerAside.answerAside({
				kind: "confidence",
				plan,
				options
			}, onProgress);
			return {
				answer: found.confidence,
				problems: found.problems
			};
		},
		text: (answer, page, plan) => confidenceText(answer, page, plan, options),
		draw: require_answerVerb.drawing("confidence", values)
	});
}
exports.confidenceVerb = confidenceVerb;

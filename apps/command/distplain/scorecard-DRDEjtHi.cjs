const require_engine = require("./engine-Bbth-FEh.cjs");
const require_scorecard = require("./scorecard-_Y14foPY.cjs");
const require_program = require("./program.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_chartsWritten = require("./chartsWritten-SZDOadPC.cjs");
const require_forecastBoth = require("./forecastBoth-CfcpvQXJ.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_moneyWords = require("./moneyWords-DDKtVBSe.cjs");
const require_amountWords = require("./amountWords-BwWNBKDo.cjs");
// ../../packages/core/src/estimating/score/applyAdjustment.ts
/**
* A plan as it would be if its ranges leaned and missed as past ones did: a scenario to look at, never a plan to keep.
* Durations and efforts of tasks that have not started are restated as one-in-ten values and adjusted; certain values,
* outcomes, money and the register stay. The hash stays that of the document.
*/
function applyAdjustment(plan, adjustment) {
	return {
		...plan,
		tasks: plan.tasks.map((task) => {
			if (task.started !== void 0 || task.finished !== void 0) return task;
			const { duration, effort } = task;
			return {
				...task,
				...duration && { duration: adjusted(duration, adjustment) },
				...effort && { effort: adjusted(effort, adjustment) }
			};
		})
	};
}
function adjusted(estimate, { shift, highSide, lowSide }) {
	if (estimate.kind !== "range") return estimate;
	const likely = require_engine.asWrittenValue(estimate);
	const low = Math.min(likely, require_engine.estimateQuantile(estimate, .1));
	const high = Math.max(likely, require_engine.estimateQuantile(estimate, .9));
	const { unit } = estimate;
	const value = shift * likely;
	const to = {
		low: Math.min(value, Math.max(0, shift * (likely - lowSide * (likely - low)))),
		high: shift * (likely + highSide * (high - likely))
	};
	if (to.low === to.high) return {
		kind: "fixed",
		value,
		unit
	};
	const shape = estimate.shape === "triangular" ? "triangular" : "pert";
	return {
		kind: "range",
		low: to.low,
		likely: value,
		high: to.high,
		shape,
		bounds: "p10-p90",
		unit
	};
}
// src/text/adjustedText.ts
/** What the adjustment would do to a plan, beside what the plan says: a scenario, nothing is written. */
function adjustedScenarioLines({ plain, adjusted }, { width }) {
	const money = require_moneyWords.hasMoney(plain);
	const level = require_formatPercent.formatPercent(plain.committed.confidence);
	const row = (name, { committed, contingency, plan }) => [
		name,
		require_formatDate.formatDate(committed.date, "weekday"),
		`${require_formatDate.formatDate(committed.lowDate, "shortest")} to ${require_formatDate.formatDate(committed.highDate, "shortest")}`,
		require_formatDays.formatDays(contingency.workingDays, ""),
		...money ? [require_formatMoney.formatMoney(require_roundToLimits.roundToLimits(committed.cost, committed.costLow, committed.costHigh), plan.currency)] : []
	];
	const { seed, iterations, design, version, plan } = plain;
	return [
		...require_program.wrap(require_program.plainText(`If the ranges of ${plain.plan.title} lean and miss as these did (a scenario; nothing is changed)`), width),
		...require_program.table([
			{
				heading: "",
				align: "left"
			},
			{
				heading: `finish at ${level}`,
				align: "left"
			},
			{
				heading: "sampling limits",
				align: "left"
			},
			{
				heading: "contingency, days",
				align: "right"
			},
			...money ? [{
				heading: `cost at ${level}`,
				align: "right"
			}] : []
		], [row("as it is", plain), row("adjusted", adjusted)], width),
		...require_program.wrap("Contingency is counted from each one's own likely values. Where the team has already allowed for past misses, this counts them twice.", width),
		...require_program.wrap(require_confidenceHead.explanationStamp({
			seed,
			iterations,
			design,
			version,
			sha256: plan.sha256
		}), width)
	];
}
// src/text/scorecardText.ts
var times = (factor) => `${factor.toFixed(2)} times`;
/**
* Past estimates against what happened, as a person reads it: how many held, each estimator, each task, what that
* suggests, and what it cannot say. Every figure is the library's own.
*/
function scorecardText(given, scenario, page) {
	const card = require_program.plainTexts(given);
	const { width, strong } = page;
	const plans = card.plans.map(({ title, versions }) => `${title}${versions > 1 ? ` (${versions} versions)` : ""}`);
	const { overall } = card;
	return `${[
		[strong("Estimates against what happened"), ...require_program.wrap(`Read: ${plans.join("; ")}.`, width)],
		overall === void 0 ? require_program.wrap("No finished task has a range of time to score. Record what finishes; estimate as a range.", width) : sentences(overall).flatMap((sentence, k) => require_program.wrap(sentence, width).map(k === 0 ? strong : (line) => line)),
		peopleLines(card, width),
		entryLines(card, width),
		moneyLines(card, width),
		overall === void 0 ? [] : cautionLines(overall, card, width),
		overall === void 0 ? [] : adjustmentLines(overall, width),
		scenario === void 0 ? [] : adjustedScenarioLines(scenario, page)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
function shareWords({ k, n, share, low, high }) {
	return `${k} of ${n} (${require_formatPercent.formatPercent(share)}, limits ${require_formatPercent.formatPercent(low)} to ${require_formatPercent.formatPercent(high)})`;
}
var RANGES = {
	"too-few": "Too few to judge the ranges by.",
	"too-narrow": "The ranges are too narrow: even the upper limit is below 8 in 10.",
	"too-wide": "The ranges are wider than needed: even the lower limit is above 8 in 10.",
	"as-meant": "That does not contradict 8 in 10, which is what such ranges are meant to hold."
};
function sentences(score) {
	const { inside, below, above, ranges, medianRatio, meanRatio, medianOfMedian } = score;
	const leaning = score.n < 3 || Math.abs(medianOfMedian - 1) < .05 ? "neither way" : medianOfMedian > 1 ? "to the short side" : "to the long side";
	return [`Inside their one-in-ten range: ${shareWords(inside)}; ${below} below it, ${above} above. ${RANGES[ranges]}`, `What happened was ${times(medianRatio)} the likely value in the middle case and ${times(meanRatio)} on average; against the median of what was said, ${times(medianOfMedian)}: estimates leaned ${leaning}.`];
}
function peopleLines({ people }, width) {
	if (people.length === 0) return [];
	const columns = [
		{
			heading: "estimator",
			align: "left"
		},
		{
			heading: "inside",
			align: "right"
		},
		{
			heading: "limits, 95 %",
			align: "left"
		},
		{
			heading: "below",
			align: "right"
		},
		{
			heading: "above",
			align: "right"
		},
		{
			heading: "actual/likely",
			align: "right"
		}
	];
	const rows = people.map(({ name, score }) => [
		name,
		`${score.inside.k} of ${score.n}`,
		`${require_formatPercent.formatPercent(score.inside.low)} to ${require_formatPercent.formatPercent(score.inside.high)}`,
		String(score.below),
		String(score.above),
		Number.isFinite(score.medianRatio) ? score.medianRatio.toFixed(2) : ""
	]);
	return ["By estimator (actual/likely: the middle case)", ...require_program.table(columns, rows, width)];
}
var WHERE = {
	inside: "inside",
	below: "below",
	above: "above"
};
function entryLines({ entries }, width) {
	const timed = entries.filter(({ of }) => of === "duration");
	return timed.length === 0 ? [] : ["Task by task, in working days", ...entryTable(timed, width)];
}
function entryTable(entries, width) {
	const columns = [
		{
			heading: "task",
			align: "left"
		},
		{
			heading: "1 in 10 below",
			align: "right"
		},
		{
			heading: "likely",
			align: "right"
		},
		{
			heading: "1 in 10 above",
			align: "right"
		},
		{
			heading: "actual",
			align: "right"
		},
		{
			heading: "",
			align: "left"
		}
	];
	const rows = entries.map((entry) => [
		entry.name,
		require_amountWords.amount(entry.p10),
		require_amountWords.amount(entry.likely),
		require_amountWords.amount(entry.p90),
		require_amountWords.amount(entry.actual),
		`${WHERE[entry.where]}${entry.within ? ", by less than a day" : ""}${entry.events.length > 0 ? " *" : ""}`
	]);
	const touched = entries.some(({ events }) => events.length > 0);
	return [...require_program.table(columns, rows, width), ...touched ? require_program.wrap("  * something of the register occurred and touched it", width) : []];
}
function moneyLines({ entries, money }, width) {
	if (money === void 0) return [];
	const priced = entries.filter(({ of }) => of === "cost");
	return [...require_program.wrap(`Costs inside their range: ${shareWords(money.inside)}.`, width), ...entryTable(priced, width)];
}
function cautionLines(score, { unscored }, width) {
	const { n, within, withEvents } = score;
	return [
		...n < 30 ? [`${n === 1 ? "One task is" : `${n} tasks are`} few: read the limits, not the share, and rank nobody by it.`] : [],
		...within > 0 ? [`Days are recorded whole, so ${within} of those outside by less than a day may as well be inside.`] : [],
		...withEvents > 0 ? [`${withEvents} of them were touched by something in the register that occurred: a range of the work alone is not meant to hold that.`] : [],
		...unscored.length > 0 ? [`Not scored, having no range or no day of start: ${unscored.map(({ task }) => task).slice(0, 12).join(", ")}.`] : [],
		"Limits are Wilson's (1927) at 95 %; tasks that share a cause are less than independent, so they are narrower than they should be."
	].flatMap((note) => require_program.wrap(`Note: ${note}`, width, "  "));
}
function adjustmentLines({ adjustment, n }, width) {
	if (adjustment === void 0) return require_program.wrap(`An adjustment is suggested from 10 finished tasks with ranges on; there are ${n}.`, width);
	const { shift, highSide, lowSide } = adjustment;
	return require_program.wrap(`What would have made them right: all values ${times(shift)} as large, then the high side ${times(highSide)} as long and the low side ${times(lowSide)}. It is applied to nothing; --apply-to PLAN shows what it would do.`, width);
}
// src/verbs/scorecard.ts
/** Past estimates against what happened; with `--apply-to` what a forecast would be with the same leaning. */
async function scorecardVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	const applyTo = values.text("apply-to");
	const charts = values.text("charts");
	const words = [call.subject ?? "-", ...call.rest ?? []];
	const problems = [...values.problems];
	if ([...words, ...applyTo === void 0 ? [] : [applyTo]].filter((word) => word === "-").length > 1) problems.push(require_program.callProblem("repeated-plan", "-", "Standard input can be one of the plans only.", "Name files for the others."));
	if (problems.length > 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const plans = [];
	for (const word of words) {
		const given = await require_givenPlan.givenPlan(word);
		if (given !== void 0) plans.push(given.plan);
	}
	const target = applyTo === void 0 ? void 0 : await require_givenPlan.givenPlan(applyTo);
	const [plan, ...past] = plans;
	if (plan === void 0 || plans.length < words.length || applyTo !== void 0 && target === void 0) return require_program.exitCodes.invalid;
	const card = require_scorecard.scorecard(plan, ...past);
	let scenario;
	if (target !== void 0) {
		const adjustment = card.overall?.adjustment;
		if (adjustment === void 0) {
			require_program.printProblems([require_program.callProblem("too-few", "--apply-to", "There are too few finished tasks with ranges to adjust anything by.", "Name more past plans, or leave it out.")]);
			return require_program.exitCodes.invalid;
		}
		const both = [target.plan, applyAdjustment(target.plan, adjustment)];
		const { forecasts, problems: found } = await require_forecastBoth.forecastEach(both, options);
		await require_program.hearStops();
		if (found.length > 0) require_program.printProblems(found, target.name);
		const [plain, adjusted] = forecasts ?? [];
		if (plain === void 0 || adjusted === void 0) return require_program.exitCodes.invalid;
		scenario = {
			adjustment,
			plain,
			adjusted
		};
	}
	if (!await require_chartsWritten.chartsWritten("scorecard", card, charts)) return require_program.exitCodes.invalid;
	if (values.has("json")) require_program.printJson({
		...card,
		...scenario && { scenario: brief(scenario) }
	});
	else require_program.printAnswer(scorecardText(card, scenario, require_program.pageOf(process.env, process.stdout)));
	return require_program.exitCodes.done;
}
/** Of two forecasts what the scenario is about. */
function brief({ adjustment, plain, adjusted }) {
	const of = ({ plan, seed, iterations, version, design, committed, asWritten }) => ({
		plan,
		seed,
		iterations,
		version,
		design,
		asWritten,
		committed
	});
	return {
		adjustment,
		plain: of(plain),
		adjusted: of(adjusted)
	};
}
exports.scorecardVerb = scorecardVerb;

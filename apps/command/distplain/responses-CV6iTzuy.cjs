const require_decideInParallel = require("./decideInParallel-CI1FraC6.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_moneyOption = require("./moneyOption-CnXq0Uby.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_threadsOf = require("./threadsOf-af1Xi_1i.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_program = require("./program.cjs");
const require_statedSum = require("./statedSum-C9RA2TpO.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_enumerated = require("./enumerated-CW2v0OFy.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_scenarioOptions = require("./scenarioOptions-CCWzhipn.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// ../../packages/charts/src/sentences/worthSentences.ts
/** The sentence everything else explains: what the response most worth having costs and buys. */
function worthSentence(answer) {
	const { responses, confidence } = answer;
	const open = responses.filter(({ adopted }) => !adopted);
	if (responses.length === 0) return "The plan names no response to a risk or an assumption.";
	const [best] = open;
	if (best === void 0) return "Every response of the plan is adopted; below is what each of them holds.";
	return `${require_program.quoteName(best.action)} ${costs(best, answer)}, ${buys(best, require_formatPercent.formatPercent(confidence))}, ${pays(best)}.`;
}
function costs({ cost }, { plan }) {
	return cost < .005 ? "costs nothing" : `costs ${require_statedSum.statedSum(cost, plan.currency)}`;
}
function buys({ given }, level) {
	const days = -given.workingDays;
	if (Math.abs(days) < .05) return `moves the finish at ${level} by less than a tenth of a day`;
	return days > 0 ? `buys ${require_formatDays.formatDays(days)} at ${level}` : `makes the finish at ${level} ${require_formatDays.formatDays(-days)} later`;
}
function pays({ given }) {
	if (isEven(given)) return "about breaks even: its net worth lies within the sampling limits";
	return given.netWorth > 0 ? "pays for itself" : "does not pay for itself";
}
/** Whether a net worth cannot be told from nought: within its 95 % sampling limits. */
function isEven({ netWorth, netWorthError }) {
	return Math.abs(netWorth) <= 1.96 * netWorthError;
}
/** How many pay for themselves, and what that means. */
function countSentences(answer) {
	const { responses, plan, stands } = answer;
	if (responses.length === 0) return [];
	const adopted = responses.filter((one) => one.adopted).length;
	const paying = responses.filter(({ given }) => given.netWorth > 0 && !isEven(given)).length;
	const even = responses.filter(({ given }) => isEven(given) && given.netWorth !== 0).length;
	const untold = even === 0 ? "" : even === 1 ? " One lies too close to nought to tell." : ` ${even} lie too close to nought to tell.`;
	const many = responses.length === 1 ? "1 response" : `${responses.length} responses`;
	const taken = adopted === 0 ? "none adopted" : adopted === responses.length ? "all adopted" : `${adopted} adopted`;
	const priced = stands.mean.lateness !== void 0;
	const counted = priced ? "and being late" : "(the plan does not say what being late costs)";
	return [`${many}, ${taken}; ${paying} of ${responses.length} ${paying === 1 ? "saves more on average than it costs" : "save more on average than they cost"}, risks, running costs ${counted} counted.${untold}`, ...priced ? [] : [`Add \`lateness\` to the plan to have days counted in ${plan.currency}.`]];
}
// src/text/responsesBest.ts
var aims = {
	date: "for the earliest committed date",
	chance: "for the best chance of the asked date",
	worth: "for the most net worth"
};
/** Which responses to adopt with the sum asked about, what that changes, and how they were found. */
function bestLines(answer, width) {
	const { best } = answer;
	if (best === void 0) return [];
	return [`With ${require_statedSum.statedSum(best.sum, answer.plan.currency)}, ${aims[best.objective]}`, ...sentences(answer, best).flatMap((text) => require_inset.inset(text, width))];
}
function sentences(answer, best) {
	const names = new Map(answer.responses.map(({ id, action }) => [id, action]));
	const list = (ids) => require_enumerated.enumerated(ids.map((id) => require_program.quoteName(names.get(id) ?? id)));
	if (best.ids.length === 0) return ["No response that it pays for helps.", best.how.text];
	const { effect, outlook } = best;
	const cost = require_statedSum.statedSum(best.cost, answer.plan.currency);
	const from = require_formatDate.formatDate(answer.stands.date, "weekday");
	const to = require_formatDate.formatDate(outlook.date, "weekday");
	const level = require_formatPercent.formatPercent(answer.confidence);
	const days = require_formatDays.formatDays(Math.abs(effect.workingDays));
	const way = effect.workingDays <= 0 ? "earlier" : "later";
	const moved = outlook.date === answer.stands.date ? `The date at ${level} stays ${to}.` : `The date at ${level} moves from ${from} to ${to}, ${days} ${way}.`;
	const { finishBy } = outlook.chance;
	const was = answer.stands.chance.finishBy;
	const chance = finishBy === void 0 || was === void 0 ? "" : ` The chance of the asked date goes from ${require_formatPercent.formatPercent(was)} to ${require_formatPercent.formatPercent(finishBy)}.`;
	const net = Math.abs(effect.netWorth) < .5 ? 0 : require_roundSignificant.roundSignificant(effect.netWorth, 2);
	const worth = net >= 0 ? `It saves ${require_formatMoney.formatMoney(net, answer.plan.currency)} more than it costs on average.` : `On average it costs ${require_formatMoney.formatMoney(-net, answer.plan.currency)} more than it saves.`;
	const idle = best.idle.length === 0 ? [] : [`One at a time, ${list(best.idle)} could be left out without moving that date.`];
	return [
		`Adopt ${list(best.ids)}: ${cost}. ${moved}${chance} ${worth}`,
		...idle,
		best.how.text
	];
}
// src/text/responsesTable.ts
/** The responses side by side. */
function responseLines(answer, basis, width) {
	const { responses, plan, confidence } = answer;
	if (responses.length === 0) return [];
	const level = require_formatPercent.formatPercent(confidence);
	const chance = chanceOf(answer);
	const priced = answer.stands.mean.lateness !== void 0;
	const wide = width >= 80;
	const adopted = responses.some((one) => one.adopted);
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "costs",
			align: "right"
		},
		{
			heading: "days",
			align: "right"
		},
		{
			heading: plan.currency,
			align: "right"
		},
		...chance === void 0 ? [] : [{
			heading: "chance",
			align: "right"
		}],
		...priced && wide ? [{
			heading: "lateness",
			align: "right"
		}] : [],
		{
			heading: "net worth",
			align: "right"
		},
		...wide ? [{
			heading: "±",
			align: "right"
		}] : []
	];
	const rows = responses.map((one) => {
		const effect = one[basis];
		return [
			(adopted ? one.adopted ? "* " : "  " : "") + require_program.plainName(one.action),
			require_groupDigits.groupDigits(Math.round(one.cost)),
			require_columnDays.columnDays(effect.workingDays, true),
			money(effect.money),
			...chance === void 0 ? [] : [points(chance.of(effect))],
			...priced && wide ? [money(-(effect.latenessAvoided ?? 0))] : [],
			money(effect.netWorth),
			...wide ? [limits(effect.netWorthError)] : []
		];
	});
	const title = basis === "alone" ? `Alone, no other response adopted, at ${level}` : adopted ? `With the adopted ones as they are (* adopted), at ${level}` : `What each response changes at ${level}`;
	const legend = [
		"costs: mean; days and sum: at the level committed to",
		...chance === void 0 ? [] : [`chance: of ${chance.what}, in points of 100`],
		...priced && wide ? ["lateness: its mean cost"] : [],
		`net worth: mean money saved less the cost${wide ? ", ± its 95 % sampling limits" : ""}`
	];
	return [
		title,
		...require_program.table(columns, rows, width),
		...require_inset.inset(`${legend.join("; ")}.`, width)
	];
}
/** The chance a table shows: of date and sum together where both are asked for. */
function chanceOf({ asked }) {
	if (asked.finishBy !== void 0 && asked.budget !== void 0) return {
		what: "the asked date and budget together",
		of: ({ both }) => both ?? 0
	};
	if (asked.finishBy !== void 0) return {
		what: "the asked date",
		of: ({ finishBy }) => finishBy ?? 0
	};
	if (asked.budget !== void 0) return {
		what: "the budget",
		of: ({ budget }) => budget ?? 0
	};
}
function points(change) {
	const rounded = Math.round(100 * change);
	return rounded === 0 ? "0" : `${rounded < 0 ? "−" : "+"}${Math.abs(rounded)}`;
}
function limits(error) {
	const half = 1.96 * error;
	return half < .5 ? "0" : require_groupDigits.groupDigits(require_roundSignificant.roundSignificant(half, 2));
}
function money(value) {
	if (Math.abs(value) < .5) return "0";
	return require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), "", true);
}
// src/text/responsesText.ts
/**
* What each response buys, as a person reads it: the one most worth having, how many pay for themselves, the best set
* for a sum where one is named, then all side by side. Every figure is the library's own.
*
* @returns text ending with a newline
*/
function responsesText(given, page, planName, scenario = {}) {
	const answer = require_program.plainTexts(given);
	const { width, strong } = page;
	const { responses, best, notes } = answer;
	const some = responses.length > 0;
	const adopted = responses.some((one) => one.adopted);
	const total = responses.reduce((sum, { cost, adopted: is }) => is ? sum : sum + cost, 0);
	return `${[
		[require_confidenceHead.explanationHead(answer.plan.title, answer.stamp, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		[...require_program.wrap(worthSentence(answer), width).map(strong), ...countSentences(answer).flatMap((text) => require_program.wrap(text, width))],
		bestLines(answer, width),
		responseLines(answer, "given", width),
		adopted ? responseLines(answer, "alone", width) : [],
		notes.flatMap((note) => require_program.wrap(`Note: ${note}`, width, "  ")),
		some ? [
			"What to look at next",
			...best === void 0 ? [`  leeway responses ${planName}${require_scenarioOptions.scenarioOptions(scenario)} --sum ${halfOf(total)}`] : best.ids.length > 0 ? [`  leeway forecast ${planName}${require_scenarioOptions.scenarioOptions({
				...scenario,
				with: [...scenario.with ?? [], ...best.ids]
			})}`] : [],
			`  leeway reach ${planName}${require_scenarioOptions.scenarioOptions(scenario)}`
		] : [],
		require_program.wrap(require_confidenceHead.explanationStamp(answer.stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
/** A sum to try: about half of what all responses cost, of one digit. */
function halfOf(total) {
	const half = Math.max(1, total / 2);
	const unit = 10 ** Math.floor(Math.log10(half));
	return require_groupDigits.groupDigits(Math.round(half / unit) * unit).replaceAll(",", "");
}
// src/verbs/responses.ts
/** Outcomes of sets and what is read from them. */
var ROWS_AS_TASKS = 16;
/** What each response costs and buys, alone and given the others; with `--sum` the best set for that much money. */
function responsesVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const sum = require_moneyOption.moneyOption(values, "sum");
	const workers = values.count("workers", 64);
	const options = {
		...require_engineOptions.engineOptions(values),
		...require_engineOptions.given({
			sum: sum.value,
			objective: values.oneOf("aim", [
				"date",
				"chance",
				"worth"
			])
		})
	};
	return require_answerVerb.answerVerb(call, values, {
		options,
		problems: sum.problems,
		rowsAsTasks: () => ROWS_AS_TASKS,
		async ask(plan, onProgress) {
			const asked = {
				...options,
				...require_threadsOf.threadsOf(workers),
				onProgress
			};
			const { responses: answer, problems } = await require_decideInParallel.responsesInParallel(plan, asked);
			return {
				answer,
				problems
			};
		},
		text: (answer, page, plan) => responsesText(answer, page, plan, options),
		draw: require_answerVerb.drawing("responses", values)
	});
}
exports.responsesVerb = responsesVerb;

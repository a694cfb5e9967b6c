const require_decideInParallel = require("./decideInParallel-CI1FraC6.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_moneyOption = require("./moneyOption-CnXq0Uby.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_threadsOf = require("./threadsOf-af1Xi_1i.cjs");
const require_formatChance = require("./formatChance-DsebNIGf.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_program = require("./program.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_enumerated = require("./enumerated-CW2v0OFy.cjs");
const require_statedSum = require("./statedSum-C9RA2TpO.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_scenarioOptions = require("./scenarioOptions-CCWzhipn.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// ../../packages/charts/src/sentences/reachSentences.ts
/** What is asked: "finish by Friday 1 October 2027 within EUR 640,000, 8 times in 10". */
function wish({ asked, plan }) {
	const parts = [...asked.finishBy === void 0 ? [] : [`finish by ${require_formatDate.formatDate(asked.finishBy, "long")}`], ...asked.sum === void 0 ? [] : [`${asked.finishBy === void 0 ? "stay " : ""}within ${require_statedSum.statedSum(asked.sum, plan.currency)}`]];
	const level = require_formatChance.formatChance(asked.confidence);
	return parts.join(" ") + (level.includes("%") ? ` with a chance of ${level}` : `, ${level}`);
}
/** "hold 8 times in 10", "hold in 65 %". */
function held(confidence) {
	const level = require_formatChance.formatChance(confidence);
	return level.includes("%") ? `in ${level}` : level;
}
/** The sentence everything else explains: what to do, what chance that leaves, and what it costs. */
function reachSentence(reach) {
	const { answer, ways, best, chance } = reach;
	const [way] = ways;
	if (answer === "already") return `To ${wish(reach)}: nothing more is needed, the plan as it stands does it in ${require_formatPercent.formatPercent(chance)}.`;
	if (way !== void 0) return `To ${wish(reach)}: ${deeds(way)}: then ${require_formatPercent.formatPercent(way.chance)}. ${price(reach, way)}`;
	const { asked, plan } = reach;
	if (asked.finishBy !== void 0 && asked.finishBy < plan.start) return `To ${wish(reach)}: nothing can, the plan starts on ${require_formatDate.formatDate(plan.start, "long")}.`;
	if (reach.options.responses + reach.options.scope + reach.options.capacity === 0) return `To ${wish(reach)}: nothing in the plan does. It names no response, optional scope or capacity to add; as it stands it is ${require_formatPercent.formatPercent(chance)}.`;
	if (best === void 0 || best.steps.length === 0) return `To ${wish(reach)}: nothing in the plan does, and nothing in it helps: as it stands it is ${require_formatPercent.formatPercent(chance)}.`;
	return `To ${wish(reach)}: nothing in the plan does. The most it can do is ${require_formatPercent.formatPercent(best.chance)}, from ${require_formatPercent.formatPercent(chance)} as it stands.`;
}
/** The other way, and where it stands. */
function otherSentences(reach) {
	const [first, second] = reach.ways;
	if (first === void 0) {
		const { best, asked } = reach;
		if (best === void 0 || best.steps.length === 0) return [];
		const date = require_formatDate.formatDate(best.outlook.date, "long");
		const cost = require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(best.outlook.cost, 3), reach.plan.currency);
		const level = held(asked.confidence);
		return [`For that, ${deeds(best)}. ${price(reach, best)} What holds ${level} then is ${date} and ${cost}, each by itself.`];
	}
	const stands = `As it stands, it is ${require_formatPercent.formatPercent(reach.chance)}.`;
	if (second === void 0) return [stands];
	return [stands, `Or ${deeds(second)}: then ${require_formatPercent.formatPercent(second.chance)}. ${price(reach, second)}`];
}
/** Above this many steps a sentence points to the table. */
var MOST_NAMED = 4;
/** By how much a chance told from so many futures may be off, by sampling alone. */
function samplingSentence({ stamp, chance, ways, best }) {
	const told = ways[0]?.chance ?? best?.chance ?? chance;
	const points = 196 * Math.sqrt(Math.max(told * (1 - told), .01) / stamp.iterations);
	return `By sampling alone a chance may be off by ${points < 1 ? "less than 1 point" : `about ${Math.ceil(points)} points`} of 100; differences on the same draws by less.`;
}
/** "adopt “A” and “B”, drop “C”, add 0.2 of “D”". */
function deeds({ steps }) {
	if (steps.length > MOST_NAMED) return `take the ${steps.length} steps below`;
	const of = (kind) => steps.filter((step) => step.kind === kind);
	const names = (list) => require_enumerated.enumerated(list.map(({ name }) => require_program.quoteName(name)));
	const [responses, scope, capacity] = [
		of("response"),
		of("scope"),
		of("capacity")
	];
	return [
		...responses.length === 0 ? [] : [`adopt ${names(responses)}`],
		...scope.length === 0 ? [] : [`drop ${names(scope)}`],
		...capacity.length === 0 ? [] : [`add ${require_enumerated.enumerated(capacity.map(({ name, capacity: more, from }) => `${more} of ${require_program.quoteName(name)}${from === void 0 ? "" : ` from ${require_formatDate.formatDate(from, "short")}`}`))}`]
	].join(", ");
}
function price({ plan }, { cost }) {
	return cost < .005 ? "It costs no money." : `It costs ${require_statedSum.statedSum(cost, plan.currency)}.`;
}
// src/text/reachSteps.ts
/** The steps of a way, in order, each with what it costs and adds to those before it; and what is lost. */
function stepLines(reach, way, title, width) {
	if (way.steps.length === 0) return [];
	const { plan, asked, chance } = reach;
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: `costs, ${plan.currency}`,
			align: "right"
		},
		{
			heading: "days",
			align: "right"
		},
		{
			heading: "chance",
			align: "right"
		},
		{
			heading: "adds",
			align: "right"
		}
	];
	const rows = way.steps.map((step) => [
		`${verbs[step.kind]} ${what(step)}`,
		require_groupDigits.groupDigits(Math.round(step.cost)),
		require_columnDays.columnDays(step.effect.workingDays, true),
		require_formatPercent.formatPercent(step.chance),
		points(step.bought)
	]);
	const legend = `days: of the finish at ${require_formatPercent.formatPercent(asked.confidence)}; adds: points of 100, to the steps above it.`;
	const lost = way.steps.flatMap((step) => step.kind === "scope" ? [`Lost with ${require_program.plainName(step.name)}: ${step.lost ?? "the plan does not say."}`] : []);
	return [
		title,
		...require_program.table(columns, [[
			"as it stands",
			"",
			"",
			require_formatPercent.formatPercent(chance),
			""
		], ...rows], width),
		...[legend, ...lost].flatMap((text) => require_inset.inset(text, width))
	];
}
var verbs = {
	response: "adopt",
	scope: "drop",
	capacity: "add"
};
function what({ name, capacity, from }) {
	return `${capacity === void 0 ? "" : `${capacity} of `}${require_program.plainName(name)}${from === void 0 ? "" : ` from ${require_formatDate.formatDate(from, "short")}`}`;
}
function points(change) {
	const rounded = Math.round(100 * change);
	if (rounded === 0) return change === 0 ? "0" : change > 0 ? "under 1" : "−under 1";
	return `${rounded < 0 ? "−" : "+"}${Math.abs(rounded)}`;
}
// src/text/reachText.ts
/**
* What it would take, as a person reads it: what to do and what chance that leaves, another way where there is one,
* the steps in order, and how they were found. Every figure is the library's own.
*
* @returns text ending with a newline
*/
function reachText(given, page, planName, beforehand = {}) {
	const reach = require_program.plainTexts(given);
	const { width, strong } = page;
	const [first, second] = reach.ways;
	const shown = first ?? reach.best;
	return `${[
		[require_confidenceHead.explanationHead(reach.plan.title, reach.stamp, page)],
		require_scenarioLines.scenarioLines(beforehand, width),
		[...require_program.wrap(reachSentence(reach), width).map(strong), ...otherSentences(reach).flatMap((text) => require_program.wrap(text, width))],
		shown === void 0 ? [] : stepLines(reach, shown, first === void 0 ? "As close as it comes" : "Step by step", width),
		second === void 0 ? [] : stepLines(reach, second, "The other way, step by step", width),
		require_program.wrap(`${reach.how.text} ${samplingSentence(reach)}`, width),
		reach.notes.flatMap((note) => require_program.wrap(`Note: ${note}`, width, "  ")),
		shown === void 0 || shown.steps.length === 0 ? [] : [
			"What to look at next",
			`  leeway forecast ${planName}${require_scenarioOptions.scenarioOptions(together(shown, beforehand))}`,
			`  leeway responses ${planName}${require_scenarioOptions.scenarioOptions(beforehand)}`
		],
		require_program.wrap(require_confidenceHead.explanationStamp(reach.stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
/** The scenario in which `forecast` shows the plan with these steps taken. */
function together({ steps }, { with: taken = [], without: left = [] }) {
	const ids = (dropped) => steps.filter(({ kind }) => kind === "scope" === dropped).map(({ id }) => id);
	return {
		with: [...taken, ...ids(false)],
		without: [...left, ...ids(true)]
	};
}
// src/verbs/reach.ts
/** Outcomes of sets and what is read from them. */
var ROWS_AS_TASKS = 16;
/** What it would take to make a date, a sum or both: responses to adopt, scope to drop, capacity to add. */
function reachVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const sum = require_moneyOption.moneyOption(values, "sum");
	const workers = values.count("workers", 64);
	const options = {
		...require_engineOptions.engineOptions(values),
		...require_engineOptions.given({
			sum: sum.value,
			finishBy: values.text("by")
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
			const { reach: answer, problems } = await require_decideInParallel.reachInParallel(plan, asked);
			return {
				answer,
				problems
			};
		},
		text: (answer, page, plan) => reachText(answer, page, plan, options)
	});
}
exports.reachVerb = reachVerb;

const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_program = require("./program.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_moneyOption = require("./moneyOption-CnXq0Uby.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_answerAside = require("./answerAside-BsrttFoz.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_versionsBeside = require("./versionsBeside-U7WaOrrE.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_roundTogether = require("./roundTogether-DWmzPQjd.cjs");
const require_statedSum = require("./statedSum-C9RA2TpO.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_fundsFinding = require("./fundsFinding-BxGIYfJN.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// src/text/budgetSums.ts
function sumsOf({ total, plan }) {
	const step = require_roundToLimits.limitStep(total.committed, total.low, total.high);
	const column = (value) => require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, step), "");
	return {
		step,
		say: (value) => require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, step), plan.currency),
		column,
		together: (values) => require_roundTogether.roundTogether(values, step).map((value) => require_formatMoney.formatMoney(value, "")),
		stated: (value) => require_statedSum.statedSum(value, plan.currency),
		statedColumn: (value) => require_statedSum.statedSum(value, ""),
		rough: (value) => require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), plan.currency)
	};
}
// src/text/budgetAnswer.ts
/** The committed sum, what it is made of, who holds the contingency; the budget's chance; the reserve, apart. */
function budgetSentences(budget) {
	const { total, contingency, confidence, asked, reserve } = budget;
	const { say, stated } = sumsOf(budget);
	const level = require_formatPercent.formatPercent(confidence);
	const { holder, releaseRule } = contingency;
	const held = holder === void 0 ? "; the plan names no holder" : `, held by ${holder.name}`;
	const made = contingency.money > 0 ? `${stated(total.asWritten)} as written and ${say(contingency.money)} of contingency${held}` : `no more than the ${stated(total.asWritten)} as written`;
	return {
		first: `At ${level} the plan costs ${say(total.committed)} at most: ${made}.`,
		others: [
			...asked === void 0 ? [] : [`The budget of ${stated(asked.budget)} holds in ${require_formatPercent.formatPercent(asked.chance)} of futures.`],
			...releaseRule === void 0 ? [] : [`How contingency is released: ${releaseRule}`],
			...reserve === void 0 ? [] : [`The sponsor's reserve of ${stated(reserve)} is for what nobody foresaw: it is no contingency and in none of these figures.`]
		]
	};
}
// src/text/budgetComponents.ts
var names = {
	spent: "Spent so far",
	"task-cost": "Task costs, once",
	"task-per-day": "Task costs by the day",
	people: "People",
	risks: "Risks and assumptions",
	responses: "Responses",
	overheads: "Overheads"
};
var right$2 = (heading) => ({
	heading,
	align: "right"
});
/** What the money is for: by component, then by phase; the last column adds up. */
function componentLines(budget, width) {
	const { components, phases, total, addedUp, plan, confidence } = budget;
	const { column, say, statedColumn, together } = sumsOf(budget);
	const level = require_formatPercent.formatPercent(confidence);
	const part = `of ${column(total.committed)}`;
	const splits = together(components.map(({ split }) => split));
	const head = [
		{
			heading: "",
			align: "left"
		},
		right$2("as written"),
		right$2("mean"),
		right$2("P50"),
		right$2("P80"),
		right$2(part)
	];
	const rows = components.map(({ kind, asWritten, mean, p50, p80 }, i) => [
		names[kind],
		statedColumn(asWritten),
		...[
			mean,
			p50,
			p80
		].map(column),
		splits[i] ?? ""
	]);
	const whole = [
		"Together",
		statedColumn(total.asWritten),
		...[
			total.mean,
			total.p50,
			total.p80,
			total.committed
		].map(column)
	];
	const phaseSplits = together(phases.map(({ split }) => split));
	const phaseRows = phases.map(({ phase, mean, p50, p80 }, i) => [
		phase ?? "Of no phase",
		...[
			mean,
			p50,
			p80
		].map(column),
		phaseSplits[i] ?? ""
	]);
	const added = Math.abs(addedUp.p80 - total.p80) > Math.abs(total.p80) * .002 ? ` Added up, the P80s above would make ${say(addedUp.p80)}; the P80 of the whole is ${say(total.p80)}.` : "";
	return [
		[`What the money is for, ${plan.currency}`, ...require_program.table(head, [...rows, whole], width)],
		require_program.wrap(`P50 and P80 are those of each line alone and do not add up.${added} The last column adds up: it divides the ${say(total.committed)} of the ${level} level into what each line comes to, on average, in futures that cost about that much.`, width),
		...phases.length > 1 ? [[`By phase, ${plan.currency}`, ...require_program.table([
			head[0],
			right$2("mean"),
			right$2("P50"),
			right$2("P80"),
			right$2(part)
		], phaseRows, width)]] : []
	];
}
// src/text/budgetLeft.ts
var right$1 = (heading) => ({
	heading,
	align: "right"
});
var sources = {
	given: "as given in the call",
	signed: "as the signed version commits to",
	plan: "as the plan asks for"
};
var ways = {
	expired: "window passed",
	closed: "closed",
	occurred: "happened",
	several: "several"
};
/** Contingency left against what may still be needed; what settled entries held; how it runs off. */
function leftLines(left, width) {
	const money = require_fundsFinding.leftMoney(left);
	const days = require_fundsFinding.leftDays(left);
	const { plan, settled, release, missing } = left;
	const parts = [...left.money === void 0 ? [] : [`${require_fundsFinding.leftFinding(left, money)}. Agreed: ${money.say(left.money.agreed)}, ${sources[left.money.agreedFrom]}.`], ...left.days === void 0 ? [] : [`${require_fundsFinding.leftFinding(left, days)}. Agreed: ${require_formatDate.formatDate(left.days.agreedDate)}, ${sources[left.days.agreedFrom]}.`]];
	const both = (effect) => [days.column(effect.workingDays), money.column(effect.money)];
	const none = (effect) => effect.workingDays === 0 && effect.money === 0;
	const head = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "",
			align: "left"
		},
		right$1("held: days"),
		right$1(plan.currency),
		right$1("may go: days"),
		right$1(plan.currency)
	];
	const rows = settled.map(({ name, how, held, mayRelease }) => [
		name,
		ways[how],
		...both(held),
		...how === "occurred" || how === "several" ? ["", ""] : both(mayRelease)
	]);
	const told = none(release) ? "Nothing of it may go: what is left is needed for what remains." : `A proposal, for whoever holds the contingency: ${days.say(release.workingDays)} and ${money.say(release.money)} may go. It is no more than was held for what can no longer happen, and no more than is left beyond what may still be needed.`;
	return [
		["Contingency left", ...parts.flatMap((part) => require_program.wrap(part, width - 2).map((line) => `  ${line}`))],
		...rows.length === 0 ? [] : [[
			"No longer open: what was held for it",
			...require_program.table(head, rows, width),
			...happened(left, width),
			...require_program.wrap(told, width)
		]],
		aheadLines(left, width),
		...missing.length === 0 ? [] : [missing.flatMap((one) => require_program.wrap(`- ${one}`, width, "  "))]
	];
}
/** What happened is in the plan as written now: what it adds there, against what was held for it. */
function happened(left, width) {
	const occurred = left.settled.filter(({ took }) => took !== void 0);
	if (occurred.length === 0) return [];
	const sum = (of) => {
		const parts = occurred.map(of);
		const all = (part) => parts.reduce((total, one) => total + (one?.[part] ?? 0), 0);
		return `${require_fundsFinding.leftDays(left).say(all("workingDays"))} and ${require_fundsFinding.leftMoney(left).say(all("money"))}`;
	};
	const took = sum((one) => one.took);
	const held = sum((one) => one.held);
	return require_program.wrap(`What happened adds ${took} to the plan as written; ${held} were held for it.`, width);
}
/** At most so many lines; the chart and the JSON have every month. */
var MOST = 8;
function aheadLines(left, width) {
	const { ahead, plan } = left;
	if (ahead.length < 2) return [];
	const every = Math.max(1, Math.ceil((ahead.length - 1) / MOST));
	const shown = ahead.filter((_, i) => i % every === 0 || i === ahead.length - 1);
	const costs = left.money !== void 0 || ahead.some(({ exposure }) => exposure.money !== 0);
	const head = [
		{
			heading: "after",
			align: "left"
		},
		right$1("days"),
		...costs ? [right$1(plan.currency)] : []
	];
	const rows = shown.map(({ date, exposure }) => [
		require_formatDate.formatDate(date),
		require_fundsFinding.leftDays(left).column(exposure.workingDays),
		...costs ? [require_fundsFinding.leftMoney(left).column(exposure.money)] : []
	]);
	return [...require_program.wrap("What may still be needed as time passes, if until then all goes as written", width), ...require_program.table(head, rows, width)];
}
// src/text/budgetMonths.ts
var right = (heading) => ({
	heading,
	align: "right"
});
/** When the money is needed against when it is released, and what would cure a month that runs short. */
function monthLines(budget, width) {
	const { months, funds, plan, confidence, total } = budget;
	if (months.length === 0 || total.committed === 0) return [];
	const { column, statedColumn, step, say } = sumsOf(budget);
	const level = require_formatPercent.formatPercent(confidence);
	const shown = months.slice(0, 1 + lastMoving(budget, step));
	const head = [
		{
			heading: "",
			align: "left"
		},
		right("in it P50"),
		right("P80"),
		right("by end P50"),
		right("P80"),
		...funds === void 0 ? [] : [
			right("released"),
			right("covered"),
			right("short")
		]
	];
	const rows = shown.map(({ month, spent, byEnd, released, chanceCovered, short = 0 }) => [
		require_fundsFinding.monthName(month),
		...[
			spent.p50,
			spent.p80,
			byEnd.p50,
			byEnd.p80
		].map(column),
		...funds === void 0 ? [] : [
			released === void 0 ? "" : statedColumn(released),
			chanceCovered === void 0 ? "" : require_formatPercent.formatPercent(chanceCovered),
			short > 0 ? column(short) : ""
		]
	]);
	const left = funds?.lacking ?? 0;
	return [[`When it is needed, ${plan.currency}`, ...require_program.table(head, rows, width)], [
		...require_program.wrap(`${require_fundsFinding.fundsFinding(budget)}.`, width),
		...funds !== void 0 && left > 0 ? require_program.wrap(`All releases together are ${say(left)} less than the ${level} level costs: earlier alone will not do.`, width) : [],
		...(funds?.earlier ?? []).map(({ from, amount, neededBy }) => `  ${require_formatDate.formatDate(from)}: ${statedColumn(amount)} are needed by ${require_formatDate.formatDate(neededBy)}`)
	]];
}
/** The last month in which a digit shown moves. */
function lastMoving({ months }, step) {
	return months.findLastIndex(({ spent, byEnd }, m) => {
		const before = months[m - 1]?.byEnd.p80 ?? 0;
		return m === 0 || Math.abs(spent.mean) >= step / 2 || Math.abs(byEnd.p80 - before) >= step / 2;
	});
}
// src/text/budgetWorth.ts
/** Benefit against cost, doing nothing, and what delay costs. */
function worthLines(budget, width) {
	const { worth, delay } = budget;
	const { rough } = sumsOf(budget);
	const said = [];
	if (worth !== void 0) {
		const { appraisal, benefitCost, returnRate, doNothing } = worth;
		const { net, payback } = appraisal;
		said.push(`Net value over ${appraisal.years} years at ${percents(appraisal.discountRate)}: ${rough(net.p50)} in the middle, ${rough(net.p10)} at P10, ${rough(net.p90)} at P90; above nought in ${require_formatPercent.formatPercent(appraisal.chancePositive)} of futures. Costs are not discounted.`, `Benefits per unit of cost: ${range(benefitCost, (value) => require_groupDigits.groupDigits(value, 2))}; more than 1 in ${require_formatPercent.formatPercent(benefitCost.chanceAboveOne)}.`, returnRate.p50 === void 0 ? "No rate of return: in most futures no rate would make benefits and cost even." : `Yearly rate of return, cost counted at the start: ${range(returnRate, percents)}.`, payback.p50 === void 0 ? `Paid back within those years in ${require_formatPercent.formatPercent(payback.chance)} of futures.` : `Paid back by ${require_formatDate.formatDate(payback.p50)} in half of the futures${payback.p80 === void 0 ? "" : `, by ${require_formatDate.formatDate(payback.p80)} in 80 %`}.`, `Doing nothing has a net value of 0 from here; going on has ${rough(doNothing.goingOn)} on average and is worth more in ${require_formatPercent.formatPercent(doNothing.chanceBetter)}.` + (doNothing.spent > 0 ? ` ${rough(doNothing.spent)} are spent either way.` : "") + (doNothing.text === void 0 ? "" : ` The plan says of doing nothing: ${doNothing.text}`));
	}
	const late = [];
	const { lateness } = delay;
	if (lateness !== void 0) late.push(`Late after ${require_formatDate.formatDate(lateness.after)}: ${rough(lateness.perWeek)} a week${lateness.once === 0 ? "" : ` and ${rough(lateness.once)} once`}. The chance of that is ${require_formatPercent.formatPercent(lateness.chanceLate)}; over all futures it is ${require_groupDigits.groupDigits(lateness.weeksLate, 1)} weeks and ${rough(lateness.expected)}, beside the total and not in it.`);
	if (delay.overheadsPerWeek !== 0) late.push(`Each week longer costs ${rough(delay.overheadsPerWeek)} of overheads; they are in the total.`);
	if (delay.benefitsPerWeek !== void 0) late.push(`Each week that benefits begin later loses ${rough(delay.benefitsPerWeek)} of net value.` + (lateness === void 0 ? "" : " Lateness may price the same loss: do not add the two."));
	const block = (heading, sentences) => sentences.length === 0 ? [] : [[heading, ...sentences.flatMap((one) => require_program.wrap(one, width - 2).map((line) => `  ${line}`))]];
	return [...block("Benefit against cost", said), ...block("What delay costs", late)];
}
function percents(rate) {
	return `${require_groupDigits.groupDigits(100 * rate, 1).replace(/\.0$/, "")} %`;
}
function range({ p10, p50, p90 }, say) {
	return [
		p50 === void 0 ? "not known in the middle" : `${say(p50)} in the middle`,
		...p10 === void 0 ? [] : [`${say(p10)} at P10`],
		...p90 === void 0 ? [] : [`${say(p90)} at P90`]
	].join(", ");
}
// src/text/budgetText.ts
/**
* The money of a plan as a person reads it. Every figure is the library's own.
*
* @returns text ending with a newline
*/
function budgetText(given, page, planName, scenario = {}) {
	const budget = require_program.plainTexts(given);
	const { width, strong } = page;
	const { first, others } = budgetSentences(budget);
	const spends = budget.components.length > 0;
	return `${[
		[require_confidenceHead.explanationHead(budget.plan.title, budget.stamp, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		spends ? [...require_program.wrap(first, width).map(strong), ...others.flatMap((one) => require_program.wrap(one, width))] : require_program.wrap("The plan speaks of no money: give tasks a `cost`, people a `rate`, or `overheads`.", width),
		...spends ? componentLines(budget, width) : [],
		...monthLines(budget, width),
		...budget.left === void 0 ? [] : leftLines(budget.left, width),
		...worthLines(budget, width),
		[
			"What to look at next",
			`  leeway confidence ${planName}`,
			`  leeway reach ${planName}`,
			`  leeway money ${planName} --charts charts`
		],
		require_program.wrap("The figures support a decision about money; your own rules for approval and the advice of those answerable for accounts come first.", width),
		require_program.wrap(require_confidenceHead.explanationStamp(budget.stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/verbs/money.ts
/** Rows by month: some twenty, with what they are taken from. */
var ROWS_AS_TASKS = 64;
/** What the money is for and when it is needed, contingency left, benefit against cost, what delay costs. */
async function moneyVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const sum = require_moneyOption.moneyOption(values, "sum");
	const by = require_dateOption.dateOption(values, "by", "");
	const today = require_dateOption.dateOption(values, "today", "");
	const signed = await signedPlan(values);
	if (signed.failed) return require_program.exitCodes.invalid;
	const options = require_engineOptions.engineOptions(values);
	const agreed = require_engineOptions.given({
		money: sum.value,
		date: by.value === "" ? void 0 : by.value
	});
	return require_answerVerb.answerVerb(call, values, {
		options,
		problems: [
			...sum.problems,
			...by.problems,
			...today.problems,
			...signed.problems
		],
		rowsAsTasks: () => ROWS_AS_TASKS,
		async ask(plan, onProgress) {
			const kept = call.subject === void 0 || call.subject === "-" ? void 0 : require_versionsBeside.signedVersion(call.subject, plan);
			const asked = {
				...options,
				agreed,
				...require_engineOptions.given({
					today: today.value === "" ? void 0 : today.value,
					signed: signed.plan ?? kept
				})
			};
			const found = await require_answerAside.answerAside({
				kind: "money",
				plan,
				options: asked
			}, onProgress);
			return {
				answer: found.budget,
				problems: found.problems
			};
		},
		text: (answer, page, plan) => budgetText(answer, page, plan, options),
		draw: require_answerVerb.drawing("money", values)
	});
}
/** The version that `--signed` names; what is wrong with that document is printed under its own name. */
async function signedPlan(values) {
	const path = values.text("signed");
	if (path === void 0 || path === "") return { problems: [] };
	if (path === "-") return { problems: [require_program.callProblem("needs-file", "--signed -", "The version that was signed is read from a file.", "Name the file.")] };
	const { name, text, problem } = await require_readDocument.readDocument(path);
	const { plan, problems } = text === void 0 ? {
		plan: void 0,
		problems: []
	} : require_readPlan.readPlan(text);
	const all = problem === void 0 ? problems : [problem];
	if (all.length > 0) require_program.printProblems(all, name);
	return plan === void 0 ? {
		problems: [],
		failed: true
	} : {
		plan,
		problems: []
	};
}
exports.moneyVerb = moneyVerb;

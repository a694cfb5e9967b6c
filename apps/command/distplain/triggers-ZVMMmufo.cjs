const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_program = require("./program.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_triggerLines = require("./triggerLines-CMy4-aAs.cjs");
const require_versionsBeside = require("./versionsBeside-U7WaOrrE.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
// src/text/triggersText.ts
var HOW = "Agree on them with your approvers and write them into the plan, e.g. `returnTriggers: [{ id: date-at-risk, chanceOfDateBelow: 0.6 }]`. Each has one condition: chanceOfDateBelow, chanceOfBudgetBelow, contingencyCoverBelow, signpost, finishLaterThan or costAbove.";
/** When the plan comes back to its approvers, and where each condition stands. */
function triggersText(plan, { forecast, triggers }, page, planWord) {
	const stamp = {
		...forecast,
		sha256: forecast.plan.sha256
	};
	const none = triggers.triggers.length === 0;
	return `${[
		[require_confidenceHead.explanationHead(require_program.plainName(plan.title), stamp, page)],
		require_triggerLines.triggerLines(require_program.plainTexts(triggers), page),
		none ? require_program.wrap(HOW, page.width) : [],
		require_nextLines.nextLines([[`leeway forecast ${planWord}`, "the figures behind them"], [`leeway reach ${planWord}`, "what it would take to keep to what was agreed"]], page.width),
		require_program.wrap(require_confidenceHead.explanationStamp(stamp), page.width)
	].filter((block) => block.length > 0).map((block) => block.join("\n")).join("\n\n")}\n`;
}
// src/verbs/triggers.ts
/** Where every agreed return trigger stands; code 1 with `--fail` when one has tripped. */
async function triggersVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	const workers = values.count("workers", 64);
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const wrong = [...values.problems, ...today.problems];
	if (wrong.length > 0) {
		require_program.printProblems(wrong);
		return require_program.exitCodes.invalid;
	}
	const subject = call.subject ?? "-";
	const { name, text, problem } = await require_readDocument.readDocument(subject);
	if (text === void 0) {
		if (problem !== void 0) require_program.printProblems([problem], name);
		return require_program.exitCodes.invalid;
	}
	const { plan, problems } = require_readPlan.readPlan(text);
	if (problems.length > 0) require_program.printProblems(problems, name);
	if (plan === void 0) return require_program.exitCodes.invalid;
	const signed = subject === "-" ? void 0 : require_versionsBeside.signedVersion(subject, plan);
	const { standing, problems: found } = await require_triggerLines.computeStanding({
		text,
		plan,
		options,
		workers,
		signed,
		today: today.value
	});
	await require_program.hearStops();
	if (found.length > 0) require_program.printProblems(found, name);
	if (standing === void 0) return require_program.exitCodes.invalid;
	if (values.has("json")) {
		const { seed, iterations, design, version } = standing.forecast;
		const { confidence, currency, triggers } = standing.triggers;
		const { title, sha256, approvalSha256, statusDate } = plan;
		require_program.printJson({
			plan: {
				title,
				sha256,
				approvalSha256,
				...statusDate === void 0 ? {} : { statusDate }
			},
			seed,
			iterations,
			design,
			version,
			confidence,
			currency,
			triggers
		});
	} else require_program.printAnswer(triggersText(plan, standing, require_program.pageOf(process.env, process.stdout), require_shellWord.shellWord(name)));
	return standing.triggers.triggers.some(({ state }) => state === "tripped") && values.has("fail") ? require_program.exitCodes.found : require_program.exitCodes.done;
}
exports.triggersVerb = triggersVerb;

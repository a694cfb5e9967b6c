const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_answerAside = require("./answerAside-BsrttFoz.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_program = require("./program.cjs");
const require_pathsChain = require("./pathsChain-CimuxDTt.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// src/text/whyWords.ts
/** What a bound is, in a few words: "after Drawings + 5 working days", "Ada, busy with Tender". */
function boundWords(bound) {
	const held = bound.wait === void 0 ? "" : `, then held back ${require_formatDays.formatDays(bound.wait)} by the register`;
	return `${bareWords(bound)}${held}`;
}
function bareWords({ kind, task, person, link, lag, day }) {
	switch (kind) {
		case "link": return linkWords(task?.name ?? "", link, lag);
		case "person": return task === void 0 || day <= 0 ? `${person?.name ?? ""}, free` : `${person?.name ?? ""}, busy with ${task.name}`;
		case "away": return `${person?.name ?? ""}, away in part`;
		case "not-before": return "the date it may not start before";
		case "held-to-plan": return "the start as written, which it holds to";
		case "status-date": return "the day after the status date";
		case "recorded": return "a recorded start";
		case "plan-start": return "the plan's start";
	}
}
function linkWords(name, link, lag) {
	const apart = lag === void 0 ? "" : lag > 0 ? ` + ${require_formatDays.formatDays(lag)}` : ` less ${require_formatDays.formatDays(-lag)}`;
	switch (link) {
		case "start-to-start": return `the start of ${name}${apart}`;
		case "finish-to-finish": return `its finish no earlier than that of ${name}${apart}`;
		case "start-to-finish": return `its finish no earlier than the start of ${name}${apart}`;
		default: return `after ${name}${apart}`;
	}
}
// src/text/whyText.ts
function answerSentences({ task, asWritten, bounds, awayBefore, futures }) {
	const name = task.name;
	const date = require_formatDate.formatDate(asWritten.startDate, "long");
	const binding = bounds.filter(({ binds }) => binds);
	if (asWritten.state === "finished") return [`${name} started on ${date} and is finished: both are recorded.`];
	const reasons = binding.map(boundWords).join("; and, just as late, ");
	const started = asWritten.state === "started";
	const held = started ? `${name} started on ${date}: that is recorded.` : `${name} starts on ${date} in the plan as written. What holds it: ${reasons}.`;
	const needed = asWritten.needed ? [] : ["The plan as written does without it; it passes on what it waits for."];
	const away = awayBefore > .05 ? [`Its people are away, or do not work, on ${require_formatDays.formatDays(awayBefore)} before that start.`] : [];
	const slip = slipSentence(asWritten);
	const critical = `It is critical in ${require_formatPercent.formatPercent(futures.criticality)} of the futures.`;
	if (started) return [held, `${slip} ${critical}`];
	const { p10, p50, p90 } = futures.startDates;
	const range = p10 === p90 ? `It starts on ${require_formatDate.formatDate(p50, "weekday")} in at least 8 futures of 10` : `In 8 futures of 10 it starts between ${require_formatDate.formatDate(p10, "weekday")} and ${require_formatDate.formatDate(p90, "weekday")}`;
	return [
		held,
		...needed,
		...away,
		`${slip} ${range}. ${critical}`
	];
}
function slipSentence({ slack, state }) {
	const slip = state === "started" ? "take longer" : "slip";
	if (slack === void 0) return `It could ${slip} without ever moving the finish.`;
	if (slack === 0) return `It cannot ${slip} without moving the finish as written.`;
	return `It could ${state === "started" ? "take" : "slip"} ${require_formatDays.formatDays(slack)}${state === "started" ? " longer" : ""} before the finish as written moved.`;
}
function boundLines({ bounds }, width) {
	const columns = [
		{
			heading: "what it waits for",
			align: "left"
		},
		{
			heading: "allows",
			align: "left"
		},
		{
			heading: "days earlier",
			align: "right"
		},
		{
			heading: "sets it in",
			align: "right"
		}
	];
	const rows = bounds.map((bound) => [
		boundWords(bound),
		require_formatDate.formatDate(bound.startDate, "weekday"),
		slackCell(bound),
		require_formatPercent.formatPercent(bound.share)
	]);
	const ties = bounds.reduce((sum, { share }) => sum + share, 0) > 1.001;
	return [
		...require_program.wrap("Each bound as written, and the share of the futures in which it set the start", width),
		...require_program.table(columns, rows, width),
		...ties ? ["  where several bind at once, each counts"] : []
	];
}
/** A task that holds to the plan is not held by that in the plan itself. */
function slackCell({ kind, binds, slack }) {
	return binds ? "holds it" : kind === "held-to-plan" ? "" : require_columnDays.columnDays(slack);
}
/** Behind which tasks somebody was waited for, over the futures. */
function behindLines({ bounds }, width) {
	return bounds.flatMap(({ person, behind }) => {
		if (person === void 0 || behind === void 0) return [];
		const list = behind.slice(0, 4).map(({ task, share }) => `${task.name} (${require_formatPercent.formatPercent(share)})`);
		const more = behind.length > 4 ? ` and ${behind.length - 4} more` : "";
		return require_program.wrap(`Waits for ${person.name} behind ${list.join(", ")}${more}.`, width);
	});
}
/**
* What holds a task's start, as a person reads it. Every figure is the library's own.
*
* @returns text ending with a newline
*/
function whyText(given, page, planName, scenario) {
	const why = require_program.plainTexts(given);
	const { width, strong } = page;
	const [answer = "", ...more] = answerSentences(why);
	const chain = why.chain.map(({ task, way }) => ({
		name: task.name,
		way
	}));
	const before = why.chain.at(-2)?.task.id;
	return `${[
		[require_confidenceHead.explanationHead(why.plan.title, why.stamp, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		[...require_program.wrap(answer, width).map(strong), ...more.flatMap((sentence) => require_program.wrap(sentence, width))],
		boundLines(why, width),
		behindLines(why, width),
		chain.length < 2 ? [] : ["The chain that sets it, as written", ...require_inset.inset(require_pathsChain.chainText(chain), width)],
		[
			"What to look at next",
			...before === void 0 ? [] : [`  leeway why ${planName} ${require_program.cut(before, 64)}`],
			`  leeway paths ${planName}`
		],
		require_program.wrap(require_confidenceHead.explanationStamp(why.stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/verbs/why.ts
var ROWS_AS_TASKS = 2;
/** What holds a task's start, link by link and person by person. */
function whyVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	return require_answerVerb.answerVerb(call, values, {
		options,
		rowsAsTasks: () => ROWS_AS_TASKS,
		async ask(plan, onProgress) {
			const asked = {
				...options,
				task: call.second ?? ""
			};
			const found = await require_answerAside.answerAside({
				kind: "why",
				plan,
				options: asked
			}, onProgress);
			return {
				answer: found.why,
				problems: found.problems
			};
		},
		text: (answer, page, plan) => whyText(answer, page, plan, options)
	});
}
exports.whyVerb = whyVerb;

const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_answerAside = require("./answerAside-BsrttFoz.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_program = require("./program.cjs");
const require_pathsChain = require("./pathsChain-CimuxDTt.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// src/text/pathsTasks.ts
var SHOWN = 10;
/** The tasks with most at stake: how often critical, how far they could slip, what is at stake on them. */
function stakeLines({ tasks, stamp }, width) {
	const staked = tasks.flatMap((task) => task.daysAtStake === void 0 ? [] : [{
		...task,
		daysAtStake: task.daysAtStake
	}]).sort((a, b) => b.daysAtStake - a.daysAtStake || (a.id < b.id ? -1 : 1));
	if (stamp.iterations === 1) return ["One future has no range, so nothing can be said of what is at stake."];
	if (staked.length === 0) return ["Nothing that could take longer than written decides the finish."];
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "at stake",
			align: "right"
		},
		{
			heading: "critical in",
			align: "right"
		},
		{
			heading: "could slip",
			align: "right"
		}
	];
	const rows = staked.slice(0, SHOWN).map((task) => [
		task.name,
		require_columnDays.columnDays(task.daysAtStake),
		require_formatPercent.formatPercent(task.criticality),
		slackCell(task)
	]);
	return [
		"Near the driving paths, in working days",
		...require_program.table(columns, rows, width),
		...require_inset.inset("At stake: what the commitment would gain if it never took longer than as written. Could slip: on average, before the finish moved.", width)
	];
}
function slackCell({ slack }) {
	return slack === void 0 ? "for ever" : require_columnDays.columnDays(slack);
}
/** The trade's four indices of every task that is ever critical, most often critical first. */
function indexLines({ tasks }, width) {
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "critical",
			align: "right"
		},
		{
			heading: "signif.",
			align: "right"
		},
		{
			heading: "crucial",
			align: "right"
		},
		{
			heading: "sensit.",
			align: "right"
		}
	];
	const rows = tasks.filter(({ criticality }) => criticality > 0).map((task) => [task.name, ...[
		task.criticality,
		task.significance,
		task.cruciality,
		task.scheduleSensitivity
	].map((value) => value.toFixed(2))]);
	return [
		"Indices of the trade, 0 to 1",
		...require_program.table(columns, rows, width),
		...require_inset.inset("Criticality, significance, cruciality and schedule sensitivity.", width)
	];
}
// src/text/pathsText.ts
function answerSentences({ paths, different, confidence, committed }) {
	const [first] = paths;
	if (first === void 0 || different === 1 && first.tasks.length === 0) return ["Nothing is left to do, so nothing sets the finish."];
	const level = `${require_formatDate.formatDate(committed.date, "long")} at ${require_formatPercent.formatPercent(confidence)}`;
	if (different === 1) return [`One chain of tasks set the finish in every future (${level}).`];
	const shown = paths.reduce((sum, { share }) => sum + share, 0);
	const listed = paths.length < different ? `the ${paths.length} below in ${require_formatPercent.formatPercent(shown)}` : "all are below";
	return [`${require_groupDigits.groupDigits(different)} different chains of tasks set the finish (${level}): the most frequent in ${require_formatPercent.formatPercent(first.share)} of the futures, ${listed}.`, ...commonSentence(paths)];
}
/** The tasks that all of the paths lead over, the ends aside. */
function commonSentence(paths) {
	const [first, ...others] = paths;
	if (first === void 0 || others.length === 0) return [];
	const common = first.names.filter((_, at) => others.every(({ tasks }) => tasks.includes(first.tasks[at] ?? "")));
	if (common.length === 0) return ["No task is on all of these."];
	return [`On all of these: ${(common.length > 6 ? [...common.slice(0, 5), `${common.length - 5} more`] : common).join(", ")}.`];
}
/** Told where a task is critical clearly less often than it is on the listed paths. */
function daysOffSentence({ paths, tasks }) {
	const criticality = new Map(tasks.map((task) => [task.id, task.criticality]));
	const on = /* @__PURE__ */ new Map();
	for (const { tasks: ids, share } of paths) for (const id of ids) on.set(id, (on.get(id) ?? 0) + share);
	return [...on].some(([id, share]) => share > (criticality.get(id) ?? 1) + .02) ? ["Days off lie between tasks of these paths: those before them set the finish, yet can slip over the days off, so they are critical less often than they are on a path."] : [];
}
/**
* Which chains of tasks set the finish, and what is at stake near them, as a person reads it. Every figure is the
* library's own.
*
* @param indices  Also the trade's indices.
* @returns text ending with a newline
*/
function pathsText(given, page, planName, scenario, indices) {
	const paths = require_program.plainTexts(given);
	const { width, strong } = page;
	const [answer = "", ...more] = answerSentences(paths);
	const shares = paths.paths.map(({ share }) => require_formatPercent.formatPercent(share));
	return `${[
		[require_confidenceHead.explanationHead(paths.plan.title, paths.stamp, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		[...require_program.wrap(answer, width).map(strong), ...more.flatMap((sentence) => require_program.wrap(sentence, width))],
		paths.paths.length === 0 ? [] : [
			"Driving paths, most frequent first",
			...require_pathsChain.pathLines(paths.paths, shares, width),
			...daysOffSentence(paths).flatMap((sentence) => require_program.wrap(sentence, width))
		],
		stakeLines(paths, width),
		indices ? indexLines(paths, width) : [],
		[
			"What to look at next",
			`  leeway why ${planName} TASK`,
			`  leeway future ${planName} --at ${paths.confidence}`,
			...indices ? [] : [`  leeway paths ${planName} --indices`]
		],
		require_program.wrap(require_confidenceHead.explanationStamp(paths.stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/verbs/paths.ts
var ROWS_AS_TASKS = 16;
/** Every future may have a path of its own: 5 bytes a task against the 16 of `memoryProblem`. */
var PATH_PART = 1 / 3;
/** Which chains of tasks set the finish, how often, and what is at stake near them. */
function pathsVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	return require_answerVerb.answerVerb(call, values, {
		options,
		rowsAsTasks: (plan) => Math.ceil(ROWS_AS_TASKS + PATH_PART * plan.tasks.length),
		async ask(plan, onProgress) {
			const found = await require_answerAside.answerAside({
				kind: "paths",
				plan,
				options
			}, onProgress);
			return {
				answer: found.paths,
				problems: found.problems
			};
		},
		text: (answer, page, plan) => pathsText(answer, page, plan, options, values.has("indices")),
		draw: require_answerVerb.drawing("paths", values)
	});
}
exports.pathsVerb = pathsVerb;

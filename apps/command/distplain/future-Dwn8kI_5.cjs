const require_program = require("./program.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_answerAside = require("./answerAside-BsrttFoz.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_pathsChain = require("./pathsChain-CimuxDTt.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// src/text/futureCost.ts
var SHOWN = 8;
/** The cost by component, largest first, to the unit: the lines shown and the rest add up to the total. */
function costTable({ cost, plan, lateness }, width) {
	if (cost.lines.length === 0) return [];
	const columns = [{
		heading: "",
		align: "left"
	}, {
		heading: plan.currency,
		align: "right"
	}];
	const sorted = [...cost.lines].sort((a, b) => Math.abs(b.money) - Math.abs(a.money) || (a.id < b.id ? -1 : 1));
	const shown = sorted.length > 9 ? sorted.slice(0, SHOWN) : sorted;
	const rest = sorted.slice(shown.length);
	const rows = [
		...shown.map(({ kind, name, money }) => [kind === "task" ? name : `${name} (${kind})`, units(money)]),
		...rest.length === 0 ? [] : [[`${rest.length} smaller`, units(rest.reduce((sum, { money }) => sum + money, 0))]],
		["in all", units(cost.total)]
	];
	const late = lateness === void 0 || lateness === 0 ? [] : [`  beside the total, finishing late costs ${units(lateness)}`];
	return [
		"What it costs",
		...require_program.table(columns, rows, width),
		...late
	];
}
function units(money) {
	return require_groupDigits.groupDigits(Math.round(money));
}
// src/text/futureEvents.ts
/** What of the register occurred, and what it did. */
function eventLines({ events, plan }, width) {
	if (events.length === 0) return [];
	const occurred = events.filter((event) => event.occurred);
	const one = events.length === 1;
	const all = `${events.length} risks and assumptions`;
	if (occurred.length === 0) return [one ? "The one risk or assumption did not occur." : `None of ${all} occurred.`];
	const head = `${one ? "The one risk or assumption" : `Of ${all} ${occurred.length}`} occurred, and what they added`;
	const waits = occurred.some(({ waited }) => waited !== 0);
	const paid = occurred.some(({ money }) => money !== 0);
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "chance",
			align: "right"
		},
		{
			heading: "days",
			align: "right"
		},
		...waits ? [{
			heading: "held back",
			align: "right"
		}] : [],
		...paid ? [{
			heading: plan.currency,
			align: "right"
		}] : []
	];
	const rows = occurred.map((event) => [
		event.kind === "assumption" ? `Not so: ${event.name}` : event.name,
		require_formatPercent.formatPercent(event.chance),
		event.days === 0 ? "" : require_columnDays.columnDays(event.days, true),
		...waits ? [event.waited === 0 ? "" : require_columnDays.columnDays(event.waited, true)] : [],
		...paid ? [event.money === 0 ? "" : require_groupDigits.groupDigits(Math.round(event.money))] : []
	]);
	return [head, ...require_program.table(columns, rows, width)];
}
/** Every draw that counted: the value in its unit, as written, and the chance of at most that much. */
function drawLines({ draws }, width) {
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "drawn",
			align: "right"
		},
		{
			heading: "as written",
			align: "right"
		},
		{
			heading: "at most that",
			align: "right"
		}
	];
	const rows = draws.filter(({ counts }) => counts).map((draw) => [
		nameOf(draw),
		unitText(draw, draw.value),
		unitText(draw, draw.asWritten),
		require_formatPercent.formatPercent(draw.level)
	]);
	return rows.length === 0 ? [] : ["Every draw that counted", ...require_program.table(columns, rows, width)];
}
function nameOf({ of, what, on }) {
	const said = {
		costPerDay: "cost per day",
		perDay: "per day",
		perWeek: "per week"
	}[what] ?? what;
	const of1 = what === "lag" && on?.[0] !== void 0 ? ` after ${on[0].name}` : "";
	return `${of.name}: ${said}${of1}`;
}
function unitText({ unit }, value) {
	if (unit === "money") return require_groupDigits.groupDigits(Math.round(value));
	const digits = require_groupDigits.groupDigits(value, Math.abs(value) < 100 ? 1 : 0);
	return unit === "times" ? `× ${require_groupDigits.groupDigits(value, 2)}` : unit === "quantity" ? digits : `${digits} ${unit}`;
}
// src/text/futureTasks.ts
/** Every task in order of start: when, how long, where its draw stood, and by its number which task held its start. */
function taskLines({ tasks, draws, plan, finish }, width) {
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "no.",
			align: "right"
		},
		{
			heading: "starts",
			align: "left"
		},
		{
			heading: "finishes",
			align: "left"
		},
		{
			heading: "days",
			align: "right"
		},
		{
			heading: "drawn",
			align: "right"
		},
		{
			heading: "held by",
			align: "left"
		}
	];
	const style = plan.start.slice(0, 4) === finish.date.slice(0, 4) ? "shortest" : "short";
	const levels = new Map(draws.flatMap(({ of, what, level, counts }) => counts && [
		"duration",
		"effort",
		"remaining"
	].includes(what) ? [[of.id, level]] : []));
	const room = Math.max(12, Math.min(24, width - 60));
	const needed = tasks.filter((task) => task.needed);
	const numbers = new Map(needed.map(({ id }, at) => [id, String(at + 1)]));
	const rows = needed.map((task) => [
		`${task.critical ? "* " : "  "}${task.name}`,
		numbers.get(task.id) ?? "",
		require_formatDate.formatDate(task.startDate, style),
		require_formatDate.formatDate(task.finishDate, style),
		task.milestone ? "" : require_columnDays.columnDays(task.duration),
		levelCell(levels.get(task.id)),
		require_program.cut(heldCell(task, numbers, room), room)
	]);
	const left = tasks.length - needed.length;
	return [
		"Tasks in order of start",
		...require_program.table(columns, rows, width),
		...left === 0 ? [] : [`  ${left} not needed in this future`],
		...require_inset.inset("* critical. Drawn: the chance of taking at most that long, before what the register adds. Held by: the number of the task it follows; a person's name: it waits for them, busy with that task.", width)
	];
}
function levelCell(level) {
	return level === void 0 ? "" : require_formatPercent.formatPercent(level);
}
/** What a task's path follows, and by how many others it is held as well. */
function heldCell({ heldBy: bounds }, numbers, room) {
	const [first, ...rest] = bounds;
	const others = rest.filter(({ kind }) => kind !== "plan-start");
	if (first === void 0) return "";
	const number = numbers.get(first.task?.id ?? "") ?? first.task?.name ?? "";
	const lag = first.lag === void 0 ? "" : ` ${first.lag > 0 ? "+" : "−"} ${require_columnDays.columnDays(Math.abs(first.lag))}`;
	const kinds = {
		link: `${{
			"finish-to-start": number,
			"start-to-start": `start of ${number}`,
			"finish-to-finish": `to end with ${number}`,
			"start-to-finish": `to end by ${number}'s start`
		}[first.link ?? "finish-to-start"]}${lag}`,
		person: `${require_program.cut(first.person?.name ?? "", room - number.length - 2)}: ${number}`,
		away: `${first.person?.name ?? ""}, away`,
		"not-before": "its date",
		"held-to-plan": "start as written",
		"status-date": "status date",
		recorded: "recorded",
		"plan-start": "plan's start"
	};
	const wait = first.wait === void 0 ? "" : `, ${require_columnDays.columnDays(first.wait)} held back`;
	return `${kinds[first.kind]}${wait}${others.length === 0 ? "" : `, ${others.length} more`}`;
}
// src/text/futureText.ts
function headLine({ plan, iteration, stamp }, { width, strong }) {
	const run = `future ${require_groupDigits.groupDigits(iteration)} of ${require_groupDigits.groupDigits(stamp.iterations)}`;
	const shown = require_program.cut(plan.title, width - run.length - 2);
	return strong(shown) + " ".repeat(Math.max(2, width - [...shown].length - run.length)) + run;
}
function answerSentences({ finish, cost, asWritten, at, plan }) {
	const late = finish.workingDays - asWritten.workingDays;
	const against = Math.abs(late) < .05 ? "as the plan is written" : `${require_formatDays.formatDays(Math.abs(late))} ${late > 0 ? "after" : "before"} the plan as written`;
	const money = cost.lines.length > 0;
	const sum = money ? `, and costs ${require_formatMoney.formatMoney(Math.round(cost.total), plan.currency)}` : "";
	const answer = `This future finishes on ${require_formatDate.formatDate(finish.date, "long")}, ${against}${sum}.`;
	const dearer = money ? `; ${require_formatPercent.formatPercent(cost.level)} cost no more` : "";
	const chosen = at === void 0 ? [] : [`Of those that finish where ${require_formatPercent.formatPercent(at)} of all have, it is the first.`];
	return [
		answer,
		`${require_formatPercent.formatPercent(finish.level)} of the futures finish no later${dearer}.`,
		...chosen
	];
}
/**
* One future told as a person reads it: the answer, what occurred, the chain that set the finish, every task, the cost.
* Every figure is the library's own.
*
* @param draws  Also every draw that counted.
* @returns text ending with a newline
*/
function futureText(given, page, planName, scenario, draws) {
	const future = require_program.plainTexts(given);
	const { width, strong } = page;
	const [answer = "", ...more] = answerSentences(future);
	const chain = future.path.map(({ task, way }) => ({
		name: task.name,
		way
	}));
	return `${[
		[headLine(future, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		[...require_program.wrap(answer, width).map(strong), ...more.flatMap((sentence) => require_program.wrap(sentence, width))],
		eventLines(future, width),
		chain.length === 0 ? [] : ["What set the finish", ...require_inset.inset(require_pathsChain.chainText(chain), width)],
		taskLines(future, width),
		costTable(future, width),
		draws ? drawLines(future, width) : [],
		[
			"What to look at next",
			...draws ? [] : [`  leeway future ${planName} --iteration ${future.iteration} --draws`],
			`  leeway paths ${planName}`
		],
		require_program.wrap(require_confidenceHead.explanationStamp(future.stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/verbs/future.ts
var ROWS_AS_TASKS = 4;
/** Which of the futures is wanted, when the call says so. */
function readWhich(values) {
	const iteration = values.count("iteration", require_engineOptions.MOST_ITERATIONS);
	const at = values.chance("at");
	const both = values.has("iteration") && values.has("at");
	return {
		which: iteration !== void 0 ? { iteration } : at !== void 0 ? { at } : void 0,
		problems: both ? [require_program.callProblem("option-both", "--at", "It chooses a future, and so does --iteration.", "Keep one of them.")] : []
	};
}
/** One future replayed: what occurred, when each task ran and why, what it cost. */
function futureVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	const { which, problems: wrong } = readWhich(values);
	return require_answerVerb.answerVerb(call, values, {
		options,
		problems: wrong,
		rowsAsTasks: () => ROWS_AS_TASKS,
		async ask(plan, onProgress) {
			const asked = {
				...options,
				which: which ?? { at: plan.commitment.confidence }
			};
			const found = await require_answerAside.answerAside({
				kind: "future",
				plan,
				options: asked
			}, onProgress);
			return {
				answer: found.future,
				problems: found.problems
			};
		},
		text: (answer, page, plan) => futureText(answer, page, plan, options, values.has("draws")),
		draw: require_answerVerb.drawing("future", values)
	});
}
exports.futureVerb = futureVerb;

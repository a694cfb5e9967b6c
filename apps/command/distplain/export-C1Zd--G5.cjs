const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_program = require("./program.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_forecastBoth = require("./forecastBoth-CfcpvQXJ.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_putOut = require("./putOut-DRB7dvY8.cjs");
const require_importTable = require("./importTable-CVrTqmyv.cjs");
const require_writeCalendar = require("./writeCalendar-5HfqGR7m.cjs");
const require_csvText = require("./csvText-BBI9w4Qu.cjs");
// ../../packages/core/src/communicate/dueTable.ts
/** The due list as a table, a row for each occasion. */
function dueTable({ due }) {
	return {
		header: [
			"date",
			"moved from",
			"whom",
			"id",
			"what",
			"how",
			"who sees to it",
			"rhythm",
			"milestone"
		],
		rows: due.map(({ date, movedFrom = "", stakeholder, what = "", how = "", owner, every, milestone }) => [
			date,
			movedFrom,
			stakeholder.name,
			stakeholder.id,
			what,
			how,
			owner?.name ?? "",
			every,
			milestone?.name ?? ""
		])
	};
}
// ../../packages/core/src/exchange/calendar/milestoneEvents.ts
/**
* Milestones at the level committed to, targets, the committed finish, and the days by which approvers decide, as
* events. Each says what it rests on and ends with the run stamp.
*
* @param forecast  Of this plan.
*/
function milestoneEvents(plan, forecast) {
	const level = percent(forecast.committed.confidence);
	const end = `\n\n${stampText(forecast)}`;
	const events = [];
	for (const { id, name, milestone, finishDates, needed, target } of forecast.tasks) {
		if (milestone && needed > 0) {
			const { p10, p50, p90, committed } = finishDates;
			const description = `By this day in ${level} of the futures. P10 ${p10}, P50 ${p50}, P90 ${p90}.${needed < 1 ? ` It is needed in ${percent(needed)} of the futures.` : ""}${end}`;
			events.push({
				uid: require_writeCalendar.uidOf(plan, "milestone", id),
				date: committed,
				summary: name,
				description,
				category: "Milestone"
			});
		}
		if (target !== void 0) {
			const description = `The target; met in ${percent(target.chance)} of the futures.${end}`;
			const summary = `Target: ${name}`;
			events.push({
				uid: require_writeCalendar.uidOf(plan, "target", id),
				date: target.date,
				summary,
				description,
				category: "Target"
			});
		}
	}
	events.push(...commitmentEvents(plan, forecast, end), ...approvalEvents(plan, end));
	return events.sort((a, b) => a.date < b.date ? -1 : a.date > b.date ? 1 : a.uid < b.uid ? -1 : 1);
}
function commitmentEvents(plan, { committed, asked, chance }, end) {
	const finish = {
		uid: require_writeCalendar.uidOf(plan, "committed", "finish"),
		date: committed.date,
		summary: `Committed finish: ${plan.title}`,
		description: `By this day in ${percent(committed.confidence)} of the futures.${end}`,
		category: "Commitment"
	};
	if (asked.finishBy === void 0) return [finish];
	const met = chance.finishBy === void 0 ? "" : `; met in ${percent(chance.finishBy)} of the futures`;
	return [finish, {
		uid: require_writeCalendar.uidOf(plan, "asked", "finish"),
		date: asked.finishBy,
		summary: `Finish asked for: ${plan.title}`,
		description: `The date asked for${met}.${end}`,
		category: "Commitment"
	}];
}
/** One day for all of them: the plan has one date by which it wants a decision. */
function approvalEvents(plan, end) {
	const by = plan.decision?.by;
	if (by === void 0) return [];
	const names = new Map([...plan.people, ...plan.stakeholders].map(({ id, name }) => [id, name]));
	const who = plan.approvals.filter(({ decision }) => decision === "pending").map((approval) => names.get(approval.who) ?? approval.who);
	const asked = plan.decision?.ask === void 0 ? "" : `${plan.decision.ask}\n\n`;
	return [{
		uid: require_writeCalendar.uidOf(plan, "decision", "plan"),
		date: by,
		summary: `Decision: ${plan.title}`,
		description: `${asked}${who.length === 0 ? "Nobody's answer is open." : `Still to answer: ${who.join(", ")}.`}${end}`,
		category: "Approval"
	}];
}
/** What is needed to get the same figures again, on one line. */
function stampText({ seed, iterations, version, plan }) {
	return `Leeway ${version}, ${iterations} futures, seed ${seed}, plan ${plan.sha256.slice(0, 12)}`;
}
function percent(part) {
	const value = part * 100;
	const whole = Math.round(value);
	if (whole === 0 && part > 0) return "less than 1 %";
	if (whole === 100 && part < 1) return "more than 99 %";
	return `${whole} %`;
}
// ../../packages/core/src/exchange/tables/eventTable.ts
/** Days of a calendar as a table. */
function eventTable(events) {
	return {
		header: [
			"date",
			"what",
			"name",
			"details"
		],
		rows: events.map(({ date, category = "", summary, description = "" }) => [
			date,
			category,
			summary,
			description
		])
	};
}
// ../../packages/core/src/exchange/tables/forecastTable.ts
var HEADINGS = [
	"what",
	"id",
	"name",
	"phase",
	"p",
	"date",
	"low date",
	"high date",
	"working days",
	"money",
	"low money",
	"high money",
	"critical",
	"needed",
	"as written start",
	"as written finish",
	"start P10",
	"start P50",
	"start P90",
	"finish P10",
	"finish P50",
	"finish P90",
	"finish committed",
	"mean working days",
	"mean money",
	"target",
	"chance of target",
	"currency",
	"seed",
	"futures",
	"design",
	"plan",
	"version"
];
/**
* A forecast as one flat table: the finish and the cost by level with their limits, then every task. Dates, working
* days and money, each in a column of its own; every row carries the run stamp, so that a row alone can be traced.
*/
function forecastTable(forecast) {
	const { plan, seed, iterations, design, version, finish, cost, tasks, committed, asWritten } = forecast;
	const rows = [
		{
			what: "as written",
			date: asWritten.finish,
			"working days": asWritten.workingDays,
			money: asWritten.cost
		},
		{
			what: "committed",
			p: committed.confidence,
			date: committed.date,
			"low date": committed.lowDate,
			"high date": committed.highDate,
			"working days": committed.workingDays,
			money: committed.cost,
			"low money": committed.costLow,
			"high money": committed.costHigh
		},
		...finish.percentiles.map(({ p, date, lowDate, highDate, workingDays }) => {
			return {
				what: "finish",
				p,
				date,
				"low date": lowDate,
				"high date": highDate,
				"working days": workingDays
			};
		}),
		...cost.percentiles.map(({ p, value, low, high }) => {
			return {
				what: "cost",
				p,
				money: value,
				"low money": low,
				"high money": high
			};
		}),
		...tasks.map((task) => ({
			what: task.milestone ? "milestone" : "task",
			id: task.id,
			name: task.name,
			phase: task.phase ?? "",
			critical: task.critical,
			needed: task.needed,
			"as written start": task.asWritten.needed ? task.asWritten.startDate : "",
			"as written finish": task.asWritten.needed ? task.asWritten.finishDate : "",
			"start P10": task.startDates.p10,
			"start P50": task.startDates.p50,
			"start P90": task.startDates.p90,
			"finish P10": task.finishDates.p10,
			"finish P50": task.finishDates.p50,
			"finish P90": task.finishDates.p90,
			"finish committed": task.finishDates.committed,
			"mean working days": task.duration.mean,
			"mean money": task.cost.mean,
			target: task.target?.date ?? "",
			"chance of target": task.target?.chance ?? ""
		}))
	];
	const stamp = {
		currency: plan.currency,
		seed,
		futures: iterations,
		design,
		plan: plan.sha256,
		version
	};
	return {
		header: [...HEADINGS],
		rows: rows.map((row) => HEADINGS.map((heading) => ({
			...row,
			...stamp
		})[heading] ?? ""))
	};
}
// ../../packages/core/src/exchange/tables/tableOf.ts
/**
* Tasks, people or the register as a table that loses nothing: every key has a column, and a cell holds what the plan
* holds. Columns that no row needs are left out, except those everybody looks for.
*
* @param document  The plan document as written.
*/
function tableOf(document, table) {
	const entries = require_importTable.entriesOf(document, table);
	if (table === "register") {
		const rows = entries.map(({ what, of, id, value }) => require_importTable.REGISTER_HEADINGS.map((heading) => {
			if (heading === "what") return what;
			if (heading === "of") return of;
			if (heading === "id") return what === "impact" ? Number(id) : id;
			const column = require_importTable.columnsOf(what).find((each) => each.heading === heading);
			return column === void 0 ? "" : require_importTable.cellOf(value[column.key], column.kind);
		}));
		return {
			header: [...require_importTable.REGISTER_HEADINGS],
			rows
		};
	}
	const columns = require_importTable.columnsOf(table === "tasks" ? "task" : "person").filter(({ key, always }) => always || entries.some(({ value }) => value[key] !== void 0));
	return {
		header: columns.map(({ heading }) => heading),
		rows: entries.map(({ value }) => columns.map(({ key, kind }) => require_importTable.cellOf(value[key], kind)))
	};
}
// src/exchange/whatToExport.ts
var OF_PLAN = [
	"tasks",
	"estimates",
	"register",
	"people"
];
var OF_FORECAST = [
	"forecast",
	"milestones",
	"communication"
];
/** The formats of each, the usual one first. */
var FORMATS = {
	tasks: ["csv", "json"],
	estimates: ["csv", "json"],
	register: ["csv", "json"],
	people: ["csv", "json"],
	forecast: ["csv", "json"],
	milestones: [
		"ics",
		"csv",
		"json"
	],
	communication: [
		"ics",
		"csv",
		"json"
	]
};
/** Part of a plan as written, without a simulation. */
function exportOfPlan(text, plan, what, format) {
	const document = require_importTable.documentOf(text) ?? {};
	const table = what === "estimates" ? require_importTable.estimateTable(document) : tableOf(document, what);
	if (format === "csv") return {
		text: require_csvText.csvText(table),
		said: rows(table.rows.length)
	};
	const { title, sha256 } = plan;
	return {
		text: require_program.jsonText({
			plan: {
				title,
				sha256
			},
			[what]: records(table)
		}),
		said: rows(table.rows.length)
	};
}
/** Part of a forecast; `stamp` is when the file is made. */
function exportOfForecast(plan, forecast, what, format, stamp) {
	if (what === "forecast") {
		if (format === "json") return {
			text: require_program.jsonText(forecast),
			said: "the forecast"
		};
		const table = forecastTable(forecast);
		return {
			text: require_csvText.csvText(table),
			said: rows(table.rows.length)
		};
	}
	const { seed, iterations, version, design } = forecast;
	const run = {
		plan: forecast.plan,
		seed,
		iterations,
		version,
		design
	};
	if (what === "milestones") return events(plan.title, milestoneEvents(plan, forecast), format, stamp, run);
	const list = require_writeCalendar.dueList(plan, forecast);
	if (format === "ics") return events(`${plan.title}: communication`, require_writeCalendar.dueEvents(plan, list), format, stamp, run);
	const said = rows(list.due.length);
	return {
		text: format === "csv" ? require_csvText.csvText(dueTable(list)) : require_program.jsonText({
			...run,
			...list
		}),
		said
	};
}
function events(name, all, format, stamp, run) {
	const said = all.length === 1 ? "1 event" : `${all.length} events`;
	if (format === "ics") return {
		text: require_writeCalendar.writeCalendar(all, {
			name,
			stamp
		}),
		said
	};
	return {
		text: format === "csv" ? require_csvText.csvText(eventTable(all)) : require_program.jsonText({
			...run,
			events: all
		}),
		said
	};
}
function records({ header, rows: all }) {
	return all.map((row) => Object.fromEntries(header.map((key, k) => [key, row[k] ?? ""]).filter(([, value]) => value !== "")));
}
function rows(count) {
	return count === 1 ? "1 row" : `${count} rows`;
}
// src/verbs/export.ts
/** Part of a plan or of its forecast in an open format: a table, a calendar, JSON. */
async function exportVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const what = values.oneOf("what", [...OF_PLAN, ...OF_FORECAST]);
	const format = values.oneOf("format", [
		"csv",
		"json",
		"ics"
	]);
	const out = values.text("out");
	const options = require_engineOptions.engineOptions(values);
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const problems = [
		...values.problems,
		...today.problems,
		...clashes(values, what, format)
	];
	if (problems.length > 0 || what === void 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const given = await require_givenPlan.givenPlan(call.subject ?? "-");
	if (given === void 0) return require_program.exitCodes.invalid;
	const as = format ?? FORMATS[what][0] ?? "csv";
	const force = values.has("force");
	const ofPlan = OF_PLAN.find((each) => each === what);
	if (ofPlan !== void 0) {
		const { text, said } = exportOfPlan(given.text, given.plan, ofPlan, as);
		return require_putOut.putOut(text, out, force, said);
	}
	const ofForecast = OF_FORECAST.find((each) => each === what) ?? "forecast";
	const { forecasts, problems: found } = await require_forecastBoth.forecastEach([given.plan], options);
	await require_program.hearStops();
	if (found.length > 0) require_program.printProblems(found, given.name);
	const [forecast] = forecasts ?? [];
	if (forecast === void 0) return require_program.exitCodes.invalid;
	const stamp = `${today.value}T00:00:00Z`;
	const { text, said } = exportOfForecast(given.plan, forecast, ofForecast, as, stamp);
	return require_putOut.putOut(text, out, force, said);
}
function clashes(values, what, format) {
	if (!values.has("what")) {
		const choices = [...OF_PLAN, ...OF_FORECAST].join(", ");
		return [require_program.callProblem("option-missing", "--what", "What is to go out?", `Write one of: ${choices}.`)];
	}
	if (what === void 0 || format === void 0 || FORMATS[what].includes(format)) return [];
	const rule = `There is no ${format} of ${what}.`;
	return [require_program.callProblem("option-value", `--format ${format}`, rule, `Write one of: ${FORMATS[what].join(", ")}.`)];
}
exports.exportVerb = exportVerb;

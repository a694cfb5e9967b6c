const require_mostOf = require("./mostOf-Dwp9Kj_n.cjs");
const require_editPlan = require("./editPlan-DSSwX--u.cjs");
const require_setManyInPlan = require("./setManyInPlan-OSqKnr8f.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_twiceCounted = require("./twiceCounted-DwzZkMU7.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_program = require("./program.cjs");
const require_dates = require("./dates-Dup8morK.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_computeComparison = require("./computeComparison-BgSru7LC.cjs");
const require_versionsBeside = require("./versionsBeside-U7WaOrrE.cjs");
const require_triggerLines = require("./triggerLines-CMy4-aAs.cjs");
const require_readCsv = require("./readCsv--RBXSdyy.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_planFile = require("./planFile-D3tgs9yU.cjs");
const require_unwritable = require("./unwritable-BJ47CraP.cjs");
const require_writePlan = require("./writePlan-DZpkkTD3.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_changedLines = require("./changedLines-4UcEhdyb.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
const require_scorecard = require("./scorecard-_Y14foPY.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// ../../packages/core/src/live/record/factsOfTable.ts
/** Keys a row of progress may have; those without facts are let pass, since people want to see names. */
var READ = [...[
	"id",
	"started",
	"finished",
	"remaining",
	"spent"
], ...[
	"status",
	"tripped",
	"cost",
	"days"
]];
var PASSED = [
	"name",
	"phase",
	"statement",
	"note",
	"kind"
];
var MEANT = {
	task: "id",
	risk: "id",
	assumption: "id"
};
/**
* Progress from a table of comma-separated values (RFC 4180): a row a task, risk or assumption, headings `id` and any of
* `started`, `finished`, `remaining` (6, or 5/7/14), `spent`, `status` (occurred, closed), `tripped`, and of what occurred `cost` and `days`. Empty cells say
* nothing.
*/
function factsOfCsv(text, name) {
	const { cells, decimalComma, problems } = require_readCsv.readCsv(text);
	const placed = problems.map((problem) => ({
		...problem,
		path: `${name} ${problem.path}`.trim()
	}));
	const [headings = [], ...rows] = cells;
	const keys = headings.map((heading) => keyOf(heading.trim()));
	placed.push(...headingProblems(headings, keys, name));
	if (placed.some(({ severity }) => severity === "error")) return {
		facts: [],
		problems: placed
	};
	const { facts, problems: found } = factsOfRows(rows.map((row, index) => {
		const found = /* @__PURE__ */ new Map();
		row.forEach((cell, column) => {
			const key = keys[column];
			if (key === void 0 || cell.trim() === "") return;
			if (decimalComma && key === "remaining" && /^\s*\d+,\d+\s*$/.test(cell)) {
				const [low, high] = cell.trim().split(",");
				placed.push({
					code: "bad-value",
					severity: "error",
					path: `${name} row ${index + 2} remaining`,
					received: require_engine.oneLine(cell),
					rule: "In a table with decimal commas this may be one number or two.",
					remedy: `Write ${low}.${high}, or ${low}/${high}.`
				});
			}
			found.set(key, decimalComma ? withPoint(key, cell) : cell);
		});
		return {
			where: `${name} row ${index + 2}`,
			cells: found
		};
	}));
	return {
		facts,
		problems: [...placed, ...found]
	};
}
/** Progress from JSON: a list of objects with the same keys; `remaining` may be a list of numbers. */
function factsOfJson(text, name) {
	const refuse = (rule, remedy) => ({
		facts: [],
		problems: [{
			code: "not-progress",
			severity: "error",
			path: name,
			received: "",
			rule,
			remedy
		}]
	});
	let data;
	try {
		data = JSON.parse(text.replace(/^\uFEFF/, ""));
	} catch {
		return refuse("It is no JSON.", "Save it as JSON, or name a table `.csv`.");
	}
	if (!Array.isArray(data)) return refuse("Progress is a list of objects.", "Write [{ \"id\": \"dig\", \"started\": \"2027-03-01\" }].");
	const problems = [];
	const rows = [];
	data.forEach((item, index) => {
		const where = `${name}[${index}]`;
		const report = (rule, remedy) => problems.push({
			code: "not-progress",
			severity: "error",
			path: where,
			received: "",
			rule,
			remedy
		});
		if (typeof item !== "object" || item === null || Array.isArray(item)) {
			report("An object belongs here.", "Write { \"id\": \"dig\", \"started\": \"2027-03-01\" }.");
			return;
		}
		const cells = /* @__PURE__ */ new Map();
		for (const [heading, value] of Object.entries(item)) {
			const key = keyOf(heading);
			problems.push(...headingProblems([heading], [key], where));
			if (key === void 0 || value === null || value === "") continue;
			const text = textOf(value);
			if (text === void 0) report(`\`${heading}\` is a text, a number or a list of numbers.`, "Write it so.");
			else cells.set(key, text);
		}
		rows.push({
			where,
			cells
		});
	});
	const { facts, problems: found } = factsOfRows(rows);
	return {
		facts,
		problems: [...problems, ...found]
	};
}
function keyOf(heading) {
	const plain = heading.toLowerCase();
	return READ.find((key) => key === plain) ?? MEANT[plain];
}
function headingProblems(headings, keys, where) {
	const problems = [];
	const report = (heading, severity, rule, remedy) => problems.push({
		code: "heading",
		severity,
		path: where,
		received: require_engine.oneLine(heading),
		rule,
		remedy
	});
	headings.forEach((heading, column) => {
		const key = keys[column];
		if (key !== void 0) {
			if (keys.indexOf(key) < column) report(heading, "error", `There are two columns of ${key}.`, "Keep one of them.");
			return;
		}
		const plain = heading.trim().toLowerCase();
		if (plain === "" || PASSED.includes(plain)) return;
		const meant = require_program.nearest$1(plain, READ);
		if (meant === void 0) report(heading, "warning", "This is not read.", `Read are: ${READ.join(", ")}.`);
		else report(heading, "error", "This is no heading of progress.", `Did you mean ${meant}?`);
	});
	return problems;
}
function factsOfRows(rows) {
	const facts = [];
	const problems = [];
	for (const { where, cells } of rows) {
		const id = cells.get("id")?.trim();
		const rest = [...cells].filter(([key]) => key !== "id");
		if (id === void 0) {
			if (rest.length > 0) problems.push({
				code: "no-id",
				severity: "error",
				path: where,
				received: "",
				rule: "Nobody knows of what this is.",
				remedy: "Give its `id`, as in the plan."
			});
			continue;
		}
		for (const [key, value] of rest) {
			const said = `${where} ${id} ${key}`;
			if (key !== "status") {
				facts.push({
					what: key,
					id,
					value,
					said
				});
				continue;
			}
			const status = value.trim().toLowerCase();
			if (status === "occurred" || status === "closed") facts.push({
				what: status,
				id,
				said
			});
			else if (status !== "open") problems.push({
				code: "bad-value",
				severity: "error",
				path: said,
				received: require_engine.oneLine(value),
				rule: "A status is occurred or closed; open ones need not be told.",
				remedy: "Write one of them."
			});
		}
	}
	return {
		facts,
		problems
	};
}
/** `4200,5` in a table whose decimal sign is the comma. */
function withPoint(key, cell) {
	return [
		"spent",
		"cost",
		"days"
	].includes(key) && /^\s*-?\d+,\d+\s*$/.test(cell) ? cell.replace(",", ".") : cell;
}
function textOf(value) {
	if (typeof value === "string") return value;
	if (typeof value === "number") return String(value);
	if (Array.isArray(value) && value.every((each) => typeof each === "number")) return value.join(",");
}
// ../../packages/core/src/live/record/countedTwice.ts
/** Warnings of what this report may have made count twice: an event, and the work or the money that has it already. */
function countedTwice(after, told) {
	const touched = new Map(told.map(({ id, said }) => [id, said]));
	return require_twiceCounted.twiceCounted(after).flatMap(({ entry, task, part, says, advice }) => {
		const said = touched.get(entry.id) ?? touched.get(task.id);
		if (said === void 0) return [];
		return [{
			code: `occurred-in-${part}`,
			severity: "warning",
			path: said,
			received: "",
			rule: says,
			remedy: advice
		}];
	});
}
// ../../packages/core/src/live/record/missing.ts
var nothingMissing = {
	remaining: [],
	toStart: [],
	toFinish: []
};
/**
* What a report leaves open: started tasks of which nobody said what remains, and what was due by the status date in
* the plan as it was written before the report, by date and then by id. Simulates nothing.
*
* @param before  The plan before the report; its own as-written dates include the progress it had.
*/
function missingAfter(before, after) {
	const { statusDate } = after;
	const remaining = after.tasks.flatMap(({ id, name, milestone, started, finished, remaining: left }) => started === void 0 || finished !== void 0 || left !== void 0 || milestone !== false ? [] : [{
		id,
		name,
		started
	}]);
	if (statusDate === void 0) return {
		...nothingMissing,
		remaining
	};
	const now = new Map(after.tasks.map((task) => [task.id, task]));
	const toStart = [];
	const toFinish = [];
	for (const { id, startDate, finishDate } of datesAsWritten(before)) {
		const task = now.get(id);
		if (task === void 0 || task.finished !== void 0) continue;
		if (task.started !== void 0) {
			if (finishDate <= statusDate) toFinish.push({
				id,
				name: task.name,
				date: finishDate
			});
		} else if (startDate <= statusDate) toStart.push({
			id,
			name: task.name,
			date: startDate
		});
	}
	return {
		remaining,
		toStart: byDate(toStart),
		toFinish: byDate(toFinish)
	};
}
/** Dates of the plan as written, of tasks that it takes to be needed; none where it runs past its calendars. */
function datesAsWritten(plan) {
	const model = require_engine.compile(plan);
	const { block, beyond } = require_engine.planAsWritten(model);
	if (beyond >= 0) return [];
	const dateOf = (day) => require_engine.isoDate(model.startDay + Math.max(0, day));
	return model.tasks.flatMap((task, j) => {
		if (block.needed[j]?.[0] === 0) return [];
		const point = (block.duration[j]?.[0] ?? 0) <= require_engine.tolerance;
		return [{
			id: task.id,
			startDate: dateOf(require_engine.startDay(task, block.start[j]?.[0] ?? 0, point)),
			finishDate: dateOf(require_engine.finishDay(task, block.finish[j]?.[0] ?? 0, point))
		}];
	});
}
function byDate(due) {
	return due.sort((a, b) => a.date < b.date ? -1 : a.date > b.date ? 1 : a.id < b.id ? -1 : 1);
}
// ../../packages/core/src/live/record/outOfSequence.ts
/**
* Where a report says that a task started or finished although what it waits for had not happened: either the report
* is wrong, or the link is. Links with a negative lag allow it, and a predecessor that may not be needed is no reason.
*/
function outOfSequence(plan, told) {
	const tasks = new Map(plan.tasks.map((task) => [task.id, task]));
	return told.flatMap(({ what, id, said }) => {
		const task = tasks.get(id);
		if (task === void 0 || what !== "started" && what !== "finished") return [];
		return task.after.flatMap((link) => {
			const before = tasks.get(link.task);
			if (before === void 0 || before.chance < 1 || before.onlyIf !== void 0) return [];
			if (require_engine.asWrittenValue(link.lag) < 0) return [];
			const rule = broken(task, what, link, before);
			if (rule === void 0) return [];
			return [{
				code: "out-of-sequence",
				severity: "warning",
				path: said,
				received: "",
				rule,
				remedy: `Check both days; if they are right, the link to ${before.id} is not what it says.`
			}];
		});
	});
}
/** What happened too early, in words; undefined where all is in order. */
function broken(task, what, { link }, before) {
	const [from, to] = ENDS[link];
	const day = (of, end) => of.milestone === false ? of[end] : of.finished;
	const point = task.milestone !== false;
	if (to !== what && !point) return void 0;
	const mine = day(task, to);
	const theirs = day(before, from);
	if (mine === void 0) return void 0;
	const verb = point ? "is reached" : what;
	if (theirs === void 0) return `Out of sequence: it ${verb}, and ${before.name} (${before.id}) has not ${from} yet.`;
	if (from === "finished" && to === "started" && !point && before.milestone === false ? theirs >= mine : theirs > mine) return `Out of sequence: it ${verb} on ${mine}, and ${before.name} (${before.id}) ${from} on ${theirs}.`;
}
var ENDS = {
	"finish-to-start": ["finished", "started"],
	"start-to-start": ["started", "started"],
	"finish-to-finish": ["finished", "finished"],
	"start-to-finish": ["started", "finished"]
};
// ../../packages/core/src/live/record/values.ts
var LARGEST = 0x38d7ea4c68000;
/** A calendar date that exists, years 1900 to 2999, as in a plan. */
function readDay(text) {
	const written = text.trim();
	if (/^(19|2\d)\d{2}-\d{2}-\d{2}$/.test(written)) {
		if (require_dates.isCalendarDate(written)) return { value: written };
		return {
			rule: "The calendar has no such day.",
			remedy: "Write a day that exists."
		};
	}
	const meant = require_dates.likelyDate(written);
	return {
		rule: "A date is written year-month-day.",
		remedy: meant === void 0 ? "Write it like 2027-02-01." : `Write ${meant}.`
	};
}
/** What remains, in working days: a number, low and high, or low, likely and high. In order, none below zero. */
function readRemaining(text) {
	const parts = text.trim().split(/\s*[,;/]\s*|\s+/).map(plainNumber);
	const wrong = {
		rule: "Working days that remain are a number, or low, likely and high.",
		remedy: "Write e.g. 6 or 5,7,14."
	};
	if (parts.length > 3) return wrong;
	const numbers = [];
	for (const part of parts) {
		if (part === void 0) return wrong;
		if (part > LARGEST) return {
			rule: "That is too large.",
			remedy: "Write working days."
		};
		numbers.push(part);
	}
	const sorted = [...numbers].sort((a, b) => a - b);
	if (numbers.some((value, i) => value !== sorted[i])) return {
		rule: "Low, likely and high stand in that order.",
		remedy: `Write ${sorted.join(",")}.`
	};
	const [low = 0, high = 0] = numbers;
	if (numbers.length === 1) return { value: low };
	return { value: numbers.length === 2 ? {
		low,
		high
	} : numbers };
}
/** Working days that something took: one number; below zero where it saved some. */
function readDays(text) {
	const written = text.trim();
	const value = plainNumber(written.replace(/^-/, ""));
	if (value === void 0 || value > LARGEST) return {
		rule: "Working days it took are one number.",
		remedy: "Write e.g. 6."
	};
	return { value: written.startsWith("-") ? -value : value };
}
/** Money as a plain number; refunds may make it negative. Digits in groups are refused: a point is a decimal point. */
function readSum(text) {
	const written = text.trim();
	if (/^-?\d{1,3}([.,_' ]\d{3})+$/.test(written)) return {
		rule: "Digits in groups can be misread.",
		remedy: `Write ${written.replace(/[^\d-]/g, "")} if that is meant.`
	};
	const value = plainNumber(written.replace(/^-/, ""));
	if (value === void 0 || value > LARGEST) return {
		rule: "Money is a plain number in the plan's currency.",
		remedy: "Write e.g. 4200."
	};
	return { value: written.startsWith("-") ? -value : value };
}
function plainNumber(text) {
	return /^(\d+(\.\d+)?|\.\d+)$/.test(text) ? Number(text) : void 0;
}
// ../../packages/core/src/live/record/readFacts.ts
var OF_TASKS = [
	"started",
	"finished",
	"remaining",
	"spent"
];
/** Understands facts: each finds what it is about, has a value that can be, and does not contradict another. */
function readFacts(plan, facts, statusDate) {
	const problems = [];
	const told = [];
	const seen = /* @__PURE__ */ new Map();
	for (const fact of facts) {
		const report = (code, rule, remedy, severity = "error") => problems.push({
			code,
			severity,
			path: fact.said,
			received: "",
			rule,
			remedy
		});
		const list = listOf(plan, fact);
		if (list === void 0) {
			const { code, rule, remedy } = unknown(plan, fact);
			report(code, rule, remedy);
			continue;
		}
		const key = fact.what === "occurred" || fact.what === "closed" ? "status" : fact.what;
		const other = seen.get(`${fact.id} ${key}`);
		seen.set(`${fact.id} ${key}`, fact);
		if (other !== void 0) {
			report("said-twice", other.what === fact.what ? "It is said twice." : `It is said to be ${other.what} as well.`, "Keep one of them.");
			continue;
		}
		const recorded = recordedDay(plan, fact);
		if (recorded !== void 0 && (fact.value ?? "").trim() === "") {
			const remedy = `Write ${fact.id}=DATE to correct it.`;
			report("already-recorded", `Recorded already, on ${recorded}; that day stays.`, remedy, "warning");
			continue;
		}
		const value = factValue(fact, statusDate);
		if (value === void 0) continue;
		if ("rule" in value) {
			report("bad-value", value.rule, value.remedy);
			continue;
		}
		told.push({
			what: fact.what,
			id: fact.id,
			list,
			value: value.value,
			said: fact.said
		});
	}
	return {
		told,
		problems: [...problems, ...contradictions(plan, told, statusDate)]
	};
}
function recordedDay(plan, { what, id }) {
	const find = (list) => list.find((each) => each.id === id);
	if (what === "started" || what === "finished") return find(plan.tasks)?.[what];
	return what === "tripped" ? find(plan.assumptions)?.tripped : void 0;
}
function listOf(plan, { what, id }) {
	const has = (list) => list.some((each) => each.id === id);
	if (OF_TASKS.includes(what)) return has(plan.tasks) ? "tasks" : void 0;
	if (has(plan.assumptions)) return "assumptions";
	return what !== "tripped" && has(plan.risks) ? "risks" : void 0;
}
function unknown(plan, { what, id }) {
	const kinds = [
		{
			kind: "a task",
			list: plan.tasks,
			fits: OF_TASKS.includes(what)
		},
		{
			kind: "a risk",
			list: plan.risks,
			fits: !OF_TASKS.includes(what) && what !== "tripped"
		},
		{
			kind: "an assumption",
			list: plan.assumptions,
			fits: !OF_TASKS.includes(what)
		}
	];
	const fitting = kinds.filter(({ fits }) => fits);
	const wanted = fitting.map(({ kind }) => kind).join(" or ");
	const is = kinds.find(({ list }) => list.some((each) => each.id === id));
	const known = fitting.flatMap(({ list }) => list.map((each) => each.id)).sort();
	const near = require_program.nearest$1(id, known);
	const remedy = near !== void 0 ? `Did you mean ${near}?` : known.length === 0 ? "The plan has none." : `Known: ${known.slice(0, 6).join(", ")}${known.length > 6 ? ", ..." : ""}.`;
	if (is !== void 0) return {
		code: "wrong-kind",
		rule: `${id} is ${is.kind}; ${wanted} belongs here.`,
		remedy
	};
	return {
		code: "unknown-id",
		rule: `The plan has no ${wanted.replace(/\ban? /g, "")} ${id}.`,
		remedy
	};
}
function factValue({ what, value = "" }, statusDate) {
	if (what === "remaining") return readRemaining(value);
	if (what === "spent" || what === "cost") return readSum(value);
	if (what === "days") return readDays(value);
	if (what === "occurred" || what === "closed") {
		if (value.trim() === "") return { value: what };
		return {
			rule: "Nothing stands behind the id.",
			remedy: "Leave the value out."
		};
	}
	if (value.trim() !== "") return readDay(value);
	return statusDate === void 0 ? void 0 : { value: statusDate };
}
/** What cannot have happened: days in the wrong order, a milestone that takes time, remains of what is finished. */
function contradictions(plan, told, statusDate) {
	const problems = [];
	const report = (fact, code, rule, remedy) => problems.push({
		code,
		severity: "error",
		path: fact.said,
		received: "",
		rule,
		remedy
	});
	const byTask = /* @__PURE__ */ new Map();
	for (const fact of told) {
		if (fact.what === "started" || fact.what === "finished" || fact.what === "tripped") {
			const day = String(fact.value);
			if (statusDate !== void 0 && day > statusDate) report(fact, "progress-date", `It lies after the status date, ${statusDate}.`, "Correct the day, or give a later --status.");
			else if (fact.what !== "tripped" && day < plan.start) report(fact, "progress-date", `It lies before the plan's start, ${plan.start}.`, "Correct the day.");
		}
		if (fact.list === "tasks") byTask.set(fact.id, (byTask.get(fact.id) ?? /* @__PURE__ */ new Map()).set(fact.what, fact));
	}
	for (const fact of told) {
		if (fact.what !== "cost" && fact.what !== "days") continue;
		const said = told.find(({ id, what }) => id === fact.id && (what === "occurred" || what === "closed"));
		const entry = [...plan.risks, ...plan.assumptions].find(({ id }) => id === fact.id);
		if ((said?.what ?? entry?.status) === "occurred") continue;
		report(fact, "progress-order", "It has not occurred, so it has cost and taken nothing.", `Add --occurred ${fact.id}.`);
	}
	for (const task of plan.tasks) {
		const facts = byTask.get(task.id);
		if (facts !== void 0) checkTask(task, facts, report);
	}
	return problems;
}
function checkTask(task, facts, report) {
	const point = task.milestone !== false;
	const day = (key) => {
		const fact = facts.get(key);
		return fact === void 0 ? task[key] : String(fact.value);
	};
	const started = day("started");
	const finished = day("finished");
	const start = facts.get("started");
	const finish = facts.get("finished");
	const remaining = facts.get("remaining");
	const spent = facts.get("spent");
	if (point) {
		const rule = "A milestone is a point in time: it is finished or not.";
		for (const fact of [start, remaining]) if (fact !== void 0) report(fact, "progress-order", rule, `Write --finished ${task.id}.`);
	} else {
		if (finish !== void 0 && started === void 0) report(finish, "progress-order", "What is finished has started, and nobody said when.", `Add --started ${task.id}=DATE.`);
		if (started !== void 0 && finished !== void 0 && finished < started) {
			const at = finish ?? start;
			const rule = `It would finish on ${finished}, before it starts on ${started}.`;
			if (at !== void 0) report(at, "progress-order", rule, "Correct one of the two days.");
		}
		if (remaining !== void 0 && finished !== void 0) report(remaining, "progress-order", "Nothing remains of a finished task.", "Leave it out.");
		else if (remaining !== void 0 && started === void 0) report(remaining, "progress-order", "It has not started.", `Add --started ${task.id}=DATE.`);
	}
	if (spent !== void 0 && started === void 0 && finished === void 0) report(spent, "progress-order", "It has not started, so nothing is spent on it yet.", point ? `Add --finished ${task.id}=DATE.` : `Add --started ${task.id}=DATE.`);
}
// ../../packages/core/src/live/record/recordProgress.ts
/**
* Writes a report of progress into the text of a plan; comments and order stay. Every problem of the report is listed
* at once, and with one that is an error the text stays as it came.
*
* Progress goes forward: a status date before the plan's own is refused. What is finished has nothing `remaining`.
* A predecessor that is not finished is a warning: it happened all the same.
*/
function recordProgress(text, report) {
	const { plan, problems: faults } = require_readPlan.readPlan(text);
	const nothing = {
		text,
		changed: [],
		finished: [],
		missing: nothingMissing
	};
	if (plan === void 0) return {
		...nothing,
		problems: faults
	};
	const day = readDay(report.statusDate);
	const problems = [];
	if (!("value" in day)) problems.push(problem("option-value", `--status ${report.statusDate}`, day.rule, day.remedy));
	else if (plan.statusDate !== void 0 && day.value < plan.statusDate) {
		const rule = `The plan has progress up to ${plan.statusDate} already, and progress goes forward.`;
		problems.push(problem("status-before", `--status ${report.statusDate}`, rule, "Give a later day; what was recorded wrongly is corrected in the plan."));
	}
	const statusDate = "value" in day ? day.value : void 0;
	const told = readFacts(plan, report.facts, statusDate);
	problems.push(...told.problems);
	if (statusDate === void 0 || problems.some(({ severity }) => severity === "error")) return {
		...nothing,
		before: plan,
		problems
	};
	const written = write$1(text, plan, statusDate, told.told);
	const after = written.problems.length > 0 ? void 0 : require_readPlan.readPlan(written.text);
	const found = [...written.problems, ...after?.problems ?? []];
	if (after?.plan === void 0) return {
		...nothing,
		before: plan,
		problems: found
	};
	const known = new Set(faults.map(({ code, path }) => `${code} ${path}`));
	return {
		text: written.text,
		before: plan,
		after: after.plan,
		changed: [...new Set(told.told.map(({ id }) => id))],
		finished: told.told.filter(({ what }) => what === "finished").map(({ id }) => id),
		missing: missingAfter(plan, after.plan),
		problems: [
			...problems,
			...outOfSequence(after.plan, told.told),
			...countedTwice(after.plan, told.told),
			...found.filter(({ code, path }) => !known.has(`${code} ${path}`))
		]
	};
}
function write$1(text, plan, statusDate, told) {
	const changes = [];
	const inOrder = [...told].sort((a, b) => ORDER.indexOf(a.what) - ORDER.indexOf(b.what));
	for (const { what, id, list, value } of inOrder) {
		if (what === "cost" || what === "days") continue;
		const task = list === "tasks" ? plan.tasks.find((each) => each.id === id) : void 0;
		if (what === "finished" && task?.remaining !== void 0) changes.push({
			path: [
				"tasks",
				id,
				"remaining"
			],
			value: void 0
		});
		const key = what === "occurred" || what === "closed" ? "status" : what;
		changes.push({
			path: [
				list,
				id,
				key
			],
			value
		});
	}
	changes.push(...actualChanges(plan, told));
	const made = require_setManyInPlan.setManyInPlan(text, changes);
	return plan.statusDate === statusDate || made.problems.length > 0 ? made : statusIn(made.text, statusDate);
}
/** What an entry did in fact is one object: what is told now, and what was told before. */
function actualChanges(plan, told) {
	const facts = told.filter(({ what }) => what === "cost" || what === "days");
	return [...new Set(facts.map(({ id }) => id))].flatMap((id) => {
		const own = facts.filter((fact) => fact.id === id);
		const [first] = own;
		const before = [...plan.risks, ...plan.assumptions].find((entry) => entry.id === id)?.actual;
		const now = Object.fromEntries(own.map(({ what, value }) => [what, value]));
		return first === void 0 ? [] : [{
			path: [
				first.list,
				id,
				"actual"
			],
			value: {
				...before,
				...now
			}
		}];
	});
}
/** The status date where it stands; a first one under the plan's start, where a reader looks for it. */
function statusIn(text, statusDate) {
	const plain = require_editPlan.setInPlan(text, ["statusDate"], statusDate);
	const under = text.replace(/^start: *\d[^\n]*(\r?\n)/m, (line, end) => `${line}statusDate: ${statusDate}${end}`);
	if (under === text || /^statusDate:/m.test(text)) return plain;
	return contentOf(under) === contentOf(plain.text) ? {
		text: under,
		problems: []
	} : plain;
}
/** What a document says, whatever the order of its keys. */
function contentOf(text) {
	const { root, faults } = require_readPlan.readSource(text);
	return root === void 0 || faults.length > 0 ? void 0 : require_readPlan.planHash(require_readPlan.toJson(root));
}
var ORDER = [
	"started",
	"finished",
	"remaining",
	"spent",
	"occurred",
	"closed",
	"tripped"
];
function problem(code, path, rule, remedy) {
	return {
		code,
		severity: "error",
		path,
		received: "",
		rule,
		remedy
	};
}
// src/history/factsOfCall.ts
var KINDS = [
	"started",
	"finished",
	"remaining",
	"spent",
	"occurred",
	"closed",
	"tripped",
	"cost",
	"days"
];
/** Of these a list of ids may stand in one word, as in `--occurred rain,frost`; `5,7,14` of others is a range. */
var LISTED = /* @__PURE__ */ new Set([
	"started",
	"finished",
	"occurred",
	"closed",
	"tripped"
]);
/**
* What the options of a call report, in their order: `--started dig=2027-03-01`, `--finished dig,pave=2027-03-05` and
* the like.
*/
function factsOfCall({ options }) {
	return KINDS.flatMap((what) => (options.get(what) ?? []).flatMap((text) => {
		const [, before = "", value] = /^([^=]*)(?:=(.*))?$/s.exec(text) ?? [];
		const ids = LISTED.has(what) ? before.split(",") : [before];
		if (ids.length === 1) {
			const one = {
				what,
				id: before.trim(),
				said: `--${what} ${text}`
			};
			return [value === void 0 ? one : {
				...one,
				value
			}];
		}
		return ids.map((each) => {
			const id = each.trim();
			if (value === void 0) return {
				what,
				id,
				said: `--${what} ${id}`
			};
			return {
				what,
				id,
				value,
				said: `--${what} ${id}=${value}`
			};
		});
	}));
}
// src/history/factsOfFile.ts
/** What a file of progress reports, JSON by its name or else a table; its problems are printed. None without a file. */
async function factsOfFile(path) {
	if (path === void 0) return [];
	const { name, text, problem } = await require_readDocument.readDocument(path);
	if (text === void 0) {
		if (problem !== void 0) require_program.printProblems([problem], name);
		return;
	}
	const { facts, problems } = (/\.json$/i.test(path) ? factsOfJson : factsOfCsv)(text, name);
	if (problems.length > 0) require_program.printProblems(problems);
	return problems.some(({ severity }) => severity === "error") ? void 0 : facts;
}
// src/text/missingLines.ts
var SHOWN = 8;
/** What a report leaves open: what remains of started tasks, what was due and has not happened. */
function missingLines({ remaining, toStart, toFinish }, width) {
	const list = (heading, items) => items.length === 0 ? [] : [
		heading,
		...items.slice(0, SHOWN).flatMap((item) => require_inset.inset(item, width)),
		...items.length > SHOWN ? [`  and ${items.length - SHOWN} more`] : []
	];
	const due = ({ name, id, date }) => `${require_program.plainName(name)} (${id}), on ${require_formatDate.formatDate(date, "weekday")}`;
	return [
		...list("Started, and nobody said what remains (--remaining TASK=5,7,14):", remaining.map(({ name, id, started }) => `${require_program.plainName(name)} (${id}), since ${require_formatDate.formatDate(started, "weekday")}`)),
		...list("Should have started by now, in the plan before this report:", toStart.map(due)),
		...list("Should have finished by now, in the plan before this report:", toFinish.map(due))
	];
}
// src/text/scoreLine.ts
/** How the estimates of finished tasks did, in a sentence; undefined where none was a range. */
function scoreLine(after, before) {
	const { overall } = require_scorecard.scorecard(after, ...before);
	if (overall === void 0) return void 0;
	const { n, inside, below, above, ranges } = overall;
	if (n === 1) return `The one finished task with a range lay ${inside.k === 1 ? "within" : above === 1 ? "above" : "below"} its one-in-ten limits.`;
	const outside = [...above > 0 ? [`${above} above`] : [], ...below > 0 ? [`${below} below`] : []];
	const rest = outside.length === 0 ? "" : ` (${outside.join(", ")})`;
	return `Of ${n} finished tasks with a range ${inside.k} lay within their one-in-ten limits${rest}: ${JUDGED[ranges]}.`;
}
var JUDGED = {
	"too-few": "too few to judge by",
	"as-meant": "as ranges are meant",
	"too-narrow": "ranges are too narrow",
	"too-wide": "ranges are too wide"
};
// src/text/recordText.ts
/** What was written (or would be), what moved, what is missing, which triggers trip. */
function recordText(answer, page, planWord) {
	const { width, strong } = page;
	const { dry, file, recorded, after, versions } = answer;
	const comparison = require_program.plainTexts(answer.comparison);
	const triggers = require_program.plainTexts(answer.standing.triggers);
	const score = recorded.finished.length === 0 ? void 0 : scoreLine(after, versions);
	const lines = require_changedLines.changedLines(file.text, recorded.text);
	const count = lines.reduce((sum, { removed, added }) => sum + Math.max(removed.length, added.length), 0);
	const did = `${dry ? "Would change" : "Changed"} ${count === 1 ? "one line" : `${count} lines`} of ${file.path}`;
	return `${[
		[require_confidenceHead.explanationHead(require_program.plainText(after.title), comparison.stamp, page)],
		dry ? [`${did}:`, ...lines.flatMap(lineWords)] : require_program.wrap(`${did}; status date ${dayOf(after)}.`, width),
		[
			...require_program.wrap(require_movedSentences.movedSentence(comparison), width).map(strong),
			...require_movedSentences.standsSentences(comparison).flatMap((sentence) => require_program.wrap(sentence, width)),
			...require_mostOf.mostOf(comparison).flatMap((sentence) => require_program.wrap(sentence, width))
		],
		missingLines(recorded.missing, width),
		triggers.triggers.length === 0 ? [] : require_triggerLines.triggerLines(triggers, page),
		score === void 0 ? [] : require_program.wrap(score, width),
		require_nextLines.nextLines([[`leeway history ${planWord}`, "how the commitment drifted"], [`leeway explain ${planWord}`, "what the contingency left is held for"]], width),
		require_program.wrap(require_confidenceHead.explanationStamp(comparison.stamp), width)
	].filter((block) => block.length > 0).map((block) => block.join("\n")).join("\n\n")}\n`;
}
function dayOf({ statusDate }) {
	return statusDate === void 0 ? "" : require_formatDate.formatDate(statusDate, "weekday");
}
function lineWords({ line, removed, added }) {
	const at = String(line).padStart(5);
	return [...removed.map((text, i) => `${i === 0 ? at : "     "} - ${require_program.plainText(text)}`), ...added.map((text, i) => `${i === 0 && removed.length === 0 ? at : "     "} + ${require_program.plainText(text)}`)];
}
// src/verbs/record.ts
/** Writes progress into a plan, keeps the version and the forecast, and says what moved, trips and is missing. */
async function recordVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const statusDate = values.text("status");
	const who = values.text("as");
	const why = values.text("why");
	const workers = values.count("workers", 64);
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const problems = [...values.problems, ...today.problems];
	if (statusDate === void 0) problems.push(require_program.callProblem("option-missing", "--status", "It needs the day up to which you report.", "Write e.g. --status 2027-03-05."));
	if (problems.length > 0 || statusDate === void 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const file = await require_planFile.planFile(call.subject ?? "-", "record");
	const more = await factsOfFile(values.text("from"));
	if (file === void 0) return require_program.exitCodes.invalid;
	const recorded = recordProgress(file.text, {
		statusDate,
		facts: [...factsOfCall(call), ...more ?? []]
	});
	const found = [...recorded.problems, ...require_planFile.whoProblems(file.plan, who)];
	if (found.length > 0) require_program.printProblems(found);
	const { after } = recorded;
	if (after === void 0 || more === void 0 || found.some(({ severity }) => severity === "error")) {
		require_program.printNote("Nothing was written.");
		return require_program.exitCodes.invalid;
	}
	const entries = entriesOf(require_versionsBeside.besidePlan(file.path).history);
	if (entries === void 0) return require_program.exitCodes.invalid;
	const last = entries.at(-1);
	const older = (last === void 0 ? void 0 : require_versionsBeside.findKept(file.path, last.sha256)) ?? file.plan;
	const job = {
		options: {},
		workers,
		signed: require_versionsBeside.signedVersion(file.path, after),
		today: today.value
	};
	const now = await require_triggerLines.computeStanding({
		...job,
		text: recorded.text,
		plan: after
	});
	const then = last === void 0 ? await require_triggerLines.computeStanding({
		...job,
		text: file.text,
		plan: file.plan
	}) : void 0;
	const moved = await require_computeComparison.computeComparison({
		oldPlan: older,
		newPlan: after,
		options: {},
		...workers === void 0 ? {} : { workers }
	});
	await require_program.hearStops();
	if (now.problems.length > 0) require_program.printProblems(now.problems, file.path);
	if (now.standing === void 0 || moved.comparison === void 0) {
		require_program.printProblems(moved.problems);
		require_program.printNote("Nothing was written.");
		return require_program.exitCodes.invalid;
	}
	const occasion = {
		date: today.value,
		what: whatHappened(recorded.changed.length, statusDate),
		...who === void 0 ? {} : { who },
		...why === void 0 ? {} : { why }
	};
	const { standing } = now;
	const kept = require_mostOf.historyFacts(after, standing.forecast, standing.left, occasion);
	const facts = [kept];
	const start = then?.standing;
	if (start !== void 0) {
		const first = {
			date: today.value,
			what: "as planned before progress was first recorded here"
		};
		facts.unshift(require_mostOf.historyFacts(file.plan, start.forecast, start.left, first));
	}
	const dry = values.has("dry-run");
	if (!dry && !await write(file, recorded.text, facts)) return require_program.exitCodes.invalid;
	const first = recorded.finished.length === 0 ? void 0 : require_versionsBeside.findKept(file.path, entries[0]?.sha256 ?? "");
	const answer = {
		dry,
		file,
		recorded,
		after,
		standing,
		comparison: moved.comparison,
		last,
		versions: [.../* @__PURE__ */ new Set([
			...first === void 0 ? [] : [first],
			older,
			file.plan
		])]
	};
	if (values.has("json")) require_program.printJson(jsonOf(answer, kept));
	else require_program.printAnswer(recordText(answer, require_program.pageOf(process.env, process.stdout), require_shellWord.shellWord(file.path)));
	return require_program.exitCodes.done;
}
/** What is kept already; undefined, with the problem printed, where the file cannot be read. */
function entriesOf(history) {
	try {
		return require_mostOf.keptHistory(history).entries;
	} catch (error) {
		require_program.printProblems([require_unwritable.unwritable(history, error)]);
		require_program.printNote("Nothing was written.");
		return;
	}
}
function whatHappened(count, statusDate) {
	return `${count === 0 ? "no news" : count === 1 ? "progress of one item" : `progress of ${count} items`} up to ${statusDate}`;
}
/** Version, plan, history, in this order: a crash between two of them leaves each whole, and the next run says so. */
async function write(file, text, facts) {
	const { history } = require_versionsBeside.besidePlan(file.path);
	let at = file.path;
	try {
		require_versionsBeside.keepPlan(file.path, file.text);
		require_versionsBeside.keepPlan(file.path, text);
		if (!await require_writePlan.writePlan(file.path, file.text, text)) {
			require_program.printProblems([require_program.callProblem("changed-meanwhile", file.path, "Somebody changed it while the forecast was computed; nothing was written.", "Record again.")]);
			return false;
		}
		at = history;
		const { tornLine } = await require_mostOf.appendToHistory(require_versionsBeside.besidePlan(file.path), () => facts);
		if (tornLine !== void 0) require_program.printNote(require_mostOf.tornNote(file.path, tornLine));
		return true;
	} catch (error) {
		require_program.printProblems([require_unwritable.unwritable(at, error)]);
		if (at === history) require_program.printNote(`The plan was written. Then: leeway history ${require_shellWord.shellWord(file.path)} --add`);
		return false;
	}
}
function jsonOf({ dry, recorded, after, standing, comparison }, forecast) {
	const { missing, changed, finished } = recorded;
	const { from, to, difference, moves, confidence } = comparison;
	return {
		plan: {
			title: after.title,
			sha256: after.sha256,
			approvalSha256: after.approvalSha256
		},
		...after.statusDate === void 0 ? {} : { statusDate: after.statusDate },
		written: !dry,
		changed,
		finished,
		missing,
		forecast,
		moved: {
			confidence,
			from,
			to,
			difference,
			moves
		},
		triggers: standing.triggers.triggers
	};
}
exports.recordVerb = recordVerb;

const require_changedLines = require("./changedLines-MyzZE-y6.cjs");
const require_readCsv = require("./readCsv--RBXSdyy.cjs");
const require_program = require("./program.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_questions = require("./questions-BBFaF51g.cjs");
const require_latestOpinions = require("./latestOpinions-DD3Y0PkZ.cjs");
const require_restate = require("./restate-BC4llzlF.cjs");
const require_writeCsv = require("./writeCsv-CbWpmgad.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_writeBack = require("./writeBack-BzNdebk3.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_whyNotWritten = require("./whyNotWritten-C19bLT-P.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// ../../packages/core/src/estimating/sheet/columns.ts
/** The columns of a sheet, in the order in which the interview asks, so that a row is filled from left to right. */
var SHEET_COLUMNS = [
	{
		key: "task",
		heading: "task"
	},
	{
		key: "name",
		heading: "name"
	},
	{
		key: "needs",
		heading: "what it needs first"
	},
	{
		key: "aside",
		heading: "not part of the range"
	},
	{
		key: "of",
		heading: "estimate of"
	},
	{
		key: "unit",
		heading: "unit"
	},
	{
		key: "basis",
		heading: "why would you know"
	},
	{
		key: "high",
		heading: "exceeded one time in ten"
	},
	{
		key: "low",
		heading: "beaten one time in ten"
	},
	{
		key: "likely",
		heading: "likely"
	},
	{
		key: "dissent",
		heading: "what you do not agree with"
	}
];
// ../../packages/core/src/estimating/sheet/cells.ts
/** Columns of numbers. */
var VALUES = [
	"high",
	"low",
	"likely"
];
/** `2,5` as 2.5 in a table that writes so; there `1.500` may be either, so it is kept from being read as a number. */
function withPoint(cell) {
	if (/^[-+]?\d+,\d+$/.test(cell)) return cell.replace(",", ".");
	return /^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(cell) ? `${cell} (${Number(cell)} or ${cell.replace(".", "")}?)` : cell;
}
// ../../packages/core/src/estimating/sheet/headings.ts
/** The heading of a column. */
function headingOf(key) {
	return SHEET_COLUMNS.find((column) => column.key === key)?.heading ?? key;
}
var NEEDED = [
	"task",
	"of",
	"unit",
	...require_questions.INTERVIEW_ORDER
];
/** Where each column stands, or undefined after reporting what is wrong with the headings: row 1. */
function columnsOf(headings, report) {
	const columns = /* @__PURE__ */ new Map();
	let whole = true;
	for (const [index, written] of headings.entries()) {
		const heading = written.replace(/^\uFEFF/, "").trim().toLowerCase();
		const column = SHEET_COLUMNS.find((each) => each.heading === heading);
		if (column === void 0) {
			if (heading === "") continue;
			const meant = require_program.nearest$1(heading, SHEET_COLUMNS.map((each) => each.heading));
			report(1, written, "unknown-column", "", "A sheet has no such column.", meant === void 0 ? "It is not read." : `It is not read; did you mean “${meant}”?`, "warning");
		} else if (columns.has(column.key)) {
			report(1, written, "repeated-column", "", "This column is here twice.", "Keep one of the two.");
			whole = false;
		} else columns.set(column.key, index);
	}
	for (const key of NEEDED) {
		if (columns.has(key)) continue;
		report(1, headingOf(key), "missing-column", "", "The sheet needs this column.", "Keep the headings as they came.");
		whole = false;
	}
	return whole ? columns : void 0;
}
// ../../packages/core/src/estimating/sheet/sheetOf.ts
/** The sheet as rows of cells, headings first. */
function sheetCells(rows) {
	return [SHEET_COLUMNS.map(({ heading }) => heading), ...rows.map(({ cells }) => SHEET_COLUMNS.map(({ key }) => cells[key]))];
}
/**
* What one person is asked on a sheet of their own: the estimates of the tasks they do, answer for or are consulted on.
* Their own last opinion stands in it, so that it comes back unchanged where nothing is new; nobody else's does, and not
* the plan's estimate either, because whoever sees a number first stays near it (Tversky & Kahneman 1974, Science 185,
* 1124-1131, recalled).
*/
function sheetOf(plan, person, { all = false } = {}) {
	const names = new Map(plan.tasks.map(({ id, name }) => [id, name]));
	return plan.tasks.filter((task) => all || isFor(task, person)).flatMap((task) => require_questions.askableOf(plan, task).filter(({ of }) => all || of !== "cost" || costIsOpen(task, person)).map((askable) => {
		const needs = task.after.map((link) => names.get(link.task) ?? link.task);
		const { of, unitWords } = askable;
		return {
			askable,
			cells: {
				task: task.id,
				name: task.name,
				needs: needs.join("; "),
				aside: asideWords(askable),
				of,
				unit: unitWords,
				...answersNow(plan, task, person, askable)
			}
		};
	}));
}
/** What the register counts on its own. */
function asideWords({ events, holds }) {
	return [...events.map((name) => `if it happens: ${name}`), ...holds.map((name) => `if it does not hold: ${name}`)].join("; ");
}
/** A cost that is certain in the plan is a price and no estimate, unless this person has spoken of it. */
function costIsOpen({ cost, opinions }, person) {
	if (cost !== void 0 && cost.kind !== "fixed") return true;
	return (opinions ?? []).some(({ by, of }) => by === person && of === "cost");
}
function isFor({ people, responsible, accountable, consulted, estimatedBy, opinions }, id) {
	return people.some((each) => each.id === id) || [
		responsible,
		accountable,
		consulted,
		estimatedBy
	].some((ids) => ids.includes(id)) || (opinions ?? []).some(({ by }) => by === id);
}
/** The cells of a person's last opinion, as one-in-ten values in the unit the task is asked in now. */
function answersNow(plan, task, person, { of, unit }) {
	const own = (task.opinions ?? []).filter(({ by }) => by === person);
	const [last] = require_latestOpinions.latestOpinions(own, of);
	const blank = {
		basis: "",
		high: "",
		low: "",
		likely: "",
		dissent: ""
	};
	if (last === void 0) return blank;
	const daysPerWeek = plan.calendars.get(task.calendar)?.workdays.length ?? 5;
	const { low, likely, high } = oneInTenOf(last, unit === "weeks" ? "weeks" : "days", daysPerWeek);
	return {
		basis: last.basis ?? "",
		high: String(high),
		low: String(low),
		likely: String(likely),
		dissent: last.dissent ?? ""
	};
}
function oneInTenOf({ estimate, of }, unit, daysPerWeek) {
	const counted = of === "cost" ? estimate : require_restate.inUnit(estimate, unit, daysPerWeek);
	if (counted.kind === "range" && counted.bounds === "p10-p90") return {
		low: counted.low,
		likely: require_engine.asWrittenValue(counted),
		high: counted.high
	};
	const low = require_engine.estimateQuantile(counted, .1);
	const high = require_engine.estimateQuantile(counted, .9);
	return {
		low,
		likely: Math.min(high, Math.max(low, require_engine.asWrittenValue(counted))),
		high
	};
}
// ../../packages/core/src/estimating/sheet/readSheet.ts
/**
* Reads a filled sheet. Rows as they were change nothing; every problem has its row and column, all at once, and none is
* taken over while one is an error. Columns may be in another order and there may be more; rows may be left out.
*
* @param cells  Rows of cells, headings first: row 1.
* @param about  Whose sheet it is and when it was filled; `decimalComma`: numbers are written `0,5`, as `readCsv` says.
*/
function readSheet(plan, cells, { by, date, decimalComma = false }) {
	const problems = [];
	const report = (row, column, code, received, rule, remedy, severity = "error") => {
		const where = column === void 0 ? `row ${row}` : `row ${row}, column “${column}”`;
		problems.push({
			code,
			severity,
			path: where,
			received: require_engine.oneLine(received),
			rule,
			remedy
		});
	};
	const columns = columnsOf(cells[0] ?? [], report);
	const result = {
		opinions: [],
		unchanged: 0,
		empty: 0,
		problems
	};
	if (columns === void 0) return result;
	const known = new Map(sheetOf(plan, by, { all: true }).map((row) => [keyOf(row.cells), row]));
	const seen = /* @__PURE__ */ new Map();
	for (const [index, line] of cells.entries()) {
		if (index === 0 || line.every((cell) => cell.trim() === "")) continue;
		const given = (key) => {
			const cell = line[columns.get(key) ?? -1]?.trim() ?? "";
			return decimalComma && VALUES.includes(key) ? withPoint(cell) : cell;
		};
		const at = {
			row: index + 1,
			given,
			report
		};
		const row = rowOf(plan, known, at);
		if (row === void 0) continue;
		const key = keyOf(row.cells);
		const earlier = seen.get(key);
		if (earlier !== void 0) {
			report(at.row, "task", "repeated-row", given("task"), `Row ${earlier} is about the same.`, "Keep one of them.");
			continue;
		}
		seen.set(key, at.row);
		if (require_questions.INTERVIEW_ORDER.every((each) => given(each) === "")) {
			result.empty++;
			if (row.cells.high !== "") report(at.row, void 0, "emptied", row.cells.task, "The row is empty now; what was said before stays.", "Say something else to change it.", "warning");
		} else if (require_questions.INTERVIEW_ORDER.every((each) => same(each, given(each), row.cells[each]))) result.unchanged++;
		else {
			const subject = {
				...row.askable,
				by,
				date
			};
			const answers = Object.fromEntries(require_questions.INTERVIEW_ORDER.map((each) => [each, given(each)]));
			const { opinion, faults } = require_questions.opinionFrom(subject, answers);
			for (const { key: which, why } of faults) report(at.row, headingOf(which), "answer", "", why, "Correct the cell, or empty the whole row.");
			if (opinion !== void 0) result.opinions.push({
				task: row.cells.task,
				opinion
			});
		}
	}
	if (problems.some(({ severity }) => severity === "error")) result.opinions = [];
	return result;
}
function keyOf({ task, of }) {
	return `${of} ${task}`;
}
/** The row the plan has for it, or what is wrong with its first cells. */
function rowOf(plan, known, { row, given, report }) {
	const [task, of, unit] = [
		given("task"),
		given("of"),
		given("unit")
	];
	const found = known.get(`${of} ${task}`);
	if (found === void 0) {
		const rows = [...known.values()].filter(({ cells }) => cells.task === task);
		if (rows.length > 0) {
			const rule = `The task has no ${of === "" ? "such estimate" : of} to ask about.`;
			const has = rows.map(({ cells }) => cells.of).join(", ");
			report(row, headingOf("of"), "nothing-to-ask", of, rule, `It has: ${has}.`);
		} else if (plan.tasks.some(({ id }) => id === task)) report(row, "task", "nothing-to-ask", task, "There is nothing to ask about a milestone, or about what is finished.", "Leave the row out.");
		else {
			const meant = require_program.nearest$1(task, plan.tasks.map(({ id }) => id));
			report(row, "task", "unknown-id", task, "The plan has no such task.", meant === void 0 ? "Keep the ids as they came." : `Did you mean ${meant}?`);
		}
		return;
	}
	if (unit !== found.cells.unit) {
		report(row, "unit", "unit", unit, `The plan counts this in ${found.cells.unit}.`, "Give the values in that unit, and write it here.");
		return;
	}
	return found;
}
/** A spreadsheet writes 7.50 as 7.5: equal numbers are the same answer. */
function same(key, given, before) {
	if (given === before.trim()) return true;
	return key !== "basis" && key !== "dissent" && given !== "" && before !== "" && Number(given) === Number(before);
}
// src/verbs/sheet.ts
function refuse(problems, name) {
	require_program.printProblems(problems, name);
	return require_program.exitCodes.invalid;
}
/** A sheet of questions for one person, out (`--for`) as comma-separated values, and back in (`--read`). */
async function sheetVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const [to, read, by, out] = [
		"for",
		"read",
		"by",
		"out"
	].map((name) => values.text(name));
	const date = require_dateOption.dateOption(values, "date", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const clash = read === void 0 ? [] : require_writeBack.outputClash(call, values);
	const problems = [
		...values.problems,
		...date.problems,
		...clash,
		...clashes({
			to,
			read,
			by,
			out
		}, call, values)
	];
	if (problems.length > 0) return refuse(problems);
	const given = await require_givenPlan.givenPlan(call.subject ?? "-");
	if (given === void 0) return require_program.exitCodes.invalid;
	const as = values.text("as");
	const writer = as === void 0 ? void 0 : require_givenPlan.speakerOf(given.plan, "as", as);
	if (writer !== void 0 && require_givenPlan.isProblem(writer)) return refuse([writer], given.name);
	const person = require_givenPlan.speakerOf(given.plan, to === void 0 ? "by" : "for", to ?? by ?? "");
	if (require_givenPlan.isProblem(person)) return refuse([person], given.name);
	if (read !== void 0) return takeIn(given, {
		path: read,
		by: person.id,
		date: date.value,
		writer: writer?.id
	}, values);
	const rows = sheetOf(given.plan, person.id, { all: values.has("all") });
	if (rows.length === 0) {
		const rule = `${person.name} has no task that could be asked for.`;
		return refuse([require_program.callProblem("no-rows", `--for ${person.id}`, rule, "Add --all to ask about every task.")]);
	}
	const [header = [], ...cells] = sheetCells(rows);
	return putOut(require_writeCsv.writeCsv(header, cells), out, values.has("force"), rows.length);
}
function clashes({ to, read, by, out }, call, values) {
	const problem = (word, rule, remedy) => require_program.callProblem("call", word, rule, remedy);
	if (to === void 0 && read === void 0) return [problem("sheet", "Out or in?", "Add --for PERSON to write one, or --read FILE --by PERSON.")];
	return [
		...to !== void 0 && read !== void 0 ? [problem("--for --read", "One at a time: out or in.", "Leave one of them out.")] : [],
		...read !== void 0 && by === void 0 ? [problem("--read", "A sheet is somebody's.", "Add --by and the id of who filled it.")] : [],
		...read !== void 0 && (out !== void 0 || values.has("all")) ? [problem("--read", "--out and --all are for a sheet that goes out.", "Leave them out.")] : [],
		...read === void 0 && values.has("as") ? [problem("--as", "It says who takes a sheet in.", "Add --read FILE, or leave it out.")] : [],
		...read === "-" && call.subject === "-" ? [problem("- -", "Standard input cannot be the plan and the sheet.", "Name a file for one of them.")] : []
	];
}
function putOut(text, out, force, rows) {
	if (out === void 0) {
		require_program.printAnswer(text);
		return require_program.exitCodes.done;
	}
	try {
		require_writeWhole.writeWhole(out, text, force);
	} catch (error) {
		return refuse([require_whyNotWritten.whyNotWritten(out, error, ["There is such a file already; it may be filled in.", "Add --force to overwrite it."])]);
	}
	require_program.printNote(`Wrote ${out}: ${rows === 1 ? "1 estimate" : `${rows} estimates`} to ask for.`);
	return require_program.exitCodes.done;
}
async function takeIn(given, { path, by, date, writer }, values) {
	const document = await require_readDocument.readDocument(path);
	if (document.text === void 0) return refuse(document.problem === void 0 ? [] : [ofSheet(document.problem)], document.name);
	const table = require_readCsv.readCsv(document.text);
	const bad = table.problems.some(({ severity }) => severity === "error");
	const { decimalComma } = table;
	const reading = bad ? void 0 : readSheet(given.plan, table.cells, {
		by,
		date,
		decimalComma
	});
	const problems = [...table.problems, ...reading?.problems ?? []];
	if (problems.length > 0) require_program.printProblems(problems, document.name);
	if (reading === void 0 || problems.some(({ severity }) => severity === "error")) return require_program.exitCodes.invalid;
	let { text } = given;
	const entered = writer === void 0 || writer === by ? {} : { enteredBy: [writer] };
	const taken = reading.opinions.map(({ task, opinion }) => ({
		task,
		opinion: {
			...opinion,
			...entered
		}
	}));
	for (const { task: id, opinion } of taken) {
		const task = given.plan.tasks.find((each) => each.id === id);
		if (task === void 0) continue;
		const edit = require_changedLines.addOpinion(text, task, opinion);
		if (edit.problems.length > 0) return refuse(edit.problems, given.name);
		({text} = edit);
	}
	const { unchanged, empty } = reading;
	const opinions = taken;
	const dry = values.has("dry-run");
	const write = !dry && (opinions.length > 0 || given.name === "standard input");
	if (write && !await require_writeBack.writeBack(given, text)) return require_program.exitCodes.invalid;
	const counts = {
		taken: opinions.length,
		unchanged,
		empty,
		written: write
	};
	if (values.has("json")) {
		require_program.printJson({
			...counts,
			opinions
		});
		return require_program.exitCodes.done;
	}
	const said = `${opinions.length} new, ${unchanged} as before, ${empty} without an answer.`;
	const answer = `${(dry ? [
		...require_changedLines.changedLines(given.text, text),
		said,
		"Nothing is written."
	] : [said, ...next(given, opinions.length)]).join("\n")}\n`;
	if (given.name === "standard input" && !dry) require_program.printNote(answer);
	else require_program.printAnswer(answer);
	return require_program.exitCodes.done;
}
/** What is wrong with a file, in words for a sheet. */
function ofSheet(problem) {
	if (problem.code === "not-text") return {
		...problem,
		remedy: "Save the sheet as comma-separated values, encoded as UTF-8."
	};
	if (problem.code !== "empty") return problem;
	return {
		...problem,
		rule: "It is empty: there is no sheet to read.",
		remedy: "Begin with --for PERSON."
	};
}
function next({ name }, taken) {
	return taken === 0 ? ["The plan is as it was."] : [`${require_writeBack.writtenTo(name)}; estimates are as they were. Next: leeway pool ${require_shellWord.shellWord(name)}`];
}
exports.sheetVerb = sheetVerb;

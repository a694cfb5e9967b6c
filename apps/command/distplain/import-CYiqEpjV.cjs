const require_setManyInPlan = require("./setManyInPlan-OSqKnr8f.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_program = require("./program.cjs");
const require_editPlan = require("./editPlan-DSSwX--u.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_readCsv = require("./readCsv--RBXSdyy.cjs");
const require_importTable = require("./importTable-CVrTqmyv.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_writeBack = require("./writeBack-BzNdebk3.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
// ../../packages/core/src/estimating/enteredIn.ts
/**
* Writes into the text of a plan who entered these tasks, or their estimates: told apart from who estimated them. Those
* who entered something before stay; ids that name no task are let pass. No number and no hash changes.
*/
function enteredIn(text, tasks, who) {
	const { plan } = require_readPlan.readPlan(text);
	const changes = (plan?.tasks ?? []).flatMap(({ id, enteredBy = [] }) => {
		if (!tasks.includes(id) || enteredBy.includes(who)) return [];
		return [{
			path: [
				"tasks",
				id,
				"enteredBy"
			],
			value: enteredBy.length === 0 ? who : [...enteredBy, who]
		}];
	});
	return require_setManyInPlan.setManyInPlan(text, changes);
}
// ../../packages/core/src/exchange/merge/importEstimates.ts
var KIND = {
	low: "number",
	likely: "number",
	high: "number",
	outcomes: "list"
};
var SAID = [["estimatedBy", "list"], ["basis", "text"]];
/**
* Merges a table of estimates into the text of a plan, by task and by what it is an estimate of. The form in which the
* plan writes an estimate stays where it can; nothing is taken out. Problems as with `importTable`.
*/
function importEstimates(text, table) {
	const csv = require_readCsv.readCsv(table);
	const problems = [...csv.problems];
	const columns = require_importTable.headingsOf(csv.cells[0] ?? [], require_importTable.ESTIMATE_HEADINGS, [
		"task",
		"of",
		"low",
		"likely",
		"high"
	], problems);
	const tree = require_readPlan.readSource(text);
	if (tree.root === void 0 || tree.faults.length > 0) problems.push(...require_readPlan.readPlan(text).problems);
	const refused = () => ({
		text,
		changes: [],
		unchanged: 0,
		problems
	});
	const failed = () => problems.some(({ severity }) => severity === "error");
	if (failed() || tree.root === void 0) return refused();
	const tasks = new Map(require_importTable.entriesOf(require_readPlan.toJson(tree.root), "tasks").map((entry) => [entry.id, entry]));
	const context = require_importTable.contextOf(csv.delimiter === ";", problems);
	const seen = /* @__PURE__ */ new Map();
	const edits = [];
	const changes = [];
	const places = /* @__PURE__ */ new Map();
	let unchanged = 0;
	for (const [index, line] of csv.cells.entries()) {
		if (index === 0 || line.every((cell) => cell.trim() === "")) continue;
		const row = index + 1;
		const cell = (heading) => line[columns.get(heading) ?? -1];
		const found = taskAndKey(row, cell, tasks, seen, problems);
		if (found === void 0) continue;
		const { entry, of } = found;
		places.set(`${pathText(entry)}.${of}`, row);
		const read = (heading, kind) => {
			const value = require_importTable.valueIn(cell(heading) ?? "", kind, context.semicolons);
			const place = require_importTable.cellPlace(row, heading);
			if ("rule" in value) {
				problems.push({
					...value,
					severity: "error",
					path: place,
					received: require_engine.oneLine(cell(heading) ?? "")
				});
				return;
			}
			if (value.comma) context.onComma(place, (cell(heading) ?? "").trim());
			return value.value;
		};
		let touched = false;
		const put = (key, value) => {
			const from = entry.value[key];
			edits.push({
				kind: "set",
				path: [...entry.path, key],
				value
			});
			changes.push({
				kind: "changed",
				row,
				of: entry.id,
				key,
				...from !== void 0 && { from },
				to: value
			});
			touched = true;
		};
		const before = entry.value[of];
		const parts = {};
		for (const part of require_importTable.PARTS) {
			const kept = before === void 0 ? void 0 : require_importTable.partsOf(before)[part];
			const value = columns.has(part) ? read(part, KIND[part] ?? "text") : kept;
			if (value !== void 0) parts[part] = value;
		}
		if (Object.keys(parts).length === 0) {
			if (before !== void 0) emptied(row, "likely", problems);
		} else if (before === void 0 || !require_importTable.sameValue(parts, require_importTable.partsOf(before), "estimate")) put(of, inForm(parts, before));
		for (const [key, kind] of SAID) {
			const given = cell(key);
			if (given === void 0 || given.trim() === "" || given === String(require_importTable.cellOf(entry.value[key], kind))) continue;
			const value = read(key, kind);
			if (value !== void 0 && !require_importTable.sameValue(value, entry.value[key], kind)) put(key, value);
		}
		if (!touched) unchanged++;
	}
	if (failed()) return refused();
	const made = require_importTable.editTogether(text, edits);
	problems.push(...made.problems);
	if (edits.length > 0 && made.problems.length === 0) problems.push(...atRows(made.text, places));
	return failed() ? refused() : {
		text: made.text,
		changes,
		unchanged,
		problems
	};
}
/** A list stays a list and an object an object, where what is said fits into it. */
function inForm(parts, before) {
	const { low, likely, high, ...others } = parts;
	const bare = Object.keys(others).length === 0;
	if (require_editPlan.isObject(before)) return { ...ordered(before, parts) };
	if (bare && likely !== void 0 && low === void 0 && high === void 0) return likely;
	if (bare && low !== void 0 && likely !== void 0 && high !== void 0) return [
		low,
		likely,
		high
	];
	return parts;
}
/** The keys in the order they had; new ones behind. */
function ordered(before, parts) {
	const keys = [...Object.keys(before), ...Object.keys(parts)].filter((key) => parts[key] !== void 0);
	return Object.fromEntries(keys.map((key) => [key, parts[key] ?? null]));
}
function emptied(row, heading, problems) {
	const rule = "The row is empty now; the plan's estimate stays.";
	const path = require_importTable.cellPlace(row, heading);
	problems.push({
		code: "emptied",
		severity: "warning",
		path,
		received: "",
		rule,
		remedy: "Take it out in the plan's text."
	});
}
function taskAndKey(row, cell, tasks, seen, problems) {
	const [task, written] = [(cell("task") ?? "").trim(), (cell("of") ?? "").trim()];
	const refuse = (heading, code, received, rule, remedy) => {
		problems.push({
			code,
			severity: "error",
			path: require_importTable.cellPlace(row, heading),
			received: require_engine.oneLine(received),
			rule,
			remedy
		});
	};
	const entry = tasks.get(task);
	const of = require_importTable.ESTIMATES_OF.find((each) => each === written);
	if (entry === void 0) {
		const near = require_program.nearest$1(task, [...tasks.keys()]);
		refuse("task", "unknown-id", task, "The plan has no such task.", near === void 0 ? "New tasks come with the table of tasks." : `Did you mean ${near}?`);
	}
	if (of === void 0) refuse("of", "estimate-of", written, "A row is an estimate of one of these.", `Write ${require_importTable.ESTIMATES_OF.join(", ")}.`);
	if (entry === void 0 || of === void 0) return void 0;
	const earlier = seen.get(`${of} ${task}`);
	if (earlier !== void 0) return refuse("task", "repeated-row", task, `Row ${earlier} is about the same.`, "Keep one of them.");
	seen.set(`${of} ${task}`, row);
	return {
		entry,
		of
	};
}
function pathText({ path }) {
	return `${path[0]}[${path[1]}]`;
}
/** The problems of the plan afterwards, each at its row where it came from one. */
function atRows(text, places) {
	return require_readPlan.readPlan(text).problems.map((problem) => {
		const [place = "", key = ""] = /^tasks\[\d+\]\.([A-Za-z]+)/.exec(problem.path) ?? [];
		const row = places.get(place);
		if (row === void 0) return problem;
		const part = require_importTable.PARTS.find((each) => problem.path === `${place}.${each}`);
		const { line: _line, column: _column, ...rest } = problem;
		return {
			...rest,
			path: require_importTable.cellPlace(row, part ?? key)
		};
	});
}
// src/text/importText.ts
var MOST = 30;
/** What a table changes in a plan, line by line. */
function importLines({ changes, unchanged }) {
	const count = (kind) => changes.filter((each) => each.kind === kind).length;
	const said = `${count("changed")} values changed, ${count("added")} added, ${count("removed")} removed, ${unchanged} rows as before.`;
	const lines = changes.slice(0, MOST).map(line);
	const more = changes.length - lines.length;
	return [
		...lines,
		...more > 0 ? [`  and ${more} more`] : [],
		said
	];
}
function line({ kind, row, of, key, from, to }) {
	const where = row === void 0 ? "" : ` (row ${row})`;
	if (kind === "removed") return `  - ${require_program.plainText(of)}`;
	if (kind === "added") return `  + ${require_program.plainText(of)}${where}`;
	return `  ${require_program.plainText(of)}.${key}: ${words(from)} -> ${words(to)}${where}`;
}
function words(value) {
	if (value === void 0) return "nothing";
	const text = typeof value === "string" ? value : JSON.stringify(value);
	return require_program.cut(require_program.plainText(text), 40);
}
// src/verbs/import.ts
/** Keys that are an estimate or part of one. */
var OF_ESTIMATES = /^(duration|effort|cost|costPerDay|remaining)\b/;
var WHAT = [
	"tasks",
	"estimates",
	"register",
	"people"
];
/** A table back into the text of a plan. */
async function importVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const what = values.oneOf("what", WHAT);
	const read = values.text("read");
	const removeMissing = values.has("remove-missing");
	const problems = [...values.problems, ...clashes(values, call.subject)];
	if (problems.length > 0 || what === void 0 || read === void 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const given = await require_givenPlan.givenPlan(call.subject ?? "-");
	if (given === void 0) return require_program.exitCodes.invalid;
	const writer = values.has("as") ? require_givenPlan.speakerOf(given.plan, "as", values.text("as") ?? "") : void 0;
	if (writer !== void 0 && require_givenPlan.isProblem(writer)) {
		require_program.printProblems([writer], given.name);
		return require_program.exitCodes.invalid;
	}
	const document = await require_readDocument.readDocument(read);
	if (document.text === void 0) {
		if (document.problem !== void 0) require_program.printProblems([document.problem], document.name);
		return require_program.exitCodes.invalid;
	}
	const result = what === "estimates" ? importEstimates(given.text, document.text) : require_importTable.importTable(given.text, document.text, what, { removeMissing });
	const ofTable = (problem) => problem.path.startsWith("row ") || problem.line === void 0;
	for (const [ours, name] of [[true, document.name], [false, given.name]]) {
		const listed = result.problems.filter((problem) => ofTable(problem) === ours);
		if (listed.length > 0) require_program.printProblems(listed, name);
	}
	if (result.problems.some(({ severity }) => severity === "error")) return require_program.exitCodes.invalid;
	const as = values.text("as");
	if (as !== void 0 && what === "tasks") {
		const ids = result.changes.flatMap(({ kind, of, key = "" }) => kind === "added" || kind === "changed" && OF_ESTIMATES.test(key) ? [of] : []);
		const entered = enteredIn(result.text, ids, as);
		if (entered.problems.length > 0) {
			require_program.printProblems(entered.problems, given.name);
			return require_program.exitCodes.invalid;
		}
		result.text = entered.text;
	}
	const dry = values.has("dry-run");
	const streamed = given.name === "standard input";
	const write = !dry && (result.changes.length > 0 || streamed);
	if (write && !await require_writeBack.writeBack(given, result.text)) return require_program.exitCodes.invalid;
	const { changes, unchanged } = result;
	if (values.has("json")) {
		if (!streamed || dry) require_program.printJson({
			changes,
			unchanged,
			written: write
		});
		return require_program.exitCodes.done;
	}
	const end = dry ? "Nothing is written." : streamed ? "The plan is on standard output." : write ? `Written to ${given.name}.` : "The plan is as it was.";
	const said = [...importLines(result), end].join("\n");
	if (streamed && !dry) require_program.printNote(said);
	else require_program.printAnswer(`${said}\n`);
	return require_program.exitCodes.done;
}
function clashes(values, subject) {
	const problem = (word, rule, remedy) => require_program.callProblem("option-missing", word, rule, remedy);
	return [
		...values.has("what") ? [] : [problem("--what", "What is in the table?", `Write one of: ${WHAT.join(", ")}.`)],
		...values.has("as") && values.text("what") !== "tasks" ? [problem("--as", "Who entered what is kept of tasks.", "Add --what tasks, or leave it out.")] : [],
		...values.has("read") ? [] : [problem("--read", "Which table?", "Add --read FILE.csv.")],
		...values.text("read") === "-" && (subject ?? "-") === "-" ? [problem("- -", "Standard input cannot be the plan and the table.", "Name a file for one of them.")] : [],
		...values.has("remove-missing") && values.text("what") === "estimates" ? [problem("--remove-missing", "A table of estimates takes nothing out.", "Leave it out.")] : []
	];
}
exports.importVerb = importVerb;

const require_engine = require("./engine-Bbth-FEh.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_plan = require("./plan-DgohkeUq.cjs");
const require_editPlan = require("./editPlan-DSSwX--u.cjs");
const require_readCsv = require("./readCsv--RBXSdyy.cjs");
const require_program = require("./program.cjs");
// ../../packages/core/src/exchange/csv/numberIn.ts
/**
* A number in a cell. A comma is the decimal point only in a table whose cells are separated by semicolons; there
* `1.500` is refused, because it may be 1.5 or one thousand five hundred.
*/
function numberIn(cell, semicolons) {
	const text = cell.trim();
	if (semicolons) {
		if (/^[-+]?\d+,\d+$/.test(text)) return {
			value: Number(text.replace(",", ".")),
			comma: true
		};
		if (/^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(text)) return { remedy: `Write ${text.replace(".", "")}, or ${text.replace(".", ",").replace(/0+$/, "").replace(/,$/, "")} if the dot is the decimal point.` };
	}
	if (/^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i.test(text)) {
		const value = Number(text);
		if (Number.isFinite(value)) return {
			value,
			comma: false
		};
	}
	return { remedy: require_plan.advice(text, {}) ?? "Write a number, with a dot as the decimal point." };
}
// ../../packages/core/src/exchange/tables/cell.ts
/** Text a cell holds as it is; anything else is written as the plan writes it between brackets. */
var PLAIN_ITEM = /^[A-Za-z0-9_][^,[\]{}"'#\r\n]*$/;
/** The cell of a value as written in the document; nothing for a key that is absent. */
function cellOf(value, kind) {
	if (value === void 0) return "";
	if (typeof value === "number" && kind !== "text") return value;
	if (typeof value === "boolean" && kind === "flag") return value ? "yes" : "no";
	if (typeof value === "string") {
		if (kind === "text") return value === "" || /^[[{"]/.test(value) ? JSON.stringify(value) : value;
		if (kind !== "list" || isPlain(value)) return value;
	}
	if (kind === "list" && Array.isArray(value) && value.length > 0 && value.every(isPlain)) return value.join(", ");
	return require_editPlan.renderFlow(value, false);
}
function isPlain(value) {
	return typeof value === "string" && PLAIN_ITEM.test(value) && value === value.trim();
}
/** The value a cell stands for; `undefined` for an empty one. What it means in a plan is for the plan to check. */
function valueIn(cell, kind, semicolons) {
	const text = cell.trim();
	if (text === "") return { value: void 0 };
	if (/^[[{"]/.test(text)) return bracketed(text);
	if (kind === "text") return { value: cell };
	if (kind === "flag") {
		const lower = text.toLowerCase();
		if (["yes", "true"].includes(lower)) return { value: true };
		return { value: ["no", "false"].includes(lower) ? false : text };
	}
	if (kind === "list") return { value: text.split(semicolons ? /[,;]/ : ",").map((item) => item.trim()).filter((item) => item !== "") };
	const read = numberIn(text, semicolons);
	if ("value" in read) return read;
	return {
		code: "not-a-number",
		rule: "This must be a number.",
		remedy: read.remedy
	};
}
function bracketed(text) {
	const { root, faults } = require_readPlan.readSource(text);
	if (root !== void 0 && faults.length === 0) return { value: require_readPlan.toJson(root) };
	return {
		code: "brackets",
		rule: "What stands in brackets or quotes is written as in a plan.",
		remedy: "Write e.g. [5, 7, 14] or { task: survey, lag: 3 }, and close what is open."
	};
}
/** Whether two values say the same: a single item may stand for a list of one. */
function sameValue(a, b, kind) {
	const whole = (value) => kind === "list" && value !== void 0 && !Array.isArray(value) ? [value] : value;
	return JSON.stringify(sortedKeys(whole(a))) === JSON.stringify(sortedKeys(whole(b)));
}
function sortedKeys(value) {
	if (Array.isArray(value)) return value.map(sortedKeys);
	if (typeof value !== "object" || value === null) return value;
	return Object.entries(value).sort(([a], [b]) => a < b ? -1 : 1).map(([key, item]) => [key, sortedKeys(item)]);
}
// ../../packages/core/src/exchange/tables/columns.ts
var column = (key, kind = "text", heading = key) => ({
	heading,
	key,
	kind
});
var always = (key, kind = "text") => ({
	...column(key, kind),
	always: true
});
/** Every key of a task: a table of them holds the whole task. */
var TASK_COLUMNS = [
	always("id"),
	always("name"),
	always("phase"),
	always("milestone", "flag"),
	always("duration", "estimate"),
	always("effort", "estimate"),
	always("after", "list"),
	always("people", "list"),
	always("target"),
	always("cost", "estimate"),
	column("due"),
	column("costPerDay", "estimate"),
	column("scope"),
	column("notBefore"),
	column("holdToPlan", "flag"),
	column("calendar"),
	column("unbroken"),
	column("priority", "number"),
	column("detail"),
	column("detailOf"),
	column("chance", "number"),
	column("onlyIf"),
	column("responsible", "list"),
	column("accountable", "list"),
	column("consulted", "list"),
	column("informed", "list"),
	column("estimatedBy", "list"),
	column("basis"),
	column("started"),
	column("finished"),
	column("remaining", "estimate"),
	column("spent", "number"),
	column("opinions", "list"),
	column("was"),
	column("note")
];
var PERSON_COLUMNS = [
	always("id"),
	always("name"),
	always("role"),
	always("rate", "number"),
	always("share", "number"),
	always("capacity", "number"),
	always("calendar"),
	always("away", "list"),
	column("couldAdd", "list"),
	column("was"),
	column("note")
];
var ENTRY = [
	column("cause"),
	column("owner"),
	column("group"),
	column("status"),
	column("expires"),
	column("onlyIf"),
	column("was"),
	column("note")
];
var impactColumns = [
	column("tasks", "list"),
	column("phase"),
	column("delay", "estimate"),
	column("factor", "estimate"),
	column("wait", "estimate"),
	column("cost", "estimate"),
	column("note")
];
/** The register is one table of four kinds of row; a heading means what stands here for the kind. */
var REGISTER_COLUMNS = {
	risk: [
		column("name"),
		column("probability", "number"),
		...ENTRY
	],
	assumption: [
		column("statement", "text", "name"),
		column("chanceWrong", "number", "probability"),
		column("reviewBy"),
		column("signpost"),
		column("tripped"),
		...ENTRY
	],
	impact: impactColumns,
	response: [
		column("action", "text", "name"),
		column("probability", "number"),
		column("owner"),
		column("due"),
		column("cost", "estimate"),
		column("adopted", "flag"),
		column("scale", "number"),
		column("was"),
		column("note")
	]
};
/** Headings of the register, in order. */
var REGISTER_HEADINGS = [
	"what",
	"of",
	"id",
	"name",
	"probability",
	"owner",
	"tasks",
	"phase",
	"delay",
	"factor",
	"wait",
	"cost",
	"due",
	"adopted",
	"scale",
	"cause",
	"group",
	"status",
	"expires",
	"onlyIf",
	"reviewBy",
	"signpost",
	"tripped",
	"was",
	"note"
];
// ../../packages/core/src/exchange/tables/entries.ts
/** The columns that hold a kind. */
function columnsOf(what) {
	return what === "task" ? TASK_COLUMNS : what === "person" ? PERSON_COLUMNS : REGISTER_COLUMNS[what];
}
/** What makes two rows the same one. */
function entryKey({ what, of, id }) {
	return what === "impact" || what === "response" ? `${what} ${of} ${id}` : `${what} ${id}`;
}
/** Everything of a document that a table holds, in the order of the document. */
function entriesOf(document, table) {
	if (!require_editPlan.isObject(document)) return [];
	const listed = (what, list) => itemsOf(document[list]).map((value, index) => {
		return {
			what,
			of: "",
			id: textOf(value.id),
			value,
			path: [list, index]
		};
	});
	if (table === "tasks") return listed("task", "tasks");
	if (table === "people") return listed("person", "people");
	return [...listed("risk", "risks"), ...listed("assumption", "assumptions")].flatMap((entry) => [
		entry,
		...itemsOf(entry.value.impacts).map((value, index) => {
			const path = [
				...entry.path,
				"impacts",
				index
			];
			return {
				what: "impact",
				of: entry.id,
				id: String(index + 1),
				value,
				path
			};
		}),
		...itemsOf(entry.value.responses).map((value, index) => {
			const path = [
				...entry.path,
				"responses",
				index
			];
			return {
				what: "response",
				of: entry.id,
				id: textOf(value.id),
				value,
				path
			};
		})
	]);
}
/** The items of a list, or the single one that stands for it. */
function itemsOf(value) {
	if (Array.isArray(value)) return value.filter(require_editPlan.isObject);
	return require_editPlan.isObject(value) ? [value] : [];
}
function textOf(value) {
	return typeof value === "string" ? value : "";
}
// ../../packages/core/src/exchange/tables/estimates.ts
/** Which of a task's estimates have rows, in this order. */
var ESTIMATES_OF = [
	"duration",
	"effort",
	"remaining",
	"cost",
	"costPerDay"
];
var ESTIMATE_HEADINGS = [
	"task",
	"name",
	"of",
	"low",
	"likely",
	"high",
	"shape",
	"bounds",
	"unit",
	"outcomes",
	"note",
	"estimatedBy",
	"basis"
];
/** The parts of an estimate that have a column of their own. */
var PARTS = [
	"low",
	"likely",
	"high",
	"shape",
	"bounds",
	"unit",
	"outcomes",
	"note"
];
/** Every estimate of every task, in the order of the document. */
function estimatesOf(document) {
	return entriesOf(document, "tasks").flatMap((entry) => ESTIMATES_OF.flatMap((of) => {
		const value = entry.value[of];
		return value === void 0 ? [] : [{
			of,
			value
		}];
	}).map(({ of, value }, index) => ({
		entry,
		of,
		value,
		first: index === 0
	})));
}
/** The parts of an estimate in whichever form it is written; a certain one has only `likely`. */
function partsOf(value) {
	if (Array.isArray(value)) {
		const [low, likely, high] = value;
		return {
			...low !== void 0 && { low },
			...likely !== void 0 && { likely },
			...high !== void 0 && { high }
		};
	}
	return require_editPlan.isObject(value) ? value : { likely: value };
}
/**
* The estimates of all tasks, a row each: low, likely and high in cells of their own. Who said so and why they would
* know stands in the first row of a task.
*/
function estimateTable(document) {
	const rows = estimatesOf(document).map(({ entry, of, value, first }) => {
		const parts = partsOf(value);
		const number = (part) => typeof part === "number" ? part : "";
		return ESTIMATE_HEADINGS.map((heading) => {
			if (heading === "task") return entry.id;
			if (heading === "name") return cellOf(entry.value.name, "text");
			if (heading === "of") return of;
			if (heading === "estimatedBy" || heading === "basis") return first ? cellOf(entry.value[heading], heading === "basis" ? "text" : "list") : "";
			if (heading === "low" || heading === "likely" || heading === "high") return number(parts[heading]);
			if (heading === "outcomes") return parts.outcomes === void 0 ? "" : require_editPlan.renderFlow(parts.outcomes, false);
			return cellOf(parts[heading], "text");
		});
	});
	return {
		header: [...ESTIMATE_HEADINGS],
		rows
	};
}
// ../../packages/core/src/exchange/merge/commaTold.ts
/** How the cells of a table are read: the first decimal comma is told of, once. */
function contextOf(semicolons, problems) {
	let told = false;
	const onComma = (path, received) => {
		if (told) return;
		told = true;
		problems.push({
			code: "decimal-comma",
			severity: "warning",
			path,
			received,
			rule: "Cells are separated by semicolons, so a comma in a number is its decimal point.",
			remedy: "Look at the numbers."
		});
	};
	return {
		semicolons,
		problems,
		onComma
	};
}
// ../../packages/core/src/exchange/merge/editTogether.ts
/**
* Many edits of one text. Each is a small cut in the text as it came, all are made in one go, and the outcome is read
* again; where it does not say what was meant, the edits are made one by one, which is slower.
*
* @param edits  Paths are of the document as it came. Values are put before items are taken out, and items are added
*               last.
*/
function editTogether(text, edits) {
	if (edits.length === 0) return {
		text,
		problems: []
	};
	const rank = {
		set: 0,
		remove: 1,
		add: 2
	};
	const inOrder = edits.map((edit, at) => ({
		edit,
		at
	})).sort((a, b) => {
		const kinds = rank[a.edit.kind] - rank[b.edit.kind];
		if (kinds !== 0) return kinds;
		return a.edit.kind === "remove" ? behindFirst(a.edit, b.edit) : a.at - b.at;
	}).map(({ edit }) => edit);
	return inOneGo(text, inOrder) ?? oneByOne(text, inOrder);
}
/** From the end, so that no place moves before it is reached. */
function behindFirst(a, b) {
	for (const [depth, step] of a.path.entries()) {
		const other = b.path[depth];
		if (step === other) continue;
		if (typeof step === "number" && typeof other === "number") return other - step;
		return String(step) < String(other) ? -1 : 1;
	}
	return 0;
}
function inOneGo(text, edits) {
	const { root, faults } = require_readPlan.readSource(text);
	if (root === void 0 || faults.length > 0) return void 0;
	const json = /^\uFEFF?\s*\{/.test(text) && isJson(text);
	const document = require_readPlan.toJson(root);
	let meant = document;
	const patches = [];
	try {
		for (const [order, asked] of edits.entries()) {
			const edit = {
				...asked,
				path: require_editPlan.exactPath(document, asked.path)
			};
			meant = require_editPlan.edited(meant, {
				...asked,
				path: require_editPlan.exactPath(meant, asked.path)
			});
			const after = require_editPlan.splice(text, root, edit, json);
			if (after === void 0) return void 0;
			patches.push({
				...difference(text, after),
				order
			});
		}
	} catch {
		return;
	}
	patches.sort((a, b) => a.from - b.from || a.order - b.order);
	let result = "";
	let at = 0;
	for (const { from, to, put } of patches) {
		if (from < at) return void 0;
		result += text.slice(at, from) + put;
		at = to;
	}
	result += text.slice(at);
	const again = require_readPlan.readSource(result);
	return (again.root !== void 0 && again.faults.length === 0 && JSON.stringify(require_readPlan.toJson(again.root))) === JSON.stringify(meant) && (!json || isJson(result)) ? {
		text: result,
		problems: []
	} : void 0;
}
function oneByOne(before, edits) {
	let text = before;
	for (const edit of edits) {
		const made = edit.kind === "remove" ? require_editPlan.removeFromPlan(text, edit.path) : edit.kind === "set" ? require_editPlan.setInPlan(text, edit.path, edit.value) : require_editPlan.addToPlan(text, edit.path, edit.value);
		if (made.problems.length > 0) return {
			text: before,
			problems: made.problems
		};
		text = made.text;
	}
	return {
		text,
		problems: []
	};
}
/** Compared in pieces first: a text of a thousand tasks is compared thousands of times. */
var PIECE = 1024;
function difference(before, after) {
	const most = Math.min(before.length, after.length);
	let from = 0;
	while (from + PIECE <= most && before.slice(from, from + PIECE) === after.slice(from, from + PIECE)) from += PIECE;
	while (from < most && before[from] === after[from]) from++;
	let same = 0;
	const tail = (text, back) => text.slice(text.length - back - PIECE, text.length - back);
	while (same + PIECE <= most - from && tail(before, same) === tail(after, same)) same += PIECE;
	while (same < most - from && before[before.length - 1 - same] === after[after.length - 1 - same]) same++;
	return {
		from,
		to: before.length - same,
		put: after.slice(from, after.length - same)
	};
}
function isJson(text) {
	try {
		JSON.parse(text.replace(/^\uFEFF/, ""));
		return true;
	} catch {
		return false;
	}
}
// ../../packages/core/src/exchange/merge/types.ts
/** Where a problem of a table is. */
function cellPlace(row, heading) {
	return heading === void 0 ? `row ${row}` : `row ${row}, column “${require_engine.oneLine(heading, 40)}”`;
}
// ../../packages/core/src/exchange/merge/headings.ts
/**
* Which column holds which heading. Headings may come in any order and in any case; one that is unknown is told of and
* not read, one that stands twice is an error, and so is one that is needed and missing.
*/
function headingsOf(row, known, needed, problems) {
	const columns = /* @__PURE__ */ new Map();
	const add = (path, code, severity, received, words) => problems.push({
		code,
		severity,
		path,
		received: require_engine.oneLine(received),
		rule: words[0],
		remedy: words[1]
	});
	for (const [index, written] of row.entries()) {
		const bare = written.trim();
		const heading = known.find((each) => each.toLowerCase() === bare.toLowerCase());
		if (heading === void 0) {
			if (bare === "") continue;
			const meant = require_program.nearest$1(bare, known);
			const remedy = meant === void 0 ? "It is not read." : `It is not read; did you mean “${meant}”?`;
			add(cellPlace(1, bare), "unknown-column", "warning", bare, ["This table has no such column.", remedy]);
		} else if (columns.has(heading)) add(cellPlace(1, heading), "repeated-column", "error", bare, ["This column is here twice.", "Keep one of them."]);
		else columns.set(heading, index);
	}
	for (const heading of needed) {
		if (columns.has(heading)) continue;
		add(cellPlace(1, heading), "missing-column", "error", "", ["The table needs this column.", "Keep the headings of the table as it came out."]);
	}
	return columns;
}
// ../../packages/core/src/exchange/merge/inTheTable.ts
/** The problems of a plan after a table went in, each at the row and column it came from where it came from one. */
function inTheTable(text, rows, which) {
	const { problems } = require_readPlan.readPlan(text);
	const { root } = require_readPlan.readSource(text);
	if (root === void 0 || problems.length === 0) return problems;
	const byKey = new Map(rows.map((row) => [entryKey(row), row]));
	const byPath = new Map(entriesOf(require_readPlan.toJson(root), which).flatMap((entry) => {
		const row = byKey.get(entryKey(entry));
		return row === void 0 ? [] : [[pathText(entry.path), {
			entry,
			row
		}]];
	}));
	return problems.map((problem) => {
		for (let place = problem.path; place !== ""; place = place.replace(/(?:^|\.|\[)[^.[]*$/, "")) {
			const found = byPath.get(place);
			if (found === void 0) continue;
			const key = /^\.?([A-Za-z]+)/.exec(problem.path.slice(place.length))?.[1];
			const column = columnsOf(found.entry.what).find((each) => each.key === key);
			const { line: _line, column: _column, ...rest } = problem;
			return {
				...rest,
				path: cellPlace(found.row.row, column?.heading)
			};
		}
		return problem;
	});
}
function pathText(path) {
	return path.map((step, depth) => typeof step === "number" ? `[${step}]` : depth === 0 ? step : `.${step}`).join("");
}
// ../../packages/core/src/exchange/merge/readRow.ts
/** What a row says that differs from what the plan has; a cell as it was written changes nothing. */
function readRow(row, current, context) {
	return columnsOf(row.what).flatMap((column) => {
		const { heading, key, kind } = column;
		const cell = key === "id" ? row.id : row.cell(heading);
		if (cell === void 0) return [];
		const before = current?.[key];
		if (cell === String(cellOf(before, kind))) return [];
		const read = valueIn(cell, kind, context.semicolons);
		const place = cellPlace(row.row, heading);
		if ("rule" in read) {
			context.problems.push({
				...read,
				severity: "error",
				path: place,
				received: require_engine.oneLine(cell)
			});
			return [];
		}
		if (read.comma) context.onComma(place, cell.trim());
		return sameValue(read.value, before, kind) ? [] : [{
			column,
			value: read.value
		}];
	});
}
// ../../packages/core/src/exchange/merge/rowsOf.ts
var KINDS = [
	"risk",
	"assumption",
	"impact",
	"response"
];
var isKind = (word) => KINDS.includes(word);
/** The rows of a table under its headings; a row that is of nothing, or of the same as another, is a problem. */
function rowsOf({ cells }, table, problems) {
	const register = table === "register";
	const known = register ? REGISTER_HEADINGS : columnsOf(table === "tasks" ? "task" : "person").map(({ heading }) => heading);
	const columns = headingsOf(cells[0] ?? [], known, register ? [
		"what",
		"of",
		"id"
	] : ["id"], problems);
	if (problems.some(({ severity }) => severity === "error")) return [];
	const seen = /* @__PURE__ */ new Map();
	const rows = [];
	for (const [index, line] of cells.entries()) {
		if (index === 0 || line.every((cell) => cell.trim() === "")) continue;
		const row = index + 1;
		const refuse = (heading, code, received, rule, remedy) => problems.push({
			code,
			severity: "error",
			path: cellPlace(row, heading),
			received: require_engine.oneLine(received),
			rule,
			remedy
		});
		const cell = (heading) => line[columns.get(heading) ?? -1];
		const given = (heading) => (cell(heading) ?? "").trim();
		const what = register ? given("what").toLowerCase() : table === "tasks" ? "task" : "person";
		if (register && !isKind(what)) {
			refuse("what", "row-kind", what, "A row is a risk, an assumption, an impact or a response.", "Write one of them.");
			continue;
		}
		const found = {
			row,
			what,
			of: given("of"),
			id: given("id"),
			cell
		};
		if (found.id === "") {
			refuse("id", "missing-id", "", "A row is known by its id.", "Write the id; of a new row a new one.");
			continue;
		}
		if ((what === "impact" || what === "response") && found.of === "") {
			refuse("of", "missing-id", "", `The ${what} is of a risk or an assumption.`, "Write its id.");
			continue;
		}
		const key = entryKey(found);
		const earlier = seen.get(key);
		if (earlier !== void 0) {
			refuse("id", "repeated-row", found.id, `Row ${earlier} is about the same.`, "Keep one of them.");
			continue;
		}
		seen.set(key, row);
		rows.push(found);
	}
	return rows;
}
// ../../packages/core/src/exchange/merge/importTable.ts
/**
* Merges a table into the text of a plan, by id. Comments, order and spacing of the plan stay; what the table adds goes
* to the end of its list; nothing is taken out unless asked for. Every problem has its row and column, all at once, and
* with one error nothing changes. A table as it came out leaves every character as it was.
*
* @param text   The plan document.
* @param table  Comma-separated values with the headings of `tableOf`; columns may be left out or stand elsewhere.
*/
function importTable(text, table, which, options = {}) {
	const csv = require_readCsv.readCsv(table);
	const problems = [...csv.problems];
	const rows = rowsOf(csv, which, problems);
	const tree = require_readPlan.readSource(text);
	const document = tree.root === void 0 ? {} : require_readPlan.toJson(tree.root);
	if (tree.root === void 0 || tree.faults.length > 0) problems.push(...require_readPlan.readPlan(text).problems);
	const merge = merged(document, rows, which, options, contextOf(csv.delimiter === ";", problems));
	const refused = () => ({
		text,
		changes: [],
		unchanged: 0,
		problems
	});
	if (problems.some(({ severity }) => severity === "error")) return refused();
	const made = editTogether(text, merge.edits);
	problems.push(...made.problems);
	if (made.problems.length > 0) return refused();
	if (merge.edits.length > 0) problems.push(...inTheTable(made.text, rows, which));
	if (problems.some(({ severity }) => severity === "error")) return refused();
	return {
		text: made.text,
		changes: merge.changes,
		unchanged: merge.unchanged,
		problems
	};
}
var LISTS = {
	task: "tasks",
	person: "people",
	risk: "risks",
	assumption: "assumptions"
};
function merged(document, rows, which, options, context) {
	const entries = new Map(entriesOf(document, which).map((entry) => [entryKey(entry), entry]));
	const result = {
		edits: [],
		changes: [],
		unchanged: 0
	};
	/** Things of the table that the plan does not have, by id: what belongs to them goes inside. */
	const fresh = /* @__PURE__ */ new Map();
	for (const row of rows) {
		const entry = entries.get(entryKey(row));
		if (entry === void 0) add(row, entries, fresh, result, context);
		else change(row, entry, options, result, context);
	}
	if (options.removeMissing) remove(rows, entries, result);
	return result;
}
function change(row, entry, { removeMissing }, result, context) {
	const of = nameOf(entry);
	let touched = false;
	for (const { column, value } of readRow(row, entry.value, context)) {
		const path = [...entry.path, column.key];
		const from = entry.value[column.key];
		if (value === void 0) {
			if (!removeMissing) {
				context.problems.push({
					code: "emptied",
					severity: "warning",
					path: cellPlace(row.row, column.heading),
					received: "",
					rule: "The cell is empty now; what the plan has there stays.",
					remedy: "Ask for what is missing to be removed, to empty it."
				});
				continue;
			}
			result.edits.push({
				kind: "remove",
				path
			});
		} else result.edits.push({
			kind: "set",
			path,
			value
		});
		touched = true;
		const to = value === void 0 ? {} : { to: value };
		result.changes.push({
			kind: "changed",
			row: row.row,
			of,
			key: column.key,
			...from !== void 0 && { from },
			...to
		});
	}
	if (!touched) result.unchanged++;
}
function add(row, entries, fresh, result, context) {
	const value = {};
	for (const each of readRow(row, void 0, context)) if (each.value !== void 0 && !(row.what === "impact" && each.column.key === "id")) value[each.column.key] = each.value;
	result.changes.push({
		kind: "added",
		row: row.row,
		of: nameOf(row),
		to: value
	});
	if (row.what !== "impact" && row.what !== "response") {
		const ordered = {
			id: row.id,
			...value
		};
		fresh.set(row.id, ordered);
		result.edits.push({
			kind: "add",
			path: [LISTS[row.what]],
			value: ordered
		});
		return;
	}
	const list = row.what === "impact" ? "impacts" : "responses";
	const item = row.what === "response" ? {
		id: row.id,
		...value
	} : value;
	const parent = fresh.get(row.of);
	if (parent !== void 0) {
		const others = parent[list];
		parent[list] = [...Array.isArray(others) ? others : [], item];
		return;
	}
	const known = entries.get(`risk ${row.of}`) ?? entries.get(`assumption ${row.of}`);
	if (known !== void 0) {
		result.edits.push({
			kind: "add",
			path: [...known.path, list],
			value: item
		});
		return;
	}
	context.problems.push({
		code: "unknown-id",
		severity: "error",
		path: cellPlace(row.row, "of"),
		received: require_engine.oneLine(row.of),
		rule: "There is no such risk or assumption above it, nor in the plan.",
		remedy: "Write the id of one, and put its own row first."
	});
}
function remove(rows, entries, result) {
	const kept = new Set(rows.map(entryKey));
	const gone = [...entries].filter(([key]) => !kept.has(key)).map(([, entry]) => entry);
	const parents = new Set(gone.filter(({ of }) => of === "").map(({ id }) => id));
	for (const entry of gone) {
		result.changes.push({
			kind: "removed",
			of: nameOf(entry),
			from: entry.value
		});
		if (entry.of === "" || !parents.has(entry.of)) result.edits.push({
			kind: "remove",
			path: entry.path
		});
	}
}
function nameOf({ what, of, id }) {
	return what === "impact" ? `${of} impact ${id}` : id;
}
/** The document of a text, for `tableOf`; nothing where it cannot be read. */
function documentOf(text) {
	const { root, faults } = require_readPlan.readSource(text);
	const document = root === void 0 || faults.length > 0 ? void 0 : require_readPlan.toJson(root);
	return document !== void 0 && require_editPlan.isObject(document) ? document : void 0;
}
Object.defineProperty(exports, "ESTIMATES_OF", {
	enumerable: true,
	get: function() {
		return ESTIMATES_OF;
	}
});
Object.defineProperty(exports, "ESTIMATE_HEADINGS", {
	enumerable: true,
	get: function() {
		return ESTIMATE_HEADINGS;
	}
});
Object.defineProperty(exports, "PARTS", {
	enumerable: true,
	get: function() {
		return PARTS;
	}
});
Object.defineProperty(exports, "REGISTER_HEADINGS", {
	enumerable: true,
	get: function() {
		return REGISTER_HEADINGS;
	}
});
Object.defineProperty(exports, "cellOf", {
	enumerable: true,
	get: function() {
		return cellOf;
	}
});
Object.defineProperty(exports, "cellPlace", {
	enumerable: true,
	get: function() {
		return cellPlace;
	}
});
Object.defineProperty(exports, "columnsOf", {
	enumerable: true,
	get: function() {
		return columnsOf;
	}
});
Object.defineProperty(exports, "contextOf", {
	enumerable: true,
	get: function() {
		return contextOf;
	}
});
Object.defineProperty(exports, "documentOf", {
	enumerable: true,
	get: function() {
		return documentOf;
	}
});
Object.defineProperty(exports, "editTogether", {
	enumerable: true,
	get: function() {
		return editTogether;
	}
});
Object.defineProperty(exports, "entriesOf", {
	enumerable: true,
	get: function() {
		return entriesOf;
	}
});
Object.defineProperty(exports, "estimateTable", {
	enumerable: true,
	get: function() {
		return estimateTable;
	}
});
Object.defineProperty(exports, "headingsOf", {
	enumerable: true,
	get: function() {
		return headingsOf;
	}
});
Object.defineProperty(exports, "importTable", {
	enumerable: true,
	get: function() {
		return importTable;
	}
});
Object.defineProperty(exports, "partsOf", {
	enumerable: true,
	get: function() {
		return partsOf;
	}
});
Object.defineProperty(exports, "sameValue", {
	enumerable: true,
	get: function() {
		return sameValue;
	}
});
Object.defineProperty(exports, "valueIn", {
	enumerable: true,
	get: function() {
		return valueIn;
	}
});

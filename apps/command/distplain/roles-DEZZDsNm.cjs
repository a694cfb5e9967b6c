const require_program = require("./program.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_csvText = require("./csvText-BBI9w4Qu.cjs");
const require_putOut = require("./putOut-DRB7dvY8.cjs");
// ../../packages/core/src/communicate/roles/roleMatrix.ts
var LETTERS = [
	["R", "responsible"],
	["A", "accountable"],
	["C", "consulted"],
	["I", "informed"]
];
/**
* Who does what, answers for it, is asked and is told, for every task or every phase. A row is faulty unless exactly one
* is accountable and somebody is responsible: common practice, no source. Milestones need no one who does them.
*/
function roleMatrix(plan, { rows: which = "tasks" } = {}) {
	const source = which === "phases" ? plan.phases.map((phase) => ({
		row: {
			kind: "phase",
			id: phase.name,
			name: phase.name
		},
		parts: phase,
		point: false
	})) : plan.tasks.map((task) => ({
		row: {
			kind: "task",
			id: task.id,
			name: task.name,
			...task.phase !== void 0 && { phase: task.phase }
		},
		parts: task,
		point: task.milestone !== false
	}));
	const named = new Set(source.flatMap(({ parts }) => LETTERS.flatMap(([, key]) => parts[key])));
	const seen = /* @__PURE__ */ new Set();
	const people = [...plan.people.map(({ id, name }) => ({
		id,
		name,
		kind: "person"
	})), ...plan.stakeholders.map(({ id, name }) => ({
		id,
		name,
		kind: "stakeholder"
	}))].filter(({ id }) => {
		const first = named.has(id) && !seen.has(id);
		seen.add(id);
		return first;
	});
	const rows = source.map(({ row, parts }) => {
		const roles = people.map(({ id }) => LETTERS.filter(([, key]) => parts[key].includes(id)).map(([letter]) => letter));
		return {
			...row,
			roles
		};
	});
	const nameOf = new Map(people.map(({ id, name }) => [id, name]));
	const faults = source.flatMap(({ row: { id, name }, parts, point }) => {
		const accountable = [...new Set(parts.accountable)].map((who) => ({
			id: who,
			name: nameOf.get(who) ?? who
		}));
		const found = [];
		if (accountable.length === 0) found.push({
			code: "no-accountable",
			row: id,
			name,
			who: []
		});
		if (accountable.length > 1) found.push({
			code: "many-accountable",
			row: id,
			name,
			who: accountable
		});
		if (parts.responsible.length === 0 && !point) found.push({
			code: "no-responsible",
			row: id,
			name,
			who: []
		});
		return found;
	});
	const { title, sha256 } = plan;
	return {
		plan: {
			title,
			sha256
		},
		rows,
		people,
		faults,
		load: loadOf(people, rows)
	};
}
function loadOf(people, rows) {
	const held = rows.filter(({ roles }) => roles.some((each) => each.includes("A"))).length;
	return people.map(({ id, name }, at) => {
		const count = (role) => rows.filter(({ roles }) => roles[at]?.includes(role)).length;
		const accountable = count("A");
		return {
			id,
			name,
			responsible: count("R"),
			accountable,
			consulted: count("C"),
			informed: count("I"),
			part: held === 0 ? 0 : accountable / held
		};
	}).sort((a, b) => b.accountable - a.accountable || b.responsible - a.responsible || (a.id < b.id ? -1 : 1));
}
// src/text/rolesSheet.ts
/** The matrix with names over its columns, for a spreadsheet or a page. */
function rolesSheet({ rows, people }) {
	return {
		header: [
			"id",
			"name",
			"phase",
			...people.map(({ name }) => name)
		],
		rows: rows.map(({ id, name, phase = "", roles }) => [
			id,
			name,
			phase,
			...roles.map((each) => each.join(""))
		])
	};
}
/** The same as a table in Markdown. */
function rolesMarkdown(matrix) {
	const { header, rows } = rolesSheet(matrix);
	const line = (cells) => `| ${cells.map((cell) => require_program.plainText(String(cell)).replace(/[\\|`*_<>[\]]/g, "\\$&").replace(/\s+/g, " ")).join(" | ")} |`;
	return `${[
		line(header),
		`|${header.map(() => " --- |").join("")}`,
		...rows.map(line)
	].join("\n")}\n`;
}
// src/text/rolesTable.ts
/** The names of rows are cut to this, and further where that lets everybody stand in one table. */
var NAME = 30;
var LEAST_NAME = 20;
var LEAST = 4;
/**
* The matrix as tables that fit the width: columns are numbered, and where there are too many people for one table the
* next ones follow in another.
*/
function rolesTables({ rows, people }, width) {
	const wide = Math.max(LEAST, ...rows.flatMap(({ roles }) => roles.map((each) => each.join("").length + 2)));
	const left = Math.max(LEAST_NAME, Math.min(NAME, width - 2 - people.length * wide));
	const each = Math.max(1, Math.floor((width - 2 - left) / wide));
	const lines = [];
	for (let first = 0; first < people.length; first += each) {
		const columns = people.slice(first, first + each);
		if (lines.length > 0) lines.push("");
		lines.push(`  ${" ".repeat(left)}${columns.map((_, k) => String(first + k + 1).padStart(wide)).join("")}`);
		for (const { name, roles } of rows) {
			const cells = columns.map((_, k) => ((roles[first + k] ?? []).join("") || ".").padStart(wide));
			lines.push(`  ${require_program.cut(name, left).padEnd(left)}${cells.join("")}`);
		}
	}
	return lines;
}
// src/text/rolesText.ts
/** Who does what and answers for it, the rows that break the rule, and how much stands on whom. */
function rolesText(asGiven, page) {
	const matrix = require_program.plainTexts(asGiven);
	const { rows, people, faults, load, plan } = matrix;
	const broken = new Set(faults.filter(({ code }) => code !== "no-responsible").map(({ row }) => row)).size;
	const noun = rows[0]?.kind === "phase" ? "phases" : "tasks";
	const head = rows.length === 0 ? `The plan has no ${noun === "tasks" ? "tasks" : "phases"} to show.` : broken === 0 ? `Each of ${rows.length} ${noun} has exactly one who answers for it.` : `${broken} of ${rows.length} ${noun} do not have exactly one who answers for them.`;
	const lines = [
		page.strong(plan.title),
		"",
		...require_program.wrap(head, page.width)
	];
	if (people.length > 0) {
		lines.push("", ...rolesTables(matrix, page.width), "");
		const legend = people.map(({ name }, k) => `${k + 1} ${name}`).join(" · ");
		lines.push(...require_program.wrap(legend, page.width), "");
		lines.push(...require_program.wrap("R does it, A answers for it, C is asked before, I is told after.", page.width));
	}
	if (faults.length > 0) {
		lines.push("", page.strong("Rows that break the rule of one A"));
		for (const fault of faults) {
			const said = require_program.wrap(sentence(fault), page.width - 4);
			lines.push(...said.map((line, k) => `${k === 0 ? "  " : "    "}${line}`));
		}
	}
	if (load.length > 0) {
		lines.push("", page.strong("What stands on whom"));
		const right = (heading) => ({
			heading,
			align: "right"
		});
		const columns = [
			{
				heading: "",
				align: "left"
			},
			right("A"),
			right("of all A"),
			right("R"),
			right("C"),
			right("I")
		];
		const cells = load.map(({ name, accountable, part, responsible, consulted, informed }) => [
			name,
			String(accountable),
			`${Math.round(part * 100)} %`,
			String(responsible),
			String(consulted),
			String(informed)
		]);
		lines.push(...require_program.table(columns, cells, page.width));
	}
	lines.push("", ...require_program.wrap(`One A a row is common practice. Plan ${plan.sha256.slice(0, 12)}.`, page.width));
	return `${lines.join("\n")}\n`;
}
function sentence({ code, name, who }) {
	if (code === "no-accountable") return `${name}: nobody is accountable; name one.`;
	if (code === "no-responsible") return `${name}: nobody is responsible; name who does it.`;
	return `${name}: ${who.length} are accountable (${who.map((each) => each.name).join(", ")}); keep one.`;
}
// src/verbs/roles.ts
/** Who does what, answers for it, is asked and is told. */
async function rolesVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const format = values.oneOf("format", ["csv", "markdown"]);
	const out = values.text("out");
	const problems = [...values.problems];
	if (values.has("json") && format !== void 0) problems.push(require_program.callProblem("call", `--format ${format}`, "It is JSON or a table, not both.", "Leave one of them out."));
	if (out !== void 0 && format === void 0) problems.push(require_program.callProblem("call", `--out ${out}`, "A file needs its format.", "Add --format csv or --format markdown."));
	if (problems.length > 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const given = await require_givenPlan.givenPlan(call.subject ?? "-");
	if (given === void 0) return require_program.exitCodes.invalid;
	const matrix = roleMatrix(given.plan, { rows: values.has("phases") ? "phases" : "tasks" });
	if (format !== void 0) {
		const text = format === "csv" ? require_csvText.csvText(rolesSheet(matrix)) : rolesMarkdown(matrix);
		return require_putOut.putOut(text, out, values.has("force"), `${matrix.rows.length} rows`);
	}
	if (values.has("json")) require_program.printJson(matrix);
	else require_program.printAnswer(rolesText(matrix, require_program.pageOf(process.env, process.stdout)));
	return require_program.exitCodes.done;
}
exports.rolesVerb = rolesVerb;

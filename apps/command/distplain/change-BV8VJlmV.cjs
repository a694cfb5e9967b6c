const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_program = require("./program.cjs");
const require_editPlan = require("./editPlan-DSSwX--u.cjs");
const require_approvalsState = require("./approvalsState-Bxts4Wl7.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_planFile = require("./planFile-D3tgs9yU.cjs");
const require_writeEntry = require("./writeEntry-BuVJUai5.cjs");
const require_signNames = require("./signNames-CIC6ieuW.cjs");
// ../../packages/core/src/signoff/logChange.ts
/**
* Adds an entry to the change log of a plan's text: what, why, by whom, who agreed. Entries are only ever added. Who
* agreed is one who approves this plan, or stands in for one; where the plan names no approver, anybody in it.
*/
function logChange(text, plan, said) {
	const known = [...plan.stakeholders, ...plan.people].map(({ id }) => id);
	const refusals = [];
	for (const id of [said.who, ...said.approvedBy === void 0 ? [] : [said.approvedBy]]) {
		if (known.includes(id)) continue;
		const remedy = known.length === 0 ? "Add them to `stakeholders`." : `Name one of: ${[...known].sort().join(", ")}.`;
		refusals.push({
			code: "unknown-person",
			received: id,
			rule: "There is nobody of that id in the plan.",
			remedy
		});
	}
	refusals.push(...approverRefusals(plan, known, said.approvedBy));
	for (const [key, rule] of [["what", "What changed must be said."], ["why", "A change needs a reason."]]) if (said[key].trim() === "") refusals.push({
		code: "empty-text",
		received: "",
		rule,
		remedy: "Say it in a sentence."
	});
	if (refusals.length > 0) return {
		refusals,
		problems: []
	};
	const { date, who, what, why, approvedBy } = said;
	const entry = {
		date,
		who,
		what: what.trim(),
		why: why.trim(),
		...approvedBy === void 0 ? {} : { approvedBy }
	};
	const result = require_editPlan.addToPlan(text, ["changes"], entry);
	return result.problems.length > 0 ? {
		refusals: [],
		problems: result.problems
	} : {
		text: result.text,
		refusals: [],
		problems: []
	};
}
/** A change needs an approver: GAO-16-89G, best practice 10 (digest read). */
function approverRefusals(plan, known, approvedBy) {
	const asked = new Set(plan.approvals.map(({ who }) => who));
	for (const { id, approvesUpTo } of plan.stakeholders) if (approvesUpTo !== void 0) asked.add(id);
	const able = /* @__PURE__ */ new Set([...asked, ...plan.stakeholders.flatMap(deputyOf(asked))]);
	const names = [...able.size === 0 ? known : able].sort().join(", ");
	const remedy = names === "" ? "Add them to `stakeholders`." : `Name one of: ${names}.`;
	if (approvedBy === void 0) return [{
		code: "no-approver",
		received: "",
		rule: "A change needs somebody who agreed to it.",
		remedy
	}];
	if (!known.includes(approvedBy) || able.size === 0 || able.has(approvedBy)) return [];
	return [{
		code: "not-an-approver",
		received: approvedBy,
		rule: `${require_approvalsState.personOf(plan, approvedBy).name} approves nothing in this plan, so cannot agree to a change of it.`,
		remedy
	}];
}
function deputyOf(asked) {
	return ({ id, delegate }) => delegate !== void 0 && asked.has(id) ? [delegate] : [];
}
// src/verbs/change.ts
/** Adds an entry to the plan's change log: what changed, why, who decided it and who agreed. */
async function changeVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const [who, what, why] = [
		values.text("as"),
		values.text("what"),
		values.text("why")
	];
	const approvedBy = values.text("approved-by");
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const problems = [...values.problems, ...today.problems];
	for (const [name, value, example] of [
		[
			"what",
			what,
			"\"Mock inspection adopted\""
		],
		[
			"why",
			why,
			"\"Four first inspections in ten fail\""
		],
		[
			"as",
			who,
			"project-lead"
		],
		[
			"approved-by",
			approvedBy,
			"board-chair"
		]
	]) {
		if (value !== void 0) continue;
		problems.push(require_program.callProblem("option-missing", `--${name}`, "A change is logged with what, why, who decided it and who agreed.", `Write e.g. --${name} ${example}.`));
	}
	if (problems.length > 0 || who === void 0 || what === void 0 || why === void 0 || approvedBy === void 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const file = await require_planFile.planFile(call.subject ?? "-", "change");
	if (file === void 0) return require_program.exitCodes.invalid;
	const entry = {
		date: today.value,
		who,
		what,
		why,
		approvedBy
	};
	const logged = logChange(file.text, file.plan, entry);
	if (logged.text === void 0) {
		require_program.printProblems([...logged.refusals.map(require_writeEntry.refusalProblem), ...logged.problems]);
		require_program.printNote("Nothing was written.");
		return require_program.exitCodes.invalid;
	}
	if (!await require_writeEntry.writeEntry(file, logged.text)) return require_program.exitCodes.invalid;
	if (values.has("json")) require_program.printJson({
		plan: { title: file.plan.title },
		change: entry
	});
	else {
		const agreed = `${require_signNames.nameOf(file.plan, approvedBy)} agreed.`;
		const text = `${require_formatDate.formatDate(today.value, "long")}, ${require_signNames.nameOf(file.plan, who)}: ${sentence(what)} Why: ${sentence(why)} ${agreed}`;
		require_program.printAnswer(`${require_program.wrap(text, require_program.pageOf(process.env, process.stdout).width).join("\n")}\n`);
	}
	return require_program.exitCodes.done;
}
/** A remark as a sentence among others: people end it with a full stop or not. */
function sentence(remark) {
	const text = require_program.plainName(remark);
	return /[.!?…]$/.test(text) ? text : `${text}.`;
}
exports.changeVerb = changeVerb;

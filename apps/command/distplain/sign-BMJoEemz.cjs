const require_signText = require("./signText-H7ZlnxzF.cjs");
const require_editPlan = require("./editPlan-DSSwX--u.cjs");
const require_approvalsState = require("./approvalsState-Bxts4Wl7.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_program = require("./program.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_computeForecast = require("./computeForecast-CDXLTVBe.cjs");
const require_planFile = require("./planFile-D3tgs9yU.cjs");
const require_versionsBeside = require("./versionsBeside-U7WaOrrE.cjs");
const require_writeEntry = require("./writeEntry-BuVJUai5.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_signNames = require("./signNames-CIC6ieuW.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// ../../packages/core/src/signoff/atApproval.ts
/** An edit of one approval of a plan's text; a single entry need not be a list. */
function atApproval(text, plan, at, edit) {
	const paths = plan.approvals.length === 1 ? [["approvals", 0], ["approvals"]] : [["approvals", at]];
	let last = {
		text,
		problems: []
	};
	for (const path of paths) {
		last = edit(path);
		if (last.problems.length === 0) break;
	}
	return last;
}
// ../../packages/core/src/signoff/meetConditions.ts
/**
* Writes into a plan's text that the conditions of an approval were met: said by the approver, or by their delegate.
* The approval is otherwise as it was, and bound to the same version.
*/
function meetConditions(text, plan, { who, by = who, date }) {
	const at = plan.approvals.findLastIndex((approval) => approval.who === who);
	const approval = plan.approvals[at];
	const { name, delegate } = require_approvalsState.personOf(plan, who);
	const refuse = (code, received, rule, remedy) => ({
		refusals: [{
			code,
			received,
			rule,
			remedy
		}],
		problems: []
	});
	if (approval?.decision !== "approve-subject-to" || approval.conditionsMet !== void 0) {
		const met = approval?.conditionsMet;
		return refuse("no-condition-open", who, met === void 0 ? `${name} has set no condition.` : `They were met on ${met}, as the plan says already.`, "There is nothing to do.");
	}
	if (by !== who && by !== delegate) return refuse("not-an-approver", by, `${require_approvalsState.personOf(plan, by).name} does not sign in place of ${name}.`, "The approver says it, or the delegate the plan names.");
	if (approval.date !== void 0 && date < approval.date) return refuse("date-before", date, `The conditions were set on ${approval.date}, which is later than ${date}.`, "Name a later day.");
	const result = atApproval(text, plan, at, (path) => require_editPlan.setInPlan(text, [...path, "conditionsMet"], date));
	return result.problems.length > 0 ? {
		refusals: [],
		problems: result.problems
	} : {
		text: result.text,
		refusals: [],
		problems: []
	};
}
// ../../packages/core/src/signoff/signPlan.ts
/**
* Writes a decision into the text of a plan, bound to the plan's hash; comments and order stay. Signing again
* replaces the signer's own entry. To send a plan back needs no limit, and neither open objections nor findings stand in
* its way.
*/
function signPlan(text, plan, signature) {
	const refusals = refusalsOf(plan, signature);
	if (refusals.length > 0) return {
		refusals,
		problems: []
	};
	const { who, by, decision, conditions, conditionsBy, date, accepts } = signature;
	const at = plan.approvals.findIndex((approval) => approval.who === who);
	const { note, was } = plan.approvals[at] ?? {};
	const entry = {
		who,
		...by === void 0 ? {} : { by },
		decision,
		date,
		...conditions === void 0 ? {} : { conditions },
		...conditionsBy === void 0 ? {} : { conditionsBy },
		plan: plan.approvalSha256,
		...note === void 0 ? {} : { note },
		...was === void 0 ? {} : { was }
	};
	let edited = text;
	for (const id of accepts) for (const [key, value] of [["state", "accepted"], ["acceptedBy", by ?? who]]) {
		const result = require_editPlan.setInPlan(edited, [
			"objections",
			id,
			key
		], value);
		if (result.problems.length > 0) return {
			refusals: [],
			problems: result.problems
		};
		edited = result.text;
	}
	const result = at < 0 ? require_editPlan.addToPlan(edited, ["approvals"], entry) : replaced(edited, plan, at, entry);
	return result.problems.length > 0 ? {
		refusals: [],
		problems: result.problems
	} : {
		text: result.text,
		refusals: [],
		problems: []
	};
}
/**
* Key by key, so that what stands around them stays; what an earlier decision said and this one does not goes. A single
* entry need not be a list.
*/
function replaced(text, plan, at, entry) {
	const before = plan.approvals[at];
	const gone = OF_A_DECISION.filter((key) => before?.[key] !== void 0 && entry[key] === void 0);
	return atApproval(text, plan, at, (path) => {
		let last = {
			text,
			problems: []
		};
		for (const [key, value] of Object.entries(entry)) {
			if (key === "note" || key === "was") continue;
			last = require_editPlan.setInPlan(last.text, [...path, key], value);
			if (last.problems.length > 0) return last;
		}
		for (const key of gone) {
			last = require_editPlan.removeFromPlan(last.text, [...path, key]);
			if (last.problems.length > 0) return last;
		}
		return last;
	});
}
var OF_A_DECISION = [
	"by",
	"conditions",
	"conditionsBy",
	"conditionsMet"
];
function refusalsOf(plan, { who, by, decision, conditions, conditionsBy, accepts, sum, date, errors = [] }) {
	const found = [];
	const known = [...plan.stakeholders, ...plan.people].map(({ id }) => id);
	for (const id of [who, ...by === void 0 ? [] : [by]]) {
		if (known.includes(id)) continue;
		const remedy = known.length === 0 ? "Add them to `stakeholders`." : `Name one of: ${[...known].sort().join(", ")}.`;
		found.push({
			code: "unknown-person",
			received: id,
			rule: "There is nobody of that id in the plan.",
			remedy
		});
	}
	if (found.length > 0) return found;
	const { name, delegate } = require_approvalsState.personOf(plan, who);
	const limit = require_approvalsState.limitOf(plan, who);
	if (!plan.approvals.some((approval) => approval.who === who) && limit === void 0) {
		const rule = `${name} approves nothing in this plan: no entry of \`approvals\` asks them and they have no \`approvesUpTo\`.`;
		found.push({
			code: "not-an-approver",
			received: who,
			rule,
			remedy: "Add an entry to `approvals`, or name another."
		});
	}
	if (by !== void 0 && by !== who && by !== delegate) {
		const rule = `${require_approvalsState.personOf(plan, by).name} does not sign in place of ${name}.`;
		const remedy = delegate === void 0 ? "Name a `delegate` of theirs in the plan." : `Their delegate is ${require_approvalsState.personOf(plan, delegate).name} (${delegate}).`;
		found.push({
			code: "not-an-approver",
			received: by,
			rule,
			remedy
		});
	}
	if (decision === "approve-subject-to" && (conditions ?? "").trim() === "") found.push({
		code: "no-conditions",
		received: decision,
		rule: "To approve subject to conditions, they must be said.",
		remedy: "Add the conditions."
	});
	if (conditionsBy !== void 0 && decision !== "approve-subject-to") found.push({
		code: "no-conditions",
		received: conditionsBy,
		rule: "Only an approval subject to conditions has a day by which they are met.",
		remedy: "Leave the day out, or approve subject to conditions."
	});
	if (conditionsBy !== void 0 && conditionsBy < date) {
		const rule = `The conditions would have lapsed before they are said, on ${date}.`;
		found.push({
			code: "date-before",
			received: conditionsBy,
			rule,
			remedy: "Name a later day."
		});
	}
	const ids = plan.objections.map(({ id }) => id);
	for (const id of accepts) {
		if (ids.includes(id)) continue;
		const remedy = ids.length === 0 ? "The plan has none." : `Name one of: ${ids.join(", ")}.`;
		found.push({
			code: "unknown-objection",
			received: id,
			rule: "There is no objection of that id.",
			remedy
		});
	}
	if (decision !== "rework") {
		const money = (value) => `${plan.currency} ${Math.round(value).toLocaleString("en-GB")}`;
		const asks = (above) => {
			const rounded = Number((sum ?? 0).toPrecision(3));
			return rounded > above ? money(rounded) : "a little more";
		};
		if (require_approvalsState.isAbove(sum, limit)) {
			const rule = `${name} may approve up to ${money(limit ?? 0)}; this plan asks for ${asks(limit ?? 0)}.`;
			found.push({
				code: "above-limit",
				received: who,
				rule,
				remedy: "Ask somebody with a higher limit, or change the plan or the limit."
			});
		}
		const own = by === void 0 || by === who ? void 0 : require_approvalsState.limitOf(plan, by);
		if (by !== void 0 && require_approvalsState.isAbove(sum, own)) {
			const rule = `${require_approvalsState.personOf(plan, by).name}, who signs in their place, may approve up to ${money(own ?? 0)}; this plan asks for ${asks(own ?? 0)}.`;
			const remedy = `Ask ${name}, or change the plan or the limit.`;
			found.push({
				code: "above-limit",
				received: by,
				rule,
				remedy
			});
		}
		for (const { id, text, state } of plan.objections) {
			if (state !== "open" || accepts.includes(id)) continue;
			const rule = `The objection "${text ?? id}" is open.`;
			found.push({
				code: "open-objection",
				received: id,
				rule,
				remedy: "Answer it, or accept it by name."
			});
		}
		for (const { code, message, advice } of errors) {
			const rule = `The check finds an error. ${message}`;
			found.push({
				code: "error-found",
				received: code,
				rule,
				remedy: advice
			});
		}
	}
	const before = plan.approvals.find((approval) => approval.who === who)?.date;
	if (before !== void 0 && before > date) {
		const rule = `${name} has decided on ${before} already, which is later than ${date}.`;
		found.push({
			code: "date-before",
			received: date,
			rule,
			remedy: "Name a later day."
		});
	}
	return found;
}
// src/signing/sayConditionsMet.ts
/** Writes into the plan that an approver's conditions were met; what was signed stays signed. */
async function sayConditionsMet(file, met, json) {
	const { plan } = file;
	const result = meetConditions(file.text, plan, met);
	if (result.text === void 0) {
		require_program.printProblems([...result.refusals.map(require_writeEntry.refusalProblem), ...result.problems]);
		require_program.printNote("Nothing was written.");
		return require_program.exitCodes.invalid;
	}
	if (!await require_writeEntry.writeEntry(file, result.text)) return require_program.exitCodes.invalid;
	const { who, date } = met;
	const conditions = plan.approvals.findLast((one) => one.who === who)?.conditions ?? "";
	if (json) {
		const { title, sha256, approvalSha256 } = plan;
		require_program.printJson({
			plan: {
				title,
				sha256,
				approvalSha256
			},
			conditionsMet: {
				...met,
				conditions
			}
		});
	} else {
		const text = `${require_formatDate.formatDate(date, "long")}: the condition of ${require_signNames.nameOf(plan, who)} is met: ${require_program.plainName(conditions)}`;
		require_program.printAnswer(`${require_program.wrap(text, require_program.pageOf(process.env, process.stdout).width).join("\n")}\n`);
	}
	return require_program.exitCodes.done;
}
// src/verbs/sign.ts
var DECISIONS = [
	"approve",
	"approve-subject-to",
	"rework"
];
/** Binds a decision to the plan as it is: the version is kept first, then the signature is written into the plan. */
async function signVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const who = values.text("as");
	const by = values.text("by");
	const decision = values.oneOf("decision", DECISIONS) ?? "approve";
	const conditions = values.text("conditions");
	const conditionsBy = values.text("conditions-by");
	const accepts = values.ids("accept") ?? [];
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const problems = [
		...values.problems,
		...today.problems,
		...require_dateOption.dateOption(values, "conditions-by", today.value).problems
	];
	const meets = values.has("conditions-met");
	for (const name of [
		"decision",
		"conditions",
		"conditions-by",
		"accept",
		"despite-errors",
		"dry-run"
	]) {
		if (!meets || !values.has(name)) continue;
		problems.push(require_program.callProblem("option-clash", `--${name}`, "--conditions-met says something of a decision that stands; it is no new one.", "Leave one of the two out."));
	}
	if (who === void 0) problems.push(require_program.callProblem("option-missing", "--as", "It needs to know who signs.", "Write e.g. --as board-chair."));
	if (problems.length > 0 || who === void 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const file = await require_planFile.planFile(call.subject ?? "-", "sign");
	if (file === void 0) return require_program.exitCodes.invalid;
	if (meets) return sayConditionsMet(file, {
		who,
		date: today.value,
		...by === void 0 ? {} : { by }
	}, values.has("json"));
	const computed = await require_computeForecast.computeForecast({
		text: file.text,
		options: {}
	});
	await require_program.hearStops();
	const { forecast } = computed;
	if (forecast === void 0) {
		require_program.printProblems(computed.problems, file.path);
		return require_program.exitCodes.invalid;
	}
	const errors = require_signText.errorsInTheWay(file.plan, {
		today: today.value,
		forecast
	});
	const despite = values.has("despite-errors");
	const signature = {
		who,
		decision,
		accepts,
		date: today.value,
		sum: forecast.committed.cost,
		...by === void 0 ? {} : { by },
		...conditions === void 0 ? {} : { conditions },
		...conditionsBy === void 0 ? {} : { conditionsBy }
	};
	const signed = signPlan(file.text, file.plan, despite ? signature : {
		...signature,
		errors
	});
	if (signed.text === void 0) {
		require_program.printProblems([...signed.refusals.map(require_writeEntry.refusalProblem), ...signed.problems]);
		if (signed.refusals.some(({ code }) => code === "error-found")) require_program.printNote(mendSentence(file.path));
		require_program.printNote("Nothing was signed.");
		return require_program.exitCodes.invalid;
	}
	const dry = values.has("dry-run");
	if (!dry) {
		if (!await require_writeEntry.writeEntry(file, signed.text, () => require_versionsBeside.keepPlan(file.path, file.text))) return require_program.exitCodes.invalid;
	}
	if (values.has("json")) {
		const { seed, iterations, design, version, committed, chance } = forecast;
		require_program.printJson({
			plan: {
				title: file.plan.title,
				sha256: file.plan.sha256,
				approvalSha256: file.plan.approvalSha256
			},
			signature,
			written: !dry,
			...errors.length === 0 ? {} : { errors },
			seed,
			iterations,
			design,
			version,
			committed,
			chance
		});
	} else {
		const words = require_shellWord.shellWord(file.path);
		const said = {
			plan: file.plan,
			signature,
			forecast,
			errors,
			dry
		};
		require_program.printAnswer(require_signText.signText(said, require_program.pageOf(process.env, process.stdout), words));
	}
	return require_program.exitCodes.done;
}
function mendSentence(path) {
	return `Mend what leeway check ${require_shellWord.shellWord(path)} calls an error, accept it there by name, or sign with --despite-errors.`;
}
exports.signVerb = signVerb;

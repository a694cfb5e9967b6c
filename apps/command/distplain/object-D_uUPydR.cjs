const require_editPlan = require("./editPlan-DSSwX--u.cjs");
const require_approvalsState = require("./approvalsState-Bxts4Wl7.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_program = require("./program.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_planFile = require("./planFile-D3tgs9yU.cjs");
const require_writeEntry = require("./writeEntry-BuVJUai5.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_signNames = require("./signNames-CIC6ieuW.cjs");
// ../../packages/core/src/signoff/objections.ts
/** Logs what somebody holds against the plan: open until it is answered, or accepted by name. */
function logObjection(text, plan, said) {
	const refusals = [...unknown(plan, said.who), ...empty(said.text, "What is objected must be said.")];
	if (refusals.length > 0) return {
		refusals,
		problems: []
	};
	const id = idFor(plan, said.text);
	const entry = {
		id,
		who: said.who,
		date: said.date,
		text: said.text.trim(),
		state: "open"
	};
	return done(require_editPlan.addToPlan(text, ["objections"], entry), id);
}
/**
* Answers an objection; an answer may be bettered by another. One that somebody accepted stands by their name, so it has
* to be opened again first.
*/
function answerObjection(text, plan, said) {
	const refusals = [...noSuch(plan, said.id), ...empty(said.answer, "The answer must be said.")];
	const one = plan.objections.find(({ id }) => id === said.id);
	if (one?.state === "accepted") {
		const rule = `It was accepted as it stands${one.acceptedBy === void 0 ? "" : ` by ${require_approvalsState.personOf(plan, one.acceptedBy).name}`}, so there is nothing to answer.`;
		refusals.push({
			code: "objection-state",
			received: said.id,
			rule,
			remedy: "Open it again first: those who raised, accepted or decide may."
		});
	}
	if (refusals.length > 0) return {
		refusals,
		problems: []
	};
	return edited(text, plan, said.id, {
		answer: said.answer.trim(),
		...said.evidence === void 0 ? {} : { evidence: said.evidence.trim() },
		state: "answered",
		...said.changedPlan ? { changedPlan: true } : {}
	});
}
/** Somebody accepts by name that an objection stands. */
function acceptObjection(text, plan, said) {
	const refusals = [...noSuch(plan, said.id), ...unknown(plan, said.who)];
	const one = plan.objections.find(({ id }) => id === said.id);
	if (one?.state === "accepted") {
		const rule = `It was accepted already${one.acceptedBy === void 0 ? "" : ` by ${require_approvalsState.personOf(plan, one.acceptedBy).name}`}.`;
		refusals.push({
			code: "objection-state",
			received: said.id,
			rule,
			remedy: "There is nothing to do."
		});
	}
	if (refusals.length > 0) return {
		refusals,
		problems: []
	};
	return edited(text, plan, said.id, {
		state: "accepted",
		acceptedBy: said.who
	});
}
/**
* It is open again, as after an answer that was withdrawn. Who raised it, who accepted it, or one who approves the plan
* may do that; of an objection that names nobody, anybody in the plan.
*/
function reopenObjection(text, plan, said) {
	const refusals = [...noSuch(plan, said.id), ...unknown(plan, said.who)];
	const one = plan.objections.find(({ id }) => id === said.id);
	if (one?.state === "open") refusals.push({
		code: "objection-state",
		received: said.id,
		rule: "It is open.",
		remedy: "There is nothing to do."
	});
	if (one !== void 0 && refusals.length === 0) refusals.push(...noParty(plan, one, said.who));
	if (refusals.length > 0) return {
		refusals,
		problems: []
	};
	return edited(text, plan, said.id, {
		state: "open",
		reopenedBy: said.who
	});
}
function noParty(plan, { who, acceptedBy }, by) {
	if (who === void 0 && acceptedBy === void 0) return [];
	const parties = [who, acceptedBy].filter((id) => id !== void 0);
	const deciders = plan.approvals.map((approval) => approval.who);
	const may = [.../* @__PURE__ */ new Set([...parties, ...deciders])];
	if (may.includes(by)) return [];
	return [{
		code: "not-a-party",
		received: by,
		rule: `${require_approvalsState.personOf(plan, by).name} neither raised nor accepted it, and does not decide on this plan.`,
		remedy: `Name one of: ${may.sort().join(", ")}.`
	}];
}
function edited(text, plan, id, values) {
	const bases = plan.objections.length === 1 ? [["objections", id], ["objections"]] : [["objections", id]];
	let last = {
		text,
		problems: []
	};
	for (const base of bases) {
		last = {
			text,
			problems: []
		};
		for (const [key, value] of Object.entries(values)) {
			last = require_editPlan.setInPlan(last.text, [...base, key], value);
			if (last.problems.length > 0) break;
		}
		if (last.problems.length === 0) break;
	}
	return done(last, id);
}
function done(result, id) {
	return result.problems.length > 0 ? {
		refusals: [],
		problems: result.problems
	} : {
		text: result.text,
		id,
		refusals: [],
		problems: []
	};
}
/** Its first words, made an id nobody has: "looks-like-padding". */
function idFor(plan, text) {
	const stem = (text.toLowerCase().match(/[a-z0-9]+/g) ?? []).filter((word) => /^[a-z]/.test(word)).slice(0, 3).join("-") || "objection";
	const taken = /* @__PURE__ */ new Set();
	const lists = [
		plan.objections,
		plan.tasks,
		plan.people,
		plan.stakeholders,
		plan.risks,
		plan.assumptions
	];
	for (const list of [
		...lists,
		plan.benefits,
		plan.overheads,
		plan.intervals,
		plan.purpose.goals,
		plan.purpose.scopeIn
	]) for (const { id } of list) taken.add(id);
	for (const { responses } of [...plan.risks, ...plan.assumptions]) for (const { id } of responses) taken.add(id);
	for (const trigger of plan.returnTriggers ?? []) taken.add(trigger.id);
	if (!taken.has(stem)) return stem;
	for (let n = 2;; n++) if (!taken.has(`${stem}-${n}`)) return `${stem}-${n}`;
}
function unknown(plan, who) {
	const known = [...plan.stakeholders, ...plan.people].map(({ id }) => id);
	if (known.includes(who)) return [];
	return [{
		code: "unknown-person",
		received: who,
		rule: "There is nobody of that id in the plan.",
		remedy: known.length === 0 ? "Add them to `stakeholders`." : `Name one of: ${[...known].sort().join(", ")}.`
	}];
}
function noSuch(plan, id) {
	if (plan.objections.some((one) => one.id === id)) return [];
	const ids = plan.objections.map((one) => one.id).join(", ");
	return [{
		code: "unknown-objection",
		received: id,
		rule: "There is no objection of that id.",
		remedy: ids === "" ? "The plan has none." : `Name one of: ${ids}.`
	}];
}
function empty(text, rule) {
	if (text.trim() !== "") return [];
	return [{
		code: "empty-text",
		received: "",
		rule,
		remedy: "Say it in a sentence."
	}];
}
// src/text/objectionsText.ts
/** Objections with their answers: the open ones first. */
function objectionsText(plan, { width, strong }) {
	if (plan.objections.length === 0) return "No objection is logged.\n";
	const rank = {
		open: 0,
		answered: 1,
		accepted: 2
	};
	return `${[...plan.objections].sort((a, b) => rank[a.state] - rank[b.state]).map((one) => [
		...require_program.wrap(`${one.id}: ${stateWords(plan, one)}`, width).map(strong),
		...require_program.wrap(`“${require_program.plainName(one.text ?? "")}”${raised(plan, one)}`, width, "  "),
		...one.answer === void 0 ? [] : require_program.wrap(`Answer: ${require_program.plainName(one.answer)}`, width, "  "),
		...one.evidence === void 0 ? [] : require_program.wrap(`Evidence: ${require_program.plainName(one.evidence)}`, width, "  "),
		...one.changedPlan ? ["It changed the plan."] : []
	]).map((block) => block.join("\n")).join("\n\n")}\n`;
}
function stateWords(plan, { state, acceptedBy }) {
	if (state !== "accepted") return state;
	return acceptedBy === void 0 ? "accepted" : `accepted by ${require_signNames.nameOf(plan, acceptedBy)}`;
}
function raised(plan, { who, date }) {
	const parts = [...who === void 0 ? [] : [require_signNames.nameOf(plan, who)], ...date === void 0 ? [] : [require_formatDate.formatDate(date)]];
	return parts.length === 0 ? "" : ` (${parts.join(", ")})`;
}
// src/verbs/object.ts
/** Objections: logged, answered, accepted by name, opened again; without any of these, listed. */
async function objectVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const said = {
		who: values.text("as"),
		text: values.text("text"),
		answer: values.text("answer"),
		accept: values.text("accept"),
		reopen: values.text("reopen"),
		evidence: values.text("evidence")
	};
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const problems = [...values.problems, ...today.problems];
	const [deed, ...more] = [
		"answer",
		"accept",
		"reopen"
	].filter((key) => said[key] !== void 0);
	if (more.length > 0) problems.push(require_program.callProblem("option-clash", `--${more[0]}`, "An objection is answered, accepted or opened again, one at a time.", "Call it once for each."));
	const missing = (name, rule, example) => {
		problems.push(require_program.callProblem("option-missing", `--${name}`, rule, `Write e.g. --${name} ${example}.`));
	};
	const logs = deed === void 0 && (said.text !== void 0 || said.who !== void 0);
	if ((logs || deed === "answer") && said.text === void 0) missing("text", "It needs the words.", "\"The weeks look like padding\"");
	if ((logs || deed === "accept" || deed === "reopen") && said.who === void 0) missing("as", "It needs to know who says so.", "finance-director");
	if (problems.length > 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const file = await require_planFile.planFile(call.subject ?? "-", "object");
	if (file === void 0) return require_program.exitCodes.invalid;
	if (deed === void 0 && !logs) return tell(file, values.has("json"));
	const logged = enter(file, deed, said, today.value, values.has("changed-plan"));
	if (logged.text === void 0) {
		require_program.printProblems([...logged.refusals.map(require_writeEntry.refusalProblem), ...logged.problems]);
		require_program.printNote("Nothing was written.");
		return require_program.exitCodes.invalid;
	}
	if (!await require_writeEntry.writeEntry(file, logged.text)) return require_program.exitCodes.invalid;
	const now = await require_planFile.planFile(file.path, "object");
	if (now === void 0) return require_program.exitCodes.invalid;
	const { id } = logged;
	return tell({
		...now,
		plan: only(now.plan, id)
	}, values.has("json"));
}
function enter({ text, plan }, deed, said, date, changedPlan) {
	const { who = "", text: words = "", evidence } = said;
	switch (deed) {
		case void 0: return logObjection(text, plan, {
			who,
			text: words,
			date
		});
		case "answer": {
			const proof = evidence === void 0 ? {} : { evidence };
			return answerObjection(text, plan, {
				id: said.answer ?? "",
				answer: words,
				changedPlan,
				...proof
			});
		}
		case "accept": return acceptObjection(text, plan, {
			id: said.accept ?? "",
			who
		});
		case "reopen": return reopenObjection(text, plan, {
			id: said.reopen ?? "",
			who
		});
	}
}
function only(plan, id) {
	return {
		...plan,
		objections: plan.objections.filter((one) => one.id === id)
	};
}
function tell({ plan }, json) {
	if (json) require_program.printJson({
		plan: {
			title: plan.title,
			sha256: plan.sha256
		},
		objections: plan.objections
	});
	else require_program.printAnswer(objectionsText(plan, require_program.pageOf(process.env, process.stdout)));
	return require_program.exitCodes.done;
}
exports.objectVerb = objectVerb;

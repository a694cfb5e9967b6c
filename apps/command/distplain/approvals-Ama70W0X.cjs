const require_approvalsState = require("./approvalsState-Bxts4Wl7.cjs");
const require_signText = require("./signText-H7ZlnxzF.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_computeComparison = require("./computeComparison-BgSru7LC.cjs");
const require_computeForecast = require("./computeForecast-CDXLTVBe.cjs");
const require_program = require("./program.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_versionsBeside = require("./versionsBeside-U7WaOrrE.cjs");
const require_enumerated = require("./enumerated-CW2v0OFy.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_statedSum = require("./statedSum-C9RA2TpO.cjs");
const require_answer = require("./answer-D3_CtWr7.cjs");
const require_compareMoves = require("./compareMoves-Bv86O8FV.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
const require_signNames = require("./signNames-CIC6ieuW.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// src/text/approvalsText.ts
/** Who has signed, whether it covers the plan as it is, what moved since, and what stands in the way. */
function approvalsText(answer, page, planWord) {
	const { plan, state, forecast, moved } = answer;
	const { width, strong } = page;
	const stamp = {
		...forecast,
		sha256: forecast.plan.sha256
	};
	return `${[
		[require_confidenceHead.explanationHead(require_program.plainName(plan.title), stamp, page)],
		require_program.wrap(overallSentence(state), width).map(strong),
		state.approvers.length === 0 ? [] : approverLines(state, width),
		inTheWay(answer, planWord, width),
		require_program.wrap(`The plan as it is now: ${require_answer.commitSentence(forecast)}`, width),
		movedLines(answer, moved, width),
		require_program.wrap(require_signText.caution, width),
		require_nextLines.nextLines(nextOf(answer, planWord), width),
		require_program.wrap(require_confidenceHead.explanationStamp(stamp), width)
	].filter((block) => block.length > 0).map((block) => block.join("\n")).join("\n\n")}\n`;
}
/** Where the sign-off stands, in one sentence. */
function overallSentence({ overall, approvers }) {
	const names = (...states) => require_enumerated.enumerated(approvers.filter(({ state }) => states.includes(state)).map(({ name }) => require_program.plainName(name)));
	switch (overall) {
		case "not-asked": return "Nobody has been asked to approve this plan.";
		case "waiting": return [waitingSentence(names("pending")), missingSentence(approvers)].filter((one) => one !== "").join(" ");
		case "approved": return "Approved by all, as the plan is now.";
		case "on-conditions": return "Approved by all as the plan is now, on conditions.";
		case "outdated": return `The plan has changed since ${names("stale")} signed: ${approvers.filter(({ state }) => state === "stale").length === 1 ? "this approval no longer covers" : "these approvals no longer cover"} it.`;
		case "lapsed": return `Not approved any more: the day by which the condition of ${require_enumerated.enumerated(approvers.filter(({ lapsed }) => lapsed).map(({ name }) => require_program.plainName(name)))} was to be met has passed.`;
		case "rework": return `Sent back by ${names("rework")}.`;
	}
}
function waitingSentence(names) {
	return names === "" ? "" : `Waiting for ${names}.`;
}
/** Nobody who was asked may approve the sum: all who may, of whom one will do. */
function missingSentence(approvers) {
	const able = approvers.filter(({ state }) => state === "missing").map(({ name }) => require_program.plainName(name));
	if (able.length === 0) return "";
	return `Nobody who was asked may approve this sum: ${able.length === 1 ? `${able[0]} may` : `${able.slice(0, -1).join(", ")} or ${able.at(-1)} may, one of them`}.`;
}
var STATES = {
	covers: "signed this plan",
	stale: "signed another version",
	pending: "has not decided",
	missing: "may approve the sum, not asked",
	rework: "sent it back"
};
function approverLines({ approvers, plan }, width) {
	const rows = approvers.map((one) => [
		require_program.plainName(one.name),
		STATES[one.state],
		one.date === void 0 ? "" : require_formatDate.formatDate(one.date),
		one.limit === void 0 ? "no limit named" : `${require_statedSum.statedSum(one.limit, "").trim()}${one.aboveLimit ? " *" : ""}`
	]);
	const conditions = approvers.flatMap((one) => one.conditions === void 0 ? [] : [`${require_program.plainName(one.name)} on condition: ${require_program.plainName(one.conditions)}${untilWords(one)}`]);
	const starred = approvers.some(({ aboveLimit }) => aboveLimit) ? ["* The committed sum lies above what they may approve; somebody who may has to sign as well."] : [];
	return [...require_program.table([
		{
			heading: "",
			align: "left"
		},
		{
			heading: "",
			align: "left"
		},
		{
			heading: "on",
			align: "right"
		},
		{
			heading: `up to, ${plan.currency}`,
			align: "right"
		}
	], rows, width), ...[...conditions, ...starred].flatMap((text) => require_inset.inset(text, width))];
}
function untilWords({ conditionsBy, conditionsMet, lapsed }) {
	if (conditionsMet !== void 0) return ` (met on ${require_formatDate.formatDate(conditionsMet)})`;
	if (conditionsBy === void 0) return "";
	return lapsed ? ` (to be met by ${require_formatDate.formatDate(conditionsBy)}: that day has passed)` : ` (to be met by ${require_formatDate.formatDate(conditionsBy)})`;
}
function inTheWay({ plan, state, errors }, planWord, width) {
	const { open, unexplained } = state;
	const lines = errors.flatMap((error) => require_program.wrap(`- An error that the check finds: ${require_signText.findingWords(error)} [${error.code}]`, width, "  "));
	lines.push(...open.flatMap((id) => {
		const one = plan.objections.find((each) => each.id === id);
		const by = one?.who === void 0 ? "" : ` (${require_signNames.nameOf(plan, one.who)})`;
		return require_program.wrap(`- Open objection ${id}${by}: “${require_program.plainName(one?.text ?? "")}”`, width, "  ");
	}));
	if (unexplained === "no-entry") {
		const text = `- The plan differs from what was signed, and its change log does not say why: leeway change ${planWord} --what … --why … --as … --approved-by …`;
		lines.push(...require_program.wrap(text, width, "  "));
	}
	if (unexplained === "no-approver") lines.push(...require_program.wrap("- The change log says why the plan differs, and not who agreed to it.", width, "  "));
	return lines.length === 0 ? [] : ["What stands in the way", ...lines];
}
function movedLines({ state, found }, moved, width) {
	if (!state.approvers.some(({ signed: hash }) => hash !== void 0)) return [];
	if (moved !== void 0) {
		const comparison = require_program.plainTexts(moved);
		return [
			"Since the version that was signed last",
			...require_program.wrap(require_movedSentences.movedSentence(comparison), width),
			...require_movedSentences.standsSentences(comparison).flatMap((sentence) => require_program.wrap(sentence, width)),
			...require_compareMoves.moveLines(comparison, width)
		];
	}
	if (found) return ["Nothing has changed since it was signed."];
	return require_program.wrap("The version that was signed is not beside the plan, so what moved cannot be told; give it with --signed FILE.", width);
}
function nextOf({ state, errors }, planWord) {
	const { overall, open, approvers } = state;
	const next = [];
	if (errors.length > 0) next.push([`leeway check ${planWord}`, "what is wrong, and what to do about it"]);
	if (open[0] !== void 0) next.push([`leeway object ${planWord} --answer ${open[0]} --text …`, "an answer to the objection"]);
	const waits = approvers.find(({ state }) => state !== "covers");
	if (waits !== void 0 && overall !== "not-asked") next.push([`leeway brief ${planWord} --for ${waits.who}`, "what this approver will ask"]);
	next.push([`leeway brief ${planWord}`, "one page for all of them"]);
	return next;
}
// src/verbs/approvals.ts
/** Who has signed, whether it covers the plan as it is, and what moved since. */
async function approvalsVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const signedFile = values.text("signed");
	const workers = values.count("workers", 64);
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const wrong = [...values.problems, ...today.problems];
	if (wrong.length > 0) {
		require_program.printProblems(wrong);
		return require_program.exitCodes.invalid;
	}
	const subject = call.subject ?? "-";
	const { name, text, problem } = await require_readDocument.readDocument(subject);
	if (text === void 0) {
		if (problem !== void 0) require_program.printProblems([problem], name);
		return require_program.exitCodes.invalid;
	}
	const { plan, problems } = require_readPlan.readPlan(text);
	if (problems.length > 0) require_program.printProblems(problems, name);
	if (plan === void 0) return require_program.exitCodes.invalid;
	const old = signedFile === void 0 ? keptBeside(subject, plan) : await planOf(signedFile);
	if (old === "unreadable") return require_program.exitCodes.invalid;
	const computed = await require_computeForecast.computeForecast({
		text,
		options: {},
		...workers === void 0 ? {} : { workers }
	});
	const { forecast } = computed;
	if (forecast === void 0) {
		require_program.printProblems(computed.problems, name);
		return require_program.exitCodes.invalid;
	}
	let moved;
	if (old !== void 0 && old.sha256 !== plan.sha256) {
		const compared = await require_computeComparison.computeComparison({
			oldPlan: old,
			newPlan: plan,
			options: {},
			...workers === void 0 ? {} : { workers }
		});
		if (compared.problems.length > 0) require_program.printProblems(compared.problems);
		moved = compared.comparison;
	}
	await require_program.hearStops();
	const state = require_approvalsState.approvalsState(plan, forecast.committed.cost, today.value);
	const errors = require_signText.errorsInTheWay(plan, {
		today: today.value,
		forecast
	});
	if (values.has("json")) {
		const { seed, iterations, design, version } = forecast;
		require_program.printJson({
			...state,
			errors,
			seed,
			iterations,
			design,
			version,
			...old === void 0 ? {} : { signedVersion: old.sha256 },
			...moved === void 0 ? {} : { moved: {
				from: moved.from,
				to: moved.to,
				difference: moved.difference,
				moves: moved.moves
			} }
		});
	} else {
		const page = require_program.pageOf(process.env, process.stdout);
		require_program.printAnswer(approvalsText({
			plan,
			state,
			errors,
			forecast,
			moved,
			found: old !== void 0
		}, page, require_shellWord.shellWord(name)));
	}
	return require_program.exitCodes.done;
}
function keptBeside(subject, plan) {
	return subject === "-" ? void 0 : require_versionsBeside.signedVersion(subject, plan);
}
async function planOf(file) {
	const { name, text, problem } = await require_readDocument.readDocument(file);
	if (text === void 0) {
		if (problem !== void 0) require_program.printProblems([problem], name);
		return "unreadable";
	}
	const { plan, problems } = require_readPlan.readPlan(text);
	if (problems.length > 0) require_program.printProblems(problems, name);
	return plan ?? "unreadable";
}
exports.approvalsVerb = approvalsVerb;

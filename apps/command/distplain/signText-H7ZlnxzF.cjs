const require_planFindings = require("./planFindings-d5Xs2cu5.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_program = require("./program.cjs");
const require_answer = require("./answer-D3_CtWr7.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_signNames = require("./signNames-CIC6ieuW.cjs");
// ../../packages/core/src/signoff/errorsInTheWay.ts
/**
* Findings of the check of severity error that nobody has accepted: the plan contradicts its own promise, or its answer
* would mean nothing, so it is not fit to be approved. Simulates nothing; what depends on chances needs the forecast.
*/
function errorsInTheWay(plan, options = {}) {
	return require_planFindings.planFindings(plan, options).filter(({ severity, accepted }) => severity === "error" && accepted === void 0);
}
// src/text/findingWords.ts
/** What a finding says, in one run of sentences. */
function findingWords({ message }) {
	return require_program.plainText(message);
}
// src/text/signText.ts
var caution = "This is a record in a file, bound to the plan by its hash. It is no legal signature: your own rules of approval, procurement and law come first.";
var DECISIONS = {
	approve: "approves",
	"approve-subject-to": "approves, on a condition,",
	rework: "sends back"
};
/** What was signed, by whom, and what it says. */
function signText({ plan, signature, forecast, errors, dry }, page, planWord) {
	const { width, strong } = page;
	const { who, by, decision, conditions, date, accepts } = signature;
	const stamp = {
		...forecast,
		sha256: forecast.plan.sha256
	};
	const place = by === void 0 || by === who ? "" : `, ${require_signNames.nameOf(plan, by)} in their place,`;
	const said = `${require_signNames.nameOf(plan, who)}${place} ${DECISIONS[decision]} this plan on ${require_formatDate.formatDate(date, "long")}.`;
	return `${[
		[require_confidenceHead.explanationHead(require_program.plainName(plan.title), stamp, page)],
		[
			...dry ? ["Nothing was written; this is what would be signed."] : [],
			...require_program.wrap(said, width).map(strong),
			...conditions === void 0 ? [] : require_program.wrap(`Condition${untilWords(signature.conditionsBy)}: ${require_program.plainName(conditions)}`, width),
			...accepts.flatMap((id) => require_program.wrap(`Accepted as it stands: ${objectionText(plan, id)}`, width)),
			...(decision === "rework" ? [] : errors).flatMap((error) => require_program.wrap(`Despite an error that the check finds: ${findingWords(error)}`, width))
		],
		[require_answer.commitSentence(forecast), require_answer.askedSentence(forecast)].flatMap((text) => text === void 0 ? [] : require_program.wrap(text, width)),
		require_program.wrap(`Bound to plan ${plan.approvalSha256.slice(0, 12)}, progress apart. ${caution}`, width),
		require_nextLines.nextLines([[`leeway approvals ${planWord}`, "who has signed, and whether it still covers the plan"]], width),
		require_program.wrap(require_confidenceHead.explanationStamp(stamp), width)
	].filter((block) => block.length > 0).map((block) => block.join("\n")).join("\n\n")}\n`;
}
function objectionText(plan, id) {
	return `“${require_program.plainName(plan.objections.find((one) => one.id === id)?.text ?? id)}”`;
}
function untilWords(day) {
	return day === void 0 ? "" : `, to be met by ${require_formatDate.formatDate(day, "weekday")}`;
}
Object.defineProperty(exports, "caution", {
	enumerable: true,
	get: function() {
		return caution;
	}
});
Object.defineProperty(exports, "errorsInTheWay", {
	enumerable: true,
	get: function() {
		return errorsInTheWay;
	}
});
Object.defineProperty(exports, "findingWords", {
	enumerable: true,
	get: function() {
		return findingWords;
	}
});
Object.defineProperty(exports, "signText", {
	enumerable: true,
	get: function() {
		return signText;
	}
});

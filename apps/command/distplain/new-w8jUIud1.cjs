const require_dist$1 = require("./dist-CwAs5euc.cjs");
const require_program = require("./program.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_whyNotWritten = require("./whyNotWritten-C19bLT-P.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
let node_readline_promises = require("node:readline/promises");
// ../../packages/core/src/plan/starterPlan.ts
var import_dist = require_dist$1.require_dist();
/** A short commented plan in YAML that reads without a problem: something to change, not to admire. */
function starterPlan({ title, start, currency }) {
	const text = (value) => (0, import_dist.stringify)(value, {
		lineWidth: 0,
		defaultStringType: "QUOTE_DOUBLE"
	}).trim();
	return `# A plan. Change anything; everything but format, title, start and tasks may be left out.
# Dates are year-month-day. Money is a plain number, the dot is the decimal point.
format: 1
title: ${text(title)}
currency: ${text(currency)}
start: ${text(start)} # the first day on which work may happen

commitment:
  confidence: 0.8 # promise what holds 8 times in 10
  # finishBy: 2027-10-01    the date you were asked for
  # budget: 40000           the money there is

people:
  - { id: lead, name: Project lead, rate: 480 } # rate: money per day
  - { id: crew, name: Crew, rate: 350, capacity: 2 } # two of them

risks:
  - id: late-delivery
    name: The delivery comes late
    probability: 0.25 # 1 time in 4
    impacts:
      - { tasks: fit-out, wait: [3, 5, 15] } # working days of waiting
    responses:
      - { id: order-early, action: Order a month ahead, cost: 300, probability: 0.1 } # adopted: true makes it part

tasks:
  # An estimate is [low, likely, high] in working days. One number is certain.
  - { id: survey, name: Survey, duration: [2, 3, 6], people: lead }
  - { id: design, name: Design, duration: [8, 10, 18], people: lead, after: survey }
  - { id: permit, name: Permit, duration: [15, 20, 45], after: design }
  # effort: days of work, shared by its people.
  - { id: prepare, name: Prepare the site, effort: [6, 8, 12], people: { id: crew, share: 2 }, after: survey }
  - id: fit-out
    name: Fit out
    effort: [14, 18, 30]
    people: { id: crew, share: 2 }
    cost: [9000, 10000, 14000]
    after: [permit, prepare] # waits for both
  - { id: open, name: Open, milestone: true, after: fit-out }
`;
}
// src/verbs/new.ts
var isTitle = (text) => text.trim() === "" ? "A title is needed, e.g. New reading room." : void 0;
var isDate = (text) => {
	const date = /^\d{4}-\d{2}-\d{2}$/.test(text) ? /* @__PURE__ */ new Date(`${text}T00:00:00Z`) : void 0;
	return date !== void 0 && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text) ? void 0 : "A date is written year-month-day, e.g. 2027-02-01.";
};
var isCurrency = (text) => /^[A-Z]{3}$/.test(text) ? void 0 : "A currency is three capital letters, e.g. EUR.";
var RULES = {
	title: {
		rule: isTitle,
		question: "What is the project called?"
	},
	start: {
		rule: isDate,
		question: "On which day may work begin?"
	},
	currency: {
		rule: isCurrency,
		question: "In which currency is it paid?"
	}
};
var KEYS = [
	"title",
	"start",
	"currency"
];
/** The Monday after `today`, as an ISO date: a start nobody has to correct at once. */
function nextMonday(today) {
	const days = (8 - today.getDay()) % 7 || 7;
	return new Date(Date.UTC(today.getFullYear(), today.getMonth(), today.getDate() + days)).toISOString().slice(0, 10);
}
async function ask(answers, isGiven) {
	const terminal = (0, node_readline_promises.createInterface)({
		input: process.stdin,
		output: process.stderr
	});
	terminal.on("SIGINT", () => process.kill(process.pid, "SIGINT"));
	const asked = { ...answers };
	try {
		for (const key of KEYS) {
			if (isGiven(key)) continue;
			for (;;) {
				const text = (await terminal.question(`${RULES[key].question} [${asked[key]}] `)).trim();
				const fault = text === "" ? void 0 : RULES[key].rule(text);
				if (text !== "" && fault === void 0) asked[key] = text;
				if (fault === void 0) break;
				require_program.printNote(fault);
			}
		}
	} finally {
		terminal.close();
	}
	return asked;
}
function write(path, text, force) {
	try {
		require_writeWhole.writeWhole(path, text, force);
	} catch (error) {
		require_program.printProblems([require_whyNotWritten.whyNotWritten(path, error)]);
		return require_program.exitCodes.invalid;
	}
	require_program.printNote(`Wrote ${path}. Next: leeway forecast ${path}`);
	return require_program.exitCodes.done;
}
/** A starter plan, from questions on a terminal or from the options alone with `--yes`. */
async function newVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	let answers = {
		title: values.text("title") ?? "A plan to start from",
		start: values.text("start") ?? nextMonday(/* @__PURE__ */ new Date()),
		currency: values.text("currency") ?? "EUR"
	};
	const out = values.text("out");
	const problems = [...values.problems];
	for (const key of KEYS) {
		const fault = values.has(key) && answers[key] !== "" ? RULES[key].rule(answers[key]) : void 0;
		if (fault !== void 0) problems.push(require_program.callProblem("option-value", `--${key} ${answers[key]}`, fault, ""));
	}
	const mayAsk = process.stdin.isTTY === true && process.stderr.isTTY === true;
	if (!values.has("yes") && !mayAsk) problems.push(require_program.callProblem("no-terminal", "leeway new", "Its questions need a terminal, and there is none here.", "Add --yes to take the defaults."));
	if (problems.length > 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	if (!values.has("yes")) answers = await ask(answers, (key) => values.has(key));
	const text = starterPlan(answers);
	if (out !== void 0) return write(out, text, values.has("force"));
	require_program.printAnswer(text);
	return require_program.exitCodes.done;
}
exports.newVerb = newVerb;

const require_changedLines = require("./changedLines-MyzZE-y6.cjs");
const require_questions = require("./questions-BBFaF51g.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_program = require("./program.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_amountWords = require("./amountWords-BwWNBKDo.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_writeBack = require("./writeBack-BzNdebk3.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
let node_readline = require("node:readline");
// ../../packages/core/src/estimating/interview/implied.ts
/** What an estimate says: median, mean, the one-in-ten values and the ends of its curve, nothing cut at zero. */
function impliedBy(estimate) {
	const result = {
		p10: require_engine.estimateQuantile(estimate, .1),
		p50: require_engine.estimateQuantile(estimate, .5),
		p90: require_engine.estimateQuantile(estimate, .9),
		mean: require_engine.estimateMean(estimate),
		belowZero: 0
	};
	if (estimate.kind !== "range") return result;
	const law = require_engine.lawOf(estimate);
	if (Number.isFinite(law.min)) result.min = law.min;
	if (Number.isFinite(law.max)) result.max = law.max;
	if (law.min < 0) result.belowZero = law.cdf(0);
	return result;
}
// ../../packages/core/src/estimating/interview/interview.ts
/** An interview at its first question. Dates and people are handed in; nothing here asks, prints or waits. */
function beginInterview(subject) {
	return {
		subject,
		answers: {},
		order: [],
		question: require_questions.interviewQuestion("basis", subject)
	};
}
/**
* The interview after an answer: at its next question, or at the same one with the reason in `again`. Answers that are
* out of order (low <= likely <= high) are explained and asked again; `back` goes to the question before; once all is
* answered, what the answers imply is read back, and `yes` ends it. One that is done stays as it is.
*/
function answerInterview(interview, answer) {
	const { question } = interview;
	if (question === void 0) return interview;
	const text = answer.trim();
	if (question.key === "confirm") return confirmed(interview, text);
	if (/^back$/i.test(text)) return asking(interview, require_questions.INTERVIEW_ORDER[require_questions.INTERVIEW_ORDER.indexOf(question.key) - 1] ?? "basis");
	const taken = take(interview, question.key, text);
	return "why" in taken ? asking(interview, question.key, taken.why) : next(taken);
}
function asking(interview, key, again) {
	const { again: _again, implied: _implied, ...rest } = interview;
	return {
		...rest,
		question: require_questions.interviewQuestion(key, interview.subject),
		...again === void 0 ? {} : { again }
	};
}
/** The next thing without an answer, or reading it all back. */
function next(interview) {
	const { answers, order } = interview;
	const open = require_questions.INTERVIEW_ORDER.find((key) => answers[key] === void 0 && !order.includes(key));
	if (open !== void 0) return asking(interview, open);
	const estimate = estimateOf(interview);
	if (estimate === void 0) return asking(interview, "high");
	return {
		...asking(interview, "confirm"),
		implied: impliedBy(estimate)
	};
}
function take(interview, key, text) {
	const order = [...interview.order, key];
	if (key === "basis" || key === "dissent") {
		if (key === "basis" && text === "") return { why: "Somebody will ask. One sentence is enough." };
		const { [key]: _before, ...answers } = interview.answers;
		return {
			...interview,
			order,
			answers: text === "" ? answers : {
				...answers,
				[key]: text
			}
		};
	}
	const read = require_questions.readNumber(text, interview.subject.unit);
	if ("why" in read) return read;
	const answers = {
		...interview.answers,
		[key]: read.value
	};
	const why = outOfOrder(answers, key);
	return why === void 0 ? {
		...interview,
		order,
		answers
	} : { why };
}
function outOfOrder({ low, likely, high }, key) {
	const back = "Answer again, or write back to correct the one before.";
	if (low !== void 0 && high !== void 0 && low > high) return key === "low" ? `${low} is above ${high}, which it exceeds only one time in ten. ${back}` : `${high} is below ${low}, which it stays below only one time in ten. ${back}`;
	if (likely === void 0) return void 0;
	if (low !== void 0 && likely < low) return `${likely} is likely and ${low} is the low end: the likely value lies between the ends. ${back}`;
	if (high !== void 0 && likely > high) return `${likely} is likely and ${high} is the high end: the likely value lies between the ends. ${back}`;
}
function estimateOf({ answers, subject }) {
	const { low, likely, high } = answers;
	if (low === void 0 || likely === void 0 || high === void 0) return void 0;
	return require_questions.oneInTen(low, likely, high, subject.unit);
}
function confirmed(interview, text) {
	const key = require_questions.INTERVIEW_ORDER.find((each) => each === text.toLowerCase());
	if (key !== void 0) return asking(interview, key);
	const estimate = estimateOf(interview);
	if (!/^(y|yes)$/i.test(text) || estimate === void 0) {
		const why = /^(n|no)$/i.test(text) ? "Which one is to be corrected?" : "That was neither yes nor one of them.";
		return {
			...interview,
			again: why
		};
	}
	const { subject, answers, order } = interview;
	const opinion = {
		by: subject.by,
		date: subject.date,
		of: subject.of,
		estimate
	};
	if (answers.basis !== void 0) opinion.basis = answers.basis;
	opinion.order = [...order];
	if (answers.dissent !== void 0) opinion.dissent = answers.dissent;
	const { question: _question, again: _again, ...rest } = interview;
	return {
		...rest,
		opinion
	};
}
// src/estimating/answersFile.ts
var KEYS = require_questions.INTERVIEW_ORDER;
/**
* An opinion from a JSON file `{ "basis": "...", "high": 9, "low": 3, "likely": 5, "dissent": "..." }`, or everything
* that is wrong with it.
*/
async function answersFromFile(subject, path) {
	const problem = (where, rule, remedy) => require_program.callProblem("answer", `${path}${where}`, rule, remedy);
	const document = await require_readDocument.readDocument(path);
	if (document.text === void 0) {
		const { rule = "It could not be read.", remedy = "Check the path." } = document.problem ?? {};
		return { problems: [problem("", rule, remedy)] };
	}
	const given = objectIn(document.text);
	if (given === void 0) return { problems: [problem("", "That is not a JSON object with the answers.", `Write { "basis": "...", "high": 9, "low": 3, "likely": 5, "dissent": "..." }.`)] };
	const problems = [];
	const answers = {};
	for (const [key, value] of Object.entries(given)) {
		const number = typeof value === "number" && Number.isFinite(value);
		if (!KEYS.includes(key)) problems.push(problem(` ${key}`, "There is no such question.", `Questions: ${KEYS.join(", ")}.`));
		else if (typeof value === "string" || number) answers[key] = String(value);
		else problems.push(problem(` ${key}`, "An answer is a text or a number.", "Write it so."));
	}
	const { opinion, faults } = require_questions.opinionFrom(subject, answers);
	const unread = new Set(Object.keys(given).filter((key) => !(key in answers)));
	const others = faults.filter(({ key }) => !unread.has(key));
	problems.push(...others.map(({ key, why }) => problem(` ${key}`, why, "Correct it in the file.")));
	return opinion === void 0 || problems.length > 0 ? { problems } : {
		opinion,
		problems
	};
}
function objectIn(text) {
	try {
		const value = JSON.parse(text);
		return typeof value === "object" && value !== null && !Array.isArray(value) ? value : void 0;
	} catch {
		return;
	}
}
// src/text/interviewText.ts
/** What stands before a question: why it is asked again, the read-back, the words, what may be answered. */
function questionText(interview, width) {
	const { question, again, implied } = interview;
	if (question === void 0) return "";
	return `${[
		...again === void 0 ? [] : require_program.wrap(require_program.plainText(again), width),
		...implied === void 0 || again !== void 0 ? [] : require_program.wrap(impliedSentences(interview, implied), width),
		...require_program.wrap(require_program.plainText(question.text), width),
		...require_program.wrap(question.help, width - 2).map((line) => `  ${line}`)
	].join("\n")}\n`;
}
/** What the answers say of the work, read back in other words than they were asked for. */
function impliedSentences({ subject }, implied) {
	const { name, unitWords } = subject;
	const { p10, p50, p90, mean, belowZero } = implied;
	if (p10 === p90) return `Then ${require_program.quoteName(name)} is certain: ${require_amountWords.amountIn(p50, unitWords)}.`;
	const zero = belowZero > 5e-4 ? ` The curve reaches below nought; a forecast counts that ${require_formatPercent.formatPercent(belowZero)} as nought.` : "";
	return `So of ten pieces of work like ${require_program.quoteName(name)} eight take from ${require_amountWords.amount(p10)} to ${require_amountWords.amountIn(p90, unitWords)}, five of the ten more than ${require_amountWords.amount(p50)}, and they average ${require_amountWords.amount(mean)}.${zero}`;
}
/** An opinion in a line: `3, 5, 9 working days (one in ten, likely, one in ten)`. */
function opinionSentence(opinion, unitWords) {
	const { estimate } = opinion;
	if (estimate.kind !== "range") return estimate.kind === "fixed" ? `${require_amountWords.amountIn(estimate.value, unitWords)}, certain` : "by outcomes";
	const { low, likely, high } = estimate;
	return `${[
		low,
		...likely === void 0 ? [] : [likely],
		high
	].map(require_amountWords.amount).join(", ")} ${unitWords} (one in ten below, likely, one in ten above)`;
}
// src/estimating/askPerson.ts
/**
* Asks until the interview is done, one line an answer, on a terminal or from a pipe. Where the lines end before it is
* done, the interview as it stands then.
*/
async function askPerson(begun, { input, output, width }) {
	const terminal = input.isTTY === true;
	const lines = (0, node_readline.createInterface)({
		input,
		...terminal && {
			output,
			terminal: true
		},
		crlfDelay: 1e3
	});
	lines.on("SIGINT", () => process.kill(process.pid, "SIGINT"));
	let interview = begun;
	const ask = () => {
		output.write(`${questionText(interview, width)}> `);
		if (!terminal) output.write("\n");
	};
	try {
		ask();
		for await (const line of lines) {
			interview = answerInterview(interview, line);
			if (interview.question === void 0) break;
			output.write("\n");
			ask();
		}
	} finally {
		lines.close();
		if (terminal && "pause" in input) input.pause();
	}
	return interview;
}
// src/verbs/interview.ts
function refuse(problems, name) {
	require_program.printProblems(problems, name);
	return require_program.exitCodes.invalid;
}
/** Asks one person about one task and writes what they said into the plan. */
async function interviewVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const by = values.text("by");
	const of = values.oneOf("of", [
		"duration",
		"effort",
		"cost"
	]);
	const file = values.text("answers");
	const date = require_dateOption.dateOption(values, "date", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const problems = [
		...values.problems,
		...date.problems,
		...require_writeBack.outputClash(call, values)
	];
	if (by === void 0) problems.push(require_program.callProblem("missing-option", "--by", "An opinion is somebody's.", "Add --by and the id of who is asked."));
	if (call.subject === "-" && file === void 0) problems.push(require_program.callProblem("repeated-input", "-", "Standard input cannot be the plan and the answers.", "Name the plan's file, or give --answers."));
	if (problems.length > 0 || by === void 0) return refuse(problems);
	const given = await require_givenPlan.givenPlan(call.subject ?? "-");
	if (given === void 0) return require_program.exitCodes.invalid;
	const { plan, name } = given;
	const task = require_givenPlan.taskOf(plan, call.second ?? "");
	const speaker = require_givenPlan.speakerOf(plan, "by", by);
	const as = values.text("as");
	const writer = as === void 0 ? speaker : require_givenPlan.speakerOf(plan, "as", as);
	if (require_givenPlan.isProblem(task) || require_givenPlan.isProblem(speaker) || require_givenPlan.isProblem(writer)) return refuse([
		task,
		speaker,
		...writer === speaker ? [] : [writer]
	].filter(require_givenPlan.isProblem), name);
	const askable = require_questions.askableOf(plan, task);
	const asked = askable.find((each) => each.of === of) ?? (of === void 0 ? askable[0] : void 0);
	if (asked === void 0) {
		const rule = of === void 0 ? "There is nothing to ask about a milestone, or about what is finished." : `The task has no ${of} to ask about.`;
		const has = askable.map((each) => each.of).join(", ");
		return refuse([require_program.callProblem("nothing-to-ask", task.id, rule, has === "" ? "Name another." : `It has: ${has}.`)], name);
	}
	const subject = {
		...asked,
		by,
		date: date.value
	};
	const found = file === void 0 ? await fromPerson(subject) : await answersFromFile(subject, file);
	if (found.opinion === void 0) return refuse(found.problems);
	const entered = writer.id === by ? {} : { enteredBy: [writer.id] };
	const opinion = {
		...found.opinion,
		...entered
	};
	const edit = require_changedLines.addOpinion(given.text, task, opinion);
	if (edit.problems.length > 0) return refuse(edit.problems, name);
	const dry = values.has("dry-run");
	if (!dry && !await require_writeBack.writeBack(given, edit.text)) return require_program.exitCodes.invalid;
	const implied = impliedBy(opinion.estimate);
	if (values.has("json")) {
		require_program.printJson({
			task: task.id,
			opinion,
			implied,
			written: !dry
		});
		return require_program.exitCodes.done;
	}
	const { width } = require_program.pageOf(process.env, process.stdout);
	const saying = `${require_givenPlan.nameIn(plan)(by)} on ${subject.name}: ${opinionSentence(opinion, subject.unitWords)}.`;
	const text = [
		...require_program.wrap(require_program.plainText(saying), width),
		...require_program.wrap(require_program.plainText(impliedSentences({
			...beginInterview(subject),
			answers: {}
		}, implied)), width),
		...dry ? [
			"",
			"Would be written:",
			...require_changedLines.changedLines(given.text, edit.text)
		] : [],
		"",
		dry ? "Nothing is written." : `${require_writeBack.writtenTo(name)}; the task's estimate is as it was. Next: leeway pool ${require_shellWord.shellWord(name)} ${task.id}`,
		""
	].join("\n");
	if (name === "standard input" && !dry) require_program.printNote(text);
	else require_program.printAnswer(text);
	return require_program.exitCodes.done;
}
async function fromPerson(subject) {
	const { width } = require_program.pageOf(process.env, process.stderr);
	const channels = {
		input: process.stdin,
		output: process.stderr,
		width
	};
	const { opinion, question } = await askPerson(beginInterview(subject), channels);
	if (opinion !== void 0) return {
		opinion,
		problems: []
	};
	const rule = `The answers ended at the question about ${question?.key ?? "it"}; nothing is written.`;
	return { problems: [require_program.callProblem("unfinished", subject.task, rule, "Answer all of it, or use --answers.")] };
}
exports.interviewVerb = interviewVerb;

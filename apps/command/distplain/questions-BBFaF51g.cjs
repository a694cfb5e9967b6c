const require_plan = require("./plan-DgohkeUq.cjs");
// ../../packages/core/src/estimating/askable.ts
/**
* The estimates of a task that can be asked for: its time, and its cost where it has one. None of a milestone or of a
* task that is finished.
*/
function askableOf(plan, task) {
	if (task.finished !== void 0) return [];
	const touching = (entries) => entries.filter(({ status }) => status === "open").filter(({ impacts }) => impacts.some(({ tasks }) => tasks.includes(task.id))).map(({ name }) => name);
	const [events, holds] = [touching(plan.risks), touching(plan.assumptions)];
	const base = {
		task: task.id,
		name: task.name,
		events,
		holds
	};
	const result = [];
	for (const amount of ["duration", "effort"]) {
		const estimate = task[amount];
		if (estimate === void 0 || task.milestone !== false) continue;
		result.push({
			...base,
			of: amount,
			unit: estimate.unit,
			unitWords: unitWords(amount, estimate)
		});
	}
	if (task.cost !== void 0) result.push({
		...base,
		of: "cost",
		unit: "money",
		unitWords: plan.currency
	});
	return result;
}
function unitWords(of, { unit }) {
	if (of === "duration") return unit === "weeks" ? "weeks" : "working days";
	return unit === "weeks" ? "person-weeks" : "person-days";
}
// ../../packages/core/src/estimating/interview/readNumber.ts
var UNIT_WORD = /^(.*\d)\s*(d|days?|working days?|person-days?|w|wks?|weeks?|person-weeks?)$/i;
/** The number in an answer, or why it is none: a dot is the decimal point, digits in groups are not guessed at. */
function readNumber(written, unit) {
	let text = written.trim();
	const [, digits, word] = UNIT_WORD.exec(text) ?? [];
	if (digits !== void 0 && word !== void 0 && unit !== "money") {
		const said = /w(k|eek|$)/i.test(word.replace(/^working/i, "")) ? "weeks" : "days";
		if (said !== unit) return { why: `“${text}” is in ${said}; this is counted in ${unit}.` };
		text = digits.trim();
	}
	if (text === "") return { why: "A number is needed here." };
	if (!/^[-+]?(\d+(\.\d*)?|\.\d+)(e[-+]?\d+)?$/i.test(text)) {
		const meant = require_plan.advice(text, {});
		return { why: `“${text.slice(0, 60)}” is not a plain number. ${meant ?? "Write one like 7.5."}` };
	}
	const value = Number(text);
	if (Math.abs(value) > 0x38d7ea4c68000) return { why: "That is more than a plan can hold." };
	if (value < 0 && unit !== "money") return { why: "Time is not less than nothing. Write 0 or more." };
	return { value };
}
// ../../packages/core/src/estimating/interview/opinionFrom.ts
/**
* The opinion in answers that were written down elsewhere, by the rules of the interview; or everything that is wrong
* with them. In which order they were given is not known, so the opinion does not say.
*/
function opinionFrom(subject, answers) {
	const faults = [];
	const said = (key) => answers[key]?.trim() ?? "";
	const number = (key) => {
		const read = readNumber(said(key), subject.unit);
		if ("value" in read) return read.value;
		faults.push({
			key,
			received: said(key),
			why: read.why
		});
		return NaN;
	};
	const [high, low, likely] = [
		number("high"),
		number("low"),
		number("likely")
	];
	const outside = (key, why) => faults.push({
		key,
		received: said(key),
		why
	});
	if (low > high) outside("low", `${low} is above ${high}, the value exceeded one time in ten.`);
	else if (likely < low) outside("likely", `${likely} is below ${low}, the value of the low end.`);
	else if (likely > high) outside("likely", `${likely} is above ${high}, the value of the high end.`);
	const basis = said("basis");
	if (basis === "") outside("basis", "Somebody will ask why they would know. One sentence is enough.");
	if (faults.length > 0) return { faults };
	const opinion = {
		by: subject.by,
		date: subject.date,
		of: subject.of,
		estimate: oneInTen(low, likely, high, subject.unit),
		basis
	};
	const dissent = said("dissent");
	if (dissent !== "") opinion.dissent = dissent;
	return {
		opinion,
		faults
	};
}
/** The estimate of one-in-ten values and a likely one, low <= likely <= high. */
function oneInTen(low, likely, high, counted) {
	const unit = counted === "weeks" ? "weeks" : "days";
	if (low === high) return {
		kind: "fixed",
		value: low,
		unit
	};
	return {
		kind: "range",
		low,
		likely,
		high,
		shape: "pert",
		bounds: "p10-p90",
		unit
	};
}
// ../../packages/core/src/estimating/interview/questions.ts
/**
* The order in which an estimate is asked for. The extremes come before the middle: who names a likely value first
* adjusts away from it too little (Tversky & Kahneman 1974, Science 185, 1124-1131, recalled). The basis comes first,
* so that a figure is given by somebody who has just thought of where it would come from (common practice, no source).
*/
var INTERVIEW_ORDER = [
	"basis",
	"high",
	"low",
	"likely",
	"dissent"
];
/**
* The words of one question.
*
* High and low are two one-sided questions about one chance in ten each and never "between what and what, surely":
* ranges asked for as a whole are much too narrow for the certainty claimed, separate "more than" and "less than"
* questions give wider ones. Source: Teigen & Jorgensen 2005, "When 90 % confidence intervals are 50 % certain: on the
* credibility of credible intervals", Applied Cognitive Psychology 19, 455-475, doi 10.1002/acp.1085 (abstract).
* "One time in ten" rather than "at the most": a maximum has no chance that could be checked later.
*/
function interviewQuestion(key, { name, of, unitWords, events, holds }) {
	const what = of === "cost" ? `What would “${name}” cost` : `How long would “${name}” take`;
	const number = `A number of ${unitWords}.`;
	switch (key) {
		case "basis": return {
			key,
			text: `Why would you know about “${name}”? What have you seen or done that is like it?`,
			help: "A sentence: who reads it later should see what the figures rest on."
		};
		case "high": return {
			key,
			text: `Think of ten pieces of work like “${name}”.${setAside(events, holds)} Which ${unitOf(unitWords)} would only one of the ten exceed?`,
			help: `${number} Not the worst that could ever happen: one time in ten it would be more.`
		};
		case "low": return {
			key,
			text: `Now the other end. Which ${unitOf(unitWords)} would only one of the ten stay below?`,
			help: `${number} One time in ten it would be less.`
		};
		case "likely": return {
			key,
			text: `${what}, most likely?`,
			help: `${number} The value you would see more often than any other.`
		};
		case "dissent": return {
			key,
			text: "Is there anything about this work, or how it is planned, that you do not agree with?",
			help: "A sentence, or nothing."
		};
		case "confirm": return {
			key,
			text: "Is that what you mean?",
			help: "yes, or what to correct: basis, high, low, likely, dissent."
		};
	}
}
function unitOf(unitWords) {
	return /^[A-Z]{3}$/.test(unitWords) ? `sum in ${unitWords}` : `number of ${unitWords}`;
}
/** What the register counts on its own has its own chance and its own days: it is not to be counted a second time. */
function setAside(events, holds) {
	const list = (names) => names.map((name) => `“${name.replace(/[.\s]+$/, "")}”`).join(", ");
	const both = [events.length === 0 ? "" : ` none of this happens: ${list(events)}`, holds.length === 0 ? "" : ` this holds: ${list(holds)}`].filter((part) => part !== "").join(", and that");
	return both === "" ? "" : ` Suppose that${both}; the register counts that on its own.`;
}
Object.defineProperty(exports, "INTERVIEW_ORDER", {
	enumerable: true,
	get: function() {
		return INTERVIEW_ORDER;
	}
});
Object.defineProperty(exports, "askableOf", {
	enumerable: true,
	get: function() {
		return askableOf;
	}
});
Object.defineProperty(exports, "interviewQuestion", {
	enumerable: true,
	get: function() {
		return interviewQuestion;
	}
});
Object.defineProperty(exports, "oneInTen", {
	enumerable: true,
	get: function() {
		return oneInTen;
	}
});
Object.defineProperty(exports, "opinionFrom", {
	enumerable: true,
	get: function() {
		return opinionFrom;
	}
});
Object.defineProperty(exports, "readNumber", {
	enumerable: true,
	get: function() {
		return readNumber;
	}
});

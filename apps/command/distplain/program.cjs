Object.defineProperty(exports, Symbol.toStringTag, { value: "Module" });
const require_version = require("./version-BsDMLdbb.cjs");
let node_util = require("node:util");
// ../../packages/core/src/plan/definition/nearest.ts
/** Longer names are not compared: nobody mistypes that much. */
var LONGEST = 64;
/**
* The candidate nearest to a mistyped name, if one is near enough: alike but for case and signs, or within
* a third of its length in edits (insertion, deletion, substitution, exchange of neighbours). Ties go to
* the first in code-unit order.
*/
function nearest$1(name, candidates) {
	if (name.length > LONGEST) return void 0;
	const plain = bare(name);
	let best;
	let bestDistance = Math.max(1, Math.floor(name.length / 3)) + .5;
	for (const candidate of candidates) {
		if (candidate.length > LONGEST || Math.abs(candidate.length - name.length) > bestDistance + 2) continue;
		const distance = plain !== "" && bare(candidate) === plain ? 0 : editDistance(name, candidate, bestDistance);
		if (distance < bestDistance || distance === bestDistance && best !== void 0 && candidate < best) {
			best = candidate;
			bestDistance = distance;
		}
	}
	return best;
}
/** Case and signs aside: `status_date` is `statusDate`. */
function bare(name) {
	return name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
}
/** Optimal string alignment distance (common practice), or `limit + 1` once it exceeds `limit`. */
function editDistance(a, b, limit) {
	let before = [];
	let last = Array.from({ length: b.length + 1 }, (_, j) => j);
	for (let i = 1; i <= a.length; i++) {
		const row = [i];
		let least = i;
		for (let j = 1; j <= b.length; j++) {
			const same = a[i - 1] === b[j - 1] ? 0 : 1;
			let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
			if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
			row.push(cost);
			least = Math.min(least, cost);
		}
		if (least > limit + 1) return limit + 1;
		before = last;
		last = row;
	}
	return last[b.length] ?? 0;
}
/** What has a published schema: the plan document, and what each of these verbs prints with `--json`. */
var SCHEMA_NAMES = ["plan", ...Object.keys({
	forecast: true,
	verify: true,
	explain: true,
	responses: true,
	reach: true,
	assumptions: true,
	people: true,
	paths: true,
	confidence: true,
	money: true,
	future: true,
	why: true,
	compare: true,
	brief: true,
	sign: true,
	approvals: true,
	object: true,
	change: true,
	record: true,
	history: true,
	triggers: true,
	check: true,
	interview: true,
	pool: true,
	sheet: true,
	detail: true,
	scorecard: true,
	uplift: true,
	export: true,
	import: true,
	inform: true,
	roles: true
})];
// ../../packages/core/src/plan/problem.ts
/** One line a planner can act on: place, what came, the rule, the way out. */
function describeProblem(problem, file) {
	const where = [[
		file,
		problem.line,
		problem.column
	].filter((part) => part !== void 0).join(":"), problem.path].filter((part) => part !== "").join(" ");
	const came = problem.received === "" ? "" : ` ${problem.received}:`;
	return `${where === "" ? "plan" : where}:${came} ${problem.rule} ${problem.remedy}`.trim();
}
// src/call/callProblem.ts
/** A problem with the call itself: the word that came stands where a plan's place would. */
function callProblem(code, word, rule, remedy) {
	return {
		code,
		severity: "error",
		path: word,
		received: "",
		rule,
		remedy
	};
}
// src/call/nearest.ts
/** The known word a mistyped one most likely meant: one it begins, else the nearest; undefined when none is near. */
function nearest(word, known) {
	return (word.length >= 3 ? known.find((candidate) => candidate.startsWith(word)) : void 0) ?? nearest$1(word, known);
}
// src/call/commonOptions.ts
/** Options that more than one verb takes: the same word means the same, in the same words, wherever it stands. */
var common = {
	json: {
		name: "json",
		help: "one JSON document on standard output and nothing else"
	},
	charts: {
		name: "charts",
		value: "DIR",
		help: "also write the charts as SVG files into DIR"
	},
	confidence: {
		name: "confidence",
		value: "P",
		help: "how sure to be, above 0 and below 1: 0.8 is 8 times in 10 (default: the plan's)"
	},
	iterations: {
		name: "iterations",
		value: "N",
		help: "how many futures (default: the plan's)"
	},
	seed: {
		name: "seed",
		value: "TEXT",
		help: "the same seed draws the same futures, another one others (default: the plan's)"
	},
	design: {
		name: "design",
		value: "NAME",
		help: "how futures are drawn: latin-hypercube (default) or plain"
	},
	without: {
		name: "without",
		value: "IDS",
		repeats: true,
		help: "leave out risks, optional scope, adopted responses; ids with commas"
	},
	with: {
		name: "with",
		value: "IDS",
		repeats: true,
		help: "take in responses not adopted, capacity people could add; ids with commas"
	},
	workers: {
		name: "workers",
		value: "N",
		help: "processor cores to use; never changes a digit"
	}
};
/** How the futures are drawn and what they are of: what nearly every verb that draws futures takes, in this order. */
var drawn = [
	common.iterations,
	common.seed,
	common.design,
	common.without,
	common.with
];
// src/call/verbs.ts
var planWords = {
	0: "",
	1: " PLAN",
	2: " OLD NEW"
};
/** What stands after a verb, as help writes it. */
function wordsAfter({ plans, word }) {
	if (word === void 0) return planWords[plans];
	const open = word.optional === true || word.many === true;
	return `${planWords[plans]} ${open ? `[${word.name}${word.many === true ? " ..." : ""}]` : word.name}`;
}
var beforehand = "What --with and --without name is settled beforehand and not weighed.";
/** Every verb there is. `help`, the check of the call and its suggestions all read this list. */
var verbs$1 = [
	{
		name: "forecast",
		summary: "finish and cost with their chances, and what drives them",
		plans: 1,
		options: [
			common.json,
			common.charts,
			{
				name: "tornado",
				help: "also what each uncertain item does alone, low and high"
			},
			{
				name: "within",
				value: "DAYS",
				help: "double the futures until the limits of the committed finish are at most so many working days apart"
			},
			common.confidence,
			...drawn,
			common.workers,
			{
				name: "timing",
				help: "also one JSON line on standard error: seconds per step"
			},
			{
				name: "verify",
				value: "FILE",
				help: "run a saved forecast (its JSON) again, in place of a new one"
			}
		],
		notes: "--verify takes seed, futures and scenario from FILE and holds every figure against it, to the last bit. It ends with code 0 where all are the same, 1 where one is not (the first is named), 2 where FILE is of another plan or no forecast."
	},
	{
		name: "explain",
		summary: "why this much contingency: what is held for each cause, and how it comes about",
		plans: 1,
		options: [
			common.json,
			common.charts,
			common.confidence,
			...drawn,
			common.workers
		],
		notes: "Contingency is what the commitment holds above the plan as written. The shares of its causes add up to it; what would change if a cause alone vanished is another question and stands beside them."
	},
	{
		name: "confidence",
		summary: "why this level: what each step buys and costs; date and money together",
		plans: 1,
		options: [
			common.json,
			common.charts,
			{
				name: "joint",
				value: "P",
				help: "how sure to be of date and sum together, e.g. 0.7 (default: the level committed to)"
			},
			common.confidence,
			...drawn
		],
		notes: "A step's cost is the extra money held for it and nothing else; lateness counts when the plan prices it."
	},
	{
		name: "responses",
		summary: "what each response to a risk costs and buys; the best set for a sum",
		plans: 1,
		options: [
			common.json,
			common.charts,
			{
				name: "sum",
				value: "MONEY",
				help: "also which responses to adopt with this much money, e.g. 5000"
			},
			{
				name: "aim",
				value: "WHAT",
				help: "... for the earliest date, the best chance or most worth: date, chance, worth"
			},
			common.confidence,
			...drawn,
			common.workers
		],
		notes: "Each response is run with and without, on the same draws: alone, and with the adopted ones as they are. Net worth is the mean money it saves (risks, running costs, lateness where the plan prices it) less its cost. " + beforehand
	},
	{
		name: "assumptions",
		summary: "what the plan counts on, and what moves were it false",
		plans: 1,
		options: [
			{
				name: "if-false",
				value: "IDS",
				help: "only these assumptions (default: all that are open)"
			},
			common.json,
			common.confidence,
			...drawn
		],
		notes: "Each assumption is supposed false in turn, everything else as it is, on the draws of the plan as it stands. What moves is said in days, in money and in the chances of what was asked for."
	},
	{
		name: "reach",
		summary: "what it would take to make a date or a sum",
		plans: 1,
		options: [
			common.json,
			{
				name: "by",
				value: "DATE",
				help: "the date to make, e.g. 2027-10-01"
			},
			{
				name: "sum",
				value: "MONEY",
				help: "the sum to keep, e.g. 640000"
			},
			common.confidence,
			...drawn,
			common.workers
		],
		notes: "Without --by and --sum it is about the date and the budget that the plan's commitment asks for. It looks among responses not adopted yet, scope that is `optional` and capacity that people `couldAdd`. Scope is dropped only where money alone does not do it; a way that costs less but drops more is shown beside it. " + beforehand
	},
	{
		name: "money",
		summary: "what the money is for and when; funds, contingency left, worth, cost of delay",
		plans: 1,
		options: [
			common.json,
			common.charts,
			{
				name: "signed",
				value: "FILE",
				help: "the version that was signed: what it commits to was agreed (default: the one kept beside the plan)"
			},
			{
				name: "sum",
				value: "MONEY",
				help: "the sum that was agreed, in place of that"
			},
			{
				name: "by",
				value: "DATE",
				help: "the date that was agreed, in place of that"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is looked at, with nothing more reported (default: the plan's status date)"
			},
			common.confidence,
			...drawn
		],
		notes: "What was agreed is the signed version's commitment, without one the plan's budget and finishBy. Releases are proposals for whoever holds the contingency. The sponsor's reserve is counted nowhere."
	},
	{
		name: "people",
		summary: "load against capacity, who waits for whom, what an absence does",
		plans: 1,
		options: [
			common.json,
			common.charts,
			{
				name: "person",
				value: "ID",
				help: "one person's weeks in figures, in place of everybody's"
			},
			{
				name: "lose",
				value: "ID",
				help: "also what it does to the commitment when this person is away"
			},
			{
				name: "lose-each",
				help: "... everybody in turn, the worst first"
			},
			{
				name: "days",
				value: "N",
				help: "... for how many of their working days, 1 to 366 (always needed)"
			},
			{
				name: "from",
				value: "DATE",
				help: "... from when (default: where they are needed most)"
			},
			{
				name: "part",
				value: "P",
				help: "... only this part of the capacity, e.g. 0.5 (default: all of it)"
			},
			common.confidence,
			...drawn
		]
	},
	{
		name: "paths",
		summary: "which chains of tasks set the finish, and what is at stake near them",
		plans: 1,
		options: [
			common.json,
			common.charts,
			{
				name: "indices",
				help: "also criticality, significance, cruciality and schedule sensitivity of each task"
			},
			common.confidence,
			...drawn
		]
	},
	{
		name: "why",
		summary: "what holds a task's start, link by link and person by person",
		plans: 1,
		word: {
			name: "TASK",
			means: "a task's id"
		},
		options: [common.json, ...drawn],
		notes: "TASK is the id of a task in the plan."
	},
	{
		name: "future",
		summary: "one future replayed: what occurred, when, why, and what it cost",
		plans: 1,
		options: [
			common.json,
			common.charts,
			{
				name: "iteration",
				value: "N",
				help: "which future, counted from 1"
			},
			{
				name: "at",
				value: "P",
				help: "... or the first that finishes where this level does, e.g. 0.8 (default: the plan's level)"
			},
			{
				name: "draws",
				help: "also every draw that counted"
			},
			...drawn
		]
	},
	{
		name: "compare",
		summary: "what moved the commitment between two plans",
		plans: 2,
		options: [
			common.json,
			common.charts,
			common.confidence,
			common.iterations,
			common.seed,
			common.design,
			common.workers
		],
		notes: "Both plans run on the same draws, with the new plan's seed, futures and confidence; changes are found by id, and by `was` where something was renamed. The moves add up to the difference."
	},
	{
		name: "brief",
		summary: "the approver's page: what to decide, and why; or a pre-brief for one of them",
		plans: 1,
		options: [
			{
				name: "trace",
				value: "WORD",
				help: "in place of the page: where its figures come from whose place or value holds the word; `all` for all"
			},
			common.json,
			{
				name: "format",
				value: "NAME",
				help: "markdown or html, one file that prints on one A4 page (default: html where FILE ends in .html, else markdown)"
			},
			{
				name: "out",
				value: "FILE",
				help: "write to FILE (default: standard output)"
			},
			{
				name: "force",
				help: "overwrite FILE where there is one"
			},
			{
				name: "for",
				value: "ID",
				help: "what this approver will ask, answered, in place of the brief"
			},
			{
				name: "since",
				value: "OLD",
				help: "... and what moved since that version of the plan"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is written on, e.g. 2027-02-01 (default: today)"
			},
			common.confidence,
			...drawn,
			common.workers
		],
		notes: "Every figure is one of forecast, explain, responses and confidence on the same futures. What is asked comes from the plan's key `decision`; what the plan does not say is said to be missing."
	},
	{
		name: "sign",
		summary: "bind a decision to the plan as it is",
		plans: 1,
		options: [
			{
				name: "as",
				value: "WHO",
				help: "who decides: an id of the plan (always needed)"
			},
			{
				name: "by",
				value: "WHO",
				help: "who signs in their place: the delegate the plan names"
			},
			{
				name: "decision",
				value: "WHAT",
				help: "approve (default), approve-subject-to, or rework to send it back"
			},
			{
				name: "conditions",
				value: "TEXT",
				help: "what the approval is subject to"
			},
			{
				name: "conditions-by",
				value: "DATE",
				help: "... and the day by which that has to be met"
			},
			{
				name: "conditions-met",
				help: "say that these conditions were met; nothing is signed anew"
			},
			{
				name: "accept",
				value: "IDS",
				help: "open objections the signer accepts as they stand"
			},
			{
				name: "despite-errors",
				help: "approve although the check finds an error"
			},
			{
				name: "dry-run",
				help: "write nothing; show what would be signed"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is written on (default: today)"
			},
			common.json
		],
		notes: "The version is kept in NAME.versions first, then the plan gets the entry. A signature covers the plan until anything but progress, approvals, objections and the change log changes. It is a record in a file, no legal signature."
	},
	{
		name: "approvals",
		summary: "who has signed, whether it still covers the plan, what moved since",
		plans: 1,
		options: [
			common.json,
			{
				name: "signed",
				value: "FILE",
				help: "the version that was signed (default: the one kept beside the plan)"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is looked at (default: today)"
			},
			common.workers
		]
	},
	{
		name: "object",
		summary: "objections: log, answer, accept by name, list",
		plans: 1,
		options: [
			{
				name: "as",
				value: "WHO",
				help: "who objects, or who accepts: an id of the plan"
			},
			{
				name: "text",
				value: "TEXT",
				help: "what is objected, or what is answered"
			},
			{
				name: "answer",
				value: "ID",
				help: "answer this objection with --text"
			},
			{
				name: "evidence",
				value: "TEXT",
				help: "... what supports the answer"
			},
			{
				name: "changed-plan",
				help: "... and it changed the plan"
			},
			{
				name: "accept",
				value: "ID",
				help: "--as WHO accepts that it stands"
			},
			{
				name: "reopen",
				value: "ID",
				help: "--as WHO opens it again: who raised or accepted it, or who decides on the plan"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is written on (default: today)"
			},
			common.json
		],
		notes: "Without --text, --answer, --accept and --reopen it lists them. An answer may be bettered by another; what somebody accepted stands by their name until it is opened again."
	},
	{
		name: "change",
		summary: "an entry in the change log: what, why, who agreed",
		plans: 1,
		options: [
			{
				name: "what",
				value: "TEXT",
				help: "what changed (always needed)"
			},
			{
				name: "why",
				value: "TEXT",
				help: "the reason (always needed)"
			},
			{
				name: "as",
				value: "WHO",
				help: "who decided it: an id of the plan (always needed)"
			},
			{
				name: "approved-by",
				value: "WHO",
				help: "who agreed to it: an approver, or their delegate (always needed)"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is written on (default: today)"
			},
			common.json
		]
	},
	{
		name: "record",
		summary: "progress written into the plan; what moved, what is missing, what trips",
		plans: 1,
		options: [
			{
				name: "status",
				value: "DATE",
				help: "the day up to which you report (always needed)"
			},
			{
				name: "started",
				value: "TASK[=DATE]",
				repeats: true,
				help: "it started (default: on the status date)"
			},
			{
				name: "finished",
				value: "TASK[=DATE]",
				repeats: true,
				help: "it finished (default: on the status date)"
			},
			{
				name: "remaining",
				value: "TASK=DAYS",
				repeats: true,
				help: "working days that remain of a started task: 6, or low, likely, high: 5,7,14"
			},
			{
				name: "spent",
				value: "TASK=MONEY",
				repeats: true,
				help: "money spent on it so far"
			},
			{
				name: "occurred",
				value: "ID",
				repeats: true,
				help: "the risk has happened, the assumption is wrong"
			},
			{
				name: "cost",
				value: "ID=MONEY",
				repeats: true,
				help: "what it cost in fact, once it has occurred: takes the place of the range"
			},
			{
				name: "days",
				value: "ID=DAYS",
				repeats: true,
				help: "the working days it took in fact; 0 where they are in what remains already"
			},
			{
				name: "closed",
				value: "ID",
				repeats: true,
				help: "the risk or assumption can no longer happen"
			},
			{
				name: "tripped",
				value: "ASSUMPTION[=DATE]",
				repeats: true,
				help: "its signpost was seen (default: on the status date)"
			},
			{
				name: "from",
				value: "FILE",
				help: "also what a table (.csv) or list (.json) reports: id, started, finished, remaining, spent, status, tripped, cost, days"
			},
			{
				name: "as",
				value: "WHO",
				help: "who records it: an id of the plan"
			},
			{
				name: "why",
				value: "TEXT",
				help: "a remark for the history"
			},
			{
				name: "dry-run",
				help: "write nothing; show the lines that would change"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is written on (default: today)"
			},
			common.json,
			common.workers
		],
		notes: "Writes into the plan's text (comments and order stay), keeps the version in NAME.versions and the forecast in NAME.history.jsonl beside it. With one thing wrong nothing is written, and all that is wrong is listed."
	},
	{
		name: "history",
		summary: "how the commitment drifted over the forecasts that were kept",
		plans: 1,
		options: [
			{
				name: "add",
				help: "keep the forecast of the plan as it is now, first"
			},
			{
				name: "why",
				value: "TEXT",
				help: "... a remark to keep with it"
			},
			{
				name: "as",
				value: "WHO",
				help: "... who keeps it: an id of the plan"
			},
			{
				name: "explain",
				help: "also what moved from each forecast to the next"
			},
			{
				name: "fail",
				help: "end with code 1 when the history is broken or a return trigger has tripped"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is written on (default: today)"
			},
			common.json,
			common.charts,
			common.workers
		],
		notes: "Forecasts are kept one a line in NAME.history.jsonl; each line holds the hash of the line before, so that a line changed, taken out or put in shows."
	},
	{
		name: "triggers",
		summary: "when we come back to the approvers, and where each of these conditions stands",
		plans: 1,
		options: [
			{
				name: "fail",
				help: "end with code 1 when one has tripped"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day it is looked at (default: today)"
			},
			common.json,
			common.confidence,
			...drawn,
			common.workers
		],
		notes: "What was agreed is the plan's key `returnTriggers`. Chances and cover are measured against what the signed version commits to, else against the plan's `finishBy` and `budget`. The conditions of an approval stand among them where they have a day (`conditionsBy`)."
	},
	{
		name: "check",
		summary: "findings about the plan itself, before anybody promises by it",
		plans: 1,
		options: [
			common.json,
			{
				name: "fail-on",
				value: "LEVEL",
				help: "end with code 1 on findings of that severity or worse: error, warning or note"
			},
			{
				name: "as-written",
				help: "draw no futures, and leave out what depends on chances"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day on which it is looked at, e.g. 2027-02-01 (default: today)"
			},
			common.iterations,
			common.seed,
			common.workers
		],
		notes: "A finding says what, where, why it matters, by which source, and what to do. One that was looked at and may stay goes into the plan's `acceptedFindings`: it is still listed and no longer counts for --fail-on."
	},
	{
		name: "interview",
		summary: "ask one person how long or how dear a task would be, and keep what they say",
		plans: 1,
		word: {
			name: "TASK",
			means: "a task's id"
		},
		options: [
			common.json,
			{
				name: "by",
				value: "ID",
				help: "who is asked: a person or stakeholder of the plan (always needed)"
			},
			{
				name: "as",
				value: "WHO",
				help: "who writes it down, where that is somebody else"
			},
			{
				name: "of",
				value: "WHAT",
				help: "duration, effort or cost (default: the task's time)"
			},
			{
				name: "answers",
				value: "FILE",
				help: "take the answers from a JSON file: basis, high, low, likely, dissent"
			},
			{
				name: "date",
				value: "DATE",
				help: "when it was said (default: today)"
			},
			{
				name: "dry-run",
				help: "show what would be written and write nothing"
			}
		],
		notes: "The ends are asked before the middle, each as one question about one time in ten. Answers are lines on a terminal or from a pipe; `back` goes to the question before. What is said is kept as an opinion beside the task's estimate, which stays as it is until `leeway pool` settles it."
	},
	{
		name: "pool",
		summary: "what several people said of a task, together and against each other",
		plans: 1,
		word: {
			name: "TASK",
			means: "a task's id",
			optional: true
		},
		options: [
			common.json,
			common.charts,
			{
				name: "of",
				value: "WHAT",
				help: "only the opinions on duration, effort or cost"
			},
			{
				name: "write",
				help: "settle TASK's estimate with it, its basis naming the people"
			},
			{
				name: "dry-run",
				help: "with --write: show what would be written and write nothing"
			}
		],
		notes: "Everybody weighs the same; the values they give at the same chance are averaged. Where ranges have no value in common, people may be speaking of different work: an average of that is nobody's estimate."
	},
	{
		name: "sheet",
		summary: "the questions of the interview as a table for one person, out and back in",
		plans: 1,
		options: [
			common.json,
			{
				name: "for",
				value: "ID",
				help: "write the sheet of this person, as comma-separated values"
			},
			{
				name: "all",
				help: "... with every task, not only those they have to do with, and costs that are certain"
			},
			{
				name: "out",
				value: "FILE",
				help: "... to FILE (default: standard output)"
			},
			{
				name: "force",
				help: "... overwriting it where it is there"
			},
			{
				name: "read",
				value: "FILE",
				help: "take a filled sheet into the plan, as opinions"
			},
			{
				name: "by",
				value: "ID",
				help: "... filled by this person"
			},
			{
				name: "as",
				value: "WHO",
				help: "... taken in by this one, where that is somebody else"
			},
			{
				name: "date",
				value: "DATE",
				help: "... on this day (default: today)"
			},
			{
				name: "dry-run",
				help: "... show what would be written and write nothing"
			}
		],
		notes: "A person's own last answers stand in the sheet, nobody else's. Rows as they were change nothing. A sheet with a fault is refused as a whole, every fault with its row and column."
	},
	{
		name: "detail",
		summary: "outline tasks of an old plan against the detail that replaced them",
		plans: 2,
		options: [
			common.json,
			common.iterations,
			common.seed,
			common.design
		],
		notes: "Detail names its outline task by `detailOf`. A sum of parts that vary on their own is narrower than one estimate of the whole without anybody knowing more; what it would be with the parts moving together stands beside it."
	},
	{
		name: "scorecard",
		summary: "past estimates against what happened, per estimator",
		plans: 1,
		word: {
			name: "PAST",
			means: "further plans",
			many: true
		},
		options: [
			common.json,
			common.charts,
			{
				name: "apply-to",
				value: "PLAN",
				help: "also what this plan's forecast would be if its ranges leaned and missed the same way; writes nothing"
			},
			common.confidence,
			common.iterations,
			common.seed,
			common.design
		],
		notes: "Finished tasks whose time was estimated as a range are scored. Plans of one title are versions of one project: what was said is read from the first in which a task had not started, what happened from the last."
	},
	{
		name: "uplift",
		summary: "an early estimate with an uplift for optimism from past projects, beside the forecast",
		plans: 1,
		options: [
			common.json,
			{
				name: "kind",
				value: "KIND",
				repeats: true,
				help: "what is built: non-standard-buildings, standard-buildings, non-standard-civil-engineering, standard-civil-engineering, equipment-or-development; several with their parts, KIND=0.3; or with --stage: roads, fixed-links, building-projects, it-projects"
			},
			{
				name: "mitigated",
				value: "P",
				help: "the part of the contributing risks shown to be managed, 0 to 1 (default: 0)"
			},
			{
				name: "stage",
				value: "N",
				help: "stage of appraisal, 1 to 3"
			},
			{
				name: "management",
				value: "MONEY",
				help: "what managing those risks costs, added after the uplift"
			},
			common.confidence,
			...drawn
		],
		notes: "An uplift is for an early estimate without priced risks and is no contingency: never add it to the forecast's. Sources stand with the answer."
	},
	{
		name: "export",
		summary: "parts of the plan and its forecast as tables, calendars and JSON",
		plans: 1,
		options: [
			{
				name: "what",
				value: "WHAT",
				help: "tasks, estimates, register, people, forecast, milestones or communication (always needed)"
			},
			{
				name: "format",
				value: "NAME",
				help: "csv, json or ics (default: csv; of days in a calendar, ics)"
			},
			{
				name: "out",
				value: "FILE",
				help: "write to FILE (default: standard output)"
			},
			{
				name: "force",
				help: "overwrite FILE where there is one"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day a calendar is made (default: today)"
			},
			common.confidence,
			...drawn
		],
		notes: "Tables are comma-separated values (RFC 4180) that lose nothing; calendars are iCalendar (RFC 5545). What a spreadsheet would take for a formula has an apostrophe ahead of it."
	},
	{
		name: "import",
		summary: "a table back into the text of the plan, by id",
		plans: 1,
		options: [
			{
				name: "what",
				value: "WHAT",
				help: "tasks, estimates, register or people (always needed)"
			},
			{
				name: "read",
				value: "FILE",
				help: "the table, as export wrote it and somebody changed it (always needed)"
			},
			{
				name: "remove-missing",
				help: "also take out what the table leaves out"
			},
			{
				name: "as",
				value: "WHO",
				help: "with tasks: who enters them, kept as `enteredBy` of new tasks and new estimates"
			},
			{
				name: "dry-run",
				help: "write nothing; show what would change"
			},
			common.json
		],
		notes: "Comments and order of the plan stay, and new rows go to the end of their list. With one thing wrong nothing is written, and all that is wrong is listed with row and column."
	},
	{
		name: "inform",
		summary: "who has to be told of what, how and when; also as a calendar",
		plans: 1,
		options: [
			common.json,
			{
				name: "owner",
				value: "ID",
				help: "only what this person or stakeholder sees to"
			},
			{
				name: "from",
				value: "DATE",
				help: "nothing before this day"
			},
			{
				name: "out",
				value: "FILE",
				help: "also write the occasions into FILE, a calendar (.ics)"
			},
			{
				name: "force",
				help: "overwrite FILE where there is one"
			},
			{
				name: "today",
				value: "DATE",
				help: "the day the calendar is made (default: today)"
			},
			common.confidence,
			...drawn
		]
	},
	{
		name: "roles",
		summary: "who does what, answers for it, is asked and is told",
		plans: 1,
		options: [
			common.json,
			{
				name: "phases",
				help: "phases in place of tasks"
			},
			{
				name: "format",
				value: "NAME",
				help: "csv or markdown: only the matrix, with names over its columns"
			},
			{
				name: "out",
				value: "FILE",
				help: "... written to FILE (default: standard output)"
			},
			{
				name: "force",
				help: "overwrite FILE where there is one"
			}
		]
	},
	{
		name: "schema",
		summary: "the JSON Schema of the plan document, for an editor; or of an answer",
		plans: 0,
		word: {
			name: "WHAT",
			means: "the name of a schema",
			optional: true
		},
		options: [],
		notes: `Point your editor at it to have a plan checked and completed while you type. WHAT is plan (default), or a verb: everything that is printed as JSON has a schema (${SCHEMA_NAMES.filter((name) => name !== "plan").join(", ")}).`
	},
	{
		name: "new",
		summary: "a starter plan from a few questions",
		plans: 0,
		options: [
			{
				name: "yes",
				help: "ask nothing; a commented plan to change"
			},
			{
				name: "title",
				value: "TEXT",
				help: "the plan's title"
			},
			{
				name: "start",
				value: "DATE",
				help: "first day on which work may happen, e.g. 2027-02-01"
			},
			{
				name: "currency",
				value: "CODE",
				help: "the currency of all sums, three letters, e.g. EUR"
			},
			{
				name: "out",
				value: "FILE",
				help: "write to FILE (default: standard output)"
			},
			{
				name: "force",
				help: "overwrite FILE where there is one"
			}
		]
	},
	{
		name: "open",
		summary: "the notebook on this file: every change is saved to it",
		plans: 1,
		options: [{
			name: "port",
			value: "N",
			help: "the port to serve it on (default: any that is free)"
		}],
		notes: "It serves on 127.0.0.1 only, at an address with a token that is new each time, and until you stop it. What another program writes to the file meanwhile shows on the page."
	},
	{
		name: "help",
		summary: "this list, one verb: help VERB, or what is behind a problem or finding: help CODE",
		plans: 0,
		options: []
	}
];
// src/call/parseCall.ts
function unknownOption(rawName, verb) {
	const near = nearest(rawName.replace(/^-+/, ""), ["help", ...verb.options.map((option) => option.name)]);
	return callProblem("unknown-option", rawName, `${verb.name} has no such option.`, near === void 0 ? `See \`leeway help ${verb.name}\`.` : `Did you mean --${near}?`);
}
function findVerb(word) {
	if (word === void 0) return callProblem("missing-verb", "leeway", "It needs a verb.", "Try `leeway help`.");
	const found = verbs$1.find((verb) => verb.name === word);
	if (found !== void 0) return found;
	const names = verbs$1.map((verb) => verb.name);
	const near = nearest(word, names);
	return callProblem("unknown-verb", word, "There is no such verb.", near === void 0 ? `Verbs: ${names.join(", ")}.` : `Did you mean \`${near}\`?`);
}
function checkSubjects(verb, words, problems) {
	const wordsAfterPlan = verb.word?.many === true ? Number.POSITIVE_INFINITY : verb.word === void 0 ? 0 : 1;
	const most = verb.name === "help" ? 1 : verb.plans + wordsAfterPlan;
	const needed = verb.word !== void 0 && verb.word.optional !== true && verb.word.many !== true;
	if (verb.word !== void 0 && needed && words.length === verb.plans) {
		const { name, means } = verb.word;
		const rule = `${verb.name} needs ${means} after the plan.`;
		const remedy = `Write \`leeway ${verb.name} PLAN ${name}\`.`;
		problems.push(callProblem("missing-word", words.join(" "), rule, remedy));
	}
	if (words.length < verb.plans) {
		const [needs, names] = verb.plans === 2 ? ["two plans", "OLD NEW"] : ["a plan", "PLAN"];
		const what = verb.plans === 2 ? "files, one of them - for standard input" : "a file or - for standard input";
		const remedy = `Write \`leeway ${verb.name} ${names}\`, ${what}.`;
		problems.push(callProblem("missing-plan", words.join(" "), `${verb.name} needs ${needs}.`, remedy));
	}
	if (verb.plans === 2 && words[0] === "-" && words[1] === "-") problems.push(callProblem("repeated-plan", "- -", "Standard input can be one of the plans only.", "Name a file for the other."));
	for (const extra of words.slice(most)) {
		const takes = verb.word !== void 0 ? `takes ${verb.plans === 0 ? "" : "one plan and "}${verb.word.means}.` : [
			"takes no file.",
			"takes one plan at a time.",
			"takes two plans."
		][most] ?? "";
		problems.push(callProblem("extra-word", extra, `${verb.name} ${takes}`, "Leave it out."));
	}
}
/**
* Reads the words after `leeway`. Every wrong one is a problem, all listed at once, each with the nearest
* known word. `--help` and `--version` answer whatever else is there.
*/
function parseCall(words) {
	const verb = findVerb(words.find((word) => !word.startsWith("-")));
	const known = "options" in verb ? verb.options : [];
	const { tokens } = (0, node_util.parseArgs)({
		args: [...words],
		options: Object.fromEntries(known.map(({ name, value }) => [name, {
			type: value === void 0 ? "boolean" : "string",
			multiple: true
		}])),
		strict: false,
		allowPositionals: true,
		tokens: true
	});
	const options = /* @__PURE__ */ new Map();
	const positionals = [];
	const problems = [];
	let valueAt = -1;
	for (const token of tokens) {
		if (token.kind === "positional" && token.index !== valueAt) positionals.push(token.value);
		if (token.kind !== "option") continue;
		if (token.name === "help" || token.rawName === "-h") return "options" in verb && verb.name !== "help" ? {
			kind: "help",
			about: verb
		} : { kind: "help" };
		if (token.name === "version") return { kind: "version" };
		if (!("options" in verb)) continue;
		const rule = token.rawName.startsWith("--") ? known.find(({ name }) => name === token.name) : void 0;
		if (rule === void 0) {
			const meant = nearest(token.name, known.map(({ name }) => name));
			if (!token.inlineValue && known.find(({ name }) => name === meant)?.value !== void 0) valueAt = token.index + 1;
			problems.push(unknownOption(token.rawName, verb));
		} else if (rule.value === void 0 && token.value !== void 0) {
			const remedy = `Write only ${token.rawName}.`;
			problems.push(callProblem("option-value", `${token.rawName}=${token.value}`, "It takes no value.", remedy));
		} else if (rule.value !== void 0 && (token.value === void 0 || !token.inlineValue && /^--?[a-z]/.test(token.value))) {
			const remedy = `Write ${token.rawName} ${rule.value}.`;
			problems.push(callProblem("option-value", token.rawName, "It needs a value.", remedy));
		} else {
			const given = options.get(rule.name) ?? [];
			if (given.length > 0 && rule.repeats !== true && rule.value !== void 0) problems.push(callProblem("option-twice", token.rawName, "It is given twice.", "Keep one of them."));
			options.set(rule.name, [...given, token.value ?? ""]);
		}
	}
	if (!("options" in verb)) return {
		kind: "problems",
		problems: [verb]
	};
	const [, subject, second] = positionals;
	const rest = verb.word?.many === true ? positionals.slice(1 + verb.plans) : void 0;
	checkSubjects(verb, positionals.slice(1), problems);
	if (problems.length > 0) return {
		kind: "problems",
		problems
	};
	return {
		kind: "call",
		call: {
			verb,
			options,
			...subject === void 0 ? {} : { subject },
			...second === void 0 ? {} : { second },
			...rest === void 0 ? {} : { rest }
		}
	};
}
// src/exitCodes.ts
/** What the command's exit says. */
var exitCodes = {
	done: 0,
	/** Done, but the check found what `--fail-on` asked about. */
	found: 1,
	/** The plan or the call is invalid; every problem is on standard error. */
	invalid: 2,
	/** Stopped by a signal; nothing half-written. */
	stopped: 3,
	/** A fault of the program itself; the code sysexits.h calls EX_SOFTWARE (recalled from memory). */
	broken: 70
};
// ../../packages/charts/src/words/plainName.ts
/**
* A name as it may stand in a line of our own: on one line, without control characters, and, when it holds
* letters that run right to left, kept apart (U+2068 … U+2069) so that it does not turn the figures after it.
*
* @param most  Longer names are cut to this many characters, as a reader counts them, and "…".
*
* Source: Unicode Standard Annex 9, explicit directional isolates.
*/
function plainName(name, most = 300) {
	const clean = name.slice(0, 2e3).replace(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]/g, "").replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, " ").trim();
	if (clean === "") return "(no name)";
	const letters = clean.length <= most ? [] : Array.from(segmenter.segment(clean), (each) => each.segment);
	const kept = letters.length <= most ? clean : `${letters.slice(0, most).join("").trimEnd()}…`;
	return rightToLeft.test(kept) ? `\u2068${kept}\u2069` : kept;
}
/** A name in a sentence: in quotation marks, so that "Permit decided moves …" is not misread; 60 characters at most. */
function quoteName(name) {
	return `“${plainName(name, 60)}”`;
}
var segmenter = new Intl.Segmenter("en", { granularity: "grapheme" });
var rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;
// src/text/plainText.ts
/** C0 and C1 controls, line breaks included: a terminal obeys some of them. */
var CONTROLS = /[\u0000-\u001f\u007f-\u009f]+/g;
/** Marks that turn the direction of what follows (Unicode Standard Annex 9). */
var TURNS = /[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]/g;
/** Text that quotes a plan, as one line a terminal only shows. */
function plainText(text) {
	return text.replace(TURNS, "").replace(CONTROLS, " ");
}
/** A copy of plain data with every text in it made fit for a line of our own. */
function plainTexts(value) {
	return JSON.parse(JSON.stringify(value), (_key, part) => typeof part === "string" ? plainName(part) : part);
}
// src/output.ts
/** Lists problems on standard error, one a line, each with its place in `file` and the code that `help` explains. */
function printProblems(problems, file) {
	printNote(problems.map((problem) => {
		return `${plainText(describeProblem(problem, ofCall(problem) ? void 0 : file))}  [${problem.code}]`;
	}).join("\n"));
}
/** Whether a problem is with an option and not with the document. */
function ofCall(problem) {
	return problem.path.startsWith("--");
}
/** For people, beside the answer: standard error. */
function printNote(text) {
	process.stderr.write(`${text}\n`);
}
/** The answer, as it is: standard output. */
function printAnswer(text) {
	process.stdout.write(text);
}
/** The answer as one JSON document. Its type has to be named: it is one that has a published schema. */
function printJson(answer) {
	printAnswer(jsonText(answer));
}
/** What JSON may say as it is and a terminal obeys: DEL and C1 controls, marks that turn what follows, lines of Unicode. */
var LOUD = /[\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;
/** One JSON document: two spaces, one newline at the end. What a terminal would obey is written as its code: the same text. */
function jsonText(value) {
	return `${JSON.stringify(value, void 0, 2).replace(LOUD, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`)}\n`;
}
// src/stopping.ts
/**
* A signal ends the command with its own code, temporary files removed; a reader that has seen enough
* (`| head`) ends it quietly.
*/
function handleStops() {
	for (const signal of [
		"SIGINT",
		"SIGTERM",
		"SIGHUP"
	]) process.on(signal, () => {
		process.stderr.write(`${process.stderr.isTTY ? "\r\x1B[K" : ""}Stopped; nothing is half-written.\n`);
		process.exit(exitCodes.stopped);
	});
	for (const stream of [process.stdout, process.stderr]) stream.on("error", (error) => {
		if (error.code === "EPIPE") process.exit(exitCodes.done);
		throw error;
	});
}
/**
* Lets a signal that came during a long computation be heard before anything is written: handlers run only
* between turns of the event loop, and signals are read in the turn before this resolves.
*/
function hearStops() {
	return new Promise((resolve) => setImmediate(resolve));
}
// src/text/page.ts
var NARROWEST = 60;
/** Longer lines are hard to read back to their beginning. */
var WIDEST = 110;
/**
* The page standard output offers: COLUMNS, else the terminal's width, else 80. Weight only on a terminal
* that does not ask for plain text (NO_COLOR, https://no-color.org, recalled from memory; TERM=dumb).
*/
function pageOf(environment, terminal) {
	const asked = Number(environment.COLUMNS);
	const offered = asked > 0 ? asked : terminal.isTTY === true ? terminal.columns || 80 : 80;
	const plain = terminal.isTTY !== true || Boolean(environment.NO_COLOR) || environment.TERM === "dumb";
	return {
		width: Math.max(NARROWEST, Math.min(WIDEST, Math.floor(offered))),
		strong: plain ? (text) => text : (text) => `\u001b[1m${text}\u001b[22m`
	};
}
/** Breaks text into lines of at most `width`; a longer word keeps a line of its own. */
function wrap(text, width, indent = "") {
	const lines = [];
	let line = "";
	for (const word of text.split(/ (?!%)/)) if (line !== "" && line.length + 1 + word.length > width) {
		lines.push(line);
		line = indent + word;
	} else line = line === "" ? word : `${line} ${word}`;
	return [...lines, line];
}
/** Cuts text to `width`, an ellipsis showing that it was cut. */
function cut(text, width) {
	const letters = [...text];
	return letters.length <= width ? text : `${letters.slice(0, Math.max(1, width - 1)).join("")}…`;
}
/** A bar of at most `width` columns, to half a column; empty for nothing or less. */
function bar(value, largest, width) {
	if (!(value > 0) || !(largest > 0)) return "";
	const halves = Math.max(1, Math.round(value / largest * width * 2));
	return "█".repeat(halves >> 1) + (halves % 2 === 1 ? "▌" : "");
}
/** No first column is cut below this many letters. */
var LEAST_NAME = 8;
/**
* Rows under headings, two spaces between columns, two in front. Figures stand right-aligned; names, in the
* first column, are cut to what the others leave of `width`.
*
* @param rows  One text per column.
*/
function table(columns, rows, width = Number.POSITIVE_INFINITY) {
	const lines = [columns.map((column) => column.heading), ...rows];
	const widths = columns.map((_, k) => Math.max(...lines.map((row) => [...row[k] ?? ""].length)));
	const others = widths.slice(1).reduce((sum, wide) => sum + wide + 2, 2);
	const first = Math.min(widths[0] ?? 0, Math.max(LEAST_NAME, width - others));
	return lines.map((row) => {
		return `  ${columns.map(({ align }, k) => {
			const cell = k === 0 ? cut(row[k] ?? "", first) : row[k] ?? "";
			const space = " ".repeat((k === 0 ? first : widths[k] ?? 0) - [...cell].length);
			return align === "right" ? space + cell : cell + space;
		}).join("  ")}`.trimEnd();
	});
}
// src/verbs/help.ts
/** Two columns; what the second says goes on below itself where a line is full. */
function columns(rows, width) {
	const widest = Math.max(...rows.map(([left]) => left.length));
	return rows.flatMap(([left, right]) => wrap(right, width - widest - 4).map((line, k) => `  ${(k === 0 ? left : "").padEnd(widest)}  ${line}`)).join("\n");
}
var pageWidth = () => pageOf(process.env, process.stdout).width;
var paragraph = (text, width) => wrap(text, width).join("\n");
/** The list of verbs and of exit codes. */
function overviewText() {
	const width = pageWidth();
	const list = columns(verbs$1.map((verb) => [`${verb.name}${wordsAfter(verb)}`, verb.summary]), width);
	return [
		"leeway VERB PLAN [options]",
		paragraph("From a project plan to a date and a sum you can commit to: the plan is lived through thousands of times, each a future of its own, and answers are read off them all. PLAN is a plan document (YAML or JSON), or - for standard input. Begin with `leeway new`, then `leeway forecast`.", width),
		list,
		paragraph("`leeway help VERB` lists the options of a verb, `leeway help CODE` says what is behind a problem or finding (its code stands in brackets); `leeway --version` prints the version.", width),
		paragraph("Exit codes: 0 done; 1 done, the check found what --fail-on asked about; 2 the plan or the call is invalid; 3 stopped, nothing half-written.", width)
	].join("\n\n").concat("\n");
}
/** One verb and its options. */
function verbText(verb) {
	const width = pageWidth();
	const options = verb.options.map(({ name, value, help }) => [value === void 0 ? `--${name}` : `--${name} ${value}`, help]);
	return [
		`leeway ${verb.name}${wordsAfter(verb)}${options.length > 0 ? " [options]" : ""}`,
		paragraph(`${verb.summary[0]?.toUpperCase()}${verb.summary.slice(1)}.`, width),
		...verb.notes === void 0 ? [] : [paragraph(verb.notes, width)],
		...options.length === 0 ? [] : [columns(options, width)]
	].join("\n\n").concat("\n");
}
/** `help`, `help VERB` and `help CODE`. */
async function helpVerb(about) {
	const verb = verbs$1.find(({ name }) => name === about);
	if (about === void 0 || verb?.name === "help") printAnswer(overviewText());
	else if (verb !== void 0) printAnswer(verbText(verb));
	else {
		const { codeHelp, codes } = await Promise.resolve().then(() => require("./codeHelp-CfQ2RlAN.cjs"));
		const text = codeHelp(about, pageWidth());
		if (text === void 0) return refuse(about, codes);
		printAnswer(text);
	}
	return exitCodes.done;
}
function refuse(about, codes) {
	const names = verbs$1.map(({ name }) => name);
	const near = nearest(about, names) ?? nearest(about, codes);
	printProblems([callProblem("unknown-verb", about, "There is no such verb, and no such code.", near === void 0 ? `Verbs: ${names.join(", ")}.` : `Did you mean \`${near}\`?`)]);
	return exitCodes.invalid;
}
// src/main.ts
/** A verb is read when it is called for: most of the program is about other verbs. */
var verbs = {
	forecast: async (call) => (await Promise.resolve().then(() => require("./forecast-uFdRoQ33.cjs"))).forecastVerb(call),
	explain: async (call) => (await Promise.resolve().then(() => require("./explain-VWBBYWbd.cjs"))).explainVerb(call),
	confidence: async (call) => (await Promise.resolve().then(() => require("./confidence-BM6D8tWK.cjs"))).confidenceVerb(call),
	responses: async (call) => (await Promise.resolve().then(() => require("./responses-CV6iTzuy.cjs"))).responsesVerb(call),
	assumptions: async (call) => (await Promise.resolve().then(() => require("./assumptions-DUug5jXf.cjs"))).assumptionsVerb(call),
	reach: async (call) => (await Promise.resolve().then(() => require("./reach-BBjPfyvd.cjs"))).reachVerb(call),
	money: async (call) => (await Promise.resolve().then(() => require("./money-Db-Nmjhp.cjs"))).moneyVerb(call),
	people: async (call) => (await Promise.resolve().then(() => require("./people-DwvQhdC4.cjs"))).peopleVerb(call),
	paths: async (call) => (await Promise.resolve().then(() => require("./paths-DAujK7qI.cjs"))).pathsVerb(call),
	why: async (call) => (await Promise.resolve().then(() => require("./why-dbVc8FFi.cjs"))).whyVerb(call),
	future: async (call) => (await Promise.resolve().then(() => require("./future-Dwn8kI_5.cjs"))).futureVerb(call),
	compare: async (call) => (await Promise.resolve().then(() => require("./compare-BFlXQ4Up.cjs"))).compareVerb(call),
	brief: async (call) => (await Promise.resolve().then(() => require("./brief-BDxiqS4m.cjs"))).briefVerb(call),
	record: async (call) => (await Promise.resolve().then(() => require("./record-C0rREPbV.cjs"))).recordVerb(call),
	history: async (call) => (await Promise.resolve().then(() => require("./history-D2mNgdJk.cjs"))).historyVerb(call),
	triggers: async (call) => (await Promise.resolve().then(() => require("./triggers-ZVMMmufo.cjs"))).triggersVerb(call),
	check: async (call) => (await Promise.resolve().then(() => require("./check-DARcNTiL.cjs"))).checkVerb(call),
	interview: async (call) => (await Promise.resolve().then(() => require("./interview-Dpc_OgZZ.cjs"))).interviewVerb(call),
	pool: async (call) => (await Promise.resolve().then(() => require("./pool-B7BN0ST4.cjs"))).poolVerb(call),
	sheet: async (call) => (await Promise.resolve().then(() => require("./sheet-DBXG1snj.cjs"))).sheetVerb(call),
	detail: async (call) => (await Promise.resolve().then(() => require("./detail-BIxm20OQ.cjs"))).detailVerb(call),
	scorecard: async (call) => (await Promise.resolve().then(() => require("./scorecard-DRDEjtHi.cjs"))).scorecardVerb(call),
	uplift: async (call) => (await Promise.resolve().then(() => require("./uplift-BIgmHOtL.cjs"))).upliftVerb(call),
	export: async (call) => (await Promise.resolve().then(() => require("./export-C1Zd--G5.cjs"))).exportVerb(call),
	import: async (call) => (await Promise.resolve().then(() => require("./import-CYiqEpjV.cjs"))).importVerb(call),
	inform: async (call) => (await Promise.resolve().then(() => require("./inform-DacZeX0P.cjs"))).informVerb(call),
	roles: async (call) => (await Promise.resolve().then(() => require("./roles-DEZZDsNm.cjs"))).rolesVerb(call),
	schema: async (call) => (await Promise.resolve().then(() => require("./schema-CG5GNcdH.cjs"))).schemaVerb(call.subject),
	sign: async (call) => (await Promise.resolve().then(() => require("./sign-BMJoEemz.cjs"))).signVerb(call),
	approvals: async (call) => (await Promise.resolve().then(() => require("./approvals-Ama70W0X.cjs"))).approvalsVerb(call),
	object: async (call) => (await Promise.resolve().then(() => require("./object-D_uUPydR.cjs"))).objectVerb(call),
	change: async (call) => (await Promise.resolve().then(() => require("./change-BV8VJlmV.cjs"))).changeVerb(call),
	open: async (call) => (await Promise.resolve().then(() => require("./open-CXStitu5.cjs"))).openVerb(call),
	new: async (call) => (await Promise.resolve().then(() => require("./new-w8jUIud1.cjs"))).newVerb(call),
	help: (call) => helpVerb(call.subject)
};
/**
* The command. Reads the call, does what it says and returns the exit code; text goes to standard output,
* problems to standard error.
*
* @param words  What stands after `leeway`.
*/
async function main$1(words) {
	handleStops();
	const parsed = parseCall(words);
	switch (parsed.kind) {
		case "version":
			printAnswer(`${require_version.version}\n`);
			return exitCodes.done;
		case "help":
			printAnswer(parsed.about === void 0 ? overviewText() : verbText(parsed.about));
			return exitCodes.done;
		case "problems":
			printProblems(parsed.problems);
			return exitCodes.invalid;
		case "call": try {
			return await verbs[parsed.call.verb.name](parsed.call);
		} catch (error) {
			const trace = error instanceof Error ? error.stack : String(error);
			printNote(`Something went wrong inside leeway ${require_version.version}, not in your plan. Please report this:\n${trace}`);
			return exitCodes.broken;
		}
	}
}
// src/start/takeUp.ts
var ahead;
/** Leaves a thread that was started already for whoever wants one first. */
function leave(started) {
	ahead = started;
}
/** The thread that was left, once. */
function takeUp() {
	const taken = ahead;
	ahead = void 0;
	return taken;
}
// src/program.ts
/** @param ahead  A thread that was started already. */
function main(words, ahead) {
	leave(ahead);
	return main$1(words);
}
/** What a thread does that was started with a question (`answerAside`). */
async function answerInThread() {
	(await Promise.resolve().then(() => require("./answerAside-BsrttFoz.cjs")).then((n) => n.answerAside_exports)).answerInThread();
}
var rehearsal = () => Promise.resolve().then(() => require("./rehearse-FNeZOr1x.cjs"));
exports.SCHEMA_NAMES = SCHEMA_NAMES;
exports.answerInThread = answerInThread;
exports.bar = bar;
exports.callProblem = callProblem;
exports.cut = cut;
exports.exitCodes = exitCodes;
exports.hearStops = hearStops;
exports.jsonText = jsonText;
exports.main = main;
exports.nearest = nearest;
exports.nearest$1 = nearest$1;
exports.pageOf = pageOf;
exports.plainName = plainName;
exports.plainText = plainText;
exports.plainTexts = plainTexts;
exports.printAnswer = printAnswer;
exports.printJson = printJson;
exports.printNote = printNote;
exports.printProblems = printProblems;
exports.quoteName = quoteName;
exports.rehearsal = rehearsal;
exports.table = table;
exports.takeUp = takeUp;
exports.wrap = wrap;

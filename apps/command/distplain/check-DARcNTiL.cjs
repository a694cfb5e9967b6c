const require_planFindings = require("./planFindings-d5Xs2cu5.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_checkRules = require("./checkRules-CJV1ay2n.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_computeForecast = require("./computeForecast-CDXLTVBe.cjs");
const require_program = require("./program.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// ../../packages/core/src/findings/measures/measureRules.ts
var share = {
	unit: "share",
	threshold: require_checkRules.thresholds.share,
	bound: "at most"
};
var none = {
	unit: "count",
	threshold: 0,
	bound: "at most"
};
var index = {
	unit: "ratio",
	threshold: require_checkRules.thresholds.index,
	bound: "at least"
};
/** The fourteen of the trade, in its order. Tasks: unfinished ones, milestones left out. */
var measureRules = [
	{
		...share,
		code: "missing-logic",
		name: "Tasks with an open end",
		definition: "Tasks without a predecessor or without a successor, by tasks.",
		question: "What do these wait for, and who waits for them?",
		source: require_checkRules.sources.assessment("4.1")
	},
	{
		...none,
		code: "leads",
		name: "Links with a negative lag",
		definition: "Links whose lag is below zero as written.",
		question: "Which part of the task before really comes first?",
		source: require_checkRules.sources.assessment("4.2")
	},
	{
		...share,
		code: "lags",
		name: "Links with a lag",
		definition: "Links whose lag is above zero as written, by links.",
		question: "What happens in these days, and who does it?",
		source: require_checkRules.sources.assessment("4.3")
	},
	{
		code: "finish-to-start",
		name: "Links from a finish to a start",
		definition: "Links from a finish to a start, by links.",
		unit: "share",
		threshold: require_checkRules.thresholds.finishToStart,
		bound: "at least",
		question: "Would splitting a task say the same more plainly?",
		source: require_checkRules.sources.assessment("4.4")
	},
	{
		...share,
		code: "hard-dates",
		name: "Tasks held by a date",
		definition: "Tasks not begun with `notBefore` or `holdToPlan` and no `note` that gives the reason, by tasks.",
		question: "What is the reason behind each date?",
		source: require_checkRules.sources.assessment("4.5")
	},
	{
		...share,
		code: "high-float",
		name: "Tasks with much float",
		definition: `Tasks that could slip more than ${require_checkRules.thresholds.days} working days before the finish moved, by tasks.`,
		question: "Is a link missing behind these?",
		source: require_checkRules.sources.assessment("4.6")
	},
	{
		...none,
		code: "negative-float",
		name: "Tasks with negative float",
		definition: "Tasks that would have to start earlier for the date asked for.",
		question: "What gives: the date, the scope or the way it is done?",
		source: require_checkRules.sources.assessment("4.7")
	},
	{
		...share,
		code: "long-tasks",
		name: "Long tasks",
		definition: `Tasks longer than ${require_checkRules.thresholds.days} working days as written, outlines left out, by tasks.`,
		question: "How would you notice half-way that one is late?",
		source: require_checkRules.sources.assessment("4.8")
	},
	{
		...none,
		code: "past-dates",
		name: "Dates in the past",
		definition: "Targets of unfinished work, and the date asked for, that have passed.",
		question: "Were they missed, or is progress not recorded?",
		source: require_checkRules.sources.assessment("4.9")
	},
	{
		code: "without-resources",
		name: "Tasks without people or cost",
		definition: "Tasks of a working day or more that name nobody, cost nothing and have no `note`, by tasks.",
		unit: "share",
		threshold: 0,
		bound: "at most",
		question: "Whose time do these take?",
		source: require_checkRules.sources.assessment("4.10")
	},
	{
		...share,
		code: "missed-tasks",
		name: "Tasks that missed their day",
		definition: "Tasks due by the status date, as written without progress, that are unfinished or finished later, by tasks due.",
		question: "What held them up, and does it hold the rest too?",
		source: require_checkRules.sources.assessment("4.11")
	},
	{
		code: "path-test",
		name: "Path that responds",
		definition: `Working days the finish moves when one task that sets it takes ${require_checkRules.thresholds.slip} working days longer: the least of all, in a large plan of the longest.`,
		unit: "working days",
		threshold: require_checkRules.thresholds.slip,
		bound: "at least",
		question: "Which link is missing, or which date holds the finish?",
		source: require_checkRules.sources.assessment("4.12")
	},
	{
		...index,
		code: "cpli",
		name: "Critical path length index",
		definition: "Working days left on the path plus the float to the date asked for, by the working days left on the path.",
		question: "Where would the missing days come from?",
		source: require_checkRules.sources.index
	},
	{
		...index,
		code: "bei",
		name: "Baseline execution index",
		definition: "Tasks finished by the status date, by tasks due by then as written without progress.",
		question: "Why is work finished more slowly than planned?",
		source: require_checkRules.sources.assessment("4.14")
	}
];
// ../../packages/core/src/findings/measures/withThreshold.ts
/**
* A measure beside its threshold. At exactly the threshold it is kept; values that differ by at most 1e-9 are equal.
*/
function withThreshold(rule, taken) {
	if (typeof taken === "string") return {
		...rule,
		reason: taken
	};
	const value = "value" in taken ? taken.value : taken.count / (taken.of ?? 1);
	const counted = "of" in taken && taken.of !== void 0 ? {
		count: taken.count,
		of: taken.of
	} : {};
	const within = rule.bound === "at most" ? value <= rule.threshold + 1e-9 : value >= rule.threshold - 1e-9;
	return {
		...rule,
		value,
		...counted,
		within
	};
}
// ../../packages/core/src/findings/measures/planMeasures.ts
/** The same, for who has the context already. */
function measuresOf(context) {
	const taken = {
		...ofLinks(context),
		...ofTasks(context),
		...ofTime(context)
	};
	return measureRules.map((rule) => withThreshold(rule, taken[rule.code]));
}
function ofLinks(context) {
	const { plan, work } = context;
	const links = require_planFindings.linksOf(plan);
	const count = (has) => links.length === 0 ? "the plan has no links" : {
		count: links.filter(has).length,
		of: links.length
	};
	const { starts, ends } = require_planFindings.openEnds(context);
	const open = new Set([...starts, ...ends].map(({ task }) => task.id)).size;
	return {
		"missing-logic": work.length === 0 ? nothingLeft : {
			count: open,
			of: work.length
		},
		leads: { count: links.filter(({ lag }) => lag < 0).length },
		lags: count(({ lag }) => lag > 0),
		"finish-to-start": count(({ link }) => link.link === "finish-to-start")
	};
}
var nothingLeft = "no task is left to do";
function ofTasks(context) {
	const { work, written, plan, now } = context;
	const placed = work.map(({ task }) => ({
		task,
		at: written?.tasks.get(task.id)
	}));
	const share = (has) => {
		if (work.length === 0) return nothingLeft;
		return written === void 0 ? noDates : {
			count: placed.filter(has).length,
			of: work.length
		};
	};
	const left = written === void 0 ? void 0 : require_planFindings.timeLeft(written);
	const { finishBy } = plan.commitment;
	const unfinished = plan.tasks.filter(({ finished }) => finished === void 0);
	const past = unfinished.filter(({ target }) => target !== void 0 && now !== void 0 && target < now).length;
	const askedPast = finishBy !== void 0 && now !== void 0 && finishBy < now && unfinished.length > 0;
	return {
		"hard-dates": share(({ task }) => require_planFindings.isHeldByDate(task)),
		"high-float": share(({ at }) => at !== void 0 && at.float > require_checkRules.thresholds.days + 1e-9 && at.float < Number.POSITIVE_INFINITY),
		"negative-float": left === void 0 ? noAsked : { count: placed.filter(({ at }) => (at?.float ?? 0) + left.float < -require_engine.tolerance).length },
		"long-tasks": share(({ at, task }) => (at?.duration ?? 0) > require_checkRules.thresholds.days + 1e-9 && task.detail !== "outline"),
		"past-dates": now === void 0 ? "neither today nor a status date is known" : { count: past + (askedPast ? 1 : 0) },
		"without-resources": share(({ at, task }) => require_planFindings.takesNothing(task, at?.duration ?? 0))
	};
}
var noDates = "the plan runs past what calendars cover";
var noAsked = "no date is asked for";
function ofTime(context) {
	const { plan, written, late: { due, finished, late } } = context;
	const left = written === void 0 ? void 0 : require_planFindings.timeLeft(written);
	const nothingDue = plan.statusDate === void 0 ? "the plan has no status date" : "nothing is due yet";
	const shock = written === void 0 ? void 0 : require_planFindings.shockedBy(written);
	const moved = require_planFindings.drivingWork(context).flatMap(({ at }) => shock?.(at.at, require_checkRules.thresholds.slip) ?? []);
	return {
		"missed-tasks": due === 0 ? nothingDue : {
			count: late.length,
			of: due
		},
		"path-test": moved.length === 0 ? nothingLeft : { value: Math.min(...moved) },
		cpli: left === void 0 ? noAsked : { value: require_planFindings.pathLengthIndex(left) },
		bei: due === 0 ? nothingDue : {
			count: finished,
			of: due
		}
	};
}
// ../../packages/core/src/findings/checkPlan.ts
/** Findings and measures from one look at the plan: what `planFindings` and `planMeasures` answer. */
function checkPlan(plan, options = {}) {
	const context = require_planFindings.checkContext(plan, options);
	return {
		findings: require_planFindings.findingsOf(context),
		measures: measuresOf(context)
	};
}
// src/text/checkFindings.ts
/** Findings of one code that are shown one by one; the others are named by their ids. */
var SHOWN = 4;
var headings = {
	error: "Errors",
	warning: "Warnings",
	note: "Notes"
};
var rules = new Map(require_checkRules.checkRules.map((rule) => [rule.code, rule]));
function groupsOf(findings) {
	const groups = /* @__PURE__ */ new Map();
	for (const finding of findings) {
		const group = groups.get(finding.code);
		if (group === void 0) groups.set(finding.code, {
			code: finding.code,
			findings: [finding]
		});
		else group.findings.push(finding);
	}
	return [...groups.values()];
}
/** One block for each severity that has findings nobody has accepted: a heading, then code by code. */
function findingBlocks(findings, page) {
	const open = findings.filter(({ accepted }) => accepted === void 0);
	return Object.keys(headings).flatMap((severity) => {
		return groupsOf(open.filter((finding) => finding.severity === severity)).map((group, g) => [...g === 0 ? [page.strong(headings[severity]), ""] : [], ...groupLines(group, page)]);
	});
}
function groupLines({ code, findings }, { width, strong }) {
	const rule = rules.get(code);
	const [first] = findings;
	if (first === void 0) return [];
	const family = rule === void 0 ? "document" : rule.family;
	const count = findings.length === 1 ? "" : ` (${findings.length})`;
	const shown = findings.length <= 5 ? findings : findings.slice(0, SHOWN);
	const rest = findings.slice(shown.length).flatMap(({ ids, path }) => ids[0] ?? path);
	const why = rule === void 0 ? "" : `${rule.why} `;
	return [
		...require_program.wrap(`${rule?.what ?? "The document"}${count}  [${family}/${code}]`, width).map(strong),
		...shown.flatMap((finding) => itemLines(finding, rule?.why, width)),
		...rest.length === 0 ? [] : require_program.wrap(`and ${rest.length} more: ${rest.join(", ")}`, width - 4).map((line) => `    ${line}`),
		...require_inset.inset(`${why}${first.advice}`, width),
		...require_inset.inset(sourceLine(first.source), width)
	];
}
/** "Common practice, no source." needs no word before it. */
function sourceLine(source) {
	return /^common practice/i.test(source) ? source : `Source: ${source}`;
}
function itemLines({ message, path, ids }, why, width) {
	const said = why !== void 0 && message.endsWith(why) ? message.slice(0, -why.length).trim() : message;
	const place = /^\w+\[\d+\]/.test(path) && ids[0] !== void 0 ? `${path} ${ids[0]}` : path;
	return require_program.wrap(`- ${said}${place === "" ? "" : ` (${place})`}`, width - 2, "  ").map((line) => `  ${line}`);
}
/** What was accepted, by whom and why: still there, no longer in the way. */
function acceptedLines(findings, width) {
	const accepted = findings.filter((finding) => finding.accepted !== void 0);
	if (accepted.length === 0) return [];
	return ["Accepted", ...accepted.flatMap((finding) => {
		const { who, date, why } = finding.accepted ?? {
			who: "",
			date: "",
			why: ""
		};
		const about = finding.ids.length === 0 ? "" : ` ${finding.ids[0]}`;
		return require_program.wrap(`- ${finding.code}${about}: ${why} (${who}, ${date})`, width - 2, "  ").map((line) => `  ${line}`);
	})];
}
// src/text/checkMeasures.ts
var columns = [
	{
		heading: "measure",
		align: "left"
	},
	{
		heading: "here",
		align: "right"
	},
	{
		heading: "threshold",
		align: "left"
	}
];
/** The trade's measures, each beside its threshold; what falls outside asks its question. */
function measureLines(measures, width) {
	const taken = measures.filter(({ value }) => value !== void 0);
	const asked = taken.filter(({ within }) => within === false);
	return [
		...require_program.wrap("Measures of the plan as written. Thresholds prompt questions; they are no verdict.", width),
		...require_program.table(columns, taken.map((measure) => [
			measure.name,
			here(measure),
			threshold(measure)
		]), width),
		...asked.flatMap(({ name, question }) => require_inset.inset(`${name}: ${question}`, width)),
		...notTaken(measures, width)
	];
}
function here({ value = 0, unit, count, of }) {
	if (unit === "working days") return `${require_groupDigits.groupDigits(Math.round(value))} days`;
	const counted = count === void 0 || of === void 0 ? "" : `${count} of ${of}: `;
	return unit === "share" ? `${counted}${require_formatPercent.formatPercent(value)}` : unit === "ratio" ? ratio(value) : `${value}`;
}
/** Two decimals, and a third where two would hide on which side of the threshold it lies. */
function ratio(value) {
	return value.toFixed(Math.abs(value - .95) < .005 ? 3 : 2);
}
function threshold({ threshold: limit, bound, unit, within }) {
	const value = unit === "share" ? require_formatPercent.formatPercent(limit) : `${limit}${unit === "working days" ? " days" : ""}`;
	const said = limit === 0 ? "none" : `${bound} ${value}`;
	return within === false ? `${said} ?` : said;
}
function notTaken(measures, width) {
	const reasons = /* @__PURE__ */ new Map();
	for (const { name, reason } of measures) if (reason !== void 0) reasons.set(reason, [...reasons.get(reason) ?? [], name.toLowerCase()]);
	return [...reasons].flatMap(([reason, names]) => require_inset.inset(`Not measured, ${reason}: ${names.join(", ")}.`, width));
}
// src/text/checkText.ts
/**
* Findings as a person reads them: how many of which severity, the grave ones first, what was accepted, the trade's
* measures, and where to look next.
*
* @returns text ending with a newline
*/
function checkText(given, page, planName) {
	const findings = given.findings.map((finding) => ({
		...require_program.plainTexts(finding),
		path: require_program.plainText(finding.path)
	}));
	const answer = {
		...require_program.plainTexts(given),
		findings
	};
	const { width, strong } = page;
	const { measures, run } = answer;
	return `${[
		[headLine(answer, page)],
		[...require_program.wrap(countSentence(findings), width).map(strong), ...run === void 0 ? require_program.wrap("Without a forecast: what depends on chances was not looked at.", width) : []],
		...findingBlocks(findings, page),
		acceptedLines(findings, width),
		measureLines(measures, width),
		require_nextLines.nextLines(nextRows(findings, planName), width),
		run === void 0 ? [] : require_program.wrap(require_confidenceHead.explanationStamp(run), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
function headLine({ plan, today }, { width, strong }) {
	const day = `looked at on ${require_formatDate.formatDate(today, "short")}`;
	const title = require_program.cut(plan.title, width - day.length - 2);
	return strong(title) + " ".repeat(Math.max(2, width - [...title].length - day.length)) + day;
}
function countSentence(findings) {
	const open = findings.filter(({ accepted }) => accepted === void 0);
	const count = (severity, word) => {
		const n = open.filter((finding) => finding.severity === severity).length;
		return `${n === 0 ? "no" : n} ${word}${n === 1 ? "" : "s"}`;
	};
	const accepted = findings.length - open.length;
	const also = accepted === 0 ? "" : ` ${accepted} more ${accepted === 1 ? "is" : "are"} accepted.`;
	if (open.length === 0) return `No findings.${also}`;
	return `${`${open.length} ${open.length === 1 ? "finding" : "findings"}`}: ${count("error", "error")}, ${count("warning", "warning")}, ${count("note", "note")}.${also}`;
}
/** The verbs that answer what was found. */
function nextRows(findings, planName) {
	const found = (...codes) => findings.some(({ code, accepted }) => accepted === void 0 && codes.includes(code));
	return [
		...found("date-unlikely", "budget-unlikely", "finish-by-before-plan", "over-budget") ? [[`leeway reach ${planName}`, "what it would take"]] : [],
		...found("response-undecided") ? [[`leeway responses ${planName}`, "what each response costs and buys"]] : [],
		[`leeway forecast ${planName}`, "finish and cost with their chances"]
	];
}
// src/verbs/check.ts
var SEVERITIES = [
	"error",
	"warning",
	"note"
];
/** What reading the document already found, as findings. */
function findingOf(problem) {
	const { code, severity, path, received, rule, remedy } = problem;
	return {
		code,
		severity,
		path,
		ids: [],
		message: received === "" ? rule : `${received}: ${rule}`,
		advice: remedy,
		source: "The plan format."
	};
}
/** Lists findings; code 1 when one is as severe as `--fail-on` asks, code 2 when there is no plan to check. */
async function checkVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const failOn = values.oneOf("fail-on", SEVERITIES);
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const options = require_engineOptions.engineOptions(values);
	const workers = values.count("workers", 64);
	const wrong = [...values.problems, ...today.problems];
	if (wrong.length > 0) {
		require_program.printProblems(wrong);
		return require_program.exitCodes.invalid;
	}
	const document = await require_readDocument.readDocument(call.subject ?? "-");
	if (document.text === void 0) {
		if (document.problem !== void 0) require_program.printProblems([document.problem], document.name);
		return require_program.exitCodes.invalid;
	}
	const { plan, problems } = require_readPlan.readPlan(document.text);
	if (problems.length > 0) require_program.printProblems(problems, document.name);
	const read = problems.map(findingOf);
	if (plan === void 0) {
		if (values.has("json")) require_program.printJson({ findings: read });
		return require_program.exitCodes.invalid;
	}
	const ran = values.has("as-written") ? void 0 : await require_computeForecast.computeForecast({
		text: document.text,
		options,
		...workers === void 0 ? {} : { workers }
	});
	await require_program.hearStops();
	const unrun = ran?.forecast === void 0 ? ran?.problems.slice(problems.length) ?? [] : [];
	if (unrun.some(({ code }) => code !== "beyond-calendar")) {
		require_program.printProblems(unrun, document.name);
		return require_program.exitCodes.invalid;
	}
	const answer = answerOf(plan, today.value, [...read, ...unrun.map(findingOf)], ran?.forecast);
	if (values.has("json")) require_program.printJson(answer);
	else require_program.printAnswer(checkText(answer, require_program.pageOf(process.env, process.stdout), require_shellWord.shellWord(document.name)));
	const worst = failOn === void 0 ? -1 : SEVERITIES.indexOf(failOn);
	return answer.findings.some(({ severity, accepted }) => accepted === void 0 && SEVERITIES.indexOf(severity) <= worst) ? require_program.exitCodes.found : require_program.exitCodes.done;
}
function answerOf(plan, today, read, forecast) {
	const found = checkPlan(plan, {
		today,
		...forecast === void 0 ? {} : { forecast }
	});
	const first = found.findings.some(({ code }) => code === "runs-past-calendar") ? read.filter(({ code }) => code !== "beyond-calendar") : read;
	return {
		plan: {
			title: plan.title,
			sha256: plan.sha256
		},
		today,
		...forecast === void 0 ? {} : { run: {
			seed: forecast.seed,
			iterations: forecast.iterations,
			version: forecast.version,
			design: forecast.design,
			sha256: forecast.plan.sha256
		} },
		findings: [...first, ...found.findings].sort((a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity)),
		measures: found.measures
	};
}
exports.checkVerb = checkVerb;

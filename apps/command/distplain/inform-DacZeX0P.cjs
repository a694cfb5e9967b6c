const require_writeCalendar = require("./writeCalendar-5HfqGR7m.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_forecastBoth = require("./forecastBoth-CfcpvQXJ.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_putOut = require("./putOut-DRB7dvY8.cjs");
const require_program = require("./program.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
// src/text/informText.ts
var MONTHS = [
	"January",
	"February",
	"March",
	"April",
	"May",
	"June",
	"July",
	"August",
	"September",
	"October",
	"November",
	"December"
];
/** Columns of the date, indent and space behind it included. */
var DATE = 14;
/** Who has to be told of what, how and when, month by month. */
function informText(asGiven, forecast, page) {
	const { due, until, without } = require_program.plainTexts(asGiven);
	const level = Math.round(forecast.committed.confidence * 100);
	const head = `${due.length === 1 ? "1 occasion" : `${due.length} occasions`} to inform somebody until ${require_formatDate.formatDate(until, "long")}, the finish at ${level} %.`;
	const lines = [
		page.strong(require_program.plainText(forecast.plan.title)),
		"",
		...require_program.wrap(head, page.width)
	];
	let [month, day] = ["", ""];
	for (const each of due) {
		if (each.date.slice(0, 7) !== month) {
			month = each.date.slice(0, 7);
			lines.push("", page.strong(`${MONTHS[Number(month.slice(5)) - 1]} ${month.slice(0, 4)}`));
		}
		const date = each.date === day ? "" : require_formatDate.formatDate(each.date, "weekday").replace(/ \d{4}$/, "");
		day = each.date;
		const [first = "", ...rest] = require_program.wrap(sentence(each), page.width - DATE - 2);
		lines.push(`  ${date.padEnd(12)}${first}`, ...rest.map((line) => `${" ".repeat(DATE)}  ${line}`));
	}
	if (without.length > 0) {
		lines.push("", page.strong("Not said in the plan"));
		const names = {
			every: "how often",
			owner: "who sees to it",
			how: "by what means",
			what: "what they are told"
		};
		for (const { name, missing } of without) {
			const said = require_program.wrap(`${name}: ${missing.map((key) => names[key]).join(", ")}`, page.width - 4);
			lines.push(...said.map((line, k) => `${k === 0 ? "  " : "    "}${line}`));
		}
	}
	const rule = "A day without work on the plan's calendar is moved to the next one with work; milestones stay on the day committed to.";
	const { plan, seed } = forecast;
	const stamp = require_confidenceHead.explanationStamp({
		...forecast,
		seed: require_program.plainText(seed),
		sha256: plan.sha256
	});
	return `${[
		...lines,
		"",
		...require_program.wrap(rule, page.width),
		...require_program.wrap(stamp, page.width)
	].join("\n")}\n`;
}
function sentence({ stakeholder, owner, how, what, milestone, movedFrom }) {
	const about = milestone === void 0 ? "" : ` about ${milestone.name}`;
	const said = what === void 0 ? "" : `: ${what}`;
	const by = [how, owner?.name].filter((part) => part !== void 0).join(", ");
	const moved = movedFrom === void 0 ? "" : ` [from ${require_formatDate.formatDate(movedFrom, "weekday")}]`;
	return `${stakeholder.name}${about}${said}${by === "" ? "" : ` (${by})`}${moved}`;
}
// src/verbs/inform.ts
/** Who has to be told of what, how and when; with `--out` also as a calendar. */
async function informVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const [ownerId, out] = [values.text("owner"), values.text("out")];
	const options = require_engineOptions.engineOptions(values);
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const from = require_dateOption.dateOption(values, "from", "");
	const problems = [
		...values.problems,
		...today.problems,
		...from.problems
	];
	if (problems.length > 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const given = await require_givenPlan.givenPlan(call.subject ?? "-");
	if (given === void 0) return require_program.exitCodes.invalid;
	const { plan } = given;
	const owner = ownerId === void 0 ? void 0 : require_givenPlan.speakerOf(plan, "owner", ownerId);
	if (owner !== void 0 && require_givenPlan.isProblem(owner)) {
		require_program.printProblems([owner], given.name);
		return require_program.exitCodes.invalid;
	}
	const { forecasts, problems: found } = await require_forecastBoth.forecastEach([plan], options);
	await require_program.hearStops();
	if (found.length > 0) require_program.printProblems(found, given.name);
	const [forecast] = forecasts ?? [];
	if (forecast === void 0) return require_program.exitCodes.invalid;
	const list = require_writeCalendar.dueList(plan, forecast, {
		...owner !== void 0 && { owner: owner.id },
		...from.value !== "" && { from: from.value }
	});
	if (out !== void 0) {
		const name = `${plan.title}: communication${owner === void 0 ? "" : ` of ${owner.name}`}`;
		const events = require_writeCalendar.dueEvents(plan, list);
		const text = require_writeCalendar.writeCalendar(events, {
			name,
			stamp: `${today.value}T00:00:00Z`
		});
		const said = `${list.due.length} occasions in ${events.length} events`;
		const code = require_putOut.putOut(text, out, values.has("force"), said);
		if (code !== require_program.exitCodes.done) return code;
	}
	const { seed, iterations, version, design } = forecast;
	if (values.has("json")) require_program.printJson({
		plan: forecast.plan,
		seed,
		iterations,
		version,
		design,
		...list
	});
	else require_program.printAnswer(informText(list, forecast, require_program.pageOf(process.env, process.stdout)));
	return require_program.exitCodes.done;
}
exports.informVerb = informVerb;

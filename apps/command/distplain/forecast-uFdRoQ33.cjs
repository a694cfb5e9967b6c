const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_chartsWritten = require("./chartsWritten-SZDOadPC.cjs");
const require_computeForecast = require("./computeForecast-CDXLTVBe.cjs");
const require_program = require("./program.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_answer = require("./answer-D3_CtWr7.cjs");
const require_causes = require("./causes-DQqJ4n_i.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_moneyWords = require("./moneyWords-DDKtVBSe.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_scenarioOptions = require("./scenarioOptions-CCWzhipn.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_version = require("./version-BsDMLdbb.cjs");
// src/text/levels.ts
var NEIGHBOURS = [
	.5,
	.8,
	.9
];
function between(low, high) {
	return low === high ? low : `${low} to ${high}`;
}
function finishCells(row) {
	return [require_formatDate.formatDate(row.date, "weekday"), between(require_formatDate.formatDate(row.lowDate, "shortest"), require_formatDate.formatDate(row.highDate, "shortest"))];
}
function costCells(row) {
	const round = (value) => require_groupDigits.groupDigits(require_roundToLimits.roundToLimits(value, row.low, row.high));
	return [round(row.value), between(round(row.low), round(row.high))];
}
/**
* The neighbours of the committed level with their sampling limits, so that the level itself can be
* questioned. One table where it fits, else one for time and one for money.
*/
function levelLines(forecast, width) {
	const level = forecast.committed.confidence;
	const isWanted = ({ p }) => p === level || NEIGHBOURS.includes(p);
	const finishes = forecast.finish.percentiles.filter(isWanted);
	const costs = forecast.cost.percentiles.filter(isWanted);
	const label = (p) => `${require_formatPercent.formatPercent(p)}${p === level ? " *" : "  "}`;
	const first = {
		heading: "level  ",
		align: "right"
	};
	const time = [{
		heading: "finish by",
		align: "left"
	}, {
		heading: "sampling limits",
		align: "left"
	}];
	const money = [{
		heading: `cost, ${forecast.plan.currency}`,
		align: "right"
	}, {
		heading: "sampling limits",
		align: "left"
	}];
	const title = "Levels side by side (* committed to; limits at 95 %)";
	const timeRows = finishes.map((row) => [label(row.p), ...finishCells(row)]);
	if (!require_moneyWords.hasMoney(forecast)) return [title, ...require_program.table([first, ...time], timeRows)];
	const moneyRows = costs.map((row) => [label(row.p), ...costCells(row)]);
	const joined = timeRows.map((row, k) => [...row, ...moneyRows[k]?.slice(1) ?? []]);
	const wide = require_program.table([
		first,
		...time,
		...money
	], joined);
	if (wide.every((line) => line.length <= width)) return [title, ...wide];
	return [
		title,
		...require_program.table([first, ...time], timeRows),
		"",
		...require_program.table([first, ...money], moneyRows)
	];
}
// src/text/watched.ts
var SHOWN$1 = 8;
/** Tasks and milestones with a target date, the least certain first. */
function targetLines(forecast, width) {
	const rows = forecast.tasks.flatMap(({ name, target, finishDates }) => target === void 0 ? [] : [{
		name,
		target,
		finishDates
	}]).sort((a, b) => a.target.chance - b.target.chance || (a.name < b.name ? -1 : 1));
	if (rows.length === 0) return [];
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "target",
			align: "left"
		},
		{
			heading: "met in",
			align: "right"
		},
		{
			heading: "committed to",
			align: "left"
		}
	];
	const cells = rows.slice(0, SHOWN$1).map(({ name, target, finishDates }) => [
		name,
		require_formatDate.formatDate(target.date, "short"),
		require_formatPercent.formatPercent(target.chance),
		require_formatDate.formatDate(finishDates.committed, "short")
	]);
	const more = rows.length > SHOWN$1 ? [`  and ${rows.length - SHOWN$1} more, more certain than these`] : [];
	return [
		"Targets, least certain first",
		...require_program.table(columns, cells, width),
		...more
	];
}
/** The spans the plan watches, in calendar days. */
function intervalLines(forecast, width) {
	if (forecast.intervals.length === 0) return [];
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "half within",
			align: "right"
		},
		{
			heading: "8 in 10 lie in",
			align: "left"
		},
		{
			heading: "wanted",
			align: "left"
		}
	];
	const days = (value) => require_formatDays.formatDays(value, "");
	const cells = forecast.intervals.map(({ name, p10, p50, p90, atMost, chance }) => [
		name,
		days(p50),
		`${days(p10)} to ${days(p90)}`,
		atMost === void 0 || chance === void 0 ? "" : `at most ${days(atMost)}: ${require_formatPercent.formatPercent(chance)}`
	]);
	return ["Spans, in calendar days", ...require_program.table(columns, cells, width)];
}
// src/text/worth.ts
var SHOWN = 3;
var months = "January February March April May June July August September October November December".split(" ");
function monthName(month) {
	return `${months[Number(month.slice(5, 7)) - 1] ?? month} ${month.slice(0, 4)}`;
}
/**
* What surrounds the cost: what lateness costs, what the benefits are worth, when released money runs short, and
* which durations move together. Only what the plan speaks of; every figure is the forecast's own.
*/
function worthLines(forecast, width) {
	return [
		lateness(forecast),
		appraisal(forecast),
		funds(forecast),
		together(forecast)
	].filter((text) => text !== void 0).flatMap((text) => require_program.wrap(text, width, "  "));
}
/** A mean or percentile without limits of its own: two significant digits. */
function roundSum(value, forecast) {
	return require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), forecast.plan.currency);
}
function lateness(forecast) {
	const { lateness: late } = forecast;
	if (late === void 0) return void 0;
	const when = late.chance > 0 ? `, ${roundSum(late.meanWhenLate, forecast)} when it is late` : "";
	return `Late after ${require_formatDate.formatDate(late.after, "short")}: ${require_formatPercent.formatPercent(late.chance)}. Beside the total, being late costs ${roundSum(late.mean, forecast)} on average${when}.`;
}
function appraisal(forecast) {
	const { appraisal: worth } = forecast;
	if (worth === void 0) return void 0;
	const { net, payback } = worth;
	const paid = payback.p50 === void 0 ? `Half of the futures are not paid back within ${worth.years} years.` : `Half of the futures are paid back by ${require_formatDate.formatDate(payback.p50, "short")}.`;
	return `Worth over ${worth.years} years at ${Number((100 * worth.discountRate).toPrecision(4))} %, benefits discounted, cost not: ${roundSum(net.mean, forecast)} on average, 8 in 10 between ${roundSum(net.p10, forecast)} and ${roundSum(net.p90, forecast)}; above nought in ${require_formatPercent.formatPercent(worth.chancePositive)}. ${paid}`;
}
function funds(forecast) {
	const { firstShortfall, months: list } = forecast;
	if (list?.[0]?.released === void 0) return void 0;
	const level = require_formatPercent.formatPercent(forecast.committed.confidence);
	if (firstShortfall === void 0) return `Money released covers the cost of every month in at least ${level}.`;
	const covered = require_formatPercent.formatPercent(firstShortfall.chanceCovered);
	return `Money released first falls short of ${level} in ${monthName(firstShortfall.month)}: it covers ${covered}.`;
}
function together(forecast) {
	const stated = forecast.together ?? [];
	const pairs = stated.filter(({ correlation }) => correlation !== 0).sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation) || (a.tasks.join() < b.tasks.join() ? -1 : 1));
	if (stated.length === 0) return void 0;
	if (pairs.length === 0) return "No durations move together any more: of each pair in `correlations` one is settled.";
	const shown = pairs.slice(0, SHOWN).map(({ tasks, correlation }) => `${tasks.join(" and ")} ${correlation.toFixed(2)}`);
	const more = pairs.length > SHOWN ? `; and ${pairs.length - SHOWN} weaker` : "";
	return `Durations that move together (correlation): ${shown.join(", ")}${more}.`;
}
// src/text/forecastText.ts
function headLine(forecast, { width, strong }) {
	const run = forecast.iterations === 1 ? "1 future" : `${require_groupDigits.groupDigits(forecast.iterations)} futures`;
	const title = require_program.cut(forecast.plan.title, width - run.length - 2);
	const space = " ".repeat(Math.max(2, width - [...title].length - run.length));
	return strong(title) + space + run;
}
/**
* The forecast as a person reads it: the answer first, then what was asked, what the plan as written says, what
* drives it, the neighbouring levels, and how to get the same figures again. Every figure is the forecast's own.
*
* @param next  The plan as the caller named it, for the commands that come next, and whether it has responses to ask
* about.
* @param scenario  What was taken in and left out: it is said, and the commands that come next take it along.
* @returns text ending with a newline
*/
function forecastText(given, page, next, scenario = {}) {
	const forecast = require_program.plainTexts(given);
	const { planName } = next;
	const { width, strong } = page;
	const asked = require_answer.askedSentence(forecast);
	return `${[
		[headLine(forecast, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		[
			...require_program.wrap(require_answer.commitSentence(forecast), width).map(strong),
			...asked === void 0 ? [] : require_program.wrap(asked, width),
			...require_program.wrap(require_answer.asWrittenSentence(forecast), width),
			...require_program.wrap(require_answer.contingencySentence(forecast), width)
		],
		require_causes.driverLines(forecast, width),
		...forecast.tornado === void 0 ? [] : [require_causes.tornadoLines(forecast.tornado, {
			money: require_moneyWords.hasMoney(forecast),
			currency: forecast.plan.currency
		}, width)],
		levelLines(forecast, width),
		worthLines(forecast, width),
		targetLines(forecast, width),
		intervalLines(forecast, width),
		forecast.warnings.flatMap((warning) => require_program.wrap(`Warning: ${warning}`, width, "  ")),
		require_nextLines.nextLines([
			[`leeway explain ${planName}${require_scenarioOptions.scenarioOptions(scenario)}`, "why this much contingency"],
			...next.responses ? [[`leeway responses ${planName}${require_scenarioOptions.scenarioOptions(scenario)}`, "what each response costs and buys"]] : [],
			[`leeway check ${planName}`, "findings about the plan itself"]
		], width),
		require_program.wrap(require_answer.stampSentence(forecast), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/text/verifyText.ts
var number = new Intl.NumberFormat("en-GB");
/** Whether a saved forecast came out the same again, and where it first did not. */
function verifyText(answer, name, { width, strong }) {
	const { same, first, seed, iterations, version, savedVersion, compared, differing } = answer;
	const values = (count) => `${number.format(count)} ${count === 1 ? "value" : "values"}`;
	const run = `seed ${require_program.plainText(seed)} and ${number.format(iterations)} futures`;
	const lines = [];
	if (same) {
		lines.push(strong("Confirmed."), "");
		lines.push(...require_program.wrap(`Run again with ${run}, all ${values(compared)} of ${name} are the same.`, width));
	} else {
		lines.push(strong("Not confirmed."), "");
		const [saved, now] = [first?.saved ?? "not there", first?.now ?? "not there"].map(require_program.plainText);
		lines.push(...require_program.wrap(`First ${require_program.plainText(first?.path ?? "")} differs: saved ${saved}, run again ${now}.`, width), ...require_program.wrap(`Run with ${run}, ${values(differing)} of ${number.format(compared)} differ.`, width));
	}
	if (savedVersion !== version) {
		const said = `It was saved by leeway ${require_program.plainText(savedVersion)}; this is ${version}. Changes of results are listed in CHANGELOG.md.`;
		lines.push("", ...require_program.wrap(said, width));
	}
	return `${lines.join("\n")}\n`;
}
// src/verbs/verifySaved.ts
/** What may stand beside `--verify`: all else is said by the saved forecast. */
var BESIDE = [
	"verify",
	"json",
	"workers"
];
/** Differences that are listed in JSON: the first says it, the others show how far it goes. */
var LISTED = 100;
/**
* `forecast PLAN --verify FILE`: runs a saved forecast again. Code 0 where every figure is the same, 1 where one is not,
* 2 where the two cannot be compared.
*/
async function verifySaved(call, file, workers) {
	const beside = [...call.options.keys()].filter((name) => !BESIDE.includes(name));
	if (beside.length > 0) {
		const rule = "What a forecast was run with is said by the saved one.";
		require_program.printProblems(beside.map((name) => require_program.callProblem("option-clash", `--${name}`, rule, "Leave it out.")));
		return require_program.exitCodes.invalid;
	}
	if (file === "-" && (call.subject ?? "-") === "-") {
		require_program.printProblems([require_program.callProblem("option-clash", "- -", "Standard input cannot be the plan and the forecast.", "Name a file for one of them.")]);
		return require_program.exitCodes.invalid;
	}
	const document = await require_readDocument.readDocument(call.subject ?? "-");
	const kept = await require_readDocument.readDocument(file);
	for (const { problem, name } of [document, kept]) if (problem !== void 0) require_program.printProblems([problem], name);
	if (document.text === void 0 || kept.text === void 0) return require_program.exitCodes.invalid;
	const { plan, problems } = require_readPlan.readPlan(document.text);
	if (problems.length > 0) require_program.printProblems(problems, document.name);
	if (plan === void 0) return require_program.exitCodes.invalid;
	const read = require_engine.savedForecast(kept.text, plan);
	if (read.saved === void 0) {
		require_program.printProblems(read.problems, kept.name);
		return require_program.exitCodes.invalid;
	}
	const { saved } = read;
	const run = await require_computeForecast.computeForecast({
		text: document.text,
		options: saved.options,
		...workers === void 0 ? {} : { workers }
	});
	await require_program.hearStops();
	const { forecast } = run;
	if (forecast === void 0) {
		require_program.printProblems(run.problems, document.name);
		return require_program.exitCodes.invalid;
	}
	const { compared, differences } = require_engine.verifyForecast(saved, forecast);
	const [first] = differences;
	const answer = {
		same: first === void 0,
		plan: {
			title: plan.title,
			sha256: plan.sha256
		},
		seed: forecast.seed,
		iterations: forecast.iterations,
		design: forecast.design,
		version: require_version.version,
		savedVersion: saved.version,
		compared,
		differing: differences.length,
		...first === void 0 ? {} : { first },
		differences: differences.slice(0, LISTED)
	};
	if (call.options.has("json")) require_program.printJson(answer);
	else require_program.printAnswer(verifyText(answer, kept.name, require_program.pageOf(process.env, process.stdout)));
	return answer.same ? require_program.exitCodes.done : require_program.exitCodes.found;
}
// src/verbs/forecast.ts
function readOptions(values) {
	const charts = values.text("charts");
	const workers = values.count("workers", 64);
	return {
		engine: {
			...require_engineOptions.engineOptions(values),
			...require_engineOptions.given({ withinDays: values.days("within") }),
			...values.has("tornado") ? { tornado: true } : {}
		},
		json: values.has("json"),
		timing: values.has("timing"),
		...workers === void 0 ? {} : { workers },
		...charts === void 0 ? {} : { charts }
	};
}
/** Prints the forecast of one plan, as text or as JSON; with `--charts` also writes its pictures. */
async function forecastVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const wanted = readOptions(values);
	if (values.problems.length > 0) {
		require_program.printProblems(values.problems);
		return require_program.exitCodes.invalid;
	}
	const saved = values.text("verify");
	if (saved !== void 0) return verifySaved(call, saved, wanted.workers);
	const document = await require_readDocument.readDocument(call.subject ?? "-");
	if (document.text === void 0) {
		if (document.problem !== void 0) require_program.printProblems([document.problem], document.name);
		return require_program.exitCodes.invalid;
	}
	const result = await require_computeForecast.computeForecast({
		text: document.text,
		options: wanted.engine,
		...wanted.workers === void 0 ? {} : { workers: wanted.workers }
	});
	await require_program.hearStops();
	if (result.problems.length > 0) require_program.printProblems(result.problems, document.name);
	if (result.forecast === void 0) return require_program.exitCodes.invalid;
	if (!await require_chartsWritten.chartsWritten("forecast", result.forecast, wanted.charts)) return require_program.exitCodes.invalid;
	if (wanted.json) require_program.printJson({
		...require_scenarioLines.scenarioKey(wanted.engine),
		...result.forecast
	});
	else {
		const page = require_program.pageOf(process.env, process.stdout);
		const next = {
			planName: require_shellWord.shellWord(document.name),
			responses: result.responses
		};
		require_program.printAnswer(forecastText(result.forecast, page, next, wanted.engine));
	}
	if (wanted.timing) require_program.printNote(JSON.stringify(result.timing));
	return require_program.exitCodes.done;
}
exports.forecastText = forecastText;
exports.forecastVerb = forecastVerb;

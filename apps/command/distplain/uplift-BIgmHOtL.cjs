const require_engine = require("./engine-Bbth-FEh.cjs");
const require_program = require("./program.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_moneyOption = require("./moneyOption-CnXq0Uby.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_forecastBoth = require("./forecastBoth-CfcpvQXJ.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// ../../packages/core/src/estimating/uplift/bounds.ts
/**
* Source: Mott MacDonald (2002), "Review of Large Public Procurement in the UK", for HM Treasury, Table 2; the same
* values stand in HM Treasury, Supplementary Green Book Guidance: Optimism Bias, Table 1. Read. The sample is UK public
* procurement of about 1980 to 2000: fifty projects (number recalled from memory).
*/
var UPLIFT_BOUNDS = {
	"non-standard-buildings": {
		name: "Non-standard buildings",
		duration: [39, 2],
		capital: [51, 4]
	},
	"standard-buildings": {
		name: "Standard buildings",
		duration: [4, 1],
		capital: [24, 2]
	},
	"non-standard-civil-engineering": {
		name: "Non-standard civil engineering",
		duration: [25, 3],
		capital: [66, 6]
	},
	"standard-civil-engineering": {
		name: "Standard civil engineering",
		duration: [20, 1],
		capital: [44, 3]
	},
	"equipment-or-development": {
		name: "Equipment or development",
		duration: [54, 10],
		capital: [200, 10]
	},
	outsourcing: {
		name: "Outsourcing",
		running: [41, 0]
	}
};
/**
* Per cent on the capital cost by stage of appraisal, the third stage having the firmest design; no value where the
* table has none. Source: Transport Scotland, Scottish Transport Appraisal Guidance, Technical Database, Table 13.4
* (from Flyvbjerg 2004 and Mott MacDonald 2002). Read.
*/
var STAGE_UPLIFTS = {
	roads: {
		name: "Roads",
		capital: [
			44,
			15,
			3
		]
	},
	"fixed-links": {
		name: "Fixed links (bridges, tunnels)",
		capital: [
			66,
			23,
			6
		]
	},
	"building-projects": {
		name: "Building projects",
		capital: [
			51,
			void 0,
			4
		]
	},
	"it-projects": {
		name: "IT projects",
		capital: [
			200,
			void 0,
			10
		]
	}
};
// ../../packages/core/src/estimating/uplift/upliftedPlan.ts
/**
* The plan as written with per cent added to its working days and to its cost: the early estimate is what the uplift is
* for, so it is laid on the likely values and not on a forecast that holds ranges and risks already.
*
* @param percent     Of the working days, of the cost; absent: none.
* @param management  Money for managing the risks, added after the uplift (default 0).
*
* @returns Undefined where the plan as written runs past the calendar's end.
*/
function upliftedPlan(plan, percent, management = 0) {
	const model = require_engine.compile(plan);
	const { finish, workingDays, cost, beyond } = require_engine.planAsWritten(model);
	if (beyond >= 0) return void 0;
	const start = require_engine.dayNumber(plan.start);
	const dateOf = (moment) => require_engine.isoDate(start + Math.max(0, Math.ceil(moment - require_engine.tolerance) - 1));
	const longer = workingDays * (1 + (percent.duration ?? 0) / 100);
	const day = require_engine.finishMoment(model.planCalendar, longer);
	if (day > 36525) return void 0;
	return {
		asWritten: {
			date: dateOf(finish),
			workingDays,
			cost
		},
		...percent.duration !== void 0 && { finish: {
			date: dateOf(day),
			workingDays: longer
		} },
		...percent.cost !== void 0 && { cost: cost * (1 + percent.cost / 100) + management }
	};
}
// ../../packages/core/src/estimating/uplift/upliftFor.ts
/**
* The uplift of a project of one kind or of several: upper bounds weighted by the parts, then reduced by the part of the
* contributing risks that is shown to be managed: upper * (1 - mitigated). Nothing is rounded (the published example
* turns 4.08 into 4) and the lower bound is no floor, only told.
* Source: as `UPLIFT_BOUNDS`; combined projects and mitigation by the same guidance's worked examples, read.
*
* @param mitigated  0 to 1; 0 where nothing is shown to be managed.
*/
function upliftFor(mix, mitigated = 0) {
	const side = (key) => {
		let upper = 0;
		let lower = 0;
		for (const { kind, part } of mix) {
			const values = UPLIFT_BOUNDS[kind][key];
			if (values === void 0) return void 0;
			upper += part * values[0];
			lower += part * values[1];
		}
		const result = upper * (1 - mitigated);
		return {
			upper,
			lower,
			result,
			belowLower: result < lower - 1e-9
		};
	};
	const [duration, capital, running] = [
		side("duration"),
		side("capital"),
		side("running")
	];
	return {
		...duration && { duration },
		...capital && { capital },
		...running && { running }
	};
}
/** The uplift of a kind at a stage of appraisal, 1 to 3; undefined where the table has none. */
function stageUplift(kind, stage) {
	return STAGE_UPLIFTS[kind].capital[stage - 1];
}
// src/estimating/upliftOption.ts
var isKind = (word) => Object.hasOwn(UPLIFT_BOUNDS, word);
var isStageKind = (word) => Object.hasOwn(STAGE_UPLIFTS, word);
var ALL_KINDS = [...Object.keys(UPLIFT_BOUNDS), ...Object.keys(STAGE_UPLIFTS)];
/**
* Reads `--kind KIND` or `--kind KIND=PART` (repeated), `--mitigated` and `--stage`; everything that is wrong at once.
*
* @param mitigated  As it was written.
*/
function upliftOption(kinds, mitigated, stage) {
	const problems = [];
	const wrong = (word, rule, remedy) => problems.push(require_program.callProblem("option-value", word, rule, remedy));
	const share = mitigated === void 0 ? 0 : decimal(mitigated);
	if (!(share >= 0 && share <= 1)) wrong(`--mitigated ${mitigated}`, "It must be a part from 0 to 1.", "Write e.g. --mitigated 0.4.");
	if (kinds.length === 0) wrong("--kind", "What is built?", `Kinds: ${ALL_KINDS.join(", ")}.`);
	const parts = kinds.map((text) => {
		const [word = "", part] = text.split("=");
		return {
			word,
			part: part === void 0 ? 1 : decimal(part),
			text
		};
	});
	for (const { word, text } of parts) {
		if (isKind(word) || isStageKind(word)) continue;
		const near = require_program.nearest(word, ALL_KINDS);
		const remedy = near === void 0 ? `Kinds: ${ALL_KINDS.join(", ")}.` : `Did you mean ${near}?`;
		wrong(`--kind ${text}`, "There is no such kind.", remedy);
	}
	if (problems.length > 0) return { problems };
	if (parts.filter(({ word }) => isStageKind(word)).length > 0 || stage !== void 0) return atStage(parts, mitigated, stage);
	const sum = parts.reduce((total, { part }) => total + part, 0);
	if (parts.some(({ part }) => !(part > 0)) || Math.abs(sum - 1) > 1e-9) {
		wrong(kinds.map((kind) => `--kind ${kind}`).join(" "), "The parts must be above 0 and sum to 1.", "Write e.g. --kind standard-buildings=0.7.");
		return { problems };
	}
	const mix = parts.flatMap(({ word, part }) => isKind(word) ? [{
		kind: word,
		part
	}] : []);
	const uplift = upliftFor(mix, share);
	if (uplift.capital === void 0) {
		wrong(`--kind ${kinds.join(" --kind ")}`, "The table has no uplift of duration or capital cost for all of these kinds.", "It is of running costs; a plan has none of those.");
		return { problems };
	}
	return {
		asked: {
			table: "bounds",
			mix,
			mitigated: share,
			uplift
		},
		problems
	};
}
function atStage(parts, mitigated, stage) {
	const [only, second] = parts;
	const problem = (word, rule, remedy) => ({ problems: [require_program.callProblem("option-value", word, rule, remedy)] });
	const kind = only?.word ?? "";
	if (second !== void 0 || !isStageKind(kind)) return problem("--stage", "Uplifts by stage are of one kind.", `Kinds with stages: ${Object.keys(STAGE_UPLIFTS).join(", ")}.`);
	const at = [
		1,
		2,
		3
	].find((each) => String(each) === stage);
	if (at === void 0) return problem(`--stage${stage === void 0 ? "" : ` ${stage}`}`, "This kind needs its stage.", "Write --stage 1 (earliest), 2 or 3.");
	if (mitigated !== void 0) return problem("--mitigated", "Uplifts by stage hold what a later stage has settled already.", "Leave it out, or use a kind without stages.");
	const capital = stageUplift(kind, at);
	if (capital === void 0) return problem(`--stage ${stage}`, "The table has no value there.", "Use the stage before or after.");
	return {
		asked: {
			table: "stages",
			kind,
			stage: at,
			capital
		},
		problems: []
	};
}
function decimal(text) {
	return /^(\d+(\.\d+)?|\.\d+)$/.test(text) ? Number(text) : NaN;
}
// src/text/upliftText.ts
var percent = (value) => `${Number(value.toFixed(value < 10 ? 2 : 1))} %`;
/** An uplift for optimism beside the forecast, with what it is for and what it is not. */
function upliftText(given, page) {
	const answer = require_program.plainTexts(given);
	const { width, strong } = page;
	const { plan, seed, iterations, design, version } = answer;
	const stamp = {
		seed,
		iterations,
		design,
		version,
		sha256: plan.sha256
	};
	return `${[
		[require_confidenceHead.explanationHead(plan.title, stamp, page)],
		[...require_program.wrap(finding(answer), width).map(strong), ...require_program.wrap(upliftWords(answer), width)],
		comparison(answer, width),
		cautions(answer).flatMap((text) => require_program.wrap(`Note: ${text}`, width, "  ")),
		require_program.wrap(require_confidenceHead.explanationStamp(stamp), width)
	].map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
function finding({ uplifted, committed, hasMoney }) {
	const level = require_formatPercent.formatPercent(committed.confidence);
	const later = uplifted.finish === void 0 ? [] : [uplifted.finish.date === committed.date ? "on the same day as" : uplifted.finish.date > committed.date ? "later than" : "earlier than"].map((word) => `finishes ${word} the forecast at ${level}`);
	const dearer = uplifted.cost === void 0 || !hasMoney ? [] : [`costs ${uplifted.cost > committed.cost ? "more" : "less"} than ${later.length > 0 ? "it" : `the forecast at ${level}`}`];
	return `The plan as written with this uplift ${[...later, ...dearer].join(" and ")}.`;
}
function upliftWords({ asked, management, plan }) {
	if (asked.table === "stages") return `Uplift: ${percent(asked.capital)} of the cost, ${STAGE_UPLIFTS[asked.kind].name}, stage ${asked.stage}. The table has none for duration.`;
	const { duration, capital } = asked.uplift;
	const kinds = asked.mix.map(({ kind, part }) => `${UPLIFT_BOUNDS[kind].name}${asked.mix.length > 1 ? ` ${require_formatPercent.formatPercent(part)}` : ""}`);
	const side = (what, value) => value === void 0 ? [] : [`${percent(value.result)} of the ${what}${asked.mitigated > 0 ? ` (upper bound ${percent(value.upper)}, ${require_formatPercent.formatPercent(asked.mitigated)} of it managed)` : ""}`];
	const paid = management > 0 ? `; ${require_formatMoney.formatMoney(management, plan.currency)} for managing it added` : "";
	return `Uplift: ${[...side("duration", duration), ...side("cost", capital)].join(", ")}; ${kinds.join(", ")}${paid}.`;
}
function comparison(answer, width) {
	const { uplifted, upper, committed, plan, hasMoney, asked } = answer;
	const money = (value) => value === void 0 ? "no uplift" : require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 4), plan.currency);
	const date = (iso) => iso === void 0 ? "no uplift" : require_formatDate.formatDate(iso, "weekday");
	const row = (name, finish, cost) => [
		name,
		finish,
		...hasMoney ? [cost] : []
	];
	const cells = ({ finish, cost }) => [date(finish?.date), money(cost)];
	const mitigated = asked.table === "bounds" && asked.mitigated > 0;
	const sum = require_roundToLimits.roundToLimits(committed.cost, committed.costLow, committed.costHigh);
	return require_program.table([
		{
			heading: "",
			align: "left"
		},
		{
			heading: "finish",
			align: "left"
		},
		...hasMoney ? [{
			heading: "cost",
			align: "right"
		}] : []
	], [
		row("plan as written", date(uplifted.asWritten.date), money(uplifted.asWritten.cost)),
		...upper === void 0 ? [] : [row("with the upper bound", ...cells(upper))],
		row(mitigated ? "with what is left of it" : "with the uplift", ...cells(uplifted)),
		row(`forecast at ${require_formatPercent.formatPercent(committed.confidence)}`, date(committed.date), require_formatMoney.formatMoney(sum, plan.currency))
	], width);
}
function cautions({ asked }) {
	const bounds = asked.table === "bounds";
	const low = bounds && [asked.uplift.duration, asked.uplift.capital].some((side) => side?.belowLower === true);
	return [
		bounds ? "Bounds: Mott MacDonald (2002), Review of Large Public Procurement in the UK, Table 2, as in HM Treasury's supplementary Green Book guidance on optimism bias. UK public procurement; no law of nature for other work." : "Uplifts by stage: Scottish Transport Appraisal Guidance, Technical Database, Table 13.4.",
		"It is for early estimates without priced risks; it begins from evidence and falls as risks are identified and costed (Green Book 5.43 to 5.46). It is not contingency.",
		"Take one or the other: the forecast holds ranges and risks already, and an uplift on top of its contingency counts the same thing twice. Where the forecast is far below the uplift, ask which risks it does not hold.",
		"All cost of the plan is taken as capital cost. Your own organisation's rules for appraisal and funding come first.",
		...low ? ["What is left is below the lower bound, which even well managed projects needed: say what evidence there is."] : []
	];
}
// src/verbs/uplift.ts
/** Shows what an uplift for optimism would make of the plan as written, beside what the forecast says. */
function upliftVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	const { asked, problems } = upliftOption(call.options.get("kind") ?? [], values.text("mitigated"), values.text("stage"));
	const management = require_moneyOption.moneyOption(values, "management");
	return require_answerVerb.answerVerb(call, values, {
		options,
		problems: [...problems, ...management.problems],
		rowsAsTasks: (plan) => plan.tasks.length + 8,
		async ask(plan) {
			if (asked === void 0) return { problems: [] };
			const { forecasts, problems: found } = await require_forecastBoth.forecastEach([plan], options);
			const [forecast] = forecasts ?? [];
			if (forecast === void 0) return { problems: found };
			const sum = management.value ?? 0;
			const uplifted = withUplift(plan, asked, "result", sum);
			if (uplifted === void 0) return { problems: [require_program.callProblem("beyond-calendar", "--kind", "With the uplift it would run past the end of the calendar.", "Shorten the plan.")] };
			const { seed, iterations, version, design, committed, asWritten } = forecast;
			const upper = asked.table === "bounds" && asked.mitigated > 0 ? withUplift(plan, asked, "upper", 0) : void 0;
			return {
				answer: {
					plan: forecast.plan,
					seed,
					iterations,
					version,
					design,
					asked,
					management: sum,
					uplifted,
					...upper && { upper },
					committed,
					asWritten,
					hasMoney: forecast.cost.sd > 0 || forecast.cost.mean !== 0
				},
				problems: found
			};
		},
		text: (answer, page) => upliftText(answer, page)
	});
}
function withUplift(plan, asked, side, management) {
	if (asked.table === "stages") return upliftedPlan(plan, { cost: asked.capital }, management);
	const { duration, capital } = asked.uplift;
	return upliftedPlan(plan, {
		...duration && { duration: duration[side] },
		...capital && { cost: capital[side] }
	}, management);
}
exports.upliftVerb = upliftVerb;

const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_program = require("./program.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_formatChance = require("./formatChance-DsebNIGf.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_holdsWords = require("./holdsWords-DjRJP_ZB.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_roundTogether = require("./roundTogether-DWmzPQjd.cjs");
const require_contingencyLeft = require("./contingencyLeft-o-pRVmRh.cjs");
const require_applyScenario = require("./applyScenario-C_221t4T.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_compareInParallel = require("./compareInParallel-CPHQl1pV.cjs");
const require_explainInParallel = require("./explainInParallel-BCf8X8Zn.cjs");
const require_forecastInParallel = require("./forecastInParallel-C4KNg4av.cjs");
const require_decideInParallel = require("./decideInParallel-CI1FraC6.cjs");
const require_answerAside = require("./answerAside-BsrttFoz.cjs");
const require_threadsOf = require("./threadsOf-af1Xi_1i.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_whyNotWritten = require("./whyNotWritten-C19bLT-P.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// ../../packages/core/src/brief/parts/assumptions.ts
/**
* What the plan counts on, the most load-bearing first: by how far the commitment would move were it wrong, as a part
* of the contingency in days or in money, whichever is more. Closed ones are left out.
*/
function briefAssumptions(plan, { assumptions, forecast }) {
	const someone = require_contingencyLeft.someoneOf(plan);
	const bars = new Map(assumptions.map((bar) => [bar.id, bar]));
	const { contingency } = forecast;
	const part = (amount, whole) => Math.abs(amount) / Math.max(1e-9, Math.abs(whole));
	const reach = ({ ifWrong }) => ifWrong === void 0 ? 0 : Math.max(Math.abs(ifWrong.workingDays) < 1e-9 ? 0 : part(ifWrong.workingDays, contingency.workingDays), Math.abs(ifWrong.money) < 1e-6 ? 0 : part(ifWrong.money, contingency.money));
	return plan.assumptions.filter(({ status }) => status !== "closed").map((one) => {
		const owner = someone(one.owner);
		const occurred = one.status === "occurred";
		return {
			id: one.id,
			statement: one.name,
			chanceWrong: one.probability,
			...owner === void 0 ? {} : { owner },
			...one.reviewBy === void 0 ? {} : { reviewBy: one.reviewBy },
			...one.signpost === void 0 ? {} : { signpost: one.signpost },
			...one.tripped === void 0 ? {} : { tripped: one.tripped },
			occurred,
			...occurred ? {} : { ifWrong: bars.get(one.id)?.high ?? {
				workingDays: 0,
				money: 0
			} }
		};
	}).sort((a, b) => Number(b.occurred) - Number(a.occurred) || Number(b.tripped !== void 0) - Number(a.tripped !== void 0) || reach(b) - reach(a) || (a.id < b.id ? -1 : 1));
}
// ../../packages/core/src/brief/parts/commitment.ts
/** Date and sum at the level with their limits, what was asked for, the plan as written, and what lies between. */
function briefCommitment(plan, { forecast, confidence }) {
	const { commitment } = plan;
	const { finishBy, budget } = forecast.asked;
	const [date, sum] = [forecast.finish.sd === 0, forecast.cost.sd === 0];
	const holder = require_contingencyLeft.someoneOf(plan)(commitment.holder);
	return {
		committed: forecast.committed,
		...date || sum ? { certain: {
			date,
			sum
		} } : {},
		asWritten: {
			...forecast.asWritten,
			finishChance: forecast.finish.asWrittenChance,
			costChance: forecast.cost.asWrittenChance
		},
		asked: {
			...finishBy === void 0 ? {} : { finishBy },
			...budget === void 0 ? {} : { budget }
		},
		chance: forecast.chance,
		contingency: forecast.contingency,
		...forecast.people === void 0 ? {} : { people: forecast.people },
		...holder === void 0 ? {} : { holder },
		...commitment.releaseRule === void 0 ? {} : { releaseRule: commitment.releaseRule },
		...commitment.reserve === void 0 ? {} : { reserve: commitment.reserve },
		together: confidence.joint.equal,
		...forecast.firstShortfall === void 0 ? {} : { firstShortfall: forecast.firstShortfall }
	};
}
// ../../packages/core/src/brief/parts/decision.ts
/** What is asked: the plan's own sentence when it has one, and in any case the commitment it amounts to. */
function briefDecision(plan, { committed }) {
	const { decision, commitment } = plan;
	const task = plan.tasks.find(({ id }) => id === commitment.finishOf);
	return {
		...decision?.ask === void 0 ? {} : { ask: decision.ask },
		...task === void 0 ? {} : { finishOf: {
			id: task.id,
			name: task.name
		} },
		date: committed.date,
		cost: committed.cost,
		...decision?.by === void 0 ? {} : { by: decision.by }
	};
}
// ../../packages/core/src/brief/parts/drivers.ts
var shown$2 = 5;
/**
* The five largest named shares of the contingency, by the larger of their parts of the days and of the money, and
* everything else as one row, so that the rows add up to the whole.
*/
function briefDrivers({ shares, contingency }, spends) {
	const part = (amount, whole) => Math.abs(whole) < 1e-9 ? 0 : Math.abs(amount / whole);
	const size = (share) => Math.max(part(share.workingDays, contingency.workingDays), spends ? part(share.money, contingency.money) : 0);
	const named = shares.filter((share) => share.gathers === void 0 && size(share) > 1e-9).sort((a, b) => size(b) - size(a) || (a.id < b.id ? -1 : 1)).slice(0, shown$2).sort((a, b) => b.workingDays - a.workingDays || b.money - a.money || (a.id < b.id ? -1 : 1));
	const rest = shares.filter((share) => !named.includes(share));
	const causes = rest.reduce((sum, share) => sum + (share.gathers?.length ?? 1), 0);
	const most = (of) => Math.max(0, ...shares.map(({ error }) => of(error)));
	return {
		rows: named.map(({ id, name, kind, workingDays, money }) => ({
			id,
			name,
			kind,
			workingDays,
			money
		})),
		...rest.length === 0 ? {} : { rest: {
			causes,
			...sum(rest)
		} },
		whole: contingency,
		error: {
			workingDays: most((error) => error.workingDays),
			money: most((error) => error.money)
		}
	};
}
function sum(effects) {
	return effects.reduce((so, { workingDays, money }) => ({
		workingDays: so.workingDays + workingDays,
		money: so.money + money
	}), {
		workingDays: 0,
		money: 0
	});
}
// ../../packages/core/src/brief/parts/objections.ts
/** Objections with the names of those who raised them; open ones apart. In order of their dates, then ids. */
function briefObjections(plan) {
	const someone = require_contingencyLeft.someoneOf(plan);
	const told = ({ who, ...rest }) => {
		const found = someone(who);
		return found === void 0 ? rest : {
			...rest,
			who: found
		};
	};
	const all = [...plan.objections].sort((a, b) => compare(a.date ?? "", b.date ?? "") || compare(a.id, b.id));
	return {
		open: all.filter(({ state }) => state === "open").map(told),
		settled: all.filter(({ state }) => state !== "open").map(told)
	};
}
function compare(a, b) {
	return a < b ? -1 : a > b ? 1 : 0;
}
// ../../packages/core/src/brief/parts/outcome.ts
/**
* Who decides, and where each of them stands: those the plan lists under `approvals`, the last entry of each counting;
* where it lists none, the stakeholders who may approve money.
*/
function briefOutcome(plan, { committed }) {
	const someone = require_contingencyLeft.someoneOf(plan);
	const stakeholders = new Map(plan.stakeholders.map((each) => [each.id, each]));
	const last = new Map(plan.approvals.map((approval) => [approval.who, approval]));
	const limited = plan.stakeholders.filter(({ approvesUpTo }) => approvesUpTo !== void 0);
	return { approvers: (last.size > 0 ? [...last.values()] : limited.map(({ id }) => ({
		who: id,
		decision: "pending"
	}))).map(({ who, decision, date, conditions, plan: hash }) => {
		return {
			...someone(who) ?? {
				id: who,
				name: who
			},
			decision,
			...date === void 0 ? {} : { date },
			...conditions === void 0 ? {} : { conditions },
			...decision === "pending" || hash === void 0 ? {} : { current: hash === plan.approvalSha256 || hash === plan.sha256 },
			...limitOf(stakeholders.get(who), committed.cost)
		};
	}) };
}
function limitOf(stakeholder, sum) {
	const limit = stakeholder?.approvesUpTo;
	return limit === void 0 ? {} : {
		approvesUpTo: limit,
		covers: sum <= limit
	};
}
// ../../packages/core/src/brief/parts/recommendation.ts
/** Neighbours of the level committed to that are shown as alternatives. */
var neighbours = [.5, .9];
/**
* What is recommended and what else there is. Doing nothing forgoes the benefits the plan states: they are told as
* written, in full (no ramp), so that the figures are the plan's own.
*/
function briefRecommendation(plan, forecast) {
	const { decision } = plan;
	const { confidence } = forecast.committed;
	const benefits = [...plan.benefits].sort((a, b) => a.id < b.id ? -1 : 1).map(forgone);
	const monthly = plan.benefits.flatMap((benefit) => {
		const sum = moneyAMonth(benefit);
		return sum === void 0 ? [] : [sum];
	});
	return {
		...decision?.recommend === void 0 ? {} : { recommend: decision.recommend },
		doNothing: {
			...decision?.doNothing === void 0 ? {} : { text: decision.doNothing },
			...monthly.length === 0 ? {} : { perMonth: monthly.reduce((sum, each) => sum + each, 0) },
			benefits
		},
		alternatives: (decision?.alternatives ?? []).map(({ name, text }) => text === void 0 ? { name } : {
			name,
			text
		}),
		levels: neighbours.filter((p) => p !== confidence).flatMap((p) => {
			const finish = forecast.finish.percentiles.find((each) => each.p === p);
			const cost = forecast.cost.percentiles.find((each) => each.p === p);
			return finish === void 0 || cost === void 0 ? [] : [{
				p,
				date: finish.date,
				cost: cost.value
			}];
		})
	};
}
function forgone(benefit) {
	const { id, name, amount, quantity, unit, per } = benefit;
	const stated = amount ?? quantity;
	return {
		id,
		name,
		amount: stated === void 0 ? 0 : require_engine.asWrittenValue(stated),
		...unit === void 0 ? {} : { unit },
		per,
		money: amount !== void 0
	};
}
/** As written, in money a month in full, as the plan format counts months; undefined where it is not worth money. */
function moneyAMonth(benefit) {
	const { amount, quantity, worth, per } = benefit;
	if (per === "once") return void 0;
	const stated = amount ?? (worth === void 0 ? void 0 : quantity);
	if (stated === void 0) return void 0;
	const times = {
		day: 365.25 / 12,
		week: 365.25 / 84,
		month: 1,
		year: 1 / 12
	}[per];
	return require_engine.asWrittenValue(stated) * (amount === void 0 ? worth ?? 0 : 1) * times;
}
// ../../packages/core/src/brief/parts/responses.ts
/** Responses bought, worth buying (they save more on average than they cost) and not, each with who sees to it. */
function briefResponses(plan, { responses }) {
	const someone = require_contingencyLeft.someoneOf(plan);
	const stated = new Map([...plan.risks, ...plan.assumptions].flatMap((entry) => entry.responses).map((response) => [response.id, response]));
	const told = (worth) => {
		const response = stated.get(worth.id);
		const owner = someone(response?.owner);
		return {
			...worth,
			...owner === void 0 ? {} : { owner },
			...response?.due === void 0 ? {} : { due: response.due }
		};
	};
	const all = responses.map(told);
	const open = all.filter(({ adopted }) => !adopted);
	return {
		adopted: all.filter(({ adopted }) => adopted),
		worthBuying: open.filter(pays),
		others: open.filter((each) => !pays(each)),
		latenessCounted: all.some(({ given }) => given.latenessAvoided !== void 0)
	};
}
/** Saves more than it costs, and by more than the 95 % sampling limits of the difference. */
function pays({ given }) {
	return given.netWorth > 1.96 * given.netWorthError;
}
// ../../packages/core/src/brief/parts/scope.ts
/** Where the work stops: in, can be left out, out. */
function briefScope({ purpose }) {
	return {
		in: purpose.scopeIn.filter((item) => !item.optional).map(({ id, name }) => ({
			id,
			name
		})),
		optional: purpose.scopeIn.filter((item) => item.optional).map(({ id, name, lost }) => lost === void 0 ? {
			id,
			name
		} : {
			id,
			name,
			lost
		}),
		out: purpose.scopeOut,
		constraints: purpose.constraints
	};
}
// ../../packages/core/src/brief/parts/triggers.ts
/** Below the level by this much, the promise is no longer the one that was signed. Common practice, no source. */
var slack = .1;
/** So many signposts are proposed. */
var watched = 3;
/**
* When the commitment comes back to its approvers: what the plan has agreed on, else what is proposed, and marked so:
* the chance of date or sum falls ten points below the level, contingency no longer covers what is left, a signpost of
* one of the most load-bearing assumptions is seen.
*/
function briefTriggers(plan, { confidence, spends, assumptions }) {
	if (plan.returnTriggers.length > 0) return plan.returnTriggers.map(({ signpost, note: _note, was: _was, ...rest }) => {
		const trigger = {
			...rest,
			proposed: false
		};
		return signpost === void 0 ? trigger : {
			...trigger,
			signpost: signpostOf(signpost, plan)
		};
	});
	const least = Math.max(.05, Math.round((confidence - slack) * 100) / 100);
	const bearing = assumptions.filter(({ signpost, ifWrong }) => signpost !== void 0 && moves(ifWrong)).slice(0, watched);
	return [
		{
			proposed: true,
			chanceOfDateBelow: least
		},
		...spends ? [{
			proposed: true,
			chanceOfBudgetBelow: least
		}] : [],
		{
			proposed: true,
			contingencyCoverBelow: 1
		},
		...bearing.map(({ id }) => ({
			proposed: true,
			signpost: signpostOf(id, plan)
		}))
	];
}
function moves(effect) {
	return effect !== void 0 && (Math.abs(effect.workingDays) > 1e-9 || Math.abs(effect.money) > 1e-6);
}
function signpostOf(id, plan) {
	const found = plan.assumptions.find((each) => each.id === id);
	return {
		assumption: id,
		statement: found?.name ?? id,
		...found?.signpost === void 0 ? {} : { text: found.signpost }
	};
}
// ../../packages/core/src/brief/parts/worth.ts
/** Benefit against cost, and what lateness costs: only what the plan states. */
function briefWorth(plan, { forecast, confidence }) {
	const { appraisal, lateness } = forecast;
	const valued = plan.benefits.filter(({ amount, worth }) => (amount ?? worth) !== void 0).length;
	const rates = confidence.lateness;
	const { benefits: _, ...net } = appraisal ?? { benefits: [] };
	return {
		...appraisal === void 0 || valued === 0 ? {} : { appraisal: net },
		benefits: {
			stated: plan.benefits.length,
			valued
		},
		...lateness === void 0 || rates === void 0 ? {} : { lateness: {
			...lateness,
			...rates
		} }
	};
}
// ../../packages/core/src/brief/traceBrief.ts
/** Parts of a brief that hold figures of the run; the rest is what the plan says. */
var PARTS = [
	"decision",
	"recommendation",
	"commitment",
	"worth",
	"drivers",
	"responses",
	"assumptions"
];
/**
* Where each figure of a brief comes from: the answer of the same run that holds this very value, and its place there (a
* JSON pointer, RFC 6901). What no answer holds is stated by the plan, or added up by the brief itself from figures
* beside it. Nothing is rounded, so a figure that was computed twice would show.
*/
function traceBrief(brief, answers) {
	const sources = [
		["forecast", leaves(answers.forecast)],
		["explain", leaves(answers.explanation)],
		["responses", leaves(answers.responses)],
		["confidence", leaves(answers.confidence)],
		["assumptions", leaves(answers.assumptions)]
	];
	return PARTS.flatMap((part) => leaves(brief[part], [part]).map(({ keys, value }) => {
		const figure = pointer(keys);
		const own = OWN.find(([match]) => match.test(figure));
		if (own !== void 0) return {
			figure,
			value,
			from: own[1]
		};
		let best;
		for (const [from, list] of part === "assumptions" ? sources.slice(-1) : sources.slice(0, -1)) for (const leaf of list) {
			if (leaf.value !== value) continue;
			const fit = commonEnd(leaf.keys, keys);
			if (fit > (best?.fit ?? 0)) best = {
				from,
				at: pointer(leaf.keys),
				fit
			};
		}
		best ??= byValue(sources, value);
		if (best === void 0) return {
			figure,
			value,
			from: "brief"
		};
		const { from, at } = best;
		return {
			figure,
			value,
			from,
			at: from === "assumptions" ? ofAssumption(at, answers) : at
		};
	}));
}
/** A figure under another name: only a value with a fraction, which no two figures have by chance. */
function byValue(sources, value) {
	if (typeof value === "string" || Number.isInteger(value)) return void 0;
	for (const [from, list] of sources) {
		const leaf = list.find((one) => one.value === value);
		if (leaf !== void 0) return {
			from,
			at: pointer(leaf.keys),
			fit: 0
		};
	}
}
/** As the verb `assumptions` prints it, the id in place of the position: the bars here are in an order of their own. */
function ofAssumption(at, { assumptions }) {
	const [, place, , part] = /^\/(\d+)\/(low|high)\/(\w+)$/.exec(at) ?? [];
	const id = assumptions[Number(place)]?.id;
	return id === void 0 || part === void 0 ? at : `/assumptions/${id}/ifFalse/moved/${part}`;
}
/** What is the plan's own word, or added up here, whatever value it happens to have. */
var OWN = [
	[/^\/decision\/by$/, "plan"],
	[/^\/recommendation\/doNothing\/(perMonth|benefits\/\d+\/amount)$/, "brief"],
	[/^\/commitment\/(reserve|asked\/.*)$/, "plan"],
	[/^\/worth\/(benefits\/.*|lateness\/(perWeek|once|after))$/, "plan"],
	[/^\/drivers\/rest\//, "brief"],
	[/^\/responses\/.*\/due$/, "plan"],
	[/^\/assumptions\/\d+\/(chanceWrong|reviewBy|tripped)$/, "plan"]
];
function leaves(node, keys = []) {
	if (typeof node === "number") return [{
		keys,
		value: node
	}];
	if (typeof node === "string") return /^\d{4}-\d\d(-\d\d)?$/.test(node) ? [{
		keys,
		value: node
	}] : [];
	if (typeof node !== "object" || node === null) return [];
	return Object.entries(node).flatMap(([key, item]) => leaves(item, [...keys, key]));
}
/** Keys that agree from the end; positions in lists say nothing, as lists are cut and sorted anew. */
function commonEnd(a, b) {
	const [x, y] = [a, b].map((keys) => keys.map((key) => /^\d+$/.test(key) ? "#" : key));
	if (x === void 0 || y === void 0) return 0;
	let same = 0;
	while (same < Math.min(x.length, y.length) && x.at(-1 - same) === y.at(-1 - same)) same++;
	return same;
}
function pointer(keys) {
	return keys.map((key) => `/${key.replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}
// ../../packages/core/src/brief/briefOf.ts
/**
* Puts a brief together from results of one run. Reads, and computes nothing but sums of what it leaves out.
*
* @param today     The day it is written on.
* @param scenario  What was taken in and left out of the run.
*/
function briefOf(source, answers, { today, scenario = {} }) {
	const { plan } = require_applyScenario.applyScenario(source, scenario);
	const { forecast, explanation } = answers;
	const { cost, asked } = forecast;
	const spends = cost.sd > 0 || cost.mean !== 0 || asked.budget !== void 0;
	const assumptions = briefAssumptions(plan, answers);
	const brief = {
		plan: {
			title: plan.title,
			currency: plan.currency,
			start: plan.start,
			...plan.note === void 0 ? {} : { note: plan.note },
			...plan.statusDate === void 0 ? {} : { statusDate: plan.statusDate },
			approvalSha256: plan.approvalSha256
		},
		today,
		stamp: explanation.stamp,
		confidence: forecast.committed.confidence,
		spends,
		decision: briefDecision(plan, forecast),
		recommendation: briefRecommendation(plan, forecast),
		commitment: briefCommitment(plan, answers),
		worth: briefWorth(plan, answers),
		scope: briefScope(plan),
		drivers: briefDrivers(explanation, spends),
		responses: briefResponses(plan, answers.responses),
		assumptions,
		objections: briefObjections(plan),
		triggers: briefTriggers(plan, {
			confidence: forecast.committed.confidence,
			spends,
			assumptions
		}),
		outcome: briefOutcome(plan, forecast),
		warnings: forecast.warnings,
		...scenario.with === void 0 && scenario.without === void 0 ? {} : { scenario: {
			...scenario.with === void 0 ? {} : { with: [...scenario.with] },
			...scenario.without === void 0 ? {} : { without: [...scenario.without] }
		} }
	};
	return {
		...brief,
		trace: traceBrief(brief, answers)
	};
}
// ../../packages/core/src/brief/briefParts.ts
/** Which stretch of the whole work each question of a brief is, roughly, 0 to 1. */
var briefParts = {
	forecast: {
		from: 0,
		to: .08
	},
	explain: {
		from: .08,
		to: .72
	},
	responses: {
		from: .72,
		to: .92
	},
	confidence: {
		from: .92,
		to: .96
	},
	assumptions: {
		from: .96,
		to: 1
	}
};
// ../../packages/core/src/brief/interests.ts
/**
* Whose eye falls on what. Common practice, no source: change it here, and nowhere else. A rule applies when one of its
* words begins a word of the approver's role, interest or note; rules are taken in the order in which their words come
* up there, interest first.
*/
var interestRules = [
	{
		words: [
			"financ",
			"money",
			"budget",
			"treasur",
			"cost",
			"cash",
			"audit",
			"reserve",
			"price"
		],
		questions: [
			"afford",
			"cut",
			"level",
			"benefit",
			"slip",
			"responses"
		]
	},
	{
		words: [
			"safe",
			"clinic",
			"medic",
			"patient",
			"health",
			"inspect",
			"quality",
			"test",
			"radiat"
		],
		questions: [
			"scope",
			"drivers",
			"assumptions",
			"earlier",
			"slip"
		]
	},
	{
		words: [
			"grant",
			"donor",
			"condition",
			"fund",
			"lender",
			"regulat",
			"authority",
			"complian",
			"contract"
		],
		questions: [
			"conditions",
			"afford",
			"assumptions",
			"slip",
			"back"
		]
	},
	{
		words: [
			"board",
			"chair",
			"sponsor",
			"reputation",
			"name",
			"director",
			"public",
			"announce",
			"date"
		],
		questions: [
			"level",
			"gap",
			"earlier",
			"slip",
			"benefit",
			"back"
		]
	},
	{
		words: [
			"oper",
			"staff",
			"people",
			"team",
			"union",
			"volunteer",
			"crew",
			"workforce",
			"roster"
		],
		questions: [
			"people",
			"drivers",
			"estimates",
			"earlier"
		]
	},
	{
		words: [
			"user",
			"customer",
			"rider",
			"member",
			"passenger",
			"visitor",
			"access",
			"communit",
			"neighbour"
		],
		questions: [
			"scope",
			"slip",
			"conditions",
			"assumptions"
		]
	},
	{
		words: [
			"engineer",
			"technic",
			"architect",
			"supplier",
			"build",
			"design",
			"deliver"
		],
		questions: [
			"estimates",
			"drivers",
			"gap",
			"people"
		]
	}
];
/** Asked by everybody, in this order, where nothing has brought them forward. */
var everybody = [
	"level",
	"gap",
	"drivers",
	"earlier",
	"cut",
	"responses",
	"slip",
	"afford",
	"estimates",
	"before"
];
// ../../packages/core/src/brief/questionsFor.ts
/**
* The questions of one approver, likeliest first: what is asked of them, what changed since they last saw it, then what
* their interest, their note and their role bring forward, then what everybody asks, and at last what brings the plan
* back to them. Each question once.
*
* @param answerable  Whether the plan and its results hold an answer; others are left out.
*/
function questionsFor(asker, answerable) {
	const found = /* @__PURE__ */ new Map();
	const add = (key, because) => {
		if (found.has(key) || !answerable(key)) return;
		found.set(key, because === void 0 ? { key } : {
			key,
			because
		});
	};
	add("ask");
	add("changed");
	for (const text of [
		asker.interest,
		asker.looksFor,
		asker.role
	]) for (const { word, questions } of rulesOf(text)) for (const key of questions) add(key, word);
	for (const key of everybody) add(key);
	const back = found.get("back") ?? { key: "back" };
	found.delete("back");
	return [...found.values(), back];
}
/** Rules that a text brings up, in the order of the words that do, each with its word as written. */
function rulesOf(text) {
	if (text === void 0) return [];
	const words = text.slice(0, 2e3).match(/\p{L}+/gu) ?? [];
	const taken = /* @__PURE__ */ new Set();
	return words.flatMap((word) => {
		const at = interestRules.findIndex((rule, i) => !taken.has(i) && begins(rule.words, word));
		if (at < 0) return [];
		taken.add(at);
		return [{
			word,
			questions: interestRules[at]?.questions ?? []
		}];
	});
}
function begins(beginnings, word) {
	const small = word.toLowerCase();
	return beginnings.some((beginning) => small.startsWith(beginning));
}
// ../../packages/core/src/brief/preBriefOf.ts
/**
* The pre-brief of one approver: who it is for, the questions this person is likely to ask, what they have objected, and
* the figures of the answers.
*
* @param who  Id of a stakeholder, a person or an approver of the plan.
*/
function preBriefOf(plan, brief, answers, who, extras = {}) {
	const { even, comparison } = extras;
	const stakeholder = plan.stakeholders.find(({ id }) => id === who);
	const looksFor = plan.approvals.findLast((approval) => approval.who === who)?.note ?? stakeholder?.note;
	const approver = brief.outcome.approvers.find(({ id }) => id === who) ?? otherwise(plan, brief, who);
	const asker = {
		...approver.role === void 0 ? {} : { role: approver.role },
		...stakeholder?.interest === void 0 ? {} : { interest: stakeholder.interest },
		...looksFor === void 0 ? {} : { looksFor }
	};
	const { interest } = asker;
	const { stop, steps } = answers.confidence;
	const figures = {
		steps,
		...stop === void 0 ? {} : { stop },
		walk: answers.explanation.walk,
		...even === void 0 ? {} : { even: {
			answer: even.answer,
			ways: even.ways,
			chance: even.chance,
			asked: even.asked,
			...even.best === void 0 ? {} : { best: even.best }
		} },
		...comparison === void 0 ? {} : { comparison },
		months: answers.forecast.months ?? [],
		estimates: estimatesOf(plan, answers),
		finished: plan.tasks.filter(({ finished }) => finished !== void 0).length,
		own: ownPart(plan, who)
	};
	const { objections } = brief;
	return {
		brief,
		approver: {
			...approver,
			...interest === void 0 ? {} : { interest },
			...stakeholder?.stance === void 0 ? {} : { stance: stakeholder.stance },
			...looksFor === void 0 ? {} : { looksFor }
		},
		questions: questionsFor(asker, (key) => answerable(key, brief, figures)),
		objections: [...objections.open, ...objections.settled].filter((each) => each.who?.id === who),
		figures
	};
}
/** Somebody who is told although they do not sign. */
function otherwise(plan, brief, who) {
	const limit = plan.stakeholders.find(({ id }) => id === who)?.approvesUpTo;
	return {
		...require_contingencyLeft.someoneOf(plan)(who) ?? {
			id: who,
			name: who
		},
		decision: "pending",
		...limit === void 0 ? {} : {
			approvesUpTo: limit,
			covers: brief.commitment.committed.cost <= limit
		}
	};
}
function answerable(key, brief, figures) {
	switch (key) {
		case "changed": return figures.comparison !== void 0;
		case "afford":
		case "cut": return key === "cut" || brief.spends;
		case "people": return brief.commitment.people !== void 0;
		case "benefit": return brief.worth.benefits.stated > 0;
		case "scope": return brief.scope.in.length + brief.scope.optional.length + brief.scope.out.length > 0;
		case "conditions": return brief.scope.constraints.length > 0;
		case "assumptions": return brief.assumptions.length > 0;
		case "responses": return brief.responses.adopted.length + brief.responses.worthBuying.length + brief.responses.others.length > 0;
		default: return true;
	}
}
function estimatesOf(plan, { explanation }) {
	const someone = require_contingencyLeft.someoneOf(plan);
	const uncertain = plan.tasks.filter(({ duration, effort, finished }) => finished === void 0 && [duration, effort].some((one) => one !== void 0 && one.kind !== "fixed"));
	const byId = new Map(uncertain.map((task) => [task.id, task]));
	const largest = explanation.shares.filter(({ gathers }) => gathers === void 0).flatMap(({ id, members }) => members ?? [id]).flatMap((id) => byId.get(id) ?? []).slice(0, 5);
	return {
		uncertain: uncertain.length,
		withEstimator: uncertain.filter(({ estimatedBy }) => estimatedBy.length > 0).length,
		withBasis: uncertain.filter(({ basis }) => basis !== void 0).length,
		largest: largest.map(({ id, name, estimatedBy, basis }) => ({
			id,
			name,
			by: estimatedBy.flatMap((each) => someone(each) ?? []),
			...basis === void 0 ? {} : { basis }
		}))
	};
}
function ownPart({ tasks }, who) {
	const count = (part) => tasks.filter((task) => task[part].includes(who)).length;
	return {
		responsible: count("responsible"),
		accountable: count("accountable"),
		consulted: count("consulted"),
		informed: count("informed")
	};
}
// ../../packages/charts/src/brief/says.ts
/** A chance in words and in figures: "about 7 times in 10 (69 %)". A finite number of futures never says never. */
function chanceWords(p) {
	return `${require_formatChance.formatChance(p, "tenths")} (${require_formatPercent.formatPercent(Math.max(.005, Math.min(.995, p)))})`;
}
/** The committed sum, or one near it, to the digits the committed sum's limits support. */
function supported(brief, value) {
	const { committed } = brief.commitment;
	const half = (committed.costHigh - committed.costLow) / 2;
	return require_formatMoney.formatMoney(require_roundToLimits.roundToLimits(value, value - half, value + half), brief.plan.currency);
}
/** A sum that the plan states: to the unit. */
function stated(brief, value) {
	return require_formatMoney.formatMoney(Math.round(value), brief.plan.currency);
}
/** A mean over the futures: two significant digits. */
function rough(brief, value, signed = false) {
	return require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), brief.plan.currency, signed);
}
/** Days, and money where the plan speaks of it: "+3.2 working days, +EUR 1,200". */
function effectWords(brief, { workingDays, money }) {
	const moves = [...Math.abs(workingDays) < .05 ? [] : [require_formatDays.formatDays(workingDays, "working day", true)], ...!brief.spends || Math.abs(money) < .5 ? [] : [rough(brief, money, true)]];
	return moves.length === 0 ? "moves neither date nor sum" : moves.join(", ");
}
/** "Ines Calloway (Project lead)" */
function who(someone, most) {
	const name = require_program.plainName(someone.name, most);
	return someone.role === void 0 ? name : `${name} (${require_program.plainName(someone.role, most)})`;
}
var monthNames = "January February March April May June July August September October November December".split(" ");
/** "2027-10" as "October 2027", or with so many letters of the month. */
function monthWords(month, letters = 9) {
	return `${(monthNames[Number(month.slice(5, 7)) - 1] ?? month).slice(0, letters)} ${month.slice(0, 4)}`;
}
// ../../packages/charts/src/brief/sheet/build.ts
/** A paragraph; texts and lines are put one after the other. */
function text(...parts) {
	return {
		kind: "text",
		line: joined(parts)
	};
}
/** A paragraph that comes second. */
function quiet(...parts) {
	return {
		kind: "text",
		line: joined(parts),
		quiet: true
	};
}
function strong(text) {
	return { strong: text };
}
function joined(parts) {
	return parts.flatMap((part) => part === void 0 ? [] : Array.isArray(part) ? part : [part]);
}
/** A text of the plan on one line, cut to `most` characters. Ends as a sentence does. */
function sentence(said, most) {
	const line = require_program.plainName(said, most);
	return /[.!?…:;"”)]$/.test(line) ? line : `${line}.`;
}
/** The first `most` of a list, each told, and how many more there are. */
function first(list, most, tell, what = "more") {
	const told = list.slice(0, most).map(tell);
	const left = list.length - told.length;
	return left > 0 ? [...told, [`and ${left} ${what}`]] : told;
}
/** "A; B; and 2 more" */
function inLine(list, most, size) {
	const told = list.slice(0, most).map((each) => require_program.plainName(each, size).replace(/[.;]$/, ""));
	const left = list.length - told.length;
	return [...told, ...left > 0 ? [`and ${left} more`] : []].join("; ");
}
// ../../packages/charts/src/brief/parts/assumptions.ts
/** What the commitment rests on, the most load-bearing first, and how it would be noticed that it fails. */
function assumptionsSection(brief, room) {
	const { assumptions } = brief;
	return {
		key: "assumptions",
		title: "What it rests on",
		blocks: assumptions.length === 0 ? [text("The plan states no assumption.")] : [{
			kind: "list",
			items: first(assumptions, room.assumptions, (one) => assumptionLine(brief, one, room))
		}]
	};
}
function assumptionLine(brief, one, room) {
	const { statement, owner, reviewBy, signpost, ifWrong, chanceWrong, tripped } = one;
	const wrong = ifWrong === void 0 ? "It proved wrong; every figure here counts it." : `Wrong ${require_formatPercent.formatPercent(chanceWrong)}: ${effectWords(brief, ifWrong)}.`;
	const watch = [owner === void 0 ? "no owner is stated" : require_program.plainName(owner.name, room.name), reviewBy === void 0 ? "no review date" : `review ${require_formatDate.formatDate(reviewBy, "short")}`].join(", ");
	return [
		strong(sentence(statement, room.name + 30)),
		` ${wrong} `,
		...tripped === void 0 ? [] : [strong(`Signpost seen on ${require_formatDate.formatDate(tripped, "short")}. `)],
		signpost === void 0 ? "No signpost is stated" : `Signpost: ${sentence(signpost, room.text)}`,
		signpost === void 0 ? `; ${watch}.` : ` ${watch.charAt(0).toUpperCase()}${watch.slice(1)}.`
	];
}
// ../../packages/charts/src/brief/parts/back.ts
/** What brings the plan back to its approvers: agreed on, or proposed here and marked so. */
function backSection(brief, room) {
	const { triggers } = brief;
	return {
		key: "back",
		title: triggers.length > 0 && triggers.every((trigger) => trigger.proposed) ? "We come back to you when (proposed)" : "We come back to you when",
		blocks: [triggers.length === 0 ? text("Nothing is agreed on.") : {
			kind: "list",
			items: first(triggers, room.triggers, (trigger) => [triggerWords(brief, trigger, room)])
		}]
	};
}
function triggerWords(brief, trigger, room) {
	const condition = conditionWords(brief, trigger, room);
	return trigger.name === void 0 ? condition : `${require_program.plainName(trigger.name, room.name).replace(/\.$/, "")}: ${condition}`;
}
function conditionWords(brief, trigger, room) {
	const { committed } = brief.commitment;
	if (trigger.chanceOfDateBelow !== void 0) return `the chance of ${require_formatDate.formatDate(committed.date, "short")} falls below ${require_formatPercent.formatPercent(trigger.chanceOfDateBelow)}`;
	if (trigger.chanceOfBudgetBelow !== void 0) return `the chance of keeping the sum falls below ${require_formatPercent.formatPercent(trigger.chanceOfBudgetBelow)}`;
	if (trigger.contingencyCoverBelow !== void 0) return trigger.contingencyCoverBelow === 1 ? "the contingency left no longer covers what is still uncertain" : `the contingency left covers less than ${require_formatPercent.formatPercent(trigger.contingencyCoverBelow)} of what is still uncertain`;
	if (trigger.finishLaterThan !== void 0) return `the finish at the level is later than ${require_formatDate.formatDate(trigger.finishLaterThan, "short")}`;
	if (trigger.costAbove !== void 0) return `the sum at the level is above ${stated(brief, trigger.costAbove)}`;
	const { signpost } = trigger;
	if (signpost === void 0) return "its condition is met";
	return signpost.text === void 0 ? `“${require_program.plainName(signpost.statement, room.name)}” no longer holds` : `this is seen: ${sentence(signpost.text, room.text)}`.replace(/\.$/, "");
}
// ../../packages/charts/src/brief/parts/commitment.ts
/** Committed, asked for and as written side by side; contingency with its holder; the reserve apart. */
function commitmentSection(brief, room) {
	return {
		key: "commitment",
		title: "The commitment, what was asked for, and the plan as written",
		blocks: [
			standings(brief),
			...jointBlocks(brief),
			contingencyBlock(brief, room),
			...fundsBlocks(brief)
		]
	};
}
function standings(brief) {
	const { committed, asWritten, asked, chance } = brief.commitment;
	const money = brief.spends;
	const row = (name, date, sum) => ({ cells: [
		name,
		...date,
		...money ? sum : []
	] });
	const rows = [
		row("Commit to", [
			require_formatDate.formatDate(committed.date, "weekday"),
			chanceWords(committed.confidence),
			span(require_formatDate.formatDate(committed.lowDate, "shortest"), require_formatDate.formatDate(committed.highDate, "shortest"))
		], [
			supported(brief, committed.cost),
			chanceWords(committed.confidence),
			span(limit(brief, committed.costLow), limit(brief, committed.costHigh))
		]),
		...asked.finishBy === void 0 && asked.budget === void 0 ? [] : [row("Asked for", asked.finishBy === void 0 || chance.finishBy === void 0 ? [
			"no date",
			"",
			""
		] : [
			require_formatDate.formatDate(asked.finishBy, "weekday"),
			chanceWords(chance.finishBy),
			"stated"
		], asked.budget === void 0 || chance.budget === void 0 ? [
			"no sum",
			"",
			""
		] : [
			stated(brief, asked.budget),
			chanceWords(chance.budget),
			"stated"
		])],
		row("As written", [
			require_formatDate.formatDate(asWritten.finish, "weekday"),
			chanceWords(asWritten.finishChance),
			""
		], [
			stated(brief, asWritten.cost),
			chanceWords(asWritten.costChance),
			""
		])
	];
	const end = (name) => ({
		text: name,
		align: "end"
	});
	const start = (name) => ({
		text: name,
		align: "start"
	});
	return {
		kind: "table",
		caption: "Dates and sums with their chances",
		head: [
			start("What"),
			start("Finish by"),
			start("Holds"),
			start("95 % limits"),
			...money ? [
				end("Sum"),
				start("Holds"),
				start("95 % limits")
			] : []
		],
		rows
	};
}
function limit(brief, value) {
	const { costLow, costHigh } = brief.commitment.committed;
	return require_formatMoney.formatMoney(require_roundToLimits.roundToLimits(value, costLow, costHigh), "");
}
function span(low, high) {
	return low === high ? low : `${low} to ${high}`;
}
function jointBlocks(brief) {
	const { chance, together } = brief.commitment;
	const askedFor = chance.both !== void 0 ? `Asked date and sum both hold ${chanceWords(chance.both)}. ` : chance.finishBy === void 0 && chance.budget === void 0 ? "The plan asks for no date and no sum. " : "";
	if (!brief.spends) return askedFor === "" ? [] : [text(askedFor)];
	return [text(askedFor, `For both to hold ${chanceWords(together.joint)}: ${require_formatDate.formatDate(together.date, "weekday")} and ${supported(brief, together.cost)}.`)];
}
function contingencyBlock(brief, room) {
	const { contingency, holder, releaseRule, reserve } = brief.commitment;
	const sum = brief.spends ? ` and ${supported(brief, contingency.money)}` : "";
	const days = `${require_formatDays.formatDays(contingency.workingDays)} (${require_formatDays.formatDays(contingency.calendarDays, "calendar day")})${sum}`;
	const held = holder === void 0 ? "no holder is stated" : `held by ${who(holder, room.name)}`;
	const rule = releaseRule === void 0 ? "" : ` Release: ${sentence(releaseRule, room.text)}`;
	return text(strong("Contingency: "), `${days} above the plan as written, ${held}.${rule} `, ...brief.spends ? [strong("Reserve: "), reserve === void 0 ? "none is stated." : `${stated(brief, reserve)}, apart; no figure here spends it.`] : []);
}
function fundsBlocks(brief) {
	const { firstShortfall } = brief.commitment;
	if (firstShortfall === void 0) return [];
	const { month, chanceCovered } = firstShortfall;
	return [text(strong("Money released "), `first falls short of ${require_formatPercent.formatPercent(brief.confidence)} in ${monthWords(month)}: it covers the cost to then ${chanceWords(chanceCovered)}.`)];
}
// ../../packages/charts/src/brief/parts/decision.ts
/** Characters of a request: it is never cut for want of room, only for being no sentence any more. */
var most$2 = 240;
/** What is asked, in one sentence: decision, sum, date, by when; then the answer of the forecast. */
function decisionSection(brief, room) {
	const { decision } = brief;
	const made = decision.ask === void 0;
	return {
		key: "decision",
		title: "What you are asked to decide",
		blocks: [
			text(strong(made ? commitWords(brief, room) : sentence(decision.ask ?? "", most$2))),
			text(made ? holdsLine(brief) : answerLine(brief)),
			...brief.scenario === void 0 ? [] : [text(strong(scenarioWords(brief.scenario)))],
			quiet(`${deadline(brief)}${made ? " The plan states no decision: this one is made from its commitment." : ""}`)
		]
	};
}
/** The commitment as a request. */
function commitWords(brief, room) {
	const { finishOf, date, cost } = brief.decision;
	const what = finishOf === void 0 ? "finishing" : `“${require_program.plainName(finishOf.name, room.name)}”`;
	const sum = brief.spends ? `, for ${supported(brief, cost)}` : "";
	return `Approve committing to ${what} by ${require_formatDate.formatDate(date, "long")}${sum}.`;
}
/** By when it has to be decided. */
function deadline({ decision, plan, today }) {
	return decision.by === void 0 ? `No day for the decision is stated; work begins ${require_formatDate.formatDate(plan.start, "weekday")}.` : `Decide by ${require_formatDate.formatDate(decision.by, "weekday")}.${today > decision.by ? " That day has passed." : ""}`;
}
/** A page on the table says when it is not about the plan as it stands. */
function scenarioWords({ with: taken, without: left }) {
	return `What if: ${[...taken === void 0 ? [] : [`with ${taken.join(", ")}`], ...left === void 0 ? [] : [`without ${left.join(", ")}`]].join("; ")}.`;
}
/** How often what is asked holds, where the request itself says date and sum. */
function holdsLine(brief) {
	const words = holds$1(brief);
	return [`${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`];
}
/** Date and sum at the level, how often each holds, and both. */
function answerLine(brief) {
	const { committed } = brief.commitment;
	const date = strong(require_formatDate.formatDate(committed.date, "long"));
	if (!brief.spends) return [date, `: ${holds$1(brief)}.`];
	return [
		date,
		" and ",
		strong(supported(brief, committed.cost)),
		`: ${holds$1(brief)}.`
	];
}
function holds$1({ commitment, spends }) {
	const { committed, certain } = commitment;
	return require_holdsWords.holdsWords({
		each: chanceWords(committed.confidence),
		both: chanceWords(committed.both),
		date: certain?.date === true,
		sum: certain?.sum === true,
		money: spends
	});
}
// ../../packages/charts/src/brief/parts/drivers.ts
/** What the contingency is held for: five causes, the rest as one, and the whole they add up to. */
function driversSection(brief, room) {
	const { rows, whole } = brief.drivers;
	const none = rows.length === 0 && Math.abs(whole.workingDays) < 1e-9 && Math.abs(whole.money) < 1e-9;
	return {
		key: "drivers",
		title: brief.spends ? `What drives it, in working days and ${brief.plan.currency}` : "What drives it, in working days",
		blocks: none ? [text("Nothing in the plan is uncertain, so nothing drives it.")] : [driversTable(brief, room)]
	};
}
/** Rounded together, so that the column adds up as it is read. */
function driversTable(brief, room) {
	const { rows, rest } = brief.drivers;
	const all = [...rows, ...rest === void 0 ? [] : [rest]];
	const days = dayColumn(all.map(({ workingDays }) => workingDays));
	const sums = moneyColumn(brief, all.map(({ money }) => money));
	const cells = (at) => [days[at] ?? "", ...brief.spends ? [sums[at] ?? ""] : []];
	const end = (name) => ({
		text: name,
		align: "end"
	});
	return {
		kind: "table",
		caption: "Contingency by cause; the rows add up to the whole",
		head: [
			{
				text: "Cause",
				align: "start"
			},
			end("days"),
			...brief.spends ? [end(brief.plan.currency)] : []
		],
		rows: [
			...rows.map(({ name, kind }, at) => ({ cells: [`${kind === "assumption" ? "Wrong: " : ""}${require_program.plainName(name, room.name)}`, ...cells(at)] })),
			...rest === void 0 ? [] : [{ cells: [`${rest.causes} other ${rest.causes === 1 ? "cause" : "causes"}`, ...cells(rows.length)] }],
			{
				cells: ["The whole contingency", ...cells(all.length)],
				whole: true
			}
		]
	};
}
/** Whole days from twenty on, tenths below; the sum last. */
function dayColumn(values) {
	const whole = values.reduce((sum, value) => sum + value, 0);
	const decimals = Math.abs(whole) >= 20 ? 0 : 1;
	return withSum(values, 10 ** -decimals).map((value) => value === 0 ? "0" : require_groupDigits.groupDigits(value, decimals));
}
/** To the step that the committed sum's limits support; the sum last. */
function moneyColumn({ commitment }, values) {
	const { cost, costLow, costHigh } = commitment.committed;
	return withSum(values, Math.max(1, require_roundToLimits.limitStep(cost, costLow, costHigh))).map((value) => require_groupDigits.groupDigits(value));
}
function withSum(values, step) {
	const rounded = require_roundTogether.roundTogether(values, step);
	return [...rounded, rounded.reduce((sum, value) => sum + value, 0)];
}
// ../../packages/charts/src/brief/parts/objections.ts
/** Open objections first, each with who raised it; then those that were answered or accepted. */
function objectionsSection({ objections }, room) {
	const { open, settled } = objections;
	if (open.length + settled.length === 0) return {
		key: "objections",
		title: "Open objections",
		blocks: [text("No objection is recorded.")]
	};
	const left = Math.max(0, room.objections - open.length);
	const rest = settled.length > left ? settled.length - left : 0;
	return {
		key: "objections",
		title: `Open objections: ${open.length === 0 ? "none" : open.length}`,
		blocks: [{
			kind: "list",
			items: [
				...first(open, room.objections, (one) => objectionLine(one, room), "more open"),
				...settled.slice(0, left).map((one) => objectionLine(one, room)),
				...rest > 0 ? [[`and ${rest} more, answered or accepted`]] : []
			]
		}]
	};
}
function objectionLine({ who, text: said, answer, state }, room) {
	const name = who === void 0 ? "Somebody" : require_program.plainName(who.name, room.name);
	const words = said === void 0 ? "no words are recorded." : sentence(said, room.text);
	const standing = state === "open" ? answer === void 0 ? "Open, no answer yet." : `Open. Answer so far: ${sentence(answer, room.text)}` : state === "accepted" ? "Accepted by name." : answer === void 0 ? "Answered; no words are recorded." : `Answered: ${sentence(answer, room.text)}`;
	return [
		strong(`${name}: `),
		`${words} `,
		standing
	];
}
// ../../packages/charts/src/brief/parts/outcome.ts
var choices = [
	["approve", "approve"],
	["approve-subject-to", "approve subject to"],
	["rework", "rework"]
];
/** Longer names would push where they stand onto a second line. */
var longest = 44;
/** One row for each approver with the three outcomes and where they stand. */
function outcomeSection(brief, room) {
	const { approvers } = brief.outcome;
	const more = approvers.length - room.approvers;
	const row = (one) => ({
		name: require_program.plainName(one.role === void 0 ? one.name : `${one.name}, ${one.role}`, Math.min(room.name, longest)),
		boxes: choices.map(([decision, label]) => ({
			label,
			ticked: one.decision === decision
		})),
		remark: standingWords(brief, one, room)
	});
	return {
		key: "outcome",
		title: "Outcome",
		blocks: approvers.length === 0 ? [text("The plan names no approver."), {
			kind: "boxes",
			caption: "Outcome",
			rows: [{
				name: "Name, date",
				boxes: choices.map(([, label]) => ({
					label,
					ticked: false
				})),
				remark: ""
			}]
		}] : [{
			kind: "boxes",
			caption: "Outcome by approver",
			rows: approvers.slice(0, room.approvers).map(row)
		}, ...more > 0 ? [quiet(`and ${more} more ${more === 1 ? "approver" : "approvers"}`)] : []]
	};
}
/** "pending; may approve up to EUR 640,000, which is below the committed sum" */
function standingWords(brief, one, room) {
	const on = one.date === void 0 ? "" : ` on ${require_formatDate.formatDate(one.date, "short")}`;
	return `${one.decision === "pending" ? "pending" : `decided${on}${one.current === void 0 ? ", bound to no version" : one.current ? ", this plan" : ", another version of the plan"}`}${one.conditions === void 0 ? "" : `; subject to: ${require_program.plainName(one.conditions, room.text)}`}${one.approvesUpTo === void 0 ? "" : `; may approve up to ${stated(brief, one.approvesUpTo)}${one.covers === false ? ", not enough" : ""}`}`;
}
// ../../packages/charts/src/brief/parts/recommendation.ts
/** Characters of a recommendation that there is always room for. */
var least = 160;
/** What is recommended, what doing nothing costs, and what else there is. */
function recommendationSection(brief, room) {
	const { recommend, alternatives, levels } = brief.recommendation;
	const others = levels.map(({ p, date, cost }) => {
		const sum = brief.spends ? ` and ${supported(brief, cost)}` : "";
		return `at ${require_formatPercent.formatPercent(p)}, ${require_formatDate.formatDate(date, "short")}${sum}`;
	});
	return {
		key: "recommendation",
		title: "Recommendation and alternatives",
		blocks: [
			text(strong("Recommended: "), recommend === void 0 ? "the plan states no recommendation." : sentence(recommend, Math.max(room.text, least))),
			doNothingBlock(brief, room),
			...alternatives.length === 0 ? [] : [{
				kind: "list",
				items: first(alternatives, room.alternatives, ({ name, text: said }) => said === void 0 ? [strong(sentence(name, room.name))] : [strong(`${require_program.plainName(name, room.name)}: `), sentence(said, room.text)])
			}],
			text(strong("Alternatives: "), alternatives.length === 0 ? "the plan states no others. " : "", others.length === 0 ? "" : `The same plan held ${others.join("; ")}.`)
		]
	};
}
function doNothingBlock(brief, room) {
	const { text: said, perMonth, benefits } = brief.recommendation.doNothing;
	const forgone = benefits.filter(({ money }) => !money).map(({ amount, unit, per }) => {
		const units = `${require_groupDigits.groupDigits(require_roundSignificant.roundSignificant(amount, 4))} ${require_program.plainName(unit ?? "units", room.name)}`;
		return per === "once" ? `${units} once` : `${units} a ${per}`;
	});
	const sums = benefits.filter(({ money, per }) => money && per === "once");
	const parts = [
		...perMonth === void 0 ? [] : [`${rough(brief, perMonth)} a month`],
		...sums.map(({ amount }) => `${stated(brief, amount)} once`),
		...forgone
	];
	const costs = benefits.length === 0 ? "no benefit is stated, so the plan cannot say what that forgoes." : `forgoes, as written and in full, ${inLine(parts, room.benefits, room.name + 30)}.`;
	return text(strong("Doing nothing: "), said === void 0 ? "" : `${sentence(said, room.text)} It `, costs);
}
// ../../packages/charts/src/brief/parts/responses.ts
/** What was bought against risks and what it buys, and what is worth buying next. */
function responsesSection(brief, room) {
	const { adopted, worthBuying, others } = brief.responses;
	const tell = (response) => responseLine(brief, response, room);
	const none = adopted.length + worthBuying.length + others.length === 0;
	const list = (all) => ({
		kind: "list",
		items: first(all, room.responses, tell)
	});
	const heading = (title, all) => all.length === 0 ? [] : [text(strong(title)), list(all)];
	return {
		key: "responses",
		title: "Responses",
		blocks: none ? [text("The plan states no response to a risk or an assumption.")] : [
			...heading("Bought", adopted),
			...worthBuying.length === 0 ? [text(...unbought(adopted), strong("Worth buying: "), nothingPays(brief))] : [text(...unbought(adopted), strong("Worth buying"), ", saving more than they cost:"), list(worthBuying)],
			...others.length === 0 || worthBuying.length === 0 ? [] : [text(`${others.length} more ${others.length === 1 ? "costs as much as it saves" : "cost as much as they save"}, or more.`)]
		]
	};
}
function unbought(adopted) {
	return adopted.length === 0 ? [strong("Bought: "), "none yet. "] : [];
}
function nothingPays({ responses }) {
	const { others } = responses;
	return others.length === 0 ? "every response stated is bought." : `none of ${others.length} left saves more than it costs${responses.latenessCounted ? "" : "; what being late costs is not stated and not counted"}.`;
}
/** "Hire an inspector: EUR 1,500 buys 3.9 working days; net +EUR 4,200. Ines Calloway, by 5 Mar 2027." */
function responseLine(brief, response, room) {
	const { action, cost, given, owner, due } = response;
	const days = -given.workingDays;
	const buys = Math.abs(days) < .05 ? "moves the committed date by less than a tenth of a day" : `${days > 0 ? "buys" : "costs"} ${require_formatDays.formatDays(Math.abs(days))}`;
	const by = [owner === void 0 ? void 0 : require_program.plainName(owner.name, room.name), due === void 0 ? void 0 : `by ${require_formatDate.formatDate(due, "short")}`].filter((each) => each !== void 0);
	return [
		strong(require_program.plainName(action, room.name).replace(/\.$/, "")),
		`: ${stated(brief, cost)} ${buys}, net ${rough(brief, given.netWorth, true)}.`,
		by.length === 0 ? " No owner is stated." : ` ${by.join(", ")}.`
	];
}
// ../../packages/charts/src/brief/parts/run.ts
var caution = "These figures restate what people judged. Where money, contracts or safety depend on them, your own rules and competent people decide.";
/** What is needed to get the same figures again, and the usual caution. */
function runSection({ stamp, plan, today, warnings }) {
	const [warning] = warnings;
	const status = plan.statusDate === void 0 ? "no progress yet" : `status ${require_formatDate.formatDate(plan.statusDate, "short")}`;
	const futures = `${require_groupDigits.groupDigits(stamp.iterations)} ${stamp.iterations === 1 ? "future" : "futures"}`;
	return {
		key: "run",
		title: "Run and caution",
		blocks: [
			quiet(caution),
			...warning === void 0 ? [] : [quiet(`Warning: ${sentence(warning, 240)}${warnings.length > 1 ? ` And ${warnings.length - 1} more: see the forecast.` : ""}`)],
			quiet(`Run: seed ${require_program.plainName(stamp.seed, 40)}, ${futures}, ${stamp.design} design, plan ${stamp.sha256.slice(0, 12)}, ${status}, engine ${stamp.version}; written ${require_formatDate.formatDate(today, "short")}.`)
		]
	};
}
// ../../packages/charts/src/brief/parts/scope.ts
/** What is delivered, what can be left out and what is then lost, and what is not delivered. */
function scopeSection(brief, room) {
	const { in: inside, optional, out } = brief.scope;
	const names = (list) => list.map(({ name }) => name);
	const [one] = optional;
	const lost = one?.lost === void 0 ? "" : ` Lost then: ${sentence(one.lost, room.text)}`;
	return {
		key: "scope",
		title: "Scope",
		blocks: inside.length + optional.length + out.length === 0 ? [text("The plan states no scope, neither in nor out.")] : [
			text(strong("In: "), inside.length === 0 ? "nothing is stated." : `${inLine(names(inside), room.scope, room.name)}.`),
			...one === void 0 ? [] : [text(strong("Can be left out: "), optional.length === 1 ? `${require_program.plainName(one.name, room.name)}.${lost}` : `${inLine(names(optional), room.scope, room.name)}.`)],
			text(strong("Out: "), out.length === 0 ? "nothing is stated." : `${inLine(out, room.scope, room.name)}.`)
		]
	};
}
// ../../packages/charts/src/brief/parts/worth.ts
/** Benefit against cost, and what a week later costs. What the plan does not state is said to be missing. */
function worthSection(brief) {
	return {
		key: "worth",
		title: "Benefit against cost, and the cost of delay",
		blocks: [benefitBlock(brief), delayBlock(brief)]
	};
}
function benefitBlock(brief) {
	const { appraisal, benefits } = brief.worth;
	if (benefits.stated === 0) return text(strong("Benefit: "), "none is stated, so it cannot be set against the cost.");
	if (benefits.valued === 0) return text(strong("Benefit: "), `${benefits.stated} stated, none worth money, so it cannot be set against the cost.`);
	if (appraisal === void 0) return text(strong("Benefit: "), "stated, but not over how many years it counts; the plan has no appraisal.");
	const { net, payback, years, discountRate } = appraisal;
	const paid = payback.p50 === void 0 ? `Fewer than half of the futures are paid back within ${years} years.` : `Paid back by ${require_formatDate.formatDate(payback.p50, "short")} in half of the futures${payback.p80 === void 0 ? "" : `, by ${require_formatDate.formatDate(payback.p80, "short")} in 8 of 10`}.`;
	return text(strong("Net value "), `over ${years} years, benefits discounted at ${Number((100 * discountRate).toPrecision(4))} %, cost not: `, strong(rough(brief, net.p50)), ` in the middle, 8 in 10 between ${rough(brief, net.p10)} and ${rough(brief, net.p90)}; above nought ${chanceWords(appraisal.chancePositive)}. ${paid}`);
}
function delayBlock(brief) {
	const { lateness } = brief.worth;
	if (lateness === void 0) return text(strong("Cost of delay: "), "the plan does not say what finishing late costs.");
	const once = lateness.once === 0 ? "" : `, and ${rough(brief, lateness.once)} once when late at all`;
	return text(strong("Cost of delay: "), strong(`${rough(brief, lateness.perWeek)} a week`), ` after ${require_formatDate.formatDate(lateness.after, "short")}${once}. Late in ${require_formatPercent.formatPercent(lateness.chance)} of futures; `, `expected ${rough(brief, lateness.mean)}${lateness.chance > 0 ? `, ${rough(brief, lateness.meanWhenLate)} when late` : ""}, beside the total and in no sum here.`);
}
// ../../packages/charts/src/brief/sheet/rooms.ts
/** As much as a sheet says where nothing has to fit: Markdown, and the first try of a page. */
var roomy = {
	name: 90,
	text: 420,
	responses: 4,
	assumptions: 3,
	objections: 3,
	triggers: 6,
	scope: 8,
	approvers: 6,
	alternatives: 3,
	benefits: 4
};
/** From the most that is said to the least: the first that fits a page is taken. */
var rooms = [
	roomy,
	{
		...roomy,
		name: 75,
		text: 240,
		scope: 7
	},
	{
		...roomy,
		name: 66,
		text: 160,
		scope: 6,
		objections: 2,
		benefits: 3,
		triggers: 5
	},
	{
		...roomy,
		name: 60,
		text: 120,
		scope: 6,
		objections: 2,
		responses: 3,
		benefits: 3,
		triggers: 4
	},
	{
		...roomy,
		name: 56,
		text: 110,
		scope: 4,
		objections: 1,
		responses: 3,
		benefits: 2,
		triggers: 4,
		approvers: 5
	},
	{
		name: 48,
		text: 90,
		responses: 3,
		assumptions: 3,
		objections: 1,
		triggers: 4,
		scope: 4,
		approvers: 5,
		alternatives: 2,
		benefits: 2
	},
	{
		name: 44,
		text: 76,
		responses: 3,
		assumptions: 2,
		objections: 1,
		triggers: 4,
		scope: 3,
		approvers: 4,
		alternatives: 2,
		benefits: 1
	},
	{
		name: 36,
		text: 60,
		responses: 2,
		assumptions: 2,
		objections: 1,
		triggers: 3,
		scope: 2,
		approvers: 4,
		alternatives: 1,
		benefits: 1
	},
	{
		name: 28,
		text: 40,
		responses: 1,
		assumptions: 2,
		objections: 1,
		triggers: 2,
		scope: 1,
		approvers: 3,
		alternatives: 1,
		benefits: 1
	},
	{
		name: 26,
		text: 34,
		responses: 1,
		assumptions: 1,
		objections: 1,
		triggers: 2,
		scope: 1,
		approvers: 2,
		alternatives: 1,
		benefits: 1
	}
];
// ../../packages/charts/src/brief/briefSheet.ts
/**
* The brief in words, section by section, the decision first. Every figure is the brief's own.
*
* @param room  How much may be said; the decision, the commitment, the caution and the run are always whole.
*/
function briefSheet(brief, room = roomy) {
	const note = brief.plan.note === void 0 ? "" : ` · ${require_program.plainName(brief.plan.note, room.text)}`;
	return {
		title: require_program.plainName(brief.plan.title, 120),
		head: `Brief for decision · ${require_formatDate.formatDate(brief.today, "short")}${note}`,
		sections: [
			decisionSection(brief, room),
			recommendationSection(brief, room),
			commitmentSection(brief, room),
			worthSection(brief),
			scopeSection(brief, room),
			driversSection(brief, room),
			responsesSection(brief, room),
			assumptionsSection(brief, room),
			objectionsSection(brief, room),
			backSection(brief, room),
			outcomeSection(brief, room),
			runSection(brief)
		]
	};
}
// ../../packages/charts/src/brief/answers/even.ts
/** Steps that are told; the rest add less than any of them. */
var most$1 = 5;
/** What would make the asked date and sum an even chance; and the date at an even chance. */
function evenAnswer({ brief, figures }) {
	const half = figures.steps.find(({ p }) => p === .5);
	const at = half === void 0 ? [] : [text(`Half of the futures finish by ${require_formatDate.formatDate(half.date, "weekday")}${brief.spends ? `, and half cost no more than ${supported(brief, half.cost)}` : ""}.`)];
	const { even } = figures;
	if (even === void 0) return [...at, text("The plan asks for no date and no sum, so there is nothing earlier to reach for.")];
	const { finishBy, sum } = even.asked;
	const asked = [...finishBy === void 0 ? [] : [require_formatDate.formatDate(finishBy, "short")], ...sum === void 0 ? [] : [stated(brief, sum)]].join(" and ");
	if (even.answer === "already") return [...at, text(`${asked} already holds ${chanceWords(even.chance)}: nothing more is needed.`)];
	const way = even.ways[0] ?? even.best;
	if (way === void 0 || way.steps.length === 0) return [...at, text(`Nothing that can be decided in this plan moves ${asked}, which holds ${chanceWords(even.chance)}.`)];
	const opening = even.answer === "ways" ? `${asked} becomes an even chance with these, the first adding most:` : `Nothing makes ${asked} an even chance. All that can be decided brings it from ${chanceWords(even.chance)} to ${chanceWords(way.chance)}:`;
	return [
		...at,
		text(opening),
		{
			kind: "list",
			items: first(way.steps, most$1, ({ name, cost, chance, lost, kind }) => [
				strong(require_program.plainName(name, 90).replace(/\.$/, "")),
				`${kind === "scope" ? " (left out)" : ""}${cost > 0 ? `, ${stated(brief, cost)}` : ""}: then ${chanceWords(chance)}.`,
				...lost === void 0 ? [] : [` Lost: ${require_program.plainName(lost, 160)}`]
			], "more, each adding less")
		}
	];
}
// ../../packages/charts/src/brief/answers/gap.ts
/** From the plan as written to the commitment, step by step. */
function gapAnswer({ brief, figures }) {
	const { asWritten, committed } = brief.commitment;
	const opening = `Everything would have to go its written way for ${require_formatDate.formatDate(asWritten.finish, "short")}: it holds ${chanceWords(asWritten.finishChance)}.`;
	const { walk } = figures;
	if (walk.length === 0) return [text(opening)];
	const days = dayColumn(walk.map(({ workingDays }) => workingDays));
	const sums = moneyColumn(brief, walk.map(({ money }) => money));
	const end = (name) => ({
		text: name,
		align: "end"
	});
	const cells = (at) => [days[at] ?? "", ...brief.spends ? [sums[at] ?? ""] : []];
	return [text(opening), {
		kind: "table",
		caption: `From the plan as written to ${require_formatDate.formatDate(committed.date, "short")}; each step is added to those above it`,
		head: [
			{
				text: "Step",
				align: "start"
			},
			end("working days"),
			...brief.spends ? [end(brief.plan.currency)] : []
		],
		rows: [...walk.map(({ step }, at) => ({ cells: [require_program.plainName(step, 90), ...cells(at)] })), {
			cells: [`To what holds ${require_formatPercent.formatPercent(brief.confidence)}`, ...cells(walk.length)],
			whole: true
		}]
	}];
}
/** Against the version seen before: from, to, and the largest moves. */
function changedAnswer({ brief, figures }) {
	const { comparison } = figures;
	if (comparison === void 0) return [text("No earlier version was given to compare with.")];
	const { from, to, moves, alsoChanged } = comparison;
	const money = brief.spends;
	const days = dayColumn(moves.map(({ workingDays }) => workingDays));
	const sums = moneyColumn(brief, moves.map(({ money: sum }) => sum));
	const end = (name) => ({
		text: name,
		align: "end"
	});
	const shown = 6;
	const told = moves.slice(0, shown);
	return [
		text(`At ${require_formatPercent.formatPercent(comparison.confidence)} the date went from ${require_formatDate.formatDate(from.date, "weekday")} to ${require_formatDate.formatDate(to.date, "weekday")}.`),
		...moves.length === 0 ? [text("Nothing that moves date or sum was changed.")] : [{
			kind: "table",
			caption: "What moved it; all moves add up to the difference",
			head: [
				{
					text: "Change",
					align: "start"
				},
				end("working days"),
				...money ? [end(brief.plan.currency)] : []
			],
			rows: [...told.map(({ what }, at) => ({ cells: [
				require_program.plainName(what, 120),
				days[at] ?? "",
				...money ? [sums[at] ?? ""] : []
			] })), {
				cells: [
					moves.length > shown ? `The whole, with ${moves.length - shown} smaller moves` : "The whole",
					days[moves.length] ?? "",
					...money ? [sums[moves.length] ?? ""] : []
				],
				whole: true
			}]
		}],
		...alsoChanged.length === 0 ? [] : [text(`Changed besides, moving neither date nor sum: ${alsoChanged.length}.`)]
	];
}
// ../../packages/charts/src/brief/answers/level.ts
var shown$1 = [
	.5,
	.65,
	.8,
	.9
];
/** Levels side by side: what each step buys and holds, and where by the price of lateness to stop. */
function levelAnswer({ brief, figures }) {
	const steps = figures.steps.filter(({ p }) => shown$1.includes(p) || p === brief.confidence);
	const priced = steps.some(({ latenessLeft }) => latenessLeft !== void 0);
	const end = (name) => ({
		text: name,
		align: "end"
	});
	const row = (step) => ({
		cells: [
			`${require_formatPercent.formatPercent(step.p)}${step.p === brief.confidence ? " (committed)" : ""}`,
			require_formatDate.formatDate(step.date, "weekday"),
			...brief.spends ? [require_groupDigits.groupDigits(require_roundToLimits.roundToLimits(step.cost, step.costLow, step.costHigh))] : [],
			require_formatDays.formatDays(step.late.days, ""),
			...priced ? [step.latenessLeft === void 0 ? "" : require_groupDigits.groupDigits(require_roundSignificant.roundSignificant(step.latenessLeft, 2))] : []
		],
		whole: step.p === brief.confidence
	});
	return [
		text("No level is right by itself: each holds more time and money than the one before, and misses less often."),
		{
			kind: "table",
			caption: "Levels side by side",
			head: [
				{
					text: "Level",
					align: "start"
				},
				{
					text: "Finish by",
					align: "start"
				},
				...brief.spends ? [end(`Sum, ${brief.plan.currency}`)] : [],
				end("days late, if late"),
				...priced ? [end(`Lateness left, ${brief.plan.currency}`)] : []
			],
			rows: steps.map(row)
		},
		text(stopWords({
			brief,
			figures
		}))
	];
}
/** Where the next step costs more than it avoids; or that lateness has no price. */
function stopWords({ brief, figures }) {
	const { stop } = figures;
	const at = require_formatPercent.formatPercent(brief.confidence);
	if (stop === void 0) return `The plan does not say what finishing late costs, so it cannot say where to stop; ${at} is the plan's choice.`;
	const close = stop.clear ? "" : " It is too close to call with this many futures.";
	const next = stop.next === void 0 ? "no further step costs more than it avoids" : `the step on to ${require_formatPercent.formatPercent(stop.next.p)} holds ${rough(brief, stop.next.costs)} more and avoids ${rough(brief, stop.next.avoids)} of expected lateness`;
	return `${stop.p === brief.confidence ? `By what lateness costs, ${at} is where to stop: ${next}.` : stop.p < brief.confidence ? `By what lateness costs alone, ${require_formatPercent.formatPercent(stop.p)} would do: ${next}. Going on to ${at} is a choice for a promise that is kept more often.` : `By what lateness costs, going on to ${require_formatPercent.formatPercent(stop.p)} would pay: ${next}.`}${close}`;
}
/** What a smaller contingency means: the levels below, and what happens when they fail. */
function cutAnswer({ brief, figures }) {
	const below = figures.steps.filter(({ p }) => p < brief.confidence);
	const kept = below.filter(({ p }) => p === .5 || p === .65).concat(below.slice(-1));
	const steps = [...new Set(kept)].sort((a, b) => b.p - a.p);
	if (steps.length === 0) return [text(`${require_formatPercent.formatPercent(brief.confidence)} is the lowest level looked at: there is little to cut.`)];
	return [{
		kind: "list",
		items: steps.map(({ p, date, cost, late, over }) => [`Hold only ${require_formatDate.formatDate(date, "short")}${brief.spends ? ` and ${supported(brief, cost)}` : ""}: each is kept in ${require_formatPercent.formatPercent(p)} of futures. `, `When the date is missed, it is by ${require_formatDays.formatDays(late.days, "calendar day")} on average${brief.spends ? `; when the sum is, by ${rough(brief, over.money)}` : ""}.`])
	}, text("What is not held is not saved: the work takes as long and costs as much as it does.")];
}
// ../../packages/charts/src/brief/answers/money.ts
var shown = 8;
/** The sum against the budget, and month by month against the money released. */
function affordAnswer({ brief, figures }) {
	const { commitment } = brief;
	const { asked, chance, reserve } = commitment;
	const budget = asked.budget === void 0 || chance.budget === void 0 ? "The plan names no budget." : `The budget of ${stated(brief, asked.budget)} holds ${chanceWords(chance.budget)}; ${require_formatPercent.formatPercent(brief.confidence)} needs ${supported(brief, commitment.committed.cost)}.`;
	const apart = reserve === void 0 ? "No reserve is stated." : `The reserve of ${stated(brief, reserve)} is apart and untouched by these figures.`;
	const months = figures.months.filter(({ released }) => released !== void 0);
	if (months.length === 0) return [text(`${budget} ${apart} The plan does not say when money is released, so months cannot be told.`)];
	const { firstShortfall } = commitment;
	const level = require_formatPercent.formatPercent(brief.confidence);
	const short = firstShortfall === void 0 ? `What is released covers every month in at least ${level} of futures.` : `What is released first falls short of ${level} in ${monthWords(firstShortfall.month)}.`;
	const step = Math.max(1, Math.ceil(months.length / shown));
	const kept = months.filter(({ month }, at) => at % step === step - 1 || at === months.length - 1 || month === firstShortfall?.month);
	const end = (name) => ({
		text: name,
		align: "end"
	});
	const sum = (value) => require_groupDigits.groupDigits(require_roundSignificant.roundSignificant(value, 3));
	return [text(`${budget} ${apart} ${short}`), {
		kind: "table",
		caption: `Cost by the end of a month against money released, ${brief.plan.currency}`,
		head: [
			{
				text: "By the end of",
				align: "start"
			},
			end("half of futures at most"),
			end("8 of 10 at most"),
			end("released"),
			end("covered")
		],
		rows: kept.map(({ month, cumulative, released = 0, chanceCovered }) => ({ cells: [
			monthWords(month, 3),
			sum(cumulative.p50),
			sum(cumulative.p80),
			require_groupDigits.groupDigits(released),
			chanceCovered === void 0 ? "" : require_formatPercent.formatPercent(chanceCovered)
		] }))
	}];
}
/** What being late does to the organisation, counted once. */
function slipAnswer({ brief }) {
	const { lateness } = brief.worth;
	const { perMonth } = brief.recommendation.doNothing;
	const forgone = perMonth === void 0 ? "" : ` Benefits come later too: ${rough(brief, perMonth)} a month in full, as written; where the price of lateness already holds them, they are not to be counted again.`;
	if (lateness === void 0) return [text(`The plan does not say what finishing late costs.${forgone}`)];
	return [text(`After ${require_formatDate.formatDate(lateness.after, "short")} each week costs ${rough(brief, lateness.perWeek)}${lateness.once === 0 ? "" : `, and being late at all ${rough(brief, lateness.once)} once`}. It is late ${chanceWords(lateness.chance)}; that is ${rough(brief, lateness.mean)} on average over all futures, ${rough(brief, lateness.meanWhenLate)} when late, not more than ${rough(brief, lateness.p80)} in 8 of 10.${forgone}`)];
}
// ../../packages/charts/src/brief/answers/plain.ts
/** Who said so, and why they would know. */
function estimatesAnswer({ figures }) {
	const { uncertain, withEstimator, withBasis, largest } = figures.estimates;
	if (uncertain === 0) return [text("No duration in the plan is uncertain.")];
	return [text(`Of ${require_groupDigits.groupDigits(uncertain)} uncertain ${uncertain === 1 ? "estimate" : "estimates"} ${withEstimator} say who made them and ${withBasis} why that person would know.`), ...largest.length === 0 ? [] : [text("Those that weigh most:"), {
		kind: "list",
		items: largest.map(({ name, by, basis }) => [
			`${require_program.plainName(name, 80)}: `,
			`${by.length === 0 ? "nobody is named" : by.map((one) => require_program.plainName(one.name, 60)).join(", ")}; `,
			basis === void 0 ? "no basis is stated." : sentence(basis, 160)
		])
	}]];
}
/** Experience: only what the plan holds of it. */
function beforeAnswer({ figures }) {
	return [text(`The plan names no comparable past project: nothing here is checked against one. ${figures.finished === 0 ? "No task is finished yet, so no estimate has been tested by what happened." : `${figures.finished} ${figures.finished === 1 ? "task is" : "tasks are"} finished and counted as they went.`}`)];
}
/** What limited people do to the commitment. */
function peopleAnswer({ brief }) {
	const { people } = brief.commitment;
	if (people === void 0) return [text("People are not limited in this plan.")];
	const sum = brief.spends ? ` and ${rough(brief, people.money)}` : "";
	return [text(`People are kept within what there is of them. Waiting for each other accounts for ${require_formatDays.formatDays(people.workingDays)}${sum} of the commitment.`)];
}
/** What may not be changed. */
function conditionsAnswer({ brief }) {
	const { constraints } = brief.scope;
	if (constraints.length === 0) return [text("The plan states no constraint.")];
	return [text("The plan states these, and they bind every figure only where a task, a date or a sum holds them:"), {
		kind: "list",
		items: constraints.map((each) => [sentence(each, 240)])
	}];
}
/** The sum against what this person may approve. */
function limitWords({ brief, approver }) {
	const { approvesUpTo, covers } = approver;
	if (approvesUpTo === void 0) return "The plan states no limit to what you may approve.";
	const sum = supported(brief, brief.commitment.committed.cost);
	return covers === true ? `You may approve up to ${stated(brief, approvesUpTo)}; ${sum} is within it.` : `You may approve up to ${stated(brief, approvesUpTo)}; ${sum} is above it, so somebody with a higher limit has to approve as well.`;
}
// ../../packages/charts/src/brief/answers/answerOf.ts
/** A question as it is asked, in the figures of this plan. */
function questionWords({ brief }, key) {
	const { committed, asWritten, asked } = brief.commitment;
	const date = require_formatDate.formatDate(committed.date, "short");
	switch (key) {
		case "ask": return "What are you asking me?";
		case "changed": return "What changed since I last saw it?";
		case "level": return `Why ${require_formatPercent.formatPercent(brief.confidence)}?`;
		case "gap": return asWritten.finish === committed.date ? "Why not earlier?" : `The plan says ${require_formatDate.formatDate(asWritten.finish, "short")}; why ${date}?`;
		case "earlier": return asked.finishBy === void 0 && asked.budget === void 0 ? "What about an even chance?" : "What would make what was asked for an even chance?";
		case "cut": return "What if we cut the contingency?";
		case "drivers": return "What drives it, in working days?";
		case "responses": return "What do the responses buy?";
		case "slip": return "If it slips, so what?";
		case "afford": return "Is it affordable, and when?";
		case "estimates": return "Who stands behind the numbers?";
		case "before": return "Have you been here before?";
		case "benefit": return "What do we get for it?";
		case "scope": return "What do we get, and what not?";
		case "people": return "Are there people enough?";
		case "assumptions": return "What does it rest on?";
		case "conditions": return "Are the conditions kept?";
		case "back": return "What would make you come back?";
	}
}
/** Its answer, from the figures of the pre-brief. */
function answerOf(pre, key) {
	const { brief } = pre;
	switch (key) {
		case "ask": return [
			text(strong(brief.decision.ask === void 0 ? commitWords(brief, roomy) : sentence(brief.decision.ask, roomy.text))),
			text(answerLine(brief)),
			text(`${deadline(brief)}${brief.spends ? ` ${limitWords(pre)}` : ""}`)
		];
		case "changed": return changedAnswer(pre);
		case "level": return levelAnswer(pre);
		case "gap": return gapAnswer(pre);
		case "earlier": return evenAnswer(pre);
		case "cut": return cutAnswer(pre);
		case "drivers": return [driversTable(brief, roomy)];
		case "responses": return responsesSection(brief, roomy).blocks;
		case "slip": return slipAnswer(pre);
		case "afford": return affordAnswer(pre);
		case "estimates": return estimatesAnswer(pre);
		case "before": return beforeAnswer(pre);
		case "benefit": return [benefitBlock(brief)];
		case "scope": return scopeSection(brief, roomy).blocks;
		case "people": return peopleAnswer(pre);
		case "assumptions": return [{
			kind: "list",
			items: first(brief.assumptions, roomy.assumptions, (one) => assumptionLine(brief, one, roomy))
		}];
		case "conditions": return conditionsAnswer(pre);
		case "back": return [{
			kind: "list",
			items: brief.triggers.map((trigger) => [`${trigger.proposed ? "Proposed: " : ""}${triggerWords(brief, trigger, roomy)}`])
		}];
	}
}
// ../../packages/charts/src/brief/answers/expected.ts
var withMoney = ({ brief }, days, money) => `${require_formatDays.formatDays(days)}${brief.spends ? ` and ${rough(brief, money)}` : ""}`;
var padding = ({ brief }) => {
	const { contingency, asWritten, holder } = brief.commitment;
	const causes = brief.drivers.rows.slice(0, 3).map(({ name }) => `“${require_program.plainName(name, 50)}”`).join(", ");
	const held = holder === void 0 ? "in one place" : `in one place, by ${who(holder, 60)}`;
	return `The tasks stand at their written values and end on ${require_formatDate.formatDate(asWritten.finish, "short")}. The ${require_formatDays.formatDays(contingency.workingDays)} are held apart, ${held}, and split over causes that add up to them${causes === "" ? "" : `: ${causes} and others`}.`;
};
var past = (pre) => {
	const step = pre.figures.walk.find(({ kind }) => kind === "register");
	if (step === void 0) return "The plan lists no risk and no assumption, so no event is counted at all.";
	return `Events listed in the register add ${withMoney(pre, step.workingDays, step.money)} on average, each with its own chance. Any one of them can be left out and the forecast run again.`;
};
var oneDate = ({ brief }) => {
	const { committed, asWritten } = brief.commitment;
	return `${require_formatDate.formatDate(committed.date, "weekday")} is that date. Said without its chance, ${require_formatDate.formatDate(asWritten.finish, "short")} would be one too, and it holds ${chanceWords(asWritten.finishChance)}.`;
};
var spent = ({ brief, figures }) => {
	const half = figures.steps.find(({ p }) => p === .5);
	const { holder, releaseRule } = brief.commitment;
	return `${holder === void 0 ? "No holder is stated: name one before you sign." : `${require_program.plainName(holder.name, 60)} holds it, not the tasks.`} ${releaseRule === void 0 ? "No release rule is stated." : `Release: ${sentence(releaseRule, 160)}`}${half === void 0 ? "" : ` Half of the futures need no more than ${require_formatDate.formatDate(half.date, "short")}${brief.spends ? ` and ${supported(brief, half.cost)}` : ""}.`}`;
};
var fear = (pre) => {
	const { uncertain, withBasis } = pre.figures.estimates;
	const spread = pre.figures.walk.find(({ kind }) => kind === "spread");
	return `${withBasis} of ${uncertain} uncertain estimates say why whoever made them would know; ask about the others.${spread === void 0 ? "" : ` The ranges along the driving path come to ${require_formatDays.formatDays(spread.workingDays)} on average.`}`;
};
var consulted = ({ figures }) => {
	const { responsible, accountable, consulted: asked, informed } = figures.own;
	if (responsible + accountable + asked + informed === 0) return "True as the plan stands: it names you in no task. Say which ones touch you.";
	return `The plan names you as responsible for ${responsible}, accountable for ${accountable}, consulted on ${asked} and informed of ${informed} tasks.`;
};
/** Objections that are made to nearly every such plan, each with the answer this one has. Common practice, no source. */
var usual = [
	["It is padding in disguise.", padding],
	["The level is arbitrary.", ({ brief, figures }) => stopWords({
		brief,
		figures
	})],
	["Last time's problems will not happen again.", past],
	["Just give me one date.", oneDate],
	["The team will spend it because it is there.", spent],
	["The spread is only the team's fear.", fear],
	["My area was not consulted.", consulted]
];
/** The usual objections with computed answers. */
function expectedLines(pre) {
	return usual.map(([said, reply]) => [strong(`“${said}” `), reply(pre)]);
}
// ../../packages/charts/src/brief/preBriefSheet.ts
/** Questions that are answered; the brief has the rest. */
var most = 12;
/** What one approver is told before the meeting, in words: who they are to the plan, their questions, their objections. */
function preBriefSheet(pre) {
	const { brief, approver, questions } = pre;
	return {
		title: require_program.plainName(brief.plan.title, 120),
		head: `Pre-brief for ${who(approver, 80)} · ${require_formatDate.formatDate(brief.today, "short")}`,
		sections: [
			{
				key: "approver",
				title: "Who it is for",
				blocks: [approverBlock(pre)]
			},
			...kept(questions).map(({ key }) => ({
				key: "questions",
				title: questionWords(pre, key),
				blocks: answerOf(pre, key)
			})),
			raisedSection(pre),
			{
				key: "expected",
				title: "What is said of nearly every such plan",
				blocks: [{
					kind: "list",
					items: expectedLines(pre)
				}]
			},
			runSection(brief)
		]
	};
}
/** The likeliest, and always the last, which is what brings the plan back. */
function kept(questions) {
	return questions.length <= most ? questions : [...questions.slice(0, 11), ...questions.slice(-1)];
}
function approverBlock({ brief, approver, questions }) {
	const { interest, looksFor, stance } = approver;
	const because = [...new Set(questions.flatMap((question) => question.because ?? []))];
	const stands = {
		supports: "supports it",
		neutral: "is neutral",
		resists: "resists it"
	};
	const state = standingWords(brief, approver, roomy);
	return text(strong("Looks after: "), interest === void 0 ? "no interest is stated. " : `${sentence(interest, 200)} `, ...looksFor === void 0 ? [] : [strong("Note: "), `${sentence(looksFor, 240)} `], ...stance === void 0 ? [] : [strong("Stance: "), `${stands[stance]}. `], strong("Decision: "), `${state}. `, because.length === 0 ? "Their role and interest bring no question forward; these are the usual ones." : `The questions come in this order because of ${because.map((word) => `“${require_program.plainName(word, 40)}”`).join(", ")}.`);
}
function raisedSection({ objections, approver }) {
	return {
		key: "raised",
		title: `What ${require_program.plainName(approver.name, 60)} has objected`,
		blocks: objections.length === 0 ? [text("Nothing is recorded.")] : [{
			kind: "list",
			items: objections.map((one) => objectionLine(one, {
				name: 80,
				text: 500
			}))
		}]
	};
}
// ../../packages/charts/src/brief/sheet/markdown.ts
/**
* A sheet as Markdown (CommonMark with tables). Every text is escaped: what a plan says can be neither a link, an
* image, HTML, a heading nor a cell.
*/
function sheetMarkdown(sheet) {
	const sections = sheet.sections.map(({ title, blocks }) => `## ${escapeMarkdown(title)}\n\n${blocks.map(block).join("\n\n")}`);
	return `# ${escapeMarkdown(sheet.title)}\n\n${escapeMarkdown(sheet.head)}\n\n${sections.join("\n\n")}\n`;
}
function block(one) {
	switch (one.kind) {
		case "text": return line(one.line);
		case "list": return one.items.map((item) => `- ${line(item)}`).join("\n");
		case "table": return table(one.head.map(({ text }) => text), one.head.map(({ align }) => align === "end" ? "---:" : ":---"), one.rows.map(({ cells, whole }) => cells.map((cell) => whole === true && cell !== "" ? `**${escapeMarkdown(cell)}**` : escapeMarkdown(cell))));
		case "boxes": {
			const labels = one.rows[0]?.boxes.map(({ label }) => label) ?? [];
			return table([
				"Who",
				...labels,
				"Where it stands"
			], [
				":---",
				...labels.map(() => ":---:"),
				":---"
			], one.rows.map(({ name, boxes, remark }) => [
				escapeMarkdown(name),
				...boxes.map(({ ticked }) => ticked ? "☒" : "☐"),
				escapeMarkdown(remark)
			]));
		}
	}
}
function table(head, rule, rows) {
	const row = (cells) => `| ${cells.join(" | ")} |`;
	return [
		row(head.map(escapeMarkdown)),
		row(rule),
		...rows.map(row)
	].join("\n");
}
function line(spans) {
	return spans.map((span) => typeof span === "string" ? escapeMarkdown(span) : emphasised(span.strong)).join("").trim().replace(/^([-+#=])/, "\\$1").replace(/^(\d{1,9})([.)])/, "$1\\$2");
}
/** Emphasis must not begin or end with a space. */
function emphasised(text) {
	const inner = text.trim();
	if (inner === "") return text;
	const [before, after] = [text.startsWith(" ") ? " " : "", text.endsWith(" ") ? " " : ""];
	return `${before}**${escapeMarkdown(inner)}**${after}`;
}
/** Backslash escapes of CommonMark 0.31 (section 2.4), for what may open something within a line. */
function escapeMarkdown(text) {
	return text.replace(/[\\`*_[\]<>|~&$]/g, "\\$&").replace(/:\/\//g, ":\\//");
}
// src/brief/approverProblem.ts
/** What is wrong with `--for ID`; nothing where the plan knows who that is. */
function approverProblems(plan, who) {
	if (who === void 0 || who === "") return [];
	const known = [...plan.stakeholders, ...plan.people].map(({ id }) => id);
	if (known.includes(who)) return [];
	const approvers = [...new Set(plan.approvals.map((approval) => approval.who))].sort();
	const near = require_program.nearest(who, known);
	const remedy = near !== void 0 ? `Did you mean ${near}?` : approvers.length > 0 ? `Its approvers: ${approvers.join(", ")}.` : known.length > 0 ? `It knows: ${[...known].sort().slice(0, 8).join(", ")}${known.length > 8 ? ", ..." : ""}.` : "It names nobody yet: add `stakeholders`.";
	return [require_program.callProblem("unknown-id", `--for ${who}`, "The plan knows nobody of that id.", remedy)];
}
// src/brief/computeBrief.ts
/** `brief(plan, options)` on threads: the same brief, to the bit, whose parts are each shared out as their own verbs do. */
async function computeBrief({ plan, options, today, workers, onProgress }) {
	const within = (part) => {
		const { from, to } = briefParts[part];
		return (done, total) => onProgress(Math.floor(1e3 * (from + (to - from) * done / Math.max(1, total))), 1e3);
	};
	const asked = (part) => ({
		...options,
		...require_threadsOf.threadsOf(workers),
		onProgress: within(part)
	});
	const outlook = await require_forecastInParallel.forecastInParallel(plan, asked("forecast"));
	const { forecast } = outlook;
	if (forecast === void 0) return { problems: outlook.problems };
	const why = await require_explainInParallel.explainInParallel(plan, asked("explain"));
	const bought = await require_decideInParallel.responsesInParallel(plan, asked("responses"));
	const level = await require_answerAside.answerAside({
		kind: "confidence",
		plan,
		options
	}, within("confidence"));
	const counted = await require_answerAside.answerAside({
		kind: "assumptions",
		plan,
		options
	}, within("assumptions"));
	const { explanation } = why;
	if (explanation === void 0 || bought.responses === void 0 || level.confidence === void 0 || counted.bars === void 0) return { problems: [
		why,
		bought,
		level,
		counted
	].flatMap(({ problems }) => problems) };
	const answers = {
		forecast,
		explanation,
		responses: bought.responses,
		confidence: level.confidence,
		assumptions: counted.bars
	};
	return {
		brief: briefOf(plan, answers, {
			today,
			scenario: options
		}),
		answers,
		problems: outlook.problems
	};
}
/** What a pre-brief says besides: how the asked date becomes even, and what moved since `since`. */
async function computeExtras({ plan, options, workers, onProgress }, since) {
	const asked = {
		...options,
		...require_threadsOf.threadsOf(workers)
	};
	const problems = [];
	let even;
	let comparison;
	const { finishBy, budget } = plan.commitment;
	if (finishBy !== void 0 || budget !== void 0) {
		const found = await require_decideInParallel.reachInParallel(plan, {
			...asked,
			confidence: .5,
			onProgress
		});
		problems.push(...found.problems);
		even = found.reach;
	}
	if (since !== void 0) {
		const { with: _with, without: _without, ...run } = asked;
		const found = await require_compareInParallel.compareInParallel(since, plan, {
			...run,
			onProgress
		});
		problems.push(...found.problems);
		comparison = found.comparison;
	}
	return {
		extras: {
			...even === void 0 ? {} : { even },
			...comparison === void 0 ? {} : { comparison }
		},
		problems
	};
}
// src/brief/sinceOption.ts
/** The version that `--since` names; its problems are printed with its name. `wrong`: it cannot be read. */
async function planSince(path) {
	if (path === void 0 || path === "") return { wrong: false };
	const { name, text, problem } = await require_readDocument.readDocument(path);
	if (text === void 0) {
		if (problem !== void 0) require_program.printProblems([problem], name);
		return { wrong: true };
	}
	const { plan, problems } = require_readPlan.readPlan(text);
	if (problems.length > 0) require_program.printProblems(problems, name);
	return plan === void 0 ? { wrong: true } : {
		since: plan,
		wrong: false
	};
}
// src/brief/writeSheet.ts
/**
* Writes a brief to a file, whole or not at all.
*
* @param force  Without it an existing file stands, so that no plan is written over by mistake.
* @returns false when it could not be written, after saying so
*/
function writeSheet(path, text, force) {
	try {
		require_writeWhole.writeWhole(path, text, force);
	} catch (error) {
		require_program.printProblems([require_whyNotWritten.whyNotWritten(path, error)]);
		return false;
	}
	require_program.printNote(`Wrote ${path}.`);
	return true;
}
// src/text/traceText.ts
/** Figures listed at most; the JSON has them all. */
var MOST = 60;
/** Where the figures of a brief come from, and how to get each of them again. */
function traceText(brief, word, page, planWord) {
	const { stamp, plan, trace = [] } = brief;
	const { width, strong } = page;
	const found = trace.filter((one) => word === "all" || holds(one, word));
	const shown = found.slice(0, MOST);
	const more = found.length - shown.length;
	const sources = [...new Set(shown.map(({ from }) => from))];
	return `${[
		[require_confidenceHead.explanationHead(require_program.plainName(plan.title), stamp, page)],
		require_program.wrap(headOf(found.length, trace.length, word), width).map(strong),
		shown.flatMap(({ figure, value, from, at }) => [`  ${figure} = ${value}`, `    ${from}${at === void 0 ? "" : ` ${at}`}`]),
		more > 0 ? [`  and ${more} more; brief --json has them all as \`trace\``] : [],
		sources.length === 0 ? [] : ["To get them again", ...sources.flatMap((from) => require_program.wrap(`${from}: ${again(from, stamp, planWord)}`, width - 2, "  ")).map((line) => `  ${line}`)],
		require_program.wrap(require_confidenceHead.explanationStamp(stamp), width)
	].filter((block) => block.length > 0).map((block) => block.join("\n")).join("\n\n")}\n`;
}
function holds({ figure, value }, word) {
	const plain = word.toLowerCase().replaceAll(",", "");
	return figure.toLowerCase().includes(plain) || String(value).includes(plain);
}
function headOf(found, all, word) {
	if (word === "all") return `All ${all} figures of the brief, and where each comes from.`;
	if (found === 0) return `None of the ${all} figures of the brief has “${require_program.plainName(word)}” in its place or its value.`;
	return `${found} of the ${all} figures of the brief, and where each comes from.`;
}
/** The call that prints the answer a figure stands in, on the same draws. */
function again(from, { seed, iterations, design }, planWord) {
	if (from === "plan") return "the plan says so";
	if (from === "brief") return "added up from the figures beside it";
	const plain = design === "plain" ? " --design plain" : "";
	return `leeway ${from} ${planWord} --json --seed ${require_shellWord.shellWord(seed)} --iterations ${iterations}${plain}`;
}
// src/verbs/brief.ts
/** Outcomes of sets and variants, and what is read from them. */
var ROWS_AS_TASKS = 16;
/** What an approver reads: one page, the answer first; with `--for`, what this person will ask, answered. */
async function briefVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	const who = values.text("for");
	const out = values.text("out");
	const format = values.oneOf("format", ["markdown", "html"]) ?? (/\.html?$/i.test(out ?? "") ? "html" : "markdown");
	const traced = values.text("trace");
	const workers = values.count("workers", 64);
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	const problems = [...today.problems, ...clashes(values, call)];
	const { since, wrong } = values.problems.length + problems.length > 0 ? { wrong: false } : await planSince(values.text("since"));
	if (wrong) return require_program.exitCodes.invalid;
	let answers;
	let html = "";
	return require_answerVerb.answerVerb(call, values, {
		options,
		problems,
		rowsAsTasks: () => ROWS_AS_TASKS,
		unfit: (plan) => approverProblems(plan, who),
		async ask(plan, onProgress) {
			const job = {
				plan,
				options,
				workers
			};
			const share = who === void 0 ? 1 : .75;
			const computed = await computeBrief({
				...job,
				today: today.value,
				onProgress: (done, total) => onProgress(Math.floor(1e3 * share * done / total), 1e3)
			});
			const { brief } = computed;
			answers = computed.answers;
			if (brief === void 0 || answers === void 0 || who === void 0) return {
				answer: brief,
				problems: computed.problems
			};
			const { extras, problems: more } = await computeExtras({
				...job,
				onProgress: (done, total) => onProgress(Math.floor(1e3 * (share + (1 - share) * done / Math.max(1, total))), 1e3)
			}, since);
			return {
				answer: more.length > 0 ? void 0 : preBriefOf(plan, brief, answers, who, extras),
				problems: [...computed.problems, ...more]
			};
		},
		async draw(answer) {
			if (format === "html" && answers !== void 0) {
				const { pageOfBrief } = await Promise.resolve().then(() => require("./pageOfBrief-DaK1ZjJv.cjs"));
				html = pageOfBrief(answer, answers);
			}
			return out === void 0 || writeSheet(out, textOf(answer), values.has("force"));
		},
		text(answer, page, planWord) {
			if (traced === void 0) return out === void 0 ? textOf(answer) : "";
			return traceText("brief" in answer ? answer.brief : answer, traced, page, planWord);
		}
	});
	function textOf(answer) {
		if (format === "html") return html;
		return sheetMarkdown("brief" in answer ? preBriefSheet(answer) : briefSheet(answer));
	}
}
/** Options that cannot stand together. */
function clashes(values, call) {
	const wrong = [];
	if (values.has("json")) for (const name of [
		"format",
		"out",
		"force"
	]) {
		if (!values.has(name)) continue;
		wrong.push(require_program.callProblem("option-clash", `--${name}`, "--json prints one JSON document on standard output.", "Leave one of them out."));
	}
	for (const name of [
		"format",
		"out",
		"json"
	]) {
		if (!values.has("trace") || !values.has(name)) continue;
		wrong.push(require_program.callProblem("option-clash", `--${name}`, "--trace prints where figures come from, in place of the page; with --json the answer has it as `trace`.", "Leave one of them out."));
	}
	if (values.has("force") && !values.has("out")) wrong.push(require_program.callProblem("option-clash", "--force", "Nothing is written without --out.", "Add --out FILE."));
	if (values.has("since") && !values.has("for")) wrong.push(require_program.callProblem("option-clash", "--since", "What changed since a version is told to one approver.", "Add --for APPROVER, or see `leeway compare OLD NEW`."));
	if (values.text("since") === "-" && call.subject === "-") wrong.push(require_program.callProblem("repeated-plan", "--since -", "Standard input can be one of the plans only.", "Name a file for the other."));
	return wrong;
}
exports.briefSheet = briefSheet;
exports.briefVerb = briefVerb;
exports.preBriefSheet = preBriefSheet;
exports.rooms = rooms;

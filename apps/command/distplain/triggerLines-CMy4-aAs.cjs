const require_engine = require("./engine-Bbth-FEh.cjs");
const require_contingencyLeft = require("./contingencyLeft-o-pRVmRh.cjs");
const require_wilson = require("./wilson-CanC7rIx.cjs");
const require_approvalsState = require("./approvalsState-Bxts4Wl7.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_enumerated = require("./enumerated-CW2v0OFy.cjs");
const require_statedSum = require("./statedSum-C9RA2TpO.cjs");
const require_program = require("./program.cjs");
const require_computeForecast = require("./computeForecast-CDXLTVBe.cjs");
// ../../packages/core/src/live/triggers/evaluateTriggers.ts
/** So near the limit is close: five points of chance, and as much of a ratio. Common practice, no source. */
var near = .05;
/**
* Where each agreed return trigger of a plan stands at a forecast of it.
*
* `tripped` is read off the values as they are printed; sampling limits (95 %; of a chance Wilson's) say whether that is
* `uncertain`. A trigger that has not tripped is `close` where its limits reach the condition, or five points of chance
* (of a cover: 0.05 of the ratio) would. Pure: simulates nothing.
*
* Conditions of an approval that have a day stand among them, under `conditions-of-WHO`: nobody has to agree on those.
*
* @param today  The day of today; the later of it and the status date says whether conditions have lapsed.
* @param left  Contingency left of the same run; triggers on its cover are unknown without it.
*/
function evaluateTriggers(plan, forecast, left, today) {
	const now = [today, plan.statusDate].reduce((a, b) => (b ?? "") > (a ?? "") ? b : a);
	return {
		currency: plan.currency,
		confidence: forecast.committed.confidence,
		triggers: [...plan.returnTriggers.map((trigger) => ({
			id: trigger.id,
			...trigger.name === void 0 ? {} : { name: trigger.name },
			...trigger.note === void 0 ? {} : { note: trigger.note },
			...stateOf(trigger, plan, forecast, left)
		})), ...conditionsOf(plan, now)]
	};
}
function conditionsOf(plan, now) {
	return plan.approvals.flatMap((approval) => {
		const { who, decision, conditions, conditionsBy: by, conditionsMet: met } = approval;
		if (decision !== "approve-subject-to" || conditions === void 0 || by === void 0) return [];
		const said = {
			who,
			name: require_approvalsState.personOf(plan, who).name,
			conditions,
			by,
			...met === void 0 ? {} : { met }
		};
		const unknown = "Neither today nor a status date is known.";
		const state = now === void 0 && met === void 0 ? "unknown" : void 0;
		return [{
			id: `conditions-of-${who}`,
			condition: "conditionsBy",
			state: state ?? (require_approvalsState.hasLapsed(approval, now ?? by) ? "tripped" : "quiet"),
			uncertain: false,
			approval: said,
			...state === void 0 ? {} : { unknown }
		}];
	});
}
function stateOf(trigger, plan, forecast, left) {
	const { chanceOfDateBelow, chanceOfBudgetBelow, contingencyCoverBelow, signpost } = trigger;
	if (chanceOfDateBelow !== void 0) {
		const { chance, asked } = forecast;
		return chanceState("chanceOfDateBelow", chanceOfDateBelow, agreedOf(left?.days, left?.days?.agreedDate) ?? agreedOf({ chance: chance.finishBy }, asked.finishBy), forecast);
	}
	if (chanceOfBudgetBelow !== void 0) {
		const { chance, asked } = forecast;
		return chanceState("chanceOfBudgetBelow", chanceOfBudgetBelow, agreedOf(left?.money, left?.money?.agreed) ?? agreedOf({ chance: chance.budget }, asked.budget), forecast);
	}
	if (contingencyCoverBelow !== void 0) return coverState(contingencyCoverBelow, left);
	if (signpost !== void 0) return signpostState(signpost, plan);
	if (trigger.finishLaterThan !== void 0) return finishState(trigger.finishLaterThan, plan, forecast);
	return costState(trigger.costAbove ?? Number.POSITIVE_INFINITY, forecast);
}
function agreedOf(cover, asked) {
	if (cover?.chance === void 0 || asked === void 0) return void 0;
	return {
		value: cover.chance,
		asked,
		from: cover.agreedFrom ?? "plan"
	};
}
function chanceState(condition, limit, agreed, { iterations }) {
	if (agreed === void 0) {
		const [what, key] = condition === "chanceOfDateBelow" ? ["date", "finishBy"] : ["sum", "budget"];
		return {
			condition,
			state: "unknown",
			uncertain: false,
			unknown: `No ${what} was agreed: give \`commitment: { ${key}: ... }\`, or have the plan signed.`
		};
	}
	const { value, asked, from } = agreed;
	const { low, high } = require_wilson.wilson(Math.round(value * iterations), iterations);
	const tripped = value < limit - require_engine.tolerance;
	const close = low < limit - 1e-9 || value < limit + near - 1e-9;
	return {
		condition,
		state: tripped ? "tripped" : close ? "close" : "quiet",
		uncertain: low < limit && limit <= high,
		chance: {
			value,
			low,
			high,
			limit,
			asked,
			from
		}
	};
}
function coverState(limit, left) {
	const condition = "contingencyCoverBelow";
	const parts = ["money", "days"].flatMap((kind) => {
		const cover = left?.[kind];
		return cover === void 0 ? [] : [coverPart(kind, cover, limit)];
	});
	if (parts.length === 0) return {
		condition,
		state: "unknown",
		uncertain: false,
		unknown: "Neither a sum nor a date was agreed, so no contingency can be left."
	};
	const worst = [
		"tripped",
		"close",
		"quiet"
	].find((state) => parts.some(({ now }) => now.state === state));
	return {
		condition,
		state: worst ?? "quiet",
		uncertain: parts.some(({ now, uncertain }) => uncertain && now.state === worst),
		cover: {
			limit,
			parts: parts.map(({ now }) => now)
		}
	};
}
function coverPart(kind, cover, limit) {
	const at = (committed) => {
		const exposure = committed - cover.asWritten;
		return {
			...cover,
			exposure,
			spare: cover.left - exposure
		};
	};
	const tripped = require_contingencyLeft.coverIsBelow(cover, limit);
	const { left, exposure, ratio, committed, low, high } = cover;
	const atLow = require_contingencyLeft.coverIsBelow(at(cover.low), limit);
	const atHigh = require_contingencyLeft.coverIsBelow(at(cover.high), limit);
	const close = atHigh || exposure > 1e-9 && require_contingencyLeft.coverIsBelow(cover, limit + near);
	const state = tripped ? "tripped" : close ? "close" : "quiet";
	return {
		now: {
			kind,
			left,
			exposure,
			committed,
			low,
			high,
			...ratio === void 0 ? {} : { ratio },
			state
		},
		uncertain: atLow !== atHigh
	};
}
function signpostState(id, plan) {
	const condition = "signpost";
	const assumption = plan.assumptions.find((each) => each.id === id);
	if (assumption === void 0) return {
		condition,
		state: "unknown",
		uncertain: false,
		unknown: `There is no assumption ${id} here.`
	};
	const { name: statement, signpost: sign, tripped, status, reviewBy } = assumption;
	const due = reviewBy !== void 0 && plan.statusDate !== void 0 && reviewBy <= plan.statusDate;
	return {
		condition,
		state: tripped !== void 0 || status === "occurred" ? "tripped" : "quiet",
		uncertain: false,
		signpost: {
			assumption: id,
			statement,
			...sign === void 0 ? {} : { sign },
			...tripped === void 0 ? {} : { tripped },
			status,
			...due && status === "open" ? { reviewDue: reviewBy } : {}
		}
	};
}
function finishState(limit, plan, { committed, finish }) {
	const { date: value, lowDate: low, highDate: high } = committed;
	const later = momentAt(finish.curve, committed.confidence + near);
	const laterDay = require_engine.dayNumber(plan.start) + Math.ceil(later - require_engine.tolerance) - 1;
	return {
		condition: "finishLaterThan",
		state: value > limit ? "tripped" : high > limit || require_engine.isoDate(laterDay) > limit ? "close" : "quiet",
		uncertain: low <= limit && limit < high,
		finish: {
			value,
			low,
			high,
			limit
		}
	};
}
function costState(limit, { committed, cost }) {
	const { cost: value, costLow: low, costHigh: high } = committed;
	const above = limit + require_engine.tolerance * Math.max(1, Math.abs(limit));
	const tripped = value > above;
	const close = high > above || momentAt(cost.curve, committed.confidence + near) > above;
	return {
		condition: "costAbove",
		state: tripped ? "tripped" : close ? "close" : "quiet",
		uncertain: low <= above && above < high,
		cost: {
			value,
			low,
			high,
			limit
		}
	};
}
/** The curve at the first of its probabilities that is p or above; its end beyond. */
function momentAt({ p, at }, level) {
	const index = p.findIndex((each) => each >= level - require_engine.tolerance);
	return at[index < 0 ? at.length - 1 : index] ?? Number.NEGATIVE_INFINITY;
}
// ../../packages/charts/src/triggers/triggerSentences.ts
/** The condition of a return trigger, as it follows "we come back when". */
function triggerCondition({ currency }, trigger) {
	const { chance, cover, signpost, finish, cost } = trigger;
	if (chance !== void 0) return `the chance of ${typeof chance.asked === "string" ? `finishing by ${require_formatDate.formatDate(chance.asked, "weekday")}` : `keeping within ${require_statedSum.statedSum(chance.asked, currency)}`} is below ${require_formatPercent.formatPercent(chance.limit)}`;
	if (cover !== void 0) return cover.limit === 1 ? "the contingency left is less than the exposure left" : `the contingency left is less than ${coverPercent(cover.limit)} of the exposure left`;
	if (signpost !== void 0) {
		const sign = signpost.sign?.trim().replace(/\.$/, "");
		return sign === void 0 || sign === "" ? `this no longer holds: ${plain(signpost.statement)}` : `this sign is seen: ${sign}`;
	}
	if (finish !== void 0) return `the committed date is later than ${require_formatDate.formatDate(finish.limit, "weekday")}`;
	if (trigger.approval !== void 0) {
		const { name, conditions, by } = trigger.approval;
		return `the condition of ${name} is not met by ${require_formatDate.formatDate(by, "weekday")}: ${plain(conditions)}`;
	}
	if (cost !== void 0) return `the committed sum is above ${require_statedSum.statedSum(cost.limit, currency)}`;
	return CONDITIONS[trigger.condition];
}
/** How it stands, in a sentence; the limits of sampling beside a value that has them. */
function triggerStands({ currency }, trigger) {
	const { chance, cover, signpost, finish, cost, unknown } = trigger;
	if (unknown !== void 0) return unknown;
	if (chance !== void 0) {
		const { value, low, high, from } = chance;
		const until = from === "plan" ? ` ${UNTIL_SIGNED}` : "";
		return `It is ${require_formatPercent.formatPercent(value)} (${percentSpan(low, high)}).${until}`;
	}
	if (cover !== void 0) {
		const said = cover.parts.map((part) => coverWords(part, currency)).join("; ");
		return `${said.slice(0, 1).toUpperCase()}${said.slice(1)}.`;
	}
	if (signpost !== void 0) {
		if (signpost.status === "occurred") return "The assumption has proved wrong.";
		if (signpost.tripped !== void 0) return `Seen on ${require_formatDate.formatDate(signpost.tripped, "weekday")}.`;
		if (signpost.status === "closed") return "Not seen, and it can no longer prove wrong.";
		return signpost.reviewDue === void 0 ? "Not seen." : `Not seen, but nobody says it was looked at: the review was due on ${require_formatDate.formatDate(signpost.reviewDue, "weekday")}.`;
	}
	if (trigger.approval !== void 0) {
		const { met } = trigger.approval;
		if (met !== void 0) return `Met on ${require_formatDate.formatDate(met, "weekday")}.`;
		return trigger.state === "tripped" ? "The day has passed, and nobody says that it was met." : "Not met yet.";
	}
	if (finish !== void 0) {
		const { value, low, high } = finish;
		const span = low === high ? "" : ` (${require_formatDate.formatDate(low, "weekday-no-year")} to ${require_formatDate.formatDate(high, "weekday-no-year")})`;
		return `It is ${require_formatDate.formatDate(value, "weekday")}${span}.`;
	}
	if (cost !== void 0) {
		const { value, low, high } = cost;
		const sum = (of) => require_formatMoney.formatMoney(require_roundToLimits.roundToLimits(of, low, high), "");
		const span = sum(low) === sum(high) ? "" : ` (${sum(low)} to ${sum(high)})`;
		return `It is ${currency} ${sum(value)}${span}.`;
	}
	return "";
}
/** What a trigger that stands like this asks for. */
function triggerAsks({ state, uncertain }) {
	if (state === "tripped") return `Come back to the approvers.${uncertain ? " It lies within the limits of sampling: more futures would settle it." : ""}`;
	if (state === "close") return "Close: look for what would help before it trips.";
	return "";
}
/** How many trip and how many are close, in a sentence. */
function triggersSentence({ triggers }) {
	if (triggers.length === 0) return "The plan agrees on no return triggers.";
	const count = (state) => triggers.filter((each) => each.state === state).length;
	const tripped = count("tripped");
	const close = count("close");
	const unknown = count("unknown");
	const all = triggers.length === 1 ? "The agreed return trigger" : `Of ${triggers.length} agreed return triggers`;
	if (triggers.length === 1) return `${all} ${{
		tripped: "has tripped",
		close: "is close",
		quiet: "is quiet",
		unknown: "cannot be measured"
	}[triggers[0]?.state ?? "quiet"]}.`;
	const parts = [
		tripped === 0 ? "none has tripped" : `${tripped} ${tripped === 1 ? "has" : "have"} tripped`,
		...close === 0 ? [] : [`${close} ${close === 1 ? "is" : "are"} close`],
		...unknown === 0 ? [] : [`${unknown} cannot be measured`]
	];
	return `${all} ${require_enumerated.enumerated(parts)}.`;
}
var UNTIL_SIGNED = "Until a signed version is kept beside the plan, it is measured against what the plan asks for.";
var CONDITIONS = {
	chanceOfDateBelow: "the chance of the date falls too low",
	chanceOfBudgetBelow: "the chance of the sum falls too low",
	contingencyCoverBelow: "the contingency left no longer covers the exposure left",
	signpost: "a sign is seen",
	finishLaterThan: "the committed date is too late",
	costAbove: "the committed sum is too high",
	conditionsBy: "a condition of an approval is not met by its day"
};
function coverWords(cover, currency) {
	const { kind, left, exposure, ratio, committed, low, high } = cover;
	const step = require_roundToLimits.limitStep(committed, low, high);
	const amount = (value) => kind === "money" ? require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, step), currency) : require_formatDays.formatDays(value);
	if (exposure <= 0) return `in ${kind}, ${amount(left)} left and no exposure`;
	const gone = left < 0 ? `none left, ${amount(-left)} over,` : `${amount(left)} left`;
	const part = ratio === void 0 || left < 0 ? "" : ` (${coverPercent(ratio)} of it)`;
	return `in ${kind}, ${gone} for ${amount(exposure)} of exposure${part}`;
}
/** A cover may be above 100 %. */
function coverPercent(ratio) {
	return ratio <= 1 ? require_formatPercent.formatPercent(ratio) : `${require_groupDigits.groupDigits(Math.round(ratio * 100))} %`;
}
function percentSpan(low, high) {
	const [from, to] = [require_formatPercent.formatPercent(low), require_formatPercent.formatPercent(high)];
	return from === to ? `limits ${from}` : `${from.replace(/ %$/, "")} to ${to}`;
}
function plain(statement) {
	return statement.trim().replace(/\.$/, "");
}
// src/history/computeStanding.ts
/** All of one run, so that no two figures can disagree. `standing` is absent when a problem is an error. */
async function computeStanding(job) {
	const { text, plan, options, workers, signed, today } = job;
	const result = await require_computeForecast.computeForecast({
		text,
		options,
		...workers === void 0 ? {} : { workers }
	});
	const problems = result.problems.filter(({ line }) => line === void 0);
	const { forecast } = result;
	if (forecast === void 0) return { problems: result.problems };
	const { left } = require_contingencyLeft.contingencyLeft(plan, {
		...options,
		...signed === void 0 ? {} : { signed },
		ahead: false,
		settled: false
	});
	return {
		standing: {
			plan,
			forecast,
			left,
			triggers: evaluateTriggers(plan, forecast, left, today)
		},
		problems
	};
}
// src/text/triggerLines.ts
var ORDER = [
	"tripped",
	"close",
	"unknown",
	"quiet"
];
var MARKS = {
	tripped: "TRIPPED",
	close: "close",
	unknown: "not measured",
	quiet: "quiet"
};
/** Where every agreed return trigger stands, the worst first. */
function triggerLines(now, { width, strong }) {
	const sorted = [...now.triggers].sort((a, b) => ORDER.indexOf(a.state) - ORDER.indexOf(b.state));
	return [...require_program.wrap(triggersSentence(now), width), ...sorted.flatMap((trigger) => {
		const condition = `we come back when ${triggerCondition(now, trigger)}`;
		const name = trigger.name === void 0 ? "" : ` (${trigger.name})`;
		const [first = "", ...rest] = require_program.wrap(`${MARKS[trigger.state]}: ${condition}${name}.`, width - 2);
		const stands = [triggerStands(now, trigger), triggerAsks(trigger)].filter((text) => text !== "");
		return [
			`  ${trigger.state === "tripped" ? strong(first) : first}`,
			...rest.map((line) => `    ${line}`),
			...require_program.wrap(stands.join(" "), width - 4).map((line) => `    ${line}`)
		];
	})];
}
Object.defineProperty(exports, "computeStanding", {
	enumerable: true,
	get: function() {
		return computeStanding;
	}
});
Object.defineProperty(exports, "triggerLines", {
	enumerable: true,
	get: function() {
		return triggerLines;
	}
});

const require_formatChance = require("./formatChance-DsebNIGf.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_holdsWords = require("./holdsWords-DjRJP_ZB.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_statedSum = require("./statedSum-C9RA2TpO.cjs");
const require_moneyWords = require("./moneyWords-DDKtVBSe.cjs");
// src/text/answer.ts
/** The sentence everything else explains: what to commit to, and how often it holds. */
function commitSentence(forecast) {
	const { committed } = forecast;
	const date = require_formatDate.formatDate(committed.date, "long");
	const money = require_moneyWords.hasMoney(forecast);
	const holds = require_holdsWords.holdsWords({
		each: require_formatChance.formatChance(committed.confidence),
		both: require_formatChance.formatChance(committed.both, "tenths"),
		date: forecast.finish.sd === 0,
		sum: forecast.cost.sd === 0,
		money
	});
	return `Commit to ${date}${money ? ` and ${require_moneyWords.committedSum(forecast)}` : ""}: ${holds}.`;
}
/** A chance of one of the two; where no future moves it, it is certain or it cannot be. */
function chanceOf(p, { sd }, style) {
	if (sd > 0) return require_formatChance.formatChance(p, style);
	return p >= 1 ? "certain" : "certainly not";
}
/** The chance of what the plan's commitment asks for; undefined when it asks for nothing. */
function askedSentence(forecast) {
	const { asked, chance, plan } = forecast;
	const wanted = [];
	const chances = [];
	if (asked.finishBy !== void 0 && chance.finishBy !== void 0) {
		wanted.push(require_formatDate.formatDate(asked.finishBy, "long"));
		chances.push(`${chanceOf(chance.finishBy, forecast.finish, "tenths")} by that day`);
	}
	if (asked.budget !== void 0 && chance.budget !== void 0) {
		wanted.push(require_statedSum.statedSum(asked.budget, plan.currency));
		chances.push(`${chanceOf(chance.budget, forecast.cost, "tenths")} within that sum`);
	}
	if (wanted.length === 0) return void 0;
	if (chance.both !== void 0) {
		const sd = Math.max(forecast.finish.sd, forecast.cost.sd);
		chances.push(`${chanceOf(chance.both, { sd }, "tenths")} both`);
	}
	return `You asked for ${wanted.join(" and ")}: ${chances.join(", ")}.`;
}
/** What the plan says when every estimate goes its written way, and how rarely a future does as well. */
function asWrittenSentence(forecast) {
	const { asWritten, finish, cost, plan } = forecast;
	const date = require_formatDate.formatDate(asWritten.finish, "long");
	const early = chanceOf(finish.asWrittenChance, finish, "closest");
	if (!require_moneyWords.hasMoney(forecast)) return `The plan as written says ${date}. Chance of finishing as early: ${early}.`;
	return `The plan as written says ${date} and ${require_statedSum.statedSum(asWritten.cost, plan.currency)}. Chance of finishing as early: ${early}; of costing no more: ${chanceOf(cost.asWrittenChance, cost, "closest")}.`;
}
/** What the commitment holds above the plan as written. */
function contingencySentence(forecast) {
	const { contingency, committed, people, plan } = forecast;
	const half = (committed.costHigh - committed.costLow) / 2;
	const money = require_roundToLimits.roundToLimits(contingency.money, contingency.money - half, contingency.money + half);
	return `Contingency: ${require_formatDays.formatDays(contingency.workingDays)} (${require_formatDays.formatDays(contingency.calendarDays, "calendar day")})${require_moneyWords.hasMoney(forecast) ? ` and ${require_formatMoney.formatMoney(money, plan.currency)}` : ""}.${people === void 0 ? "" : ` Limited people account for ${require_formatDays.formatDays(people.workingDays)} of the finish.`}`;
}
/** What is needed to get the same figures again. */
function stampSentence(forecast) {
	return `Run: seed ${forecast.seed}, ${require_groupDigits.groupDigits(forecast.iterations)} ${forecast.iterations === 1 ? "future" : "futures"}, ${forecast.design} design, plan ${forecast.plan.sha256.slice(0, 12)}, engine ${forecast.version}.`;
}
Object.defineProperty(exports, "asWrittenSentence", {
	enumerable: true,
	get: function() {
		return asWrittenSentence;
	}
});
Object.defineProperty(exports, "askedSentence", {
	enumerable: true,
	get: function() {
		return askedSentence;
	}
});
Object.defineProperty(exports, "commitSentence", {
	enumerable: true,
	get: function() {
		return commitSentence;
	}
});
Object.defineProperty(exports, "contingencySentence", {
	enumerable: true,
	get: function() {
		return contingencySentence;
	}
});
Object.defineProperty(exports, "stampSentence", {
	enumerable: true,
	get: function() {
		return stampSentence;
	}
});

const require_formatChance = require("./formatChance-DsebNIGf.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_statedSum = require("./statedSum-C9RA2TpO.cjs");
// ../../packages/charts/src/sentences/movedSentences.ts
/** Whether either plan speaks of money at all. */
function hasSums({ from, to }) {
	return from.cost !== 0 || to.cost !== 0;
}
/** A difference on the same draws: two significant digits; none below half a unit. */
function roundMove(money) {
	return Math.abs(money) < .5 ? 0 : require_roundSignificant.roundSignificant(money, 2);
}
/** From which date to which, how far that is, and how much dearer. */
function movedSentence(comparison) {
	const { from, to, difference, plan } = comparison;
	const days = daysWords(difference.workingDays);
	const was = require_formatDate.formatDate(from.date, "weekday");
	const sum = hasSums(comparison) ? moneyWords(difference.money, plan.currency) : "";
	if (from.date !== to.date) {
		const parts = [days === "" ? "no working day lies between them" : days, sum].filter((part) => part !== "");
		return `The committed date moved from ${was} to ${require_formatDate.formatDate(to.date, "weekday")}: ${parts.join(", and ")}.`;
	}
	if (days === "" && (sum === "" || roundMove(difference.money) === 0)) return `The committed date stays ${was}: nothing moved.`;
	return `The committed date stays ${was}: ${[days, sum].filter((part) => part !== "").join(", and ")}.`;
}
function daysWords(days) {
	const text = require_formatDays.formatDays(Math.abs(days));
	return text.startsWith("0 ") ? "" : `${text} ${days < 0 ? "earlier" : "later"}`;
}
function moneyWords(money, currency) {
	const rounded = roundMove(money);
	if (rounded === 0) return "for the same sum";
	return `${require_formatMoney.formatMoney(Math.abs(rounded), currency)} ${rounded < 0 ? "cheaper" : "dearer"}`;
}
/** What the commitment is now, and what the chances of what was asked for have become. */
function standsSentences(comparison) {
	const { to, plan, confidence, asked } = comparison;
	const sum = require_formatMoney.formatMoney(require_roundToLimits.roundToLimits(to.cost, to.costLow, to.costHigh), plan.currency);
	const held = `holds ${require_formatChance.formatChance(confidence)}`;
	const date = require_formatDate.formatDate(to.date, "long");
	const now = hasSums(comparison) ? `Now ${date} and ${sum}: each ${held}.` : `Now ${date}: it ${held}.`;
	const chances = [];
	const change = (from, is) => require_formatPercent.formatPercent(from) === require_formatPercent.formatPercent(is) ? `stays at ${require_formatPercent.formatPercent(is)}` : `goes from ${require_formatPercent.formatPercent(from)} to ${require_formatPercent.formatPercent(is)}`;
	if (asked.finishBy !== void 0) {
		const { date: by, from, to: is } = asked.finishBy;
		chances.push(`of finishing by ${require_formatDate.formatDate(by, "weekday")} ${change(from, is)}`);
	}
	if (asked.budget !== void 0) {
		const { sum: within, from, to: is } = asked.budget;
		chances.push(`of staying within ${require_statedSum.statedSum(within, plan.currency)} ${change(from, is)}`);
	}
	return chances.length === 0 ? [now] : [now, `The chance ${chances.join(", that ")}.`];
}
/** What a move is; how far sampled orders may be off. */
function meaningOfMoves(comparison) {
	const { orders, moves, plan } = comparison;
	if (orders.groups < 2) return void 0;
	const meaning = `Each move is what its change adds, averaged over ${orders.all ? "every order in which the changes can be made" : `${orders.taken} orders in which the changes can be made`}, on the same draws; together they are the difference.`;
	if (orders.all) return meaning;
	const days = Math.max(...moves.map(({ error }) => error.workingDays));
	const money = Math.max(...moves.map(({ error }) => error.money));
	const sum = hasSums(comparison) ? ` and ${require_statedSum.statedSum(require_roundSignificant.roundSignificant(money, 1), plan.currency)}` : "";
	return `${meaning} Standard error of a move from the orders sampled: at most ${require_formatDays.formatDays(days)}${sum}.`;
}
Object.defineProperty(exports, "hasSums", {
	enumerable: true,
	get: function() {
		return hasSums;
	}
});
Object.defineProperty(exports, "meaningOfMoves", {
	enumerable: true,
	get: function() {
		return meaningOfMoves;
	}
});
Object.defineProperty(exports, "movedSentence", {
	enumerable: true,
	get: function() {
		return movedSentence;
	}
});
Object.defineProperty(exports, "roundMove", {
	enumerable: true,
	get: function() {
		return roundMove;
	}
});
Object.defineProperty(exports, "standsSentences", {
	enumerable: true,
	get: function() {
		return standsSentences;
	}
});

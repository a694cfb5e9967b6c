const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
// ../../packages/charts/src/contingencyLeft/leftFinding.ts
/** How far the contingency that is left covers what it has to, in one sentence without its stop. */
function leftFinding({ ahead, confidence }, measure) {
	const { cover, say, amount, round } = measure;
	const first = ahead[0] === void 0 ? 0 : amount(ahead[0].exposure);
	if (cover === void 0) return `${say(first)} of contingency would cover what remains in ${require_formatPercent.formatPercent(confidence)} of futures; no ${measure.what} was agreed to hold it against`;
	const { left, exposure, spare, ratio } = cover;
	if (left < 0) return `No contingency is left: the plan as written is ${say(-left)} over what was agreed, and ${say(Math.max(0, exposure))} may still come`;
	if (exposure <= 0 || ratio === void 0) return `${say(left)} of contingency is left and nothing remains to cover`;
	const against = `${say(left)} of contingency left against ${say(exposure)} that may still be needed`;
	if (spare >= 0) return `${against}: enough, with ${say(round(left) - round(exposure))} to spare`;
	const later = ahead.find(({ exposure: one }) => amount(one) <= left);
	const when = later === void 0 ? "" : `; if all goes as written, enough from ${require_formatDate.formatDate(later.date)} on`;
	return `${against}: ${require_formatPercent.formatPercent(ratio)} of it${when}`;
}
// ../../packages/charts/src/contingencyLeft/leftMeasure.ts
/** Money to the digits that the limits of the committed sum support, or of the exposure where there is none. */
function leftMoney({ money, plan, ahead }) {
	const size = money?.committed ?? ahead[0]?.exposure.money ?? 0;
	const step = money === void 0 ? require_roundToLimits.limitStep(size, size, size) : require_roundToLimits.limitStep(size, money.low, money.high);
	const rounded = (value) => require_roundToLimits.roundToStep(value, step);
	return {
		cover: money,
		amount: (effect) => effect.money,
		round: rounded,
		say: (value) => require_formatMoney.formatMoney(rounded(value), plan.currency),
		column: (value) => require_formatMoney.formatMoney(rounded(value), ""),
		unit: plan.currency,
		what: "sum"
	};
}
/** The working days of contingency, as the chart of what is left reads them. */
function leftDays({ days }) {
	return {
		cover: days,
		amount: (effect) => effect.workingDays,
		round: (value) => Math.abs(value) < 9.95 ? Math.round(10 * value) / 10 : Math.round(value),
		say: (value) => require_formatDays.formatDays(value),
		column: (value) => require_formatDays.formatDays(value, ""),
		unit: "working days",
		what: "date"
	};
}
// ../../packages/charts/src/fundsMonths/monthName.ts
/** "Oct 2027", of `2027-10`. */
function monthName(month) {
	return require_formatDate.formatDate(`${month}-01`).replace(/^\d+ /, "");
}
// ../../packages/charts/src/fundsMonths/fundsFinding.ts
/** Whether the money released covers every month, the first that it does not, and what would cure it. */
function fundsFinding(budget) {
	const { funds, months, confidence, total, plan } = budget;
	const level = require_formatPercent.formatPercent(confidence);
	if (months.length === 0) return "The plan has no money by month";
	if (funds === void 0) {
		const step = require_roundToLimits.limitStep(total.committed, total.low, total.high);
		const sum = (value) => require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, step), "");
		const most = months.reduce((so, one) => one.spent.split > so.spent.split ? one : so);
		return `${plan.currency} ${sum(most.spent.split)} of ${sum(total.committed)} falls due in ${monthName(most.month)}, the month that takes most`;
	}
	const { firstShort } = funds;
	if (firstShort === void 0) return `Money released covers every month in at least ${level} of futures`;
	return `${`Money runs short by the end of ${monthName(firstShort.month)}, covered in ${require_formatPercent.formatPercent(firstShort.chanceCovered)} and not ${level}`}: ${fundsCureWords(budget).join(", or ")}`;
}
/** The ways to cover every month at the level: more money, or the same earlier. None where every month is covered. */
function fundsCureWords({ funds, total, plan }) {
	if (funds?.more === void 0) return [];
	const step = require_roundToLimits.limitStep(total.committed, total.low, total.high);
	const more = `${require_formatMoney.formatMoney(require_roundToLimits.roundUpToStep(funds.more.amount, Math.max(1, step)), plan.currency)} more by ${require_formatDate.formatDate(funds.more.by)} would do`;
	const [first, ...others] = funds.earlier;
	if (first === void 0 || funds.lacking > 0) return [more];
	const days = first.days === 1 ? "1 day" : `${first.days} days`;
	const rest = others.length === 0 ? "" : ` and ${others.length === 1 ? "one later release" : `${others.length} later releases`} with it`;
	return [more, `the release of ${require_formatDate.formatDate(first.from)} ${days} earlier${rest}`];
}
Object.defineProperty(exports, "fundsFinding", {
	enumerable: true,
	get: function() {
		return fundsFinding;
	}
});
Object.defineProperty(exports, "leftDays", {
	enumerable: true,
	get: function() {
		return leftDays;
	}
});
Object.defineProperty(exports, "leftFinding", {
	enumerable: true,
	get: function() {
		return leftFinding;
	}
});
Object.defineProperty(exports, "leftMoney", {
	enumerable: true,
	get: function() {
		return leftMoney;
	}
});
Object.defineProperty(exports, "monthName", {
	enumerable: true,
	get: function() {
		return monthName;
	}
});

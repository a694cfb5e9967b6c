const require_enumerated = require("./enumerated-CW2v0OFy.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
// ../../packages/charts/src/drift/driftSentences.ts
/** How date and sum drifted from the first forecast to the last. */
function driftSentence({ points, moved }) {
	const [first] = points;
	const last = points.at(-1);
	if (first === void 0 || last === void 0) return "No forecast was kept yet.";
	const date = require_formatDate.formatDate(last.entry.finish.committed.date, "weekday");
	const sum = keptSum(last);
	if (points.length === 1) return `One forecast was kept: ${date}${sum === void 0 ? "" : ` and ${sum}`}.`;
	const from = require_formatDate.formatDate(first.entry.finish.committed.date, "weekday");
	const days = moved.days === 0 ? `The committed date stays ${date}` : `The committed date moved from ${from} to ${date}: ${daysWords(moved.days)}`;
	const was = keptSum(first);
	if (sum === void 0 || was === void 0 || moved.money === void 0) return `${days}.`;
	const money = require_movedSentences.roundMove(moved.money);
	return money === 0 ? `${days}; the committed sum stays ${sum}.` : `${days}; the committed sum from ${was} to ${sum}: ${moneyWords(money, last.entry.currency)}.`;
}
/** With which forecast the date moved most; undefined where it never did, or in one step. */
function largestSentence({ points, largest }) {
	if (largest?.moved === void 0 || largest.moved.days === 0) return void 0;
	if (points.filter(({ moved }) => (moved?.days ?? 0) !== 0).length < 2) return void 0;
	const { what } = largest.entry.change;
	return `It moved most with the forecast of ${require_formatDate.formatDate(largest.asOf, "weekday")}, ${daysWords(largest.moved.days)}: ${what}`;
}
/** What makes two forecasts in a row less than alike, in words; undefined where they differ by progress alone. */
function termsWords({ terms = [], entry }) {
	const words = {
		plan: "the plan itself was changed",
		asked: "another date or sum is asked for",
		confidence: `the level is ${require_formatPercent.formatPercent(entry.confidence)} now`,
		currency: `sums are in ${entry.currency} now`,
		draws: "other futures were drawn",
		version: `another version of the program, ${entry.version}`
	};
	return terms.length === 0 ? void 0 : require_enumerated.enumerated(terms.map((term) => words[term]));
}
/** The committed sum of a forecast, to the digits its limits support; undefined where the plan speaks of no money. */
function keptSum({ entry }) {
	const { committed, low, high, p10 } = entry.cost;
	if (committed === 0 && p10 === 0 && entry.asked.budget === void 0) return void 0;
	return require_formatMoney.formatMoney(require_roundToLimits.roundToLimits(committed, low, high), entry.currency);
}
/** "5 calendar days later". */
function daysWords(days) {
	if (days === 0) return "the same day";
	return `${require_formatDays.formatDays(Math.abs(days), "calendar day")} ${days < 0 ? "earlier" : "later"}`;
}
function moneyWords(rounded, currency) {
	return `${require_formatMoney.formatMoney(Math.abs(rounded), currency)} ${rounded < 0 ? "cheaper" : "dearer"}`;
}
Object.defineProperty(exports, "daysWords", {
	enumerable: true,
	get: function() {
		return daysWords;
	}
});
Object.defineProperty(exports, "driftSentence", {
	enumerable: true,
	get: function() {
		return driftSentence;
	}
});
Object.defineProperty(exports, "keptSum", {
	enumerable: true,
	get: function() {
		return keptSum;
	}
});
Object.defineProperty(exports, "largestSentence", {
	enumerable: true,
	get: function() {
		return largestSentence;
	}
});
Object.defineProperty(exports, "termsWords", {
	enumerable: true,
	get: function() {
		return termsWords;
	}
});

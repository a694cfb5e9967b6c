const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
// ../../packages/charts/src/words/formatChance.ts
/**
* A chance in words a meeting understands. It never says never: a finite number of futures cannot.
*
* - under 2 %: "fewer than 1 in 50"; over 98 %: "more than 49 in 50"
* - a whole number of tenths, to half a percent: "8 times in 10"
* - anything else: "74 %"
*
* @param style  `"tenths"` always answers in tenths between those ends, with "about" where it rounds:
*               "about 7 times in 10".
*/
function formatChance(p, style = "closest") {
	if (!Number.isFinite(p)) return "not known";
	if (p < .02) return "fewer than 1 in 50";
	if (p > .98) return "more than 49 in 50";
	const tenths = Math.round(p * 10);
	const exact = Math.abs(p * 10 - tenths) <= .05 + 1e-12;
	const atEnd = tenths < 1 || tenths > 9;
	if (style === "closest" && (atEnd || !exact)) return require_formatPercent.formatPercent(p);
	if (atEnd) return p < .5 ? "fewer than 1 in 20" : "more than 19 in 20";
	const words = tenths === 1 ? "1 time in 10" : `${tenths} times in 10`;
	return exact ? words : `about ${words}`;
}
Object.defineProperty(exports, "formatChance", {
	enumerable: true,
	get: function() {
		return formatChance;
	}
});

const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_program = require("./program.cjs");
// ../../packages/charts/src/tornado/heldText.ts
/**
* What an item is held at, in the words of a chart: sums as everywhere else, and of an assumption that it
* holds or is wrong, since "occurs" could be read as either.
*/
function heldText(bar, side, currency) {
	if (bar.kind === "assumption" && bar.sides === "absent-occurs") return side === "low" ? "holds" : "is wrong";
	const text = require_program.plainName(side === "low" ? bar.lowText : bar.highText, 40);
	const sum = /^(-?\d+(?:\.\d+)?) (\S+)$/.exec(text);
	return sum !== null && sum[2] === currency ? require_formatMoney.formatMoney(Number(sum[1]), currency) : text;
}
Object.defineProperty(exports, "heldText", {
	enumerable: true,
	get: function() {
		return heldText;
	}
});

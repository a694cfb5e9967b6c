const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
// src/text/amountWords.ts
/** A value of an estimate: as it was typed where it is short, else three significant digits below 1,000. */
function amount(value) {
	if (!Number.isFinite(value)) return "not known";
	const size = Math.abs(value);
	if (size >= 1e3) return require_groupDigits.groupDigits(Math.round(value));
	const short = Number(value.toPrecision(size >= 100 ? 4 : 3));
	const text = String(short);
	return text.includes("e") ? require_groupDigits.groupDigits(value, 3) : text.replace("-", "−");
}
/** With its unit: `5.4 working days`, `EUR 1,200`. */
function amountIn(value, unitWords) {
	if (/^[A-Z]{3}$/.test(unitWords)) return `${unitWords} ${amount(value)}`;
	return `${amount(value)} ${value === 1 ? unitWords.replace(/s$/, "") : unitWords}`;
}
Object.defineProperty(exports, "amount", {
	enumerable: true,
	get: function() {
		return amount;
	}
});
Object.defineProperty(exports, "amountIn", {
	enumerable: true,
	get: function() {
		return amountIn;
	}
});

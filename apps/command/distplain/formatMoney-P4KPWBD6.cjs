const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
// ../../packages/charts/src/words/formatMoney.ts
/**
* A sum of money: the currency as the plan writes it, then the digits with commas, e.g. "EUR 655,000".
*
* Whole units from 1,000 up; below that cents are kept when there are any. Large sums stay in digits, so that two sums
* side by side, in a sentence or a column, are always written alike and compare at a glance; where they would be long,
* axes and columns count them in millions or billions and say so in their heading (`moneyUnit`, `moneyColumn`). Only
* from a thousand million million up, in trillions. It formats what it is given: round first, with `roundToLimits` or
* `roundSignificant`.
*
* @param signed  Also write "+" before a gain: for differences.
*
* @example
* formatMoney(655000, "EUR"); // "EUR 655,000"
* formatMoney(-12500, "EUR"); // "−EUR 12,500"
*/
function formatMoney(value, currency, signed = false) {
	if (!Number.isFinite(value)) return "not known";
	const size = Math.abs(value);
	let digits;
	if (size >= 0x38d7ea4c68000) digits = `${trimmed(size / 0xe8d4a51000, 3)} trillion`;
	else if (size >= 1e3 || Number.isInteger(size)) digits = require_groupDigits.groupDigits(size);
	else digits = require_groupDigits.groupDigits(size, 2);
	const sign = /[1-9]/.test(digits) ? value < 0 ? "−" : signed ? "+" : "" : "";
	return currency === "" ? `${sign}${digits}` : `${sign}${currency} ${digits}`;
}
function trimmed(value, decimals) {
	return require_groupDigits.groupDigits(value, decimals).replace(/\.?0+$/, "");
}
Object.defineProperty(exports, "formatMoney", {
	enumerable: true,
	get: function() {
		return formatMoney;
	}
});

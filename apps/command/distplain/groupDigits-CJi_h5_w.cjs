// ../../packages/charts/src/words/groupDigits.ts
/**
* A number in plain digits: commas between thousands, a point before decimals, a true minus sign (U+2212).
*
* @param decimals  Digits after the point, 0 to 20; trailing zeros are kept.
*
* Not a finite number: "not known". A value that rounds to zero has no sign.
*/
function groupDigits(value, decimals = 0) {
	if (!Number.isFinite(value)) return "not known";
	const text = Math.abs(value).toFixed(decimals);
	if (text.includes("e")) return text.replace("e+", " × 10^");
	const [whole = "0", part] = text.split(".");
	const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
	const digits = part === void 0 ? grouped : `${grouped}.${part}`;
	return value < 0 && Number(text) !== 0 ? `−${digits}` : digits;
}
Object.defineProperty(exports, "groupDigits", {
	enumerable: true,
	get: function() {
		return groupDigits;
	}
});

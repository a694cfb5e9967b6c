const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
// ../../packages/charts/src/words/columnDays.ts
/**
* A number of days for a column of such numbers: as `formatDays` without its unit, but with the decimal kept
* ("3.0" under "3.4"), so that figures can be compared. Nought is "0".
*/
function columnDays(value, signed = false) {
	if (!Number.isFinite(value)) return "not known";
	const size = Math.abs(value);
	if (size < .05) return "0";
	const digits = require_groupDigits.groupDigits(size, size < 9.95 ? 1 : 0);
	return `${value < 0 ? "−" : signed ? "+" : ""}${digits}`;
}
Object.defineProperty(exports, "columnDays", {
	enumerable: true,
	get: function() {
		return columnDays;
	}
});

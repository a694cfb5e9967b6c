const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
// ../../packages/charts/src/words/formatDays.ts
/**
* A number of days: two significant digits below ten, whole days above. `unit` in the singular.
*
* @example
* formatDays(9.14, "working day"); // "9.1 working days"
* formatDays(1, "day", true); // "+1 day"
*/
function formatDays(value, unit = "working day", signed = false) {
	if (!Number.isFinite(value)) return "not known";
	const rounded = Math.abs(value) < 9.95 ? Math.round(Math.abs(value) * 10) / 10 : Math.round(Math.abs(value));
	const digits = require_groupDigits.groupDigits(rounded, Number.isInteger(rounded) ? 0 : 1);
	return `${rounded === 0 ? "" : value < 0 ? "−" : signed ? "+" : ""}${digits}${unit === "" ? "" : rounded === 1 ? ` ${unit}` : ` ${unit}s`}`;
}
Object.defineProperty(exports, "formatDays", {
	enumerable: true,
	get: function() {
		return formatDays;
	}
});

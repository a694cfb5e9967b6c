// ../../packages/charts/src/words/roundSignificant.ts
/**
* Rounds to a number of significant digits: `roundSignificant(7340, 2)` is 7300.
*
* Halves go away from zero, so that a gain and a loss of one size read the same. NaN and infinities come
* back as they are.
*/
function roundSignificant(value, digits) {
	if (!Number.isFinite(value) || value === 0) return value;
	return Number(value.toPrecision(Math.max(1, Math.min(digits, 15))));
}
Object.defineProperty(exports, "roundSignificant", {
	enumerable: true,
	get: function() {
		return roundSignificant;
	}
});

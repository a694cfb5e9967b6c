// ../../packages/charts/src/words/roundTogether.ts
/**
* Rounds parts to a step so that they still add up to the whole as rounded: the parts with the largest remainders are
* taken up (largest-remainder method). Each is within one step of its value.
*
* @param values  Parts whose sum is the whole.
*/
function roundTogether(values, step) {
	const whole = Math.round(values.reduce((sum, value) => sum + value, 0) / step);
	const floors = values.map((value) => Math.floor(value / step));
	const missing = whole - floors.reduce((sum, value) => sum + value, 0);
	const byRemainder = values.map((value, at) => ({
		at,
		remainder: value / step - floors[at]
	})).sort((a, b) => b.remainder - a.remainder || a.at - b.at);
	for (const { at } of byRemainder.slice(0, Math.max(0, missing))) floors[at] = floors[at] + 1;
	return floors.map((value) => step >= 1 ? value * step : value / Math.round(1 / step));
}
Object.defineProperty(exports, "roundTogether", {
	enumerable: true,
	get: function() {
		return roundTogether;
	}
});

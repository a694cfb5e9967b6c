// ../../packages/charts/src/words/roundToLimits.ts
/**
* The step to which an estimate may be written: a power of ten, such that the last digit is one the sampling
* limits support and there are four significant digits at most.
*
* The step has the place of the first digit of half the width of the limits: between 652,000 and 659,000
* (half width 3,500) it is 1,000. Limits that meet leave four digits; limits wider than the value leave one.
*
* Source: JCGM 100:2008 (GUM), 7.2.6: an estimate is rounded to be consistent with its uncertainty. Recalled
* from memory, not read here.
*/
function limitStep(value, low, high) {
	if (!Number.isFinite(value) || value === 0) return 1;
	const half = Math.abs(high - low) / 2;
	const first = Math.floor(Math.log10(Math.abs(value)));
	const supported = half > 0 && Number.isFinite(half) ? Math.floor(Math.log10(half)) : first - 3;
	return 10 ** Math.max(-300, first - 3, Math.min(first, supported));
}
/** Rounds to a step that is a power of ten; halves go away from zero. */
function roundToStep(value, step) {
	if (!Number.isFinite(value) || !(step > 0)) return value;
	const size = Math.abs(value);
	const rounded = step >= 1 ? Math.round(size / step) * step : Math.round(size * (1 / step)) / (1 / step);
	return value < 0 && rounded !== 0 ? -rounded : rounded;
}
/**
* Rounds an estimate so that it shows no digit its sampling limits do not support: `limitStep`, applied.
*
* Edges: limits in the wrong order are swapped; a value that is not finite comes back as it is.
*
* @example
* roundToLimits(655432, 652000, 659000); // 655000
*/
function roundToLimits(value, low, high) {
	return value === 0 ? 0 : roundToStep(value, limitStep(value, low, high));
}
/** Rounds up to a step that is a power of ten: for what has to be enough. Rounding dust does not count. */
function roundUpToStep(value, step) {
	if (!Number.isFinite(value) || !(step > 0)) return value;
	const inverse = 1 / step;
	return step >= 1 ? Math.ceil(value / step - 1e-9) * step : Math.ceil(value * inverse - 1e-9) / inverse;
}
Object.defineProperty(exports, "limitStep", {
	enumerable: true,
	get: function() {
		return limitStep;
	}
});
Object.defineProperty(exports, "roundToLimits", {
	enumerable: true,
	get: function() {
		return roundToLimits;
	}
});
Object.defineProperty(exports, "roundToStep", {
	enumerable: true,
	get: function() {
		return roundToStep;
	}
});
Object.defineProperty(exports, "roundUpToStep", {
	enumerable: true,
	get: function() {
		return roundUpToStep;
	}
});

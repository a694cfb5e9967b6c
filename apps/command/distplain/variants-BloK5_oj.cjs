const require_engine = require("./engine-Bbth-FEh.cjs");
const require_stage = require("./stage-kNi0qcSu.cjs");
// ../../packages/core/src/explain/drain.ts
/** Goes through all steps without a pause. */
function drain(steps) {
	let step = steps.next();
	while (!step.done) step = steps.next();
	return step.value;
}
// ../../packages/core/src/explain/variants.ts
/** Rows of outcomes kept at once. */
var keptBytes = 64e6;
/**
* Runs variants of one or several models on the same draws and hands each one's outcome to `measure`, in no
* particular order; what it answers comes back in the order of the variants.
*
* Two plans that differ (a response adopted, an estimate changed) are two models made by `compile`: draws are
* addressed by item, so differences between their outcomes are differences of the plans and not noise.
*
* @param measure  Gets rows of `draw.iterations` values that are used again afterwards: copy what is to be kept.
*
* Throws BeyondCalendarError when a task of a variant runs past what calendars cover.
* Cost    blocks outside, variants inside: one run of each model for every 64 MB of outcomes (28 bytes an
*         iteration), and for each variant the placing of what differs from the variant before it or from the
*         model as it is, whichever reaches less. Variants that differ by little should follow each other.
*/
function runVariants(draw, variants, measure, onProgress) {
	return drain(variantSteps(draw, variants, measure, onProgress));
}
/** The same, pausing after each variant of each block: for a thread that has to listen while it works. */
function* variantSteps(draw, variants, measure, onProgress) {
	const n = draw.iterations;
	const results = new Array(variants.length);
	const total = variants.length * n;
	let done = 0;
	for (const [model, places] of byModel(variants)) {
		const bytes = n * (20 + (model.lateness === void 0 ? 0 : 8));
		const most = Math.max(1, Math.floor(keptBytes / bytes));
		const settingsAt = (place) => variants[place]?.settings ?? {};
		const run = require_stage.stage(model, draw, places.map(settingsAt));
		const rows = places.slice(0, most).map(() => newOutcome(model, n));
		for (let from = 0; from < places.length; from += most) {
			const batch = places.slice(from, from + most);
			const steps = run.prepare(batch.map(settingsAt));
			for (let first = 0, b = 0; first < n; first += require_engine.blockSize, b++) {
				const size = Math.min(require_engine.blockSize, n - first);
				run.load(b, size);
				for (let i = 0; i < steps.length; i++) {
					run.compute(steps[i], rows[i], first);
					yield;
				}
				done += size * batch.length;
				onProgress?.(done, total);
			}
			batch.forEach((place, i) => {
				results[place] = measure(rows[i], place);
			});
		}
	}
	return results;
}
function byModel(variants) {
	const places = /* @__PURE__ */ new Map();
	variants.forEach(({ model }, place) => {
		const known = places.get(model);
		if (known === void 0) places.set(model, [place]);
		else known.push(place);
	});
	return places;
}
function newOutcome(model, n) {
	return {
		finish: new Float64Array(n),
		finishDay: new Int32Array(n),
		cost: new Float64Array(n),
		...model.lateness === void 0 ? {} : { lateness: new Float64Array(n) }
	};
}
Object.defineProperty(exports, "drain", {
	enumerable: true,
	get: function() {
		return drain;
	}
});
Object.defineProperty(exports, "runVariants", {
	enumerable: true,
	get: function() {
		return runVariants;
	}
});
Object.defineProperty(exports, "variantSteps", {
	enumerable: true,
	get: function() {
		return variantSteps;
	}
});

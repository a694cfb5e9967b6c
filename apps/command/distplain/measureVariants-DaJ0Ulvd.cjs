const require_engine = require("./engine-Bbth-FEh.cjs");
const require_variants = require("./variants-BloK5_oj.cjs");
// ../../packages/core/src/explain/measureVariants.ts
/**
* Reads the measure of one outcome.
*
* @param select  Made by `rankSelector` for at least as many iterations, when there are many outcomes.
*/
function measureOf({ planCalendar }, { finish, cost }, confidence, select = require_engine.rankSelector(finish.length)) {
	const n = finish.length;
	const rank = require_engine.rankOf(confidence, n);
	let days = 0;
	let money = 0;
	for (let k = 0; k < n; k++) {
		days += require_engine.workAt(planCalendar, finish[k]);
		money += cost[k];
	}
	const [day = 0] = select(finish, [rank]);
	const [sum = 0] = select(cost, [rank]);
	return {
		level: [require_engine.workAt(planCalendar, day), sum],
		mean: [days / n, money / n]
	};
}
/** Measures of variants of one model at a level. Whoever computes them, the same numbers. */
function measureVariants(model, draw, confidence, settings, onProgress) {
	const select = require_engine.rankSelector(draw.iterations);
	return require_variants.runVariants(draw, settings.map((own) => ({
		model,
		settings: own
	})), (outcome) => measureOf(model, outcome, confidence, select), onProgress);
}
Object.defineProperty(exports, "measureVariants", {
	enumerable: true,
	get: function() {
		return measureVariants;
	}
});

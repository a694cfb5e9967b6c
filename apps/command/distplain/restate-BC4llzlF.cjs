const require_engine = require("./engine-Bbth-FEh.cjs");
// ../../packages/core/src/estimating/pool/restate.ts
/** The terms all ranges are stated in where they agree; otherwise one-in-ten values of a pert, in days. */
function commonTerms(opinions) {
	const ranges = opinions.flatMap(({ estimate }) => estimate.kind === "range" ? [estimate] : []);
	const units = new Set(opinions.map(({ estimate }) => estimate.unit));
	const terms = new Set(ranges.map(({ shape, bounds }) => `${shape} ${bounds}`));
	const [first] = ranges;
	const unit = units.size === 1 && units.has("weeks") ? "weeks" : "days";
	const { shape, bounds } = first !== void 0 && terms.size === 1 ? first : {
		shape: "pert",
		bounds: "p10-p90"
	};
	return {
		shape,
		bounds,
		unit,
		restated: terms.size > 1 || units.size > 1
	};
}
/** An estimate in another unit; a week is `daysPerWeek` working days. */
function inUnit(estimate, unit, daysPerWeek) {
	if (estimate.unit === unit) return estimate;
	const by = unit === "days" ? daysPerWeek : 1 / daysPerWeek;
	if (estimate.kind === "fixed") return {
		...estimate,
		value: estimate.value * by,
		unit
	};
	if (estimate.kind === "outcomes") return {
		kind: "outcomes",
		outcomes: estimate.outcomes.map(({ value, chance }) => ({
			value: value * by,
			chance
		})),
		unit
	};
	const { low, likely, high } = estimate;
	return {
		...estimate,
		low: low * by,
		high: high * by,
		unit,
		...likely !== void 0 && { likely: likely * by }
	};
}
/** Low, likely and high of an estimate as the bounds mean them; exact where it is stated in them already. */
function threePoints(estimate, bounds) {
	const likely = require_engine.asWrittenValue(estimate);
	if (estimate.kind === "range" && estimate.bounds === bounds) return {
		low: estimate.low,
		likely,
		high: estimate.high
	};
	const p = require_engine.boundsProbability(bounds);
	const low = require_engine.estimateQuantile(estimate, p);
	const high = require_engine.estimateQuantile(estimate, 1 - p);
	return {
		low,
		likely: Math.min(high, Math.max(low, likely)),
		high
	};
}
Object.defineProperty(exports, "commonTerms", {
	enumerable: true,
	get: function() {
		return commonTerms;
	}
});
Object.defineProperty(exports, "inUnit", {
	enumerable: true,
	get: function() {
		return inUnit;
	}
});
Object.defineProperty(exports, "threePoints", {
	enumerable: true,
	get: function() {
		return threePoints;
	}
});

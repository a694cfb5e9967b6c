// ../../packages/core/src/plan/shapes.ts
/** What holds of each shape: checks, sampling, the engine, pooling and the page all read it here. */
var shapeRules = {
	pert: {
		name: "PERT",
		takesLikely: true,
		ends: "both"
	},
	triangular: {
		name: "triangular",
		takesLikely: true,
		ends: "both"
	},
	uniform: {
		name: "uniform",
		takesLikely: false,
		ends: "both"
	},
	normal: {
		name: "normal",
		takesLikely: false,
		ends: "none"
	},
	lognormal: {
		name: "lognormal",
		takesLikely: false,
		ends: "above-nought"
	}
};
/** Every shape, in the order in which they are offered. */
var SHAPES = Object.keys(shapeRules).filter(isShape);
function isShape(word) {
	return Object.hasOwn(shapeRules, word);
}
Object.defineProperty(exports, "SHAPES", {
	enumerable: true,
	get: function() {
		return SHAPES;
	}
});
Object.defineProperty(exports, "shapeRules", {
	enumerable: true,
	get: function() {
		return shapeRules;
	}
});

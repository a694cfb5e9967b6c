// ../../packages/charts/src/sentences/holdsWords.ts
/**
* How surely date and sum hold: "each holds 8 times in 10, both together 7 in 10". What no future moves is certain, as far
* as the plan knows, and no chance is said of it.
*/
function holdsWords({ each, both, date, sum, money }) {
	if (!money) return date ? `certain, for ${known("it")}` : `it holds ${each}`;
	if (date && sum) return `both are certain, for ${known("them")}`;
	if (date) return `the date is certain, for ${known("it")}; the sum holds ${each}`;
	if (sum) return `the sum is certain, for ${known("it")}; the date holds ${each}`;
	return `each holds ${each}, both together ${both}`;
}
function known(what) {
	return `nothing in the plan would move ${what}`;
}
Object.defineProperty(exports, "holdsWords", {
	enumerable: true,
	get: function() {
		return holdsWords;
	}
});

// ../../packages/core/src/estimating/latestOpinions.ts
/**
* What each person last said: one opinion a person, the one with the latest date (without a date: the earliest there
* can be), of several on one day the last in the list. By person's id.
*/
function latestOpinions(opinions, of) {
	const latest = /* @__PURE__ */ new Map();
	for (const opinion of opinions) {
		if (opinion.of !== of) continue;
		const known = latest.get(opinion.by);
		if (known === void 0 || (opinion.date ?? "") >= (known.date ?? "")) latest.set(opinion.by, opinion);
	}
	return [...latest.values()].sort((a, b) => a.by < b.by ? -1 : 1);
}
Object.defineProperty(exports, "latestOpinions", {
	enumerable: true,
	get: function() {
		return latestOpinions;
	}
});

// ../../packages/parallel/src/sparingly.ts
/** At most so many messages a second: more would cost the listener more than they tell. */
var perSecond = 20;
/** The same listener, told at most twenty times a second and always of the end. */
function sparingly(tell) {
	let told = Number.NEGATIVE_INFINITY;
	return (done, total) => {
		const now = performance.now();
		if (now - told < 1e3 / perSecond && done < total) return;
		told = now;
		tell(done, total);
	};
}
Object.defineProperty(exports, "sparingly", {
	enumerable: true,
	get: function() {
		return sparingly;
	}
});

// ../../packages/core/src/live/record/changedLines.ts
/**
* The lines in which two texts differ, fewest first: the shortest edit script by Myers (1986), "An O(ND) difference
* algorithm and its variations", Algorithmica 1, 251-266 (recalled). Time and memory grow with the square of the number
* of differing lines, so it is for texts of which one is an edit of the other.
*/
function changedLines(before, after) {
	const a = before.split("\n");
	const b = after.split("\n");
	let first = 0;
	while (first < a.length && first < b.length && a[first] === b[first]) first++;
	let tail = 0;
	while (tail < a.length - first && tail < b.length - first && a.at(-1 - tail) === b.at(-1 - tail)) tail++;
	const kept = common(a.slice(first, a.length - tail), b.slice(first, b.length - tail));
	const found = [];
	let [i, j] = [first, first];
	for (const [x, y] of [...kept, [a.length - tail - first, b.length - tail - first]]) {
		const removed = a.slice(i, first + x);
		const added = b.slice(j, first + y);
		if (removed.length + added.length > 0) found.push({
			line: i + 1,
			removed,
			added
		});
		[i, j] = [first + x + 1, first + y + 1];
	}
	return found;
}
/** Pairs of positions of lines that both have, in order, as many as there can be. */
function common(a, b) {
	const trace = [];
	let reach = /* @__PURE__ */ new Map([[1, 0]]);
	for (let d = 0; d <= a.length + b.length; d++) {
		trace.push(new Map(reach));
		const next = new Map(reach);
		for (let k = -d; k <= d; k += 2) {
			let x = comesDown(reach, k, d) ? at(reach, k + 1) : at(reach, k - 1) + 1;
			while (x < a.length && x - k < b.length && a[x] === b[x - k]) x++;
			next.set(k, x);
			if (x >= a.length && x - k >= b.length) return walkBack(trace, a.length, b.length);
		}
		reach = next;
	}
	return [];
}
function walkBack(trace, n, m) {
	const pairs = [];
	let [x, y] = [n, m];
	for (let d = trace.length - 1; d >= 0; d--) {
		const reach = trace[d];
		const k = x - y;
		const from = comesDown(reach, k, d) ? k + 1 : k - 1;
		const [px, py] = [at(reach, from), at(reach, from) - from];
		while (x > Math.max(px, 0) && y > Math.max(py, 0) && x > px && y > py) {
			x--;
			y--;
			pairs.push([x, y]);
		}
		[x, y] = [px, py];
	}
	return pairs.reverse();
}
function comesDown(reach, k, d) {
	return k === -d || k !== d && at(reach, k - 1) < at(reach, k + 1);
}
function at(reach, k) {
	return reach.get(k) ?? -1;
}
Object.defineProperty(exports, "changedLines", {
	enumerable: true,
	get: function() {
		return changedLines;
	}
});

const require_engine = require("./engine-Bbth-FEh.cjs");
// ../../packages/parallel/src/rows.ts
/** Every row of trials that holds one value per iteration, in a fixed order. Views, not copies. */
function rowsOf(trials) {
	const { lateness, worth, months, unlimited } = trials;
	return [
		trials.finish,
		trials.finishDay,
		trials.cost,
		...trials.starts,
		...trials.finishes,
		...trials.intervals,
		...lateness === void 0 ? [] : [lateness],
		...worth === void 0 ? [] : [worth.net, worth.payback],
		...months === void 0 ? [] : months.rows,
		...unlimited === void 0 ? [] : [unlimited.finish, unlimited.cost]
	];
}
/** Every row of what was kept of moments. */
function momentRowsOf(parts) {
	return parts.flatMap((part) => [part.starts, part.finishes].flatMap((kept) => Object.values(kept)));
}
/** The memory behind rows, each piece once, to be handed over instead of copied. */
function buffersOf(rows) {
	const buffers = /* @__PURE__ */ new Set();
	for (const { buffer } of rows) if (buffer instanceof ArrayBuffer) buffers.add(buffer);
	return [...buffers];
}
// ../../packages/parallel/src/takeBlocks.ts
/**
* Takes block after block from a counter that threads share and computes them into rows that they share, until none is
* left. Who computes which block depends on who is free; what is computed does not.
*/
function takeBlocks(model, asWritten, trials, counter, onBlock) {
	const next = new Int32Array(counter);
	const n = trials.iterations;
	const count = Math.ceil(n / require_engine.blockSize);
	const taken = {
		blocks: [],
		beyond: {
			block: Number.POSITIVE_INFINITY,
			task: -1
		},
		moments: []
	};
	let runner;
	for (let block = Atomics.add(next, 0, 1); block < count; block = Atomics.add(next, 0, 1)) {
		runner ??= require_engine.blockRunner(model, asWritten, trials);
		const first = block * require_engine.blockSize;
		const sums = runner.run(block, first, Math.min(require_engine.blockSize, n - first));
		if (typeof sums === "number") {
			Atomics.store(next, 0, count);
			taken.beyond = {
				block,
				task: sums
			};
			break;
		}
		taken.blocks.push({
			block,
			sums
		});
		onBlock?.();
	}
	if (runner !== void 0 && trials.moments !== void 0) {
		runner.settle(trials);
		taken.moments = trials.moments.parts;
	}
	return taken;
}
Object.defineProperty(exports, "buffersOf", {
	enumerable: true,
	get: function() {
		return buffersOf;
	}
});
Object.defineProperty(exports, "momentRowsOf", {
	enumerable: true,
	get: function() {
		return momentRowsOf;
	}
});
Object.defineProperty(exports, "rowsOf", {
	enumerable: true,
	get: function() {
		return rowsOf;
	}
});
Object.defineProperty(exports, "takeBlocks", {
	enumerable: true,
	get: function() {
		return takeBlocks;
	}
});

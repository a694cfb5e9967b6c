// src/compute/progressLine.ts
/** Shorter runs are over before a line could be read. */
var PATIENCE_MS = 400;
/** A line on standard error that redraws itself; on a terminal only. */
function progressLine() {
	if (!process.stderr.isTTY) return {
		show: () => {},
		clear: () => {}
	};
	const begun = performance.now();
	let shown = -1;
	return {
		show: (done, of) => {
			const percent = of > 0 ? Math.min(100, Math.floor(100 * done / of)) : 0;
			if (percent === shown || performance.now() - begun < PATIENCE_MS) return;
			shown = percent;
			const filled = Math.round(percent * .3);
			process.stderr.write(`\r${"█".repeat(filled)}${"░".repeat(30 - filled)} ${percent} %`);
		},
		clear: () => {
			if (shown >= 0) process.stderr.write("\r\x1B[K");
		}
	};
}
Object.defineProperty(exports, "progressLine", {
	enumerable: true,
	get: function() {
		return progressLine;
	}
});

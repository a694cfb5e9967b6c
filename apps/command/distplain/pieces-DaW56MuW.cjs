const require_engine = require("./engine-Bbth-FEh.cjs");
let node_fs = require("node:fs");
// src/compute/pieces.ts
/** What the build leaves beside the command: `makePieces.ts`. */
var file = new URL("./pieces.bin", require("url").pathToFileURL(__filename).href);
/**
* Takes what PERT tables are made from out of the file that the build left, which saves 20 milliseconds of a cold start.
* Without the file it is made anew, to the same bits.
*/
function takePieces() {
	try {
		const bytes = (0, node_fs.readFileSync)(file);
		if (bytes.byteLength !== require_engine.bytesOfSharedPieces) return;
		const memory = new SharedArrayBuffer(bytes.byteLength);
		new Uint8Array(memory).set(bytes);
		require_engine.sharePieces(memory);
	} catch {}
}
Object.defineProperty(exports, "takePieces", {
	enumerable: true,
	get: function() {
		return takePieces;
	}
});

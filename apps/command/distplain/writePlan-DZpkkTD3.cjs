const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
const require_unwritable = require("./unwritable-BJ47CraP.cjs");
let node_fs = require("node:fs");
// src/history/writePlan.ts
/**
* Writes a plan anew, whole or not at all, where it still says what was read from it; false where somebody changed it
* meanwhile. A link stays a link, and the file's rights stay. Editors know nothing of our lock: between looking and
* writing there is a moment, as short as it can be, in which theirs would be lost.
*
* Throws the file system's error, or `Locked`.
*/
async function writePlan(path, before, after) {
	const file = (0, node_fs.realpathSync)(path);
	return require_unwritable.withLock(file, () => {
		const now = new TextDecoder("utf-8", { ignoreBOM: true }).decode((0, node_fs.readFileSync)(file));
		if (now.replace(/^\uFEFF/, "") !== before.replace(/^\uFEFF/, "")) return false;
		const mark = now.startsWith("﻿") && !after.startsWith("﻿") ? "﻿" : "";
		require_writeWhole.writeWhole(file, mark + after, true);
		return true;
	});
}
Object.defineProperty(exports, "writePlan", {
	enumerable: true,
	get: function() {
		return writePlan;
	}
});

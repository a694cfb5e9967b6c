const require_program = require("./program.cjs");
// src/text/inset.ts
/** A paragraph two columns in, as it stands under a heading or a table. */
function inset(text, width) {
	return require_program.wrap(text, width - 2).map((line) => `  ${line}`);
}
Object.defineProperty(exports, "inset", {
	enumerable: true,
	get: function() {
		return inset;
	}
});

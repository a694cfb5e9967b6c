const require_program = require("./program.cjs");
const require_whyNotWritten = require("./whyNotWritten-C19bLT-P.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
// src/exchange/putOut.ts
/** Text to standard output, or into a file, whole or not at all. Answers the exit code. */
function putOut(text, out, force, said) {
	if (out === void 0) {
		require_program.printAnswer(text);
		return require_program.exitCodes.done;
	}
	try {
		require_writeWhole.writeWhole(out, text, force);
	} catch (error) {
		require_program.printProblems([require_whyNotWritten.whyNotWritten(out, error)]);
		return require_program.exitCodes.invalid;
	}
	require_program.printNote(`Wrote ${out}: ${said}.`);
	return require_program.exitCodes.done;
}
Object.defineProperty(exports, "putOut", {
	enumerable: true,
	get: function() {
		return putOut;
	}
});

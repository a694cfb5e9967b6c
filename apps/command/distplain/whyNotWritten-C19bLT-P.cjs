const require_program = require("./program.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
// src/files/whyNotWritten.ts
/** By the system's code: what is the matter, and what to do about it. */
var REASONS = {
	ENOSPC: ["The disk is full; what was there stands.", "Make room, then try again."],
	EDQUOT: ["Your share of the disk is used up; what was there stands.", "Make room, then try again."],
	EFBIG: ["The system allows no file of that size; what was there stands.", "Ask for more, or choose another place."],
	EROFS: ["That disk can only be read.", "Choose another place."],
	EACCES: ["You may not write there.", "Ask for permission, or choose another place."],
	EPERM: ["You may not write there.", "Ask for permission, or choose another place."],
	ENOENT: ["That folder is not there any more.", "Make it again, or choose another place."],
	ENOTDIR: ["A part of that path is a file, not a folder.", "Choose another place."],
	EISDIR: ["That is a folder.", "Name a file in it."],
	ELOOP: ["That link leads back to itself.", "Name the file it was to lead to."],
	ENAMETOOLONG: ["That name is too long for the disk.", "Choose a shorter one."]
};
/**
* Why a file was not written, in words; nothing of what stood there is lost.
*
* @param taken  What to say where the file is there already and may not be overwritten.
*/
function whyNotWritten(path, error, taken = ["There is such a file already.", "Add --force to overwrite it."]) {
	if (error instanceof require_writeWhole.WriteProtected) return require_program.callProblem("write-protected", path, "The file is write-protected.", "Take the protection off it (`chmod u+w`), or choose another place.");
	const code = error instanceof Error && "code" in error ? String(error.code) : "";
	if (code === "EEXIST") return require_program.callProblem("file-exists", path, ...taken);
	const said = error instanceof Error ? error.message : String(error);
	const [rule, remedy] = REASONS[code] ?? [`It could not be written (${said}).`, "Choose another place."];
	return require_program.callProblem("unwritable", path, rule, remedy);
}
Object.defineProperty(exports, "whyNotWritten", {
	enumerable: true,
	get: function() {
		return whyNotWritten;
	}
});

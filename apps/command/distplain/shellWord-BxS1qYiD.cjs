// src/text/shellWord.ts
/** A file as a shell word: quoted where a space or sign in it would be taken apart; PLAN for standard input. */
function shellWord(name) {
	if (name === "standard input") return "PLAN";
	return /^[\w./:@%+,=-]+$/.test(name) ? name : `'${name.replaceAll("'", "'\\''")}'`;
}
Object.defineProperty(exports, "shellWord", {
	enumerable: true,
	get: function() {
		return shellWord;
	}
});

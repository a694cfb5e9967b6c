// src/text/nextLines.ts
/**
* Where to look next: commands, each with what it answers beside it where all of that fits; a command is never
* wrapped or cut.
*/
function nextLines(rows, width) {
	const widest = Math.max(...rows.map(([command]) => [...command].length));
	const fits = rows.every(([, answers]) => 2 + widest + 2 + [...answers].length <= width);
	return ["What to look at next", ...rows.map(([command, answers]) => fits ? `  ${command.padEnd(widest)}  ${answers}` : `  ${command}`)];
}
Object.defineProperty(exports, "nextLines", {
	enumerable: true,
	get: function() {
		return nextLines;
	}
});

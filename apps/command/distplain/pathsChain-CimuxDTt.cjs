const require_program = require("./program.cjs");
// src/text/pathsChain.ts
/** What a task of a chain waits for besides the task before it; empty for a link, and for the plan's start. */
function wayWords({ kind, person }) {
	switch (kind) {
		case "person": return `[waits for ${person?.name ?? ""}] `;
		case "away": return `[${person?.name ?? ""} away] `;
		case "not-before": return "[not before its date] ";
		case "held-to-plan": return "[held to the plan] ";
		case "status-date": return "[from the status date] ";
		case "recorded": return "[under way] ";
		default: return "";
	}
}
/** A chain of tasks as one line of text, what is not a plain link in brackets. */
function chainText(steps) {
	if (steps.length === 0) return "nothing that is left to do or needed";
	return steps.map(({ name, way }) => `${wayWords(way)}${name}`).join(" → ");
}
var stepsOf = ({ names, ways }) => names.map((name, at) => ({
	name,
	way: ways[at] ?? { kind: "link" }
}));
/** Each path under its share; a later one tells where it leaves the first and where it comes back. */
function pathLines(paths, shares, width) {
	const room = Math.max(...shares.map((share) => share.length)) + 4;
	const first = paths[0];
	return paths.flatMap((path, at) => {
		const text = first === void 0 || at === 0 ? chainText(stepsOf(path)) : apartText(first, path);
		const lines = require_program.wrap(text, width - room);
		const head = (shares[at] ?? "").padStart(room - 2);
		return lines.map((line, k) => `${k === 0 ? head : " ".repeat(room - 2)}  ${line}`);
	});
}
/** A path as it differs from the first: from the last task they share at the beginning to the first at the end. */
function apartText(first, path) {
	const shortest = Math.min(first.tasks.length, path.tasks.length);
	let begin = 0;
	while (begin < shortest && first.tasks[begin] === path.tasks[begin]) begin++;
	let end = 0;
	while (end < shortest - begin && first.tasks[first.tasks.length - 1 - end] === path.tasks[path.tasks.length - 1 - end]) end++;
	const steps = stepsOf(path);
	const middle = steps.slice(begin, steps.length - end);
	const from = begin > 0 ? `as above to ${path.names[begin - 1]} → ` : "";
	const to = end > 0 ? ` → as above from ${path.names[path.names.length - end]}` : "";
	if (begin + end === steps.length || middle.length === 0) return chainText(steps);
	return `${from}${chainText(middle)}${to}`;
}
Object.defineProperty(exports, "chainText", {
	enumerable: true,
	get: function() {
		return chainText;
	}
});
Object.defineProperty(exports, "pathLines", {
	enumerable: true,
	get: function() {
		return pathLines;
	}
});

const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_program = require("./program.cjs");
// src/text/compareMoves.ts
/** Changes of one move, and of those that moved nothing, that are spelled out. */
var shown = 8;
/** Each move with its days and money before its sentence, and the sum of all. */
function moveLines(comparison, width) {
	const { moves, difference, plan } = comparison;
	if (moves.length === 0) return [];
	const money = require_movedSentences.hasSums(comparison);
	const cells = (effect) => [require_columnDays.columnDays(effect.workingDays, true), ...money ? [signed(require_movedSentences.roundMove(effect.money))] : []];
	const rows = [...moves.map((move) => cells(move)), cells(difference)];
	const headings = ["days", ...money ? [plan.currency] : []];
	const widths = headings.map((heading, k) => Math.max(...[heading, ...rows.map((row) => row[k] ?? "")].map((text) => text.length)));
	const figures = (row) => `  ${row.map((text, k) => text.padStart(widths[k] ?? 0)).join("  ")}  `;
	const blank = " ".repeat(figures(headings).length);
	const room = width - blank.length;
	const lines = moves.flatMap(({ what, changes }, at) => {
		const [first = "", ...more] = require_program.wrap(what, room);
		const row = rows[at] ?? [];
		return [
			figures(row) + first,
			...more.map((line) => blank + line),
			...details(changes, what, room).map((line) => blank + line)
		];
	});
	const total = rows[rows.length - 1] ?? [];
	return [
		"What moved it",
		figures(headings).trimEnd(),
		...lines,
		`${figures(total)}in all`
	];
}
function signed(value) {
	return value > 0 ? `+${require_groupDigits.groupDigits(value)}` : require_groupDigits.groupDigits(value);
}
/** Changes that the sentence of a move only counts. */
function details(changes, what, width) {
	const untold = changes.filter((change) => !what.includes(change.slice(change.indexOf(": ") + 1).trim()));
	const rest = untold.length > shown ? [`and ${untold.length - shown} more`] : [];
	return [...untold.slice(0, shown), ...rest].flatMap((change) => require_program.wrap(`- ${change}`, width, "  "));
}
/** What changed without moving date or sum. */
function alsoLines({ alsoChanged }, width) {
	if (alsoChanged.length === 0) return [];
	const rest = alsoChanged.length > shown ? [`  and ${alsoChanged.length - shown} more`] : [];
	return [
		"Changed too, without moving date or sum",
		...alsoChanged.slice(0, shown).flatMap((text) => require_program.wrap(text, width - 2, "  ").map((line) => `  ${line}`)),
		...rest
	];
}
Object.defineProperty(exports, "alsoLines", {
	enumerable: true,
	get: function() {
		return alsoLines;
	}
});
Object.defineProperty(exports, "moveLines", {
	enumerable: true,
	get: function() {
		return moveLines;
	}
});

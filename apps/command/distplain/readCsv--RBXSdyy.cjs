const require_rolldown_runtime = require("./rolldown-runtime-C-fzZZTt.cjs");
const require_formulaCell = require("./formulaCell-02FsbLnY.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
// ../../packages/core/src/exchange/csv/lineEnds.ts
var import_papaparse = /* @__PURE__ */ require_rolldown_runtime.__toESM(require_formulaCell.require_papaparse(), 1);
/**
* Every line break outside quotes as CRLF: files that went through several hands mix them, and a parser looks for one
* kind only. A quote opens only at the beginning of a cell (RFC 4180, section 2, rule 5).
*/
function withLineEnds(text, delimiter) {
	const parts = [];
	let kept = 0;
	let at = 0;
	let opens = true;
	while (at < text.length) {
		const char = text[at];
		if (char === "\"" && opens) {
			at = behindQuotes(text, at);
			opens = false;
		} else if (char === "\r" || char === "\n") {
			parts.push(text.slice(kept, at));
			at += char === "\r" && text[at + 1] === "\n" ? 2 : 1;
			kept = at;
			opens = true;
		} else {
			opens = char === delimiter;
			at++;
		}
	}
	parts.push(text.slice(kept));
	return parts.join("\r\n");
}
/** The place behind the closing quote; the end of the text where none closes. */
function behindQuotes(text, open) {
	let at = open + 1;
	for (;;) {
		const quote = text.indexOf("\"", at);
		if (quote === -1) return text.length;
		if (text[quote + 1] !== "\"") return quote + 1;
		at = quote + 2;
	}
}
var MOST_ROWS = 2e5;
var MOST_COLUMNS = 500;
/**
* Reads a table of comma-separated values (RFC 4180) as spreadsheets write it: with a byte order mark, with semicolons
* or tabs, with any line ends. What `writeCsv` wrote comes back as it was.
*
* @param separator  What parts the cells, where that is known.
*/
function readCsv(text, separator) {
	const bare = text.replace(/^\uFEFF/, "");
	const delimiter = separator ?? delimiterOf(bare);
	const reading = {
		cells: [],
		delimiter,
		decimalComma: false,
		problems: []
	};
	const refuse = (code, received, rule, remedy, path = "") => {
		reading.problems.push({
			code,
			severity: "error",
			path,
			received,
			rule,
			remedy
		});
		return reading;
	};
	if (bare.length > 5e7) return refuse("too-large", `${bare.length} characters`, "A table of more than 50 million characters is not read.", "Leave out rows or columns that no plan holds.");
	if (bare.trim() === "") return refuse("empty", "", "The table is empty.", "Begin with a row of headings.");
	const strange = bare.indexOf("\0");
	if (strange !== -1) {
		const row = bare.slice(0, strange).split(/\r\n?|\n/).length;
		return refuse("not-text", "a NUL character", "This is not a text of comma-separated values.", "Save the sheet as comma-separated values, UTF-8.", `row ${row}`);
	}
	const { data, errors } = import_papaparse.default.parse(withLineEnds(bare, delimiter), {
		delimiter,
		newline: "\r\n"
	});
	for (const { row, message } of errors.slice(0, 20)) reading.problems.push({
		code: "quotes",
		severity: "error",
		path: `row ${(row ?? 0) + 1}`,
		received: "",
		rule: `${message.replace(/\.?$/, "")}.`,
		remedy: "Close the quotes, and write a quote inside them twice."
	});
	const last = data[data.length - 1];
	if (last !== void 0 && last.length === 1 && last[0] === "") data.pop();
	if (data.length > MOST_ROWS) return refuse("too-many", `${data.length} rows`, "A table has at most 200,000 rows.", "Leave out empty rows.");
	const width = data[0]?.length ?? 0;
	if (width > MOST_COLUMNS) return refuse("too-many", `${width} columns`, "A table has at most 500 columns.", "Leave out the others.");
	reading.cells = data.map((row, index) => {
		if (!row.every((cell) => cell.trim() === "") && row.slice(width).some((cell) => cell.trim() !== "")) reading.problems.push({
			code: "row-too-long",
			severity: "error",
			path: `row ${index + 1}, column ${width + 1}`,
			received: require_engine.oneLine(row[width] ?? ""),
			rule: `The row has ${row.length} cells, but there are ${width} headings.`,
			remedy: "Put quotes around a cell that holds a separator."
		});
		return Array.from({ length: width }, (_, column) => require_formulaCell.asItWas(row[column] ?? ""));
	});
	reading.decimalComma = delimiter === ";" && reading.cells.some((row) => row.some((cell) => /^\s*[-+]?\d+,\d+\s*$/.test(cell)));
	return reading;
}
/** The separator that stands most often outside quotes in the first row. */
function delimiterOf(text) {
	const counts = {
		",": 0,
		";": 0,
		"	": 0
	};
	let quoted = false;
	for (const char of text.slice(0, 1e5)) if (char === "\"") quoted = !quoted;
	else if (!quoted && (char === "\r" || char === "\n")) break;
	else if (!quoted && (char === "," || char === ";" || char === "	")) counts[char]++;
	if (counts[";"] > counts[","] && counts[";"] >= counts["	"]) return ";";
	return counts["	"] > counts[","] ? "	" : ",";
}
Object.defineProperty(exports, "readCsv", {
	enumerable: true,
	get: function() {
		return readCsv;
	}
});

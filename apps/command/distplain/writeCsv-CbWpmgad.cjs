const require_rolldown_runtime = require("./rolldown-runtime-C-fzZZTt.cjs");
const require_formulaCell = require("./formulaCell-02FsbLnY.cjs");
// ../../packages/core/src/exchange/csv/writeCsv.ts
var import_papaparse = /* @__PURE__ */ require_rolldown_runtime.__toESM(require_formulaCell.require_papaparse(), 1);
/**
* A table as comma-separated values: CRLF behind every row, quotes where they are needed. Numbers stay numbers; a text
* that a spreadsheet would take for a formula gets an apostrophe, which `readCsv` takes away again.
*
* Source  RFC 4180 (2005), section 2.
*/
function writeCsv(header, rows, { byteOrderMark = false } = {}) {
	const cells = [header, ...rows].map((row) => row.map(written));
	const quotes = (value) => typeof value === "string" && (value === "" ? header.length === 1 : risky(value));
	const text = import_papaparse.default.unparse(cells, {
		newline: "\r\n",
		quotes,
		skipEmptyLines: false
	});
	return `${byteOrderMark ? "﻿" : ""}${text}\r\n`;
}
function written(cell) {
	if (cell === null || cell === void 0) return "";
	if (typeof cell === "boolean") return cell ? "yes" : "no";
	if (typeof cell === "number") return Number.isFinite(cell) ? cell : "";
	return require_formulaCell.neutralised(cell);
}
/** Separators other than ours: a reader that guesses must not take them for one. */
function risky(value) {
	return /[;\t\r\n]/.test(value);
}
Object.defineProperty(exports, "writeCsv", {
	enumerable: true,
	get: function() {
		return writeCsv;
	}
});

const require_writeCsv = require("./writeCsv-CbWpmgad.cjs");
// src/exchange/csvText.ts
/** A table as a file: with a byte order mark where a spreadsheet would otherwise spoil a letter. */
function csvText({ header, rows }) {
	const foreign = (cell) => typeof cell === "string" && /[^\p{ASCII}]/u.test(cell);
	return require_writeCsv.writeCsv(header, rows, { byteOrderMark: rows.some((row) => row.some(foreign)) });
}
Object.defineProperty(exports, "csvText", {
	enumerable: true,
	get: function() {
		return csvText;
	}
});

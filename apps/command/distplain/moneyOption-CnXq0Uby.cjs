const require_program = require("./program.cjs");
// src/call/moneyOption.ts
/**
* Money as a plain number, 0 or more. Digits in groups (`10,000`, `10.000`, `10 000`) are refused, since a point
* is a decimal point here and nobody should have to guess.
*/
function moneyOption(values, name) {
	const text = values.text(name);
	if (text === void 0 || text === "") return { problems: [] };
	const refuse = (rule, remedy) => ({ problems: [require_program.callProblem("option-value", `--${name} ${text}`, rule, remedy)] });
	if (/^\d{1,3}([.,_' ]\d{3})+$/.test(text)) return refuse("Digits in groups can be misread.", `Write --${name} ${text.replace(/\D/g, "")} if that is meant.`);
	const value = /^(\d+(\.\d+)?|\.\d+)$/.test(text) ? Number(text) : NaN;
	if (!(value <= 0x38d7ea4c68000)) return refuse("It must be money as a plain number, from 0 to 1000000000000000.", `Write e.g. --${name} 10000.`);
	return {
		value,
		problems: []
	};
}
Object.defineProperty(exports, "moneyOption", {
	enumerable: true,
	get: function() {
		return moneyOption;
	}
});

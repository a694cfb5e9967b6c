const require_program = require("./program.cjs");
// src/brief/dateOption.ts
/** A calendar date that exists, as `2027-02-01`; `otherwise` where it was not given. */
function dateOption(values, name, otherwise) {
	const text = values.text(name);
	if (text === void 0 || text === "") return {
		value: otherwise,
		problems: []
	};
	const date = /^\d{4}-\d{2}-\d{2}$/.test(text) ? /* @__PURE__ */ new Date(`${text}T00:00:00Z`) : void 0;
	if (date !== void 0 && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text)) return {
		value: text,
		problems: []
	};
	return {
		value: otherwise,
		problems: [require_program.callProblem("option-value", `--${name} ${text}`, "It must be a calendar date that exists, year-month-day.", `Write e.g. --${name} 2027-02-01.`)]
	};
}
/** Today as the calendar on the wall has it. */
function todayOf(now) {
	const two = (part) => String(part).padStart(2, "0");
	return `${String(now.getFullYear()).padStart(4, "0")}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
Object.defineProperty(exports, "dateOption", {
	enumerable: true,
	get: function() {
		return dateOption;
	}
});
Object.defineProperty(exports, "todayOf", {
	enumerable: true,
	get: function() {
		return todayOf;
	}
});

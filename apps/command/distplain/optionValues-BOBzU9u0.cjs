const require_program = require("./program.cjs");
// src/call/optionValues.ts
/** Reads option values of one call into what they mean; each that breaks its rule becomes a problem. */
var OptionValues = class {
	problems = [];
	#options;
	constructor(options) {
		this.#options = options;
	}
	has(name) {
		return this.#options.has(name);
	}
	text(name) {
		const text = this.#options.get(name)?.at(-1);
		if (text === "") this.#refuse(name, text, "It is empty.", "Give it a value, or leave it out.");
		return text;
	}
	/** A whole number from 1 to `most`. */
	count(name, most) {
		const text = this.text(name);
		if (text === void 0 || text === "") return void 0;
		const value = Number(text);
		if (/^\d+$/.test(text) && value >= 1 && value <= most) return value;
		const plain = text.replace(/[.,_' ](?=\d{3}\b)/g, "");
		const remedy = /^\d+$/.test(plain) && Number(plain) <= most && plain !== text ? plain : "1000";
		this.#refuse(name, text, `It must be a whole number from 1 to ${most}.`, `Write e.g. --${name} ${remedy}.`);
	}
	/** A number above 0 and below 1. */
	chance(name) {
		const text = this.text(name);
		if (text === void 0 || text === "") return void 0;
		const value = /^\d*\.?\d+$/.test(text) ? Number(text) : NaN;
		if (value > 0 && value < 1) return value;
		const percent = Number(text.replace(/\s*%$/, ""));
		const meant = percent > 1 && percent < 100 ? String(percent / 100) : "0.8";
		this.#refuse(name, text, "It must be above 0 and below 1.", `Write e.g. --${name} ${meant}.`);
	}
	/** A number of working days above 0, fractions allowed. */
	days(name) {
		const text = this.text(name);
		if (text === void 0 || text === "") return void 0;
		const value = /^\d*\.?\d+$/.test(text) ? Number(text) : NaN;
		if (value > 0) return value;
		this.#refuse(name, text, "It must be a number of working days above 0.", `Write e.g. --${name} 0.5.`);
	}
	oneOf(name, allowed) {
		const text = this.text(name);
		if (text === void 0 || text === "") return void 0;
		const found = allowed.find((value) => value === text);
		if (found === void 0) this.#refuse(name, text, "There is no such choice.", `Write one of: ${allowed.join(", ")}.`);
		return found;
	}
	/** Ids separated by commas, over every time the option is given. */
	ids(name) {
		const given = this.#options.get(name);
		if (given === void 0) return void 0;
		const ids = given.flatMap((text) => text.split(",")).map((id) => id.trim());
		for (const id of ids) {
			if (/^[a-z][a-z0-9-]*$/.test(id)) continue;
			this.#refuse(name, id, "That is not an id.", "Write ids separated by commas, e.g. wet-winter,permit-late.");
		}
		return ids;
	}
	#refuse(name, text, rule, remedy) {
		this.problems.push(require_program.callProblem("option-value", `--${name} ${text}`.trim(), rule, remedy));
	}
};
Object.defineProperty(exports, "OptionValues", {
	enumerable: true,
	get: function() {
		return OptionValues;
	}
});

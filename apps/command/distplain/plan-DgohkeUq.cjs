const require_shapes = require("./shapes-8oDnecao.cjs");
const require_dates = require("./dates-Dup8morK.cjs");
// ../../packages/core/src/plan/definition/choose.ts
/**
* A short form or an object: `survey` or `{ task: survey, lag: 2 }`. Both become the object's draft.
*
* @param expand  Makes the object from the short form.
*/
function shorthand(short, long, expand) {
	return {
		what: `${short.what}, or ${long.what}`,
		read(place, reading) {
			if (place.node.kind === "map") return long.read(place, reading);
			const draft = short.read(place, reading);
			return draft === void 0 ? void 0 : reading.settle(expand(draft), place);
		},
		schema: (definitions) => ({ anyOf: [short.schema(definitions), long.schema(definitions)] })
	};
}
// ../../packages/core/src/plan/definition/list.ts
/**
* A list; where it has one item the item may stand alone.
*
* @param min  Fewest items (default 0).
*/
function listOf(item, min = 0) {
	return {
		what: `a list, each item ${item.what}`,
		read(place, reading) {
			const { node } = place;
			const alone = node.kind !== "list";
			const nodes = alone ? [node] : node.items;
			const result = [];
			for (const [index, each] of nodes.entries()) {
				const at = alone ? place : {
					parent: place,
					key: index,
					keyAt: each.at,
					node: each
				};
				const draft = item.read(at, reading);
				if (draft !== void 0) result.push(draft);
			}
			if (nodes.length < min) {
				const rule = min === 1 ? "At least one item belongs here." : `At least ${min} items belong here.`;
				reading.report(place, "too-few", rule, `Add ${item.what}.`);
			}
			return result;
		},
		schema(definitions) {
			const items = item.schema(definitions);
			const list = {
				type: "array",
				items,
				...min > 0 && { minItems: min }
			};
			return min > 1 ? list : { anyOf: [items, list] };
		}
	};
}
// ../../packages/core/src/plan/source/place.ts
/** The place of a key's value, or the object itself where the key is not there. */
function childPlace(place, key) {
	const entry = place.node.kind === "map" ? place.node.entries.get(key) : void 0;
	return entry === void 0 ? place : {
		parent: place,
		key,
		keyAt: entry.keyAt,
		node: entry.node
	};
}
/** Longer keys are cut short in a path: there are none in the format. */
var LONGEST = 60;
/** Writes a place as a path: `tasks[3].after[0]`. */
function pathText(place) {
	const parts = [];
	for (let p = place; p !== void 0; p = p.parent) if (typeof p.key === "number") parts.push(`[${p.key}]`);
	else if (p.key !== void 0) {
		const key = p.key.length > LONGEST ? `${p.key.slice(0, LONGEST)}...` : p.key;
		const plain = /^[\p{L}\p{N}_-]+(?:\.\.\.)?$/u.test(key);
		const dot = p.parent?.key === void 0 ? "" : ".";
		parts.push(plain ? `${dot}${key}` : `[${JSON.stringify(key)}]`);
	}
	return parts.reverse().join("");
}
// ../../packages/core/src/plan/definition/numberAdvice.ts
/** What to write where text such as `30%`, `1,5` or `210 000 EUR` stands for a number. */
function advice(written, range) {
	const text = written.trim();
	if (text.length > 60) return void 0;
	const percent = /^([-+]?\d+(?:[.,]\d+)?)\s*(?:%|percent|per cent)$/i.exec(text);
	if (percent) return `Write ${Number(((Number(point(percent[1])) || 0) / 100).toPrecision(12))}.`;
	const of = /^(\d+)\s*(?:\/|in|out of)\s*(\d+)$/i.exec(text);
	if (of && range.max === 1 && Number(of[2]) > 0) return `Write ${Number((Number(of[1]) / Number(of[2])).toPrecision(6))}.`;
	const span = /^(\d+(?:\.\d+)?)\s*(?:-|–|to|\.\.)\s*(\d+(?:\.\d+)?)$/.exec(text);
	if (span) return `Write low, likely and high: [${span[1]}, ..., ${span[2]}].`;
	const days = /^([-+]?\d+(?:[.,]\d+)?)\s*(d|days?|w|wks?|weeks?)$/i.exec(text);
	if (days) {
		const value = point(days[1]);
		return /^w/i.test(days[2] ?? "") ? `Write { low: ${value}, likely: ${value}, high: ${value}, unit: weeks } where an estimate of time stands, else days.` : `Write ${value}.`;
	}
	const plain = text.replace(/^(?:[A-Z]{3}|[€$£¥])\s*|\s*(?:[A-Z]{3}|[€$£¥])$/g, "").replace(/^~|[\s'_\u00a0\u202f]/g, "");
	if (/^[-+]?\d{1,3}(?:[.,]\d{3}){2,}$/.test(plain)) return `Write ${plain.replace(/[.,]/g, "")}.`;
	if (/^[-+]?\d{1,3}(?:\.\d{3})+,\d+$/.test(plain)) return `Write ${plain.replace(/\./g, "").replace(",", ".")}.`;
	if (/^[-+]?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(plain)) return `Write ${plain.replace(/,/g, "")}; the dot is the decimal point.`;
	if (/^[-+]?\d+,\d+$/.test(plain)) return `Write ${plain.replace(",", ".")}; the dot is the decimal point.`;
	const thousands = /^([-+]?\d+(?:\.\d+)?)k$/i.exec(plain);
	if (thousands) return `Write ${Number(thousands[1]) * 1e3}.`;
	if (/^[-+]?\d+(?:\.\d+)?$/.test(plain)) return plain === text ? `Write ${plain} without quotes.` : `Write ${plain}.`;
}
function point(written = "") {
	return written.replace(",", ".");
}
// ../../packages/core/src/plan/definition/scalars.ts
/** Beyond this a double no longer holds every whole number and cent that could be meant. */
var LARGEST = 0x38d7ea4c68000;
function wrong(place, reading, rule, remedy) {
	const { node } = place;
	if (node.kind === "scalar" && node.value === null) {
		const name = typeof place.key === "string" ? ` \`${place.key}\`` : " this";
		reading.report(place, "wrong-type", "Nothing is written here.", `Give it a value, or leave${name} out.`, { received: "" });
	} else reading.report(place, "wrong-type", rule, remedy);
}
/**
* Text. A number standing for text is taken as written (`seed: 7`, `phase: 2`) where it can be written only
* that way; `1.0` or `0x10` would become other text in JSON and needs quotes.
*/
function text(what) {
	return {
		what,
		read(place, reading) {
			const { node } = place;
			const value = node.kind === "scalar" ? node.value : void 0;
			if (typeof value === "string") {
				checkCharacters(value, place, reading);
				if (value.trim() !== "") return value;
				reading.report(place, "bad-format", "The text is empty.", "Write some text, or leave it out.");
				return;
			}
			if (typeof value === "number" && Number.isFinite(value)) {
				const written = reading.source(place);
				if (written === String(value)) return written;
				reading.report(place, "number-as-text", "This reads as a number.", `Put it between quotes: "${written}".`);
				return;
			}
			return wrong(place, reading, "Text belongs here.", typeof value === "boolean" ? `Put it between quotes: "${reading.source(place)}".` : `Write ${what}.`);
		},
		schema: () => ({
			type: ["string", "number"],
			pattern: "\\S"
		})
	};
}
/** Text must survive being written as UTF-8; a replacement character shows that it already did not. */
function checkCharacters(value, place, reading) {
	if (/\p{Surrogate}/u.test(value)) reading.report(place, "encoding", "Half a character stands in this text.", "Type the text again.");
	else if (value.includes("�")) reading.report(place, "lost-character", "A character was lost when this text was saved or read in the wrong encoding.", "Save the file as UTF-8 and type it again.", { severity: "warning" });
}
/** An ISO 8601 calendar date that exists, years 1900 to 2999. */
function date() {
	return {
		what: "a date like 2027-02-01",
		read(place, reading) {
			const { node } = place;
			const value = node.kind === "scalar" ? node.value : void 0;
			const meant = value === null || value === void 0 ? void 0 : require_dates.likelyDate(reading.source(place));
			const remedy = meant === void 0 ? "Write year-month-day, like 2027-02-01." : `Write ${meant}.`;
			if (typeof value !== "string") return wrong(place, reading, "A date belongs here.", remedy);
			if (!new RegExp(DATE_PATTERN).test(value)) {
				const outside = meant === value;
				const rule = outside ? "A plan's dates lie in the years 1900 to 2999." : "A date is written year-month-day.";
				reading.report(place, "bad-format", rule, outside ? "Write a date in those years." : remedy);
				return;
			}
			if (require_dates.isCalendarDate(value)) return value;
			reading.report(place, "no-such-date", "The calendar has no such day.", "Write a day that exists.");
		},
		schema: () => ({
			type: "string",
			format: "date",
			pattern: DATE_PATTERN
		})
	};
}
var DATE_PATTERN = "^(19|2[0-9])[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";
/** true or false. */
function flag() {
	return {
		what: "true or false",
		read(place, reading) {
			const value = place.node.kind === "scalar" ? place.node.value : void 0;
			if (typeof value === "boolean") return value;
			const word = reading.source(place).toLowerCase().replace(/["']/g, "");
			return wrong(place, reading, "true or false belongs here.", (/^(y|yes|on|1|true)$/.test(word) ? "Write true." : /^(n|no|off|0|false)$/.test(word) ? "Write false." : "") || "Write true or false.");
		},
		schema: () => ({ type: "boolean" })
	};
}
/** A number within limits; never NaN, never infinite, at most 1e15 in size. */
function number(what, range = {}) {
	const low = range.min ?? -0x38d7ea4c68000;
	const high = range.max ?? 0x38d7ea4c68000;
	const rule = sentence(what, range);
	return {
		what,
		read(place, reading) {
			const { node } = place;
			const value = node.kind === "scalar" ? node.value : void 0;
			if (typeof value !== "number" || !Number.isFinite(value)) {
				const meant = typeof value === "string" ? advice(value, range) : void 0;
				return wrong(place, reading, `${upper$1(what)} belongs here.`, meant ?? `Write ${what}.`);
			}
			if (!(range.open ? value > low && value < high : value >= low && value <= high) || range.whole && !Number.isInteger(value)) {
				const percent = range.max === 1 && value > 1 && value <= 100 ? `Write ${value / 100}` : "";
				const remedy = percent ? `${percent} if ${value} % is meant.` : `Write ${what}.`;
				reading.report(place, "out-of-range", rule, remedy);
				return;
			}
			if (range.money) warnOfGrouping(place, reading, value);
			return value;
		},
		schema: () => ({
			type: range.whole ? "integer" : "number",
			[range.open ? "exclusiveMinimum" : "minimum"]: low,
			[range.open ? "exclusiveMaximum" : "maximum"]: high
		})
	};
}
/** Says, without touching the number, that `210.000` is two hundred and ten. */
function warnOfGrouping(place, reading, value) {
	const written = reading.source(place);
	if (!/^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(written)) return;
	const rule = `This reads as ${value}; the dot is the decimal point.`;
	const remedy = `Write ${written.replace(/[.+]/g, "")} if that is meant, else ${value}.`;
	reading.report(place, "grouped-digits", rule, remedy, { severity: "warning" });
}
function sentence(what, { min, max, open, whole }) {
	const kind = `${upper$1(what)} belongs here`;
	const between = open ? "strictly between" : "from";
	const and = open ? "and" : "to";
	if (min !== void 0 && max !== void 0) return `${whole ? "A whole number" : "A number"} ${between} ${min} ${and} ${max} belongs here.`;
	if (min !== void 0) return `${kind}: ${open ? "above" : "at least"} ${min}, at most ${LARGEST}.`;
	return `${kind}, at most ${LARGEST} in size.`;
}
var money = () => number("money as a plain number", { money: true });
var moneyFromZero = () => number("money as a plain number", {
	min: 0,
	money: true
});
var probability = () => number("a chance from 0 to 1", {
	min: 0,
	max: 1
});
/** One of a few words (or numbers, or flags). */
function choice(...choices) {
	const what = choices.length === 1 ? String(choices[0]) : `one of ${choices.join(", ")}`;
	return {
		what,
		read(place, reading) {
			const value = place.node.kind === "scalar" ? place.node.value : void 0;
			const found = choices.find((each) => each === value);
			if (found !== void 0) return found;
			if (value === null) return wrong(place, reading, "", "");
			const meant = typeof value === "string" ? reading.suggest(value, choices.map(String)) : void 0;
			const remedy = meant === void 0 ? `Write ${what}.` : `Write ${meant}.`;
			reading.report(place, "not-a-choice", `This is not ${what}.`, remedy);
		},
		schema: () => choices.length === 1 ? { const: choices[0] ?? null } : { enum: [...choices] }
	};
}
/** Text of a fixed form. */
function pattern(what, form) {
	return {
		what,
		read(place, reading) {
			const value = place.node.kind === "scalar" ? place.node.value : void 0;
			if (typeof value === "string" && form.test(value)) return value;
			if (typeof value !== "string") return wrong(place, reading, "Text belongs here.", `Write ${what}.`);
			const upperCase = value.toUpperCase();
			const remedy = form.test(upperCase) ? `Write ${upperCase}.` : `Write ${what}.`;
			reading.report(place, "bad-format", `This is not ${what}.`, remedy);
		},
		schema: () => ({
			type: "string",
			pattern: form.source
		})
	};
}
function upper$1(sentence) {
	return sentence.slice(0, 1).toUpperCase() + sentence.slice(1);
}
// ../../packages/core/src/plan/definition/names.ts
var ID_PATTERN = /^[a-z][a-z0-9-]*$/;
function readId(place, reading) {
	const value = place.node.kind === "scalar" ? place.node.value : void 0;
	if (typeof value !== "string") {
		reading.report(place, "wrong-type", "An id belongs here.", "Write one like `site-survey`.");
		return;
	}
	if (ID_PATTERN.test(value)) return value;
	if (/^[a-z][a-z0-9-]*(?:\s*[,;]\s*[a-z][a-z0-9-]*)+$/.test(value)) {
		const list = value.split(/\s*[,;]\s*/).join(", ");
		reading.report(place, "bad-format", "Several ids are a list, between brackets.", `Write [${list}].`);
		return;
	}
	const made = value.toLowerCase().normalize("NFKD").replace(/\p{M}/gu, "").replace(/[^a-z0-9]+/g, "-").replace(/^[^a-z]+|-+$/g, "");
	const remedy = made === "" ? "Write one like `site-survey`." : `Write ${made.slice(0, 60)}.`;
	reading.report(place, "bad-format", "An id is small letters, digits and hyphens, a letter first.", remedy);
}
var ID_SCHEMA = {
	type: "string",
	pattern: ID_PATTERN.source
};
/** An id. With a kind it defines that thing, and is unique in the document. */
function id(kind) {
	return {
		what: "an id like `site-survey`",
		read(place, reading) {
			const name = readId(place, reading);
			if (name === void 0 || kind === void 0) return name;
			const other = reading.ids.get(name);
			if (other === void 0) reading.ids.set(name, {
				kind,
				place: place.parent ?? place
			});
			else {
				const rule = `${pathText(other.place)} has this id already; ids are unique in the document.`;
				reading.report(place, "repeated-id", rule, "Give one of the two another id.");
			}
			return name;
		},
		schema: () => ({ ...ID_SCHEMA })
	};
}
/** The id of something of one of these kinds. */
function reference(kinds) {
	return {
		what: `the id of ${oneOf(kinds)}`,
		read(place, reading) {
			const name = readId(place, reading);
			if (name !== void 0) reading.references.push({
				kinds,
				id: name,
				place,
				lenient: false
			});
			return name;
		},
		schema: () => ({ ...ID_SCHEMA })
	};
}
/** As `reference`, but other words are only worth a warning. */
function looseReference(kinds) {
	const type = text(`the id of ${oneOf(kinds)}`);
	return {
		...type,
		read(place, reading) {
			const name = type.read(place, reading);
			if (name !== void 0) reading.references.push({
				kinds,
				id: name,
				place,
				lenient: true
			});
			return name;
		}
	};
}
/** `a person or a stakeholder`. */
function oneOf(kinds) {
	return kinds.map((kind) => `${/^[aeiou]/.test(kind) ? "an" : "a"} ${kind}`).join(" or ");
}
/** The label of a phase or a calendar. */
function label(kind, role) {
	const type = text(`the name of a ${kind}`);
	return {
		...type,
		read(place, reading) {
			const name = type.read(place, reading);
			if (name === void 0) return void 0;
			if (role === "refers") reading.labelReferences.push({
				kind,
				label: name,
				place
			});
			else if (!reading.labels[kind].has(name)) reading.labels[kind].set(name, place);
			else reading.report(place, "repeated-name", `Another ${kind} has this name.`, "Give each its own name.");
			return name;
		}
	};
}
var COST_PREFIX = "cost:";
/** A task id for its duration draw, `cost:TASK` for its cost draw. */
function drawName() {
	return {
		what: "a task's id, or `cost:` and a task's id",
		read(place, reading) {
			const { node } = place;
			const value = node.kind === "scalar" ? node.value : void 0;
			if (typeof value !== "string" || !value.startsWith("cost:")) return reference(["task"]).read(place, reading);
			const task = value.slice(5);
			const part = {
				...place,
				node: {
					kind: "scalar",
					value: task,
					at: node.at,
					end: node.end
				}
			};
			return reference(["task"]).read(part, reading) === void 0 ? void 0 : value;
		},
		schema: () => ({
			type: "string",
			pattern: "^(cost:)?[a-z][a-z0-9-]*$"
		})
	};
}
// ../../packages/core/src/plan/definition/type.ts
/** A key that must be there. */
function required(type, about, mistakenFor) {
	return {
		type,
		about,
		required: true,
		...mistakenFor && { mistakenFor }
	};
}
/** A key that may be left out. */
function optional(type, about, extra) {
	return {
		type,
		about,
		required: false,
		...extra
	};
}
// ../../packages/core/src/plan/definition/common.ts
var WHO = ["person", "stakeholder"];
/** The id of a person or a stakeholder. */
var who = () => reference(WHO);
var people = (about, mistakenFor = []) => optional(listOf(reference(WHO)), about, { mistakenFor });
/** Who does what: shared by tasks and phases. */
var ROLES = {
	responsible: people("Ids of those who do it; by default its first person.", [
		"owner",
		"lead",
		"assignee"
	]),
	accountable: people("Ids of those who answer for it.", ["approver"]),
	consulted: people("Ids of those who are asked before."),
	informed: people("Ids of those who are told after.")
};
/** Who wrote something down, told apart from who said it. */
var enteredBy = (about) => optional(listOf(looseReference(WHO)), about, { mistakenFor: [
	"contributedBy",
	"contributor",
	"writtenBy"
] });
var estimatedBy = () => optional(listOf(looseReference(WHO)), "Who said so: ids of people or stakeholders.", { mistakenFor: ["estimator", "estimated-by"] });
// ../../packages/core/src/plan/definition/object.ts
/** Keys every object may carry. */
var NOTE = optional(text("a note"), "A remark in Markdown; changes no number.", { mistakenFor: [
	"comment",
	"notes",
	"remark"
] });
var WAS_ID = optional(id(void 0), "The id it had before it was renamed: keeps its draws and its place in comparisons.");
var WAS_TEXT = optional(text("an old name"), "The name it had before it was renamed.");
/**
* An object with these keys and no others (`note` and `was` apart). `name` puts its schema under `$defs`.
*/
function object(name, about, own, settle) {
	const keys = {
		...own,
		note: NOTE,
		was: "id" in own ? WAS_ID : WAS_TEXT
	};
	const what = `an object: ${about}`;
	const required = Object.keys(keys).filter((key) => keys[key]?.required);
	const read = (place, reading) => {
		const { node } = place;
		if (node.kind !== "map") {
			const given = node.kind === "list" ? "a list" : reading.source(place) || "nothing";
			reading.report(place, "wrong-type", `${upper(what)}.`, `Write its keys, such as ${sample(required, keys)}, not ${shortly(given)}.`);
			return;
		}
		repeated(node, place, reading);
		const draft = {};
		for (const entry of node.entries.values()) {
			const key = Object.hasOwn(keys, entry.key) ? keys[entry.key] : void 0;
			if (key === void 0) {
				unknown(entry, place, keys, about, reading);
				continue;
			}
			const value = key.type.read({
				parent: place,
				key: entry.key,
				keyAt: entry.keyAt,
				node: entry.node
			}, reading);
			if (value !== void 0) draft[entry.key] = value;
		}
		for (const key of required) {
			if (node.entries.has(key)) continue;
			reading.report(place, "missing-key", `${upper(about)} needs \`${key}\`.`, `Add \`${key}\`: ${keys[key]?.about}`, { received: "" });
		}
		const result = draft;
		reading.settle(result, place);
		settle?.(result, place, reading);
		return result;
	};
	return {
		what,
		keys,
		read,
		schema(definitions) {
			if (!definitions.has(name)) {
				definitions.set(name, {});
				definitions.set(name, objectSchema(about, keys, required, definitions));
			}
			return { $ref: `#/$defs/${name}` };
		}
	};
}
function objectSchema(about, keys, required, definitions) {
	const properties = {};
	for (const [key, { type, about: description, fallback }] of Object.entries(keys)) {
		properties[key] = {
			...type.schema(definitions),
			description
		};
		if (fallback !== void 0) properties[key] = {
			...properties[key],
			default: fallback
		};
	}
	const schema = {
		type: "object",
		description: `${upper(about)}.`,
		properties,
		additionalProperties: false
	};
	if (required.length > 0) schema.required = required;
	return schema;
}
function repeated(node, place, reading) {
	for (const entry of node.repeated) {
		const at = {
			parent: place,
			key: entry.key,
			keyAt: entry.keyAt,
			node: entry.node
		};
		reading.report(at, "repeated-key", `\`${entry.key}\` is here twice.`, "Keep one of the two.", {
			received: "",
			at: entry.keyAt
		});
	}
}
function unknown(entry, place, keys, about, reading) {
	const meant = Object.keys(keys).find((key) => keys[key]?.mistakenFor?.includes(entry.key)) ?? reading.suggest(entry.key, Object.keys(keys));
	const names = Object.keys(keys).sort();
	const listed = names.length > 14 ? `${names.slice(0, 14).join(", ")}, and others` : names.join(", ");
	const { node } = entry;
	const comma = node.kind === "scalar" && node.value === null && node.at >= 0 && node.end === node.at;
	let remedy = `Known here: ${listed}.`;
	if (meant !== void 0) remedy = `Did you mean \`${meant}\`? ${keys[meant]?.about}`;
	else if (comma) remedy = "Text with a comma between brackets needs quotes.";
	const at = {
		parent: place,
		key: entry.key,
		keyAt: entry.keyAt,
		node: entry.node
	};
	reading.report(at, "unknown-key", `${upper(about)} has no key \`${entry.key.slice(0, 60)}\`.`, remedy, {
		received: entry.key,
		at: entry.keyAt
	});
}
function upper(sentence) {
	return sentence.slice(0, 1).toUpperCase() + sentence.slice(1);
}
function sample(required, keys) {
	return (required.length > 0 ? required : Object.keys(keys).slice(0, 2)).map((key) => `\`${key}\``).join(", ");
}
function shortly(given) {
	const line = given.split("\n")[0] ?? "";
	return line.length > 30 ? `${line.slice(0, 27)}...` : line;
}
/**
* A map from free labels to values, e.g. calendars by name.
*
* @param label  Called with each label and its place.
*/
function mapOf(about, value, label) {
	return {
		what: about,
		read(place, reading) {
			const { node } = place;
			if (node.kind !== "map") {
				reading.report(place, "wrong-type", `${upper(about)}.`, "Write `name: { ... }` for each.");
				return;
			}
			repeated(node, place, reading);
			const result = /* @__PURE__ */ new Map();
			for (const entry of node.entries.values()) {
				const at = childPlace(place, entry.key);
				checkCharacters(entry.key, at, reading);
				label(entry.key, at, reading);
				const draft = value.read(at, reading);
				if (draft !== void 0) result.set(entry.key, draft);
			}
			return result;
		},
		schema: (definitions) => ({
			type: "object",
			additionalProperties: value.schema(definitions)
		})
	};
}
// ../../packages/core/src/plan/definition/people.ts
var calendarName = () => label("calendar", "refers");
var absence = shorthand(date(), object("absence", "an absence", {
	from: required(date(), "its first day.", ["start"]),
	to: optional(date(), "Its last day; by default the first.", { mistakenFor: ["until", "end"] }),
	share: optional(number("a part from 0 to 1", {
		min: 0,
		max: 1
	}), "Part of the capacity that is away.", { fallback: 1 }),
	why: optional(text("text"), "The reason.", { mistakenFor: ["name", "reason"] })
}), (day) => ({ from: day }));
var couldAdd = object("could-add", "capacity that could be added", {
	capacity: required(number("a number of people above 0, such as 0.2", {
		min: 0,
		open: true
	}), "how many more of them there would be; 0.2 is a day a week.", [
		"share",
		"people",
		"fte"
	]),
	cost: optional(moneyFromZero(), "Money, once, if it is added; their rate is paid as before.", {
		fallback: 0,
		mistakenFor: ["price", "rate"]
	}),
	from: optional(date(), "First day on which it would be there; by default the plan's start.", { mistakenFor: ["start", "after"] })
});
var person = object("person", "a person", {
	id: required(id("person"), "their id."),
	name: required(text("a name"), "their name."),
	role: optional(text("text"), "What they do."),
	rate: optional(moneyFromZero(), "Money per person-day.", {
		fallback: 0,
		mistakenFor: [
			"dayRate",
			"cost",
			"costPerDay"
		]
	}),
	share: optional(number("a share of a day, such as 0.5", { min: 0 }), "What a bare id means in a task.", { fallback: 1 }),
	capacity: optional(number("a number of people, such as 0.4", { min: 0 }), "How many of them there are; 0.4 is two days a week.", {
		fallback: 1,
		mistakenFor: [
			"availability",
			"available",
			"fte"
		]
	}),
	calendar: optional(calendarName(), "Their calendar; by default the plan's."),
	away: optional(listOf(absence), "Absences.", { mistakenFor: [
		"holidays",
		"vacation",
		"leave",
		"absences",
		"absent"
	] }),
	couldAdd: optional(couldAdd, "More of them that could be had; no figure counts it unless it is taken in.", { mistakenFor: [
		"extra",
		"more",
		"couldAddCapacity"
	] })
});
var stakeholder = object("stakeholder", "a stakeholder", {
	id: required(id("stakeholder"), "their id."),
	name: required(text("a name"), "their name."),
	role: optional(text("text"), "Their part in it."),
	interest: optional(text("text"), "What they want of it."),
	stance: optional(choice("supports", "neutral", "resists"), "Where they stand."),
	inform: optional(object("inform", "how a stakeholder is informed", {
		how: optional(text("text"), "By what means."),
		every: optional(choice("week", "two-weeks", "month", "quarter", "milestone"), "How often."),
		owner: optional(who(), "Who sees to it."),
		what: optional(text("text"), "What they are told.", { mistakenFor: [
			"message",
			"content",
			"about"
		] }),
		from: optional(date(), "The first day they are told, from which the rhythm runs; by default the plan's start.", { mistakenFor: [
			"start",
			"since",
			"first"
		] })
	}), "How they are kept informed."),
	approvesUpTo: optional(moneyFromZero(), "Money they may approve."),
	delegate: optional(who(), "Who may sign in their place, up to the same sum or their own limit, if that is less.", { mistakenFor: ["deputy"] })
});
var phase = object("phase", "a phase", {
	name: required(label("phase", "defines"), "its name.", ["id", "title"]),
	calendar: optional(calendarName(), "Calendar of its tasks; by default the plan's."),
	...ROLES
});
var holiday = shorthand(date(), object("holiday", "a holiday", {
	from: required(date(), "its first day.", ["date", "start"]),
	to: optional(date(), "Its last day; by default the first.", { mistakenFor: ["until", "end"] }),
	name: optional(text("text"), "What it is called.")
}), (day) => ({ from: day }));
var WEEKDAYS = [
	"mon",
	"tue",
	"wed",
	"thu",
	"fri",
	"sat",
	"sun"
];
/** Calendars that always exist. */
var GIVEN_CALENDARS = ["weekdays", "every-day"];
var calendars = mapOf("calendars by name", object("calendar", "a calendar", {
	like: optional(calendarName(), "Starts from that calendar; own workdays replace, own holidays add.", { mistakenFor: ["base", "extends"] }),
	workdays: optional(listOf(choice(...WEEKDAYS), 1), "Days of the week that hold work; Monday to Friday unless said.", { mistakenFor: ["days", "weekdays"] }),
	holidays: optional(listOf(holiday), "Days that hold no work.", { mistakenFor: ["closed", "off"] })
}), (name, place, reading) => {
	if (GIVEN_CALENDARS.some((given) => given === name)) {
		const remedy = `Give it another name, with \`like: ${name}\`, and name that one in \`calendar\`.`;
		reading.report(place, "given-calendar", `\`${name}\` always exists and cannot be changed.`, remedy, { received: name });
	}
	reading.labels.calendar.set(name, place);
});
// ../../packages/core/src/plan/definition/returnTrigger.ts
/** The conditions a return trigger may have; it has exactly one. */
var TRIGGER_CONDITIONS = [
	"chanceOfDateBelow",
	"chanceOfBudgetBelow",
	"contingencyCoverBelow",
	"signpost",
	"finishLaterThan",
	"costAbove"
];
/** When the plan comes back to those who approved it: it is what they sign, so it counts in both hashes. */
var returnTrigger = object("return-trigger", "a return trigger", {
	id: required(id("return trigger"), "its id."),
	name: optional(text("a name"), "What it is called.", { mistakenFor: ["title"] }),
	chanceOfDateBelow: optional(probability(), "Trips when the chance of the date agreed (signed, else `commitment.finishBy`) is below this.", { mistakenFor: [
		"chanceOfFinishBelow",
		"dateChanceBelow",
		"chanceBelow"
	] }),
	chanceOfBudgetBelow: optional(probability(), "Trips when the chance of the sum agreed (signed, else `commitment.budget`) is below this.", { mistakenFor: ["chanceOfCostBelow", "budgetChanceBelow"] }),
	contingencyCoverBelow: optional(number("a ratio such as 1", { min: 0 }), "Trips when the contingency left, over the exposure left, is below this, in money or in days.", { mistakenFor: ["coverBelow", "contingencyBelow"] }),
	signpost: optional(reference(["assumption"]), "Trips once this assumption is `tripped` or `occurred`.", { mistakenFor: ["assumption", "tripped"] }),
	finishLaterThan: optional(date(), "Trips when the committed date is later than this day.", { mistakenFor: [
		"dateAfter",
		"finishAfter",
		"laterThan"
	] }),
	costAbove: optional(moneyFromZero(), "Trips when the committed sum is above this.", { mistakenFor: ["sumAbove", "budgetAbove"] })
});
// ../../packages/core/src/plan/definition/acceptedFinding.ts
/**
* A finding of `check` that was looked at and accepted. Its ids are no references: what they name may have gone from
* the plan since, which is then itself a note of the check.
*/
var acceptedFinding = object("accepted-finding", "an accepted finding", {
	finding: required(id(void 0), "the code of the finding, such as `range-missing`.", ["code"]),
	ids: optional(listOf(id(void 0)), "What the finding is about; by default every finding of this code.", { mistakenFor: [
		"id",
		"tasks",
		"about"
	] }),
	who: required(who(), "who accepts it.", ["by"]),
	date: required(date(), "when.", ["on"]),
	why: required(text("text"), "why it may stay.", ["reason", "because"])
});
// ../../packages/core/src/plan/definition/decision.ts
var alternative = object("alternative", "an alternative", {
	name: required(text("a name"), "what it is called.", ["title", "id"]),
	text: optional(text("text"), "What it would mean.", { mistakenFor: ["description", "what"] })
});
/** What is asked of the approvers: it is what they sign, so it counts in both hashes. */
var decision = object("decision", "the decision", {
	ask: optional(text("text"), "What is asked, in one sentence; by default made from the commitment.", { mistakenFor: ["question", "request"] }),
	by: optional(date(), "The day by which it has to be decided.", { mistakenFor: [
		"deadline",
		"due",
		"date"
	] }),
	recommend: optional(text("text"), "What is recommended, and why.", { mistakenFor: ["recommendation"] }),
	doNothing: optional(text("text"), "What happens when nothing is done."),
	alternatives: optional(listOf(alternative), "What else was looked at.", { mistakenFor: ["options", "choices"] })
});
// ../../packages/core/src/plan/definition/estimate.ts
var BOUNDS = [
	"extremes",
	"p10-p90",
	"p5-p95"
];
var UNITS = ["days", "weeks"];
var without = require_shapes.SHAPES.filter((shape) => !require_shapes.shapeRules[shape].takesLikely);
/** What is said of the key `likely`. */
var LIKELY = `The most likely value; none for ${without.slice(0, -1).join(", ")} and ${without.at(-1)}.`;
function define(measure) {
	const value = number(measure === "money" ? "money as a plain number" : "a number", { money: measure === "money" });
	const shape = optional(choice(...require_shapes.SHAPES), "Shape of the distribution; `pert` unless said.", { fallback: "pert" });
	const bounds = optional(choice(...BOUNDS), "What low and high are: the extremes, or percentiles.", { fallback: "extremes" });
	const range = {
		low: required(value, "the low value.", [
			"min",
			"minimum",
			"optimistic",
			"best"
		]),
		likely: optional(value, LIKELY, { mistakenFor: [
			"mode",
			"most-likely",
			"mostLikely",
			"expected"
		] }),
		high: required(value, "the high value.", [
			"max",
			"maximum",
			"pessimistic",
			"worst"
		]),
		shape,
		bounds
	};
	const outcomes = { outcomes: required(listOf(object(`outcome${measure === "money" ? "-money" : ""}`, "an outcome", {
		value: required(value, "the value."),
		chance: required(number("a chance above 0", {
			min: 0,
			max: 1
		}), "its chance.", ["probability", "p"])
	}), 1), "distinct values with chances that sum to 1.") };
	const unit = { unit: optional(choice(...UNITS), "`weeks` are of the calendar the time is counted on.", { fallback: "days" }) };
	const timed = measure === "time";
	const name = measure === "plain" ? "estimate" : `${measure}-estimate`;
	return {
		value,
		name,
		rangeType: object(`${name}-range`, "an estimate", timed ? {
			...range,
			...unit
		} : range),
		outcomesType: object(`${name}-outcomes`, "an estimate by outcomes", timed ? {
			...outcomes,
			...unit
		} : outcomes)
	};
}
var PARTS = {
	time: define("time"),
	money: define("money"),
	plain: define("plain")
};
/** `7`, `[5, 7, 14]`, `{ low, likely, high, ... }` or `{ outcomes: [...] }`. */
function estimate(measure) {
	const { value, name, rangeType, outcomesType } = PARTS[measure];
	return {
		what: "an estimate: one number, or [low, likely, high]",
		read(place, reading) {
			const draft = read(place, reading);
			if (draft !== void 0) reading.estimates.push({
				draft,
				measure,
				place
			});
			return draft;
		},
		schema(definitions) {
			if (!definitions.has(name)) {
				const three = {
					type: "array",
					items: value.schema(definitions),
					minItems: 3,
					maxItems: 3
				};
				definitions.set(name, {
					description: "A number (certain), [low, likely, high], an object of those, or outcomes with chances.",
					anyOf: [
						value.schema(definitions),
						three,
						rangeType.schema(definitions),
						outcomesType.schema(definitions)
					]
				});
			}
			return { $ref: `#/$defs/${name}` };
		}
	};
	function read(place, reading) {
		const { node } = place;
		if (node.kind === "map") return (node.entries.has("outcomes") ? outcomesType : rangeType).read(place, reading);
		if (node.kind === "list") return three(place, reading);
		const single = value.read(place, reading);
		return single === void 0 ? void 0 : reading.settle({ value: single }, place);
	}
	function three(place, reading) {
		const { node } = place;
		if (node.kind !== "list") return void 0;
		const [low, likely, high] = node.items.map((item, index) => value.read({
			parent: place,
			key: index,
			keyAt: item.at,
			node: item
		}, reading));
		if (node.items.length === 3) return reading.settle({
			low,
			likely,
			high
		}, place);
		const code = node.items.length < 3 ? "too-few" : "too-many";
		const pair = node.items.length === 2 ? "Write three numbers, or { low: ..., high: ..., shape: uniform }." : "Write [low, likely, high], or one number where it is certain.";
		reading.report(place, code, "An estimate in brackets is three numbers: low, likely, high.", pair);
	}
}
/** Free text between the sections; changes no number, and is part of what is signed. */
var pageText = object("page-text", "a text", {
	after: required(choice(...[
		"answer",
		"futures",
		"drivers",
		"contingency",
		"purpose",
		"people",
		"calendar",
		"work",
		"register",
		"responses",
		"commitment",
		"level",
		"money",
		"reach",
		"one-future",
		"changes",
		"hand-over"
	]), "the section it stands below.", [
		"below",
		"section",
		"under"
	]),
	text: required(text("text in Markdown"), "what it says, in Markdown.", [
		"markdown",
		"body",
		"content"
	])
});
// ../../packages/core/src/plan/definition/purpose.ts
var goal = object("goal", "a goal", {
	id: required(id("goal"), "its id."),
	statement: required(text("a statement"), "what is to be reached.", [
		"name",
		"title",
		"text"
	]),
	measure: optional(text("text"), "How it is measured."),
	target: optional(text("text"), "The value aimed at, in words."),
	by: optional(date(), "By when."),
	owner: optional(who(), "Who answers for it.")
});
var scopeItem = object("scope-item", "a scope item", {
	id: required(id("scope item"), "its id."),
	name: optional(text("a name"), "What it is called; by default its id."),
	optional: optional(flag(), "Whether it can be left out.", { fallback: false }),
	lost: optional(text("text"), "What is lost without it.")
});
/** A bar the result has to clear: what is expected today is held against it, and once measured, what was measured. */
var quality = object("quality", "a quality bar", {
	id: required(id("quality bar"), "its id."),
	statement: required(text("a statement"), "what has to hold.", [
		"name",
		"title",
		"text"
	]),
	atLeast: optional(number("a number"), "The least that will do; exactly one of `atLeast` and `atMost`.", { mistakenFor: ["min", "minimum"] }),
	atMost: optional(number("a number"), "The most that will do, in place of `atLeast`.", { mistakenFor: ["max", "maximum"] }),
	unit: optional(text("text"), "The unit of these numbers, in words."),
	expected: optional(estimate("plain"), "What is expected today, an estimate.", { mistakenFor: ["forecast", "likely"] }),
	measured: optional(number("a number"), "What was measured; it counts in place of `expected`.", { mistakenFor: ["actual", "value"] }),
	on: optional(date(), "The day it was measured.", { mistakenFor: ["date", "measuredOn"] }),
	owner: optional(who(), "Who sees that it holds.")
});
var purpose = object("purpose", "the purpose", {
	problem: optional(text("text"), "What is wrong today."),
	goals: optional(listOf(goal), "What is to be reached."),
	scope: optional(object("scope", "the scope", {
		in: optional(listOf(scopeItem), "What is delivered."),
		out: optional(listOf(text("text")), "What is not.")
	}), "What is in and what is out."),
	constraints: optional(listOf(text("text")), "What cannot be changed."),
	quality: optional(listOf(quality), "Bars the result has to clear, each with a number.", { mistakenFor: ["criteria", "acceptance"] })
});
var KINDS = [
	"revenue",
	"cost-saving",
	"time-saving",
	"process",
	"efficiency",
	"risk-reduction"
];
var months = () => number("a number of months", { min: 0 });
var benefit = object("benefit", "a benefit", {
	id: required(id("benefit"), "its id."),
	name: required(text("a name"), "what it is called.", ["title"]),
	kind: optional(choice(...KINDS), "What sort of benefit."),
	goal: optional(reference(["goal"]), "The goal it serves."),
	owner: optional(who(), "Who sees that it comes."),
	baseline: optional(text("text"), "How it is today, in words and figures."),
	target: optional(text("text"), "How it is to be, in words and figures."),
	amount: optional(estimate("money"), "Money per period; exactly one of `amount` and `quantity`.", { mistakenFor: ["value"] }),
	quantity: optional(estimate("plain"), "A number of units per period, in place of `amount`."),
	unit: optional(text("text"), "The unit of `quantity`, in words."),
	worth: optional(money(), "Money per unit; without it, reported only."),
	per: optional(choice("day", "week", "month", "year", "once"), "The period.", {
		fallback: "year",
		mistakenFor: ["every"]
	}),
	starts: optional(reference(["task"]), "Begins at this task's finish; by default the plan's."),
	lag: optional(months(), "Months from that finish until it begins.", {
		fallback: 0,
		mistakenFor: [
			"startLag",
			"delay",
			"after"
		]
	}),
	ramp: optional(months(), "Months until it is there in full."),
	lasts: optional(months(), "Months it lasts."),
	until: optional(date(), "Last day it counts.")
});
var appraisal = object("appraisal", "the appraisal", {
	years: optional(number("a number of years", {
		min: 0,
		max: 100
	}), "How far benefits count.", { fallback: 100 }),
	discountRate: optional(number("a rate such as 0.03", {
		min: -1,
		max: 1,
		open: true
	}), "Yearly discount rate.", {
		fallback: 0,
		mistakenFor: ["rate", "discount"]
	})
});
// ../../packages/core/src/plan/definition/register.ts
var impact = object("impact", "an impact", {
	tasks: optional(listOf(reference(["task"]), 1), "Ids of the tasks it touches.", { mistakenFor: ["task"] }),
	phase: optional(label("phase", "refers"), "A phase it touches: its tasks, milestones excluded."),
	delay: optional(estimate("time"), "Lengthens each task by working days."),
	factor: optional(estimate("plain"), "Multiplies each task's duration."),
	wait: optional(estimate("time"), "Moves each task's bounds that many working days later."),
	cost: optional(estimate("money"), "Money, once.")
});
var response = object("response", "a response", {
	id: required(id("response"), "its id."),
	action: required(text("what is done"), "what is done.", ["name", "title"]),
	owner: optional(who(), "Who sees to it."),
	due: optional(date(), "By when."),
	cost: optional(estimate("money"), "Spent when adopted, whatever the risk's status."),
	adopted: optional(flag(), "Whether it is part of the plan.", { fallback: false }),
	probability: optional(probability(), "What the risk's probability becomes.", { mistakenFor: ["chance", "likelihood"] }),
	scale: optional(number("a factor such as 0.6", { min: 0 }), "Part of the impact that remains.", { fallback: 1 })
});
/** What an occurred entry did in fact: a fact takes the place of the range. */
var actual = object("actual", "what an occurred entry did in fact", {
	cost: optional(money(), "Money it cost in all, in place of its impacts' `cost`.", { mistakenFor: ["spent", "money"] }),
	days: optional(number("working days"), "Working days it took of each task that its impacts delay or make wait, in place of these.", { mistakenFor: ["delay", "wait"] })
});
var shared = {
	cause: optional(text("text"), "What would bring it about."),
	owner: optional(who(), "Who watches it."),
	impacts: optional(listOf(impact), "What it does when it happens.", { mistakenFor: [
		"impact",
		"effects",
		"effect"
	] }),
	responses: optional(listOf(response), "What can be done about it.", { mistakenFor: [
		"response",
		"mitigation",
		"mitigations",
		"actions"
	] }),
	group: optional(text("a name"), "Entries of one group exclude each other."),
	status: optional(choice("open", "occurred", "closed"), "Whether it can still happen.", { fallback: "open" }),
	actual: optional(actual, "What it did in fact, once it has occurred.", { mistakenFor: ["actuals"] }),
	expires: optional(date(), "Last day it can happen."),
	onlyIf: optional(reference(["response"]), "Exists only while this response is adopted.")
};
var risk = object("risk", "a risk", {
	id: required(id("risk"), "its id."),
	name: required(text("a name"), "what may happen.", [
		"title",
		"event",
		"description"
	]),
	probability: required(probability(), "its chance, from 0 to 1.", [
		"chance",
		"likelihood",
		"chanceWrong"
	]),
	...shared
});
var assumption = object("assumption", "an assumption", {
	id: required(id("assumption"), "its id."),
	statement: required(text("a statement"), "what you count on.", [
		"name",
		"title",
		"text"
	]),
	chanceWrong: required(probability(), "the chance that it proves wrong, from 0 to 1.", ["probability", "chance"]),
	reviewBy: optional(date(), "When to look at it again."),
	signpost: optional(text("text"), "The sign by which you would notice."),
	tripped: optional(date(), "The day its signpost was seen; changes no number."),
	...shared
});
var correlation = object("correlation", "a correlation", {
	between: required(listOf(drawName(), 2), "ids of tasks, or `cost:TASK` for a cost.", ["tasks", "ids"]),
	coefficient: required(number("a number from -1 to 1", {
		min: -1,
		max: 1
	}), "from -1 to 1.", ["rho", "correlation"]),
	cause: optional(text("text"), "Why they move together.")
});
// ../../packages/core/src/plan/definition/opinion.ts
var OPINION_OF = [
	"duration",
	"effort",
	"cost"
];
var OPINION_QUESTIONS = [
	"basis",
	"high",
	"low",
	"likely",
	"dissent"
];
var value = number("a number");
/** What one person said about a task before its estimate was settled; changes no number. */
var opinion = object("opinion", "an opinion", {
	by: required(who(), "who said it: the id of a person or stakeholder.", [
		"who",
		"person",
		"estimatedBy"
	]),
	date: optional(date(), "When it was said; the latest opinion of a person counts.", { mistakenFor: ["when", "on"] }),
	of: optional(choice(...OPINION_OF), "What it is an estimate of; by default the task's time."),
	low: required(value, "the low value.", [
		"min",
		"optimistic",
		"best"
	]),
	likely: optional(value, LIKELY, { mistakenFor: [
		"mode",
		"most-likely",
		"mostLikely"
	] }),
	high: required(value, "the high value.", [
		"max",
		"pessimistic",
		"worst"
	]),
	shape: optional(choice(...require_shapes.SHAPES), "Shape of the distribution; by default as every estimate's."),
	bounds: optional(choice(...BOUNDS), "What low and high are; by default as every estimate's."),
	unit: optional(choice(...UNITS), "`weeks` are of the calendar the time is counted on.", { fallback: "days" }),
	basis: optional(text("text"), "Why they would know.", { mistakenFor: [
		"why",
		"reason",
		"source"
	] }),
	order: optional(listOf(choice(...OPINION_QUESTIONS)), "The questions in the order they were asked."),
	enteredBy: enteredBy("Who wrote it down, where that was somebody else: ids."),
	dissent: optional(text("text"), "What they do not agree with.", { mistakenFor: ["objection"] })
}, (draft, place, reading) => {
	const { low, likely, high, shape, bounds, unit } = draft;
	reading.estimates.push({
		draft: {
			low,
			likely,
			high,
			shape,
			bounds,
			unit
		},
		measure: "plain",
		place
	});
});
// ../../packages/core/src/plan/definition/task.ts
var LINKS = [
	"finish-to-start",
	"start-to-start",
	"finish-to-finish",
	"start-to-finish"
];
var days = estimate("time");
var lagObject = object("lag", "a lag", {
	days: required(days, "working days, an estimate; may be negative."),
	calendar: optional(label("calendar", "refers"), "Calendar the lag is counted on; by default the successor's.")
});
/** An estimate in working days, or `{ days, calendar }`. */
var lag = {
	what: `${days.what}, or { days, calendar }`,
	read(place, reading) {
		if (place.node.kind === "map" && (place.node.entries.has("days") || place.node.entries.has("calendar"))) return lagObject.read(place, reading);
		const draft = days.read(place, reading);
		return draft === void 0 ? void 0 : reading.settle({ days: draft }, place);
	},
	schema: (definitions) => ({ anyOf: [days.schema(definitions), lagObject.schema(definitions)] })
};
var link = shorthand(reference(["task"]), object("link", "a link", {
	task: required(reference(["task"]), "the id of the task it hangs on.", [
		"id",
		"from",
		"predecessor"
	]),
	link: optional(choice(...LINKS), "Which ends are linked.", {
		fallback: "finish-to-start",
		mistakenFor: ["type", "kind"]
	}),
	lag: optional(lag, "Working days between the two ends; may be negative.", {
		fallback: 0,
		mistakenFor: ["delay", "days"]
	})
}), (task) => ({ task }));
var share = () => number("a share of a day, such as 0.5", { min: 0 });
var member = shorthand(reference(["person"]), object("task-person", "a person on a task", {
	id: required(reference(["person"]), "the person's id.", [
		"person",
		"who",
		"name"
	]),
	share: optional(share(), "Part of a day on this task; by default the person's own `share`.", { mistakenFor: [
		"allocation",
		"percent",
		"units"
	] }),
	along: optional(flag(), "Costs and holds a share, but does not limit the task's days.", { fallback: false })
}), (person) => ({ id: person }));
var task = object("task", "a task", {
	id: required(id("task"), "its id."),
	name: required(text("a name"), "what it is called.", [
		"title",
		"task",
		"summary"
	]),
	phase: optional(label("phase", "refers"), "Name of its phase."),
	scope: optional(reference(["scope item"]), "Id of the scope item it delivers."),
	duration: optional(estimate("time"), "Elapsed working days; exactly one of `duration` and `effort`.", { mistakenFor: [
		"days",
		"length",
		"estimate"
	] }),
	effort: optional(estimate("time"), "Person-days, divided by its people's shares to give the duration.", { mistakenFor: [
		"work",
		"person-days",
		"hours"
	] }),
	milestone: optional(choice(true, false, "start"), "A point in time; `start` where something begins there.", { fallback: false }),
	target: optional(date(), "Measured, never forces dates.", { mistakenFor: [
		"deadline",
		"due-date",
		"dueDate"
	] }),
	after: optional(listOf(link), "Tasks it waits for.", { mistakenFor: [
		"predecessors",
		"predecessor",
		"depends",
		"dependsOn",
		"depends-on",
		"dependencies",
		"requires"
	] }),
	notBefore: optional(date(), "Earliest start.", { mistakenFor: [
		"earliest",
		"from",
		"start"
	] }),
	holdToPlan: optional(flag(), "Never starts before its start in the plan as written.", { fallback: false }),
	calendar: optional(label("calendar", "refers"), "Its calendar; by default its phase's, then the plan's."),
	unbroken: optional(label("calendar", "refers"), "May not span a non-working day of this calendar."),
	people: optional(listOf(member), "Who does it.", { mistakenFor: [
		"resources",
		"who",
		"assigned",
		"assignees",
		"team"
	] }),
	cost: optional(estimate("money"), "Money once.", { mistakenFor: ["price", "budget"] }),
	due: optional(choice("start", "finish"), "When `cost` falls due; by default evenly over the task."),
	costPerDay: optional(estimate("money"), "Money per working day of the task.", { mistakenFor: [
		"dayRate",
		"perDay",
		"rate"
	] }),
	priority: optional(number("a number"), "Higher goes first where people are short.", { fallback: 0 }),
	detail: optional(choice("firm", "outline"), "Near work is firm, far work an outline."),
	chance: optional(probability(), "Probability that it is needed at all.", {
		fallback: 1,
		mistakenFor: ["probability", "likelihood"]
	}),
	onlyIf: optional(reference(["response"]), "Needed only while this response is adopted."),
	...ROLES,
	estimatedBy: estimatedBy(),
	basis: optional(text("text"), "Why they would know."),
	enteredBy: enteredBy("Who put it, or its estimate, into the plan: ids; changes no number."),
	started: optional(date(), "Day it started.", { mistakenFor: ["actualStart", "begun"] }),
	finished: optional(date(), "Day it finished.", { mistakenFor: [
		"actualFinish",
		"done",
		"completed"
	] }),
	remaining: optional(estimate("time"), "Working days that remain of a started task."),
	spent: optional(money(), "Money spent on it so far.", { mistakenFor: ["actualCost"] }),
	opinions: optional(listOf(opinion), "What people said before its estimate was settled; changes no number."),
	detailOf: optional(id(void 0), "Id of the outline task, in an earlier plan, that it details.", { mistakenFor: [
		"details",
		"partOf",
		"parent"
	] })
});
// ../../packages/core/src/plan/definition/plan.ts
var commitment = object("commitment", "the commitment", {
	finishOf: optional(reference(["task"]), "Whose finish is promised; by default the plan's.", { mistakenFor: ["task"] }),
	confidence: optional(number("a confidence such as 0.8", {
		min: 0,
		max: 1,
		open: true
	}), "The level committed to.", {
		fallback: .8,
		mistakenFor: ["level", "percentile"]
	}),
	finishBy: optional(date(), "The date asked for.", { mistakenFor: [
		"deadline",
		"by",
		"date"
	] }),
	budget: optional(moneyFromZero(), "The money available."),
	reserve: optional(moneyFromZero(), "The sponsor's reserve, not part of `budget`."),
	holder: optional(who(), "Who holds the contingency."),
	releaseRule: optional(text("how contingency is released"), "Who releases contingency, and how; in words."),
	funds: optional(listOf(object("funds", "a release of money", {
		from: required(date(), "the day it is there.", ["date"]),
		amount: required(moneyFromZero(), "how much.", ["money"])
	})), "When money is released.")
});
var lateness = object("lateness", "the cost of lateness", {
	after: optional(date(), "Late after this day; by default `commitment.finishBy`."),
	perWeek: optional(estimate("money"), "Money per week late."),
	once: optional(estimate("money"), "Money when late at all.")
});
var estimates = object("estimates", "what every estimate is unless it says", {
	shape: optional(choice(...require_shapes.SHAPES), "Shape of every estimate that does not say.", { fallback: "pert" }),
	bounds: optional(choice(...BOUNDS), "Bounds of every estimate that does not say.", { fallback: "extremes" })
});
var interval = object("interval", "an interval", {
	id: required(id("interval"), "its id."),
	name: optional(text("a name"), "What it is called; by default its id."),
	from: required(reference(["task"]), "the task from whose finish it runs."),
	to: required(reference(["task"]), "the task to whose start it runs."),
	atMost: optional(number("a number of calendar days"), "Calendar days it should not exceed.")
});
var overhead = object("overhead", "an overhead", {
	id: required(id("overhead"), "its id."),
	name: required(text("a name"), "what it is called."),
	perDay: optional(estimate("money"), "Money per working day.", {
		fallback: 0,
		mistakenFor: [
			"costPerDay",
			"rate",
			"cost"
		]
	}),
	from: optional(reference(["task"]), "Runs from this task's start; by default the plan's."),
	to: optional(reference(["task"]), "Runs to this task's finish; by default the plan's.")
});
var approval = object("approval", "an approval", {
	who: required(who(), "who decides.", ["by", "id"]),
	decision: optional(choice("pending", "approve", "approve-subject-to", "rework"), "The decision.", { fallback: "pending" }),
	date: optional(date(), "When it was taken."),
	conditions: optional(text("text"), "What it is subject to."),
	conditionsBy: optional(date(), "The day by which the conditions have to be met.", { mistakenFor: ["until", "expires"] }),
	conditionsMet: optional(date(), "The day on which they were met."),
	plan: optional(text("a hash"), "Hash of the plan it is bound to."),
	by: optional(who(), "Who signed in their place.")
});
var objection = object("objection", "an objection", {
	id: required(id("objection"), "its id."),
	who: optional(who(), "Who raised it."),
	date: optional(date(), "When."),
	text: optional(text("text"), "What it says."),
	answer: optional(text("text"), "What was answered."),
	evidence: optional(text("text"), "What supports the answer."),
	state: optional(choice("open", "answered", "accepted"), "Where it stands.", { fallback: "open" }),
	changedPlan: optional(flag(), "Whether it changed the plan.", { fallback: false }),
	acceptedBy: optional(who(), "Who accepted that it stands."),
	reopenedBy: optional(who(), "Who opened it again after it was answered or accepted.")
});
var change = object("change", "a change", {
	date: optional(date(), "When."),
	who: optional(who(), "Who decided it."),
	what: optional(text("text"), "What changed."),
	why: optional(text("text"), "Why."),
	approvedBy: optional(who(), "Who agreed to it.")
});
/** The whole format, version 1. */
var planDocument = object("plan", "a plan", {
	format: required(choice(1), "always 1.", ["version"]),
	title: required(text("a title"), "what the plan is called.", ["name"]),
	start: required(date(), "the first day on which work may happen.", [
		"startDate",
		"begin",
		"from"
	]),
	tasks: required(listOf(task, 1), "the work, milestones included.", [
		"task",
		"activities",
		"work"
	]),
	currency: optional(pattern("a currency code such as EUR (ISO 4217)", /^[A-Z]{3}$/), "Currency of all money.", { fallback: "EUR" }),
	statusDate: optional(date(), "The day up to which progress is recorded.", { mistakenFor: [
		"today",
		"asOf",
		"dataDate"
	] }),
	seed: optional(text("text"), "Same plan, seed and iterations: same numbers.", { fallback: "leeway" }),
	iterations: optional(number("a number of iterations", {
		min: 1,
		max: 1e7,
		whole: true
	}), "How many futures are drawn.", {
		fallback: 1e4,
		mistakenFor: [
			"runs",
			"trials",
			"n"
		]
	}),
	commitment: optional(commitment, "What is promised, and at which confidence."),
	decision: optional(decision, "What is asked of the approvers."),
	lateness: optional(lateness, "What finishing late costs the organisation."),
	estimates: optional(estimates, "Shape and bounds of every estimate that does not say."),
	calendars: optional(calendars, "Named calendars."),
	calendar: optional(label("calendar", "refers"), "The plan's own calendar.", { fallback: "weekdays" }),
	purpose: optional(purpose, "Why: problem, goals, scope, constraints.", { mistakenFor: ["why"] }),
	benefits: optional(listOf(benefit), "Why it is worth it."),
	appraisal: optional(appraisal, "How benefits are weighed against cost."),
	people: optional(listOf(person), "Who does the work, and when they can.", { mistakenFor: ["resources", "team"] }),
	respectCapacity: optional(flag(), "Nobody is asked for more than their capacity.", { fallback: true }),
	stakeholders: optional(listOf(stakeholder), "Who has a stake in it."),
	phases: optional(listOf(phase), "Phases in reading order, with defaults for their tasks."),
	intervals: optional(listOf(interval), "Spans to watch."),
	assumptions: optional(listOf(assumption), "What is counted on."),
	risks: optional(listOf(risk), "What may happen."),
	correlations: optional(listOf(correlation), "Estimates that move together."),
	overheads: optional(listOf(overhead), "Money that runs with time."),
	approvals: optional(listOf(approval), "Who decided what."),
	objections: optional(listOf(objection), "What was objected, and the answer."),
	changes: optional(listOf(change), "What changed, and why."),
	returnTriggers: optional(listOf(returnTrigger), "When it comes back to those who approved it.", { mistakenFor: ["triggers", "returnTrigger"] }),
	texts: optional(listOf(pageText), "Free text between the sections of the page; changes no number."),
	acceptedFindings: optional(listOf(acceptedFinding), "Findings of `check` that were looked at and accepted.")
});
Object.defineProperty(exports, "BOUNDS", {
	enumerable: true,
	get: function() {
		return BOUNDS;
	}
});
Object.defineProperty(exports, "COST_PREFIX", {
	enumerable: true,
	get: function() {
		return COST_PREFIX;
	}
});
Object.defineProperty(exports, "GIVEN_CALENDARS", {
	enumerable: true,
	get: function() {
		return GIVEN_CALENDARS;
	}
});
Object.defineProperty(exports, "LARGEST", {
	enumerable: true,
	get: function() {
		return LARGEST;
	}
});
Object.defineProperty(exports, "TRIGGER_CONDITIONS", {
	enumerable: true,
	get: function() {
		return TRIGGER_CONDITIONS;
	}
});
Object.defineProperty(exports, "WEEKDAYS", {
	enumerable: true,
	get: function() {
		return WEEKDAYS;
	}
});
Object.defineProperty(exports, "advice", {
	enumerable: true,
	get: function() {
		return advice;
	}
});
Object.defineProperty(exports, "childPlace", {
	enumerable: true,
	get: function() {
		return childPlace;
	}
});
Object.defineProperty(exports, "oneOf", {
	enumerable: true,
	get: function() {
		return oneOf;
	}
});
Object.defineProperty(exports, "pathText", {
	enumerable: true,
	get: function() {
		return pathText;
	}
});
Object.defineProperty(exports, "planDocument", {
	enumerable: true,
	get: function() {
		return planDocument;
	}
});

const require_dist$1 = require("./dist-CwAs5euc.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
// ../../packages/core/src/plan/source/fromData.ts
var import_dist = require_dist$1.require_dist();
/** A value nothing in JSON stands for: a function, a symbol, a big integer, `undefined` in a list. */
var STRANGE = "A plan holds only text, numbers, true or false, lists and objects.";
/** How many times larger than its objects a document may grow because they stand in several places. */
var GROWTH = 20;
/** What may stand in several places whatever the size of the rest. */
var FREE = 1e4;
/**
* Turns a JSON value in memory into nodes without positions. Object keys with the value `undefined` count
* as left out. Objects within themselves, objects in so many places that the document explodes, nesting beyond
* `MAX_DEPTH`, holes in lists and values JSON has no form for are faults.
*/
function fromData(data) {
	const converter = new Converter();
	try {
		return {
			root: converter.convert(data, void 0, 0),
			faults: converter.faults
		};
	} catch (error) {
		const received = error instanceof Error ? error.message.slice(0, 60) : "";
		return { faults: [{
			code: "not-json",
			at: -1,
			path: pathOf(converter.at),
			received,
			rule: STRANGE,
			remedy: "Pass a plain object."
		}] };
	}
}
var NONE = {
	at: -1,
	end: -1
};
var nothing = () => ({
	kind: "scalar",
	value: null,
	...NONE
});
var Converter = class {
	faults = [];
	/** Where it is. */
	at;
	/** Objects on the way from the root: meeting one of them again is a loop. */
	above = /* @__PURE__ */ new Set();
	met = /* @__PURE__ */ new Set();
	/** Values of objects met for the first time, and of all. */
	written = 0;
	grown = 0;
	stopped = false;
	convert(value, way, depth) {
		this.at = way;
		if (this.stopped) return nothing();
		switch (typeof value) {
			case "string":
			case "number":
			case "boolean": return {
				kind: "scalar",
				value,
				...NONE
			};
			case "object": break;
			default: return this.fault("not-json", way, typeof value, STRANGE, "Convert it to text or a number first.");
		}
		if (value === null) return {
			kind: "scalar",
			value,
			...NONE
		};
		if (this.above.has(value)) return this.fault("loop-of-data", way, "", "This object is within itself.", "Remove the loop.");
		if (depth > 100) return this.fault("too-deep", way, "", `A plan nests at most 100 levels.`, "Remove the extra levels.");
		this.above.add(value);
		const node = Array.isArray(value) ? this.list(value, way, depth) : this.map(value, way, depth);
		this.above.delete(value);
		return node;
	}
	list(value, way, depth) {
		const items = [];
		const { length } = value;
		for (let index = 0; index < length && !this.stopped; index++) {
			const here = {
				before: way,
				key: index
			};
			if (!(index in value)) {
				items.push(this.fault("not-json", here, "", "The list has a hole here.", "Fill it, or close it up."));
				break;
			}
			if (!this.fits(value, here)) break;
			items.push(this.convert(value[index], here, depth + 1));
		}
		this.met.add(value);
		return {
			kind: "list",
			items,
			...NONE
		};
	}
	map(value, way, depth) {
		const prototype = Object.getPrototypeOf(value);
		if (prototype !== null && Object.getPrototypeOf(prototype) !== null) return this.fault("not-json", way, "object", STRANGE, "Convert it to text or a number first.");
		const entries = /* @__PURE__ */ new Map();
		for (const [key, item] of Object.entries(value)) {
			if (item === void 0) continue;
			const here = {
				before: way,
				key
			};
			if (!this.fits(value, here)) break;
			entries.set(key, {
				key,
				keyAt: -1,
				node: this.convert(item, here, depth + 1)
			});
		}
		this.met.add(value);
		return {
			kind: "map",
			entries,
			repeated: [],
			...NONE
		};
	}
	/** Counts one value of an object; false, once told, when the document has outgrown its objects. */
	fits(holder, way) {
		this.grown++;
		if (!this.met.has(holder)) this.written++;
		if (this.grown <= FREE + GROWTH * this.written) return true;
		if (!this.stopped) {
			this.fault("alias-growth", way, "", "Objects that stand in several places make this document far larger than they are.", "Give each place an object of its own.");
			this.stopped = true;
		}
		return false;
	}
	fault(code, way, received, rule, remedy) {
		this.faults.push({
			code,
			at: -1,
			path: pathOf(way),
			received,
			rule,
			remedy
		});
		return nothing();
	}
};
function pathOf(way) {
	const steps = [];
	for (let each = way; each !== void 0; each = each.before) steps.unshift(each.key);
	return steps.map((step, index) => {
		if (typeof step === "number") return `[${step}]`;
		if (!/^[\p{L}\p{N}_-]+$/u.test(step)) return `[${JSON.stringify(step.slice(0, 60))}]`;
		return index === 0 ? step : `.${step}`;
	}).join("");
}
// ../../packages/core/src/plan/edit/model.ts
/** The edit cannot be made, with the place where the way ended. */
var NoSuchPlace = class extends Error {
	at;
	constructor(at) {
		super("no such place");
		this.at = at;
	}
};
function isObject(value) {
	return typeof value === "object" && value !== null && !Array.isArray(value);
}
/**
* Follows a path through a document. In a list a number is a position and a text is an `id` (or the `name`
* of a phase); a single item standing in for a list is its position 0.
*
* @returns The exact path, keys of objects and positions only.
*/
function exactPath(document, path) {
	const exact = [];
	let value = document;
	for (const [depth, step] of path.entries()) if (Array.isArray(value)) {
		const index = typeof step === "number" ? step : value.findIndex((item) => isObject(item) && (item.id ?? item.name) === step);
		if (index < 0 || index > value.length || !Number.isInteger(index)) throw new NoSuchPlace(path.slice(0, depth + 1));
		exact.push(index);
		value = value[index];
	} else if (isObject(value)) {
		if (step === 0 || typeof step === "string" && depth > 0 && standsAlone(value, step, path[depth - 1])) continue;
		if (typeof step !== "string") throw new NoSuchPlace(path.slice(0, depth + 1));
		exact.push(step);
		value = Object.hasOwn(value, step) ? value[step] : void 0;
	} else if (value === void 0 && typeof step === "string") exact.push(step);
	else if (value === void 0 || step !== 0) throw new NoSuchPlace(path.slice(0, depth + 1));
	return exact;
}
/** `["risks", "rain"]` where `risks` holds the one risk itself. */
function standsAlone(value, step, list) {
	return typeof list === "string" && list.endsWith("s") && (value.id ?? value.name) === step;
}
/** The document after an edit along an exact path. The given one stays as it is. */
function edited(document, edit) {
	const [step, ...rest] = edit.path;
	if (step === void 0) {
		if (edit.kind === "set") return edit.value;
		if (edit.kind === "remove") throw new NoSuchPlace([]);
		if (document === void 0) return [edit.value];
		const list = Array.isArray(document) ? document : [document];
		return list.toSpliced(edit.before ?? list.length, 0, edit.value);
	}
	const inner = {
		...edit,
		path: rest
	};
	const last = rest.length === 0 && edit.kind === "remove";
	if (Array.isArray(document) && typeof step === "number") {
		const copy = [...document];
		if (last) {
			if (step >= copy.length) throw new NoSuchPlace([step]);
			copy.splice(step, 1);
		} else copy[step] = edited(copy[step], inner);
		return copy;
	}
	if (document !== void 0 && !isObject(document)) throw new NoSuchPlace([step]);
	const copy = Object.assign(Object.create(null), document);
	if (last) {
		if (document === void 0 || !Object.hasOwn(document, step)) throw new NoSuchPlace([step]);
		delete copy[step];
	} else copy[step] = edited(Object.hasOwn(copy, step) ? copy[step] : void 0, inner);
	return copy;
}
// ../../packages/core/src/plan/edit/render.ts
/** Widest collection written on one line. */
var ONE_LINE = 90;
var TO_STRING = { lineWidth: 0 };
/** Text with line breaks stays on one line, with its breaks escaped. */
var ONE_LINE_TEXT = {
	...TO_STRING,
	doubleQuotedMinMultiLineLength: 1e9,
	blockQuote: false
};
/** A value on one line, as it stands inside brackets: `[5, 7, 14]`, `{ low: 5, high: 9 }`. */
function renderFlow(value, json) {
	if (Array.isArray(value)) return `[${value.map((item) => renderFlow(item, json)).join(", ")}]`;
	if (!isObject(value)) return json ? JSON.stringify(value) : renderScalar(value);
	const entries = Object.entries(value).map(([key, item]) => `${renderFlow(key, json)}: ${renderFlow(item, json)}`);
	return entries.length === 0 ? "{}" : `{ ${entries.join(", ")} }`;
}
/** Quoted where brackets, commas or another type would otherwise claim it. */
function renderScalar(value) {
	if (typeof value !== "string") return (0, import_dist.stringify)(value, { version: "1.2" }).trim();
	if (/^[A-Za-z][\w-]*$/.test(value) && !/^(?:true|false|null)$/i.test(value)) return value;
	const list = new import_dist.Document([value], { version: "1.2" });
	if ((0, import_dist.isCollection)(list.contents)) list.contents.flow = true;
	return list.toString(ONE_LINE_TEXT).trim().slice(1, -1).trim();
}
/**
* A value as lines of block style, without a first indentation; what fits on a line stays in brackets.
*/
function renderBlock(value) {
	if (Array.isArray(value) && value.length > 0) return value.flatMap((item) => {
		return (isShort(item) ? [renderFlow(item, false)] : renderBlock(item)).map((line, index) => indented(index === 0 ? "- " : "  ", line));
	});
	if (isObject(value) && Object.keys(value).length > 0) return Object.entries(value).flatMap(([key, item]) => renderPair(key, item));
	return [renderFlow(value, false)];
}
/** A key and its value as lines of block style. */
function renderPair(key, value) {
	if (typeof value === "string" && value.includes("\n")) return new import_dist.Document({ [key]: value }, { version: "1.2" }).toString(TO_STRING).replace(/\n$/, "").split("\n");
	const name = renderFlow(key, false);
	if (isShort(value) && !(Array.isArray(value) && value.some(isObject))) return [`${name}: ${renderFlow(value, false)}`];
	return [`${name}:`, ...renderBlock(value).map((line) => indented("  ", line))];
}
/** A line further in; empty lines stay empty. */
function indented(indent, line) {
	return line === "" ? "" : indent + line;
}
/** Whether a value is better written in brackets on one line. */
function isShort(value) {
	return typeof value !== "object" || value === null || JSON.stringify(value).length <= ONE_LINE;
}
// ../../packages/core/src/plan/edit/splice.ts
/**
* Makes an edit by replacing only the characters it concerns, so that comments, order and spacing of all
* other text stay. `undefined` where that has no simple way; the caller compares the outcome with what was
* meant, so that a wrong guess here is never written.
*/
function splice(text, root, edit, json) {
	const site = {
		text,
		json
	};
	let node = root;
	/** The key of a block map whose value `node` is. */
	let owner;
	for (const [depth, step] of edit.path.entries()) {
		const rest = edit.path.slice(depth + 1);
		const last = rest.length === 0;
		if (node.kind === "map" && typeof step === "string") {
			const entry = node.entries.get(step);
			if (entry === void 0) {
				if (edit.kind === "remove") return void 0;
				return insertKey(site, node, step, edited(void 0, {
					...edit,
					path: rest
				}));
			}
			if (last && edit.kind === "remove") {
				if (node.entries.size === 1 && owner !== void 0) return replaceEntry(site, owner, {});
				return removeKey(site, node, entry);
			}
			if (last && edit.kind === "set" && !isFlow(site, node) && !fitsInPlace(site, entry.node, edit.value)) return replaceEntry(site, entry, edit.value);
			owner = isFlow(site, node) ? void 0 : entry;
			node = entry.node;
		} else if (node.kind === "list" && typeof step === "number") {
			const item = node.items[step];
			if (item === void 0) {
				if (edit.kind === "remove") return void 0;
				return append(site, node, edited(void 0, {
					...edit,
					path: rest
				}));
			}
			if (last && edit.kind === "remove") {
				if (node.items.length === 1 && owner !== void 0) return replaceEntry(site, owner, []);
				return removeItem(site, node, step);
			}
			if (last && edit.kind === "set" && !isFlow(site, node) && !isInline(site, item)) return replaceItem(site, item, edit.value);
			owner = void 0;
			node = item;
		} else return void 0;
	}
	if (edit.kind === "set") return replace(site, node, edit.value);
	if (edit.kind !== "add") return void 0;
	if (node.kind === "list") return insertItem(site, node, edit.value, edit.before);
	return edit.before === 0 ? void 0 : appendToSingle(site, node, edit.value);
}
function cut(text, from, to, put) {
	return text.slice(0, from) + put + text.slice(to);
}
function isFlow(site, node) {
	return node.kind !== "scalar" && (site.text[node.at] === "{" || site.text[node.at] === "[");
}
/** Where the last character of a node's own text ends. */
function lastEnd(site, node) {
	if (node.kind === "scalar" || isFlow(site, node)) return node.end;
	const children = node.kind === "list" ? node.items : [...node.entries.values()].map((entry) => entry.node);
	let end = node.at;
	for (const child of children) end = Math.max(end, lastEnd(site, child));
	return end;
}
function lineStart(text, at) {
	return text.lastIndexOf("\n", at - 1) + 1;
}
/** After the newline of the line `at` ends on; a block scalar has already eaten its own. */
function nextLine(text, at) {
	if (at > 0 && text[at - 1] === "\n") return at;
	const newline = text.indexOf("\n", at);
	return newline < 0 ? text.length : newline + 1;
}
function indentAt(text, at) {
	return /^[ \t]*/.exec(text.slice(lineStart(text, at), at))?.[0] ?? "";
}
/** Spaces up to the column of `at`, whatever stands there. */
function columnOf(text, at) {
	return " ".repeat(at - lineStart(text, at));
}
function replace(site, node, value) {
	const { text } = site;
	if (!isInline(site, node)) return void 0;
	const put = renderFlow(value, site.json);
	return cut(text, node.at, node.end, node.at === node.end ? ` ${put}` : put);
}
/** Whether a value stands on its line, or in brackets. */
function isInline(site, node) {
	const first = site.text[node.at];
	return node.kind === "scalar" ? first !== "|" && first !== ">" : isFlow(site, node);
}
/** Whether a value takes the place of another without growing beyond its line. */
function fitsInPlace(site, node, value) {
	return isInline(site, node) && (site.json || isShort(value) && !isLongText(value));
}
function isLongText(value) {
	return typeof value === "string" && value.includes("\n");
}
/** Writes an item of a block list anew. */
function replaceItem(site, item, value) {
	const { text } = site;
	const end = lastEnd(site, item);
	const indent = columnOf(text, item.at);
	const put = (isShort(value) ? [renderFlow(value, false)] : renderBlock(value)).map((line, index) => index === 0 ? line : indented(indent, line)).join("\n");
	return cut(text, item.at, end, put + (text[end - 1] === "\n" ? "\n" : ""));
}
/** Writes a key of a block map anew, with all that hangs on it. */
function replaceEntry(site, entry, value) {
	const { text } = site;
	let end = lastEnd(site, entry.node);
	if (entry.node.kind !== "scalar" && !isFlow(site, entry.node) && text[end - 1] !== "\n") {
		end = nextLine(text, end);
		if (text[end - 1] === "\n") end--;
		if (text[end - 1] === "\r") end--;
	}
	const ate = end > 0 && text[end - 1] === "\n" ? "\n" : "";
	const indent = columnOf(text, entry.keyAt);
	const lines = pairLines(indent, entry.key, value).slice(indent.length);
	return cut(text, entry.keyAt, end, lines + ate);
}
/** Inserts whole lines after a block node. */
function insertLines(text, after, lines) {
	const at = nextLine(text, after);
	const newline = text.includes("\r\n") ? "\r\n" : "\n";
	return cut(text, at, at, `${at > 0 && text[at - 1] !== "\n" ? newline : ""}${lines.split("\n").join(newline)}${newline}`);
}
/** Adds to brackets, in the way the last item stands. */
function insertFlow(site, last, lastAt, put) {
	const { text } = site;
	const indent = indentAt(text, lastAt);
	const ownLine = lineStart(text, lastAt) + indent.length === lastAt && lastAt > 0;
	return cut(text, last.end, last.end, ownLine ? `,\n${indent}${put}` : `, ${put}`);
}
function insertKey(site, map, key, value) {
	const { text, json } = site;
	const entries = [...map.entries.values()];
	const last = entries[entries.length - 1];
	if (isFlow(site, map)) {
		const pair = `${renderFlow(key, json)}: ${renderFlow(value, json)}`;
		if (last === void 0) return cut(text, map.at, map.end, `{ ${pair} }`);
		return insertFlow(site, last.node, last.keyAt, pair);
	}
	if (last === void 0) return void 0;
	const indent = columnOf(text, last.keyAt);
	return insertLines(text, lastEnd(site, map), pairLines(indent, key, value));
}
function pairLines(indent, key, value) {
	return renderPair(key, value).map((line) => indented(indent, line)).join("\n");
}
/** Puts an item before another, or at the end. */
function insertItem(site, list, value, before) {
	if (before === void 0 || before >= list.items.length) return append(site, list, value);
	if (before > 0) return append(site, list, value, list.items[before - 1]);
	const { text, json } = site;
	const [first] = list.items;
	if (first === void 0) return void 0;
	if (isFlow(site, list)) return cut(text, first.at, first.at, `${renderFlow(value, json)}, `);
	const dash = text.lastIndexOf("-", first.at - 1);
	const begin = lineStart(text, dash);
	if (text.slice(begin, dash).trim() !== "" || text.slice(dash + 1, first.at).trim() !== "") return void 0;
	const newline = text.includes("\r\n") ? "\r\n" : "\n";
	return cut(text, begin, begin, itemLines(site, first, dash, value).join(newline) + newline);
}
/** A new item of a block list as lines, in the way another one stands whose dash is given. */
function itemLines(site, like, dash, value) {
	const indent = columnOf(site.text, dash);
	return ((!isObject(value) || isFlow(site, like) || like.kind === "scalar") && isShort(value) ? [renderFlow(value, site.json)] : renderBlock(value)).map((line, index) => indented(`${indent}${index === 0 ? "- " : "  "}`, line));
}
/** @param last  The item behind which it goes; the last one unless said. */
function append(site, list, value, last = list.items[list.items.length - 1]) {
	const { text, json } = site;
	if (isFlow(site, list)) {
		if (last === void 0) return appendToEmpty(site, list, value);
		return insertFlow(site, last, last.at, renderFlow(value, json));
	}
	if (last === void 0) return void 0;
	const dash = text.lastIndexOf("-", last.at - 1);
	if (text.slice(dash + 1, last.at).trim() !== "") return void 0;
	return insertLines(text, lastEnd(site, last), itemLines(site, last, dash, value).join("\n"));
}
/** `tasks: []` grows into lines where the list hangs on a key of a block map. */
function appendToEmpty(site, list, value) {
	const { text, json } = site;
	const rest = text.slice(lineStart(text, list.at), list.at);
	if (json || !/^[ \t]*[\w-]+:\s*$/.test(rest) || !isObject(value)) return cut(text, list.at, list.end, `[${renderFlow(value, json)}]`);
	const indent = `${indentAt(text, list.at)}  `;
	const block = renderBlock([value]).map((line) => indented(indent, line)).join("\n");
	const from = text.slice(0, list.at).trimEnd().length;
	return cut(text, from, list.end, `\n${block}`);
}
/** A single item standing in for a list becomes the list's first. */
function appendToSingle(site, single, value) {
	const { text, json } = site;
	if (fitsInPlace(site, single, value)) {
		const old = single.kind === "scalar" ? renderFlow(single.value, json) : text.slice(single.at, single.end);
		return cut(text, single.at, single.end, `[${old}, ${renderFlow(value, json)}]`);
	}
	const begin = lineStart(text, single.at);
	const indent = text.slice(begin, single.at);
	if (json || single.kind !== "map" || isFlow(site, single) || indent.trim() !== "") return void 0;
	const end = nextLine(text, lastEnd(site, single));
	const [first = "", ...rest] = text.slice(begin, end).replace(/\r?\n$/, "").split(/\r?\n/);
	const old = [`${indent}- ${first.slice(indent.length)}`, ...rest.map((line) => indented("  ", line))];
	const more = renderBlock([value]).map((line) => indented(indent, line));
	return cut(text, begin, end, `${[...old, ...more].join("\n")}\n`);
}
function removeKey(site, map, entry) {
	const { text } = site;
	const entries = [...map.entries.values()].sort((a, b) => a.keyAt - b.keyAt);
	const index = entries.indexOf(entry);
	const next = entries[index + 1];
	const before = entries[index - 1];
	if (map.repeated.length > 0) return void 0;
	if (isFlow(site, map)) {
		if (entries.length === 1) return cut(text, map.at, map.end, "{}");
		if (next !== void 0) return cut(text, entry.keyAt, next.keyAt, "");
		return before && cut(text, before.node.end, entry.node.end, "");
	}
	if (entries.length === 1) return void 0;
	const end = nextLine(text, lastEnd(site, entry.node));
	const begin = lineStart(text, entry.keyAt);
	if (text.slice(begin, entry.keyAt).trim() === "") return cut(text, begin, end, "");
	return next && text.slice(end, next.keyAt).trim() === "" ? cut(text, entry.keyAt, next.keyAt, "") : void 0;
}
function removeItem(site, list, index) {
	const { text } = site;
	const item = list.items[index];
	const next = list.items[index + 1];
	const before = list.items[index - 1];
	if (item === void 0) return void 0;
	if (isFlow(site, list)) {
		if (next !== void 0) return cut(text, item.at, next.at, "");
		return before ? cut(text, before.end, item.end, "") : cut(text, list.at, list.end, "[]");
	}
	if (list.items.length === 1) return void 0;
	const dash = text.lastIndexOf("-", item.at - 1);
	const begin = lineStart(text, dash);
	if (text.slice(begin, dash).trim() !== "" || text.slice(dash + 1, item.at).trim() !== "") return void 0;
	return cut(text, begin, nextLine(text, lastEnd(site, item)), "");
}
// ../../packages/core/src/plan/edit/editPlan.ts
/**
* Puts a value into the text of a plan and leaves every other character alone: comments, order and
* spacing stay, JSON stays JSON. Objects on the way that do not exist are made.
*
* @param path   Keys and positions; in a list also the `id` of an item: `["tasks", "survey", "duration"]`.
* @param value  A JSON value; estimates are written compactly, `[5, 7, 14]`.
*/
function setInPlan(text, path, value) {
	return withValue(text, value, (json) => ({
		kind: "set",
		path,
		value: json
	}));
}
/** Takes a key or an item out of the text of a plan, its own lines with it. */
function removeFromPlan(text, path) {
	return change(text, {
		kind: "remove",
		path
	});
}
/**
* Adds an item to a list, which is made where it does not exist; a single item becomes a list.
*
* @param before  Place of the item that is to follow it; left out: it goes to the end.
*/
function addToPlan(text, listPath, value, before) {
	const at = before === void 0 ? {} : { before };
	return withValue(text, value, (json) => ({
		kind: "add",
		path: listPath,
		value: json,
		...at
	}));
}
function withValue(text, value, edit) {
	const { root, faults } = fromData(value);
	if (root === void 0 || faults.length > 0) return refuse(text, { faults });
	if (holdsStrangeNumber(require_readPlan.toJson(root))) return refuse(text, { faults: [{
		code: "not-json",
		at: -1,
		received: "",
		rule: "A plan holds finite numbers only.",
		remedy: "Pass a finite number."
	}] });
	return change(text, edit(require_readPlan.toJson(root)));
}
function holdsStrangeNumber(value) {
	if (typeof value === "number") return !Number.isFinite(value);
	if (Array.isArray(value)) return value.some(holdsStrangeNumber);
	return isObject(value) && Object.values(value).some(holdsStrangeNumber);
}
function change(text, asked) {
	const tree = require_readPlan.readSource(text);
	const { root } = tree;
	if (root === void 0 || tree.faults.length > 0) return refuse(text, tree);
	const document = require_readPlan.toJson(root);
	let edit;
	let meant;
	try {
		edit = {
			...asked,
			path: exactPath(document, asked.path)
		};
		if (edit.kind === "add" && typeof edit.path[edit.path.length - 1] === "number") throw new NoSuchPlace(asked.path);
		meant = JSON.stringify(edited(document, edit));
	} catch (error) {
		if (!(error instanceof NoSuchPlace)) throw error;
		return refuse(text, { faults: [{
			code: "no-such-place",
			at: -1,
			received: error.at.join("."),
			rule: "The plan has no such place.",
			remedy: "Name a key or item it has."
		}] });
	}
	if (JSON.stringify(document) === meant && edit.kind === "set") return {
		text,
		problems: []
	};
	const json = /^\uFEFF?\s*\{/.test(text) && isJson(text);
	for (const attempt of [splice, rewrite]) {
		const result = attempted(() => attempt(text, root, edit, json));
		if (result !== void 0 && says(result, meant) && (!json || isJson(result))) return {
			text: result,
			problems: []
		};
	}
	return refuse(text, { faults: [{
		code: "cannot-edit",
		at: -1,
		received: "",
		rule: "This place cannot be changed on its own; it is shared, or written in an unusual way.",
		remedy: "Change it in the text."
	}] });
}
/** The YAML library throws where a path leads through an alias. */
function attempted(attempt) {
	try {
		return attempt();
	} catch {
		return;
	}
}
function refuse(text, tree) {
	const reading = new require_readPlan.Reading({
		...tree,
		text
	});
	for (const fault of tree.faults) reading.reportFault(fault);
	return {
		text,
		problems: reading.problems
	};
}
/** Whether a text reads without fault as the document that was meant, order of keys included. */
function says(text, meant) {
	const { root, faults } = require_readPlan.readSource(text);
	return root !== void 0 && faults.length === 0 && JSON.stringify(require_readPlan.toJson(root)) === meant;
}
function isJson(text) {
	try {
		JSON.parse(text.replace(/^\uFEFF/, ""));
		return true;
	} catch {
		return false;
	}
}
/** The slow way, for what has no simple splice: the document is written anew, comments and order kept. */
function rewrite(text, _root, edit, json) {
	if (json) return `${JSON.stringify(edited(JSON.parse(text.replace(/^\uFEFF/, "")), edit), null, 2)}\n`;
	const document = (0, import_dist.parseDocument)(text, {
		version: "1.2",
		schema: "core"
	});
	const path = [...edit.path];
	const value = edit.kind === "remove" ? void 0 : compact(document.createNode(edit.value));
	if (edit.kind === "remove") document.deleteIn(path);
	else if (edit.kind === "set") document.setIn(path, value);
	else {
		const list = document.getIn(path, true);
		if (list instanceof import_dist.YAMLSeq) list.items.splice(edit.before ?? list.items.length, 0, value);
		else if (list === void 0) document.setIn(path, document.createNode([edit.value]));
		else {
			const sequence = new import_dist.YAMLSeq();
			sequence.items.push(list);
			sequence.items.splice(edit.before ?? 1, 0, value);
			document.setIn(path, sequence);
		}
	}
	return document.toString({ lineWidth: 0 });
}
function compact(node) {
	if (!(0, import_dist.isCollection)(node)) return node;
	(0, import_dist.visit)(node, { Collection: (_key, each) => {
		if ((0, import_dist.isNode)(each) && JSON.stringify(each.toJSON()).length <= 90) each.flow = true;
	} });
	return node;
}
Object.defineProperty(exports, "NoSuchPlace", {
	enumerable: true,
	get: function() {
		return NoSuchPlace;
	}
});
Object.defineProperty(exports, "addToPlan", {
	enumerable: true,
	get: function() {
		return addToPlan;
	}
});
Object.defineProperty(exports, "edited", {
	enumerable: true,
	get: function() {
		return edited;
	}
});
Object.defineProperty(exports, "exactPath", {
	enumerable: true,
	get: function() {
		return exactPath;
	}
});
Object.defineProperty(exports, "isObject", {
	enumerable: true,
	get: function() {
		return isObject;
	}
});
Object.defineProperty(exports, "removeFromPlan", {
	enumerable: true,
	get: function() {
		return removeFromPlan;
	}
});
Object.defineProperty(exports, "renderFlow", {
	enumerable: true,
	get: function() {
		return renderFlow;
	}
});
Object.defineProperty(exports, "setInPlan", {
	enumerable: true,
	get: function() {
		return setInPlan;
	}
});
Object.defineProperty(exports, "splice", {
	enumerable: true,
	get: function() {
		return splice;
	}
});

const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_editPlan = require("./editPlan-DSSwX--u.cjs");
// ../../packages/core/src/plan/edit/setManyInPlan.ts
/**
* Makes many edits of a plan's text as `setInPlan` and `removeFromPlan` make one, in the time of one: the text is read
* once, and spliced from its end to its beginning, so that what was read of the rest stays true. Where that does not
* give exactly what was meant, they are made one after the other.
*/
function setManyInPlan(text, changes) {
	if (changes.length === 0) return {
		text,
		problems: []
	};
	const made = atOnce(text, changes);
	return made === void 0 ? oneByOne(text, changes) : {
		text: made,
		problems: []
	};
}
function atOnce(text, changes) {
	const { root, faults } = require_readPlan.readSource(text);
	if (root === void 0 || faults.length > 0) return void 0;
	let document = require_readPlan.toJson(root);
	let edits;
	try {
		edits = changes.map(({ path, value, add }) => {
			const exact = require_editPlan.exactPath(document, path);
			if (add !== void 0 && value !== void 0) return {
				kind: "add",
				path: exact,
				value,
				...add === "last" ? {} : { before: add }
			};
			return value === void 0 ? {
				kind: "remove",
				path: exact
			} : {
				kind: "set",
				path: exact,
				value
			};
		});
		for (const edit of edits) document = require_editPlan.edited(document, edit);
	} catch (error) {
		if (error instanceof require_editPlan.NoSuchPlace) return void 0;
		throw error;
	}
	const json = /^\uFEFF?\s*[{[]/.test(text) && isJson(text);
	const ordered = edits.map((_, index) => {
		const own = asItCame(edits, index);
		return {
			edit: own,
			index,
			at: placeOf(root, own)
		};
	}).sort((a, b) => b.at - a.at || b.index - a.index);
	let now = text;
	for (const { edit } of ordered) {
		const next = require_editPlan.splice(now, root, edit, json);
		if (next === void 0) return void 0;
		now = next;
	}
	const read = require_readPlan.readSource(now);
	const said = read.root !== void 0 && read.faults.length === 0 ? require_readPlan.toJson(read.root) : void 0;
	return JSON.stringify(said) === JSON.stringify(document) ? now : void 0;
}
/** An item that is added behind others added before it: where it goes in the text that does not have those yet. */
function asItCame(edits, index) {
	const edit = edits[index];
	if (edit.kind !== "add" || edit.before === void 0) return edit;
	const list = JSON.stringify(edit.path);
	const ahead = edits.slice(0, index).filter((other) => other.kind === "add" && JSON.stringify(other.path) === list);
	return {
		...edit,
		before: Math.max(0, edit.before - ahead.length)
	};
}
/** Where an edit touches the text: at the key it changes, or behind the last of the object it adds one to. */
function placeOf(root, edit) {
	const path = edit.kind === "add" && edit.before !== void 0 ? [...edit.path, edit.before] : edit.path;
	let node = root;
	for (const step of path) if (node.kind === "map" && typeof step === "string") {
		const entry = node.entries.get(step);
		if (entry === void 0) return endOf(node);
		node = entry.node;
	} else if (node.kind === "list" && typeof step === "number") {
		const item = node.items[step];
		if (item === void 0) return endOf(node);
		node = item;
	} else break;
	if (edit.kind === "add" && edit.before === void 0) return endOf(node);
	return node.at;
}
function endOf(node) {
	if (node.kind === "scalar") return node.end;
	return (node.kind === "list" ? node.items : [...node.entries.values()].map((entry) => entry.node)).reduce((end, each) => Math.max(end, endOf(each)), node.at);
}
function oneByOne(text, changes) {
	const done = {
		text,
		problems: []
	};
	for (const { path, value, add } of changes) {
		const { text: next, problems } = value === void 0 ? require_editPlan.removeFromPlan(done.text, path) : add === void 0 ? require_editPlan.setInPlan(done.text, path, value) : require_editPlan.addToPlan(done.text, path, value, add === "last" ? void 0 : add);
		done.text = next;
		done.problems.push(...problems);
	}
	return done;
}
function isJson(text) {
	try {
		JSON.parse(text.replace(/^\uFEFF/, ""));
		return true;
	} catch {
		return false;
	}
}
Object.defineProperty(exports, "setManyInPlan", {
	enumerable: true,
	get: function() {
		return setManyInPlan;
	}
});

let node_fs_promises = require("node:fs/promises");
// src/files/readDocument.ts
var REASONS = {
	ENOENT: ["There is no such file.", "Check the path; it is relative to where you stand."],
	ENOTDIR: ["There is no such file.", "Check the path; it is relative to where you stand."],
	EISDIR: ["That is a folder.", "Name the plan document inside it."],
	EACCES: ["It may not be read by you.", "Ask for permission to read it, or copy it."],
	EPERM: ["It may not be read by you.", "Ask for permission to read it, or copy it."]
};
function problem(code, rule, remedy) {
	return {
		code,
		severity: "error",
		path: "",
		received: "",
		rule,
		remedy
	};
}
/** Bytes; four times what any reader of ours takes as text. */
var LARGEST = 2e8;
var TooLarge = class extends Error {};
async function bytesOf(subject) {
	if (subject !== "-") {
		if ((await (0, node_fs_promises.stat)(subject)).size > LARGEST) throw new TooLarge();
		return (0, node_fs_promises.readFile)(subject);
	}
	const parts = [];
	let size = 0;
	for await (const part of process.stdin) {
		const bytes = Buffer.from(part);
		size += bytes.length;
		if (size > LARGEST) throw new TooLarge();
		parts.push(bytes);
	}
	return Buffer.concat(parts);
}
/**
* Reads the text of a plan document, `-` being standard input. What cannot be read as text is a problem in
* words; nothing is thrown.
*/
async function readDocument(subject) {
	const name = subject === "-" ? "standard input" : subject;
	let bytes;
	try {
		bytes = await bytesOf(subject);
	} catch (error) {
		if (error instanceof TooLarge) return {
			name,
			problem: problem("too-large", "It is larger than 200 million bytes.", "Name the plan, or leave out what no plan needs.")
		};
		const code = error instanceof Error && "code" in error ? String(error.code) : "";
		const [rule, remedy] = REASONS[code] ?? [`It could not be read (${code}).`, "Check the path."];
		return {
			name,
			problem: problem("unreadable", rule, remedy)
		};
	}
	let text;
	try {
		text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
	} catch {}
	if (text === void 0 || text.includes("\0")) return {
		name,
		problem: problem("not-text", "That is not a text file in UTF-8.", "Save the plan as YAML or JSON text, encoded as UTF-8.")
	};
	if (text.trim() === "") return {
		name,
		problem: problem("empty", "It is empty: there is no plan to read.", "Start from `leeway new --yes`.")
	};
	return {
		name,
		text
	};
}
Object.defineProperty(exports, "readDocument", {
	enumerable: true,
	get: function() {
		return readDocument;
	}
});

let node_path = require("node:path");
let node_fs = require("node:fs");
// src/files/writeWhole.ts
var unfinished = /* @__PURE__ */ new Set();
process.on("exit", () => {
	for (const path of unfinished) (0, node_fs.rmSync)(path, { force: true });
});
/** The file is there and says that nobody writes to it. */
var WriteProtected = class extends Error {};
/**
* Writes a file whole or not at all: to a temporary name beside it, forced to the disk, then renamed. Folders are made, and go
* again where the file cannot be written.
* A link stays a link, and what it leads to is written; rights stay as they are. A file that is write-protected is not
* written, although the folder would allow it: whoever protected it meant it. A device or a pipe has no whole and is
* written to as it stands.
*
* @param overwrite  Without it an existing file stands and is an error with code EEXIST.
* Throws the file system's error, or `WriteProtected`; the temporary file is gone then, and when the process is stopped.
*/
function writeWhole(path, text, overwrite) {
	const there = (0, node_fs.statSync)(path, { throwIfNoEntry: false });
	if (there?.isCharacterDevice() || there?.isFIFO() || there?.isSocket()) {
		(0, node_fs.writeFileSync)(path, text);
		return;
	}
	const file = overwrite && isLink(path) ? (0, node_fs.realpathSync)(path) : path;
	if (overwrite && there?.isFile()) mayBeWritten(file, there);
	const folder = (0, node_path.dirname)(file);
	const made = (0, node_fs.mkdirSync)(folder, { recursive: true });
	sweep(folder, (0, node_path.basename)(file));
	const aside = (0, node_path.join)(folder, `.${(0, node_path.basename)(file)}.${process.pid}.part`);
	unfinished.add(aside);
	let written = false;
	try {
		putDown(aside, text, overwrite ? there : void 0);
		if (overwrite) (0, node_fs.renameSync)(aside, file);
		else place(aside, file);
		written = true;
		settle(folder);
	} finally {
		drop(aside);
		unfinished.delete(aside);
		if (!written && made !== void 0) takeAway(folder, made);
	}
}
function drop(aside) {
	try {
		(0, node_fs.rmSync)(aside, { force: true });
	} catch {}
}
/** Folders made for a file that could not be written, from the innermost up to the first; those that hold something stay. */
function takeAway(folder, first) {
	try {
		(0, node_fs.rmdirSync)(folder);
		if (folder !== first && folder.startsWith(first)) takeAway((0, node_path.dirname)(folder), first);
	} catch {}
}
function isLink(path) {
	return (0, node_fs.lstatSync)(path, { throwIfNoEntry: false })?.isSymbolicLink() === true;
}
/** The administrator may write anything: for them the rights on the file are looked at. */
function mayBeWritten(file, { mode }) {
	if ((mode & 146) === 0) throw new WriteProtected(file);
	(0, node_fs.accessSync)(file, node_fs.constants.W_OK);
}
/** The text in a new file with the rights of the old one, on the disk before anything is renamed. */
function putDown(aside, text, old) {
	const handle = (0, node_fs.openSync)(aside, "w", old?.isFile() ? old.mode & 511 : 438);
	try {
		(0, node_fs.writeFileSync)(handle, text);
		if (old?.isFile()) (0, node_fs.fchmodSync)(handle, old.mode & 4095);
		(0, node_fs.fsyncSync)(handle);
	} finally {
		(0, node_fs.closeSync)(handle);
	}
}
/** A link, unlike a rename, refuses a name that is taken; not every file system has links. */
function place(aside, path) {
	try {
		(0, node_fs.linkSync)(aside, path);
	} catch (error) {
		if (error instanceof Error && "code" in error && error.code === "EEXIST" || (0, node_fs.existsSync)(path)) throw error;
		(0, node_fs.renameSync)(aside, path);
	}
}
/** That the name leads to the new file is on the disk too, where the system can say so of a folder. */
function settle(folder) {
	try {
		const handle = (0, node_fs.openSync)(folder, "r");
		try {
			(0, node_fs.fsyncSync)(handle);
		} finally {
			(0, node_fs.closeSync)(handle);
		}
	} catch {}
}
/** What a killed process left beside the file a minute ago or longer; nobody else knows these names. */
function sweep(folder, name) {
	for (const each of (0, node_fs.readdirSync)(folder)) {
		if (!each.startsWith(`.${name}.`) || !/^\d+\.part$/.test(each.slice(name.length + 2))) continue;
		const left = (0, node_path.join)(folder, each);
		const at = (0, node_fs.statSync)(left, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
		if (!unfinished.has(left) && Date.now() - at > 6e4) (0, node_fs.rmSync)(left, { force: true });
	}
}
Object.defineProperty(exports, "WriteProtected", {
	enumerable: true,
	get: function() {
		return WriteProtected;
	}
});
Object.defineProperty(exports, "writeWhole", {
	enumerable: true,
	get: function() {
		return writeWhole;
	}
});

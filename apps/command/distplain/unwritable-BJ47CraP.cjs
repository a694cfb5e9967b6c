const require_program = require("./program.cjs");
const require_whyNotWritten = require("./whyNotWritten-C19bLT-P.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
let node_path = require("node:path");
let node_fs = require("node:fs");
let node_timers_promises = require("node:timers/promises");
// src/history/withLock.ts
/** Whoever holds a lock longer than this has been killed, or stands on a machine that has. */
var ABANDONED_MS = 6e4;
var PATIENCE_MS = 15e3;
var held = /* @__PURE__ */ new Set();
process.on("exit", () => {
	for (const lock of held) (0, node_fs.rmSync)(lock, { force: true });
});
/** Somebody else is writing, and does not end. */
var Locked = class extends Error {};
/**
* Runs `change` while no other process that asks the same way runs one on this file: a lock file beside it, made only
* where there is none. A lock whose process is gone, or that is a minute old, is taken over.
*
* Throws `Locked` after 15 seconds; what `change` throws; the file system's error where no lock can be made.
*/
async function withLock(file, change) {
	const lock = `${file}.lock`;
	const until = Date.now() + PATIENCE_MS;
	while (!taken(lock)) if (abandoned(lock)) takeAway(lock);
	else if (Date.now() > until) throw new Locked(lock);
	else await (0, node_timers_promises.setTimeout)(20);
	held.add(lock);
	try {
		return change();
	} finally {
		(0, node_fs.rmSync)(lock, { force: true });
		held.delete(lock);
	}
}
/** The number goes in before the name is taken, so that a lock always says whose it is, however its maker ends. */
function taken(lock) {
	const own = hidden(lock);
	try {
		(0, node_fs.writeFileSync)(own, String(process.pid));
		(0, node_fs.linkSync)(own, lock);
		return true;
	} catch (error) {
		const code = error instanceof Error && "code" in error ? error.code : void 0;
		if (code === "EEXIST") return false;
		if (code !== "EPERM" && code !== "ENOTSUP" && code !== "EOPNOTSUPP") throw error;
		return takenWithoutLinks(lock);
	} finally {
		(0, node_fs.rmSync)(own, { force: true });
	}
}
/** A name beside it that is this process's own; `writeWhole` sweeps up what a killed one leaves. */
function hidden(lock) {
	return (0, node_path.join)((0, node_path.dirname)(lock), `.${(0, node_path.basename)(lock, ".lock")}.${process.pid}.part`);
}
/** Where the file system has no links. */
function takenWithoutLinks(lock) {
	try {
		const file = (0, node_fs.openSync)(lock, "wx");
		(0, node_fs.writeSync)(file, String(process.pid));
		(0, node_fs.closeSync)(file);
		return true;
	} catch (error) {
		if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
		throw error;
	}
}
/**
* Two may find the same lock abandoned, and the slower one must not take away the lock the faster has made since: what
* was taken away is looked at again, and put back where it is somebody's.
*/
function takeAway(lock) {
	const aside = hidden(lock);
	try {
		(0, node_fs.renameSync)(lock, aside);
	} catch {
		return;
	}
	try {
		if (!abandoned(aside)) (0, node_fs.linkSync)(aside, lock);
	} catch {} finally {
		(0, node_fs.rmSync)(aside, { force: true });
	}
}
function abandoned(lock) {
	try {
		if (Date.now() - (0, node_fs.statSync)(lock).mtimeMs > ABANDONED_MS) return true;
		const owner = Number((0, node_fs.readFileSync)(lock, "utf8"));
		if (!Number.isInteger(owner) || owner <= 0) return false;
		process.kill(owner, 0);
		return false;
	} catch (error) {
		return error instanceof Error && "code" in error && error.code === "ESRCH";
	}
}
// src/history/unwritable.ts
/** Why a file could not be written, as a problem; whatever else was thrown is thrown again. */
function unwritable(path, error) {
	if (error instanceof Locked) return require_program.callProblem("locked", path, "Another leeway is writing it and does not end.", `If none runs, remove ${error.message} and try again.`);
	if (error instanceof require_writeWhole.WriteProtected || error instanceof Error && "code" in error && "syscall" in error) return require_whyNotWritten.whyNotWritten(path, error);
	throw error;
}
Object.defineProperty(exports, "unwritable", {
	enumerable: true,
	get: function() {
		return unwritable;
	}
});
Object.defineProperty(exports, "withLock", {
	enumerable: true,
	get: function() {
		return withLock;
	}
});

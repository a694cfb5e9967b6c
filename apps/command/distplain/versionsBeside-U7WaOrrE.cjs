const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
let node_path = require("node:path");
let node_fs = require("node:fs");
// src/history/besidePlan.ts
/**
* Where the history and the versions of a plan stand. A plan called otherwise keeps its name without `.yaml`, `.yml` or
* `.json`; one that is reached by a link has them beside the file itself, so that it has them once.
*/
function besidePlan(plan) {
	const file = isLink(plan) ? (0, node_fs.realpathSync)(plan) : plan;
	const name = (0, node_path.basename)(file).replace(/(?:\.plan)?\.(?:ya?ml|json)$/i, "");
	const at = (ending) => (0, node_path.join)((0, node_path.dirname)(file), `${name}.${ending}`);
	return {
		history: at("history.jsonl"),
		torn: at("history.torn"),
		versions: at("versions")
	};
}
function isLink(path) {
	return (0, node_fs.lstatSync)(path, { throwIfNoEntry: false })?.isSymbolicLink() === true;
}
// src/history/versionsBeside.ts
/** Keeps a copy of a version of a plan; a copy that is there already stands. */
function keepPlan(path, text) {
	const { plan } = require_readPlan.readPlan(text);
	if (plan === void 0) return;
	const copy = (0, node_path.join)(besidePlan(path).versions, `${plan.sha256.slice(0, 12)}.plan.yaml`);
	if (!(0, node_fs.existsSync)(copy)) require_writeWhole.writeWhole(copy, text, false);
}
/**
* A kept version by its hash, or the beginning of it. A hash that approvals are bound to belongs to many versions, since
* it leaves out progress: then it is the one with the least, which is nearest to what was signed.
*/
function findKept(path, hash) {
	const folder = besidePlan(path).versions;
	if (hash === "" || !(0, node_fs.existsSync)(folder)) return void 0;
	const named = `${hash.slice(0, 12)}.plan.yaml`;
	const first = (0, node_fs.existsSync)((0, node_path.join)(folder, named)) ? versionIn((0, node_path.join)(folder, named)) : void 0;
	if (first?.sha256.startsWith(hash)) return first;
	let found;
	for (const name of (0, node_fs.readdirSync)(folder).sort()) {
		if (!name.endsWith(".plan.yaml")) continue;
		const plan = versionIn((0, node_path.join)(folder, name));
		if (plan?.sha256.startsWith(hash)) return plan;
		if (plan?.approvalSha256.startsWith(hash) && earlier(plan, found)) found = plan;
	}
	return found;
}
/** A copy by its content, whatever its name says; one that does not read, or is no plan, is none. */
function versionIn(file) {
	try {
		return require_readPlan.readPlan((0, node_fs.readFileSync)(file, "utf8")).plan;
	} catch {
		return;
	}
}
function earlier(plan, found) {
	return found === void 0 || (plan.statusDate ?? "") < (found.statusDate ?? "");
}
/** The version of a plan that was approved last, where it was kept. */
function signedVersion(path, { approvals }) {
	const signed = approvals.filter(({ decision, plan }) => decision.startsWith("approve") && plan !== void 0 && plan !== "").sort((a, b) => (a.date ?? "") < (b.date ?? "") ? 1 : -1);
	for (const { plan } of signed) {
		const found = findKept(path, plan ?? "");
		if (found !== void 0) return found;
	}
}
Object.defineProperty(exports, "besidePlan", {
	enumerable: true,
	get: function() {
		return besidePlan;
	}
});
Object.defineProperty(exports, "findKept", {
	enumerable: true,
	get: function() {
		return findKept;
	}
});
Object.defineProperty(exports, "keepPlan", {
	enumerable: true,
	get: function() {
		return keepPlan;
	}
});
Object.defineProperty(exports, "signedVersion", {
	enumerable: true,
	get: function() {
		return signedVersion;
	}
});

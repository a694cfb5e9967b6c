const require_shapes = require("./shapes-8oDnecao.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_plan = require("./plan-DgohkeUq.cjs");
const require_editPlan = require("./editPlan-DSSwX--u.cjs");
const require_changedLines = require("./changedLines-4UcEhdyb.cjs");
// ../../packages/core/src/estimating/opinionEdit.ts
/** The plan's own `estimates`, as its text says: what an estimate that does not say takes. */
function estimateDefaults(text) {
	const { root } = require_readPlan.readSource(text);
	const document = root === void 0 ? void 0 : require_readPlan.toJson(root);
	const said = require_editPlan.isObject(document) ? document.estimates : void 0;
	if (!require_editPlan.isObject(said)) return {};
	return {
		shape: require_shapes.SHAPES.find((shape) => shape === said.shape),
		bounds: require_plan.BOUNDS.find((bounds) => bounds === said.bounds)
	};
}
/** An opinion as a document says it, without what the plan's `estimates` or the task fill in. */
function writeOpinion(opinion, task, defaults) {
	const { by, date, of, estimate, basis, order, dissent, enteredBy, note } = opinion;
	const usual = task.effort === void 0 ? "duration" : "effort";
	return {
		by,
		...date !== void 0 && { date },
		...of !== usual && { of },
		...figures(opinion.estimate, defaults),
		...estimate.unit === "weeks" && { unit: "weeks" },
		...basis !== void 0 && { basis },
		...order !== void 0 && { order },
		...dissent !== void 0 && { dissent },
		...enteredBy !== void 0 && { enteredBy: enteredBy.length === 1 ? enteredBy[0] : enteredBy },
		...note !== void 0 && { note }
	};
}
function figures(estimate, defaults) {
	if (estimate.kind === "outcomes") return {};
	if (estimate.kind === "fixed") return {
		low: estimate.value,
		likely: estimate.value,
		high: estimate.value
	};
	const { low, likely, high, shape, bounds } = estimate;
	return {
		low,
		...likely !== void 0 && { likely },
		high,
		...shape !== (defaults.shape ?? "pert") && { shape },
		...bounds !== (defaults.bounds ?? "extremes") && { bounds }
	};
}
/** The text of a plan with an opinion added to a task; every other character stays. */
function addOpinion(text, task, opinion) {
	const path = [
		"tasks",
		task.id,
		"opinions"
	];
	return require_editPlan.addToPlan(text, path, writeOpinion(opinion, task, estimateDefaults(text)));
}
// src/text/changedLines.ts
/** The lines of a text that an edit changed, `- ` before what was and `+ ` before what is; none where nothing did. */
function changedLines(before, after) {
	return require_changedLines.changedLines(before, after).flatMap(({ removed, added }) => [...removed.map((line) => `- ${line}`), ...added.map((line) => `+ ${line}`)]);
}
Object.defineProperty(exports, "addOpinion", {
	enumerable: true,
	get: function() {
		return addOpinion;
	}
});
Object.defineProperty(exports, "changedLines", {
	enumerable: true,
	get: function() {
		return changedLines;
	}
});
Object.defineProperty(exports, "estimateDefaults", {
	enumerable: true,
	get: function() {
		return estimateDefaults;
	}
});

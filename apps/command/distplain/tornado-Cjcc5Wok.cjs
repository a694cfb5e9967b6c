const require_engine = require("./engine-Bbth-FEh.cjs");
const require_variants = require("./variants-BloK5_oj.cjs");
// ../../packages/core/src/explain/tornado.ts
/**
* By how many working days and how much money the committed value moves when one estimate alone is held at its
* P10 and P90, or one register entry alone is absent and occurs; everything else on the same draws. Sorted by
* reach in days, then in money. Items that move nothing are left out.
*
* Cost: two re-runs per item on shared draws (see variants.ts).
*/
function tornado(model, draw, _asWritten, committed, onProgress) {
	return require_variants.drain(tornadoSteps(model, draw, _asWritten, committed, onProgress));
}
/**
* The same in steps of a few milliseconds or less, so that whoever goes through them can leave in between: a thread
* that has to listen while it works.
*/
function* tornadoSteps(model, draw, _asWritten, committed, onProgress) {
	return sortedBars(yield* barSteps(model, draw, committed, {
		part: 0,
		of: 1
	}, onProgress));
}
/** Puts bars, whoever computed them, into the tornado's order and leaves out those that move nothing. */
function sortedBars(bars) {
	const reach = (bar, of) => Math.abs(bar.high[of] - bar.low[of]);
	return [...bars].sort((a, b) => a.at - b.at).map(({ bar }) => bar).filter((bar) => reach(bar, "workingDays") > 1e-9 || reach(bar, "money") > 1e-6).sort((a, b) => reach(b, "workingDays") - reach(a, "workingDays") || reach(b, "money") - reach(a, "money") || (a.id < b.id ? -1 : 1));
}
/**
* One part of the tornado's bars, unsorted. A bar does not depend on the others, so parts may be computed apart.
*/
function tornadoBars(model, draw, _asWritten, committed, part, onProgress) {
	return require_variants.drain(barSteps(model, draw, committed, part, onProgress));
}
function* barSteps(model, draw, committed, { part, of }, onProgress) {
	const n = draw.iterations;
	const { bars, ends: all } = tornadoItems(model);
	const ends = all.filter(({ bar }) => bar % of === part);
	const select = require_engine.rankSelector(n);
	const rank = require_engine.rankOf(committed.confidence, n);
	const progress = onProgress && ((done) => onProgress(Math.floor(done / ends.length), n));
	yield* require_variants.variantSteps(draw, ends.map(({ settings }) => ({
		model,
		settings
	})), ({ finish, cost }, at) => {
		const { bar, side } = ends[at];
		const [day = 0] = select(finish, [rank]);
		const [money = 0] = select(cost, [rank]);
		bars[bar][side] = {
			workingDays: require_engine.workAt(model.planCalendar, day) - committed.workingDays,
			money: money - committed.cost
		};
	}, progress);
	return bars.flatMap((bar, at) => at % of === part ? [{
		at,
		bar
	}] : []);
}
/**
* The bars of a model, still without figures, and the re-runs that give them; `only` the items with these ids.
*/
function tornadoItems(model, only) {
	const bars = [];
	const ends = [];
	const none = () => ({
		workingDays: 0,
		money: 0
	});
	const run = (side, settings) => ends.push({
		bar: bars.length - 1,
		side,
		settings
	});
	const taskIds = new Set(model.tasks.map((task) => task.chanceAddress));
	const names = new Map(model.tasks.map((task) => [task.id, task.name]));
	for (const overhead of model.overheads) names.set(overhead.id, overhead.name);
	for (const response of model.responses) names.set(response.id, response.name);
	model.slots.forEach((slot, s) => {
		const kind = kindOf(slot, taskIds);
		const id = slot.key.slice(0, slot.key.indexOf(":"));
		if (kind === void 0 || only?.has(id) === false) return;
		const cut = (value) => slot.cut && value < 0 ? 0 : value;
		const low = cut(require_engine.estimateQuantile(slot.estimate, .1));
		const high = cut(require_engine.estimateQuantile(slot.estimate, .9));
		bars.push({
			id,
			name: names.get(id) ?? id,
			kind,
			sides: "p10-p90",
			low: none(),
			high: none(),
			lowText: valueText(slot, low, model),
			highText: valueText(slot, high, model)
		});
		run("low", { slots: /* @__PURE__ */ new Map([[s, low]]) });
		run("high", { slots: /* @__PURE__ */ new Map([[s, high]]) });
	});
	model.register.forEach((entry, e) => {
		if (entry.fact !== void 0 || only?.has(entry.id) === false) return;
		bars.push({
			id: entry.id,
			name: entry.name,
			kind: entry.kind,
			sides: "absent-occurs",
			low: none(),
			high: none(),
			lowText: entry.kind === "assumption" ? "holds" : "absent",
			highText: entry.kind === "assumption" ? "is wrong" : "occurs"
		});
		run("low", { entries: /* @__PURE__ */ new Map([[e, 0]]) });
		run("high", { entries: /* @__PURE__ */ new Map([[e, 1]]) });
	});
	return {
		bars,
		ends
	};
}
/** Register parts are moved with their entry; benefits and lateness are not part of date or cost. */
function kindOf(slot, taskIds) {
	switch (slot.purpose) {
		case "duration":
		case "effort":
		case "remaining": return "task";
		case "cost": return taskIds.has(slot.item) ? "task-cost" : "response";
		case "costPerDay": return "task-cost";
		case "perDay": return "overhead";
		default: return slot.purpose.startsWith("lag:") ? "lag" : void 0;
	}
}
/** "20 days", "6 person-days", "185 000 EUR": the held value as a reader would say it. */
function valueText(slot, value, model) {
	return `${Math.abs(value) >= 1e3 ? Math.round(value) : Number(value.toPrecision(3))} ${slot.purpose === "duration" || slot.purpose === "remaining" || slot.purpose.startsWith("lag:") ? slot.estimate.unit : slot.purpose === "effort" ? slot.estimate.unit === "weeks" ? "person-weeks" : "person-days" : slot.purpose === "cost" ? model.plan.currency : `${model.plan.currency} a day`}`;
}
Object.defineProperty(exports, "sortedBars", {
	enumerable: true,
	get: function() {
		return sortedBars;
	}
});
Object.defineProperty(exports, "tornado", {
	enumerable: true,
	get: function() {
		return tornado;
	}
});
Object.defineProperty(exports, "tornadoBars", {
	enumerable: true,
	get: function() {
		return tornadoBars;
	}
});
Object.defineProperty(exports, "tornadoItems", {
	enumerable: true,
	get: function() {
		return tornadoItems;
	}
});

const require_engine = require("./engine-Bbth-FEh.cjs");
const require_latestOpinions = require("./latestOpinions-DD3Y0PkZ.cjs");
const require_wilson = require("./wilson-CanC7rIx.cjs");
// ../../packages/core/src/estimating/score/actualOf.ts
/**
* The working days a finished task took: what its calendar, shared with its people, holds from the beginning of the day
* it started to the end of the day it finished. The realised duration of the plan format.
*/
function actualDays(plan, task, calendars) {
	if (task.started === void 0 || task.finished === void 0) return void 0;
	const people = task.people.filter(({ along }) => !along).map(({ id }) => id);
	const calendar = calendars.shared(task.calendar, people);
	const from = require_engine.dayNumber(task.started) - require_engine.dayNumber(plan.start);
	const to = require_engine.dayNumber(task.finished) - require_engine.dayNumber(plan.start) + 1;
	return require_engine.workAt(calendar, to) - require_engine.workAt(calendar, from);
}
// ../../packages/core/src/estimating/score/entryOf.ts
/** An entry of the scorecard; undefined where the estimate was no range. */
function entryOf(said, calendars) {
	const { plan, task, of, estimate, by, actual, events } = said;
	if (estimate.kind === "fixed") return void 0;
	const week = estimate.unit === "weeks" ? calendars.weekLength(task.calendar) : 1;
	const shares = task.people.reduce((sum, { share }) => sum + share, 0);
	const factor = of === "cost" ? 1 : of === "effort" ? week / (shares || 1) : week;
	const at = (p) => require_engine.estimateQuantile(estimate, p) * factor;
	const p10 = at(.1);
	const p90 = at(.9);
	const where = actual < p10 ? "below" : actual > p90 ? "above" : "inside";
	const off = Math.max(p10 - actual, actual - p90);
	return {
		task: task.id,
		name: task.name,
		plan: plan.title,
		of: of === "cost" ? "cost" : "duration",
		unit: of === "cost" ? "money" : "working days",
		by,
		p10,
		likely: require_engine.asWrittenValue(estimate) * factor,
		p50: at(.5),
		p90,
		actual,
		where,
		within: of !== "cost" && where !== "inside" && off < 1,
		events
	};
}
// ../../packages/core/src/estimating/score/median.ts
/** Actual over what was said, of every entry where that is above nought. */
function ratiosTo(entries, key) {
	return entries.flatMap((entry) => entry[key] > 0 ? [entry.actual / entry[key]] : []);
}
/** The middle value; of an even number the mean of the two in the middle; NaN of none. */
function median(values) {
	const sorted = [...values].sort((a, b) => a - b);
	const half = sorted.length / 2;
	const upper = sorted[Math.floor(half)] ?? NaN;
	return Number.isInteger(half) ? ((sorted[half - 1] ?? NaN) + upper) / 2 : upper;
}
/**
* The factors with which these estimates would have been right: all values times the median of actual over median said;
* then the high and the low side stretched so that one in ten of the actual values lies beyond each. Undefined for fewer
* than `FEWEST`, or where one side is never given a range. Method: ours; common practice is a single factor on the
* likely value, which would also shift estimates that are right but skew.
*/
function adjustmentFrom(entries) {
	if (entries.length < 10) return void 0;
	const shift = median(ratiosTo(entries, "p50"));
	const highs = entries.flatMap(({ likely, p90, actual }) => p90 > likely ? [(actual / shift - likely) / (p90 - likely)] : []);
	const lows = entries.flatMap(({ likely, p10, actual }) => p10 < likely ? [(likely - actual / shift) / (likely - p10)] : []);
	if (!(shift > 0) || highs.length < 10 || lows.length < 10) return void 0;
	return {
		shift,
		highSide: ninth(highs),
		lowSide: ninth(lows),
		n: entries.length
	};
}
/** The least value that nine in ten do not exceed, never below nought. */
function ninth(values) {
	const sorted = [...values].sort((a, b) => a - b);
	return Math.max(0, sorted[Math.ceil(.9 * sorted.length - 1e-9) - 1] ?? 0);
}
// ../../packages/core/src/estimating/score/scoreOf.ts
/** The part of the actual values that a range from one in ten to one in ten is meant to hold. */
var MEANT = .8;
/** How a set of entries did. Undefined for none. */
function scoreOf(entries) {
	const n = entries.length;
	if (n === 0) return void 0;
	const count = (where) => entries.filter((entry) => entry.where === where).length;
	const inside = require_wilson.wilson(count("inside"), n);
	const ratios = ratiosTo(entries, "likely");
	const adjustment = adjustmentFrom(entries);
	return {
		n,
		inside,
		below: count("below"),
		above: count("above"),
		within: entries.filter(({ within }) => within).length,
		withEvents: entries.filter(({ events }) => events.length > 0).length,
		meanRatio: ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length,
		medianRatio: median(ratios),
		medianOfMedian: median(ratiosTo(entries, "p50")),
		ranges: n < 10 ? "too-few" : inside.high < MEANT ? "too-narrow" : inside.low > MEANT ? "too-wide" : "as-meant",
		...adjustment !== void 0 && { adjustment }
	};
}
// ../../packages/core/src/estimating/score/scorecard.ts
/**
* Past estimates against what happened: every finished task with a range, in this plan and in others.
*
* Plans of one title are versions of one project, in the order of their `statusDate`: what happened is read from the
* last in which the task is finished, what was said from the first in which it had not started, so that an estimate
* changed afterwards earns nothing. Tasks are found by id, or by `was`. Opinions count where they were dated no later
* than the day the task started. Simulates nothing.
*/
function scorecard(plan, ...past) {
	const projects = /* @__PURE__ */ new Map();
	for (const each of [...past, plan]) projects.set(each.title, [...projects.get(each.title) ?? [], each]);
	const found = {
		entries: [],
		money: [],
		opinions: [],
		unscored: []
	};
	for (const versions of projects.values()) scoreProject(inOrder(versions), found);
	const { entries, money, opinions, unscored } = found;
	const overall = scoreOf(entries);
	const moneyScore = scoreOf(money);
	return {
		...overall !== void 0 && { overall },
		...moneyScore !== void 0 && { money: moneyScore },
		people: byPerson(found, [plan, ...past]),
		entries: [...entries, ...money],
		opinions,
		unscored,
		plans: [...projects].map(([title, versions]) => ({
			title,
			versions: versions.length
		}))
	};
}
function inOrder(versions) {
	return [...versions].sort((a, b) => compare(a.statusDate ?? "", b.statusDate ?? ""));
}
function compare(a, b) {
	return a < b ? -1 : a > b ? 1 : 0;
}
function scoreProject(versions, found) {
	const finished = /* @__PURE__ */ new Map();
	for (const plan of versions) for (const task of plan.tasks) if (task.finished !== void 0 && task.milestone === false) finished.set(task.id, {
		plan,
		task
	});
	const calendars = /* @__PURE__ */ new Map();
	const calendarsOf = (plan) => {
		const known = calendars.get(plan) ?? require_engine.compileCalendars(plan);
		calendars.set(plan, known);
		return known;
	};
	for (const { plan, task } of finished.values()) {
		const said = before(versions, task) ?? {
			plan,
			task
		};
		const actual = actualDays(plan, task, calendarsOf(plan));
		if (actual === void 0) {
			found.unscored.push({
				task: task.id,
				plan: plan.title,
				why: "no-time"
			});
			continue;
		}
		const events = eventsOn(plan, task.id);
		const about = {
			plan: said.plan,
			task: said.task,
			events,
			actual
		};
		const of = said.task.effort === void 0 ? "duration" : "effort";
		const estimate = said.task[of];
		const by = said.task.estimatedBy;
		const entry = estimate && entryOf({
			...about,
			of,
			estimate,
			by
		}, calendarsOf(said.plan));
		if (entry === void 0) found.unscored.push({
			task: task.id,
			plan: plan.title,
			why: "no-range"
		});
		else found.entries.push(entry);
		for (const opinion of opinionsBefore(versions, task, of)) {
			const each = entryOf({
				...about,
				of,
				estimate: opinion.estimate,
				by: [opinion.by]
			}, calendarsOf(said.plan));
			if (each !== void 0) found.opinions.push(each);
		}
		const { cost } = said.task;
		if (cost === void 0 || task.spent === void 0 || !onlyCost(plan, task)) continue;
		const sum = entryOf({
			...about,
			of: "cost",
			estimate: cost,
			by,
			actual: task.spent
		}, calendarsOf(said.plan));
		if (sum !== void 0) found.money.push(sum);
	}
}
/** The task as it stood in the first version in which it had not started. */
function before(versions, { id, was }) {
	for (const plan of versions) {
		const task = plan.tasks.find((each) => each.id === id || each.id === was);
		if (task !== void 0 && task.started === void 0 && task.finished === void 0) return {
			plan,
			task
		};
	}
}
function opinionsBefore(versions, { id, was, started }, of) {
	const said = versions.flatMap(({ tasks }) => tasks.filter((task) => task.id === id || task.id === was).flatMap(({ opinions }) => opinions ?? []));
	return require_latestOpinions.latestOpinions(said.filter(({ date }) => date === void 0 || started === void 0 || date <= started), of);
}
function eventsOn({ risks, assumptions }, task) {
	return [...risks, ...assumptions].filter(({ status, impacts }) => status === "occurred" && impacts.some(({ tasks }) => tasks.includes(task))).map(({ id }) => id);
}
/** Whether all the money of a task is its `cost`: neither days nor people are paid. */
function onlyCost(plan, task) {
	const paid = new Set(plan.people.filter(({ rate }) => rate !== 0).map(({ id }) => id));
	return task.costPerDay === void 0 && task.people.every(({ id }) => !paid.has(id));
}
function byPerson({ entries, opinions }, plans) {
	const names = new Map([...plans].reverse().flatMap(({ people, stakeholders }) => [...people, ...stakeholders].map(({ id, name }) => [id, name])));
	return [...new Set([...entries, ...opinions].flatMap(({ by }) => by))].sort(compare).flatMap((id) => {
		const own = opinions.filter(({ by }) => by.includes(id));
		const told = new Set(own.map(({ plan, task }) => `${task} ${plan}`));
		const signed = entries.filter(({ by, plan, task }) => by.includes(id) && !told.has(`${task} ${plan}`));
		const score = scoreOf([...own, ...signed]);
		return score === void 0 ? [] : [{
			id,
			name: names.get(id) ?? id,
			score
		}];
	});
}
Object.defineProperty(exports, "scorecard", {
	enumerable: true,
	get: function() {
		return scorecard;
	}
});

const require_applyScenario = require("./applyScenario-C_221t4T.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_measureVariants = require("./measureVariants-DaJ0Ulvd.cjs");
const require_stage = require("./stage-kNi0qcSu.cjs");
const require_stampOf = require("./stampOf-B221aSYW.cjs");
const require_standings = require("./standings-y-hwZo6x.cjs");
const require_tornado = require("./tornado-Cjcc5Wok.cjs");
const require_variants = require("./variants-BloK5_oj.cjs");
const require_orderAverage = require("./orderAverage-rtyasGdT.cjs");
const require_node = require("./node-6FCbc_om.cjs");
// ../../packages/core/src/explain/contingency/causes.ts
/**
* Everything in a model that is not as written in every iteration, each thing in exactly one cause: the spread of
* each task (its duration, effort or remaining work, cost, cost per day, lags into it, whether it is needed), of each
* overhead, of each adopted response's cost, of what an entry that has occurred costs; each set of estimates that are
* correlated, as one cause of its own; each open risk and assumption; limited people.
*
* Left out: what touches neither finish nor cost (what lateness costs, benefits), and what an entry that may occur
* would do, which is part of that entry. In id order, kind by kind.
*/
function causesOf(model) {
	const shared = sharedCauses(model);
	const taken = new Set(shared.flatMap((cause) => cause.slots));
	const spread = (id, name, slots, needed = []) => ({
		id,
		name,
		kind: "spread",
		slots: slots.filter((slot) => slot >= 0 && !taken.has(slot)),
		entries: [],
		needed,
		people: false
	});
	const spreads = [
		...model.tasks.map((task, j) => spread(task.id, task.name, taskSlots(model, j), task.chance > 0 && task.chance < 1 ? [j] : [])),
		...model.overheads.map(({ id, name, perDay }) => spread(id, name, [perDay.slot])),
		...model.responses.map(({ id, name, cost }) => spread(id, name, [cost.slot])),
		...model.register.filter((entry) => entry.fact === 1).map((entry) => spread(entry.id, entry.name, entry.impacts.flatMap(({ delay, factor, wait, cost }) => [
			delay,
			factor,
			wait,
			cost
		].map((part) => part?.slot ?? -1))))
	];
	const entries = model.register.flatMap((entry, e) => entry.fact === void 0 ? [{
		id: entry.id,
		name: entry.name,
		kind: entry.kind,
		slots: [],
		entries: [e],
		needed: [],
		people: false
	}] : []);
	const people = model.limitedPeople ? [{
		id: "people",
		name: "Limited people",
		kind: "people",
		slots: [],
		entries: [],
		needed: [],
		people: true
	}] : [];
	return [
		...spreads.filter((cause) => cause.slots.length + cause.needed.length > 0),
		...shared,
		...entries.filter((entry) => entry.kind === "risk"),
		...entries.filter((entry) => entry.kind === "assumption"),
		...people
	];
}
/** Slots of the estimates written at a task, -1 for certain ones. */
function taskSlots(model, j) {
	const task = model.tasks[j];
	if (task === void 0) return [];
	return [
		task.duration.slot,
		task.progress?.remaining?.slot ?? -1,
		task.cost.slot,
		task.costPerDay.slot,
		...task.links.map((link) => link.lag.slot)
	];
}
/** Settings that hold everything as written but the causes that are on. */
function settingsWith(model, causes, on) {
	const slots = /* @__PURE__ */ new Map();
	const entries = /* @__PURE__ */ new Map();
	const needed = /* @__PURE__ */ new Map();
	let people = true;
	causes.forEach((cause, c) => {
		if (on(c)) return;
		for (const slot of cause.slots) slots.set(slot, model.slots[slot]?.asWritten ?? 0);
		for (const entry of cause.entries) entries.set(entry, 0);
		for (const j of cause.needed) needed.set(j, (model.tasks[j]?.chance ?? 1) >= .5 ? 1 : 0);
		if (cause.people) people = false;
	});
	return {
		slots,
		entries,
		needed,
		...people ? {} : { people: false }
	};
}
/** Causes as one, under a name of their own. */
function gathered(id, name, kind, causes) {
	return {
		id,
		name,
		kind,
		gathers: causes.map((cause) => cause.id),
		slots: causes.flatMap((cause) => cause.slots),
		entries: causes.flatMap((cause) => cause.entries),
		needed: causes.flatMap((cause) => cause.needed),
		people: causes.some((cause) => cause.people)
	};
}
/** Correlated estimates, set by set; sets that share a member are one. */
function sharedCauses(model) {
	if (model.correlated === void 0) return [];
	const kept = /* @__PURE__ */ new Map();
	for (const slot of model.correlated.slots) kept.set(nameOfSlot(model, slot), slot);
	const components = [];
	for (const { between, cause, coefficient } of byMembers(model.plan.correlations)) {
		const members = new Set(between.filter((name) => kept.has(name)));
		if (members.size < 2 || coefficient === 0) continue;
		const causes = new Set(cause === void 0 ? [] : [cause]);
		for (let i = components.length - 1; i >= 0; i--) {
			const other = components[i];
			if (other === void 0 || ![...other.members].some((name) => members.has(name))) continue;
			for (const name of other.members) members.add(name);
			for (const text of other.causes) causes.add(text);
			components.splice(i, 1);
		}
		components.push({
			members,
			causes
		});
	}
	const names = new Map(model.tasks.map((task) => [task.id, task.name]));
	return components.map(({ members, causes }) => {
		const sorted = [...members].sort();
		const ids = [...new Set(sorted.map((name) => name.replace(/^cost:/, "")))];
		return {
			id: `cause:${sorted[0] ?? ""}`,
			name: causes.size > 0 ? [...causes].sort().join("; ") : `What moves together: ${ids.map((id) => names.get(id) ?? id).join(", ")}`,
			kind: "cause",
			members: ids,
			slots: sorted.map((name) => kept.get(name)),
			entries: [],
			needed: [],
			people: false
		};
	}).sort((a, b) => a.id < b.id ? -1 : 1);
}
/** In an order that does not depend on the file's. */
function byMembers(sets) {
	const key = ({ between }) => [...between].sort().join(" ");
	return [...sets].sort((a, b) => key(a) < key(b) ? -1 : 1);
}
/** A correlated slot as the plan names it: the task's id, or `cost:` and the id. */
function nameOfSlot(model, slot) {
	const key = model.slots[slot]?.key ?? "";
	const id = key.slice(0, key.indexOf(":"));
	return key.endsWith(":cost") ? `cost:${id}` : id;
}
var others = {
	spread: {
		id: "other-spread",
		name: "other estimates"
	},
	cause: {
		id: "other-causes",
		name: "other shared causes"
	},
	risk: {
		id: "other-risks",
		name: "other risks"
	},
	assumption: {
		id: "other-assumptions",
		name: "other assumptions"
	},
	people: {
		id: "people",
		name: "Limited people"
	}
};
/**
* Keeps the weightiest causes and gathers the others by kind ("14 other estimates"), so that the rows fit a page.
*
* A cause weighs its part of what all move in the first pass, in that measure in which it is most: days or money, at
* the level or on average.
*
* @param passes  By cause.
*/
function weightiest(causes, passes) {
	if (causes.length <= 12) return [...causes];
	const weights = weightsOf(passes);
	const ranked = causes.map((cause, at) => ({
		cause,
		at,
		weight: weights[at]
	})).sort((a, b) => Number(b.cause.people) - Number(a.cause.people) || b.weight - a.weight || a.at - b.at);
	for (let named = 11; named >= 0; named--) {
		const kept = ranked.slice(0, named).map(({ cause }) => cause);
		const minor = ranked.slice(named).sort((a, b) => a.at - b.at);
		const groups = [
			"spread",
			"cause",
			"risk",
			"assumption",
			"people"
		].flatMap((kind) => {
			const members = minor.filter(({ cause }) => cause.kind === kind).map(({ cause }) => cause);
			if (members.length < 2) return members;
			const { id, name } = others[kind];
			return [gathered(id, `${members.length} ${name}`, kind, members)];
		});
		if (kept.length + groups.length <= 12) return [...kept, ...groups];
	}
	return [...causes];
}
function weightsOf(passes) {
	const moved = passes.map(({ added, removed }) => added.map((a, d) => (Math.abs(a) + Math.abs(removed[d])) / 2));
	const sums = (moved[0] ?? []).map((_, d) => moved.reduce((sum, row) => sum + row[d], 0));
	return moved.map((row) => Math.max(0, ...row.map((x, d) => sums[d] > 0 ? x / sums[d] : 0)));
}
// ../../packages/core/src/explain/contingency/firstPass.ts
/** One block tells weighty causes from minor ones; no figure of it is shown. */
var firstIterations = 1024;
/** Values held by the settings of one ask: what is everything but one cause grows with the square of the plan. */
var mostHeld = 1e6;
/**
* The rows of the table of shares: all causes where they are few, else the weightiest, told by a first pass in which
* each cause is once alone added to the plan as written and once alone taken from everything. Levels and means are
* both looked at: a risk that occurs less often than the level leaves out adds nothing to it by itself.
*/
function* keptCauses({ model, draw }, causes, { written, withOffset }) {
	if (causes.length <= 12) return [...causes];
	const iterations = Math.min(draw.iterations, firstIterations);
	const valuesOf = (settings, measures) => settings.map((own, i) => {
		const { level, mean } = measures[i];
		return [...withOffset(own, level), ...withOffset(own, mean)];
	});
	const before = [...written, ...written];
	const size = Math.max(16, Math.floor(mostHeld / (model.slots.length + model.register.length)));
	const passes = [];
	for (let first = 0; first < causes.length; first += size) {
		const at = causes.slice(first, first + size).map((_, i) => first + i);
		const settings = [
			{},
			...at.map((c) => settingsWith(model, causes, (on) => on === c)),
			...at.map((c) => settingsWith(model, causes, (on) => on !== c))
		];
		const part = (c) => .15 * c / causes.length;
		const [whole = [], ...values] = valuesOf(settings, yield {
			iterations,
			settings,
			from: part(first),
			to: part(first + at.length)
		});
		at.forEach((_, i) => {
			passes.push({
				added: less(values[i], before),
				removed: less(whole, values[at.length + i])
			});
		});
	}
	return weightiest(causes, passes);
}
function less(a, b) {
	return a.map((x, d) => x - b[d]);
}
// ../../packages/core/src/explain/contingency/freeOffset.ts
/**
* What limited people add to the plan as written, in working days and in money.
*
* Limited people as a cause of contingency are what they add beyond that: with the cause off, tasks are placed
* without limits and this is added, so that the plan as written stays the plan as written and only the waiting that
* uncertainty brings about counts.
*/
function freeOffset(model, asWritten) {
	if (!model.limitedPeople) return [0, 0];
	const block = require_engine.newBlock(model, 1);
	require_engine.fillAsWritten(model, block);
	require_engine.realise(model, block);
	require_engine.place(model, block, asWritten.starts, void 0);
	require_engine.markFinish(model, block);
	require_engine.addMoney(model, block, require_engine.newMoneySums(model));
	const days = require_engine.workAt(model.planCalendar, block.planFinish[0]);
	return [asWritten.workingDays - days, asWritten.cost - block.cost[0]];
}
// ../../packages/core/src/explain/contingency/values.ts
function minus(a, b) {
	return [a[0] - b[0], a[1] - b[1]];
}
function effect([workingDays = 0, money = 0]) {
	return {
		workingDays,
		money
	};
}
// ../../packages/core/src/explain/contingency/walk.ts
/**
* The way from the plan as written to the mean of everything, step by step: the spread along the path that drives
* the plan as written; the spread of all estimates, where strands that merge wait for the latest; limited people,
* beyond what they cost in the plan as written; risks and assumptions. Steps that the plan has nothing for are left
* out. Each stage is measured by its mean, people without limits plus what limits add to the plan as written until
* they have their own step.
*/
function walkStages(model, asWritten, causes) {
	const isSpread = ({ kind }) => kind === "spread" || kind === "cause";
	const spreads = (c) => isSpread(causes[c]);
	const stages = [];
	if (causes.some(isSpread)) stages.push({
		kind: "spread",
		step: "Spread along the driving path",
		text: "Estimates on the path that drives the plan as written vary; on average they take longer or shorter than their likely value.",
		settings: alongPath(model, asWritten, causes)
	}, {
		kind: "merging",
		step: "Merging of paths",
		text: "All other estimates vary too; where strands meet, the latest decides.",
		settings: settingsWith(model, causes, spreads)
	});
	const limited = causes.find(({ people }) => people);
	if (limited !== void 0) stages.push({
		kind: "people",
		step: limited.name,
		text: "People have limits: tasks wait for whoever is busy longer than planned.",
		settings: settingsWith(model, causes, (c) => spreads(c) || causes[c].people)
	});
	if (causes.some(({ kind }) => kind === "risk" || kind === "assumption")) stages.push({
		kind: "register",
		step: "Risks and assumptions",
		text: "Risks occur and assumptions turn out wrong, as often as the plan says.",
		settings: {}
	});
	return stages;
}
/** The steps between neighbouring values; they add up to the last less the first. */
function walkSteps(stages, means, from, to, confidence) {
	let before = from;
	const steps = stages.map(({ kind, step, text }, i) => {
		const mean = means[i];
		const moved = {
			workingDays: mean[0] - before[0],
			money: mean[1] - before[1]
		};
		before = mean;
		return {
			kind,
			step,
			text,
			...moved
		};
	});
	const level = `${Number((100 * confidence).toPrecision(12))} %`;
	steps.push({
		kind: "percentile",
		step: `From the mean to ${level}`,
		text: `The commitment is to be kept by ${level} of the futures, not just by the average one.`,
		workingDays: to[0] - before[0],
		money: to[1] - before[1]
	});
	return steps;
}
/** Everything held but the estimates of the tasks that drive the plan as written. */
function alongPath(model, asWritten, causes) {
	const { slots, entries, needed, people } = settingsWith(model, causes, () => false);
	const held = new Map(slots);
	const taken = new Map(needed);
	model.tasks.forEach((task, j) => {
		if (asWritten.block.moves[j]?.[0] !== 1 || task.progress?.finished === true) return;
		for (const slot of taskSlots(model, j)) held.delete(slot);
		taken.delete(j);
	});
	return {
		slots: held,
		...entries === void 0 ? {} : { entries },
		needed: taken,
		...people === void 0 ? {} : { people }
	};
}
// ../../packages/core/src/explain/contingency/explainSteps.ts
/**
* The explanation, step by step: yields variants to be measured, takes their measures, and ends with the answer. The
* measures do not depend on who computes them, so neither does the answer.
*
* v(S), the value of a set of causes, is the level's percentile with those causes as drawn and all others as written
* (estimates at their written value, entries absent, tasks with a chance of 0.5 or more needed, people without limits
* plus what limits add to the plan as written). v(none) is the plan as written, v(all) the commitment. Days and money
* come from the same sets and the same orders.
*/
function* explainSteps(explained) {
	const { model, asWritten, draw, confidence } = explained;
	const { iterations } = draw;
	const offset = freeOffset(model, asWritten);
	const causes = causesOf(model).map((cause) => cause.people ? waiting(cause, offset) : cause);
	const written = [asWritten.workingDays, asWritten.cost];
	const [whole] = require_variants.runVariants(draw, [{ model }], (outcome) => ({
		standing: require_standings.standingAt(model, outcome, confidence),
		limits: limitsAt(model, outcome, confidence)
	}));
	if (whole === void 0) throw new Error("A variant has no outcome.");
	const { standing } = whole;
	const committed = [standing.workingDays, standing.cost];
	const withOffset = ({ people }, value) => people === false ? [value[0] + offset[0], value[1] + offset[1]] : value;
	const values = {
		written,
		committed,
		withOffset
	};
	const players = yield* keptCauses(explained, causes, values);
	const stages = walkStages(model, asWritten, causes);
	const { bars, ends } = require_tornado.tornadoItems(model, namesOf(players));
	const onePlayerOff = players.map((_, p) => settingsWith(model, players, (on) => on !== p));
	const singles = yield {
		iterations,
		settings: [
			...stages.map(({ settings }) => settings),
			...onePlayerOff,
			...ends.map(({ settings }) => settings)
		],
		from: .15,
		to: .4
	};
	const means = stages.map(({ settings }, i) => withOffset(settings, singles[i].mean));
	const removed = onePlayerOff.map((settings, p) => withOffset(settings, singles[stages.length + p].level));
	ends.forEach((end, i) => {
		setEnd(bars, end, singles[stages.length + players.length + i].level, committed);
	});
	const average = yield* overOrders(explained, players, {
		...values,
		removed
	});
	return {
		stamp: require_stampOf.stampOf(model, draw),
		plan: {
			title: model.plan.title,
			currency: model.plan.currency,
			start: model.plan.start
		},
		confidence,
		asWritten: require_standings.standingAsWritten(model, asWritten),
		committed: standing,
		limits: whole.limits,
		contingency: effect(minus(committed, written)),
		shares: sharesOf(players, average, removed.map((value) => minus(value, committed))),
		orders: {
			causes: players.length,
			taken: average.taken,
			all: average.all
		},
		walk: walkSteps(stages, means, written, committed, confidence),
		tornado: require_tornado.sortedBars(bars.map((bar, at) => ({
			at,
			bar
		})))
	};
}
function* overOrders({ model, draw }, players, { written, committed, withOffset, removed }) {
	let from = .4;
	const everyone = 2 ** players.length - 1;
	const known = new Map(removed.map((value, p) => [everyone - 2 ** p, value]));
	const steps = require_orderAverage.orderAverage(players.length, {
		none: written,
		all: committed,
		known,
		seed: draw.seed
	});
	let step = steps.next();
	while (step.done !== true) {
		const settings = step.value.map((set) => settingsWith(model, players, (p) => (set >> p & 1) === 1));
		const to = from + .4 * (1 - from);
		const measures = yield {
			iterations: draw.iterations,
			settings,
			from,
			to
		};
		from = to;
		step = steps.next(measures.map(({ level }, i) => withOffset(settings[i], level)));
	}
	return step.value;
}
/** The sampling limits of a level's percentiles. Sorts copies. */
function limitsAt(model, rows, p) {
	const ranks = require_engine.limitRanks(p, rows.finish.length);
	const finish = rows.finish.slice().sort();
	const days = rows.finishDay.slice().sort();
	const cost = rows.cost.slice().sort();
	const at = (rank) => ({
		date: require_engine.isoDate(model.startDay + days[rank - 1]),
		effect: {
			workingDays: require_engine.workAt(model.planCalendar, finish[rank - 1]),
			money: cost[rank - 1]
		}
	});
	const [low, high] = [at(ranks.low), at(ranks.high)];
	return {
		lowDate: low.date,
		highDate: high.date,
		low: low.effect,
		high: high.effect
	};
}
/** Largest first, in days and then in money; what is gathered comes last. */
function sharesOf(players, average, ifRemoved) {
	return players.map(({ id, name, kind, gathers, members }, p) => {
		const [share = [0, 0], error = [0, 0]] = [average.shares[p], average.errors[p]];
		return {
			id,
			name,
			kind,
			...effect(share),
			error: effect(error),
			ifRemoved: effect(ifRemoved[p]),
			...gathers === void 0 ? {} : { gathers },
			...members === void 0 ? {} : { members }
		};
	}).sort((a, b) => Number(a.gathers !== void 0) - Number(b.gathers !== void 0) || b.workingDays - a.workingDays || b.money - a.money || (a.id < b.id ? -1 : 1));
}
function setEnd(bars, end, value, committed) {
	const bar = bars[end.bar];
	if (bar !== void 0) bar[end.side] = effect(minus(value, committed));
}
/** Where the plan as written already waits for people, its cause is only what comes on top: it says so. */
function waiting(people, offset) {
	return offset.some((part) => Math.abs(part) > 1e-9) ? {
		...people,
		name: "More waiting for people"
	} : people;
}
/** Ids of the causes that are named, members of shared causes included. */
function namesOf(players) {
	return new Set(players.flatMap(({ id, gathers, members }) => gathers === void 0 ? [id, ...members ?? []] : []));
}
// ../../packages/core/src/explain/contingency/explain.ts
/**
* Why this much contingency: the difference between the committed level and the plan as written, in working days and
* in money, split over its causes (shares), walked step by step (walk), and moved by one item at a time (tornado), all
* on the draws of the forecast with the same seed, design and iterations. Shares and walk each add up to it.
*
* A share is a cause's part of the contingency, averaged over the orders in which causes may come; what would change
* if the cause alone vanished is another question and stands beside it (`ifRemoved`).
*
* Problems are values; nothing is thrown. Cost: some hundred re-runs of the plan (see variants.ts).
*/
function explain(plan, options = {}) {
	const ready = explained(plan, options);
	if (ready.explained === void 0) return { problems: ready.problems };
	const { model, draw, confidence } = ready.explained;
	try {
		const steps = explainSteps(ready.explained);
		let step = steps.next();
		while (step.done !== true) {
			const { settings, iterations } = step.value;
			const progress = progressWithin(step.value, options.onProgress);
			step = steps.next(require_measureVariants.measureVariants(model, {
				...draw,
				iterations
			}, confidence, settings, progress));
		}
		options.onProgress?.(1e3, 1e3);
		return {
			explanation: step.value,
			problems: []
		};
	} catch (error) {
		if (error instanceof require_stage.BeyondCalendarError) return { problems: [error.problem] };
		throw error;
	}
}
/** The scenario of a plan, compiled, with all that is known before anything is drawn; or why there is none. */
function explained(plan, options) {
	const scenario = require_applyScenario.applyScenario(plan, options);
	if (scenario.problems.length > 0) return {
		plan,
		problems: scenario.problems
	};
	const model = require_engine.compile(scenario.plan);
	const asWritten = require_engine.planAsWritten(model);
	if (asWritten.beyond >= 0) return {
		plan,
		problems: [require_engine.beyondCalendar(model, asWritten.beyond)]
	};
	return {
		explained: {
			model,
			asWritten,
			draw: {
				seed: options.seed ?? scenario.plan.seed,
				design: options.design ?? "latin-hypercube",
				iterations: options.iterations ?? scenario.plan.iterations
			},
			confidence: options.confidence ?? model.confidence
		},
		plan: scenario.plan,
		problems: []
	};
}
/** A listener for one part of the work, told in thousandths of the whole. */
function progressWithin({ from, to }, tell) {
	return tell && ((done, total) => tell(Math.floor(1e3 * (from + (to - from) * done / total)), 1e3));
}
// ../../packages/parallel/src/explainInParallel.ts
/** How many simulations' work an explanation is, roughly: some hundred re-runs of a part of the plan. */
var explanationFactor = 100;
/** Parts per thread and ask: variants differ in what they reach. */
var partsPerThread = 2;
/** Variants in a part at least: a part begins with a run of the model as it is. */
var leastVariants = 24;
/**
* `explain(plan, options)` on several threads: the same explanation, to the bit, however many there are. The variants
* of each step are shared out; what to ask next is decided on the caller's thread.
*
* Problems are values. Rejects with the signal's reason when aborted, and with the error of a thread that broke.
*/
async function explainInParallel(plan, options = {}) {
	const { pool, signal } = options;
	signal?.throwIfAborted();
	const ready = explained(plan, options);
	const subject = ready.explained;
	if (subject === void 0) return { problems: ready.problems };
	const { seed, design, iterations } = subject.draw;
	const work = explanationFactor * require_node.workOf(ready.plan, iterations);
	const threads = require_node.threadsFor(work, Number.POSITIVE_INFINITY, options);
	if (pool !== void 0 && threads > 0) {
		const run = {
			seed,
			design,
			...signal === void 0 ? {} : { signal }
		};
		try {
			return await require_node.withCrew({
				pool,
				threads,
				plan: ready.plan,
				options: run
			}, (crew) => explainOn(crew, subject, options));
		} catch (error) {
			if (!(error instanceof Error) || error.name !== "BeyondCalendarError") throw error;
		}
	}
	return explain(plan, options);
}
async function explainOn(crew, subject, options) {
	const { model, draw, confidence } = subject;
	const steps = explainSteps(subject);
	let step = steps.next();
	while (step.done !== true) {
		const tell = progressWithin(step.value, options.onProgress);
		const measures = await measureOn(crew, subject, step.value, tell) ?? require_measureVariants.measureVariants(model, {
			...draw,
			iterations: step.value.iterations
		}, confidence, step.value.settings, tell);
		step = steps.next(measures);
	}
	options.onProgress?.(1e3, 1e3);
	return {
		explanation: step.value,
		problems: []
	};
}
/** Measures of one ask, in its order; undefined when no thread could be had. */
async function measureOn(crew, { draw, confidence }, { settings, iterations }, tell) {
	const size = Math.max(leastVariants, Math.ceil(settings.length / (crew.length * partsPerThread)));
	const firsts = Array.from({ length: Math.ceil(settings.length / size) }, (_, part) => part * size);
	const progress = require_node.progressOf(settings.length * iterations, tell);
	const measures = new Array(settings.length);
	return await require_node.shareOut(crew, firsts, async (helper, first) => {
		const part = settings.slice(first, first + size);
		const request = {
			kind: "measure",
			draw: {
				...draw,
				iterations
			},
			confidence,
			settings: part
		};
		const answer = await helper.ask(request, [], (done) => progress.during(helper, done));
		if (answer.kind !== "measures") throw new Error(`Asked for measures, got "${answer.kind}".`);
		answer.measures.forEach((measure, i) => {
			measures[first + i] = measure;
		});
		progress.after(helper, part.length * iterations);
	}) ? measures : void 0;
}
Object.defineProperty(exports, "explainInParallel", {
	enumerable: true,
	get: function() {
		return explainInParallel;
	}
});

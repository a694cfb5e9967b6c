const require_stampOf = require("./stampOf-B221aSYW.cjs");
const require_standings = require("./standings-y-hwZo6x.cjs");
const require_applyScenario = require("./applyScenario-C_221t4T.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_stage = require("./stage-kNi0qcSu.cjs");
const require_variants = require("./variants-BloK5_oj.cjs");
const require_measureVariants = require("./measureVariants-DaJ0Ulvd.cjs");
const require_orderAverage = require("./orderAverage-rtyasGdT.cjs");
// ../../packages/core/src/explain/subject.ts
/** The dice of a run: what was asked for, else the plan's own. */
function drawOf(plan, { seed, iterations, design }) {
	return {
		seed: seed ?? plan.seed,
		iterations: iterations ?? plan.iterations,
		design: design ?? "latin-hypercube"
	};
}
/**
* Explains a plan: applies the scenario, compiles, and hands the subject over; whatever stands in the way is a problem.
*
* @param unfit   Problems of the question itself; listed with the scenario's, before anything is computed.
* @param change  What the question does to the plan before it is compiled.
*/
function explaining(plan, options, explain, { unfit = [], change = (same) => same } = {}) {
	const scenario = require_applyScenario.applyScenario(plan, options);
	const problems = [...unfit, ...scenario.problems];
	if (problems.length > 0) return { problems };
	const model = require_engine.compile(change(scenario.plan));
	const asWritten = require_engine.planAsWritten(model);
	if (asWritten.beyond >= 0) return { problems: [require_engine.beyondCalendar(model, asWritten.beyond)] };
	try {
		return explain({
			model,
			asWritten,
			draw: drawOf(plan, options)
		});
	} catch (error) {
		if (error instanceof require_stage.BeyondCalendarError) return { problems: [error.problem] };
		throw error;
	}
}
// ../../packages/core/src/brief/someone.ts
/** Looks up people and stakeholders by id; a person who is both is told by the stakeholder's part in it. */
function someoneOf(plan) {
	const known = /* @__PURE__ */ new Map();
	for (const { id, name, role } of [...plan.people, ...plan.stakeholders]) known.set(id, role === void 0 ? {
		id,
		name
	} : {
		id,
		name,
		role
	});
	return (id) => id === void 0 ? void 0 : known.get(id) ?? {
		id,
		name: id
	};
}
// ../../packages/core/src/budget/asOf.ts
/**
* The plan looked at on a later day than its status date, with nothing more reported: what has not begun moves past that
* day, and windows of risks that have closed by then count as passed. The plan itself where no day is given.
*/
function asOf(plan, today) {
	const { statusDate } = plan;
	if (today === void 0 || today === statusDate) return {
		plan,
		problems: []
	};
	if (statusDate === void 0 || today > statusDate) return {
		plan: {
			...plan,
			statusDate: today
		},
		problems: []
	};
	return {
		plan,
		problems: [{
			code: "before-status-date",
			severity: "error",
			path: "--today",
			received: today,
			rule: `It lies before the plan's status date, ${statusDate}: progress up to there is in the plan.`,
			remedy: `Give a day from ${statusDate} on, or leave it out.`
		}]
	};
}
// ../../packages/core/src/budget/left/coverOf.ts
/** What is left of an agreed sum and what it has to cover, read off the iterations. Sorts a copy. */
function coverOfMoney({ cost }, confidence, asWritten, agreed, agreedFrom) {
	const limit = agreed + require_engine.tolerance * Math.max(1, Math.abs(agreed));
	const kept = cost.reduce((count, sum) => count + (sum <= limit ? 1 : 0), 0);
	return {
		...coverOf(agreed, asWritten, levelsOf(cost, confidence)),
		agreedFrom,
		chance: kept / cost.length
	};
}
/** ... of an agreed date, in working days of the plan's calendar. Sorts copies. */
function coverOfDays(model, { finish, finishDay }, confidence, asWritten, agreedDate, agreedFrom) {
	const { planCalendar, startDay } = model;
	const agreedDay = require_engine.dayNumber(agreedDate) - startDay;
	const kept = finishDay.reduce((count, day) => count + (day <= agreedDay ? 1 : 0), 0);
	const { committed, low, high } = levelsOf(finish, confidence);
	const days = finishDay.slice().sort();
	const work = (moment) => require_engine.workAt(planCalendar, moment);
	return {
		...coverOf(work(Math.max(0, agreedDay + 1)), asWritten.workingDays, {
			committed: work(committed),
			low: work(low),
			high: work(high)
		}),
		agreedFrom,
		chance: kept / finishDay.length,
		agreedDate,
		asWrittenDate: require_engine.isoDate(startDay + asWritten.finishDay),
		committedDate: require_engine.isoDate(startDay + days[require_engine.rankOf(confidence, days.length) - 1])
	};
}
/**
* Whether less is left than this part of the exposure: the condition of a return trigger. Where there is no exposure
* left, whether anything is short at all.
*/
function coverIsBelow({ left, exposure, spare }, ratio) {
	return exposure > 1e-9 ? left < ratio * exposure - require_engine.tolerance : spare < -require_engine.tolerance;
}
function levelsOf(row, confidence) {
	const sorted = row.slice().sort();
	const limits = require_engine.limitRanks(confidence, row.length);
	const at = (rank) => sorted[rank - 1];
	return {
		committed: at(require_engine.rankOf(confidence, row.length)),
		low: at(limits.low),
		high: at(limits.high)
	};
}
function coverOf(agreed, asWritten, levels) {
	const left = agreed - asWritten;
	const exposure = levels.committed - asWritten;
	return {
		agreed,
		asWritten,
		left,
		...levels,
		exposure,
		spare: left - exposure,
		...exposure > 1e-9 ? { ratio: left / exposure } : {}
	};
}
// ../../packages/core/src/budget/left/whenSettled.ts
/**
* Everything uncertain in the model, with the moment at which the plan as written has it behind it.
*
* A task: its finish (a lag into it: its start). An entry: the end of its window, or the last finish of the tasks it
* names if that is sooner; without either, the plan's finish. An overhead: the end of its span. A response's cost: its
* due day. Sorted by that moment, then by id.
*/
function whenSettled(model, asWritten) {
	const { start, finish } = asWritten.block;
	const startOf = (j) => start[j]?.[0] ?? 0;
	const finishOf = (j) => j < 0 ? asWritten.finish : finish[j]?.[0] ?? 0;
	const found = [];
	const work = (id, at, amounts, needed) => {
		const slots = slotsOf(amounts);
		if (slots.length === 0 && needed === void 0) return;
		found.push({
			id,
			kind: "work",
			at,
			slots,
			...needed === void 0 ? {} : { needed }
		});
	};
	model.tasks.forEach((task, j) => {
		const { duration, cost, costPerDay, progress, chance, links } = task;
		const inDoubt = chance > 0 && chance < 1 && progress === void 0;
		work(task.id, finishOf(j), [
			duration,
			progress?.remaining,
			cost,
			costPerDay
		], inDoubt ? j : void 0);
		work(task.id, startOf(j), links.map(({ lag }) => lag));
	});
	for (const { id, perDay, to } of model.overheads) work(id, finishOf(to), [perDay]);
	for (const { id, cost, dueDay } of model.responses) work(id, dueDay, [cost]);
	model.register.forEach((entry, e) => {
		if (entry.fact === 0) return;
		const at = settledAt(model, entry, finishOf);
		if (entry.fact === void 0) found.push({
			id: entry.id,
			kind: "register",
			at,
			slots: [],
			entry: e
		});
		else {
			const slots = slotsOf(entry.impacts.flatMap(({ delay, factor, wait, cost }) => [
				delay,
				factor,
				wait,
				cost
			]));
			if (slots.length > 0) found.push({
				id: entry.id,
				kind: "register",
				at,
				slots
			});
		}
	});
	return found.sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
/** Settings that hold all of these as written. */
function asWrittenFor(model, settled) {
	const slots = /* @__PURE__ */ new Map();
	const entries = /* @__PURE__ */ new Map();
	const needed = /* @__PURE__ */ new Map();
	for (const one of settled) {
		for (const slot of one.slots) slots.set(slot, model.slots[slot]?.asWritten ?? 0);
		if (one.entry !== void 0) entries.set(one.entry, 0);
		if (one.needed !== void 0) needed.set(one.needed, (model.tasks[one.needed]?.chance ?? 1) >= .5 ? 1 : 0);
	}
	return {
		slots,
		entries,
		needed
	};
}
function settledAt(model, entry, finishOf) {
	const tasks = entry.impacts.flatMap((impact) => impact.tasks);
	const last = tasks.reduce((latest, j) => Math.max(latest, finishOf(j)), 0);
	const { plan } = model;
	const written = [...plan.risks, ...plan.assumptions].find(({ id }) => id === entry.id);
	const end = written?.expires === void 0 ? void 0 : require_engine.dayNumber(written.expires) - model.startDay + 1;
	const worked = tasks.length === 0 ? finishOf(-1) : last;
	return end === void 0 ? worked : tasks.length === 0 ? end : Math.min(end, worked);
}
function slotsOf(amounts) {
	return amounts.flatMap((amount) => amount === void 0 || amount.slot < 0 ? [] : [amount.slot]);
}
// ../../packages/core/src/budget/left/exposureAhead.ts
/** More points than this and they stand two, three, ... months apart. */
var mostPoints = 24;
/**
* The exposure that would still be ahead at the end of each month, if everything until then went as written: the
* percentile at the level with what is settled by then at its as-written values (entries that may occur: absent), less
* the plan as written. It starts at the exposure of today and ends at nothing.
*
* It is not a forecast of the exposure: a plan that goes otherwise will have another. It says how fast the plan itself
* lets go of what it holds.
*
* Cost: one run of the model's differences a point.
*/
function exposureAhead(model, asWritten, draw, confidence) {
	const unsettled = whenSettled(model, asWritten);
	const today = model.statusDay ?? -1;
	const days = [today, ...monthEnds(model, today, unsettled.reduce((latest, { at }) => Math.max(latest, at), today + 1))];
	const passed = days.map((day, i) => i === 0 ? [] : unsettled.filter((one) => isBy(one, day)));
	const measures = require_measureVariants.measureVariants(model, draw, confidence, passed.map((settled) => asWrittenFor(model, settled)));
	return days.map((day, i) => {
		const [workingDays, money] = measures[i]?.level ?? [0, 0];
		const fresh = (passed[i] ?? []).filter((one) => !isBy(one, Math.max(today, days[i - 1] ?? today)));
		const idsOf = (kind) => [...new Set(fresh.filter((one) => one.kind === kind).map(({ id }) => id))];
		return {
			date: require_engine.isoDate(model.startDay + day),
			exposure: {
				workingDays: workingDays - asWritten.workingDays,
				money: money - asWritten.cost
			},
			settles: {
				work: idsOf("work"),
				register: idsOf("register")
			}
		};
	});
}
function isBy({ at }, day) {
	return at <= day + 1 + require_engine.tolerance;
}
/** The last days of the months after `today`, as days since start, to the first that has `last` behind it. */
function monthEnds(model, today, last) {
	const ends = [];
	let [year, month] = require_engine.isoDate(model.startDay + today + 1).split("-").map(Number);
	do {
		month += 1;
		if (month > 12) {
			month = 1;
			year += 1;
		}
		const next = `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-01`;
		ends.push(require_engine.dayNumber(next) - 1 - model.startDay);
	} while (ends.at(-1) + 1 < last - require_engine.tolerance);
	const apart = Math.ceil(ends.length / mostPoints);
	return ends.filter((_, i) => (ends.length - 1 - i) % apart === 0);
}
// ../../packages/core/src/budget/left/heldFor.ts
/** Sets of so many parts are all run; of more, two passes through a Latin square of orders. */
var everySetUpTo = 6;
/** So many are told apart; what holds least is gathered. */
var mostParts = 12;
/**
* What the commitment of a model holds for each of some entries: what the level's percentile loses without them, on the
* same draws, averaged over every order in which they can go, so that the parts add up.
*
* Cost: 2^k runs of the model's differences for up to 6 entries, about 2 k^2 up to 12; beyond, the smallest are one.
*/
function heldFor(model, draw, confidence, entries) {
	if (entries.length === 0) return [];
	const levelOf = (settings) => require_measureVariants.measureVariants(model, draw, confidence, settings).map(({ level }) => level);
	const parts = gathered(entries, () => levelOf([{}, ...entries.map((entry) => without([entry]))]));
	const { shares, errors } = require_orderAverage.averageOverOrders(parts.length, (sets) => levelOf(sets.map((set) => without(parts.filter((_, i) => (set >> i & 1) === 0).flat()))), {
		exactUpTo: everySetUpTo,
		most: 1,
		seed: draw.seed
	});
	return parts.map((part, i) => ({
		entries: part,
		held: effectOf(shares[i]),
		error: effectOf(errors[i])
	}));
}
function without(entries) {
	return { entries: new Map(entries.map((entry) => [entry, 0])) };
}
/** Entries one by one, or those that move the level most and the rest together. */
function gathered(entries, measure) {
	if (entries.length <= mostParts) return entries.map((entry) => [entry]);
	const [whole = [0, 0], ...alone] = measure();
	const size = (i, d) => Math.abs(whole[d] - (alone[i]?.[d] ?? 0));
	const largest = [0, 1].map((d) => entries.reduce((most, _, i) => Math.max(most, size(i, d)), 1e-9));
	const weight = (i) => Math.max(size(i, 0) / largest[0], size(i, 1) / largest[1]);
	const order = entries.map((_, i) => i).sort((a, b) => weight(b) - weight(a) || a - b);
	const named = new Set(order.slice(0, 11));
	return [...entries.filter((_, i) => named.has(i)).map((entry) => [entry]), entries.filter((_, i) => !named.has(i))];
}
function effectOf([workingDays = 0, money = 0] = []) {
	return {
		workingDays,
		money
	};
}
// ../../packages/core/src/budget/left/settledEntries.ts
/** Entries that can no longer happen, or have: closed, occurred, or past their window at the status date. By id. */
function settledEntries(plan) {
	const { statusDate } = plan;
	return [...plan.risks, ...plan.assumptions].flatMap((entry) => {
		if (entry.status !== "open") return [{
			entry,
			how: entry.status
		}];
		return statusDate !== void 0 && entry.expires !== void 0 && entry.expires < statusDate ? [{
			entry,
			how: "expired"
		}] : [];
	}).sort((a, b) => a.entry.id < b.entry.id ? -1 : 1);
}
// ../../packages/core/src/budget/left/withoutProgress.ts
/** The plan as it would stand had nothing of it happened yet: no status date, no actuals, every entry open. */
function withoutProgress(plan) {
	const { statusDate: _, ...rest } = plan;
	return {
		...rest,
		tasks: plan.tasks.map(notBegun),
		risks: plan.risks.map((entry) => ({
			...entry,
			status: "open"
		})),
		assumptions: plan.assumptions.map((entry) => ({
			...entry,
			status: "open"
		}))
	};
}
function notBegun({ started: _s, finished: _f, remaining: _r, spent: _p, ...task }) {
	return task;
}
// ../../packages/core/src/budget/left/settled.ts
var nothing$1 = {
	workingDays: 0,
	money: 0
};
/**
* What was held for the entries that are settled by now, and what of it may be released: see `ContingencyLeft`.
*
* What was held is measured before anything happened, where it could still do all its harm: in the signed version if
* there is one, else in this plan without its progress. An entry unknown there, or settled there already, held nothing.
*/
function settled(plan, options, draw, confidence, { money, days }) {
	const entries = settledEntries(plan);
	const model = require_engine.compile(options.signed ?? require_applyScenario.applyScenario(withoutProgress(plan), options).plan);
	const placeOf = ({ id, was }) => model.register.findIndex((one) => one.fact === void 0 && (one.id === id || one.id === was));
	const places = new Map(entries.map((one) => [placeOf(one.entry), one]));
	places.delete(-1);
	const told = heldFor(model, draw, confidence, [...places.keys()]).map(({ entries: at, held, error }) => {
		const [first, ...others] = at.flatMap((place) => places.get(place) ?? []);
		if (first === void 0 || others.length > 0) return {
			id: "other-settled",
			name: `${at.length} more`,
			kind: "risk",
			how: "several",
			gathers: at.flatMap((place) => places.get(place)?.entry.id ?? []),
			held,
			error,
			mayRelease: nothing$1
		};
		const { entry, how } = first;
		return {
			id: entry.id,
			name: entry.name,
			kind: entry.kind,
			how,
			...entry.expires === void 0 ? {} : { expires: entry.expires },
			held,
			error,
			...how === "occurred" ? { took: tookOf(plan, entry, options) } : {},
			mayRelease: nothing$1
		};
	});
	const gone = told.filter(({ how }) => how === "expired" || how === "closed");
	const release = {
		workingDays: released(gone, days?.spare, ({ workingDays }) => workingDays),
		money: released(gone, money?.spare, (effect) => effect.money)
	};
	return {
		settled: told.map((one) => gone.includes(one) ? {
			...one,
			mayRelease: partOf(one, gone, release)
		} : one),
		held: told.reduce((sum, one) => plus(sum, one.held), nothing$1),
		heldIn: options.signed === void 0 ? "without-progress" : "signed",
		release
	};
}
/** No more than was held for what can no longer happen, and no more than is left beyond the exposure. */
function released(gone, spare, of) {
	const held = gone.reduce((sum, one) => sum + Math.max(0, of(one.held)), 0);
	return Math.max(0, Math.min(held, spare ?? 0));
}
/** In proportion to what each held. */
function partOf({ held }, gone, release) {
	const part = (of) => {
		const all = gone.reduce((sum, one) => sum + Math.max(0, of(one.held)), 0);
		return all > 0 ? of(release) * Math.max(0, of(held)) / all : 0;
	};
	return {
		workingDays: part(({ workingDays }) => workingDays),
		money: part(({ money }) => money)
	};
}
/** What the plan as written would be less by, had the entry not occurred. */
function tookOf(plan, { id }, options) {
	const spared = (entry) => entry.id === id ? {
		...entry,
		status: "closed"
	} : entry;
	const written = (one) => require_engine.planAsWritten(require_engine.compile(require_applyScenario.applyScenario(one, options).plan));
	const now = written(plan);
	const otherwise = written({
		...plan,
		risks: plan.risks.map(spared),
		assumptions: plan.assumptions.map(spared)
	});
	return {
		workingDays: now.workingDays - otherwise.workingDays,
		money: now.cost - otherwise.cost
	};
}
function plus(a, b) {
	return {
		workingDays: a.workingDays + b.workingDays,
		money: a.money + b.money
	};
}
// ../../packages/core/src/budget/left/contingencyLeft.ts
/**
* What is left of the contingency against what it still has to cover, in money and in days.
*
* Left = what was agreed less the plan as written now. Exposure = the percentile at the level committed to, now, less
* the plan as written now. So the cover is enough exactly when what was agreed holds at that level. What was agreed is,
* part by part: `agreed` as given, else what the `signed` version commits to (same seed and iterations), else the
* plan's `budget` and `finishBy`; without any, that part is absent and `missing` says what would help.
*
* Contingency is for identified uncertainty; the sponsor's reserve is handed through and counted nowhere.
*
* Problems are values. Cost: one run for the cover, two to the power of the settled entries (six at most) for what they
* held, one a month for the way ahead; all on the forecast's draws.
*/
function contingencyLeft(given, options = {}) {
	const { plan, problems: unfit } = asOf(given, options.today);
	const answer = (subject) => {
		const { model, asWritten, draw } = subject;
		const confidence = options.confidence ?? model.confidence;
		const terms = termsOf(plan, options, subject);
		const [covers = {}] = require_variants.runVariants(draw, [{ model }], (rows) => ({
			...terms.money === void 0 ? {} : { money: coverOfMoney(rows, confidence, asWritten.cost, ...terms.money) },
			...terms.date === void 0 ? {} : { days: coverOfDays(model, rows, confidence, asWritten, ...terms.date) }
		}), options.onProgress);
		const { commitment, statusDate } = plan;
		const holder = someoneOf(plan)(commitment.holder);
		return {
			left: {
				stamp: require_stampOf.stampOf(model, draw),
				plan: {
					title: plan.title,
					currency: plan.currency,
					start: plan.start
				},
				confidence,
				...statusDate === void 0 ? {} : { statusDate },
				...holder === void 0 ? {} : { holder },
				...commitment.releaseRule === void 0 ? {} : { releaseRule: commitment.releaseRule },
				...commitment.reserve === void 0 ? {} : { reserve: commitment.reserve },
				...covers,
				missing: missing(plan, terms),
				...options.settled === false ? unsettled : settled(plan, options, draw, confidence, covers),
				ahead: options.ahead === false ? [] : exposureAhead(model, asWritten, draw, confidence)
			},
			problems: []
		};
	};
	return explaining(plan, options, answer, { unfit: [...unfit, ...otherMoney(plan, options.signed)] });
}
var nothing = {
	workingDays: 0,
	money: 0
};
var unsettled = {
	settled: [],
	held: nothing,
	heldIn: "without-progress",
	release: nothing
};
/** Sums in two currencies are not compared. */
function otherMoney({ currency }, signed) {
	if (signed === void 0 || signed.currency === currency) return [];
	return [{
		code: "other-currency",
		severity: "error",
		path: "--signed",
		received: signed.currency,
		rule: `The version that was signed counts in ${signed.currency}, the plan in ${currency}.`,
		remedy: "Give the agreed sum itself, in the plan's currency."
	}];
}
function termsOf(plan, { agreed, signed }, { draw }) {
	const { commitment } = plan;
	const terms = {};
	if (commitment.budget !== void 0) terms.money = [commitment.budget, "plan"];
	if (commitment.finishBy !== void 0) terms.date = [commitment.finishBy, "plan"];
	if (signed !== void 0 && (agreed?.money === void 0 || agreed.date === void 0)) {
		const model = require_engine.compile(signed);
		const [standing] = require_variants.runVariants(draw, [{ model }], (rows) => require_standings.standingAt(model, rows, model.confidence));
		if (standing !== void 0) {
			terms.money = [standing.cost, "signed"];
			terms.date = [standing.date, "signed"];
		}
	}
	if (agreed?.money !== void 0) terms.money = [agreed.money, "given"];
	if (agreed?.date !== void 0) terms.date = [agreed.date, "given"];
	return terms;
}
function missing({ commitment, statusDate }, { money, date }) {
	return [
		...money === void 0 ? ["No sum was agreed, so none can be left. Give `commitment: { budget: ... }`, or the version that was signed."] : [],
		...date === void 0 ? ["No date was agreed, so no days can be left. Give `commitment: { finishBy: ... }`, or the version that was signed."] : [],
		...statusDate === void 0 ? ["The plan has no `statusDate`: nothing counts as done, and no window of a risk as passed."] : [],
		...commitment.holder === void 0 ? ["Nobody holds the contingency: name them with `commitment: { holder: ... }`."] : [],
		...commitment.releaseRule === void 0 ? ["Nobody says how contingency is released: write it down as `commitment: { releaseRule: ... }`."] : []
	];
}
Object.defineProperty(exports, "asOf", {
	enumerable: true,
	get: function() {
		return asOf;
	}
});
Object.defineProperty(exports, "contingencyLeft", {
	enumerable: true,
	get: function() {
		return contingencyLeft;
	}
});
Object.defineProperty(exports, "coverIsBelow", {
	enumerable: true,
	get: function() {
		return coverIsBelow;
	}
});
Object.defineProperty(exports, "drawOf", {
	enumerable: true,
	get: function() {
		return drawOf;
	}
});
Object.defineProperty(exports, "explaining", {
	enumerable: true,
	get: function() {
		return explaining;
	}
});
Object.defineProperty(exports, "someoneOf", {
	enumerable: true,
	get: function() {
		return someoneOf;
	}
});

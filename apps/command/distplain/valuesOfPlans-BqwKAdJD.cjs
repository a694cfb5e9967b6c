const require_engine = require("./engine-Bbth-FEh.cjs");
const require_freeOfSlackPeople = require("./freeOfSlackPeople-Du_81fGg.cjs");
const require_stage = require("./stage-kNi0qcSu.cjs");
// ../../packages/core/src/explain/compare/run/workingDaysFrom.ts
/**
* Working days of a plan's calendar between its start and a moment, for moments of plans that start on other dates.
*
* @param earliest  The earliest start of any of those plans.
* @returns (day since the start of the plan moments are told by, that start) to working days; negative before
*          `plan.start`
*/
function workingDaysFrom(plan, earliest) {
	const origin = earliest < plan.start ? earliest : plan.start;
	const calendar = require_engine.compileCalendars({
		...plan,
		start: origin
	}).named(plan.calendar);
	const zero = require_engine.dayNumber(origin);
	const before = require_engine.workAt(calendar, require_engine.dayNumber(plan.start) - zero);
	return (day, start) => require_engine.workAt(calendar, day + (require_engine.dayNumber(start) - zero)) - before;
}
// ../../packages/core/src/explain/compare/run/keys.ts
function numbering() {
	const known = /* @__PURE__ */ new Map();
	return (thing) => {
		if (thing === void 0) return -1;
		const number = known.get(thing) ?? known.size;
		known.set(thing, number);
		return number;
	};
}
/**
* @param planned   Starts as written, for tasks that hold to them.
* @param calendar  Numbers of pooled calendars (poolCalendars.ts).
*/
function keysOf(model, planned, calendar) {
	const slots = slotKeys(model);
	const amount = (at) => at === void 0 ? "-" : at.slot < 0 ? `=${at.value}` : slots[at.slot] ?? "";
	const occurs = model.register.map((entry) => occursKey(model, entry));
	const needed = model.tasks.map((task) => task.chance < 1 ? JSON.stringify([task.chanceAddress, task.chance]) : void 0);
	return {
		slots,
		occurs,
		needed,
		realised: model.tasks.map((task, j) => JSON.stringify([
			amount(task.duration),
			task.durationScale,
			task.progress && [
				task.progress.finished,
				task.progress.held,
				amount(task.progress.remaining),
				task.progress.remainingScale
			],
			needed[j],
			task.impacts.map((at) => {
				const entry = model.register[at.entry];
				const impact = entry.impacts[at.impact];
				return [
					occurs[at.entry],
					entry.scale,
					amount(impact?.factor),
					amount(impact?.delay),
					at.delayScale,
					amount(impact?.wait),
					at.waitScale
				];
			})
		])),
		placed: model.tasks.map((task, j) => JSON.stringify([
			task.kind,
			calendar(task.calendar),
			calendar(task.ownCalendar),
			calendar(task.unbroken),
			task.notBefore,
			task.holdToPlan ? planned[j] : null,
			task.statusFloor,
			task.holds,
			task.progress && [
				task.progress.start,
				task.progress.finish,
				task.progress.finished
			],
			task.links.map((link) => [
				link.from,
				link.kind,
				link.direct,
				amount(link.lag),
				link.lagScale,
				calendar(link.lagCalendar)
			])
		])),
		shape: JSON.stringify([
			model.startDay,
			model.statusDay,
			model.finishOf,
			model.limitedPeople,
			model.tasks.map(({ id }) => id),
			[...model.order],
			model.people.map(({ id, capacity, partial }) => [
				id,
				capacity,
				partial
			])
		])
	};
}
function slotKeys({ slots, correlated }) {
	const own = slots.map(({ item, purpose, estimate, cut }) => JSON.stringify([
		item,
		purpose,
		estimate,
		cut
	]));
	if (correlated === void 0) return own;
	const set = JSON.stringify([[...correlated.slots].map((slot) => own[slot]), [...correlated.factor]]);
	const members = new Set(correlated.slots);
	return own.map((key, slot) => members.has(slot) ? `${key} ${set}` : key);
}
function occursKey(model, { group, item, lo, hi, fact }) {
	return JSON.stringify([
		group < 0 ? null : model.groups[group]?.name,
		group < 0 ? item : null,
		lo,
		hi,
		fact
	]);
}
/**
* Tasks whose duration or wait differs, and those to be placed again: these, tasks placed otherwise, everything that
* follows them by links and, with limited people, tasks placed later that share a person with those.
*/
function reachBetween(before, { model, keys }) {
	const all = model.tasks.map((_, j) => j);
	if (before === void 0) return {
		realise: all,
		place: new Uint8Array(all.length).fill(1),
		count: all.length
	};
	const realise = all.filter((j) => keys.realised[j] !== before.keys.realised[j]);
	const changed = new Set(realise);
	const place = new Uint8Array(all.length);
	const busy = /* @__PURE__ */ new Set();
	let count = 0;
	for (const j of model.order) {
		const task = model.tasks[j];
		if (!(changed.has(j) || keys.placed[j] !== before.keys.placed[j] || task.links.some((link) => place[link.from] === 1) || model.limitedPeople && task.holds.some((hold) => busy.has(hold.person)))) continue;
		place[j] = 1;
		count++;
		for (const hold of [...task.holds, ...before.model.tasks[j]?.holds ?? []]) busy.add(hold.person);
	}
	return {
		realise,
		place,
		count
	};
}
/** Calendars a model's placing looks at. */
function calendarsOf(model) {
	return model.tasks.flatMap((task) => [
		task.calendar,
		task.ownCalendar,
		...task.unbroken === void 0 ? [] : [task.unbroken],
		...task.links.map((link) => link.lagCalendar)
	]);
}
// ../../packages/core/src/explain/compare/run/poolCalendars.ts
/** Every compiled plan brings its own tables, a megabyte or more; of hybrids nearly all are the same. */
function calendarPool() {
	const kept = /* @__PURE__ */ new Map();
	return (model) => {
		const known = /* @__PURE__ */ new Map();
		const pooled = (calendar) => {
			const found = known.get(calendar);
			if (found !== void 0) return found;
			const key = `${calendar.everyDay} ${calendar.last}`;
			const list = kept.get(key) ?? [];
			kept.set(key, list);
			let same = list.find((other) => equal(other, calendar));
			if (same === void 0) {
				same = calendar;
				list.push(calendar);
			}
			known.set(calendar, same);
			return same;
		};
		return {
			...model,
			planCalendar: pooled(model.planCalendar),
			tasks: model.tasks.map((task) => ({
				...task,
				calendar: pooled(task.calendar),
				ownCalendar: pooled(task.ownCalendar),
				unbroken: task.unbroken && pooled(task.unbroken),
				links: task.links.map((link) => ({
					...link,
					lagCalendar: pooled(link.lagCalendar)
				}))
			}))
		};
	};
}
function equal(a, b) {
	if (a.nth.length !== b.nth.length) return false;
	for (let k = 0; k < a.nth.length; k++) if (a.nth[k] !== b.nth[k]) return false;
	return a.cum[a.cum.length - 1] === b.cum[b.cum.length - 1];
}
// ../../packages/core/src/explain/compare/run/familyDraws.ts
function familyPlan(members) {
	const [first] = members;
	const parts = [];
	if (first === void 0) return {
		parts,
		slots: 0,
		entries: 0,
		tasks: 0
	};
	const seen = /* @__PURE__ */ new Set();
	const slots = /* @__PURE__ */ new Map();
	const entries = /* @__PURE__ */ new Map();
	const tasks = /* @__PURE__ */ new Map();
	const bare = {
		...first.model,
		slots: [],
		register: [],
		groups: [],
		tasks: [],
		correlated: void 0
	};
	for (const { model, keys } of members) {
		const correlated = new Set(model.correlated?.slots);
		if (model.correlated !== void 0) {
			const own = [...model.correlated.slots].map((slot) => keys.slots[slot] ?? "");
			if (!seen.has(own[0] ?? "")) {
				for (const key of own) seen.add(key);
				const set = [...model.correlated.slots].map((slot) => model.slots[slot]);
				const { factor } = model.correlated;
				parts.push({
					model: {
						...bare,
						slots: set,
						correlated: {
							slots: Int32Array.from(set, (_, i) => i),
							factor
						}
					},
					slots: own,
					entries: [],
					tasks: []
				});
			}
		}
		model.slots.forEach((slot, s) => {
			if (!correlated.has(s)) slots.set(keys.slots[s] ?? "", slot);
		});
		model.register.forEach((entry, e) => {
			entries.set(keys.occurs[e] ?? "", {
				entry,
				group: model.groups[entry.group]?.name
			});
		});
		model.tasks.forEach((task, j) => {
			const key = keys.needed[j];
			if (key !== void 0) tasks.set(key, task);
		});
	}
	const groups = [...new Set([...entries.values()].map(({ group }) => group))].filter((name) => name !== void 0).sort();
	parts.push({
		model: {
			...bare,
			slots: [...slots.values()],
			groups: groups.map((name) => ({ name })),
			register: [...entries.values()].map(({ entry, group }) => ({
				...entry,
				group: group === void 0 ? -1 : groups.indexOf(group)
			})),
			tasks: [...tasks.values()].map((task) => ({
				...task,
				duration: require_engine.constant(0),
				impacts: [],
				links: []
			}))
		},
		slots: [...slots.keys()],
		entries: [...entries.keys()],
		tasks: [...tasks.keys()]
	});
	return {
		parts,
		slots: parts.reduce((sum, part) => sum + part.slots.length, 0),
		entries: entries.size,
		tasks: tasks.size
	};
}
/** @param frame  A block whose scratch rows drawing may use. */
function familyDraws(plan, draw, kernel, size, frame) {
	const slots = /* @__PURE__ */ new Map();
	const occurs = /* @__PURE__ */ new Map();
	const needed = /* @__PURE__ */ new Map();
	const sources = plan.parts.map((part) => {
		const rows = kernel.arena.rows(part.slots.length, size);
		const events = kernel.arena.bytes(part.entries.length, size);
		const needs = kernel.arena.bytes(part.tasks.length, size);
		part.slots.forEach((key, i) => {
			slots.set(key, rows[i]);
		});
		part.entries.forEach((key, i) => {
			occurs.set(key, events[i]);
		});
		part.tasks.forEach((key, i) => {
			needed.set(key, needs[i]);
		});
		return {
			source: require_engine.draws(part.model, draw.seed, draw.design),
			block: {
				...frame,
				draws: rows,
				occurs: events,
				needed: needs
			}
		};
	});
	const rowOf = (rows, key) => {
		const row = rows.get(key);
		if (row === void 0) throw new Error("a row nobody asked to be drawn");
		return row;
	};
	return {
		slot: (key) => rowOf(slots, key),
		occurs: (key) => rowOf(occurs, key),
		needed: (key) => rowOf(needed, key),
		fill(b, n) {
			for (const { source, block } of sources) {
				block.n = n;
				source.fill(b, block);
			}
		}
	};
}
// ../../packages/core/src/explain/compare/run/runFamily.ts
/** Rows of outcomes kept at once. */
var keptBytes = 64e6;
/**
* Runs models of one shape on the same draws and hands each one's outcome to `measure`; what it answers comes back in
* their order, undefined for a model with a task that runs past what calendars cover.
*
* Everything that is drawn is drawn once for all of them; of each model only what differs from the one before is
* realised and placed again. The outcomes are those of `runVariants`, to the bit. Models that differ by little should
* follow each other.
*
* @param measure  Gets rows that are used again afterwards: copy what is to be kept.
*/
function runFamily(draw, members, measure) {
	const n = draw.iterations;
	const results = new Array(members.length);
	const most = Math.max(1, Math.floor(keptBytes / (16 * n)));
	for (let from = 0; from < members.length; from += most) {
		const batch = members.slice(from, from + most);
		const outcomes = batch.map(() => ({
			finish: new Float64Array(n),
			cost: new Float64Array(n)
		}));
		const covered = runBatch(draw, batch, outcomes);
		outcomes.forEach((outcome, i) => {
			if (covered[i] === 1) results[from + i] = measure(outcome, from + i);
		});
	}
	return results;
}
function runBatch(draw, batch, outcomes) {
	const n = draw.iterations;
	const size = Math.min(n, require_engine.blockSize);
	const [lead] = batch;
	const covered = new Uint8Array(batch.length).fill(1);
	if (lead === void 0) return covered;
	const plan = familyPlan(batch);
	const kernel = require_engine.kernelFor(lead.model, size, 2, roomFor(batch, plan, size));
	const frame = frameOf(lead.model, kernel, size);
	const drawn = familyDraws(plan, draw, kernel, size, frame);
	const steps = batch.map((member, i) => ({
		...reachBetween(batch[i - 1], member),
		block: blockOf(member, frame, drawn),
		finish: require_stage.lastFinish(member.model)
	}));
	const everything = reachBetween(void 0, lead);
	for (let first = 0, b = 0; first < n; first += require_engine.blockSize, b++) {
		const size = Math.min(require_engine.blockSize, n - first);
		drawn.fill(b, size);
		let kept = false;
		batch.forEach(({ model, planned }, i) => {
			if (covered[i] === 0) {
				kept = false;
				return;
			}
			const { block, finish, ...own } = steps[i];
			const { realise, place: again, count } = kept ? own : everything;
			block.n = size;
			for (const j of realise) require_engine.realiseTask(model, block, j);
			if (count > 0) {
				const capacity = model.limitedPeople ? require_engine.newCapacity(model) : void 0;
				if (require_engine.place(model, block, planned, capacity, again) >= 0) {
					covered[i] = 0;
					kept = false;
					return;
				}
			}
			kept = true;
			finish(block, false);
			require_engine.addMoney(model, block, require_engine.newMoneySums(model));
			const outcome = outcomes[i];
			outcome.finish.set(block.planFinish.subarray(0, size), first);
			outcome.cost.set(block.cost.subarray(0, size), first);
		});
	}
	return covered;
}
/** Rows that belong to the tasks of whichever model is being computed. */
function frameOf(model, kernel, size) {
	const { arena } = kernel;
	const tasks = model.tasks.length;
	const [planFinish, cost, scratch, scratch2] = arena.rows(4, size);
	return {
		kernel,
		n: size,
		draws: [],
		occurs: [],
		needed: [],
		duration: arena.rows(tasks, size),
		wait: arena.rows(tasks, size),
		start: arena.rows(tasks, size),
		finish: arena.rows(tasks, size),
		moves: [],
		pushed: [],
		planFinish,
		planFinishDay: arena.int32(1, size)[0],
		cost,
		scratch,
		scratch2
	};
}
/** The frame with a model's own draws in it. */
function blockOf({ model, keys }, frame, drawn) {
	const draws = keys.slots.map(drawn.slot);
	return {
		...frame,
		draws,
		occurs: keys.occurs.map(drawn.occurs),
		needed: keys.needed.map((key) => key === void 0 ? void 0 : drawn.needed(key)),
		duration: model.tasks.map((task, j) => require_engine.drawnAsIs(task) ? draws[task.duration.slot] : frame.duration[j]),
		wait: model.tasks.map((task, j) => waits(model, task) ? frame.wait[j] : void 0)
	};
}
function waits(model, task) {
	return task.impacts.some((at) => model.register[at.entry]?.impacts[at.impact]?.wait !== void 0);
}
/** Bytes beyond two blocks of the first model: everything drawn, a row more for each task, all calendars. */
function roomFor(batch, { parts, slots, entries, tasks }, size) {
	const calendars = new Set(batch.flatMap(({ model }) => calendarsOf(model)));
	let bytes = require_engine.bytesOfRows(slots + (batch[0]?.model.tasks.length ?? 0), size, 8);
	bytes += require_engine.bytesOfRows(entries + tasks, size, 1);
	for (const calendar of calendars) bytes += require_engine.bytesOfCalendar(calendar);
	for (const { model } of parts) {
		const outcomes = model.slots.reduce((sum, { estimate }) => sum + (estimate.kind === "outcomes" ? estimate.outcomes.length : 0), 0);
		bytes += model.slots.length * (require_engine.bytesOfTable + require_engine.bytesOfRows(2, 1, 8)) + require_engine.bytesOfRows(2, outcomes, 8);
		bytes += require_engine.bytesOfDrawer(model.slots.length) + require_engine.bytesOfRows(2 + model.groups.length, require_engine.blockSize, 8);
		bytes += require_engine.bytesOfRows(2 * (model.correlated?.slots.length ?? 0), require_engine.blockSize, 8);
	}
	return bytes;
}
// ../../packages/core/src/explain/compare/run/valuesOfPlans.ts
/** Tasks of models in memory at once, about 4 kB each. */
var tasksAtOnce = 2e4;
/**
* Committed values of plans on the same draws, in the terms of a comparison; undefined for a plan whose work runs
* past what calendars cover. Whoever computes them, and in whatever parts, the same numbers.
*
* Cost: a compilation of each plan (a millisecond per hundred tasks and per calendar); plans with the same tasks share
* draws, and of each only what differs from the one before it is placed again.
*/
function valuesOfPlans({ draw, confidence, newer, earliest }, plans, onProgress) {
	const workingDays = workingDaysFrom(newer, earliest);
	const select = require_engine.rankSelector(draw.iterations);
	const ranks = [require_engine.rankOf(confidence, draw.iterations)];
	const values = new Array(plans.length);
	const atOnce = Math.max(4, Math.floor(tasksAtOnce / Math.max(1, newer.tasks.length)));
	for (let first = 0; first < plans.length; first += atOnce) {
		for (const family of familiesOf(plans.slice(first, first + atOnce))) {
			const measured = runFamily(draw, family.map(({ member }) => member), ({ finish, cost }, i) => {
				const [day = 0] = select(finish, ranks);
				const [sum = 0] = select(cost, ranks);
				return [workingDays(day, plans[first + (family[i]?.at ?? 0)]?.start ?? earliest), sum];
			});
			family.forEach(({ at }, i) => {
				values[first + at] = measured[i];
			});
		}
		onProgress?.(Math.min(plans.length, first + atOnce), plans.length);
	}
	return values;
}
/** Plans whose models can be computed on the same rows, in their order. */
function familiesOf(plans) {
	const pooled = calendarPool();
	const numbers = numbering();
	const families = /* @__PURE__ */ new Map();
	plans.forEach((plan, at) => {
		const model = require_freeOfSlackPeople.freeOfSlackPeople(pooled(require_engine.compile(plan)));
		const planned = model.tasks.some((task) => task.holdToPlan) ? require_engine.planAsWritten(model).starts : new Float64Array(model.tasks.length);
		const member = {
			model,
			planned,
			keys: keysOf(model, planned, numbers)
		};
		const family = families.get(member.keys.shape);
		if (family === void 0) families.set(member.keys.shape, [{
			at,
			member
		}]);
		else family.push({
			at,
			member
		});
	});
	return [...families.values()];
}
Object.defineProperty(exports, "valuesOfPlans", {
	enumerable: true,
	get: function() {
		return valuesOfPlans;
	}
});
Object.defineProperty(exports, "workingDaysFrom", {
	enumerable: true,
	get: function() {
		return workingDaysFrom;
	}
});

const require_engine = require("./engine-Bbth-FEh.cjs");
const require_raisesSlot = require("./raisesSlot-DfVwcNE1.cjs");
const require_stage = require("./stage-kNi0qcSu.cjs");
const require_freeOfSlackPeople = require("./freeOfSlackPeople-Du_81fGg.cjs");
/**
* Reads a gauge off an outcome, as the forecast reads percentiles, chances and means. Cost: about 8 n steps.
*
* @param select  Made by `rankSelector` for at least as many iterations.
*/
function gaugeOf(outcome, model, targets, select) {
	const { finish, finishDay, cost, lateness } = outcome;
	const n = finish.length;
	const rank = require_engine.rankOf(targets.confidence, n);
	const { finishByDay = Number.POSITIVE_INFINITY, budget = Number.POSITIVE_INFINITY } = targets;
	const sum = Number.isFinite(budget) ? budget + require_engine.tolerance * Math.max(1, Math.abs(budget)) : budget;
	let [onTime, inBudget, both] = [
		0,
		0,
		0
	];
	for (let k = 0; k < n; k++) {
		const timely = finishDay[k] <= finishByDay;
		const paid = cost[k] <= sum;
		if (timely) onTime++;
		if (paid) inBudget++;
		if (timely && paid) both++;
	}
	const [day] = select(finish, [rank]);
	const [money] = select(cost, [rank]);
	return {
		day,
		dateDay: dayAtRank(finishDay, rank),
		workingDays: require_engine.workAt(model.planCalendar, day),
		cost: money,
		onTime,
		inBudget,
		both,
		meanDay: mean(finish),
		meanCost: mean(cost),
		meanLateness: lateness === void 0 ? void 0 : mean(lateness),
		burdens: batchMeans(cost, lateness)
	};
}
/** A gauge as it is reported. */
function outlookOf(gauge, model, targets, n) {
	const { finishByDay, budget } = targets;
	return {
		date: require_engine.isoDate(model.startDay + gauge.dateDay),
		day: gauge.day,
		workingDays: gauge.workingDays,
		cost: gauge.cost,
		chance: {
			...finishByDay === void 0 ? {} : { finishBy: gauge.onTime / n },
			...budget === void 0 ? {} : { budget: gauge.inBudget / n },
			...finishByDay === void 0 || budget === void 0 ? {} : { both: gauge.both / n }
		},
		mean: {
			day: gauge.meanDay,
			cost: gauge.meanCost,
			...gauge.meanLateness === void 0 ? {} : { lateness: gauge.meanLateness }
		}
	};
}
/** What a plan costs its owner on average: the total, and what finishing late costs where that is said. */
function meanBurden({ meanCost, meanLateness }) {
	return meanCost + (meanLateness ?? 0);
}
function batchMeans(cost, lateness) {
	const n = cost.length;
	const count = Math.min(20, n);
	return Array.from({ length: count }, (_, i) => {
		const from = Math.floor(i * n / count);
		const to = Math.floor((i + 1) * n / count);
		let sum = 0;
		for (let k = from; k < to; k++) sum += cost[k] + (lateness?.[k] ?? 0);
		return sum / (to - from);
	});
}
function mean(values) {
	let sum = 0;
	for (let k = 0; k < values.length; k++) sum += values[k];
	return sum / values.length;
}
/** The value at a rank by counting: days are whole numbers that lie close together. */
function dayAtRank(days, rank) {
	let low = Number.POSITIVE_INFINITY;
	let high = 0;
	for (let k = 0; k < days.length; k++) {
		const day = days[k];
		if (day < low) low = day;
		if (day > high) high = day;
	}
	const counts = new Uint32Array(high - low + 1);
	for (let k = 0; k < days.length; k++) {
		const at = days[k] - low;
		counts[at] = counts[at] + 1;
	}
	let before = 0;
	for (let at = 0; at < counts.length; at++) {
		before += counts[at];
		if (before >= rank) return low + at;
	}
	return high;
}
// ../../packages/core/src/explain/responses/nearOrder.ts
/**
* The places of the sets in an order in which neighbours differ by little: that of a reflected binary code (F. Gray,
* US patent 2,632,058, 1953; recalled) whose digits change the more often, the fewer tasks a switch reaches. Going
* through all sets then places, on average, little more than the tasks of the switch of least reach.
*/
function inNearOrder(scenarios, sets) {
	const digits = byReach(scenarios);
	const ranks = sets.map((set) => {
		let code = 0n;
		digits.forEach((i, digit) => {
			if (set >> BigInt(i) & 1n) code |= 1n << BigInt(digit);
		});
		let rank = 0n;
		for (let rest = code; rest !== 0n; rest >>= 1n) rank ^= rest;
		return rank;
	});
	return sets.map((_, at) => at).sort((a, b) => {
		const [x, y] = [ranks[a], ranks[b]];
		return x < y ? -1 : x > y ? 1 : a - b;
	});
}
/** Switches by how many tasks they reach, fewest first; added capacity last, as it changes who can work when. */
function byReach({ switches, drawn }) {
	const touches = require_stage.touchesOf(drawn);
	const taskScope = new Map(drawn.plan.tasks.map((task, j) => [j, task]));
	const reach = switches.map((one) => {
		if (one.kind === "capacity") return Number.POSITIVE_INFINITY;
		const needed = /* @__PURE__ */ new Set();
		for (const [j, task] of taskScope) if (task.scope === one.id || task.onlyIf === one.id) needed.add(j);
		const entries = /* @__PURE__ */ new Set();
		if (one.kind === "response") drawn.register.forEach((entry, e) => {
			if (entry.id === one.entry.id || gatedBy(drawn.plan, entry.id, one.id)) entries.add(e);
		});
		return require_stage.reachOf(drawn, touches, {
			slots: /* @__PURE__ */ new Set(),
			entries,
			needed,
			people: false
		}, drawn.limitedPeople).count;
	});
	return switches.map((_, i) => i).sort((a, b) => reach[a] - reach[b] || a - b);
}
function gatedBy(plan, entry, response) {
	return [...plan.risks, ...plan.assumptions].some(({ id, onlyIf }) => id === entry && onlyIf === response);
}
// ../../packages/core/src/explain/responses/runSets.ts
/** Rows of outcomes kept at once. */
var keptBytes = 64e6;
/**
* Runs the plan with each of these sets of switches on, all on the same draws, and hands each one's outcome to
* `measure`; what it answers comes back in the order of the sets.
*
* Estimates are drawn once for all sets, an entry's occurrences once for each chance it can have. Sets are gone
* through so that neighbours differ by little, and only what a difference reaches is placed again. The outcome of
* a set is that of `compile` and `simulate` of the plan with these decisions taken, to the bit.
*
* @param measure  Gets rows that are used again afterwards: copy what is to be kept.
*
* Throws BeyondCalendarError when a task of a scenario runs past what calendars cover.
*/
function runSets(scenarios, draw, sets, measure, onProgress) {
	const n = draw.iterations;
	const results = new Array(sets.length);
	const order = inNearOrder(scenarios, sets);
	const priced = scenarios.drawn.lateness !== void 0;
	const most = Math.max(1, Math.floor(keptBytes / (n * (priced ? 28 : 20))));
	const rows = order.slice(0, most).map(() => newOutcome(n, priced));
	let done = 0;
	for (let from = 0; from < order.length; from += most) {
		const batch = order.slice(from, from + most);
		const run = runner(scenarios, draw, sets, batch);
		for (let first = 0, b = 0; first < n; first += require_engine.blockSize, b++) {
			const size = Math.min(require_engine.blockSize, n - first);
			run.load(b, size);
			batch.forEach((_, i) => {
				run.compute(i, rows[i], first);
			});
			done += size * batch.length;
			onProgress?.(done, sets.length * n);
		}
		batch.forEach((at, i) => {
			results[at] = measure(rows[i], at);
		});
	}
	return results;
}
function newOutcome(n, priced) {
	return {
		finish: new Float64Array(n),
		finishDay: new Int32Array(n),
		cost: new Float64Array(n),
		...priced ? { lateness: new Float64Array(n) } : {}
	};
}
/** Rows for the draws, and one block that becomes one set after the other. */
function runner(scenarios, draw, sets, batch) {
	const { drawn, frame } = scenarios;
	const size = Math.min(draw.iterations, require_engine.blockSize);
	const variants = [];
	const steps = stepsOf(scenarios, sets, batch, variants);
	const kernel = require_engine.kernelFor(frame, size, 4 + roomFor(frame, size, variants.length, steps));
	const work = require_engine.newBlock(frame, size, kernel);
	const [never] = kernel.arena.bytes(1, size);
	const occurs = kernel.arena.bytes(variants.length, size);
	const slots = require_engine.draws({
		...drawn,
		register: [],
		groups: []
	}, draw.seed, draw.design);
	const events = require_engine.draws(eventsOf(drawn, variants), draw.seed, draw.design);
	const block = {
		...work,
		needed: [...work.needed],
		occurs: []
	};
	const costs = new Map(costlyTasks(frame).map((j) => [j, kernel.arena.rows(1, size)[0]]));
	const finish = require_stage.lastFinish(frame);
	return {
		load(b, n) {
			work.n = n;
			block.n = n;
			slots.fill(b, {
				...work,
				occurs: []
			});
			events.fill(b, {
				...work,
				draws: [],
				needed: [],
				occurs
			});
		},
		compute(i, into, first) {
			const { model, changed, placed, count, priced, planned, occurs: rows } = steps[i];
			const { n } = block;
			block.occurs = rows.map((row) => occurs[row]);
			model.tasks.forEach(({ chance }, j) => {
				block.needed[j] = chance >= 1 ? void 0 : chance <= 0 ? never : work.needed[j];
			});
			for (const j of changed) require_engine.realiseTask(model, block, j);
			if (count > 0) {
				const capacity = model.limitedPeople ? require_engine.newCapacity(model) : void 0;
				const beyond = require_engine.place(model, block, planned, capacity, placed);
				if (beyond >= 0) throw new require_stage.BeyondCalendarError(require_engine.beyondCalendar(model, beyond));
				finish(block, false);
			}
			for (const j of priced) {
				const part = costs.get(j);
				if (part !== void 0) require_engine.taskCost(model.tasks[j], j, block, part);
			}
			block.cost.fill(0, 0, n);
			for (const part of costs.values()) kernel.addCost(block.cost, part, n);
			require_stage.addOthers(model, block);
			into.finish.set(block.planFinish.subarray(0, n), first);
			into.finishDay.set(block.planFinishDay.subarray(0, n), first);
			into.cost.set(block.cost.subarray(0, n), first);
			if (into.lateness !== void 0) require_engine.lateCost(model, block, first, into.lateness);
		}
	};
}
/** Tasks that may cost anything at all. */
function costlyTasks({ tasks }) {
	return tasks.flatMap(({ cost, costPerDay, peoplePerDay, progress }, j) => {
		return [cost, costPerDay].some(({ slot, value }) => slot >= 0 || value !== 0) || peoplePerDay !== 0 || progress?.spent !== void 0 ? [j] : [];
	});
}
/** A model of nothing but events, to have them drawn by the one function that draws them. */
function eventsOf(model, register) {
	return {
		...model,
		tasks: [],
		slots: [],
		correlated: void 0,
		register
	};
}
/** Blocks' worth of room for rows of events, and for calendars of added capacity: `frame` has its own already. */
function roomFor(frame, size, events, steps) {
	const calendars = new Set(steps.flatMap(({ model }) => model.tasks.flatMap((task) => [task.calendar, task.ownCalendar])));
	for (const { model } of steps) for (const task of model.tasks) for (const link of task.links) calendars.add(link.lagCalendar);
	let bytes = require_engine.bytesOfRows(events + 1, size, 1);
	for (const calendar of calendars) bytes += require_engine.bytesOfCalendar(calendar);
	return Math.ceil(bytes / require_engine.bytesOfRows(frame.slots.length + 4 * frame.tasks.length + 8, size, 8));
}
function stepsOf(scenarios, sets, batch, variants) {
	const { drawn } = scenarios;
	const touches = require_stage.touchesOf(drawn);
	const planned = startsAsWritten(drawn);
	const rowOf = /* @__PURE__ */ new Map();
	const all = drawn.tasks.map((_, j) => j);
	let before;
	return batch.map((at) => {
		const set = sets[at];
		const model = scenarios.model(set);
		const capacity = scenarios.capacityOf(set);
		const starts = planned(model, capacity);
		const occurs = model.register.map((entry, e) => {
			const key = `${e}/${entry.lo}/${entry.hi}/${entry.fact}`;
			const known = rowOf.get(key);
			if (known !== void 0) return known;
			rowOf.set(key, variants.length);
			return variants.push(entry) - 1;
		});
		const reach = before === void 0 || before.capacity !== capacity || before.starts !== starts ? {
			changed: all,
			placed: new Uint8Array(all.length).fill(1),
			count: all.length,
			priced: all
		} : require_stage.reachOf(model, touches, difference(before.model, model), model.limitedPeople);
		before = {
			model,
			capacity,
			starts
		};
		return {
			at,
			model,
			occurs,
			planned: starts,
			...reach
		};
	});
}
/** Starts of the plan as written, for tasks that hold to them; nothing else looks at them. */
function startsAsWritten(drawn) {
	if (!drawn.tasks.some((task) => task.holdToPlan)) {
		const none = new Float64Array(drawn.tasks.length);
		return () => none;
	}
	const known = /* @__PURE__ */ new Map();
	return (model, capacity) => {
		const facts = model.register.map(({ fact, scale }) => fact === 1 ? scale : "-");
		const needed = model.tasks.map(({ chance }) => chance >= .5 ? 1 : 0);
		const key = `${capacity}|${facts.join()}|${needed.join("")}`;
		const starts = known.get(key) ?? require_engine.planAsWritten(model).starts;
		known.set(key, starts);
		return starts;
	};
}
function difference(a, b) {
	const entries = /* @__PURE__ */ new Set();
	const needed = /* @__PURE__ */ new Set();
	b.register.forEach((entry, e) => {
		const other = a.register[e];
		if (!(entry.lo === other.lo && entry.hi === other.hi && entry.fact === other.fact && entry.scale === other.scale)) entries.add(e);
	});
	b.tasks.forEach((task, j) => {
		if (task.chance !== a.tasks[j].chance) needed.add(j);
	});
	return {
		slots: /* @__PURE__ */ new Set(),
		entries,
		needed,
		people: false
	};
}
// ../../packages/core/src/explain/responses/gauges.ts
function newGauges(iterations) {
	const known = /* @__PURE__ */ new Map();
	return {
		n: iterations,
		*need(sets, part = .1) {
			const missing = [...new Set(sets)].filter((set) => !known.has(set));
			if (missing.length === 0) return;
			const answers = yield {
				sets: missing,
				iterations,
				part
			};
			missing.forEach((set, at) => {
				known.set(set, answers[at]);
			});
		},
		of(set) {
			const gauge = known.get(set);
			if (gauge === void 0) throw new RangeError(`Set ${set} was not asked for.`);
			return gauge;
		},
		get tried() {
			return known.size;
		}
	};
}
/** Gauges of these sets, in their order. Cost: see `runSets`; 80 bytes a set are kept. */
function gaugeSets({ scenarios, draw, targets }, { sets, iterations }, onProgress) {
	const select = require_engine.rankSelector(iterations);
	return runSets(scenarios, {
		...draw,
		iterations
	}, sets, (outcome) => gaugeOf(outcome, scenarios.drawn, targets, select), onProgress);
}
/** Does work that asks, on this thread. */
function answered(work, gauging, onProgress) {
	const progress = progressOfAsks(onProgress);
	let step = work.next();
	while (step.done !== true) step = work.next(gaugeSets(gauging, step.value, progress(step.value)));
	onProgress?.(1e3, 1e3);
	return step.value;
}
/** Progress over asks of which nobody knows how many there will be: each takes its part of what is still ahead. */
function progressOfAsks(onProgress) {
	let ahead = 1e3;
	return ({ part }) => {
		if (onProgress === void 0) return void 0;
		const from = 1e3 - ahead;
		const share = ahead * part;
		ahead -= share;
		return (done, total) => onProgress(from + share * done / Math.max(1, total), 1e3);
	};
}
// ../../packages/core/src/explain/responses/switches.ts
/**
* The responses of a plan, adopted or not. Those of a group entry one of whose responses would raise its slot are
* left as they stand: not every combination of them is a correct plan.
*/
function responseSwitches(plan) {
	const notes = [];
	return {
		list: [...plan.risks, ...plan.assumptions].flatMap((entry) => {
			if (entry.id.includes(":")) return [];
			const raising = entry.responses.filter((response) => require_raisesSlot.raisesSlot({
				...entry,
				responses: [{
					...response,
					adopted: true
				}]
			}));
			if (raising.length > 0) {
				const ids = raising.map(({ id }) => id).join(", ");
				notes.push(`The responses of ${entry.id} stay as they are: ${ids} would raise its chance in group ${entry.group}.`);
				return [];
			}
			return entry.responses.map((response) => ({
				kind: "response",
				id: response.id,
				name: response.action,
				cost: meanCost(response.cost),
				response,
				entry
			}));
		}).sort(byId),
		notes
	};
}
/** Optional scope of which something has not begun yet, except what holds the promised finish itself. */
function scopeSwitches(plan) {
	const notes = [];
	return {
		list: plan.purpose.scopeIn.flatMap((item) => {
			const open = plan.tasks.filter((task) => task.scope === item.id && task.started === void 0 && task.finished === void 0);
			if (!item.optional || open.length === 0) return [];
			if (open.some((task) => task.id === plan.commitment.finishOf)) {
				notes.push(`${item.id} is optional but holds the finish that is promised, so it is not dropped.`);
				return [];
			}
			return [{
				kind: "scope",
				id: item.id,
				name: item.name,
				cost: 0,
				item
			}];
		}).sort(byId),
		notes
	};
}
/** What people `couldAdd`, where people are limited and some task that has not begun needs them. */
function capacitySwitches(plan) {
	const notes = [];
	return {
		list: plan.people.flatMap((person) => {
			const { couldAdd } = person;
			if (couldAdd === void 0) return [];
			if (!plan.respectCapacity) {
				notes.push(`More of ${person.id} buys nothing: the plan does not limit people (respectCapacity: false).`);
				return [];
			}
			const along = plan.tasks.some((task) => task.started === void 0 && task.people.some((one) => one.id === person.id && one.along));
			if (couldAdd.from !== void 0 && couldAdd.from > plan.start && along) notes.push(`More of ${person.id} counts from ${couldAdd.from}, but from the start where ${person.id} goes \`along\`.`);
			return [{
				kind: "capacity",
				id: person.id,
				name: person.name,
				cost: couldAdd.cost,
				person
			}];
		}).sort(byId),
		notes
	};
}
/** Everything that can be decided, in id order. */
function everySwitch(plan) {
	const kinds = [
		responseSwitches(plan),
		scopeSwitches(plan),
		capacitySwitches(plan)
	];
	return {
		list: kinds.flatMap(({ list }) => list).sort(byId),
		notes: kinds.flatMap(({ notes }) => notes)
	};
}
/** A switch by what it is and its id, for whoever has the plan and is to find it there. */
function nameOfSwitch({ kind, id }) {
	return `${kind} ${id}`;
}
/** The mean of a cost cut at zero, as it is drawn. */
function meanCost(estimate) {
	if (estimate === void 0) return 0;
	if (estimate.kind === "fixed") return Math.max(0, estimate.value);
	if (estimate.kind === "outcomes") return estimate.outcomes.reduce((sum, { value, chance }) => sum + Math.max(0, value) * chance, 0);
	if (require_engine.estimateQuantile(estimate, 1e-9) >= 0) return require_engine.estimateMean(estimate);
	let sum = 0;
	for (let k = 0; k < strata; k++) sum += Math.max(0, require_engine.estimateQuantile(estimate, (k + .5) / strata));
	return sum / strata;
}
var strata = 4096;
function byId(a, b) {
	return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
// ../../packages/core/src/explain/responses/scenarios.ts
/** What may be decided, by name and in the order of the sets' bits: what another thread needs to know of it (`gauger`). */
function switchNames({ switches }) {
	return switches.map(nameOfSwitch);
}
/** Cost: one compilation for each combination of added capacity asked for; for each set the register is made anew. */
function scenariosOf(plan, switches) {
	const bit = (i) => 1n << BigInt(i);
	const bits = new Map(switches.map(({ id }, i) => [id, bit(i)]));
	const isOn = (set, id) => (set & (bits.get(id) ?? 0n)) !== 0n;
	const maskOf = (kind) => switches.reduce((mask, one, i) => one.kind === kind ? mask | bit(i) : mask, 0n);
	const [responseMask, capacityMask] = [maskOf("response"), maskOf("capacity")];
	const stands = switches.reduce((set, one, i) => one.kind === "response" && one.response.adopted ? set | bit(i) : set, 0n);
	/** The register with the responses of a set adopted; responses that are no switches stay as they are. */
	const adopt = (set) => {
		const change = (entry) => entry.responses.length === 0 ? entry : {
			...entry,
			responses: entry.responses.map((response) => bits.has(response.id) ? {
				...response,
				adopted: isOn(set, response.id)
			} : response)
		};
		return {
			risks: plan.risks.map(change),
			assumptions: plan.assumptions.map(change)
		};
	};
	const bases = /* @__PURE__ */ new Map();
	/** Everything adopted, nothing dropped, this capacity added. */
	const baseOf = (capacity) => {
		const known = bases.get(capacity);
		if (known !== void 0) return known;
		const ids = new Set(switches.filter((_, i) => (capacity & bit(i)) !== 0n).map(({ id }) => id));
		const { people } = require_raisesSlot.addCapacity(plan, ids);
		const made = require_freeOfSlackPeople.freeOfSlackPeople(require_engine.compile({
			...plan,
			...adopt(responseMask),
			people
		}));
		bases.set(capacity, made);
		return made;
	};
	const drawn = baseOf(0n);
	const { tasks } = drawn.plan;
	const startDay = require_engine.dayNumber(plan.start);
	const payments = switches.flatMap((one) => {
		if (one.kind !== "capacity") return [];
		const { id, action, due } = require_raisesSlot.capacityPayment(one.person);
		const dueDay = due === void 0 ? 0 : Math.max(0, require_engine.dayNumber(due) - startDay);
		return [{
			of: one.id,
			payment: {
				id,
				name: action,
				dueDay,
				cost: require_engine.constant(one.cost)
			}
		}];
	});
	const taskIndex = new Map(tasks.map((task, j) => [task.id, j]));
	const drawIds = new Map(tasks.map((task) => [task.id, task.was ?? task.id]));
	const calendars = require_engine.compileCalendars(drawn.plan);
	const dropped = (set, j) => {
		const { scope, started, finished } = tasks[j];
		const begun = started !== void 0 || finished !== void 0;
		return scope !== void 0 && bits.has(scope) && isOn(set, scope) && !begun;
	};
	/** Tasks that some set changes otherwise than by an impact. */
	const switched = tasks.map(({ onlyIf, scope }) => onlyIf !== void 0 && bits.has(onlyIf) || scope !== void 0 && bits.has(scope));
	const model = (set) => {
		const base = baseOf(set & capacityMask);
		const register = require_engine.compileRegister({
			...drawn.plan,
			...adopt(set)
		}, taskIndex, drawIds, calendars, require_engine.slotList());
		const responses = base.responses.filter(({ id }) => !bits.has(id) || isOn(set, id));
		for (const { of, payment } of payments) if (isOn(set, of)) responses.push(payment);
		return {
			...base,
			register: register.entries,
			groups: register.groups,
			responses: responses.sort((a, b) => a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
			tasks: base.tasks.map((task, j) => {
				const impacts = register.impactsOn[j] ?? [];
				if (!switched[j]) return task.impacts.length === 0 ? task : {
					...task,
					impacts
				};
				const onlyIf = tasks[j]?.onlyIf;
				const chance = (dropped(set, j) || onlyIf !== void 0 && bits.has(onlyIf) && !isOn(set, onlyIf)) && task.progress === void 0 ? 0 : task.chance;
				return {
					...task,
					impacts,
					chance,
					mayBePoint: task.mayBePoint || dropped(set, j)
				};
			})
		};
	};
	return {
		switches,
		stands,
		drawn,
		frame: {
			...drawn,
			tasks: drawn.tasks.map((task, j) => switched[j] ? {
				...task,
				chance: 0,
				mayBePoint: true
			} : task)
		},
		model,
		capacityOf: (set) => set & capacityMask
	};
}
Object.defineProperty(exports, "answered", {
	enumerable: true,
	get: function() {
		return answered;
	}
});
Object.defineProperty(exports, "everySwitch", {
	enumerable: true,
	get: function() {
		return everySwitch;
	}
});
Object.defineProperty(exports, "gaugeSets", {
	enumerable: true,
	get: function() {
		return gaugeSets;
	}
});
Object.defineProperty(exports, "inNearOrder", {
	enumerable: true,
	get: function() {
		return inNearOrder;
	}
});
Object.defineProperty(exports, "meanBurden", {
	enumerable: true,
	get: function() {
		return meanBurden;
	}
});
Object.defineProperty(exports, "nameOfSwitch", {
	enumerable: true,
	get: function() {
		return nameOfSwitch;
	}
});
Object.defineProperty(exports, "newGauges", {
	enumerable: true,
	get: function() {
		return newGauges;
	}
});
Object.defineProperty(exports, "outlookOf", {
	enumerable: true,
	get: function() {
		return outlookOf;
	}
});
Object.defineProperty(exports, "progressOfAsks", {
	enumerable: true,
	get: function() {
		return progressOfAsks;
	}
});
Object.defineProperty(exports, "responseSwitches", {
	enumerable: true,
	get: function() {
		return responseSwitches;
	}
});
Object.defineProperty(exports, "scenariosOf", {
	enumerable: true,
	get: function() {
		return scenariosOf;
	}
});
Object.defineProperty(exports, "switchNames", {
	enumerable: true,
	get: function() {
		return switchNames;
	}
});

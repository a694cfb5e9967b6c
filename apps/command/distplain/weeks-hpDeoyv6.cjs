const require_engine = require("./engine-Bbth-FEh.cjs");
// ../../packages/core/src/explain/paths/lastWhole.ts
/**
* The latest start, at most `limit`, from which `d` working days span no non-working day of `whole`; at least `least`,
* from which they span none. Starts in working days before them. Each step goes before the first such day in the span.
*
* @param reached  Whether `limit` itself may be the start, or only what comes before it.
*/
function lastWhole(calendar, whole, limit, d, least, reached) {
	if (whole.everyDay) return limit;
	const { cum } = whole;
	for (let w = limit;;) {
		if (w <= least + 1e-9) return Math.max(w, least);
		const from = w < limit || reached ? require_engine.startMoment(calendar, w) + require_engine.tolerance : require_engine.finishMoment(calendar, w) - require_engine.tolerance;
		const first = Math.floor(from);
		const last = Math.min(Math.ceil(require_engine.finishMoment(calendar, w + d) - require_engine.tolerance), cum.length - 1);
		let day = first;
		while (day < last && cum[day + 1] > cum[day]) day += 1;
		if (day >= last) return w;
		w = Math.min(require_engine.workAt(calendar, day) - d, w - require_engine.tolerance);
	}
}
// ../../packages/core/src/explain/paths/peopleLimits.ts
function peopleLimits(placed) {
	const { model, block, sharers } = placed;
	const single = model.people.map((person, p) => oneAtATime(sharers[p] ?? [], person.capacity));
	const before = model.tasks.map((task) => task.holds.map((hold) => single[hold.person] === true ? new Int32Array(block.n) : void 0));
	return {
		look() {
			model.people.forEach((_, p) => {
				if (single[p] === true) lookAtPerson(placed, p, before);
			});
		},
		limit(j, latest, limit) {
			model.tasks[j].holds.forEach((hold, h) => {
				const previous = before[j]?.[h];
				if (previous === void 0) limitByLoad(placed, j, hold, latest, limit);
				else limitByOne(placed, hold.person, j, previous, latest, limit);
			});
		}
	};
}
/** Whether no two of the tasks fit beside each other. */
function oneAtATime(tasks, capacity) {
	const [least, next] = tasks.map(({ share }) => share).sort((a, b) => a - b);
	return least === void 0 || next === void 0 || least + next > capacity + 1e-9;
}
/** Puts the tasks of a person in the order of their starts, iteration by iteration. */
function lookAtPerson(placed, p, before) {
	const { model, block } = placed;
	const tasks = (placed.sharers[p] ?? []).map(({ task }) => task);
	const rows = tasks.map((task) => {
		const h = model.tasks[task]?.holds.findIndex((hold) => hold.person === p) ?? -1;
		return before[task]?.[h];
	});
	const order = new Int32Array(tasks.length);
	const starts = new Float64Array(tasks.length);
	for (let k = 0; k < block.n; k++) {
		let count = 0;
		for (let i = 0; i < tasks.length; i++) {
			const task = tasks[i];
			rows[i][k] = -1;
			if (block.duration[task][k] <= 1e-9) continue;
			const start = block.start[task][k];
			let at = count++;
			for (; at > 0 && starts[at - 1] > start; at--) {
				starts[at] = starts[at - 1];
				order[at] = order[at - 1];
			}
			starts[at] = start;
			order[at] = i;
		}
		for (let at = 1; at < count; at++) rows[order[at]][k] = tasks[order[at - 1]];
	}
}
/** The task before, and those under way: what has started may overlap, and is not held by another. */
function limitByOne({ model, block, sharers }, person, j, previous, latest, limit) {
	const starts = block.start[j];
	const started = (sharers[person] ?? []).filter(({ task }) => model.tasks[task]?.progress !== void 0);
	for (let k = 0; k < block.n; k++) {
		const moment = latest[k];
		if (moment === Number.POSITIVE_INFINITY) continue;
		const task = previous[k];
		if (task < 0) continue;
		limit(task, k, moment);
		for (const other of started) {
			const to = block.finish[other.task][k];
			if (other.task !== task && to <= starts[k] + 1e-9) limit(other.task, k, moment);
		}
	}
}
/** By what the person holds as task j starts. */
function limitByLoad({ model, block, sharers, position }, j, hold, latest, limit) {
	const starts = block.start[j];
	const durations = block.duration[j];
	const person = model.people[hold.person];
	const others = (sharers[hold.person] ?? []).filter((other) => other.task !== j);
	for (let k = 0; k < block.n; k++) {
		const moment = latest[k];
		if (moment === Number.POSITIVE_INFINITY || durations[k] <= 1e-9) continue;
		const s = starts[k];
		let load = hold.share;
		for (const other of others) {
			const from = block.start[other.task][k];
			if (block.finish[other.task][k] <= s + 1e-9 || from > s + 1e-9) continue;
			if (from < s - 1e-9 || other.position < position[j]) load += other.share;
		}
		if (!hold.along) {
			for (const { from, to, gone } of person.partial) if (from <= s + 1e-9 && to > s + 1e-9) load += gone;
		}
		for (const other of others) {
			if (load + other.share <= person.capacity + 1e-9) continue;
			if (block.finish[other.task][k] > s + 1e-9 || block.duration[other.task][k] <= 1e-9) continue;
			limit(other.task, k, moment);
		}
	}
}
// ../../packages/core/src/explain/paths/lateRows.ts
/**
* The backward pass: by task, the latest moment to which a bound on its start could come in each iteration before the
* plan's finish moved, links and the order of people's work unchanged. Infinite where nothing it does moves the finish.
*
* Each limit is a least upper bound: anything before it leaves the finish where it is. Partial absences that a later
* task would run into are not looked at.
*
* @param rows  By task, of the block's length: used again from block to block.
*
* Cost: about 15 ns a link and iteration; with limited people also the tasks of each person squared.
*/
function fillLateRows(placed, rows) {
	const { model, block, position } = placed;
	const people = model.limitedPeople ? peopleLimits(placed) : void 0;
	people?.look();
	const { n } = block;
	for (const row of rows) row.fill(Number.POSITIVE_INFINITY, 0, n);
	limitByFinish(placed, rows);
	const limits = {
		start: new Float64Array(n),
		finish: new Float64Array(n)
	};
	const moved = new Uint8Array(model.tasks.length).fill(1);
	for (let again = true, round = 0; again && round < 50; round++) {
		again = false;
		for (let o = model.order.length - 1; o >= 0; o--) {
			const j = model.order[o];
			const task = model.tasks[j];
			if (task.progress !== void 0 || moved[j] === 0) continue;
			moved[j] = 0;
			fillLimits(placed, task, j, rows[j], limits);
			for (const link of task.links) if (limitByLink(placed, link, rows, limits)) moved[link.from] = 1;
			people?.limit(j, limits.start, (i, k, moment) => {
				if (!tighten(placed, i, k, moment, true, rows[i])) return;
				moved[i] = 1;
				if (position[i] > o) again = true;
			});
		}
	}
}
function limitByFinish(placed, rows) {
	const { model, block } = placed;
	model.tasks.forEach((_, j) => {
		if (model.finishOf >= 0 && j !== model.finishOf) return;
		for (let k = 0; k < block.n; k++) {
			if (model.finishOf < 0 && block.needed[j]?.[k] === 0) continue;
			tighten(placed, j, k, block.planFinish[k], true, rows[j]);
		}
	});
}
/** Takes the limit of task i down to what lets its finish (or start) come at `moment` at the latest. */
function tighten({ model, block }, i, k, moment, ofFinish, row) {
	const { calendar } = model.tasks[i];
	const d = block.duration[i][k];
	let limit = moment;
	if (d > 1e-9) {
		if (ofFinish) limit = require_engine.startMoment(calendar, Math.max(0, require_engine.workAt(calendar, moment) - d));
		else if (!works$1(calendar, moment)) limit = require_engine.finishMoment(calendar, require_engine.workAt(calendar, moment));
	}
	if (!(limit < row[k] - 1e-9)) return false;
	row[k] = limit;
	return true;
}
function works$1(calendar, moment) {
	return require_engine.nextWork(calendar, moment) <= moment + require_engine.tolerance;
}
function fillLimits({ block }, task, j, late, { start, finish }) {
	const { calendar, unbroken, kind } = task;
	const durations = block.duration[j];
	const waits = block.wait[j];
	const needed = block.needed[j];
	for (let k = 0; k < block.n; k++) {
		const limit = late[k];
		start[k] = limit;
		finish[k] = limit;
		if (limit === Number.POSITIVE_INFINITY) continue;
		const d = durations[k];
		const skipped = needed?.[k] === 0;
		if (d > 1e-9) {
			let w = require_engine.workAt(calendar, limit);
			let reached = works$1(calendar, limit);
			if (unbroken !== void 0) {
				const at = block.start[j][k];
				const whole = lastWhole(calendar, unbroken, w, d, require_engine.workAt(calendar, at), reached);
				if (whole < w) {
					w = whole;
					reached = true;
					late[k] = require_engine.startMoment(calendar, w);
				}
			}
			start[k] = late[k];
			finish[k] = reached ? require_engine.startMoment(calendar, w + d) : require_engine.finishMoment(calendar, w + d);
		} else if (kind === "milestone-start" && !skipped && !works$1(calendar, limit)) {
			start[k] = require_engine.finishMoment(calendar, require_engine.workAt(calendar, limit));
			finish[k] = start[k];
		}
		const wait = skipped || waits === void 0 ? 0 : waits[k];
		if (wait > 1e-9) {
			start[k] = before(task.ownCalendar, start[k], wait);
			finish[k] = before(task.ownCalendar, finish[k], wait);
		}
	}
}
/** The latest moment from which `lag` working days lead to `moment` at the latest. */
function before(calendar, moment, lag) {
	if (calendar.everyDay) return moment - lag;
	const w = require_engine.workAt(calendar, moment) - lag;
	if (lag < 0 && !works$1(calendar, moment)) return require_engine.finishMoment(calendar, w);
	return require_engine.startMoment(calendar, w < 0 ? 0 : w);
}
/** Answers whether the predecessor's limit came down anywhere. */
function limitByLink(placed, link, rows, limits) {
	const { model, block } = placed;
	const i = link.from;
	if (model.tasks[i]?.progress?.finished === true) return false;
	const fromFinish = link.kind === "finish-to-start" || link.kind === "finish-to-finish";
	const of = link.kind === "finish-to-finish" || link.kind === "start-to-finish" ? limits.finish : limits.start;
	const draws = link.lag.slot < 0 ? void 0 : block.draws[link.lag.slot];
	const row = rows[i];
	let moved = false;
	for (let k = 0; k < block.n; k++) {
		let moment = of[k];
		if (moment === Number.POSITIVE_INFINITY) continue;
		if (!link.direct) {
			const lag = (draws === void 0 ? link.lag.value : draws[k]) * link.lagScale;
			if (Math.abs(lag) > 1e-9) moment = before(link.lagCalendar, moment, lag);
		}
		if (tighten(placed, i, k, moment, fromFinish, row)) moved = true;
	}
	return moved;
}
// ../../packages/core/src/explain/paths/placed.ts
/** Puts a block and its model together; the block may be filled again and again. */
function placedOf(model, block, planned) {
	const position = new Int32Array(model.tasks.length);
	const sharers = model.people.map(() => []);
	model.order.forEach((task, at) => {
		position[task] = at;
		const { holds, progress } = model.tasks[task];
		if (!model.limitedPeople || progress?.finished === true) return;
		for (const { person, share } of holds) sharers[person]?.push({
			task,
			share,
			position: at
		});
	});
	return {
		model,
		block,
		planned,
		position,
		sharers
	};
}
// ../../packages/core/src/explain/paths/slackOf.ts
/**
* Working days of its own calendar by which task j could slip in iteration k before the plan's finish moved. At least
* 0; infinite where it never would, and for a finished task.
*
* @param late  The task's row of `fillLateRows`.
*/
function slackOf({ model, block }, j, k, late) {
	const task = model.tasks[j];
	const limit = late[k];
	if (task === void 0 || task.progress?.finished === true || limit === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
	const now = require_engine.workAt(task.calendar, block.start[j][k]);
	const slack = require_engine.workAt(task.calendar, Math.max(0, limit)) - now;
	return slack > 1e-9 ? slack : 0;
}
// ../../packages/core/src/explain/people/assignments.ts
/**
* By person, in the model's order: the tasks that ask for a share, in id order, whether or not capacity is respected.
* Milestones need nobody.
*/
function assignmentsOf(model) {
	const byId = new Map(model.plan.tasks.map((task) => [task.id, task]));
	return model.people.map((person) => model.tasks.flatMap((task, at) => {
		const source = byId.get(task.id);
		const named = source?.people.find(({ id }) => id === person.id);
		if (named === void 0 || named.share <= 0 || source?.milestone !== false) return [];
		return [{
			at,
			task,
			share: named.share,
			along: named.along
		}];
	}));
}
// ../../packages/core/src/explain/people/loadAsWritten.ts
/** Capacity present by week, in person-days: the person's own calendar, absences out, nothing before the start. */
function presentByWeek(person, own, weeks, count) {
	return Array.from({ length: count }, (_, w) => {
		const first = weeks.begins(w);
		let sum = 0;
		for (let day = Math.max(0, first); day < first + 7; day++) sum += presentOn(person, own, day);
		return sum;
	});
}
/**
* What is asked beyond the whole capacity (`over`), and within it while the person is away (`away`), moment by moment:
* a busy Monday is not made good by an idle Friday. A task asks on the working days of its calendar only.
*
* @param own  The person's calendar, full absences left out.
*/
function loadBeyond(person, own, spans, weeks, count) {
	const over = new Float64Array(count);
	const away = new Float64Array(count);
	const edges = /* @__PURE__ */ new Set();
	for (const { start, finish } of spans) {
		if (finish - start <= 1e-9) continue;
		edges.add(start).add(finish);
		for (let day = Math.ceil(start); day < finish; day++) edges.add(day);
	}
	const moments = [...edges].sort((a, b) => a - b);
	moments.forEach((from, i) => {
		const to = moments[i + 1];
		if (to === void 0 || to - from <= 1e-9) return;
		const middle = (from + to) / 2;
		const day = Math.floor(middle);
		let asked = 0;
		for (const { start, finish, calendar, share } of spans) if (start < middle && middle < finish && works(calendar, day)) asked += share;
		const w = weeks.of(middle);
		if (asked <= 0 || w >= count) return;
		const beyond = asked - person.capacity;
		const missing = Math.min(asked, person.capacity) - presentOn(person, own, day);
		if (beyond > 1e-9) over[w] = over[w] + beyond * (to - from);
		if (missing > 1e-9) away[w] = away[w] + missing * (to - from);
	});
	return {
		over,
		away
	};
}
/** Capacity present on a day. */
function presentOn(person, own, day) {
	if (!works(own, day)) return 0;
	const gone = person.partial.find(({ from, to }) => from <= day && day < to)?.gone ?? 0;
	return Math.max(0, person.capacity - gone);
}
function works({ everyDay, cum }, day) {
	return everyDay || cum[day + 1] > cum[day];
}
// ../../packages/core/src/explain/people/weeks.ts
/** @param startDay  Day number of the plan's start. */
function weeksFrom(startDay) {
	const ahead = require_engine.weekdayOf(startDay);
	return {
		begins: (w) => 7 * w - ahead,
		of: (t) => Math.floor((t + ahead + require_engine.tolerance) / 7),
		monday: (w) => require_engine.isoDate(startDay + 7 * w - ahead)
	};
}
Object.defineProperty(exports, "assignmentsOf", {
	enumerable: true,
	get: function() {
		return assignmentsOf;
	}
});
Object.defineProperty(exports, "fillLateRows", {
	enumerable: true,
	get: function() {
		return fillLateRows;
	}
});
Object.defineProperty(exports, "loadBeyond", {
	enumerable: true,
	get: function() {
		return loadBeyond;
	}
});
Object.defineProperty(exports, "placedOf", {
	enumerable: true,
	get: function() {
		return placedOf;
	}
});
Object.defineProperty(exports, "presentByWeek", {
	enumerable: true,
	get: function() {
		return presentByWeek;
	}
});
Object.defineProperty(exports, "slackOf", {
	enumerable: true,
	get: function() {
		return slackOf;
	}
});
Object.defineProperty(exports, "weeksFrom", {
	enumerable: true,
	get: function() {
		return weeksFrom;
	}
});
Object.defineProperty(exports, "works", {
	enumerable: true,
	get: function() {
		return works;
	}
});

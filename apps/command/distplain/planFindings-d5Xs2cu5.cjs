const require_engine = require("./engine-Bbth-FEh.cjs");
const require_program = require("./program.cjs");
const require_checkRules = require("./checkRules-CJV1ay2n.cjs");
const require_weeks = require("./weeks-hpDeoyv6.cjs");
const require_twiceCounted = require("./twiceCounted-DwzZkMU7.cjs");
const require_approvalsState = require("./approvalsState-Bxts4Wl7.cjs");
// ../../packages/core/src/findings/network/lateTasks.ts
/** Progress left out. */
function withoutProgress(plan) {
	const { statusDate: _, ...rest } = plan;
	return {
		...rest,
		tasks: plan.tasks.map(({ started: _s, finished: _f, remaining: _r, spent: _p, ...task }) => task),
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
/** Milestones left out; nothing is due without a status date. */
function lateTasks(plan) {
	const nothing = {
		due: 0,
		finished: 0,
		late: []
	};
	if (plan.statusDate === void 0) return nothing;
	const model = require_engine.compile(withoutProgress(plan));
	const first = require_engine.planAsWritten(model);
	if (first.beyond >= 0) return nothing;
	const evening = require_engine.dayNumber(plan.statusDate) - model.startDay + 1;
	const byId = new Map(model.tasks.map((task, at) => [task.id, at]));
	const result = {
		due: 0,
		finished: 0,
		late: []
	};
	plan.tasks.forEach((task, t) => {
		const at = byId.get(task.id) ?? 0;
		const planned = first.block.finish[at]?.[0] ?? 0;
		if (task.milestone !== false || first.block.needed[at]?.[0] === 0 || planned > evening + 1e-9) return;
		result.due++;
		if (task.finished !== void 0) result.finished++;
		const { calendar } = model.tasks[at];
		const until = task.finished === void 0 ? evening : require_engine.dayNumber(task.finished) - model.startDay + 1;
		const days = require_engine.workAt(calendar, until) - require_engine.workAt(calendar, planned);
		if (task.finished === void 0 || days > 1e-9) result.late.push({
			task,
			path: `tasks[${t}]`,
			days: Math.max(0, days)
		});
	});
	return result;
}
// ../../packages/core/src/findings/network/written.ts
/** The plan as written with the float of each task; or the task at which it runs past what calendars cover. */
function writtenPlan(plan) {
	const model = require_engine.compile(plan);
	const asWritten = require_engine.planAsWritten(model);
	if (asWritten.beyond >= 0) return {
		model,
		beyond: asWritten.beyond
	};
	const placed = require_weeks.placedOf(model, asWritten.block, void 0);
	const late = model.tasks.map(() => /* @__PURE__ */ new Float64Array(1));
	require_weeks.fillLateRows(placed, late);
	const { block } = asWritten;
	const one = (row) => row?.[0] ?? 0;
	const tasks = model.tasks.map((task, at) => {
		const needed = block.needed[at]?.[0] !== 0;
		const open = needed && task.progress?.finished !== true;
		return [task.id, {
			at,
			start: one(block.start[at]),
			finish: one(block.finish[at]),
			duration: one(block.duration[at]),
			needed,
			driving: open && block.moves[at]?.[0] === 1,
			float: require_weeks.slackOf(placed, at, 0, late[at])
		}];
	});
	return {
		model,
		asWritten,
		tasks: new Map(tasks)
	};
}
// ../../packages/core/src/findings/checkContext.ts
/** What checks look at, from the plan and what is handed in. */
function checkContext(plan, { today, forecast }) {
	const written = writtenPlan(plan);
	const { statusDate } = plan;
	return {
		plan,
		now: today === void 0 || statusDate !== void 0 && statusDate > today ? statusDate : today,
		today,
		forecast,
		written: "beyond" in written ? void 0 : written,
		beyond: "beyond" in written ? {
			model: written.model,
			at: written.beyond
		} : void 0,
		late: lateTasks(plan),
		work: plan.tasks.map((task, t) => ({
			task,
			path: `tasks[${t}]`
		})).filter(({ task }) => task.milestone === false && task.finished === void 0)
	};
}
// ../../packages/core/src/findings/words.ts
/** `a, b and c`. */
function joined(words, last = "and") {
	const [end] = words.slice(-1);
	return words.length < 2 ? end ?? "" : `${words.slice(0, -1).join(", ")} ${last} ${end}`;
}
/** `1 working day`, `2.5 working days`. */
function daysText(days) {
	const rounded = Math.round(days * 10) / 10;
	return `${rounded} working ${rounded === 1 ? "day" : "days"}`;
}
/** A share as `12 %`, rounded once, as everywhere; never `0 %` or `100 %` for what is not. */
function percentText(share) {
	const whole = Math.round(share * 100);
	return `${whole === 0 && share > 0 || whole === 100 && share < 1 ? oneDigit(share) : whole} %`;
}
function oneDigit(share) {
	return Math.round(share * 1e3) / 10;
}
/** The first few names and how many more: `A, B, C and 4 more`. */
function fewNames(names, most = 4) {
	return names.length <= most + 1 ? joined(names) : `${names.slice(0, most).join(", ")} and ${names.length - most} more`;
}
/** Whole money with the plan's currency, `EUR 640,000`. */
function moneyText(value, currency) {
	return `${currency} ${String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, ",")}`;
}
/** A share of the futures of one run; of a finite number, so none of them is said as that and not as never. */
function futuresText(share, iterations) {
	return share > 0 ? `in ${percentText(share)} of the futures` : `in none of ${iterations === 1 ? "1 future" : `${iterations} futures`}`;
}
// ../../packages/core/src/findings/checks/dates.ts
/** Dates that hold tasks, dates that have passed, and progress that is not recorded. */
var checkDates = (context) => [
	...heldByDate(context),
	...passedDates(context),
	...progressFound(context),
	...context.late.late.map(({ task, path, days }) => ({
		code: "missed-task",
		path,
		ids: [task.id],
		says: task.finished === void 0 ? `${task.name} should be finished and is not.` : `${task.name} finished ${daysText(days)} later than the plan without progress says.`
	}))
];
/** Whether a date holds it that nothing in the plan gives a reason for. */
function isHeldByDate({ notBefore, holdToPlan, started, note }) {
	return (notBefore !== void 0 || holdToPlan) && started === void 0 && note === void 0;
}
function heldByDate({ work }) {
	return work.filter(({ task }) => isHeldByDate(task)).map(({ task, path }) => ({
		code: "hard-date",
		path,
		ids: [task.id],
		says: task.notBefore === void 0 ? `${task.name} never starts before its start as written.` : `${task.name} may not start before ${task.notBefore}.`
	}));
}
function passedDates({ plan, now }) {
	if (now === void 0) return [];
	const { finishBy } = plan.commitment;
	const open = plan.tasks.some(({ finished }) => finished === void 0);
	return [...plan.tasks.flatMap((task, t) => task.finished !== void 0 || task.target === void 0 || task.target >= now ? [] : [{
		code: "date-past",
		path: `tasks[${t}].target`,
		ids: [task.id],
		says: `The target of ${task.name}, ${task.target}, has passed and it is not finished.`
	}]), ...finishBy !== void 0 && finishBy < now && open ? [{
		code: "date-past",
		path: "commitment.finishBy",
		ids: [],
		says: `The date asked for, ${finishBy}, has passed and the plan is not finished.`
	}] : []];
}
function progressFound({ plan, today }) {
	const { statusDate, start } = plan;
	const age = today === void 0 || statusDate === void 0 ? 0 : require_engine.dayNumber(today) - require_engine.dayNumber(statusDate);
	return [
		...statusDate === void 0 && today !== void 0 && start < today ? [{
			code: "status-missing",
			path: "start",
			ids: [],
			says: `The plan began on ${start} and says of no day how far it is.`
		}] : [],
		...age > require_checkRules.thresholds.staleDays && plan.tasks.some(({ finished }) => finished === void 0) ? [{
			code: "status-stale",
			path: "statusDate",
			ids: [],
			says: `Progress was last recorded on ${statusDate}, ${age} days ago.`
		}] : [],
		...plan.tasks.flatMap((task, t) => task.started === void 0 || task.finished !== void 0 || task.remaining !== void 0 ? [] : [{
			code: "remaining-missing",
			path: `tasks[${t}]`,
			ids: [task.id],
			says: `${task.name} is under way and has no \`remaining\`.`
		}])
	];
}
// ../../packages/core/src/findings/network/links.ts
/** Every link of the plan, in the order of the document. */
function linksOf(plan) {
	return plan.tasks.flatMap((task, t) => task.after.map((link, l) => ({
		link,
		task,
		path: `tasks[${t}].after[${l}]`,
		lag: require_engine.asWrittenValue(link.lag)
	})));
}
/** By task id: the links that go out from it. */
function successorsOf(plan) {
	const result = new Map(plan.tasks.map(({ id }) => [id, []]));
	for (const task of plan.tasks) for (const link of task.after) result.get(link.task)?.push({
		link,
		task
	});
	return result;
}
/** Everything that comes after a task, itself left out. */
function downstreamOf(from, successors) {
	const seen = /* @__PURE__ */ new Set();
	const waiting = [from];
	for (let id = waiting.pop(); id !== void 0; id = waiting.pop()) for (const { task } of successors.get(id) ?? []) if (!seen.has(task.id)) {
		seen.add(task.id);
		waiting.push(task.id);
	}
	return seen;
}
// ../../packages/core/src/findings/network/openEnds.ts
/**
* Where a plan may begin: at its milestones, or at its only task without a predecessor. Where it may end: at the task
* whose finish is promised and whatever comes after it; else at its milestones, at the only task without a successor,
* or, where no milestone closes it, at the last to finish.
*/
function openEnds({ plan, work, written }) {
	const successors = successorsOf(plan);
	const first = plan.tasks.filter(({ after }) => after.length === 0);
	const last = plan.tasks.filter(({ id }) => successors.get(id)?.length === 0);
	const { finishOf } = plan.commitment;
	const closing = finishOf === void 0 ? void 0 : downstreamOf(finishOf, successors).add(finishOf);
	const latest = last.some(({ milestone }) => milestone !== false) ? void 0 : latestOf(last, (id) => written?.tasks.get(id)?.finish ?? 0);
	const mayEnd = (task) => closing !== void 0 ? closing.has(task.id) : last.length === 1 || task === latest;
	return {
		starts: work.filter(({ task }) => first.length > 1 && task.after.length === 0 && task.started === void 0),
		ends: work.filter(({ task }) => successors.get(task.id)?.length === 0 && !mayEnd(task))
	};
}
function latestOf(tasks, finish) {
	let found;
	for (const task of tasks) if (found === void 0 || finish(task.id) > finish(found.id)) found = task;
	return found;
}
// ../../packages/core/src/findings/network/resources.ts
/**
* Whether work of a day or more takes nobody's time and no money: neither people, nor one who is responsible, nor a
* cost, nor a `note` that says whose it is.
*
* @param duration  As written, working days.
*/
function takesNothing(task, duration) {
	return duration >= 1 && task.people.length === 0 && task.responsible.length === 0 && task.cost === void 0 && task.costPerDay === void 0 && task.note === void 0;
}
// ../../packages/core/src/findings/network/shock.ts
/** Placements of a task that are tried at most: with a thousand tasks, two hundred of those that set the finish. */
var MOST = 2e5;
/**
* Unfinished work that sets the finish as written, in the order of the document: all of it, or in a large plan the
* longest.
*/
function drivingWork({ work, written }) {
	const driving = work.flatMap((each) => {
		const at = written?.tasks.get(each.task.id);
		return at?.driving === true && at.duration > 1e-9 ? [{
			...each,
			at
		}] : [];
	});
	const most = Math.max(20, Math.floor(MOST / (written?.model.tasks.length ?? 1)));
	if (driving.length <= most) return driving;
	const longest = [...driving].sort((a, b) => b.at.duration - a.at.duration || (a.task.id < b.task.id ? -1 : 1));
	const kept = new Set(longest.slice(0, most));
	return driving.filter((each) => kept.has(each));
}
/**
* Working days of the plan's calendar by which the finish as written moves when one task takes `days` working days more
* (or less: it never takes less than none). Undefined where the plan would then run past what calendars cover.
*/
function shockedBy({ model, asWritten }) {
	const block = require_engine.newBlock(model, 1, require_engine.undrawnKernel(model, 1));
	return (at, days) => {
		require_engine.fillAsWritten(model, block);
		require_engine.realise(model, block);
		const row = block.duration[at];
		row[0] = Math.max(0, row[0] + days);
		const capacity = model.limitedPeople ? require_engine.newCapacity(model) : void 0;
		if (require_engine.place(model, block, asWritten.starts, capacity) >= 0) return void 0;
		require_engine.markFinish(model, block);
		return require_engine.workAt(model.planCalendar, block.planFinish[0]) - asWritten.workingDays;
	};
}
// ../../packages/core/src/findings/network/timeLeft.ts
/** The path that is left against the date asked for; undefined without one, and once everything is done. */
function timeLeft({ model, asWritten }) {
	if (model.finishByDay === void 0) return void 0;
	const from = require_engine.workAt(model.planCalendar, model.statusDay === void 0 ? 0 : Math.max(0, model.statusDay + 1));
	const path = asWritten.workingDays - from;
	if (path <= 0) return void 0;
	return {
		path,
		float: require_engine.workAt(model.planCalendar, Math.max(0, model.finishByDay + 1)) - asWritten.workingDays
	};
}
/** Critical path length index: (path + float) / path. Defense Acquisition University, dau.edu. */
function pathLengthIndex({ path, float }) {
	return (path + float) / path;
}
// ../../packages/core/src/findings/accept.ts
/**
* Marks what was accepted: findings of that code that are about nothing but the ids it names, or all of that code where
* it names none. Nothing else about any finding changes. Answers what the acceptances that found nothing say themselves.
*/
function acceptFindings({ acceptedFindings }, findings) {
	return acceptedFindings.flatMap(({ finding, ids, who, date, why }, a) => {
		const named = ids === void 0 ? void 0 : new Set(ids);
		const matched = findings.filter((each) => each.code === finding && (named === void 0 || each.ids.length > 0 && each.ids.every((id) => named.has(id))));
		for (const each of matched) each.accepted ??= {
			who,
			date,
			why
		};
		const found = new Set(matched.flatMap((each) => each.ids));
		const left = (ids ?? []).filter((id) => !found.has(id));
		if (matched.length > 0 && left.length === 0) return [];
		const says = `No finding \`${finding}\`${left.length === 0 ? "" : ` about ${left.join(", ")}`} is there to accept.`;
		return [{
			code: "acceptance-unused",
			path: `acceptedFindings[${a}]`,
			ids: [],
			says,
			...adviceOn(finding)
		}];
	});
}
/** Of a code there is not: the one that was meant. */
function adviceOn(code) {
	const codes = require_checkRules.checkRules.map((rule) => rule.code);
	if (codes.some((known) => known === code)) return {};
	const meant = require_program.nearest$1(code, codes);
	return meant === void 0 ? {} : { advice: `There is no such finding; did you mean \`${meant}\`?` };
}
// ../../packages/core/src/findings/checks/commitment.ts
/** What is asked for against the plan as written and, where a forecast is handed in, against its chances. */
var checkCommitment = (context) => {
	const { finishBy, budget } = context.plan.commitment;
	return [
		...finishBy === void 0 && budget === void 0 ? [{
			code: "no-commitment",
			path: "",
			ids: [],
			says: "The plan asks for no date and for no sum."
		}] : [],
		...context.plan.commitment.confidenceByDefault === true ? [{
			code: "confidence-by-default",
			path: "commitment",
			ids: [],
			says: "The commitment does not say how sure to be; 8 times in 10 is taken."
		}] : [],
		...writtenFound(context),
		...chancesFound(context),
		...worthSimulating(context)
	];
};
/** What has passed is told by that alone. */
function isPast(date, now) {
	return date !== void 0 && now !== void 0 && date < now;
}
function writtenFound({ plan, written, now }) {
	if (written === void 0) return [];
	const { model, asWritten } = written;
	const { finishBy } = plan.commitment;
	return [...finishBy !== void 0 && model.finishByDay !== void 0 && asWritten.finishDay > model.finishByDay ? [{
		code: "finish-by-before-plan",
		path: "commitment.finishBy",
		ids: [],
		says: `The date asked for is ${finishBy}; as written the plan finishes ${asWritten.finishDay - model.finishByDay} calendar days later.`
	}] : [], ...plan.tasks.flatMap((task, t) => {
		const at = written.tasks.get(task.id);
		const day = at === void 0 ? void 0 : model.tasks[at.at]?.targetDay;
		if (at === void 0 || day === void 0 || !at.needed || task.finished !== void 0) return [];
		if (task.id === plan.commitment.finishOf && task.target === finishBy || isPast(task.target, now)) return [];
		const late = Math.ceil(at.finish - require_engine.tolerance) - 1 - day;
		if (late <= 0) return [];
		const says = `The target of ${task.name} is ${task.target}; as written it comes ${late} calendar days later.`;
		return [{
			code: "target-before-plan",
			path: `tasks[${t}].target`,
			ids: [task.id],
			says
		}];
	})];
}
function chancesFound({ plan, forecast, written, now }) {
	if (forecast === void 0) return [];
	const { chance, tasks } = forecast;
	const { finishBy, budget } = plan.commitment;
	const low = (value) => value !== void 0 && value < .5;
	const targets = new Map(tasks.map(({ id, target }) => [id, target?.chance]));
	return [
		...low(chance.finishBy) ? [{
			code: "date-unlikely",
			path: "commitment.finishBy",
			ids: [],
			says: `${finishBy} is made ${futuresText(chance.finishBy, forecast.iterations)}.`
		}] : [],
		...low(chance.budget) ? [{
			code: "budget-unlikely",
			path: "commitment.budget",
			ids: [],
			says: `The budget of ${moneyText(budget ?? 0, plan.currency)} is kept ${futuresText(chance.budget, forecast.iterations)}.`
		}] : [],
		...plan.tasks.flatMap((task, t) => {
			const made = targets.get(task.id);
			const asked = task.id === plan.commitment.finishOf && task.target === finishBy;
			const needed = written?.tasks.get(task.id)?.needed !== false;
			if (!low(made) || asked || isPast(task.target, now) || !needed || task.finished !== void 0) return [];
			const says = `The target of ${task.name}, ${task.target}, is made ${futuresText(made, forecast.iterations)}.`;
			return [{
				code: "target-unlikely",
				path: `tasks[${t}].target`,
				ids: [task.id],
				says
			}];
		})
	];
}
/** When a range and a few named cases would serve better. */
function worthSimulating({ plan, forecast }) {
	const count = plan.tasks.filter(({ milestone }) => milestone === false).length;
	const gains = (forecast?.drivers ?? []).filter(({ days }) => days > 0);
	const sum = gains.reduce((total, { days }) => total + days, 0);
	const top = [...gains].sort((a, b) => b.days - a.days)[0];
	return [...count < require_checkRules.thresholds.fewTasks ? [{
		code: "too-few-tasks",
		path: "tasks",
		ids: [],
		says: `The plan has ${count} ${count === 1 ? "task" : "tasks"}, milestones left out.`
	}] : [], ...top !== void 0 && gains.length > 1 && sum >= 1 && top.days > require_checkRules.thresholds.dominating * sum ? [{
		code: "one-unknown",
		path: "",
		ids: [top.id],
		says: `"${top.name}" adds ${percentText(top.days / sum)} of the days that everything uncertain adds.`
	}] : []];
}
// ../../packages/core/src/findings/network/zeroShare.ts
/** The chance that a draw of an estimate lies below zero, to 1e-6: what would be cut at zero. */
function zeroShare(estimate) {
	if (estimate.kind === "fixed") return estimate.value < 0 ? 1 : 0;
	if (estimate.kind === "outcomes") return estimate.outcomes.reduce((sum, { value, chance }) => sum + (value < 0 ? chance : 0), 0);
	if (estimate.low >= 0 && estimate.bounds === "extremes") return 0;
	const law = require_engine.lawOf(estimate);
	let low = 1e-9;
	let high = 1 - 1e-9;
	if (law.quantile(low) >= 0) return 0;
	if (law.quantile(high) < 0) return 1;
	while (high - low > 1e-6) {
		const middle = (low + high) / 2;
		if (law.quantile(middle) < 0) low = middle;
		else high = middle;
	}
	return high;
}
// ../../packages/core/src/findings/checks/estimates.ts
/** Ranges, what they rest on, who gave them, and whether their detail fits how near the work is. */
var checkEstimates = (context) => [
	...rangesFound(context),
	...symmetryFound(context),
	...narrowFound(context),
	...detailFound(context),
	...saidBy(context),
	...cutFound(context)
];
function estimateOf({ remaining, duration, effort }) {
	return remaining ?? duration ?? effort;
}
/** Unfinished work that takes time. */
function timed({ work }) {
	return work.filter(({ task }) => {
		const estimate = estimateOf(task);
		return estimate !== void 0 && !(estimate.kind === "fixed" && estimate.value === 0);
	});
}
function rangesFound(context) {
	const all = timed(context);
	const certain = all.filter(({ task }) => estimateOf(task)?.kind === "fixed");
	if (all.length > 0 && certain.length === all.length) return [{
		code: "no-ranges",
		path: "tasks",
		ids: [],
		says: `None of the ${all.length === 1 ? "durations" : `${all.length} durations`} has a range.`
	}];
	return certain.filter(({ task }) => task.basis === void 0).map(({ task, path }) => ({
		code: "range-missing",
		path,
		ids: [task.id],
		says: `${task.name} takes one length of time in every future.`
	}));
}
function ranges(context) {
	return timed(context).flatMap((each) => {
		const estimate = estimateOf(each.task);
		if (estimate?.kind !== "range" || estimate.likely === void 0) return [];
		return [{
			...each,
			range: {
				...estimate,
				likely: estimate.likely
			}
		}];
	});
}
function symmetryFound(context) {
	const all = ranges(context);
	const even = all.filter(({ range: { low, likely, high } }) => {
		const width = high - low;
		return Math.abs(high - likely - (likely - low)) <= 1e-6 * width;
	});
	if (all.length < 5 || even.length / all.length < .8) return [];
	const says = `${even.length} of ${all.length} ranges reach as far up as down.`;
	return [{
		code: "ranges-symmetric",
		path: "tasks",
		ids: even.map(({ task }) => task.id),
		says
	}];
}
function narrowFound(context) {
	return ranges(context).filter(({ range }) => {
		return (range.unit === "weeks" ? range.likely * 5 : range.likely) >= 5 && range.high - range.low < require_checkRules.thresholds.narrow * range.likely;
	}).map(({ task, path, range }) => ({
		code: "range-narrow",
		path,
		ids: [task.id],
		says: `The range of ${task.name} is ${percentText((range.high - range.low) / range.likely)} of its likely value.`
	}));
}
function detailFound(context) {
	const { written, now } = context;
	if (written === void 0) return [];
	const { startDay } = written.model;
	const from = Math.max(0, now === void 0 ? 0 : require_engine.dayNumber(now) - startDay);
	return timed(context).flatMap(({ task, path }) => {
		const at = written.tasks.get(task.id);
		if (at === void 0 || !at.needed || task.started !== void 0) return [];
		const ahead = Math.round(at.start - from);
		const ids = [task.id];
		const when = ahead <= 0 ? "now" : `in ${ahead} days`;
		if (task.detail === "outline" && ahead <= require_checkRules.thresholds.nearDays) return [{
			code: "near-outline",
			path,
			ids,
			says: `${task.name} begins ${when}, as written, and is an outline.`
		}];
		if (task.detail === "firm" && ahead > require_checkRules.thresholds.farDays && at.duration < require_checkRules.thresholds.fineDays) return [{
			code: "far-detail",
			path,
			ids,
			says: `${task.name} begins ${when} and is planned to the day.`
		}];
		return [];
	});
}
function estimatorsOf({ estimatedBy, opinions = [] }) {
	return [...estimatedBy, ...opinions.flatMap(({ by }) => by ?? [])];
}
function saidBy(context) {
	const all = timed(context);
	const people = new Set(all.flatMap(({ task }) => estimatorsOf(task)));
	const said = all.filter(({ task }) => estimatorsOf(task).length > 0);
	const [only] = people;
	return [...all.flatMap(({ task, path }) => [...task.basis === void 0 ? [{
		code: "basis-missing",
		path,
		ids: [task.id],
		says: `The estimate of ${task.name} does not say what it rests on.`
	}] : [], ...estimatorsOf(task).length === 0 ? [{
		code: "estimator-missing",
		path,
		ids: [task.id],
		says: `Nobody is named for the estimate of ${task.name}.`
	}] : []]), ...people.size === 1 && said.length >= require_checkRules.thresholds.fewTasks && said.length === all.length ? [{
		code: "one-estimator",
		path: "tasks",
		ids: said.map(({ task }) => task.id),
		says: `All ${said.length} estimates are by ${only}.`
	}] : []];
}
function cutFound({ plan }) {
	const parts = [
		"duration",
		"effort",
		"remaining",
		"cost",
		"costPerDay"
	];
	return plan.tasks.flatMap((task, t) => task.finished !== void 0 ? [] : parts.flatMap((part) => {
		const estimate = task[part];
		const share = estimate === void 0 ? 0 : zeroShare(estimate);
		if (share <= require_checkRules.thresholds.cutAtZero) return [];
		const says = `${percentText(Math.round(share * 1e3) / 1e3)} of the draws for the ${words[part]} of ${task.name} fall below zero.`;
		return [{
			code: "cut-at-zero",
			path: `tasks[${t}].${part}`,
			ids: [task.id],
			says
		}];
	}));
}
var words = {
	duration: "duration",
	effort: "effort",
	remaining: "remainder",
	cost: "cost",
	costPerDay: "daily cost"
};
// ../../packages/core/src/findings/checks/history.ts
/** Least finished tasks with a range before their record says anything, and the share that should lie within. */
var LEAST = 5;
var SHARE = .6;
/** Whether finished tasks took what their ranges said: as working days of their own calendars. */
var checkHistory = ({ plan, written }) => {
	if (written === void 0) return [];
	const record = plan.tasks.flatMap((task) => {
		const estimate = task.duration ?? task.effort;
		const at = written.tasks.get(task.id);
		const model = at === void 0 ? void 0 : written.model.tasks[at.at];
		if (task.finished === void 0 || estimate?.kind !== "range" || model?.progress === void 0) return [];
		const scale = model.durationScale;
		const took = model.progress.held;
		const within = took >= estimate.low * scale && took <= estimate.high * scale;
		return [{
			id: task.id,
			within,
			ratio: took / (require_engine.asWrittenValue(estimate) * scale)
		}];
	});
	const within = record.filter((each) => each.within).length;
	if (record.length < LEAST || within / record.length >= SHARE) return [];
	const ratio = record.reduce((sum, each) => sum + each.ratio, 0) / record.length;
	const mean = Number.isFinite(ratio) ? ` On average they took ${ratio.toFixed(2)} times what was likely.` : "";
	return [{
		code: "ranges-miss-history",
		path: "tasks",
		ids: record.filter((each) => !each.within).map(({ id }) => id),
		says: `Of ${record.length} finished tasks, ${within} took a time within their range.${mean}`
	}];
};
// ../../packages/core/src/findings/checks/indices.ts
/** The two indices of the trade, where they fall below its threshold. */
var checkIndices = ({ written, late: { due, finished } }) => {
	const left = written === void 0 ? void 0 : timeLeft(written);
	const path = left === void 0 ? 1 : pathLengthIndex(left);
	const done = due === 0 ? 1 : finished / due;
	const low = (index) => index < require_checkRules.thresholds.index - 1e-9;
	return [...low(path) ? [{
		code: "cpli-low",
		path: "commitment.finishBy",
		ids: [],
		says: `The critical path length index is ${path.toFixed(2)}.`
	}] : [], ...low(done) ? [{
		code: "bei-low",
		path: "statusDate",
		ids: [],
		says: `${finished} of ${due} tasks due are finished: an index of ${done.toFixed(2)}.`
	}] : []];
};
// ../../packages/core/src/findings/network/redundantLinks.ts
/**
* Links from a finish to a start without a lag that other such links imply: a before c, where a is before b and b
* before c. Bit sets of what comes before each task, so a plan of n tasks and m links costs n m / 32 steps.
*/
function redundantLinks(plan) {
	const index = new Map(plan.tasks.map(({ id }, at) => [id, at]));
	const plain = linksOf(plan).filter(({ link }) => link.link === "finish-to-start" && isNone(link.lag));
	const before = plan.tasks.map(() => []);
	for (const each of plain) before[index.get(each.task.id) ?? 0]?.push(each);
	const ahead = aheadOf(before, (id) => index.get(id) ?? 0);
	return plain.flatMap((redundant) => {
		const from = index.get(redundant.link.task) ?? 0;
		const over = before[index.get(redundant.task.id) ?? 0]?.find(({ link }) => link.task !== redundant.link.task && has(ahead[index.get(link.task) ?? 0], from));
		return over === void 0 ? [] : [{
			redundant,
			over: over.link.task
		}];
	});
}
function isNone(lag) {
	return lag.kind === "fixed" && lag.value === 0;
}
function has(set, at) {
	return set !== void 0 && (set[at >>> 5] >>> (at & 31) & 1) === 1;
}
/** By task, the set of tasks ahead of it; an explicit stack, for chains of thousands. */
function aheadOf(before, at) {
	const words = before.length + 31 >>> 5;
	const sets = before.map(() => void 0);
	for (let first = 0; first < before.length; first++) {
		const stack = [first];
		while (stack.length > 0) {
			const j = stack.at(-1);
			const predecessors = (before[j] ?? []).map(({ link }) => at(link.task));
			const missing = sets[j] === void 0 ? predecessors.filter((i) => sets[i] === void 0) : [];
			if (missing.length > 0) {
				stack.push(...missing);
				continue;
			}
			stack.pop();
			if (sets[j] !== void 0) continue;
			const set = new Uint32Array(words);
			for (const i of predecessors) {
				set[i >>> 5] = set[i >>> 5] | 1 << (i & 31);
				sets[i]?.forEach((word, w) => {
					set[w] = set[w] | word;
				});
			}
			sets[j] = set;
		}
	}
	return sets;
}
// ../../packages/core/src/findings/checks/links.ts
/** How tasks hang together: open ends, free ends, leads, lags, the kinds of links, links too many. */
var checkLinks = (context) => {
	const ends = openEnds(context);
	const open = (code, says) => (each) => ({
		code,
		path: each.path,
		ids: [each.task.id],
		says: `${each.task.name} ${says}.`
	});
	return [
		...ends.starts.map(open("open-start", "waits for nothing")),
		...ends.ends.map(open("open-end", "is awaited by nothing")),
		...dangling(context),
		...lagsFound(context),
		...mixFound(context),
		...redundantLinks(context.plan).map(({ redundant, over }) => ({
			code: "redundant-link",
			path: redundant.path,
			ids: [redundant.task.id, redundant.link.task],
			says: `${redundant.task.name} waits for \`${redundant.link.task}\` already by way of \`${over}\`.`
		}))
	];
};
/** A start that no link holds although others hold the finish; a finish that holds nothing although the start does. */
function dangling({ plan, work }) {
	const successors = successorsOf(plan);
	return work.flatMap(({ task, path }) => {
		const after = successors.get(task.id) ?? [];
		const startFree = task.after.length > 0 && task.after.every(({ link }) => link.endsWith("to-finish"));
		const finishFree = after.length > 0 && after.every(({ link }) => link.link.startsWith("start-to"));
		const at = {
			code: "dangling",
			path,
			ids: [task.id]
		};
		return [...startFree && task.started === void 0 ? [{
			...at,
			says: `No link holds the start of ${task.name}, only its finish.`
		}] : [], ...finishFree ? [{
			...at,
			says: `Nothing waits for the finish of ${task.name}, only for its start.`
		}] : []];
	});
}
function lagsFound({ plan }) {
	return linksOf(plan).flatMap(({ link, task, path, lag }) => {
		const open = task.started === void 0 && task.finished === void 0;
		if (lag === 0 || !open) return [];
		const ids = [task.id, link.task];
		const amount = link.lag.unit === "weeks" ? `${Math.abs(lag)} weeks` : daysText(Math.abs(lag)).replace("working ", "");
		if (lag < 0) return [{
			code: "lead",
			path,
			ids,
			says: `${task.name} overlaps \`${link.task}\` by ${amount}.`
		}];
		if (task.note !== void 0) return [];
		return [{
			code: "lag",
			path,
			ids,
			says: `${task.name} comes ${amount} after \`${link.task}\`.`
		}];
	});
}
function mixFound({ plan }) {
	const links = linksOf(plan);
	const plain = links.filter(({ link }) => link.link === "finish-to-start").length;
	if (links.length === 0 || plain / links.length >= require_checkRules.thresholds.finishToStart) return [];
	return [{
		code: "link-mix",
		path: "tasks",
		ids: [],
		says: `${plain} of ${links.length} links (${percentText(plain / links.length)}) run from a finish to a start.`
	}];
}
// ../../packages/core/src/findings/checks/money.ts
/** What a task or overhead is called that holds money or time for nothing in particular. */
var PADDING = /\b(contingenc(y|ies)|(schedule|time) (margin|reserve)|padding)\b|^(time )?(buffer|reserve|margin)$|\bbuffer$|^buffer (time|days|weeks)\b/i;
/** Budget, funds, contingency and who may sign for the sum. */
var checkMoney = (context) => [
	...budgetFound(context),
	...paddingFound(context.plan),
	...heldFound(context.plan),
	...fundsFound(context.plan),
	...limitFound(context)
];
var money = (value, { currency }) => moneyText(value, currency);
function budgetFound({ plan, written }) {
	const { budget } = plan.commitment;
	const cost = written?.asWritten.cost;
	if (budget === void 0 || cost === void 0 || cost <= budget + 1e-6) return [];
	return [{
		code: "over-budget",
		path: "commitment.budget",
		ids: [],
		says: `As written the plan costs ${money(cost, plan)}; the budget is ${money(budget, plan)}.`
	}];
}
function paddingFound({ tasks, overheads }) {
	const found = (list, named) => named.flatMap(({ id, name }, at) => PADDING.test(name) ? [{
		code: "contingency-in-task",
		path: `${list}[${at}]`,
		ids: [id],
		says: `"${name}" holds contingency.`
	}] : []);
	return [...found("tasks", tasks), ...found("overheads", overheads)];
}
function heldFound({ commitment: { finishBy, budget, holder } }) {
	if (holder !== void 0 || finishBy === void 0 && budget === void 0) return [];
	return [{
		code: "holder-missing",
		path: "commitment",
		ids: [],
		says: "The commitment names nobody who holds the contingency."
	}];
}
function fundsFound(plan) {
	const { budget, reserve = 0, funds } = plan.commitment;
	if (budget === void 0) return [];
	if (funds.length === 0) return [{
		code: "funds-missing",
		path: "commitment",
		ids: [],
		says: "The budget has no dates on which it may be spent."
	}];
	const released = funds.reduce((sum, { amount }) => sum + amount, 0);
	const sums = `${money(released, plan)} is released; the budget is ${money(budget, plan)}`;
	if (released < budget - .005) return [{
		code: "funds-below-budget",
		path: "commitment.funds",
		ids: [],
		says: `${sums}.`
	}];
	if (released <= budget + .005 || reserve === 0) return [];
	return [{
		code: "reserve-in-funds",
		path: "commitment.funds",
		ids: [],
		says: `${sums} and the reserve ${money(reserve, plan)}.`
	}];
}
/** Approvers without a limit say nothing about what they may sign. */
function limitFound({ plan, forecast, written }) {
	const sum = forecast?.committed.cost ?? plan.commitment.budget ?? written?.asWritten.cost;
	const limits = new Map(plan.stakeholders.map(({ id, approvesUpTo }) => [id, approvesUpTo]));
	const asked = plan.approvals.flatMap(({ who }) => {
		const limit = limits.get(who);
		return limit === void 0 ? [] : [{
			who,
			limit
		}];
	});
	if (sum === void 0 || asked.length === 0 || asked.some(({ limit }) => limit >= sum - 1e-6)) return [];
	const highest = Math.max(...asked.map(({ limit }) => limit));
	const says = `The sum ${forecast === void 0 ? "asked for" : "at the level committed to"} is ${money(sum, plan)}; the highest limit of an approver is ${money(highest, plan)}.`;
	return [{
		code: "approver-limit",
		path: "approvals",
		ids: [...new Set(asked.map(({ who }) => who))],
		says
	}];
}
// ../../packages/core/src/findings/checks/path.ts
/** Float, long tasks, and whether the finish responds to the work that should set it. */
var checkPath = (context) => {
	const { written, work } = context;
	if (written === void 0) return [];
	const placed = work.flatMap((each) => {
		const at = written.tasks.get(each.task.id);
		return at?.needed === true ? [{
			...each,
			at
		}] : [];
	});
	return [
		...floatsFound(placed),
		...longFound(placed),
		...negativeFound(context, placed),
		...asideFound(context, placed),
		...shocksFound(context)
	];
};
function floatsFound(placed) {
	return placed.filter(({ at }) => at.float > require_checkRules.thresholds.days + 1e-9 && at.float < Number.POSITIVE_INFINITY).map(({ task, path, at }) => ({
		code: "high-float",
		path,
		ids: [task.id],
		says: `${task.name} could slip ${daysText(at.float)} before the finish moved.`
	}));
}
/** Outlines are left out: rolling wave planning is what they are for. */
function longFound(placed) {
	return placed.filter(({ task, at }) => at.duration > require_checkRules.thresholds.days + 1e-9 && task.detail !== "outline").map(({ task, path, at }) => ({
		code: "long-task",
		path,
		ids: [task.id],
		says: `${task.name} takes ${daysText(at.duration)} as written.`
	}));
}
function negativeFound({ written }, placed) {
	const left = written === void 0 ? void 0 : timeLeft(written);
	if (left === void 0 || left.float >= -1e-9) return [];
	const short = placed.filter(({ at }) => at.float + left.float < -require_engine.tolerance);
	if (short.length === 0) return [];
	const names = fewNames(short.map(({ task }) => task.name));
	return [{
		code: "negative-float",
		path: "commitment.finishBy",
		ids: short.map(({ task }) => task.id),
		says: `For the date asked for, ${daysText(-left.float)} are missing on ${short.length === 1 ? "one task" : `${short.length} tasks`}: ${names}.`
	}];
}
/** Work with something after it, none of which leads to what is promised: a strand that was left hanging. */
function asideFound({ plan }, placed) {
	const { finishOf } = plan.commitment;
	if (finishOf === void 0) return [];
	const successors = successorsOf(plan);
	const later = downstreamOf(finishOf, successors);
	return placed.filter(({ task, at }) => at.float === Number.POSITIVE_INFINITY && !later.has(task.id) && successors.get(task.id)?.length !== 0).map(({ task, path }) => ({
		code: "no-effect-on-finish",
		path,
		ids: [task.id],
		says: `Nothing ${task.name} does moves the finish of \`${finishOf}\`.`
	}));
}
/** Zero, then lengthen each task that sets the finish. */
function shocksFound(context) {
	const { written } = context;
	const driving = drivingWork(context);
	if (written === void 0 || driving.length === 0) return [];
	const all = [...written.tasks.values()].filter((task) => task.driving && task.duration > 1e-9);
	const shock = shockedBy(written);
	const tied = (at) => all.some((other) => other !== at && other.start < at.finish && at.start < other.finish);
	return driving.flatMap(({ task, path, at }) => {
		const found = {
			code: "path-does-not-respond",
			path,
			ids: [task.id]
		};
		const longer = shock(at.at, require_checkRules.thresholds.slip);
		if (longer !== void 0 && longer < require_checkRules.thresholds.slip / 2) {
			const says = `${task.name} sets the finish, but taking ${daysText(require_checkRules.thresholds.slip)} longer moves it by only ${daysText(longer)}.`;
			return [{
				...found,
				says
			}];
		}
		if (tied(at) || at.duration < 1) return [];
		const without = shock(at.at, -at.duration);
		if (without === void 0 || without < -1e-9) return [];
		return [{
			...found,
			says: `${task.name} sets the finish, but without its ${daysText(at.duration)} it stays.`
		}];
	});
}
// ../../packages/core/src/findings/checks/people.ts
/** People in the plan as written: too much asked, away in the middle, everything on one. */
var checkPeople = (context) => {
	const { written } = context;
	if (written === void 0 || context.plan.people.length === 0) return [];
	return [
		...overFound(context, written),
		...awayFound(context, written),
		...oneFound(context, written)
	];
};
function overFound({ plan }, written) {
	const { model } = written;
	const weeks = require_weeks.weeksFrom(model.startDay);
	const tasks = require_weeks.assignmentsOf(model);
	return model.people.flatMap((person, p) => {
		const spans = (tasks[p] ?? []).flatMap(({ task, share }) => {
			const at = written.tasks.get(task.id);
			if (at === void 0 || !at.needed || task.progress?.finished === true) return [];
			return [{
				start: at.start,
				finish: at.finish,
				calendar: task.calendar,
				share
			}];
		});
		if (spans.length === 0) return [];
		const count = weeks.of(Math.max(...spans.map(({ finish }) => finish))) + 1;
		const { over } = require_weeks.loadBeyond(person, model.planCalendar, spans, weeks, count);
		const sum = over.reduce((total, days) => total + days, 0);
		if (sum <= 1e-9) return [];
		const first = over.findIndex((days) => days > require_engine.tolerance);
		const at = plan.people.findIndex(({ id }) => id === person.id);
		const says = `${person.name} is asked for ${Math.round(sum * 10) / 10} person-days more than there are, first in the week of ${weeks.monday(first)}.`;
		return [{
			code: "over-allocated",
			path: `people[${at}]`,
			ids: [person.id],
			says
		}];
	});
}
function awayFound({ plan, work }, written) {
	const people = new Map(plan.people.map((person) => [person.id, person]));
	return work.flatMap(({ task, path }) => {
		const at = written.tasks.get(task.id);
		const model = at === void 0 ? void 0 : written.model.tasks[at.at];
		if (at === void 0 || model === void 0 || !at.needed || at.duration <= 1e-9) return [];
		return task.people.filter(({ along }) => !along).flatMap(({ id }) => {
			const gone = (people.get(id)?.away ?? []).find(({ from, to, share }) => {
				const begins = require_engine.dayNumber(from) - written.model.startDay;
				const ends = require_engine.dayNumber(to) - written.model.startDay + 1;
				return share === 1 && begins > at.start + 1e-9 && ends < at.finish - 1e-9;
			});
			if (gone === void 0) return [];
			const says = `${people.get(id)?.name} is away from ${gone.from} to ${gone.to}, in the middle of ${task.name}.`;
			return [{
				code: "away-in-task",
				path,
				ids: [task.id, id],
				says,
				...at.driving ? { severity: "warning" } : {}
			}];
		});
	});
}
function oneFound({ work, plan }, written) {
	const driving = work.filter(({ task }) => written.tasks.get(task.id)?.driving === true);
	const [first, ...rest] = driving;
	if (first === void 0 || driving.length < 3) return [];
	return first.task.people.filter(({ id, along }) => !along && rest.every(({ task }) => task.people.some((other) => other.id === id && !other.along))).flatMap(({ id }) => {
		const at = plan.people.findIndex((person) => person.id === id);
		const person = plan.people[at];
		if (person === void 0 || person.capacity >= 2) return [];
		const days = driving.reduce((sum, { task }) => sum + (written.tasks.get(task.id)?.duration ?? 0), 0);
		const says = `${person.name} is needed in all ${driving.length} tasks that set the finish, ${daysText(days)} in all.`;
		return [{
			code: "path-on-one-person",
			path: `people[${at}]`,
			ids: [id],
			says
		}];
	});
}
// ../../packages/core/src/quality/qualityBars.ts
/**
* Where each quality bar of a plan stands: measured, whether it holds; until then, the exact chance that what is
* expected clears it. Draws nothing: it hangs on no task and moves no date.
*/
function qualityBars({ purpose }) {
	return purpose.quality.map((bar) => {
		const { id, statement, atLeast, atMost, unit, measured, on, owner } = bar;
		const chance = measured === void 0 ? chanceOf(bar) : void 0;
		return {
			id,
			statement,
			...atLeast === void 0 ? {} : { atLeast },
			...atMost === void 0 ? {} : { atMost },
			...unit === void 0 ? {} : { unit },
			...owner === void 0 ? {} : { owner },
			...measured === void 0 ? {} : {
				measured,
				holds: clears(bar, measured)
			},
			...on === void 0 ? {} : { on },
			...chance === void 0 ? {} : { chance }
		};
	});
}
function clears({ atLeast, atMost }, value) {
	return (atLeast === void 0 || value >= atLeast) && (atMost === void 0 || value <= atMost);
}
function chanceOf({ expected, atLeast, atMost }) {
	if (expected === void 0) return void 0;
	if (atMost !== void 0) return require_engine.estimateChance(expected, atMost);
	if (atLeast === void 0) return void 0;
	if (expected.kind === "fixed") return expected.value >= atLeast ? 1 : 0;
	if (expected.kind === "outcomes") return expected.outcomes.reduce((sum, { value, chance }) => value >= atLeast ? sum + chance : sum, 0);
	return 1 - require_engine.estimateChance(expected, atLeast);
}
// ../../packages/core/src/findings/checks/purpose.ts
/** Problem, goals, scope, constraints: whether work and benefits can be traced to what they are for. */
var checkPurpose = (context) => {
	const { problem, goals, scopeIn, scopeOut, constraints, quality } = context.plan.purpose;
	const written = [
		goals,
		scopeIn,
		scopeOut,
		constraints,
		quality
	].some((list) => list.length > 0);
	if (problem === void 0 && !written) return [{
		code: "purpose-missing",
		path: "",
		ids: [],
		says: "The plan has no purpose written down."
	}];
	const whole = {
		path: "purpose",
		ids: []
	};
	return [
		...problem === void 0 ? [{
			...whole,
			code: "problem-missing",
			says: "The purpose states no problem."
		}] : [],
		...goals.length === 0 ? [{
			...whole,
			code: "goals-missing",
			says: "The purpose states no goal."
		}] : [],
		...goalsFound(context),
		...scopeFound(context),
		...scopeOut.length === 0 ? [{
			...whole,
			code: "scope-out-empty",
			says: "Nothing is said to be out of scope."
		}] : [],
		...constraints.length === 0 ? [{
			...whole,
			code: "constraints-empty",
			says: "No constraint is listed."
		}] : [],
		...qualityFound(context)
	];
};
function goalsFound({ plan }) {
	const served = new Set(plan.benefits.map(({ goal }) => goal));
	return plan.purpose.goals.flatMap((goal, g) => {
		const at = {
			path: `purpose.goals[${g}]`,
			ids: [goal.id]
		};
		const missing = [
			...goal.measure === void 0 ? ["measure"] : [],
			...goal.target === void 0 ? ["target"] : [],
			...goal.by === void 0 ? ["date"] : [],
			...goal.owner === void 0 ? ["owner"] : []
		];
		return [...missing.length === 0 ? [] : [{
			...at,
			code: "goal-incomplete",
			says: `The goal "${goal.statement}" has no ${joined(missing, "or")}.`
		}], ...plan.benefits.length === 0 || served.has(goal.id) ? [] : [{
			...at,
			code: "goal-unserved",
			says: `No benefit names the goal "${goal.statement}".`
		}]];
	});
}
function qualityFound({ plan }) {
	return qualityBars(plan).flatMap((bar, q) => {
		const at = {
			path: `purpose.quality[${q}]`,
			ids: [bar.id]
		};
		const wanted = `${bar.atLeast === void 0 ? "at most" : "at least"} ${bar.atLeast ?? bar.atMost}${bar.unit === void 0 ? "" : ` ${bar.unit}`}`;
		if (bar.measured !== void 0) {
			if (bar.holds) return [];
			const says = `"${bar.statement}": ${bar.measured} was measured, ${wanted} is the bar.`;
			return [{
				...at,
				code: "quality-missed",
				says
			}];
		}
		if (bar.chance === void 0) return [{
			...at,
			code: "quality-unknown",
			says: `"${bar.statement}" has nothing expected and nothing measured.`
		}];
		if (bar.chance >= .5) return [];
		const says = `"${bar.statement}": what is expected clears the bar of ${wanted} with a chance of ${Math.round(bar.chance * 100)} %.`;
		return [{
			...at,
			code: "quality-missed",
			severity: "warning",
			says
		}];
	});
}
function scopeFound({ plan }) {
	const { scopeIn } = plan.purpose;
	if (scopeIn.length === 0) return [{
		code: "scope-missing",
		path: "purpose",
		ids: [],
		says: "The purpose lists nothing in scope."
	}];
	const named = new Set(plan.tasks.map(({ scope }) => scope));
	return [...plan.tasks.flatMap((task, t) => task.milestone !== false || task.scope !== void 0 ? [] : [{
		code: "task-without-scope",
		path: `tasks[${t}]`,
		ids: [task.id],
		says: `${task.name} names no item in scope.`
	}]), ...scopeIn.flatMap((item, s) => named.has(item.id) ? [] : [{
		code: "scope-without-task",
		path: `purpose.scope.in[${s}]`,
		ids: [item.id],
		says: `No task delivers ${item.name}.`
	}])];
}
/** Benefits: who owns them, from where they are measured, and whether they are weighed against the cost. */
var checkBenefitRegister = ({ plan }) => {
	const { benefits, appraisal } = plan;
	if (benefits.length === 0) return [{
		code: "benefits-missing",
		path: "",
		ids: [],
		says: "The plan lists no benefit."
	}];
	const valued = benefits.filter(({ amount, worth }) => amount !== void 0 || worth !== void 0);
	return [...benefits.flatMap((benefit, b) => {
		const missing = missingOf(benefit);
		if (missing.length === 0) return [];
		const light = !missing.includes("owner") && !missing.includes("figures");
		return [{
			code: "benefit-incomplete",
			path: `benefits[${b}]`,
			ids: [benefit.id],
			says: `${benefit.name} has no ${joined(missing, "or")}.`,
			...light ? { severity: "note" } : {}
		}];
	}), ...appraisal === void 0 && valued.length > 0 ? [{
		code: "appraisal-missing",
		path: "benefits",
		ids: valued.map(({ id }) => id),
		says: `The plan has no appraisal, although ${valued.length} of its benefits have a worth in money.`
	}] : []];
};
function missingOf({ owner, amount, quantity, baseline, starts }) {
	return [
		...owner === void 0 ? ["owner"] : [],
		...amount === void 0 && quantity === void 0 ? ["figures"] : [],
		...baseline === void 0 ? ["baseline"] : [],
		...starts === void 0 ? ["start"] : []
	];
}
// ../../packages/core/src/findings/network/entries.ts
/** Assumptions, then risks, each with its path. */
function entriesOf(plan) {
	return [...plan.assumptions.map((entry, at) => ({
		entry,
		path: `assumptions[${at}]`
	})), ...plan.risks.map((entry, at) => ({
		entry,
		path: `risks[${at}]`
	}))];
}
// ../../packages/core/src/findings/network/sharedWords.ts
/** Words that say nothing about a cause. */
var EMPTY = new Set("with from that this have will they their them than then after before over under more less late delay delays risk pace".split(" "));
function wordsOf(text) {
	const words = text.toLowerCase().match(/\p{L}{4,}/gu) ?? [];
	return new Set(words.map((word) => word.replace(/s$/, "")).filter((word) => !EMPTY.has(word)));
}
/** Whether two texts are about the same thing as far as words tell: two telling words in common, or all of the shorter. */
function sharedWords(a, b) {
	const [x, y] = [wordsOf(a), wordsOf(b)];
	const shared = [...x].filter((word) => y.has(word)).length;
	return shared >= 2 || shared > 0 && shared === Math.min(x.size, y.size) && Math.min(x.size, y.size) > 0 && x.size + y.size <= 3;
}
// ../../packages/core/src/findings/checks/register.ts
/** Owners, dates, chances, effects, causes counted twice. */
var checkRegister = (context) => {
	const { plan } = context;
	if (plan.risks.length + plan.assumptions.length === 0) return [{
		code: "register-empty",
		path: "",
		ids: [],
		says: "The plan has no risks and no assumptions."
	}];
	return [
		...entriesOf(plan).flatMap((each) => [
			...entryFound(each),
			...effectFound(context, each),
			...dueFound(context, each)
		]),
		...twiceFound(plan),
		...threatsFound(plan.risks),
		...repairFound(context)
	];
};
function twiceFound(plan) {
	const paths = new Map(entriesOf(plan).map(({ entry, path }) => [entry.id, path]));
	return require_twiceCounted.twiceCounted(plan).map(({ entry, task, part, says }) => ({
		code: part === "remaining" ? "occurred-in-remaining" : "occurred-in-spent",
		path: paths.get(entry.id) ?? "",
		ids: [entry.id, task.id],
		says
	}));
}
function entryFound({ entry, path }) {
	if (entry.status !== "open") return [];
	const at = {
		path,
		ids: [entry.id]
	};
	const chance = entry.probability;
	const certain = (chance === 0 || chance === 1) && entry.onlyIf === void 0 && entry.note === void 0;
	return [...entry.owner === void 0 ? [{
		...at,
		code: "entry-without-owner",
		says: `Nobody owns "${entry.name}".`
	}] : [], ...certain ? [{
		...at,
		code: "certain-entry",
		says: `"${entry.name}" is open with a chance of ${chance}.`
	}] : []];
}
function effectFound({ plan }, { entry, path }) {
	if (entry.status !== "open" || entry.probability === 0) return [];
	const at = {
		path,
		ids: [entry.id]
	};
	const open = new Map(plan.tasks.map((task) => [task.id, task.finished === void 0]));
	if (!entry.impacts.some((impact) => impact.cost !== void 0 || impact.tasks.some((id) => open.get(id) === true))) {
		if (entry.note !== void 0) return [];
		const says = entry.impacts.length === 0 ? `"${entry.name}" has no impact.` : `"${entry.name}" touches finished tasks only, or none.`;
		return [{
			...at,
			code: "impact-nowhere",
			says
		}];
	}
	const signpost = entry.kind === "assumption" && entry.signpost === void 0;
	const named = entry.impacts.flatMap((impact) => impact.tasks);
	return [
		...entry.expires === void 0 && named.length > 0 && named.every((id) => open.get(id) === false) ? [{
			...at,
			code: "entry-outlived",
			says: `All that "${entry.name}" touches is finished, and it is still open without \`expires\`.`
		}] : [],
		...signpost ? [{
			...at,
			code: "signpost-missing",
			says: `Nothing would show in time that "${entry.name}" fails.`
		}] : [],
		...causeTwice(plan, {
			entry,
			path
		})
	];
}
/** The cause of a correlation, or the name of a task, in the words of an event that hits the same task. */
function causeTwice(plan, { entry, path }) {
	const hit = new Set(entry.impacts.flatMap(({ tasks }) => tasks));
	const said = [entry.name, entry.cause ?? ""];
	const found = [];
	for (const { between, cause } of plan.correlations) {
		const both = between.filter((name) => hit.has(name.replace(/^cost:/, "")));
		if (cause === void 0 || both.length === 0 || !said.some((text) => sharedWords(text, cause))) continue;
		const says = `"${entry.name}" is an event, and "${cause}" is already in the ranges of what it hits.`;
		found.push({
			code: "cause-twice",
			path,
			ids: [entry.id, ...both.map((id) => id.replace(/^cost:/, ""))],
			says
		});
	}
	for (const task of plan.tasks) {
		if (!hit.has(task.id) || !said.some((text) => text !== "" && text.toLowerCase() === task.name.toLowerCase())) continue;
		const says = `"${entry.name}" is an event, and a task of the same name is planned for it.`;
		found.push({
			code: "cause-twice",
			path,
			ids: [entry.id, task.id],
			says
		});
	}
	return found;
}
function dueFound({ now }, { entry, path }) {
	if (entry.status !== "open" || now === void 0) return [];
	const { reviewBy } = entry;
	return [...entry.expires !== void 0 && entry.expires < now ? [{
		code: "entry-expired",
		path: `${path}.expires`,
		ids: [entry.id],
		says: `"${entry.name}" could happen until ${entry.expires} and is still open.`
	}] : [], ...reviewBy !== void 0 && reviewBy < now ? [{
		code: "review-overdue",
		path: `${path}.reviewBy`,
		ids: [entry.id],
		says: `"${entry.name}" was to be looked at by ${reviewBy}.`
	}] : []];
}
function threatsFound(risks) {
	const open = risks.filter(({ status }) => status === "open");
	if (open.length < 5 || open.some(isOpportunity)) return [];
	return [{
		code: "only-threats",
		path: "risks",
		ids: [],
		says: `All ${open.length} open risks are threats.`
	}];
}
/** Whether any part of it takes days or money away. */
function isOpportunity({ impacts }) {
	const below = (estimate, limit) => estimate !== void 0 && require_engine.asWrittenValue(estimate) < limit;
	return impacts.some(({ delay, factor, cost }) => below(delay, 0) || below(factor, 1) || below(cost, 0));
}
function repairFound({ written }) {
	return (written?.model.warnings ?? []).map((says) => ({
		code: "correlations-repaired",
		path: "correlations",
		ids: [],
		says: says.replace(/ Lower the coefficients.*$/, "")
	}));
}
// ../../packages/core/src/findings/checks/responses.ts
/** What is done about risks and assumptions: whether it was thought of, decided, complete and in time. */
var checkResponses = (context) => entriesOf(context.plan).flatMap((each) => [...decisionFound(each), ...responsesFound(context, each)]);
function decisionFound({ entry, path }) {
	const { status, responses, impacts, probability, note, onlyIf } = entry;
	if (status !== "open" || probability === 0 || impacts.length === 0 || note !== void 0) return [];
	const at = {
		path,
		ids: [entry.id]
	};
	if (responses.length === 0) {
		if (entry.kind === "assumption" || onlyIf !== void 0 || isOpportunity(entry)) return [];
		return [{
			...at,
			code: "no-response",
			says: `No response to "${entry.name}" is written down.`
		}];
	}
	if (responses.some(({ adopted, note }) => adopted || note !== void 0)) return [];
	const says = `None of the ${responses.length === 1 ? "responses" : `${responses.length} responses`} to "${entry.name}" is adopted.`;
	return [{
		...at,
		code: "response-undecided",
		says
	}];
}
function responsesFound({ now }, { entry, path }) {
	if (entry.status === "closed") return [];
	return entry.responses.flatMap((response, r) => {
		const at = {
			path: `${path}.responses[${r}]`,
			ids: [response.id]
		};
		const missing = response.adopted ? [
			...response.owner === void 0 ? ["owner"] : [],
			...response.due === void 0 ? ["day"] : [],
			...response.cost === void 0 ? ["cost"] : []
		] : [];
		const late = response.due !== void 0 && now !== void 0 && response.due < now;
		return [...missing.length > 0 ? [{
			...at,
			code: "response-incomplete",
			says: `"${response.action}" is adopted and has no ${joined(missing, "or")}.`
		}] : [], ...late ? [{
			...at,
			code: "response-overdue",
			says: `"${response.action}" was due on ${response.due}${response.adopted ? "" : " and is not adopted"}.`
		}] : []];
	});
}
// ../../packages/core/src/findings/network/namedIn.ts
/** Every text that stands in the plan outside the list of people: what a person is named by is among them. */
function textsOutsidePeople(plan) {
	const found = /* @__PURE__ */ new Set();
	const { people: _, calendars: _c, ...rest } = plan;
	const waiting = [rest];
	while (waiting.length > 0) {
		const value = waiting.pop();
		if (typeof value === "string") found.add(value);
		else if (typeof value === "object" && value !== null) waiting.push(...Object.values(value));
	}
	return found;
}
// ../../packages/core/src/findings/checks/responsibility.ts
/** Who answers for each task, who does it, and who is named nowhere. */
var checkResponsibility = ({ plan, work, written }) => [
	...accountableFound(plan),
	...plan.people.length === 0 ? [{
		code: "no-people",
		path: "",
		ids: [],
		says: "The plan names nobody who does the work."
	}] : work.filter(({ task }) => takesNothing(task, written?.tasks.get(task.id)?.duration ?? 0)).map(({ task, path }) => ({
		code: "task-without-people",
		path,
		ids: [task.id],
		says: `${task.name} names nobody and costs nothing.`
	})),
	...ratesFound(plan),
	...unusedFound(plan)
];
/** Milestones take no work, so nobody has to answer for it. */
function accountableFound(plan) {
	const asked = plan.tasks.map((task, t) => ({
		task,
		path: `tasks[${t}]`
	})).filter(({ task }) => task.milestone === false && task.finished === void 0);
	if (asked.length === 0) return [];
	if (asked.every(({ task }) => task.accountable.length === 0)) return [{
		code: "nobody-accountable",
		path: "tasks",
		ids: [],
		says: "No task and no phase names anybody as accountable."
	}];
	return asked.flatMap(({ task, path }) => {
		const at = {
			path,
			ids: [task.id]
		};
		const named = [...new Set(task.accountable)];
		if (named.length === 1) return [];
		return named.length === 0 ? [{
			...at,
			code: "accountable-missing",
			says: `Nobody answers for ${task.name}.`
		}] : [{
			...at,
			code: "accountable-several",
			says: `${joined(named)} all answer for ${task.name}.`
		}];
	});
}
function ratesFound({ people, tasks }) {
	if (people.every(({ rate }) => rate === 0)) return [];
	const works = new Set(tasks.flatMap((task) => task.people.map(({ id }) => id)));
	return people.flatMap(({ id, name, rate, note }, p) => rate !== 0 || note !== void 0 || !works.has(id) ? [] : [{
		code: "rate-missing",
		path: `people[${p}]`,
		ids: [id],
		says: `${name} has no rate, others have.`
	}]);
}
function unusedFound(plan) {
	const named = textsOutsidePeople(plan);
	return plan.people.flatMap(({ id, name }, p) => named.has(id) ? [] : [{
		code: "person-unused",
		path: `people[${p}]`,
		ids: [id],
		says: `${name} is named nowhere in the plan.`
	}]);
}
// ../../packages/core/src/findings/checks/signOff.ts
/** Changes after an approval, and objections nobody answered. */
var checkSignOff = ({ plan, now }) => {
	const approved = plan.approvals.filter(({ decision }) => decision === "approve" || decision === "approve-subject-to").flatMap(({ date }) => date === void 0 ? [] : [date]).sort()[0];
	return [
		...plan.changes.flatMap((change, c) => {
			if (approved === void 0 || change.date !== void 0 && change.date < approved) return [];
			const missing = [...change.why === void 0 ? ["reason"] : [], ...change.approvedBy === void 0 ? ["name of who agreed to it"] : []];
			if (missing.length === 0) return [];
			const says = `The change "${change.what ?? ""}"${change.date === void 0 ? "" : ` of ${change.date}`}, after the first approval, has no ${joined(missing, "or")}.`;
			return [{
				code: "change-unexplained",
				path: `changes[${c}]`,
				ids: [],
				says
			}];
		}),
		...unlogged(plan),
		...plan.approvals.flatMap((approval, a) => now !== void 0 && require_approvalsState.hasLapsed(approval, now) ? [{
			code: "conditions-lapsed",
			path: `approvals[${a}]`,
			ids: [approval.who],
			says: `${approval.who} approved on a condition that was to be met by ${approval.conditionsBy}: "${approval.conditions}"`
		}] : []),
		...plan.objections.flatMap(({ id, state, text }, o) => state !== "open" ? [] : [{
			code: "objection-open",
			path: `objections[${o}]`,
			ids: [id],
			says: text === void 0 ? "An objection without a text is open." : `Open: "${text}"`
		}])
	];
};
/** A signature is of another version, and no entry since says why. An entry that names nobody is told by itself. */
function unlogged(plan) {
	const stale = plan.approvals.flatMap(({ who, decision, plan: signed }, a) => decision !== "pending" && decision !== "rework" && signed !== void 0 && signed !== plan.approvalSha256 ? [{
		who,
		a
	}] : []);
	if (stale.length === 0 || require_approvalsState.approvalsState(plan).unexplained !== "no-entry") return [];
	const says = `The plan differs from what ${joined(stale.map(({ who }) => who))} approved, and its change log has no entry since.`;
	const [first] = stale;
	return [{
		code: "change-unlogged",
		path: `approvals[${first?.a ?? 0}]`,
		ids: [...new Set(stale.map(({ who }) => who))],
		says
	}];
}
// ../../packages/core/src/findings/planFindings.ts
var checks = [
	checkPurpose,
	checkBenefitRegister,
	checkLinks,
	checkDates,
	checkPath,
	checkIndices,
	checkEstimates,
	checkHistory,
	checkRegister,
	checkResponses,
	checkResponsibility,
	checkPeople,
	checkMoney,
	checkCommitment,
	checkSignOff
];
var rules = new Map(require_checkRules.checkRules.map((rule, at) => [rule.code, {
	rule,
	at
}]));
var severities = [
	"error",
	"warning",
	"note"
];
/**
* What is to be said about a plan before anybody promises by it. Plain JSON; nothing here is an error of the document,
* and nothing is added up to a score. Errors first, then warnings, then notes; within those family by family, in the
* order of the table, then of the document. What was accepted keeps its place and says so.
*
* Cost  three placements of the plan as written, and two for each task that sets its finish.
*/
function planFindings(plan, options = {}) {
	return findingsOf(checkContext(plan, options));
}
/** The same, for who has the context already. */
function findingsOf(context) {
	const { plan } = context;
	const found = [...pastCalendar(context), ...checks.flatMap((check) => check(context))].map(findingOf);
	const unused = acceptFindings(plan, found).map(findingOf);
	return [...found, ...unused].map((finding, at) => ({
		finding,
		at
	})).sort((a, b) => order(a.finding) - order(b.finding) || a.at - b.at).map(({ finding }) => finding);
}
function order({ severity, code }) {
	return severities.indexOf(severity) * 1e6 + (rules.get(code)?.at ?? 0);
}
function findingOf({ code, path, ids, says, advice, severity }) {
	const { rule } = rules.get(code);
	return {
		code,
		severity: severity ?? rule.severity,
		path,
		ids: [...new Set(ids)],
		message: `${says} ${rule.why}`,
		advice: advice ?? rule.advice,
		source: rule.source
	};
}
function pastCalendar({ plan, beyond }) {
	if (beyond === void 0) return [];
	const { path, rule } = require_engine.beyondCalendar(beyond.model, beyond.at);
	const task = beyond.model.tasks[beyond.at];
	const t = plan.tasks.findIndex(({ id }) => id === task?.id);
	return [{
		code: "runs-past-calendar",
		path: t < 0 ? path : `tasks[${t}]`,
		ids: task === void 0 ? [] : [task.id],
		says: `${task?.name ?? "The plan"}: ${rule}`
	}];
}
Object.defineProperty(exports, "checkContext", {
	enumerable: true,
	get: function() {
		return checkContext;
	}
});
Object.defineProperty(exports, "drivingWork", {
	enumerable: true,
	get: function() {
		return drivingWork;
	}
});
Object.defineProperty(exports, "findingsOf", {
	enumerable: true,
	get: function() {
		return findingsOf;
	}
});
Object.defineProperty(exports, "isHeldByDate", {
	enumerable: true,
	get: function() {
		return isHeldByDate;
	}
});
Object.defineProperty(exports, "linksOf", {
	enumerable: true,
	get: function() {
		return linksOf;
	}
});
Object.defineProperty(exports, "openEnds", {
	enumerable: true,
	get: function() {
		return openEnds;
	}
});
Object.defineProperty(exports, "pathLengthIndex", {
	enumerable: true,
	get: function() {
		return pathLengthIndex;
	}
});
Object.defineProperty(exports, "planFindings", {
	enumerable: true,
	get: function() {
		return planFindings;
	}
});
Object.defineProperty(exports, "shockedBy", {
	enumerable: true,
	get: function() {
		return shockedBy;
	}
});
Object.defineProperty(exports, "takesNothing", {
	enumerable: true,
	get: function() {
		return takesNothing;
	}
});
Object.defineProperty(exports, "timeLeft", {
	enumerable: true,
	get: function() {
		return timeLeft;
	}
});

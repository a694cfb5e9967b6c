const require_version = require("./version-BsDMLdbb.cjs");
const require_drawOf = require("./drawOf-BStyrWxm.cjs");
const require_stage = require("./stage-kNi0qcSu.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_shapes = require("./shapes-8oDnecao.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_orderAverage = require("./orderAverage-rtyasGdT.cjs");
const require_variants = require("./variants-BloK5_oj.cjs");
const require_valuesOfPlans = require("./valuesOfPlans-BqwKAdJD.cjs");
const require_node = require("./node-6FCbc_om.cjs");
// ../../packages/core/src/explain/compare/align/matchIds.ts
/**
* Which items of an old plan are which of the new one: by id, and by `was` where one was renamed. Each is matched
* once; what has the same id and the same draws comes first.
*
* @returns old id to new item, for matched items
*/
function matchIds(older, newer) {
	const free = new Map(older.map((item) => [item.id, item]));
	const open = new Set(newer);
	const matched = /* @__PURE__ */ new Map();
	const drawId = (item) => item.was ?? item.id;
	const take = (find) => {
		for (const item of newer) {
			if (!open.has(item)) continue;
			const id = find(item);
			if (id === void 0 || !free.has(id)) continue;
			free.delete(id);
			open.delete(item);
			matched.set(id, item);
		}
	};
	const sameDraws = (of) => {
		for (const old of free.values()) if (drawId(old) === of) return old.id;
	};
	take((item) => {
		const old = free.get(item.id);
		return old !== void 0 && drawId(old) === drawId(item) ? old.id : void 0;
	});
	take((item) => item.was === void 0 ? item.id : void 0);
	take((item) => item.was !== void 0 && free.has(item.was) ? item.was : void 0);
	take((item) => item.was === void 0 ? void 0 : sameDraws(item.was));
	take((item) => item.was === void 0 ? sameDraws(item.id) : void 0);
	take((item) => item.id);
	return matched;
}
// ../../packages/core/src/explain/compare/align/alignPlan.ts
/**
* Puts an old plan into the names of a new one: matched items get the new plan's ids and draw addresses, groups
* that hold the same entries its label. What is then different between the two is the plan, not its names.
*/
function alignPlan(older, newer) {
	const responses = (plan) => entriesOf$1(plan).flatMap((entry) => entry.responses);
	const pairs = [
		[older.tasks, newer.tasks],
		[older.people, newer.people],
		[entriesOf$1(older), entriesOf$1(newer)],
		[responses(older), responses(newer)],
		[older.overheads, newer.overheads],
		[older.benefits, newer.benefits],
		[older.purpose.goals, newer.purpose.goals],
		[older.purpose.scopeIn, newer.purpose.scopeIn],
		[older.stakeholders, newer.stakeholders],
		[older.intervals, newer.intervals]
	];
	const names = /* @__PURE__ */ new Map();
	for (const [was, is] of pairs) for (const [id, item] of matchIds(was, is)) names.set(id, item);
	const renamed = [...names].flatMap(([id, item]) => id === item.id ? [] : [[id, item.id]]);
	makeRoom(pairs, names);
	const grouped = renameGroups(inNewNames(older, names, new Set(pairs.flatMap(([was]) => was))), newer);
	return {
		plan: grouped.plan,
		renamed,
		differs: grouped.renamed || addressed(pairs, names)
	};
}
/** Keys whose texts are ids. Dates under `from` and `to` are no ids, so they stay. */
var references = new Set("id task tasks onlyIf from to finishOf holder owner responsible accountable consulted informed estimatedBy scope goal starts who between".split(" "));
function inNewNames(older, names, items) {
	if ([...names].every(([id, item]) => item.id === id) && !differentDraws(items, names)) return older;
	const text = (value) => value.startsWith("cost:") ? `cost:${names.get(value.slice(5))?.id ?? value.slice(5)}` : names.get(value)?.id ?? value;
	const change = (value, key) => {
		if (typeof value === "string") return references.has(key) ? text(value) : value;
		if (Array.isArray(value)) return value.map((one) => change(one, key));
		if (typeof value !== "object" || value === null || value instanceof Map) return value;
		const entries = Object.entries(value).map(([name, one]) => [name, change(one, name)]);
		const known = items.has(value) && "id" in value ? names.get(String(value.id)) : void 0;
		if (known === void 0) return Object.fromEntries(entries);
		const rest = entries.filter(([name]) => name !== "was");
		return Object.fromEntries(known.was === void 0 ? rest : [...rest, ["was", known.was]]);
	};
	return change(older, "");
}
function differentDraws(items, names) {
	return [...items].some((item) => {
		const { id, was } = item;
		return names.has(id) && names.get(id)?.was !== was;
	});
}
/** Whether any id or `was` that numbers may hang on differs: draws, order of ties, order of sums. */
function addressed(pairs, names) {
	return pairs.some(([was]) => was.some((item) => {
		const now = names.get(item.id);
		return now !== void 0 && (now.id !== item.id || now.was !== item.was);
	}));
}
function entriesOf$1(plan) {
	return [...plan.risks, ...plan.assumptions];
}
/** An old item that is gone may stand in the way of a new id: it gets a free one and keeps its draws. */
function makeRoom(pairs, names) {
	const taken = new Set([...names.values()].map((item) => item.id));
	const all = pairs.flatMap(([was]) => was);
	const known = /* @__PURE__ */ new Set([
		...taken,
		...all.map((item) => item.id),
		...pairs.flatMap(([, is]) => is.map((i) => i.id))
	]);
	for (const item of all) {
		if (names.has(item.id) || !taken.has(item.id)) continue;
		let id = `${item.id}-before`;
		while (known.has(id)) id = `${id}-before`;
		known.add(id);
		names.set(item.id, {
			id,
			was: item.was ?? item.id
		});
	}
}
/** A group draws by its label; one that holds the same entries under another label is the same group. */
function renameGroups(plan, newer) {
	const members = (of) => {
		const groups = /* @__PURE__ */ new Map();
		for (const { id, group } of entriesOf$1(of)) if (group !== void 0) groups.set(group, [...groups.get(group) ?? [], id]);
		return new Map([...groups].map(([label, ids]) => [label, ids.sort().join()]));
	};
	const was = members(plan);
	const is = members(newer);
	const labels = /* @__PURE__ */ new Map();
	for (const [label, ids] of was) {
		if (is.has(label)) continue;
		for (const [other, theirs] of is) if (theirs === ids && !was.has(other)) labels.set(label, other);
	}
	if (labels.size === 0) return {
		plan,
		renamed: false
	};
	const entry = (one) => one.group === void 0 ? one : {
		...one,
		group: labels.get(one.group) ?? one.group
	};
	return {
		plan: {
			...plan,
			risks: plan.risks.map(entry),
			assumptions: plan.assumptions.map(entry)
		},
		renamed: true
	};
}
// ../../packages/core/src/explain/compare/words/numbers.ts
/** A number as a plan states it: commas between thousands, no more digits than it was written with. */
function numberWords(value) {
	const [whole = "0", part] = String(Number(Math.abs(value).toPrecision(12))).split(".");
	const digits = whole.replace(/\B(?=(\d{3})+$)/g, ",");
	return `${value < 0 ? "−" : ""}${part === void 0 ? digits : `${digits}.${part}`}`;
}
/** "EUR 4,000". */
function moneyWords(value, currency) {
	return `${value < 0 ? "−" : ""}${currency} ${numberWords(Math.abs(value))}`;
}
/** "12.5 %". */
function percentWords(share) {
	return `${numberWords(Number((100 * share).toPrecision(4)))} %`;
}
var weekdays = [
	"Mon",
	"Tue",
	"Wed",
	"Thu",
	"Fri",
	"Sat",
	"Sun"
];
var months = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");
/** "Tue 16 Nov 2027". */
function dateWords(iso) {
	const [year, month, day] = iso.split("-");
	return `${weekdays[require_engine.weekdayOf(require_engine.dayNumber(iso))]} ${Number(day)} ${months[Number(month) - 1]} ${year}`;
}
/** "Mon 16 Aug 2027 to Fri 20 Aug 2027", one date where they are the same. */
function datesWords(range) {
	return range.from === range.to ? dateWords(range.from) : `${dateWords(range.from)} to ${dateWords(range.to)}`;
}
/** "a", "a and b", "a, b and c". */
function listWords(items) {
	if (items.length < 2) return items.join("");
	return `${items.slice(0, -1).join(", ")} and ${items[items.length - 1]}`;
}
/** "1 task", "3 tasks". */
function countWords(count, noun) {
	return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
// ../../packages/core/src/explain/compare/changes/alsoChanged.ts
/**
* What changed between two plans and moves neither date nor sum: names, notes, owners, what is asked for, what is
* on offer but not adopted. Each in a sentence; the order of lists is no change.
*
* @param renamed  Ids of the old plan that are others in the new one, as `[old, new]`.
*/
function alsoChanged(pair, renamed) {
	const older = pair.older.plan;
	const newer = pair.newer.plan;
	return [
		...renamed.map(([was, is]) => `${pair.nameOf(is)}: has the id ${is} now, before ${was}`),
		...askedChanges(older, newer),
		...textsOf("The plan", older, newer, {
			title: "title",
			currency: "currency",
			note: "note"
		}),
		...items("", older.tasks, newer.tasks, taskTexts, true),
		...items("", older.people, newer.people, personTexts, false),
		...items("", entriesOf(older), entriesOf(newer), entryTexts, true),
		...offers(pair),
		...items("", older.overheads, newer.overheads, {
			name: "name",
			note: "note"
		}, true),
		...items("Benefit ", older.benefits, newer.benefits, benefitTexts, false),
		...textsOf("The plan", older, newer, {
			lateness: "what lateness costs",
			appraisal: "terms of the appraisal"
		}),
		...textsOf("What is to be decided", decisionOf(older), decisionOf(newer), decisionTexts),
		...textsOf("The plan's purpose", older.purpose, newer.purpose, {
			problem: "problem",
			scopeOut: "what is left out",
			constraints: "constraints",
			quality: "quality bars"
		}),
		...items("Goal ", named(older.purpose.goals), named(newer.purpose.goals), goalTexts, false),
		...items("Scope ", older.purpose.scopeIn, newer.purpose.scopeIn, scopeTexts, false),
		...items("Span ", older.intervals, newer.intervals, intervalTexts, false),
		...items("", older.stakeholders, newer.stakeholders, stakeholderTexts, false),
		...items("Phase ", phasesOf$1(older), phasesOf$1(newer), phaseTexts, false),
		...lists(older, newer)
	];
}
function askedChanges(older, newer) {
	const texts = [];
	const was = older.commitment;
	const is = newer.commitment;
	const say = (what, a, b, words) => {
		if (a === b) return;
		if (b === void 0) texts.push(`${what}: no longer stated${a === void 0 ? "" : ` (it was ${words(a)})`}`);
		else texts.push(a === void 0 ? `${what}: now ${words(b)}` : `${what}: from ${words(a)} to ${words(b)}`);
	};
	const money = (value) => moneyWords(value, newer.currency);
	say("Date asked for", was.finishBy, is.finishBy, dateWords);
	say("Sum asked for", was.budget, is.budget, money);
	say("Reserve", was.reserve, is.reserve, money);
	say("Level committed to", was.confidence, is.confidence, percentWords);
	if (was.holder !== is.holder) texts.push("Holder of the contingency: another than before");
	if (!same(was.funds, is.funds)) texts.push("Money released: other dates or sums");
	return texts;
}
var taskTexts = {
	name: "name",
	note: "note",
	basis: "basis",
	scope: "scope",
	target: "target date",
	due: "when its cost falls due",
	detail: "detail",
	phase: "phase",
	responsible: "who is responsible",
	accountable: "who is accountable",
	consulted: "who is consulted",
	informed: "who is informed",
	estimatedBy: "who estimated it",
	enteredBy: "who entered it",
	opinions: "what people said of it"
};
var decisionTexts = {
	ask: "what is asked",
	by: "date of the decision",
	recommend: "what is recommended",
	doNothing: "what becomes of it if nothing is done",
	alternatives: "alternatives",
	note: "note"
};
var personTexts = {
	name: "name",
	role: "role",
	note: "note",
	couldAdd: "capacity that could be added"
};
var entryTexts = {
	name: "name",
	note: "note",
	cause: "cause",
	owner: "owner",
	reviewBy: "date of review",
	signpost: "signpost",
	tripped: "day its signpost was seen",
	kind: "risk or assumption"
};
var benefitTexts = {
	name: "name",
	note: "note",
	kind: "kind",
	goal: "goal",
	owner: "owner",
	amount: "amount",
	quantity: "quantity",
	unit: "unit",
	worth: "worth",
	per: "period",
	starts: "when it starts",
	lag: "lag after that",
	ramp: "ramp",
	lasts: "how long it lasts",
	until: "end"
};
var goalTexts = {
	statement: "statement",
	measure: "measure",
	target: "target",
	by: "date",
	owner: "owner",
	note: "note"
};
var scopeTexts = {
	name: "name",
	optional: "whether it is optional",
	lost: "what is lost",
	note: "note"
};
var intervalTexts = {
	name: "name",
	from: "beginning",
	to: "end",
	atMost: "limit",
	note: "note"
};
var stakeholderTexts = {
	name: "name",
	role: "role",
	interest: "interest",
	stance: "stance",
	inform: "how to inform",
	approvesUpTo: "signing limit",
	note: "note"
};
var phaseTexts = {
	responsible: "who is responsible",
	accountable: "who is accountable",
	consulted: "who is consulted",
	informed: "who is informed",
	note: "note"
};
/** "Permit decided: note and basis" where those keys differ. */
function textsOf(subject, before, after, words) {
	const a = new Map(Object.entries(before));
	const b = new Map(Object.entries(after));
	const changed = Object.keys(words).filter((key) => !same(a.get(key), b.get(key)));
	return changed.length === 0 ? [] : [`${subject}: ${listWords(changed.map((key) => words[key] ?? key))}`];
}
/** @param moves  Whether an item that comes or goes is told among the moves already. */
function items(noun, older, newer, words, moves) {
	const was = new Map(older.map((item) => [item.id, item]));
	const is = new Map(newer.map((item) => [item.id, item]));
	return [.../* @__PURE__ */ new Set([...was.keys(), ...is.keys()])].sort().flatMap((id) => {
		const before = was.get(id);
		const after = is.get(id);
		if (before !== void 0 && after !== void 0) return textsOf(`${noun}${after.name}`, before, after, words);
		if (moves) return [];
		return [after === void 0 ? `${noun}${before?.name ?? id}: left out` : `${noun}${after.name}: new`];
	});
}
/** Responses that are adopted in neither plan, and the texts of those that are. */
function offers(pair) {
	return [...pair.newer.entries.keys()].sort().flatMap((id) => {
		const before = pair.older.entries.get(id);
		const after = pair.newer.entries.get(id);
		if (before === void 0 || after === void 0) return [];
		return [...new Set([...before.responses, ...after.responses].map((response) => response.id))].sort().flatMap((one) => {
			const was = before.responses.find((response) => response.id === one);
			const is = after.responses.find((response) => response.id === one);
			return offer(after.name, was, is);
		});
	});
}
var offerTexts = {
	action: "wording",
	owner: "owner",
	due: "date due",
	note: "note"
};
var offerTerms = {
	cost: "cost",
	probability: "chance with it",
	scale: "impact that remains"
};
function offer(entry, was, is) {
	const subject = `${entry}: response “${(is ?? was)?.action}”`;
	if (was === void 0 || is === void 0) {
		if ((was ?? is)?.adopted === true) return [];
		return [`${subject} ${is === void 0 ? "taken off the list" : "on offer, not adopted"}`];
	}
	const terms = was.adopted || is.adopted ? {} : offerTerms;
	return textsOf(subject, was, is, {
		...offerTexts,
		...terms
	});
}
function lists(older, newer) {
	const texts = [];
	const say = (what, a, b) => {
		if (same(a, b)) return;
		const more = b.length - a.length;
		texts.push(more > 0 ? `${what}: ${countWords(more, "more entry").replace("entrys", "entries")}` : `${what}: changed`);
	};
	say("Approvals", older.approvals, newer.approvals);
	say("Objections", older.objections, newer.objections);
	say("List of changes", older.changes, newer.changes);
	say("Texts between the sections", older.texts, newer.texts);
	say("Accepted findings", older.acceptedFindings, newer.acceptedFindings);
	say("Return triggers", older.returnTriggers, newer.returnTriggers);
	return texts;
}
function entriesOf(plan) {
	return [...plan.risks, ...plan.assumptions];
}
/** What a plan that asks for no decision says of one. */
function decisionOf({ decision }) {
	return decision ?? { alternatives: [] };
}
function named(goals) {
	return goals.map((goal) => ({
		...goal,
		name: goal.statement
	}));
}
function phasesOf$1(plan) {
	return plan.phases.map((phase) => ({
		...phase,
		id: phase.name
	}));
}
/** Same content; lists whatever their order. */
function same(a, b) {
	return canonical(a) === canonical(b);
}
function canonical(value) {
	if (Array.isArray(value)) return `[${value.map(canonical).sort().join()}]`;
	if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "";
	return `{${Object.entries(value).filter(([, item]) => item !== void 0).sort(([a], [b]) => a < b ? -1 : 1).map(([key, item]) => `${key}:${canonical(item)}`).join()}}`;
}
// ../../packages/core/src/explain/compare/changes/places.ts
/** Names of the places a hybrid chooses for, by what they belong to. */
var places = {
	/** Whether the task is there at all, with all that belongs to it. */
	task: (id) => `task:${id}`,
	/** Duration or effort, milestone or not. */
	work: (id) => `task:${id}/work`,
	/** `cost` and `costPerDay`. */
	taskMoney: (id) => `task:${id}/money`,
	/** Links, `notBefore`, `holdToPlan`, `priority`. */
	logic: (id) => `task:${id}/logic`,
	taskCalendar: (id) => `task:${id}/calendar`,
	team: (id) => `task:${id}/people`,
	/** `chance` and `onlyIf`. */
	need: (id) => `task:${id}/need`,
	/** `started`, `finished`, `remaining`, `spent`. */
	progress: (id) => `task:${id}/progress`,
	taskPhase: (id) => `task:${id}/phase`,
	/** All work of somebody whom only one of the plans has. */
	joins: (person) => `joins:${person}`,
	/** A person's usual share, where tasks take it. */
	usualShare: (person) => `person:${person}/share`,
	rate: (person) => `person:${person}/rate`,
	/** Capacity, calendar and absences. */
	availability: (person) => `person:${person}/time`,
	calendar: (name) => `calendar:${name}`,
	phaseCalendar: (name) => `phase:${name}/calendar`,
	entry: (id) => `entry:${id}`,
	/** Chance, status, group, `expires`, `onlyIf`. */
	odds: (id) => `entry:${id}/odds`,
	impacts: (id) => `entry:${id}/impacts`,
	response: (entry, id) => `response:${entry}/${id}`,
	overhead: (id) => `overhead:${id}`,
	overheadTerms: (id) => `overhead:${id}/terms`,
	planCalendar: "plan/calendar",
	start: "plan/start",
	statusDate: "plan/statusDate",
	capacityRule: "plan/respectCapacity",
	finishOf: "plan/finishOf",
	correlations: "plan/correlations"
};
// ../../packages/core/src/explain/compare/changes/pair.ts
/** @param older  Aligned with `newer`: matched items have the new plan's ids. */
function pairOf(older, newer) {
	const sides = {
		older: sideOf(older),
		newer: sideOf(newer)
	};
	const names = /* @__PURE__ */ new Map();
	for (const { plan, entries } of [sides.older, sides.newer]) {
		for (const item of [
			...plan.tasks,
			...plan.people,
			...plan.overheads,
			...entries.values()
		]) names.set(item.id, item.name);
		for (const entry of entries.values()) for (const { id, action } of entry.responses) names.set(id, action);
	}
	return {
		...sides,
		nameOf: (id) => names.get(id) ?? id
	};
}
function sideOf(plan) {
	const byId = (items) => new Map(items.map((item) => [item.id, item]));
	return {
		plan,
		tasks: byId(plan.tasks),
		entries: byId([...plan.risks, ...plan.assumptions]),
		people: byId(plan.people),
		overheads: byId(plan.overheads),
		calendars: new Map([...plan.calendars].map(([name, calendar]) => [name, daysOf(calendar)]))
	};
}
function daysOf({ workdays, holidays }) {
	return JSON.stringify([[...workdays].sort(), freeSpans(holidays)]);
}
/** Days off as ascending spans of day numbers that do not touch. */
function freeSpans(ranges) {
	const spans = ranges.map(({ from, to }) => [require_engine.dayNumber(from), require_engine.dayNumber(to)]).sort((a, b) => a[0] - b[0] || a[1] - b[1]);
	const merged = [];
	for (const [from, to] of spans) {
		const last = merged[merged.length - 1];
		if (last !== void 0 && from <= last[1] + 1) last[1] = Math.max(last[1], to);
		else merged.push([from, to]);
	}
	return merged;
}
/** Ids of both, ascending, each once. */
function idsOf(older, newer) {
	return [.../* @__PURE__ */ new Set([...older.keys(), ...newer.keys()])].sort();
}
/** Whether a calendar reference means other days; two names for the same days do not. */
function otherCalendar(pair, older, newer) {
	if (older === newer) return false;
	if (older === void 0 || newer === void 0) return true;
	const days = pair.newer.calendars.get(newer);
	const before = pair.older.calendars.get(newer) ?? days;
	return days !== pair.older.calendars.get(older) || before !== days;
}
/** The place that decides which calendar a task works on; undefined where it works the same days in both. */
function calendarPlace(pair, older, newer) {
	if (!otherCalendar(pair, older.calendar, newer.calendar)) return void 0;
	const before = phaseCalendar(pair.older, older);
	const after = phaseCalendar(pair.newer, newer);
	if (older.phase !== void 0 && older.phase === newer.phase && (before ?? after) !== void 0) {
		if (older.calendar === (before ?? pair.older.plan.calendar) && newer.calendar === (after ?? pair.newer.plan.calendar)) return before === after ? places.planCalendar : places.phaseCalendar(older.phase);
	}
	return older.calendar === pair.older.plan.calendar && newer.calendar === pair.newer.plan.calendar ? places.planCalendar : places.taskCalendar(newer.id);
}
function phaseCalendar(side, task) {
	return side.plan.phases.find(({ name }) => name === task.phase)?.calendar;
}
/** The place that decides a person's calendar. */
function personCalendarPlace(pair, id) {
	const older = pair.older.people.get(id);
	const newer = pair.newer.people.get(id);
	if (older === void 0 || newer === void 0) return void 0;
	if (!otherCalendar(pair, older.calendar, newer.calendar)) return void 0;
	return older.calendar === pair.older.plan.calendar && newer.calendar === pair.newer.plan.calendar ? places.planCalendar : places.availability(id);
}
/** The place that decides whether, and with what share, a person works on a task that both plans have. */
function memberPlace(pair, older, newer, person) {
	const before = older.people.find(({ id }) => id === person);
	const after = newer.people.find(({ id }) => id === person);
	if (before?.share === after?.share && before?.along === after?.along) return void 0;
	const was = pair.older.people.get(person);
	const is = pair.newer.people.get(person);
	if (was === void 0 || is === void 0) return places.joins(person);
	return before?.share === was.share && after?.share === is.share && before?.along === after?.along && was.share !== is.share ? places.usualShare(person) : places.team(newer.id);
}
/** Impacts as texts that are the same for the same effect, order aside; the tasks of a phase are the phase's. */
function impactKeys(impacts) {
	return impacts.map((impact) => JSON.stringify([impactTarget(impact), ...impactParts(impact)])).sort();
}
function impactTarget({ phase, tasks }) {
	return phase !== void 0 ? `phase=${phase}` : [...tasks].sort().join(",");
}
function impactParts({ delay, factor, wait, cost }) {
	return [
		delay ?? null,
		factor ?? null,
		wait ?? null,
		cost ?? null
	];
}
// ../../packages/core/src/explain/compare/changes/calendarChanges.ts
/** Calendars whose days changed, another calendar for a whole plan or phase, and another start. */
function calendarChanges$1(pair) {
	const older = pair.older.plan;
	const newer = pair.newer.plan;
	const list = [];
	const add = (place, subject, text) => list.push({
		places: [place],
		kind: "calendar",
		ids: [],
		subject,
		text
	});
	if (older.start !== newer.start) add(places.start, "Start of the plan", `from ${dateWords(older.start)} to ${dateWords(newer.start)}`);
	const sameChange = /* @__PURE__ */ new Map();
	for (const name of [...newer.calendars.keys()].sort()) {
		const before = older.calendars.get(name);
		const after = newer.calendars.get(name);
		if (before === void 0 || after === void 0) continue;
		if (pair.older.calendars.get(name) === pair.newer.calendars.get(name)) continue;
		const texts = daysWords(before, after);
		const known = sameChange.get(texts.join()) ?? {
			names: [],
			texts
		};
		sameChange.set(texts.join(), known);
		known.names.push(name);
	}
	for (const { names, texts } of sameChange.values()) {
		const subject = `${names.length === 1 ? "Calendar" : "Calendars"} ${listWords(names)}`;
		for (const text of texts) list.push({
			places: names.map(places.calendar),
			kind: "calendar",
			ids: [],
			subject,
			text
		});
	}
	const usual = /* @__PURE__ */ new Set();
	for (const task of pair.newer.tasks.values()) {
		const before = pair.older.tasks.get(task.id);
		const place = before === void 0 ? void 0 : calendarPlace(pair, before, task);
		if (place !== void 0) usual.add(place);
		if (task.phase !== void 0 && place === places.phaseCalendar(task.phase)) {
			const from = before?.calendar ?? "";
			if (!list.some((change) => change.places[0] === place)) add(place, `Phase ${task.phase}`, `calendar from ${from} to ${task.calendar}`);
		}
	}
	for (const id of pair.newer.people.keys()) {
		const place = personCalendarPlace(pair, id);
		if (place !== void 0) usual.add(place);
	}
	if (usual.has(places.planCalendar) || planCalendarDiffers(pair)) add(places.planCalendar, "The plan's calendar", `from ${older.calendar} to ${newer.calendar}`);
	return list;
}
/** Overheads count on the plan's calendar even where no task does. */
function planCalendarDiffers({ older, newer }) {
	if (older.plan.calendar === newer.plan.calendar) return false;
	return older.calendars.get(older.plan.calendar) !== newer.calendars.get(newer.plan.calendar);
}
var names = {
	mon: "Mondays",
	tue: "Tuesdays",
	wed: "Wednesdays",
	thu: "Thursdays",
	fri: "Fridays",
	sat: "Saturdays",
	sun: "Sundays"
};
function daysWords(before, after) {
	const texts = [];
	const week = (a, b) => a.workdays.filter((day) => !b.workdays.includes(day)).map((day) => names[day]);
	const more = week(after, before);
	const fewer = week(before, after);
	if (more.length > 0) texts.push(`works on ${listWords(more)} too`);
	if (fewer.length > 0) texts.push(`no longer works on ${listWords(fewer)}`);
	const came = spansOnlyIn(after, before);
	const went = spansOnlyIn(before, after);
	if (came.length > 0) texts.push(`days off added: ${listWords(came)}`);
	if (went.length > 0) texts.push(`days off dropped: ${listWords(went)}`);
	return texts;
}
/** Days off of `a` that are none of `b`, as dates. */
function spansOnlyIn(a, b) {
	const others = freeSpans(b.holidays);
	return freeSpans(a.holidays).flatMap(([from, to]) => {
		const parts = [];
		let at = from;
		for (const [first, last] of others) {
			if (last < at || first > to) continue;
			if (first > at) parts.push(datesWords({
				from: require_engine.isoDate(at),
				to: require_engine.isoDate(first - 1)
			}));
			at = Math.max(at, last + 1);
		}
		if (at <= to) parts.push(datesWords({
			from: require_engine.isoDate(at),
			to: require_engine.isoDate(to)
		}));
		return parts;
	});
}
// ../../packages/core/src/explain/compare/changes/peopleChanges.ts
/** Changes of the people both plans have: rate, usual share, capacity, calendar, absences. */
function peopleChanges(pair) {
	const { older, newer } = pair;
	return idsOf(older.people, newer.people).flatMap((id) => {
		const before = older.people.get(id);
		const after = newer.people.get(id);
		if (before === void 0 || after === void 0) return [];
		const base = {
			ids: [id],
			subject: after.name
		};
		const list = [];
		if (before.rate !== after.rate) {
			const { currency } = newer.plan;
			const text = `rate from ${moneyWords(before.rate, currency)} to ${moneyWords(after.rate, currency)} a day`;
			list.push({
				...base,
				kind: "money",
				places: [places.rate(id)],
				text
			});
		}
		if (before.share !== after.share && usualShareMatters(pair, id)) {
			const text = `usual share from ${numberWords(before.share)} to ${numberWords(after.share)}`;
			list.push({
				...base,
				kind: "people",
				places: [places.usualShare(id)],
				text
			});
		}
		const time = timeWords(before, after);
		if (personCalendarPlace(pair, id) === places.availability(id)) time.push(`calendar from ${before.calendar} to ${after.calendar}`);
		for (const text of time) list.push({
			...base,
			kind: "people",
			places: [places.availability(id)],
			text
		});
		return list;
	});
}
function usualShareMatters(pair, person) {
	return [...pair.newer.tasks.values()].some((task) => {
		const before = pair.older.tasks.get(task.id);
		return before !== void 0 && memberPlace(pair, before, task, person) === places.usualShare(person);
	});
}
function timeWords(before, after) {
	const parts = [];
	if (before.capacity !== after.capacity) parts.push(`capacity from ${numberWords(before.capacity)} to ${numberWords(after.capacity)}`);
	const was = new Map(before.away.map((absence) => [absenceKey(absence), absence]));
	const is = new Map(after.away.map((absence) => [absenceKey(absence), absence]));
	const only = (a, b) => [...a.keys()].filter((key) => !b.has(key)).sort().map((key) => absenceWords(a.get(key)));
	const came = only(is, was);
	const went = only(was, is);
	if (came.length > 0) parts.push(`away ${listWords(came)}`);
	if (went.length > 0) parts.push(`no longer away ${listWords(went)}`);
	return parts;
}
function absenceKey({ from, to, share }) {
	return `${from} ${to} ${share}`;
}
function absenceWords(absence) {
	return `${datesWords(absence)}${absence.share === 1 ? "" : ` (${percentWords(absence.share)})`}`;
}
// ../../packages/core/src/explain/compare/words/estimateWords.ts
/** Working days or weeks; `person`: of effort. */
function timeUnit(person = false) {
	return {
		value: (value, { unit }) => {
			const one = unit === "weeks" ? "week" : person ? "day" : "working day";
			return `${numberWords(value)} ${person ? "person-" : ""}${one}${Math.abs(value) === 1 ? "" : "s"}`;
		},
		bare: numberWords
	};
}
/** Money, once or `each` day. */
function moneyUnit(currency, each = "") {
	return {
		value: (value) => `${moneyWords(value, currency)}${each === "" ? "" : ` ${each}`}`,
		bare: (value) => moneyWords(value, currency)
	};
}
/** Factors. */
var timesUnit = {
	value: (value) => `${numberWords(value)} times`,
	bare: numberWords
};
var outer = {
	extremes: ["lowest", "highest"],
	"p10-p90": ["P10", "P90"],
	"p5-p95": ["P5", "P95"]
};
/** The stated figures of a range by name, in the order low, likely, high. */
function figures(range) {
	const [low, high] = outer[range.bounds];
	const middle = range.likely === void 0 ? [] : [["likely", range.likely]];
	return [
		[low, range.low],
		...middle,
		[high, range.high]
	];
}
/** A whole estimate: "P10 20, likely 30, P90 45 working days"; "3 working days (60 %) or 5 working days (40 %)". */
function estimateWords(estimate, unit) {
	switch (estimate.kind) {
		case "fixed": return unit.value(estimate.value, estimate);
		case "outcomes": return estimate.outcomes.map(({ value, chance }) => `${unit.value(value, estimate)} (${percentWords(chance)})`).join(" or ");
		case "range": {
			const all = figures(estimate);
			const words = all.map(([name, value], k) => k === all.length - 1 ? `${name} ${unit.value(value, estimate)}` : `${name} ${unit.bare(value)}`);
			const shape = estimate.shape === "pert" ? "" : ` (${require_shapes.shapeRules[estimate.shape].name})`;
			return `${words.join(", ")}${shape}`;
		}
	}
}
/** Whether two estimates draw the same values. */
function sameEstimate(a, b) {
	if (a === void 0 || b === void 0) return a === b;
	if (a.unit !== b.unit) return false;
	if (a.kind === "fixed") return b.kind === "fixed" && a.value === b.value;
	if (a.kind === "outcomes") return b.kind === "outcomes" && a.outcomes.length === b.outcomes.length && a.outcomes.every(({ value, chance }, k) => value === b.outcomes[k]?.value && chance === b.outcomes[k]?.chance);
	return b.kind === "range" && a.low === b.low && a.likely === b.likely && a.high === b.high && a.shape === b.shape && a.bounds === b.bounds;
}
/**
* What changed between two estimates: "P90 from 45 to 60 working days". Only the figures that changed, where the
* two are of one kind; otherwise the whole of both. Empty where nothing did.
*/
function estimateChange(older, newer, unit) {
	if (sameEstimate(older, newer)) return "";
	if (older === void 0) return newer === void 0 ? "" : `now ${estimateWords(newer, unit)}`;
	if (newer === void 0) return `no longer ${estimateWords(older, unit)}`;
	const whole = `from ${estimateWords(older, unit)} to ${estimateWords(newer, unit)}`;
	if (older.unit !== newer.unit) return whole;
	if (older.kind === "fixed" && newer.kind === "fixed") return `from ${unit.bare(older.value)} to ${unit.value(newer.value, newer)}`;
	if (older.kind !== "range" || newer.kind !== "range" || older.bounds !== newer.bounds) return whole;
	const before = figures(older);
	const after = figures(newer);
	if (before.length !== after.length) return whole;
	const changed = after.flatMap(([name, value], k) => {
		const old = before[k]?.[1] ?? value;
		return old === value ? [] : [{
			name,
			old,
			value
		}];
	});
	const parts = changed.map(({ name, old, value }, k) => {
		const to = k === changed.length - 1 ? unit.value(value, newer) : unit.bare(value);
		return `${name} from ${unit.bare(old)} to ${to}`;
	});
	if (older.shape !== newer.shape) parts.push(`shape from ${require_shapes.shapeRules[older.shape].name} to ${require_shapes.shapeRules[newer.shape].name}`);
	return listWords(parts);
}
// ../../packages/core/src/explain/compare/changes/pairsOf.ts
/** Correlation coefficients by pair: `"dig pour"`, the two names in ascending order. */
function pairsOf({ correlations }) {
	const pairs = /* @__PURE__ */ new Map();
	for (const { between, coefficient } of correlations) {
		const names = [...between].sort();
		names.forEach((a, i) => {
			for (const b of names.slice(i + 1)) pairs.set(`${a} ${b}`, coefficient);
		});
	}
	return pairs;
}
// ../../packages/core/src/explain/compare/changes/planChanges.ts
/** Changes of the plan as a whole: status date, limited people, whose finish is promised, overheads, correlations. */
function planChanges(pair) {
	const older = pair.older.plan;
	const newer = pair.newer.plan;
	const list = [];
	if (older.statusDate !== newer.statusDate) {
		const text = newer.statusDate === void 0 ? "no longer recorded" : `recorded up to ${dateWords(newer.statusDate)}${older.statusDate === void 0 ? "" : `, before up to ${dateWords(older.statusDate)}`}`;
		list.push({
			places: [places.statusDate],
			kind: "actuals",
			ids: [],
			subject: "Progress",
			text,
			clause: true
		});
	}
	if (older.respectCapacity !== newer.respectCapacity) {
		const text = newer.respectCapacity ? "now kept within their capacity" : "no longer kept within their capacity";
		list.push({
			places: [places.capacityRule],
			kind: "people",
			ids: [],
			subject: "People",
			text,
			clause: true
		});
	}
	if (older.commitment.finishOf !== newer.commitment.finishOf) {
		const whose = (id) => id === void 0 ? "the whole plan" : pair.nameOf(id);
		const text = `of ${whose(newer.commitment.finishOf)}, no longer of ${whose(older.commitment.finishOf)}`;
		const ids = newer.commitment.finishOf === void 0 ? [] : [newer.commitment.finishOf];
		list.push({
			places: [places.finishOf],
			kind: "other",
			ids,
			subject: "The finish promised",
			text
		});
	}
	return [
		...list,
		...overheadChanges(pair),
		...correlationChanges(pair)
	];
}
function overheadChanges(pair) {
	const unit = moneyUnit(pair.newer.plan.currency, "a day");
	return idsOf(pair.older.overheads, pair.newer.overheads).flatMap((id) => {
		const before = pair.older.overheads.get(id);
		const after = pair.newer.overheads.get(id);
		const change = (place, { name }, text) => ({
			places: [place],
			kind: "money",
			ids: [id],
			subject: name,
			text
		});
		if (before === void 0 || after === void 0) {
			const one = after ?? before;
			if (one === void 0) return [];
			const cost = estimateWords(one.perDay, unit);
			return [change(places.overhead(id), one, after === void 0 ? `no longer charged (it was ${cost})` : `new, ${cost}`)];
		}
		const parts = [];
		const money = estimateChange(before.perDay, after.perDay, unit);
		if (money !== "") parts.push(money);
		const end = (key, what, otherwise) => {
			if (before[key] === after[key]) return;
			const name = after[key] === void 0 ? otherwise : pair.nameOf(after[key]);
			parts.push(`now runs ${what} ${name}`);
		};
		end("from", "from the start of", "the plan");
		end("to", "to the finish of", "the plan");
		return parts.length === 0 ? [] : [change(places.overheadTerms(id), after, parts.join("; "))];
	});
}
function correlationChanges(pair) {
	const was = pairsOf(pair.older.plan);
	const is = pairsOf(pair.newer.plan);
	const common = (key) => key.split(" ").every((name) => {
		const id = name.startsWith("cost:") ? name.slice(5) : name;
		return pair.older.tasks.has(id) && pair.newer.tasks.has(id);
	});
	const keys = [.../* @__PURE__ */ new Set([...was.keys(), ...is.keys()])].filter(common).sort();
	const sets = /* @__PURE__ */ new Map();
	for (const key of keys) {
		if (was.get(key) === is.get(key)) continue;
		const change = `from ${numberWords(was.get(key) ?? 0)} to ${numberWords(is.get(key) ?? 0)}`;
		const members = sets.get(change) ?? /* @__PURE__ */ new Set();
		sets.set(change, members);
		for (const name of key.split(" ")) members.add(name.startsWith("cost:") ? name.slice(5) : name);
	}
	return [...sets].map(([change, members]) => {
		const ids = [...members].sort();
		const among = ids.length > 4 ? countWords(ids.length, "task") : listWords(ids.map(pair.nameOf));
		return {
			places: [places.correlations],
			kind: "estimates",
			ids,
			subject: "What moves together",
			text: `correlation of ${among} ${change}`
		};
	});
}
// ../../packages/core/src/explain/compare/changes/responseChanges.ts
/** Responses adopted, dropped, or changed while adopted. One that is not adopted moves nothing. */
function responseChanges(pair, before, after) {
	return [...new Set([...before.responses, ...after.responses].map(({ id }) => id))].sort().flatMap((id) => {
		const text = words(pair, {
			was: before.responses.find((response) => response.id === id && response.adopted),
			is: after.responses.find((response) => response.id === id && response.adopted),
			before,
			after
		});
		if (text === "") return [];
		const ids = [id, after.id];
		return [{
			places: [places.response(after.id, id)],
			kind: "risks",
			ids,
			subject: after.name,
			text
		}];
	});
}
/** Entries that count from now on because a response is adopted. */
function hanging(pair, response, own) {
	const names = [...pair.newer.entries.values()].filter(({ id, onlyIf }) => onlyIf === response.id && id !== own.id).map(({ name }) => `“${name}”`).sort();
	if (names.length === 0) return "";
	return `; from now on ${listWords(names)} ${names.length === 1 ? "counts" : "count"} too`;
}
function words(pair, { was, is, before, after }) {
	const { currency } = pair.newer.plan;
	const unit = moneyUnit(currency);
	const inBoth = (response, other) => response.adopted && other.responses.some(({ id, adopted }) => adopted && id === response.id);
	const does = (entry, response) => {
		const without = entry.responses.filter((one) => inBoth(one, entry === after ? before : after));
		const own = entry.probability;
		const parts = [];
		if (response.probability !== void 0 && response.probability !== own && entry.status === "open") {
			const from = percentWords(require_engine.probabilityAfter(own, without));
			parts.push(`chance from ${from} to ${percentWords(require_engine.probabilityAfter(own, [...without, response]))}`);
		}
		if (response.scale !== 1) parts.push(`${percentWords(response.scale)} of the impact remains`);
		return parts.length === 0 ? "" : `, ${parts.join(", ")}`;
	};
	if (is !== void 0 && was === void 0) {
		const cost = is.cost === void 0 ? "" : `, for ${estimateWords(is.cost, unit)}`;
		return `response “${is.action}” adopted${does(after, is)}${cost}${hanging(pair, is, after)}`;
	}
	if (was !== void 0 && is === void 0) {
		const cost = was.cost === void 0 ? "" : `, saving ${estimateWords(was.cost, unit)}`;
		const left = does(before, was) === "" ? "" : `; with it ${does(before, was).slice(2)}`;
		return `response “${was.action}” no longer adopted${cost}${left}`;
	}
	if (was === void 0 || is === void 0) return "";
	const parts = [];
	if (!sameEstimate(was.cost, is.cost)) parts.push(`cost ${estimateChange(was.cost, is.cost, unit)}`);
	if (was.probability !== is.probability) {
		const chance = (response) => response.probability === void 0 ? "the risk's own" : percentWords(response.probability);
		parts.push(`chance with it from ${chance(was)} to ${chance(is)}`);
	}
	if (was.scale !== is.scale) parts.push(`impact that remains from ${percentWords(was.scale)} to ${percentWords(is.scale)}`);
	return parts.length === 0 ? "" : `response “${is.action}”: ${parts.join(", ")}`;
}
// ../../packages/core/src/explain/compare/changes/registerChanges.ts
/** Every change of risks, assumptions and their adopted responses that can move a number. */
function registerChanges(pair) {
	const { older, newer } = pair;
	return idsOf(older.entries, newer.entries).flatMap((id) => {
		const before = older.entries.get(id);
		const after = newer.entries.get(id);
		if (before !== void 0 && after !== void 0) return changesOf$1(pair, before, after);
		const entry = after ?? before;
		return entry === void 0 ? [] : [presence$1(pair, entry, after !== void 0)];
	});
}
function presence$1(pair, entry, added) {
	const noun = entry.kind === "risk" ? "risk" : "assumption";
	const chance = `${percentWords(entry.probability)}${entry.kind === "risk" ? "" : " to be wrong"}`;
	const impacts = entry.impacts.flatMap((impact) => impactWords(pair, impact));
	const does = impacts.length === 0 || impacts.length > 3 ? "" : `: ${impacts.join("; ")}`;
	return {
		places: [places.entry(entry.id)],
		kind: "risks",
		ids: [entry.id],
		subject: entry.name,
		text: added ? `new ${noun}, ${chance}${does}` : `${noun} taken out of the register (it was ${chance})`
	};
}
function changesOf$1(pair, before, after) {
	const change = (place, text) => ({
		places: [place],
		kind: "risks",
		ids: [after.id],
		subject: after.name,
		text
	});
	return [
		...oddsWords(pair, before, after).map((text) => change(places.odds(after.id), text)),
		...impactChanges(pair, before, after).map((text) => change(places.impacts(after.id), text)),
		...responseChanges(pair, before, after)
	];
}
function oddsWords(pair, before, after) {
	const parts = [];
	if (before.status !== after.status) parts.push(statusWords(after));
	if (before.probability !== after.probability) {
		const what = after.kind === "risk" ? "chance" : "chance of being wrong";
		parts.push(`${what} from ${percentWords(before.probability)} to ${percentWords(after.probability)}`);
	}
	if (before.group !== after.group) parts.push(after.group === void 0 ? `no longer excludes the others of ${before.group}` : `now excludes the others of ${after.group}`);
	if (before.expires !== after.expires) parts.push(after.expires === void 0 ? "no longer expires" : `expires ${dateWords(after.expires)}`);
	if (before.onlyIf !== after.onlyIf) parts.push(after.onlyIf === void 0 ? `no longer hangs on “${pair.nameOf(before.onlyIf ?? "")}”` : `now counts only if “${pair.nameOf(after.onlyIf)}” is adopted`);
	return parts;
}
function statusWords({ kind, status }) {
	if (status === "open") return "open again";
	if (status === "closed") return "closed: it can no longer happen";
	return kind === "risk" ? "has happened" : "has proved wrong";
}
var parts = [
	{
		key: "delay",
		of: "delay of",
		unit: () => timeUnit()
	},
	{
		key: "factor",
		of: "duration of",
		unit: () => timesUnit
	},
	{
		key: "wait",
		of: "wait before",
		unit: () => timeUnit()
	},
	{
		key: "cost",
		of: "cost",
		unit: (currency) => moneyUnit(currency)
	}
];
function touched(pair, { phase, tasks }) {
	if (phase !== void 0) return `all of ${phase}`;
	return tasks.length > 3 ? `${tasks.length} tasks` : listWords(tasks.map(pair.nameOf));
}
/** "delay of Strip-out P10 8, likely 12, P90 25 working days", one for each part. */
function impactWords(pair, impact) {
	return parts.flatMap(({ key, of, unit }) => {
		const estimate = impact[key];
		if (estimate === void 0) return [];
		return [`${of}${key === "cost" ? "" : ` ${touched(pair, impact)}`} ${estimateWords(estimate, unit(pair.newer.plan.currency))}`];
	});
}
/** Impacts on the same tasks are compared part by part; others come and go. */
function impactChanges(pair, before, after) {
	if (impactKeys(before.impacts).join() === impactKeys(after.impacts).join()) return [];
	const rest = [...before.impacts];
	const texts = [];
	const added = [];
	for (const impact of after.impacts) {
		const same = rest.findIndex((old) => impactKeys([old])[0] === impactKeys([impact])[0]);
		const at = same >= 0 ? same : rest.findIndex((old) => impactTarget(old) === impactTarget(impact));
		const [old] = at < 0 ? [] : rest.splice(at, 1);
		if (old === void 0) added.push(impact);
		else if (same < 0) texts.push(...partChanges(pair, old, impact));
	}
	for (const impact of added) {
		const parts = JSON.stringify([
			impact.delay,
			impact.factor,
			impact.wait,
			impact.cost
		]);
		const at = rest.findIndex((old) => JSON.stringify([
			old.delay,
			old.factor,
			old.wait,
			old.cost
		]) === parts);
		const [old] = at < 0 ? [] : rest.splice(at, 1);
		if (old === void 0) texts.push(...impactWords(pair, impact).map((text) => `now also ${text}`));
		else texts.push(`touches ${touched(pair, impact)}, no longer ${touched(pair, old)}`);
	}
	texts.push(...rest.flatMap((old) => impactWords(pair, old)).map((text) => `no longer ${text}`));
	return texts.length > 0 ? texts : ["impacts written in another way"];
}
function partChanges(pair, before, after) {
	return parts.flatMap(({ key, of, unit }) => {
		const change = estimateChange(before[key], after[key], unit(pair.newer.plan.currency));
		if (change === "") return [];
		return [key === "cost" ? `cost ${change}` : `${of} ${touched(pair, after)} ${change}`];
	});
}
// ../../packages/core/src/explain/compare/words/linkWords.ts
var days = timeUnit();
/** "now also waits for Inspection": what a link asks of its task, as a clause after the task's name. */
function linkAdded(link, nameOf) {
	return `${asks(link, "now also")} ${nameOf(link.task)}${lagWords(link)}`;
}
function linkRemoved(link, nameOf) {
	return `${asks(link, "no longer")} ${nameOf(link.task)}`;
}
function asks({ link }, how) {
	const no = how === "no longer";
	switch (link) {
		case "finish-to-start": return `${how} waits for`;
		case "start-to-start": return no ? "may now start before the start of" : "now starts no earlier than the start of";
		case "finish-to-finish": return no ? "may now finish before the end of" : "now finishes no earlier than the end of";
		case "start-to-finish": return no ? "may now finish before the start of" : "now finishes no earlier than the start of";
	}
}
/** ", and 2 working days more": the lag of a link; nothing where there is none. */
function lagWords({ lag }) {
	if (lag.kind === "fixed") {
		if (lag.value === 0) return "";
		const amount = days.value(Math.abs(lag.value), lag);
		return lag.value > 0 ? `, and ${amount} more` : `, less ${amount}`;
	}
	return `, with a lag of ${estimateWords(lag, days)}`;
}
/** "lag after Strip-out from 2 to 5 working days"; a calendar that changed is named. */
function lagChange(older, newer, nameOf) {
	const change = estimateChange(older.lag, newer.lag, days);
	const calendar = older.lagCalendar === newer.lagCalendar ? "" : `counted on ${newer.lagCalendar ?? "its own calendar"}, no longer on ${older.lagCalendar ?? "its own calendar"}`;
	const lag = `${change}${change !== "" && calendar !== "" ? ", " : ""}${calendar}`;
	return `lag after ${nameOf(newer.task)} ${lag}`;
}
// ../../packages/core/src/explain/compare/changes/linkChanges.ts
/** What a task waits for, now and before. */
function linkChanges(pair, before, after) {
	const was = byKey(before.after);
	const is = byKey(after.after);
	const change = (text, clause) => ({
		places: [places.logic(after.id)],
		kind: "logic",
		ids: [after.id],
		subject: after.name,
		text,
		...clause ? { clause } : {}
	});
	const list = [];
	for (const [key, link] of is) {
		const old = was.get(key);
		if (old === void 0) list.push(change(linkAdded(link, pair.nameOf), true));
		else if (!sameEstimate(old.lag, link.lag) || otherCalendar(pair, old.lagCalendar, link.lagCalendar)) list.push(change(lagChange(old, link, pair.nameOf), false));
	}
	for (const [key, link] of was) if (!is.has(key)) list.push(change(linkRemoved(link, pair.nameOf), true));
	return list;
}
function byKey(links) {
	return new Map(links.map((link) => [`${link.task} ${link.link}`, link]).sort(([a], [b]) => a < b ? -1 : 1));
}
// ../../packages/core/src/explain/compare/changes/progressChanges.ts
/** What has been recorded of a task since. */
function progressChanges(before, after, currency) {
	const parts = [];
	const day = (key) => {
		const was = before[key];
		const is = after[key];
		if (was === is) return;
		if (is === void 0) parts.push(`no longer ${key}`);
		else parts.push(`${key} ${dateWords(is)}${was === void 0 ? "" : `, not ${dateWords(was)}`}`);
	};
	day("started");
	day("finished");
	if (after.finished === void 0) {
		const change = estimateChange(before.remaining, after.remaining, timeUnit());
		if (change !== "") parts.push(before.remaining === void 0 && after.remaining !== void 0 ? `${estimateWords(after.remaining, timeUnit())} remaining` : `remaining ${change}`);
	}
	if (before.spent !== after.spent) {
		if (after.spent === void 0) parts.push("money spent no longer recorded");
		else if (before.spent === void 0) parts.push(`${moneyWords(after.spent, currency)} spent`);
		else {
			const from = moneyWords(before.spent, currency);
			parts.push(`spent from ${from} to ${moneyWords(after.spent, currency)}`);
		}
	}
	if (parts.length === 0) return [];
	return [{
		places: [places.progress(after.id)],
		kind: "actuals",
		ids: [after.id],
		subject: after.name,
		text: parts.join(", ")
	}];
}
// ../../packages/core/src/explain/compare/changes/taskChanges.ts
/** Every change of tasks that can move a number. */
function taskChanges(pair) {
	const { older, newer } = pair;
	const touchedPhases = new Set([...older.entries.values(), ...newer.entries.values()].flatMap(({ impacts }) => impacts.map(({ phase }) => phase)));
	return idsOf(older.tasks, newer.tasks).flatMap((id) => {
		const before = older.tasks.get(id);
		const after = newer.tasks.get(id);
		if (before !== void 0 && after !== void 0) return changesOf(pair, before, after, touchedPhases);
		return (before ?? after) === void 0 ? [] : [presence(pair, after ?? before, after !== void 0)];
	});
}
function presence(pair, task, added) {
	const waits = task.after.map((link) => pair.nameOf(link.task));
	const after = waits.length === 0 || waits.length > 3 ? "" : `, after ${listWords(waits)}`;
	const what = task.milestone === false ? "task" : "milestone";
	const size = workWords(task);
	return {
		places: [places.task(task.id)],
		kind: "scope",
		ids: [task.id],
		subject: task.name,
		text: added ? `new ${what}${size === "" ? "" : `, ${size}`}${after}` : `${what} left out${size === "" ? "" : ` (it was ${size})`}`
	};
}
function workOf(task) {
	return {
		estimate: task.duration ?? task.effort,
		unit: timeUnit(task.effort !== void 0)
	};
}
function workWords(task) {
	const { estimate, unit } = workOf(task);
	return estimate === void 0 ? "" : estimateWords(estimate, unit);
}
function changesOf(pair, before, after, touchedPhases) {
	const { id, name } = after;
	const change = (place, kind, text) => text === "" ? [] : [{
		places: [place],
		kind,
		ids: [id],
		subject: name,
		text
	}];
	const { currency } = pair.newer.plan;
	const money = (key, what) => {
		const unit = moneyUnit(currency, key === "cost" ? "" : "a day");
		const text = estimateChange(before[key], after[key], unit);
		return change(places.taskMoney(id), "money", text === "" ? "" : `${what} ${text}`);
	};
	return [
		...change(places.work(id), before.milestone === after.milestone ? "estimates" : "scope", workChange(before, after)),
		...money("cost", "cost"),
		...money("costPerDay", "cost"),
		...linkChanges(pair, before, after),
		...change(places.logic(id), "logic", orderWords(before, after)),
		...calendarChanges(pair, before, after),
		...teamChanges(pair, before, after),
		...change(places.need(id), "scope", needWords(pair, before, after)),
		...progressChanges(before, after, currency),
		...before.phase !== after.phase && (touchedPhases.has(before.phase) || touchedPhases.has(after.phase)) ? change(places.taskPhase(id), "risks", `phase from ${before.phase ?? "none"} to ${after.phase ?? "none"}, whose risks touch it`) : []
	];
}
function workChange(before, after) {
	if (before.milestone !== after.milestone) {
		if (after.milestone !== false) {
			if (before.milestone === false) return `now a milestone, no longer work of ${workWords(before)}`;
			return after.milestone === "start" ? "now read as a start" : "now read as a finish";
		}
		return `now work of ${workWords(after)}, no longer a milestone`;
	}
	const was = workOf(before);
	const is = workOf(after);
	if (before.effort === void 0 === (after.effort === void 0)) return estimateChange(was.estimate, is.estimate, is.unit);
	return `from ${workWords(before)} to ${workWords(after)}${after.effort === void 0 ? "" : " of effort"}`;
}
function orderWords(before, after) {
	const parts = [];
	if (before.notBefore !== after.notBefore) {
		if (after.notBefore === void 0) parts.push(`may start before ${dateWords(before.notBefore ?? "")}`);
		else if (before.notBefore === void 0) parts.push(`not before ${dateWords(after.notBefore)}`);
		else parts.push(`not before ${dateWords(after.notBefore)}, instead of ${dateWords(before.notBefore)}`);
	}
	if (before.holdToPlan !== after.holdToPlan) parts.push(after.holdToPlan ? "never starts before its start as written" : "may start earlier than written");
	if (before.priority !== after.priority) parts.push(`priority from ${numberWords(before.priority)} to ${numberWords(after.priority)}`);
	return listWords(parts);
}
function calendarChanges(pair, before, after) {
	const { id, name } = after;
	const list = [];
	const place = calendarPlace(pair, before, after);
	const base = {
		kind: "calendar",
		ids: [id],
		subject: name
	};
	if (place === places.taskCalendar(id)) list.push({
		...base,
		places: [place],
		text: `calendar from ${before.calendar} to ${after.calendar}`
	});
	if (otherCalendar(pair, before.unbroken, after.unbroken)) {
		const text = after.unbroken === void 0 ? `may be broken off over days off of ${before.unbroken}` : `may not be broken off over days off of ${after.unbroken}`;
		list.push({
			...base,
			places: [places.taskCalendar(id)],
			text
		});
	}
	return list;
}
function teamChanges(pair, before, after) {
	return [...new Set([...before.people, ...after.people].map((member) => member.id))].sort().flatMap((person) => {
		const place = memberPlace(pair, before, after, person);
		if (place === void 0 || place === places.usualShare(person)) return [];
		const was = before.people.find((member) => member.id === person);
		const is = after.people.find((member) => member.id === person);
		const who = pair.nameOf(person);
		const share = (value) => value === 1 ? "" : ` with a share of ${numberWords(value)}`;
		let text;
		if (is === void 0) text = `${who} no longer works on it`;
		else if (was === void 0) text = `${who}${pair.older.people.has(person) ? "" : " (new)"} works on it${share(is.share)}`;
		else if (was.share !== is.share) text = `share of ${who} from ${numberWords(was.share)} to ${numberWords(is.share)}`;
		else text = is.along ? `no longer waits for the days of ${who}` : `works only on the days of ${who}`;
		return [{
			places: [place],
			kind: "people",
			ids: [after.id, person],
			subject: after.name,
			text
		}];
	});
}
function needWords(pair, before, after) {
	const parts = [];
	if (before.chance !== after.chance) parts.push(`chance that it is needed from ${percentWords(before.chance)} to ${percentWords(after.chance)}`);
	if (before.onlyIf !== after.onlyIf) parts.push(after.onlyIf === void 0 ? `needed whether or not “${pair.nameOf(before.onlyIf ?? "")}” is adopted` : `needed only if “${pair.nameOf(after.onlyIf)}” is adopted`);
	return listWords(parts);
}
// ../../packages/core/src/explain/compare/changes/changesBetween.ts
/** Every change between two plans that can move a finish or a cost, in an order that does not depend on the files'. */
function changesBetween(pair) {
	return [
		...planChanges(pair),
		...calendarChanges$1(pair),
		...peopleChanges(pair),
		...taskChanges(pair),
		...registerChanges(pair)
	];
}
// ../../packages/core/src/explain/compare/comparisonWarnings.ts
/** What a reader has to know about how two plans were put side by side. */
function comparisonWarnings(older, newer, used) {
	const warnings = [];
	if (older.seed !== used.seed) warnings.push(`The old plan's seed ${older.seed} is left aside: both plans run with ${used.seed}.`);
	if (older.iterations !== used.iterations && older.iterations !== newer.iterations) {
		const runs = numberWords(used.iterations);
		warnings.push(`The old plan's ${numberWords(older.iterations)} iterations are left aside: both plans run with ${runs}.`);
	}
	if (older.commitment.confidence !== used.confidence) {
		const level = percentWords(older.commitment.confidence);
		warnings.push(`The old plan is committed to at ${level}; both plans are read at ${percentWords(used.confidence)}.`);
	}
	if (older.currency !== newer.currency) warnings.push(`The old plan is in ${older.currency}, the new one in ${newer.currency}: sums are compared as they stand.`);
	if (older.start !== newer.start) warnings.push(`The old plan starts on ${dateWords(older.start)}: its days are counted from the new plan's start, ${dateWords(newer.start)}.`);
	const ids = new Set(older.tasks.flatMap(({ id, was }) => [id, was ?? id]));
	if (!newer.tasks.some(({ id, was }) => ids.has(id) || was !== void 0 && ids.has(was))) warnings.push("The two plans have no task in common: are they plans of the same work?");
	return warnings;
}
// ../../packages/core/src/explain/compare/hybrid/bare.ts
/**
* The plan without what moves neither its finish nor its cost: benefits, spans, funds, lateness, people to inform,
* texts. Its finishes and costs are those of the plan, to the bit; runs of it compute nothing else.
*/
function barePlan(plan) {
	const { lateness: _lateness, appraisal: _appraisal, note: _note, ...rest } = plan;
	const { confidence, finishOf } = plan.commitment;
	return {
		...rest,
		commitment: require_readPlan.present({
			confidence,
			finishOf,
			funds: []
		}),
		purpose: {
			goals: [],
			scopeIn: [],
			scopeOut: [],
			constraints: [],
			quality: []
		},
		benefits: [],
		stakeholders: [],
		phases: plan.phases.map(({ name, calendar }) => require_readPlan.present({
			name,
			calendar,
			responsible: [],
			accountable: [],
			consulted: [],
			informed: []
		})),
		tasks: plan.tasks.map(bareTask),
		intervals: [],
		risks: plan.risks.map(bareEntry),
		assumptions: plan.assumptions.map(bareEntry),
		approvals: [],
		objections: [],
		changes: [],
		texts: []
	};
}
function bareTask({ scope: _scope, target: _target, basis: _basis, note: _note, ...task }) {
	return {
		...task,
		responsible: [],
		accountable: [],
		consulted: [],
		informed: [],
		estimatedBy: []
	};
}
function bareEntry(entry) {
	const { owner: _owner, note: _note, ...rest } = entry;
	const responses = entry.responses.map(({ owner: _, note: __, ...response }) => response);
	return {
		...rest,
		responses
	};
}
// ../../packages/core/src/explain/compare/changes/change.ts
/** The change as a sentence. */
function sentenceOf({ subject, text, clause }) {
	return `${subject}${clause === true ? " " : ": "}${text}`;
}
// ../../packages/core/src/explain/compare/describe.ts
/** More changes of one item than this are counted, not told, in its sentence. */
var told = 3;
var plural = {
	actuals: "records of progress",
	estimates: "changes of estimates",
	scope: "changes of scope",
	logic: "changes of what waits for what",
	people: "changes of people",
	calendar: "changes of calendars",
	risks: "changes of the register",
	money: "changes of rates and costs",
	other: "changes of several kinds"
};
/** The move in one sentence: the change itself; of several the first, and how many more. */
function whatMoved({ groups, kind }) {
	const [group] = groups;
	if (group === void 0) return "";
	if (groups.length > 1) return `${groups.length} smaller ${plural[kind]}`;
	const progress = progressWords(group);
	if (progress !== void 0) return progress;
	const [first, ...rest] = bySubject(group.changes);
	if (first === void 0) return "";
	if (rest.length === 0) return first;
	if (rest.length === 1 && rest[0] !== void 0) return `${first}; ${rest[0]}`;
	return `${first}; and ${countWords(rest.length, "change")} that go with it`;
}
/** Changes of one subject in one sentence: "Permit decided: P90 from 45 to 60 working days; cost from 0 to EUR 500". */
function bySubject(changes) {
	const subjects = /* @__PURE__ */ new Map();
	for (const change of leadFirst(changes)) {
		const known = subjects.get(change.subject);
		if (known === void 0) subjects.set(change.subject, [change]);
		else known.push(change);
	}
	return [...subjects.values()].map((own) => {
		const [first, ...rest] = own;
		if (first === void 0) return "";
		const more = rest.slice(0, 2).map((change) => change.text);
		const left = own.length - 1 - more.length;
		if (left > 0) more.push(`and ${left} more`);
		return [sentenceOf(first), ...more].join("; ");
	});
}
/** What the group is about comes first: a task that came or went, then the others as they are. */
function leadFirst(changes) {
	const rank = ({ kind }) => kind === "scope" ? 0 : 1;
	return changes.map((change, at) => ({
		change,
		at
	})).sort((a, b) => rank(a.change) - rank(b.change) || a.at - b.at).map(({ change }) => change);
}
/** Progress is told by how much of it there is. */
function progressWords({ kind, changes }) {
	const lead = changes.find(({ subject, kind: own }) => own === "actuals" && subject === "Progress");
	if (kind !== "actuals" || lead === void 0) return void 0;
	const rest = changes.filter((change) => change !== lead);
	if (rest.length === 0) return sentenceOf(lead);
	if (rest.length <= told) return `${sentenceOf(lead)}: ${rest.map((change) => `${change.subject} ${change.text}`).join("; ")}`;
	const finished = rest.filter(({ text }) => text.includes("finished")).length;
	const others = rest.length - finished;
	const counts = [...finished > 0 ? [`${countWords(finished, "task")} finished`] : [], ...others > 0 ? [finished > 0 ? `${others} under way` : `${countWords(others, "task")} under way`] : []];
	return `${sentenceOf(lead)}: ${listWords(counts)}`;
}
// ../../packages/core/src/explain/compare/gather.ts
/** Beyond, those that move most do, and the others stand together by kind: few enough for every order to be taken. */
var keptAlone = 5;
var keptKinds = 2;
function playerOf(group) {
	return {
		groups: [group],
		kind: group.kind
	};
}
/**
* Many groups as at most eight players: the five that move most by themselves; the others by kind, the two kinds
* that move most and the rest of them, so that the list can be read and every order taken. Within a player, what moves
* most comes first.
*
* @param effects  What each group moves alone.
*/
function gather(groups, effects) {
	const most = [0, 1].map((d) => effects.reduce((largest, effect) => {
		const size = Math.abs(effect[d] ?? 0);
		return Number.isFinite(size) ? Math.max(largest, size) : largest;
	}, 0));
	const weight = (at) => Math.max(...[0, 1].map((d) => Math.abs(effects[at]?.[d] ?? 0) / (most[d] || 1)));
	const ranked = groups.map((group, at) => ({
		group,
		at,
		weight: weight(at)
	})).sort((a, b) => b.weight - a.weight || a.at - b.at);
	const rest = /* @__PURE__ */ new Map();
	for (const { group, weight } of ranked.slice(keptAlone)) {
		const kind = rest.get(group.kind) ?? {
			groups: [],
			weight: 0
		};
		rest.set(group.kind, kind);
		kind.groups.push(group);
		kind.weight += weight;
	}
	const kinds = [...rest].sort(([a, x], [b, y]) => y.weight - x.weight || (a < b ? -1 : 1));
	const last = kinds.slice(keptKinds);
	const [only] = last;
	return [
		...ranked.slice(0, keptAlone).map(({ group }) => playerOf(group)),
		...kinds.slice(0, keptKinds).map(([kind, own]) => ({
			kind,
			groups: own.groups
		})),
		...only === void 0 ? [] : [{
			kind: last.length === 1 ? only[0] : "other",
			groups: last.flatMap(([, own]) => own.groups)
		}]
	];
}
// ../../packages/core/src/explain/compare/groups/joinIds.ts
/** An id that means one kind of thing in one plan and another in the other is never both at once. */
function joinIds({ older, newer }, { join }) {
	const users = /* @__PURE__ */ new Map();
	const use = (id, place) => {
		const known = users.get(id);
		if (known === void 0) users.set(id, /* @__PURE__ */ new Set([place]));
		else known.add(place);
	};
	for (const { tasks, entries, overheads, people } of [older, newer]) {
		for (const id of tasks.keys()) use(id, places.task(id));
		for (const id of overheads.keys()) use(id, places.overhead(id));
		for (const id of people.keys()) use(id, places.joins(id));
		for (const entry of entries.values()) {
			use(entry.id, places.entry(entry.id));
			for (const { id } of entry.responses) use(id, places.response(entry.id, id));
		}
	}
	for (const all of users.values()) if (all.size > 1) join(all);
}
// ../../packages/core/src/explain/compare/groups/joinLinks.ts
/**
* A task that only one plan has goes with everything that names it. Links that could form a loop when some are old
* and some new go together.
*/
function joinLinks(pair, { join }) {
	const { older, newer } = pair;
	const onlyIn = (id) => older.tasks.has(id) !== newer.tasks.has(id);
	for (const { tasks, overheads, entries, plan } of [older, newer]) {
		for (const task of tasks.values()) for (const link of task.after) if (onlyIn(link.task)) join([places.task(link.task), placeOfLinks(pair, task)]);
		for (const { id, from, to } of overheads.values()) for (const end of [from, to]) {
			if (end === void 0 || !onlyIn(end)) continue;
			join([places.task(end), places.overhead(id)]);
			join([places.task(end), places.overheadTerms(id)]);
		}
		for (const { id, impacts } of entries.values()) for (const impact of impacts) {
			if (impact.phase !== void 0) continue;
			for (const task of impact.tasks) {
				if (!onlyIn(task)) continue;
				join([places.task(task), places.entry(id)]);
				join([places.task(task), places.impacts(id)]);
			}
		}
		const { finishOf } = plan.commitment;
		if (finishOf !== void 0 && onlyIn(finishOf)) join([places.task(finishOf), places.finishOf]);
	}
	join(inLoops(pair).map(({ id }) => onlyIn(id) ? places.task(id) : places.logic(id)));
}
function placeOfLinks(pair, task) {
	return pair.older.tasks.has(task.id) && pair.newer.tasks.has(task.id) ? places.logic(task.id) : places.task(task.id);
}
/** Tasks on, or between, loops of the links of both plans taken together. */
function inLoops({ older, newer }) {
	const after = /* @__PURE__ */ new Map();
	const before = /* @__PURE__ */ new Map();
	const ids = idsOf(older.tasks, newer.tasks);
	for (const id of ids) {
		after.set(id, /* @__PURE__ */ new Set());
		before.set(id, /* @__PURE__ */ new Set());
	}
	for (const { tasks } of [older, newer]) for (const task of tasks.values()) for (const link of task.after) {
		after.get(link.task)?.add(task.id);
		before.get(task.id)?.add(link.task);
	}
	const queue = ids.filter((id) => before.get(id)?.size === 0 || after.get(id)?.size === 0);
	const gone = new Set(queue);
	for (let id = queue.pop(); id !== void 0; id = queue.pop()) for (const [near, far] of [[after, before], [before, after]]) for (const next of near.get(id) ?? []) {
		far.get(next)?.delete(id);
		if (gone.has(next) || (far.get(next)?.size ?? 0) > 0) continue;
		gone.add(next);
		queue.push(next);
	}
	return ids.flatMap((id) => {
		const task = newer.tasks.get(id) ?? older.tasks.get(id);
		return gone.has(id) || task === void 0 ? [] : [task];
	});
}
// ../../packages/core/src/explain/compare/groups/joinPeople.ts
/** No share above the capacity there is, wherever capacity is respected. */
function joinPeople(pair, { join }) {
	const { older, newer } = pair;
	if (!older.plan.respectCapacity && !newer.plan.respectCapacity) return;
	const capacities = (person) => [older, newer].map(({ people }) => people.get(person)?.capacity).filter((value) => value !== void 0);
	for (const { tasks } of [older, newer]) for (const task of tasks.values()) {
		const before = older.tasks.get(task.id);
		const after = newer.tasks.get(task.id);
		for (const { id: person, share } of task.people) {
			if (capacities(person).every((capacity) => share <= capacity + 1e-9)) continue;
			join([
				before === void 0 || after === void 0 ? places.task(task.id) : memberPlace(pair, before, after, person),
				places.availability(person),
				places.capacityRule
			]);
		}
	}
}
// ../../packages/core/src/explain/compare/groups/joinRegister.ts
/** Groups exclude each other: chances that sum to at most 1, one that has occurred, responses that only narrow. */
function joinRegister(pair, { join }) {
	const { older, newer } = pair;
	const labels = /* @__PURE__ */ new Set();
	for (const id of idsOf(older.entries, newer.entries)) {
		const versions = versionsOf(pair, id);
		for (const { group } of versions) if (group !== void 0) labels.add(group);
		if (versions.some(({ group }) => group !== void 0)) join([places.odds(id), ...responsePlaces(versions)]);
		if (versions.length === 1) join([places.entry(id), ...responsePlaces(versions)]);
	}
	for (const label of [...labels].sort()) {
		let sum = 0;
		let occurred = 0;
		const members = [];
		for (const id of idsOf(older.entries, newer.entries)) {
			const inside = versionsOf(pair, id).filter(({ group }) => group === label);
			if (inside.length === 0) continue;
			sum += Math.max(...inside.map(({ probability }) => probability));
			if (inside.some(({ status }) => status === "occurred")) occurred++;
			members.push(places.odds(id), places.entry(id));
		}
		if (sum > 1 + 1e-9 || occurred > 1) join(members);
	}
	joinOffers(pair, join);
}
function versionsOf({ older, newer }, id) {
	return [older.entries.get(id), newer.entries.get(id)].filter((entry) => entry !== void 0);
}
function responsePlaces(versions) {
	return versions.flatMap((entry) => entry.responses.map(({ id }) => places.response(entry.id, id)));
}
/** What hangs on a response goes with an entry that only one plan has, where the response is one of that entry's. */
function joinOffers(pair, join) {
	const { older, newer } = pair;
	const home = /* @__PURE__ */ new Map();
	for (const { entries } of [older, newer]) for (const { id, responses } of entries.values()) for (const response of responses) {
		const known = home.get(response.id);
		if (known === void 0) home.set(response.id, /* @__PURE__ */ new Set([id]));
		else known.add(id);
	}
	const with_ = (response, own) => {
		if (response === void 0) return;
		for (const entry of home.get(response) ?? []) {
			if (older.entries.has(entry) && newer.entries.has(entry)) continue;
			for (const place of own) join([place, places.entry(entry)]);
		}
	};
	for (const { tasks, entries } of [older, newer]) {
		for (const { id, onlyIf } of tasks.values()) with_(onlyIf, [places.need(id), places.task(id)]);
		for (const { id, onlyIf } of entries.values()) with_(onlyIf, [places.odds(id), places.entry(id)]);
	}
	for (const [response, entries] of home) {
		if (entries.size < 2) continue;
		join([...entries].flatMap((entry) => [places.response(entry, response), places.entry(entry)]));
	}
}
// ../../packages/core/src/explain/compare/changes/taskPlaces.ts
/** Every place of a task that both plans have. */
function taskPlaces(pair, before, after) {
	const { id } = after;
	return [
		places.work(id),
		places.taskMoney(id),
		places.logic(id),
		places.taskCalendar(id),
		places.team(id),
		places.need(id),
		places.progress(id),
		places.taskPhase(id),
		calendarPlace(pair, before, after),
		...memberPlaces(pair, before, after)
	];
}
/** The places that decide who works on it. */
function memberPlaces(pair, before, after) {
	return [...new Set([...before.people, ...after.people].map(({ id }) => id))].map((person) => memberPlace(pair, before, after, person));
}
// ../../packages/core/src/explain/compare/groups/joinTasks.ts
/** Within a task: milestones have no work, effort needs somebody, progress needs a status date it lies before. */
function joinTasks(pair, { join }) {
	const { older, newer } = pair;
	for (const after of newer.tasks.values()) {
		const before = older.tasks.get(after.id);
		if (before === void 0) continue;
		if (before.milestone === false !== (after.milestone === false)) {
			const touching = [...older.entries.values(), ...newer.entries.values()].filter((entry) => entry.impacts.some((impact) => impact.tasks.includes(after.id))).flatMap((entry) => [places.entry(entry.id), places.impacts(entry.id)]);
			join([...taskPlaces(pair, before, after), ...touching]);
		}
		if ((before.effort ?? after.effort) !== void 0 && leastShare(pair, before, after) <= 1e-9) join([places.work(after.id), ...memberPlaces(pair, before, after)]);
	}
	joinProgress(pair, join);
}
/** The smallest sum of shares any mixture of the two teams has. */
function leastShare(pair, before, after) {
	const people = [...new Set([...before.people, ...after.people].map(({ id }) => id))];
	const shareIn = (task, person) => task.people.find(({ id }) => id === person)?.share ?? 0;
	return people.reduce((sum, person) => {
		const now = shareIn(after, person);
		return sum + (memberPlace(pair, before, after, person) === void 0 ? now : Math.min(now, shareIn(before, person)));
	}, 0);
}
/** Recorded days lie between the start and the status date of whatever they are put together with. */
function joinProgress({ older, newer }, join) {
	const statuses = [older.plan.statusDate, newer.plan.statusDate];
	const starts = [older.plan.start, newer.plan.start];
	for (const { tasks } of [older, newer]) for (const { id, started, finished } of tasks.values()) {
		const days = [started, finished].filter((day) => day !== void 0);
		if (days.length === 0) continue;
		const here = [places.progress(id), places.task(id)];
		const late = statuses.some((status) => status === void 0 || days.some((day) => day > status));
		const early = starts.some((start) => days.some((day) => day < start));
		for (const place of here) {
			if (late) join([place, places.statusDate]);
			if (early) join([place, places.start]);
		}
	}
	if (statuses[0] !== statuses[1]) for (const id of newer.tasks.keys()) join([places.progress(id), places.statusDate]);
}
// ../../packages/core/src/explain/compare/groups/together.ts
/** @param changed  The places there are. */
function together(changed) {
	const parent = new Map([...changed].map((place) => [place, place]));
	const rootOf = (place) => {
		let at = place;
		for (;;) {
			const up = parent.get(at) ?? at;
			if (up === at) return at;
			const next = parent.get(up) ?? up;
			parent.set(at, next);
			at = next;
		}
	};
	return {
		rootOf,
		join(places) {
			let first;
			for (const place of places) {
				if (place === void 0 || !parent.has(place)) continue;
				const root = rootOf(place);
				if (first === void 0) first = root;
				else if (root !== first) {
					const [low, high] = root < first ? [root, first] : [first, root];
					parent.set(high, low);
					first = low;
				}
			}
		}
	};
}
// ../../packages/core/src/explain/compare/groups/groupChanges.ts
/**
* The changes as groups such that any choice of groups gives a correct plan. One item's changes of one kind are
* one group; more only where they could contradict each other.
*
* @param apart  Further places to be taken together, found when a plan could not be run.
*/
function groupChanges(pair, changes, apart = []) {
	const all = new Set(changes.flatMap((change) => change.places));
	const sets = together(all);
	for (const change of changes) sets.join(change.places);
	joinLinks(pair, sets);
	joinTasks(pair, sets);
	joinPeople(pair, sets);
	joinRegister(pair, sets);
	joinIds(pair, sets);
	for (const more of apart) sets.join(more);
	joinEntries(pair, sets, all);
	const groups = /* @__PURE__ */ new Map();
	for (const change of changes) {
		const root = sets.rootOf(change.places[0] ?? "");
		const known = groups.get(root) ?? {
			places: /* @__PURE__ */ new Set(),
			changes: []
		};
		groups.set(root, known);
		for (const place of change.places) known.places.add(place);
		known.changes.push(change);
	}
	return [...groups].sort(([a], [b]) => a < b ? -1 : 1).map(([, group]) => ({
		...group,
		kind: kindOf(group.changes),
		ids: [...new Set(group.changes.flatMap((change) => change.ids))]
	}));
}
/** An entry's chance and impacts are one item's changes, unless its impacts have to go with a task. */
function joinEntries({ newer }, sets, all) {
	const size = /* @__PURE__ */ new Map();
	for (const place of all) {
		const root = sets.rootOf(place);
		size.set(root, (size.get(root) ?? 0) + 1);
	}
	for (const id of newer.entries.keys()) {
		const place = places.impacts(id);
		if (all.has(place) && size.get(sets.rootOf(place)) === 1) sets.join([places.odds(id), place]);
	}
}
var order = [
	"scope",
	"actuals",
	"logic",
	"people",
	"calendar",
	"risks",
	"estimates",
	"money",
	"other"
];
function kindOf(changes) {
	const kinds = new Set(changes.map(({ kind }) => kind));
	return order.find((kind) => kinds.has(kind)) ?? "other";
}
// ../../packages/core/src/explain/compare/hybrid/hybridCorrelations.ts
/**
* The correlations of a hybrid, pair by pair, between draws that the hybrid has: a pair with a task that only one
* of the plans has goes with that task.
*/
function hybridCorrelations(pair, isNew, tasks) {
	const { older, newer } = pair;
	if (older.plan.correlations.length === 0 && newer.plan.correlations.length === 0) return [];
	const names = new Set(tasks.flatMap(drawnNames));
	const was = pairsOf(older.plan);
	const is = pairsOf(newer.plan);
	const inBoth = (name) => older.tasks.has(taskOf(name)) && newer.tasks.has(taskOf(name));
	const useNew = isNew(places.correlations);
	return [.../* @__PURE__ */ new Set([...was.keys(), ...is.keys()])].sort().flatMap((key) => {
		const between = key.split(" ");
		if (!between.every((name) => names.has(name))) return [];
		const coefficient = between.every(inBoth) ? (useNew ? is : was).get(key) : is.get(key) ?? was.get(key);
		return coefficient === void 0 ? [] : [{
			between,
			coefficient
		}];
	});
}
function taskOf(name) {
	return name.startsWith("cost:") ? name.slice(5) : name;
}
function drawnNames({ id, milestone, cost }) {
	return [...milestone === false ? [id] : [], ...cost === void 0 ? [] : [`cost:${id}`]];
}
// ../../packages/core/src/explain/compare/hybrid/hybridRegister.ts
/**
* Risks and assumptions of a hybrid, in id order.
*
* @param tasks  The hybrid's: what an impact on a phase touches is read off them.
*/
function hybridRegister(pair, isNew, tasks) {
	const { older, newer } = pair;
	const resolve = (impacts) => impacts.map((impact) => ofPhase(impact, tasks));
	const entries = idsOf(older.entries, newer.entries).flatMap((id) => {
		const was = older.entries.get(id);
		const is = newer.entries.get(id);
		if (was === void 0 || is === void 0) {
			const only = isNew(places.entry(id)) ? is : was;
			return only === void 0 ? [] : [typed({
				...only,
				impacts: resolve(only.impacts)
			})];
		}
		const { probability, status, group, expires, onlyIf } = isNew(places.odds(id)) ? is : was;
		const { group: _, expires: __, onlyIf: ___, ...rest } = is;
		return [typed({
			...rest,
			...require_readPlan.present({
				probability,
				status,
				group,
				expires,
				onlyIf
			}),
			impacts: resolve((isNew(places.impacts(id)) ? is : was).impacts),
			responses: responses(isNew, was, is)
		})];
	});
	const wanted = new Set([...tasks, ...entries].map(({ onlyIf }) => onlyIf));
	return entries.map((entry) => {
		const offered = newer.entries.get(entry.id)?.responses ?? entry.responses;
		const isOffered = (id) => offered.some((response) => response.id === id);
		const kept = entry.responses.filter(({ id, adopted }) => adopted || isOffered(id) || wanted.has(id));
		return {
			...entry,
			responses: kept
		};
	});
}
/** Every entry of a plan is a risk or an assumption; the register's own type leaves that open. */
function typed(entry) {
	return entry.kind === "risk" ? {
		...entry,
		kind: "risk"
	} : {
		...entry,
		kind: "assumption"
	};
}
function ofPhase(impact, tasks) {
	const { phase } = impact;
	if (phase === void 0) return impact;
	const touched = tasks.filter((task) => task.phase === phase && task.milestone === false);
	return {
		...impact,
		tasks: touched.map(({ id }) => id)
	};
}
/** Adopted as the choice says; what neither plan adopts is the new plan's. */
function responses(isNew, was, is) {
	return [...new Set([...was.responses, ...is.responses].map(({ id }) => id))].sort().flatMap((id) => {
		const before = was.responses.find((response) => response.id === id);
		const after = is.responses.find((response) => response.id === id);
		if (before?.adopted !== true && after?.adopted !== true) return [after ?? before].filter((response) => response !== void 0);
		const [taken, other] = isNew(places.response(is.id, id)) ? [after, before] : [before, after];
		if (taken !== void 0) return [taken];
		return other === void 0 ? [] : [{
			...other,
			adopted: false
		}];
	});
}
// ../../packages/core/src/explain/compare/hybrid/hybridTasks.ts
/** The tasks of a hybrid, in id order. */
function hybridTasks(pair, isNew) {
	const { older, newer } = pair;
	return idsOf(older.tasks, newer.tasks).flatMap((id) => {
		const was = older.tasks.get(id);
		const is = newer.tasks.get(id);
		if (was === void 0 || is === void 0) {
			const only = isNew(places.task(id)) ? is : was;
			return only === void 0 ? [] : [only];
		}
		return [mixed(pair, isNew, was, is)];
	});
}
function mixed(pair, isNew, was, is) {
	const { id } = is;
	if (taskPlaces(pair, was, is).every((place) => place === void 0 || isNew(place))) return is;
	const from = (place) => isNew(place) ? is : was;
	const work = from(places.work(id));
	const money = from(places.taskMoney(id));
	const logic = from(places.logic(id));
	const need = from(places.need(id));
	const progress = from(places.progress(id));
	const { phase } = from(places.taskPhase(id));
	const calendarAt = calendarPlace(pair, was, is);
	const { calendar } = calendarAt === void 0 ? is : from(calendarAt);
	const { unbroken } = otherCalendar(pair, was.unbroken, is.unbroken) ? from(places.taskCalendar(id)) : is;
	return require_readPlan.present({
		id,
		name: is.name,
		was: is.was,
		phase,
		duration: work.duration,
		effort: work.effort,
		milestone: work.milestone,
		after: logic.after,
		notBefore: logic.notBefore,
		holdToPlan: logic.holdToPlan,
		priority: logic.priority,
		calendar,
		unbroken,
		people: team(pair, isNew, was, is),
		cost: money.cost,
		costPerDay: money.costPerDay,
		due: is.due,
		chance: need.chance,
		onlyIf: need.onlyIf,
		started: progress.started,
		finished: progress.finished,
		remaining: progress.remaining,
		spent: progress.spent,
		responsible: [],
		accountable: [],
		consulted: [],
		informed: [],
		estimatedBy: []
	});
}
function team(pair, isNew, was, is) {
	return [...new Set([...was.people, ...is.people].map(({ id }) => id))].sort().flatMap((person) => {
		const place = memberPlace(pair, was, is, person);
		return (place === void 0 || isNew(place) ? is : was).people.filter(({ id }) => id === person);
	});
}
// ../../packages/core/src/explain/compare/hybrid/hybridPlan.ts
/**
* A plan with some places as in the old plan and the others as in the new one; what moves no number is the new
* one's. A correct plan for every choice that takes the places of one group (see groups/) the same way.
*
* @param pair  Of bare plans.
*/
function hybridPlan(pair, isNew) {
	const older = pair.older.plan;
	const newer = pair.newer.plan;
	const pick = (place, was, is) => isNew(place) ? is : was;
	const tasks = hybridTasks(pair, isNew);
	const register = hybridRegister(pair, isNew, tasks);
	const used = new Set(tasks.flatMap((task) => task.people.map(({ id }) => id)));
	const finishOf = pick(places.finishOf, older.commitment.finishOf, newer.commitment.finishOf);
	const { statusDate: _, ...rest } = newer;
	return {
		...rest,
		...require_readPlan.present({ statusDate: pick(places.statusDate, older.statusDate, newer.statusDate) }),
		start: pick(places.start, older.start, newer.start),
		respectCapacity: pick(places.capacityRule, older.respectCapacity, newer.respectCapacity),
		commitment: require_readPlan.present({
			confidence: newer.commitment.confidence,
			finishOf,
			funds: []
		}),
		calendar: pick(places.planCalendar, older.calendar, newer.calendar),
		calendars: hybridCalendars(pair, isNew),
		phases: phasesOf(pair),
		people: hybridPeople(pair, isNew).filter(({ id }) => used.has(id)),
		tasks,
		risks: register.filter((entry) => entry.kind === "risk"),
		assumptions: register.filter((entry) => entry.kind === "assumption"),
		overheads: hybridOverheads(pair, isNew),
		correlations: hybridCorrelations(pair, isNew, tasks)
	};
}
/** Every calendar of either plan: one that nobody names moves nothing. */
function hybridCalendars({ older, newer }, isNew) {
	const all = new Map([...older.plan.calendars, ...newer.plan.calendars]);
	for (const [name, calendar] of older.plan.calendars) if (newer.plan.calendars.has(name) && !isNew(places.calendar(name))) all.set(name, calendar);
	return all;
}
function phasesOf({ older, newer }) {
	const known = new Set(newer.plan.phases.map(({ name }) => name));
	const named = [...newer.plan.phases, ...older.plan.phases.filter(({ name }) => !known.has(name))];
	if (named.length === 0) return named;
	const all = new Map(named.map((phase) => [phase.name, phase]));
	for (const { phase } of [...older.plan.tasks, ...newer.plan.tasks]) {
		if (phase === void 0 || all.has(phase)) continue;
		all.set(phase, {
			name: phase,
			responsible: [],
			accountable: [],
			consulted: [],
			informed: []
		});
	}
	return [...all.values()];
}
function hybridPeople(pair, isNew) {
	const { older, newer } = pair;
	return idsOf(older.people, newer.people).flatMap((id) => {
		const was = older.people.get(id);
		const is = newer.people.get(id);
		if (was === void 0 || is === void 0) return [was ?? is].filter((person) => person !== void 0);
		const time = isNew(places.availability(id)) ? is : was;
		const calendarAt = personCalendarPlace(pair, id);
		return [{
			...is,
			rate: isNew(places.rate(id)) ? is.rate : was.rate,
			share: isNew(places.usualShare(id)) ? is.share : was.share,
			capacity: time.capacity,
			away: time.away,
			calendar: calendarAt === void 0 || isNew(calendarAt) ? is.calendar : was.calendar
		}];
	});
}
function hybridOverheads({ older, newer }, isNew) {
	return idsOf(older.overheads, newer.overheads).flatMap((id) => {
		const was = older.overheads.get(id);
		const is = newer.overheads.get(id);
		if (was === void 0 || is === void 0) {
			const only = isNew(places.overhead(id)) ? is : was;
			return only === void 0 ? [] : [only];
		}
		const { perDay, from, to } = isNew(places.overheadTerms(id)) ? is : was;
		const { from: _, to: __, ...rest } = is;
		return [{
			...rest,
			...require_readPlan.present({
				perDay,
				from,
				to
			})
		}];
	});
}
// ../../packages/core/src/explain/compare/reachOfPlayers.ts
/**
* About how many tasks have to be placed again when each player's groups change: those it touches and all that follow
* them. It only decides in which order hybrids are run (every other one differs from the one before by the first
* player), never a number.
*/
function reachOfPlayers(pair, players) {
	const followers = followersOf(pair);
	const all = (/* @__PURE__ */ new Set([...pair.older.tasks.keys(), ...pair.newer.tasks.keys()])).size;
	return players.map(({ groups }) => {
		const reached = /* @__PURE__ */ new Set();
		for (const place of groups.flatMap((group) => [...group.places])) {
			const touched = touchedBy(pair, place);
			if (touched === void 0) return all;
			const queue = [...touched];
			for (let id = queue.pop(); id !== void 0; id = queue.pop()) {
				if (reached.has(id)) continue;
				reached.add(id);
				queue.push(...followers.get(id) ?? []);
			}
		}
		return reached.size;
	});
}
function followersOf({ older, newer }) {
	const followers = /* @__PURE__ */ new Map();
	for (const { tasks } of [older, newer]) for (const { id, after } of tasks.values()) for (const link of after) {
		const known = followers.get(link.task);
		if (known === void 0) followers.set(link.task, [id]);
		else known.push(id);
	}
	return followers;
}
/** Tasks a place is about; undefined: all of them. */
function touchedBy({ older, newer }, place) {
	const [path = "", part] = place.split("/");
	const [kind, id = ""] = path.split(":");
	const inBoth = (find) => [...find(older), ...find(newer)];
	switch (kind) {
		case "task": return part === "money" ? [] : [id];
		case "entry":
		case "response": return inBoth(({ entries }) => entries.get(id)?.impacts.flatMap(({ tasks }) => tasks) ?? []);
		case "person":
		case "joins":
			if (part === "rate") return [];
			return inBoth(({ tasks }) => [...tasks.values()].filter(({ people }) => people.some((one) => one.id === id)).map((task) => task.id));
		case "overhead": return [];
		default: return;
	}
}
// ../../packages/core/src/explain/compare/movesBetween.ts
/** Every order is taken up to so many groups; beyond, pairs of sampled orders, so many at most. */
var exactUpTo = 8;
var mostPairs = 32;
/** Groups are ranked on so many iterations where there are too many to list. */
var rankingIterations = 2048;
/** Plans asked for at once while ranking: of a plan with a thousand changes there are a thousand. */
var plansAtOnce = 256;
/**
* What each group of changes moved, averaged over the orders in which they may come. Yields the plans whose values
* it needs, and takes their values in the same order: whoever drives it may compute them anywhere.
*
* A hybrid may have no finish at all (people who no longer share a working day): then the changes that could be
* the reason are taken together, at last all of them.
*
* @param pair  Of bare plans.
*/
function* movesBetween(pair, changes, options) {
	for (const kinds of [
		[],
		["calendar", "people"],
		everyKind
	]) {
		const moves = yield* tryMoves(pair, groupChanges(pair, changes, [changes.filter(({ kind }) => kinds.includes(kind)).flatMap((change) => change.places)]), options);
		if (moves !== void 0) return moves;
	}
	throw new Error("one group of everything asks for no hybrid");
}
var everyKind = [
	"actuals",
	"estimates",
	"scope",
	"logic",
	"people",
	"calendar",
	"risks",
	"money",
	"other"
];
/** Undefined when a hybrid has no finish. */
function* tryMoves(pair, groups, { none, all, seed, iterations }) {
	const planWith = (taken) => {
		const left = new Set(groups.filter((group) => !taken.includes(group)).flatMap((group) => [...group.places]));
		return hybridPlan(pair, (place) => !left.has(place));
	};
	let players = groups.map(playerOf);
	let from = 0;
	if (groups.length > 12) {
		from = .3;
		const quick = Math.min(iterations, rankingIterations);
		const asked = [[], ...groups.map((group) => [group])];
		const found = [];
		for (let first = 0; first < asked.length; first += plansAtOnce) {
			const part = asked.slice(first, first + plansAtOnce);
			const share = (count) => from * count / asked.length;
			found.push(...yield {
				plans: part.map(planWith),
				iterations: quick,
				from: share(first),
				to: share(first + part.length)
			});
		}
		const [start, ...alone] = found;
		if (start === void 0) return void 0;
		players = gather(groups, alone.map((value) => value === void 0 ? [1 / 0, 1 / 0] : [value[0] - start[0], value[1] - start[1]]));
	}
	const reach = reachOfPlayers(pair, players);
	players = players.map((player, at) => ({
		player,
		reach: reach[at] ?? 0,
		at
	})).sort((x, y) => x.reach - y.reach || x.at - y.at).map(({ player }) => player);
	const k = players.length;
	if (k === 0) return {
		moves: [],
		orders: {
			groups: 0,
			taken: 0,
			all: true
		}
	};
	const expected = k <= exactUpTo ? 2 ** k : Math.min(2 ** k, 64 * (k - 1));
	const steps = require_orderAverage.orderAverage(k, {
		none,
		all,
		seed,
		exactUpTo,
		most: mostPairs
	});
	let done = 0;
	let step = steps.next();
	while (step.done !== true) {
		const before = done;
		done = Math.min(expected, done + step.value.length);
		const plans = step.value.map((set) => planWith(players.flatMap((player, i) => set >> i & 1 ? player.groups : [])));
		const part = (count) => from + (1 - from) * count / expected;
		const values = yield {
			plans,
			iterations,
			from: part(before),
			to: part(done)
		};
		const known = values.filter((value) => value !== void 0);
		if (known.length < values.length) return void 0;
		step = steps.next(known);
	}
	const average = step.value;
	const moves = players.map((player, i) => moveOf(player, average.shares[i] ?? [], average.errors[i] ?? []));
	return {
		moves: moves.sort(byReach(moves)),
		orders: {
			groups: k,
			taken: average.taken,
			all: average.all
		}
	};
}
function moveOf(player, [days = 0, money = 0], [daysError = 0, moneyError = 0]) {
	return {
		what: whatMoved(player),
		ids: [...new Set(player.groups.flatMap((group) => group.ids))],
		kind: player.kind,
		workingDays: days,
		money,
		error: {
			workingDays: daysError,
			money: moneyError
		},
		changes: player.groups.flatMap((group) => group.changes.map(sentenceOf))
	};
}
/** What moves most days comes first, then most money; days below a thousandth of the largest are none. */
function byReach(moves) {
	const most = moves.reduce((largest, move) => Math.max(largest, Math.abs(move.workingDays)), 0);
	const days = (move) => {
		const size = Math.abs(move.workingDays);
		return size < most / 1e3 ? 0 : size;
	};
	return (a, b) => days(b) - days(a) || Math.abs(b.money) - Math.abs(a.money) || (a.what < b.what ? -1 : 1);
}
// ../../packages/core/src/explain/compare/run/standpointOf.ts
/** Where a plan stands, in the terms of a comparison. Throws BeyondCalendarError. */
function standpointOf({ newer, earliest, draw, confidence }, plan, asked) {
	const n = draw.iterations;
	const workingDays = require_valuesOfPlans.workingDaysFrom(newer, earliest);
	const model = require_engine.compile(plan);
	const [result] = require_variants.runVariants(draw, [{ model }], (outcome) => {
		const select = require_engine.rankSelector(n);
		const rank = require_engine.rankOf(confidence, n);
		const limits = require_engine.limitRanks(confidence, n);
		const days = outcome.finishDay.slice().sort();
		const dateAt = (at) => require_engine.isoDate(model.startDay + days[at - 1]);
		const [day = 0] = select(outcome.finish, [rank]);
		const [cost = 0, costLow = 0, costHigh = 0] = select(outcome.cost, [
			rank,
			limits.low,
			limits.high
		]);
		const worked = workingDays(day, plan.start);
		return {
			value: [worked, cost],
			standing: {
				date: dateAt(rank),
				day: day + (model.startDay - require_engine.dayNumber(newer.start)),
				workingDays: worked,
				money: cost,
				cost,
				lowDate: dateAt(limits.low),
				highDate: dateAt(limits.high),
				costLow,
				costHigh
			},
			chance: chancesOf(outcome, model.startDay, asked)
		};
	});
	if (result === void 0) throw new Error("one variant has one outcome");
	return result;
}
function chancesOf({ finishDay, cost }, startDay, { finishBy, budget }) {
	const n = finishDay.length;
	const share = (counts) => {
		let count = 0;
		for (let k = 0; k < n; k++) if (counts(k)) count++;
		return count / n;
	};
	const last = finishBy === void 0 ? 0 : require_engine.dayNumber(finishBy) - startDay;
	const most = budget === void 0 ? 0 : budget + require_engine.tolerance * Math.max(1, Math.abs(budget));
	return {
		...finishBy === void 0 ? {} : { finishBy: share((k) => finishDay[k] <= last) },
		...budget === void 0 ? {} : { budget: share((k) => cost[k] <= most) }
	};
}
// ../../packages/core/src/explain/compare/compare.ts
/**
* What moved between two plans: the changes that can move a number, found by id (and `was`), in groups that can be
* taken apart; what each group moved the committed finish and the committed cost by, averaged over the orders in
* which they may come (Shapley 1953, recalled; every order up to eight groups, sampled beyond), on the same draws.
* The moves add up to the difference.
*
* Both plans run with the new one's seed, iterations and confidence; working days are counted on its calendar from
* its start. Changes that move neither date nor sum are listed apart.
*
* Problems are values, those of both plans at once; nothing is thrown. Cost: 2^k runs of the plan for k groups up to
* eight, a few hundred beyond.
*/
function compare(oldPlan, newPlan, options = {}) {
	const ready = compared(oldPlan, newPlan, options);
	if (ready.compared === void 0) return { problems: ready.problems };
	const { terms } = ready.compared;
	const steps = compareSteps(ready.compared);
	let step = steps.next();
	while (step.done !== true) {
		const { plans, iterations, from, to } = step.value;
		const tell = options.onProgress;
		const values = require_valuesOfPlans.valuesOfPlans({
			...terms,
			draw: {
				...terms.draw,
				iterations
			}
		}, plans, tell && ((done, total) => tell(Math.floor(1e3 * (from + (to - from) * done / total)), 1e3)));
		step = steps.next(values);
	}
	options.onProgress?.(1e3, 1e3);
	return {
		comparison: step.value,
		problems: []
	};
}
/** Runs both plans; the problems of both where one cannot be run. Cost: two runs. */
function compared(oldPlan, newPlan, options) {
	const wrong = require_drawOf.runProblems(options);
	if (wrong.length > 0) return { problems: wrong.map((problem) => ({
		...problem,
		of: "new"
	})) };
	const terms = {
		newer: newPlan,
		earliest: oldPlan.start < newPlan.start ? oldPlan.start : newPlan.start,
		draw: {
			seed: options.seed ?? newPlan.seed,
			design: options.design ?? "latin-hypercube",
			iterations: options.iterations ?? newPlan.iterations
		},
		confidence: options.confidence ?? newPlan.commitment.confidence
	};
	const asked = askedOf(newPlan);
	const from = tryStandpoint(terms, oldPlan, asked, "old");
	const to = tryStandpoint(terms, newPlan, asked, "new");
	if ("of" in from || "of" in to) return { problems: [from, to].filter((one) => "of" in one) };
	return {
		compared: {
			oldPlan,
			newPlan,
			terms,
			from,
			to
		},
		problems: []
	};
}
/** `compare` as a generator that yields the plans whose committed values it needs: see `movesBetween`. */
function* compareSteps({ oldPlan, newPlan, terms, from, to }) {
	const { draw, confidence } = terms;
	const aligned = alignPlan(oldPlan, newPlan);
	const bareOld = barePlan(aligned.plan);
	const pair = pairOf(bareOld, barePlan(newPlan));
	const changes = changesBetween(pair);
	const none = aligned.differs && changes.length > 0 ? require_valuesOfPlans.valuesOfPlans(terms, [bareOld])[0] ?? from.value : from.value;
	const { iterations, seed } = draw;
	const { moves, orders } = yield* movesBetween(pair, changes, {
		none,
		all: to.value,
		seed,
		iterations
	});
	const difference = {
		workingDays: to.value[0] - from.value[0],
		money: to.value[1] - from.value[1]
	};
	return {
		stamp: {
			...draw,
			version: require_version.version,
			sha256: newPlan.sha256
		},
		plan: {
			title: newPlan.title,
			currency: newPlan.currency,
			start: newPlan.start
		},
		old: {
			title: oldPlan.title,
			start: oldPlan.start,
			sha256: oldPlan.sha256
		},
		confidence,
		from: from.standing,
		to: to.standing,
		difference,
		moves: [...moves, ...restOf(moves, difference, [from.value, to.value])],
		orders,
		asked: chancesIn(askedOf(newPlan), from.chance, to.chance),
		alsoChanged: alsoChanged(pairOf(aligned.plan, newPlan), aligned.renamed),
		warnings: comparisonWarnings(oldPlan, newPlan, {
			...draw,
			confidence
		})
	};
}
function askedOf({ commitment: { finishBy, budget } }) {
	return {
		...finishBy === void 0 ? {} : { finishBy },
		...budget === void 0 ? {} : { budget }
	};
}
function tryStandpoint(terms, plan, asked, of) {
	try {
		return standpointOf(terms, barePlan(plan), asked);
	} catch (error) {
		if (error instanceof require_stage.BeyondCalendarError) return {
			...error.problem,
			of
		};
		throw error;
	}
}
/**
* What no change explains: names can decide between equals (whom a person serves first) and say which draws an item
* gets. Rounding is no move.
*/
function restOf(moves, difference, values) {
	const left = (key, d) => {
		const rest = difference[key] - moves.reduce((sum, move) => sum + move[key], 0);
		const size = values.reduce((most, value) => Math.max(most, Math.abs(value[d] ?? 0)), 1);
		return Math.abs(rest) > 1e-10 * size ? rest : 0;
	};
	const rest = {
		workingDays: left("workingDays", 0),
		money: left("money", 1)
	};
	if (rest.workingDays === 0 && rest.money === 0) return [];
	const what = "Items renamed: ties between equals fall otherwise, and what lost its `was` is drawn anew";
	return [{
		...rest,
		what,
		ids: [],
		kind: "other",
		error: {
			workingDays: 0,
			money: 0
		},
		changes: [what]
	}];
}
function chancesIn({ finishBy, budget }, from, to) {
	return {
		...finishBy === void 0 ? {} : { finishBy: {
			date: finishBy,
			from: from.finishBy ?? 0,
			to: to.finishBy ?? 0
		} },
		...budget === void 0 ? {} : { budget: {
			sum: budget,
			from: from.budget ?? 0,
			to: to.budget ?? 0
		} }
	};
}
// ../../packages/parallel/src/compareInParallel.ts
/** How many simulations' work a comparison is, roughly, where there are a few groups of changes. */
var comparisonFactor = 16;
/** Plans in a part at least: plans that follow each other differ by little. */
var leastPlans = 4;
/** Parts per thread and ask. */
var partsPerThread = 3;
/**
* `compare(oldPlan, newPlan, options)` on several threads: the same comparison, to the bit, however many there are.
* The hybrid plans whose values are asked for are shared out; what to ask next is decided on the caller's thread.
*
* Problems are values. Rejects with the signal's reason when aborted, and with the error of a thread that broke.
*/
async function compareInParallel(oldPlan, newPlan, options = {}) {
	const { pool, signal } = options;
	signal?.throwIfAborted();
	const ready = compared(oldPlan, newPlan, options);
	const subject = ready.compared;
	if (subject === void 0) return { problems: ready.problems };
	const { seed, design, iterations } = subject.terms.draw;
	const work = comparisonFactor * require_node.workOf(newPlan, iterations);
	const threads = require_node.threadsFor(work, Number.POSITIVE_INFINITY, options);
	if (pool === void 0 || threads === 0) return compare(oldPlan, newPlan, options);
	const run = {
		seed,
		design,
		...signal === void 0 ? {} : { signal }
	};
	return require_node.withCrew({
		pool,
		threads,
		plan: newPlan,
		options: run
	}, (crew) => compareOn(crew, subject, options));
}
async function compareOn(crew, subject, { onProgress }) {
	const steps = compareSteps(subject);
	let step = steps.next();
	while (step.done !== true) {
		const { plans, iterations, from, to } = step.value;
		const tell = onProgress && ((done, total) => onProgress(Math.floor(1e3 * (from + (to - from) * done / total)), 1e3));
		const terms = {
			...subject.terms,
			draw: {
				...subject.terms.draw,
				iterations
			}
		};
		const values = await valuesOn(crew, terms, step.value, tell) ?? require_valuesOfPlans.valuesOfPlans(terms, plans, tell);
		step = steps.next(values);
	}
	onProgress?.(1e3, 1e3);
	return {
		comparison: step.value,
		problems: []
	};
}
/** Values of the plans of one ask, in its order; undefined when no thread could be had. */
async function valuesOn(crew, { newer: _, ...terms }, { plans }, tell) {
	const size = Math.max(leastPlans, Math.ceil(plans.length / (crew.length * partsPerThread)));
	const firsts = Array.from({ length: Math.ceil(plans.length / size) }, (_, part) => part * size);
	const progress = require_node.progressOf(plans.length, tell);
	const values = new Array(plans.length);
	return await require_node.shareOut(crew, firsts, async (helper, first) => {
		const part = plans.slice(first, first + size);
		const answer = await helper.ask({
			kind: "values",
			terms,
			plans: part
		}, [], (done) => progress.during(helper, done));
		if (answer.kind !== "values") throw new Error(`Asked for values, got "${answer.kind}".`);
		answer.values.forEach((value, i) => {
			values[first + i] = value;
		});
		progress.after(helper, part.length);
	}) ? values : void 0;
}
Object.defineProperty(exports, "compareInParallel", {
	enumerable: true,
	get: function() {
		return compareInParallel;
	}
});

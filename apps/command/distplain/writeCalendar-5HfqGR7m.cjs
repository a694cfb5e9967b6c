const require_engine = require("./engine-Bbth-FEh.cjs");
const require_version = require("./version-BsDMLdbb.cjs");
const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_plan = require("./plan-DgohkeUq.cjs");
// ../../packages/core/src/exchange/calendar/uidOf.ts
/** Names an event of a plan for good: from the plan's title, what it is and whose, never from a date that may move. */
function uidOf(plan, kind, id) {
	return `${kind}-${id}-${require_readPlan.bytesToHex(require_readPlan.sha256(require_readPlan.utf8ToBytes(plan.title))).slice(0, 12)}@leeway`;
}
// ../../packages/core/src/communicate/dueEvents.ts
/**
* The due list as calendar events. A rhythm none of whose days was moved is one recurring event; otherwise every
* occasion is an event of its own.
*/
function dueEvents(plan, { due }) {
	const by = /* @__PURE__ */ new Map();
	for (const each of due) by.set(each.stakeholder.id, [...by.get(each.stakeholder.id) ?? [], each]);
	return [...by].flatMap(([id, all]) => {
		const [first] = all;
		const every = first === void 0 ? void 0 : seriesOf(all);
		if (first !== void 0 && every !== void 0) return [{
			uid: uidOf(plan, "inform", id),
			date: first.date,
			every,
			...wordsOf(first)
		}];
		return all.map((each) => {
			return {
				uid: uidOf(plan, "inform", `${id}-${each.milestone?.id ?? each.movedFrom ?? each.date}`),
				date: each.date,
				...wordsOf(each)
			};
		});
	});
}
var RHYTHMS = {
	week: {
		unit: "week",
		interval: 1
	},
	"two-weeks": {
		unit: "week",
		interval: 2
	},
	month: {
		unit: "month",
		interval: 1
	},
	quarter: {
		unit: "month",
		interval: 3
	}
};
/** How the occasions recur, where a rule of the standard says exactly them. */
function seriesOf(all) {
	const [first] = all;
	if (first === void 0 || all.length < 2 || first.every === "milestone") return void 0;
	if (all.some(({ movedFrom }) => movedFrom !== void 0)) return void 0;
	const { unit, interval } = RHYTHMS[first.every];
	if (unit === "month" && !all.every(({ date }) => dayOf(date) === dayOf(first.date) && dayOf(date) <= 28)) return void 0;
	return {
		unit,
		interval,
		count: all.length
	};
}
function dayOf(date) {
	return Number(date.slice(8, 10));
}
function wordsOf({ stakeholder, owner, how, what, milestone }) {
	const about = milestone === void 0 ? "" : `: ${milestone.name}`;
	const lines = [
		what,
		how === void 0 ? void 0 : `How: ${how}`,
		owner === void 0 ? void 0 : `Who: ${owner.name}`
	].filter((line) => line !== void 0);
	return {
		summary: `Inform ${stakeholder.name}${about}`,
		...lines.length > 0 && { description: lines.join("\n") },
		category: "Communication"
	};
}
// ../../packages/core/src/communicate/rhythm.ts
/** Beyond this a rhythm is cut: a century of weeks. */
var MOST = 5300;
/**
* The days of a rhythm from its first to `until`, both included. Weeks keep the day of the week. Months keep the day
* of the month; where a month is too short its last day stands in, and the next month has the day again.
*/
function rhythm(every, first, until) {
	const days = [];
	for (let k = 0; k < MOST; k++) {
		const day = every === "week" || every === "two-weeks" ? require_engine.isoDate(require_engine.dayNumber(first) + k * (every === "week" ? 7 : 14)) : monthsAfter(first, k * (every === "month" ? 1 : 3));
		if (day > until) break;
		days.push(day);
	}
	return days;
}
function monthsAfter(first, months) {
	const count = Number(first.slice(0, 4)) * 12 + Number(first.slice(5, 7)) - 1 + months;
	const month = (year, index) => `${String(year + Math.floor(index / 12)).padStart(4, "0")}-${String(index % 12 + 1).padStart(2, "0")}`;
	const begins = require_engine.dayNumber(`${month(0, count)}-01`);
	const length = require_engine.dayNumber(`${month(0, count + 1)}-01`) - begins;
	return require_engine.isoDate(begins + Math.min(Number(first.slice(8, 10)), length) - 1);
}
// ../../packages/core/src/communicate/dueList.ts
/**
* Who has to be told of what, how and when: every occasion of `stakeholders[].inform` up to the committed finish, in
* order of days. A day that holds no work on the plan's calendar is moved to the next that does (two occasions of one
* stakeholder never fall together); a milestone's occasion is the day it is committed to, unmoved.
*
* @param forecast  Of this plan.
*/
function dueList(plan, forecast, { owner, from } = {}) {
	const until = forecast.committed.date;
	const names = new Map([...plan.people, ...plan.stakeholders].map(({ id, name }) => [id, {
		id,
		name
	}]));
	const asked = plan.stakeholders.filter(({ inform }) => inform !== void 0 && (owner === void 0 || inform.owner === owner));
	const due = asked.flatMap((stakeholder) => occasions(plan, forecast, stakeholder, until, names)).filter(({ date }) => from === void 0 || date >= from).sort((a, b) => compare(a.date, b.date) || compare(a.stakeholder.id, b.stakeholder.id));
	const without = asked.flatMap(({ id, name, inform = {} }) => {
		const missing = [
			"every",
			"owner",
			"how",
			"what"
		].filter((key) => inform[key] === void 0);
		return missing.length === 0 ? [] : [{
			id,
			name,
			missing: [...missing]
		}];
	});
	return {
		until,
		...from !== void 0 && { from },
		due,
		without
	};
}
function occasions(plan, forecast, { id, name, inform }, until, names) {
	const every = inform?.every;
	if (inform === void 0 || every === void 0) return [];
	const owner = inform.owner === void 0 ? void 0 : names.get(inform.owner) ?? {
		id: inform.owner,
		name: inform.owner
	};
	const same = {
		stakeholder: {
			id,
			name
		},
		every,
		...owner !== void 0 && { owner },
		...inform.how !== void 0 && { how: inform.how },
		...inform.what !== void 0 && { what: inform.what }
	};
	const first = inform.from ?? plan.start;
	if (every === "milestone") return forecast.tasks.filter(({ milestone, needed, finishDates }) => milestone && needed > 0 && finishDates.committed >= first).map((task) => ({
		date: task.finishDates.committed,
		...same,
		milestone: {
			id: task.id,
			name: task.name
		}
	}));
	const seen = /* @__PURE__ */ new Set();
	return rhythm(every, first, until).flatMap((day) => {
		const date = nextWorkday(plan, day);
		if (seen.has(date)) return [];
		seen.add(date);
		return [{
			date,
			...date !== day && { movedFrom: day },
			...same
		}];
	});
}
/** The day itself where it holds work on the plan's calendar, otherwise the next that does; itself where none does. */
function nextWorkday(plan, day) {
	const calendar = plan.calendars.get(plan.calendar);
	if (calendar === void 0) return day;
	const first = require_engine.dayNumber(day);
	for (let n = first; n <= first + 366; n++) {
		const iso = require_engine.isoDate(n);
		const weekday = require_plan.WEEKDAYS[require_engine.weekdayOf(n)];
		if (weekday !== void 0 && calendar.workdays.includes(weekday) && !calendar.holidays.some(({ from, to }) => from <= iso && iso <= to)) return iso;
	}
	return day;
}
function compare(a, b) {
	return a < b ? -1 : a > b ? 1 : 0;
}
// ../../packages/core/src/exchange/calendar/contentLine.ts
var MOST_OCTETS = 75;
/**
* A text as a value: backslash, semicolon, comma and line break escaped, other control characters left out (3.3.11).
* Whatever breaks a line by Unicode (5.8) is a line break: some readers take it for the end of the value.
*/
function textValue(text) {
	return text.replace(/\r\n?|[\v\f\u0085\u2028\u2029]/g, "\n").replace(/[\u0000-\u0008\u000E-\u001F\u007F]/g, "").replace(/[\\;,]/g, (char) => `\\${char}`).replace(/\n/g, "\\n");
}
/**
* A content line, folded so that no line is longer than 75 octets of UTF-8 without its break, and no character is cut
* in two (3.1).
*/
function contentLine(name, value) {
	const lines = [];
	let line = "";
	let octets = 0;
	for (const char of `${name}:${value}`) {
		const size = require_readPlan.utf8ToBytes(char).length;
		if (octets + size > MOST_OCTETS) {
			lines.push(line);
			line = " ";
			octets = 1;
		}
		line += char;
		octets += size;
	}
	return [...lines, line].map((each) => `${each}\r\n`).join("");
}
// ../../packages/core/src/exchange/calendar/writeCalendar.ts
/**
* Events as a calendar file that other programs open. Days are whole days without a time zone: the end is the day
* after, as the standard has it, and nobody is shown as busy.
*
* Source  RFC 5545 (2009): 3.1 lines, 3.6.1 events, 3.8.5.3 recurrence, 3.8.7.2 stamp.
*/
function writeCalendar(events, { name, stamp }) {
	const stamped = stamp.replace(/\.\d+/, "").replace(/[-:]/g, "");
	return [
		["BEGIN", "VCALENDAR"],
		["VERSION", "2.0"],
		["PRODID", `-//Leeway//Leeway ${require_version.version}//EN`],
		["CALSCALE", "GREGORIAN"],
		["X-WR-CALNAME", textValue(name)],
		...events.flatMap((event) => eventLines(event, stamped)),
		["END", "VCALENDAR"]
	].map(([key = "", value = ""]) => contentLine(key, value)).join("");
}
function eventLines(event, stamped) {
	const { uid, date, summary, description, category, every } = event;
	return [
		["BEGIN", "VEVENT"],
		["UID", textValue(uid)],
		["DTSTAMP", stamped],
		["DTSTART;VALUE=DATE", basic(date)],
		["DTEND;VALUE=DATE", basic(require_engine.isoDate(require_engine.dayNumber(date) + 1))],
		...every === void 0 ? [] : [["RRULE", rule(every)]],
		["SUMMARY", textValue(summary)],
		...description === void 0 ? [] : [["DESCRIPTION", textValue(description)]],
		...category === void 0 ? [] : [["CATEGORIES", textValue(category)]],
		["TRANSP", "TRANSPARENT"],
		["END", "VEVENT"]
	];
}
function basic(date) {
	return date.replaceAll("-", "");
}
function rule({ unit, interval, count }) {
	return `FREQ=${unit === "week" ? "WEEKLY" : "MONTHLY"}${interval === 1 ? "" : `;INTERVAL=${interval}`};COUNT=${count}`;
}
Object.defineProperty(exports, "dueEvents", {
	enumerable: true,
	get: function() {
		return dueEvents;
	}
});
Object.defineProperty(exports, "dueList", {
	enumerable: true,
	get: function() {
		return dueList;
	}
});
Object.defineProperty(exports, "uidOf", {
	enumerable: true,
	get: function() {
		return uidOf;
	}
});
Object.defineProperty(exports, "writeCalendar", {
	enumerable: true,
	get: function() {
		return writeCalendar;
	}
});

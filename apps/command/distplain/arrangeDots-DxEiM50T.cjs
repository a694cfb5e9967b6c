const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
// ../../packages/charts/src/dates/dayToIso.ts
/** Milliseconds in a day of 24 hours: the only length a UTC day has in ECMAScript. */
var dayMs = 864e5;
/** The UTC midnight that opens a calendar date, in milliseconds since 1970. NaN when it is not a date. */
function isoToMs(iso) {
	return /^\d{4}-\d{2}-\d{2}$/.test(iso) ? Date.parse(`${iso}T00:00:00Z`) : NaN;
}
/** The calendar date `day` whole days after `start`. */
function dayToIso(start, day) {
	const date = new Date(isoToMs(start) + Math.floor(day) * dayMs);
	return Number.isNaN(date.getTime()) ? "" : date.toISOString().slice(0, 10);
}
/** The date a moment falls on, read as a finish: work done at midnight was done the day before. */
function finishDate(start, at) {
	return dayToIso(start, Math.max(0, Math.ceil(at) - 1));
}
// ../../packages/charts/src/dates/calendarTicks.ts
var single = {
	unit: "day",
	every: 1,
	days: 1
};
var steps = [
	{
		unit: "day",
		every: 7,
		days: 7
	},
	{
		unit: "day",
		every: 14,
		days: 14
	},
	{
		unit: "month",
		every: 1,
		days: 30.4
	},
	{
		unit: "month",
		every: 2,
		days: 60.9
	},
	{
		unit: "month",
		every: 3,
		days: 91.3
	},
	{
		unit: "month",
		every: 6,
		days: 182.6
	}
];
/**
* Ticks at the start of days, weeks (Mondays), months or years: at most `most` of them, on round calendar
* dates. A tick opens an interval, so its label belongs to the right of it.
*
* @param from,to  Days since `start`, from < to.
*/
function calendarTicks(start, from, to, most) {
	const count = Math.max(2, most);
	const span = to - from;
	const step = span <= 3 * count ? single : steps.find((each) => span / each.days <= count) ?? yearStep(span / 365.25, count);
	const named = step === single ? Math.ceil(span / count) : 1;
	const ticks = [];
	let above = "";
	opening(step, isoToMs(start), from, to).forEach((day, k) => {
		const iso = dayToIso(start, day);
		if (iso.length !== 10) return;
		if (k % named !== 0) {
			ticks.push({
				day,
				label: "",
				below: ""
			});
			return;
		}
		const [label, below] = words(iso, step);
		ticks.push({
			day,
			label,
			below: below === above ? "" : below
		});
		above = below;
	});
	return ticks;
}
/** The label of a tick, and what it lies in. */
function words(iso, step) {
	const year = iso.slice(0, 4);
	if (step.unit === "year") return [year, ""];
	const date = require_formatDate.formatDate(iso, "shortest");
	const month = date.replace(/^\d+ /, "");
	if (step.unit === "month") return [month, year];
	if (step.every > 1) return [date, year];
	return [require_formatDate.formatDate(iso, "weekday-no-year").replace(/ \w+$/, ""), `${month} ${year}`];
}
function yearStep(years, count) {
	let every = 1;
	for (const factor of [
		2,
		2.5,
		2,
		2,
		2.5,
		2,
		2,
		2.5,
		2
	]) {
		if (years / every <= count) break;
		every *= factor;
	}
	return {
		unit: "year",
		every,
		days: every * 365.25
	};
}
function opening(step, origin, from, to) {
	const days = [];
	if (step.unit === "day") {
		const shift = origin / dayMs - 4;
		let day = Math.ceil((from + shift) / step.every) * step.every - shift;
		for (; day <= to; day += step.every) days.push(day);
		return days;
	}
	const first = new Date(origin + Math.floor(from) * dayMs);
	const months = step.unit === "year" ? step.every * 12 : step.every;
	let month = first.getUTCFullYear() * 12 + (step.unit === "year" ? 0 : first.getUTCMonth());
	month = Math.floor(month / months) * months;
	for (;; month += months) {
		const opens = /* @__PURE__ */ new Date(0);
		opens.setUTCFullYear(Math.floor(month / 12), month % 12, 1);
		const day = (opens.getTime() - origin) / dayMs;
		if (!(day <= to)) return days;
		if (day >= from) days.push(day);
	}
}
// ../../packages/charts/src/curves/interpolate.ts
/** The value at probability `p`, linear between the points of a quantile curve, flat beyond its ends. */
function valueAt(curve, p) {
	return between(curve.p, curve.at, p);
}
/** The share of futures at or below `value`: the curve read the other way. 1 above its last point, 0 below its first. */
function shareAt(curve, value) {
	const last = curve.at.length - 1;
	if (last < 0 || value < (curve.at[0] ?? 0)) return 0;
	if (value >= (curve.at[last] ?? 0)) return 1;
	let k = last;
	while (k > 0 && (curve.at[k] ?? 0) > value) k--;
	const [a, b] = [curve.at[k] ?? 0, curve.at[k + 1] ?? 0];
	const [pa, pb] = [curve.p[k] ?? 0, curve.p[k + 1] ?? 1];
	return b > a ? pa + (pb - pa) * (value - a) / (b - a) : pa;
}
/** Linear between points (x ascending), flat beyond the ends; NaN when there are none. */
function between(x, y, at) {
	const last = x.length - 1;
	if (last < 0) return NaN;
	if (at <= (x[0] ?? 0)) return y[0] ?? NaN;
	for (let k = 1; k <= last; k++) {
		const [x0, x1] = [x[k - 1] ?? 0, x[k] ?? 0];
		if (at <= x1) {
			const [y0, y1] = [y[k - 1] ?? 0, y[k] ?? 0];
			return x1 > x0 ? y0 + (y1 - y0) * (at - x0) / (x1 - x0) : y1;
		}
	}
	return y[last] ?? NaN;
}
// ../../packages/charts/src/dates/askedDay.ts
/** The end of the day asked for, in days since the start; NaN when none is asked for. */
function askedDay({ asked, plan }) {
	return asked.finishByDay ?? (isoToMs(asked.finishBy ?? "") - isoToMs(plan.start)) / 864e5 + 1;
}
// ../../packages/charts/src/dots/arrangeDots.ts
var spans = [
	1,
	7,
	14,
	28,
	91,
	182,
	364,
	728,
	1820,
	3640,
	7280,
	18200
];
var largest = 24;
/** Dots this large are easy to count: no need for longer columns. */
var easy = 11;
/**
* Arranges dots in columns of days or weeks, so large as the room allows.
*
* Columns are counted from `anchor`, which is then the edge between two of them: dots at or before it stand
* to its left, the others to its right. Spans between a day and a week are not used: work seldom ends on a
* weekend, and such columns would rise and fall with the weekends they hold. A column that is wide enough
* stacks its dots several abreast.
*
* @param values  Days since the start, ascending.
* @param from,to  What the axis must at least hold.
*/
function arrangeDots(values, anchor, from, to, width, height) {
	let best;
	for (const days of spans) {
		const bins = values.map((value) => Math.ceil((value - anchor) / days - 1e-9));
		const first = Math.min(Math.floor((from - anchor) / days) + 1, bins[0] ?? 0);
		const last = Math.max(Math.ceil((to - anchor) / days), bins[bins.length - 1] ?? 0, first + 2);
		const column = width / (last - first + 1);
		if (column < 2) continue;
		const counts = /* @__PURE__ */ new Map();
		for (const bin of bins) counts.set(bin, (counts.get(bin) ?? 0) + 1);
		let most = 0;
		for (const count of counts.values()) most = Math.max(most, count);
		for (let abreast = 1; abreast <= most && column / abreast >= 4; abreast++) {
			const rows = Math.ceil(most / abreast);
			const pitch = Math.min(column / abreast, height / rows, largest);
			if (best !== void 0 && pitch <= best.pitch + .5) continue;
			const origin = anchor + (first - 1) * days;
			const dots = place(bins, first, column, pitch, abreast);
			best = {
				days,
				from: origin,
				to: origin + (last - first + 1) * days,
				pitch,
				height: rows * pitch,
				dots
			};
		}
		if (best !== void 0 && best.pitch >= easy) break;
	}
	return best ?? {
		days: 1,
		from,
		to: Math.max(to, from + 1),
		pitch: 4,
		height: 4,
		dots: values.map(() => ({
			x: 0,
			y: 0
		}))
	};
}
function place(bins, first, column, pitch, abreast) {
	const seen = /* @__PURE__ */ new Map();
	return bins.map((bin) => {
		const k = seen.get(bin) ?? 0;
		seen.set(bin, k + 1);
		const across = k % abreast - (abreast - 1) / 2;
		return {
			x: (bin - first + .5) * column + across * pitch,
			y: (Math.floor(k / abreast) + .5) * pitch
		};
	});
}
Object.defineProperty(exports, "arrangeDots", {
	enumerable: true,
	get: function() {
		return arrangeDots;
	}
});
Object.defineProperty(exports, "askedDay", {
	enumerable: true,
	get: function() {
		return askedDay;
	}
});
Object.defineProperty(exports, "calendarTicks", {
	enumerable: true,
	get: function() {
		return calendarTicks;
	}
});
Object.defineProperty(exports, "dayMs", {
	enumerable: true,
	get: function() {
		return dayMs;
	}
});
Object.defineProperty(exports, "dayToIso", {
	enumerable: true,
	get: function() {
		return dayToIso;
	}
});
Object.defineProperty(exports, "finishDate", {
	enumerable: true,
	get: function() {
		return finishDate;
	}
});
Object.defineProperty(exports, "isoToMs", {
	enumerable: true,
	get: function() {
		return isoToMs;
	}
});
Object.defineProperty(exports, "shareAt", {
	enumerable: true,
	get: function() {
		return shareAt;
	}
});
Object.defineProperty(exports, "valueAt", {
	enumerable: true,
	get: function() {
		return valueAt;
	}
});

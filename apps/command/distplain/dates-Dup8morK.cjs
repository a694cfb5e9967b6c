// ../../packages/core/src/plan/definition/dates.ts
/** Whether year-month-day names a day of the Gregorian calendar; the form is already checked. */
function isCalendarDate(text) {
	const [year = 0, month = 0, day = 0] = text.split("-").map(Number);
	if (month < 1 || month > 12 || day < 1) return false;
	const leap = year % 4 === 0 && year % 100 !== 0 || year % 400 === 0;
	return day <= (month === 2 ? leap ? 29 : 28 : [
		4,
		6,
		9,
		11
	].includes(month) ? 30 : 31);
}
var MONTHS = [
	"jan",
	"feb",
	"mar",
	"apr",
	"may",
	"jun",
	"jul",
	"aug",
	"sep",
	"oct",
	"nov",
	"dec"
];
/** The ISO form of a date written another way, where only one reading makes sense. */
function likelyDate(written) {
	const text = written.replace(/^["']|["']$/g, "").trim();
	let match = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})(?:[T ].*)?$/.exec(text);
	if (match) return iso(match[1], match[2], match[3]);
	match = /^(\d{4})(\d{2})(\d{2})$/.exec(text);
	if (match) return iso(match[1], match[2], match[3]);
	match = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})$/.exec(text);
	if (match) return iso(match[3], match[2], match[1]);
	match = /^(\d{1,2})[/-](\d{1,2})[/-](\d{4})$/.exec(text);
	if (match) {
		const [first, second] = [Number(match[1]), Number(match[2])];
		if (first > 12 || first === second) return iso(match[3], match[2], match[1]);
		return second > 12 ? iso(match[3], match[1], match[2]) : void 0;
	}
	match = /^(\d{1,2})\.?\s+([A-Za-z]{3})[a-z]*\.?,?\s+(\d{4})$/.exec(text);
	if (match) return iso(match[3], month(match[2]), match[1]);
	match = /^([A-Za-z]{3})[a-z]*\.?\s+(\d{1,2}),?\s+(\d{4})$/.exec(text);
	return match ? iso(match[3], month(match[1]), match[2]) : void 0;
}
function month(name = "") {
	return String(MONTHS.indexOf(name.toLowerCase()) + 1);
}
function iso(year = "", month = "", day = "") {
	const date = `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
	return isCalendarDate(date) ? date : void 0;
}
Object.defineProperty(exports, "isCalendarDate", {
	enumerable: true,
	get: function() {
		return isCalendarDate;
	}
});
Object.defineProperty(exports, "likelyDate", {
	enumerable: true,
	get: function() {
		return likelyDate;
	}
});

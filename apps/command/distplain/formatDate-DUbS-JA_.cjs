// ../../packages/charts/src/words/formatDate.ts
var weekdays = [
	"Sunday",
	"Monday",
	"Tuesday",
	"Wednesday",
	"Thursday",
	"Friday",
	"Saturday"
];
var months = [
	"January",
	"February",
	"March",
	"April",
	"May",
	"June",
	"July",
	"August",
	"September",
	"October",
	"November",
	"December"
];
/**
* An ISO 8601 calendar date in English words, day before month.
*
* The names are spelled out here because `Intl` changes them with the version of its data ("Sep", "Sept").
* Text that is not an existing date comes back as it is.
*
* @example
* formatDate("2027-11-16", "long"); // "Tuesday 16 November 2027"
*/
function formatDate(iso, style = "short") {
	const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
	if (parts === null) return iso;
	const [year, month, day] = [
		Number(parts[1]),
		Number(parts[2]),
		Number(parts[3])
	];
	const date = /* @__PURE__ */ new Date(0);
	date.setUTCFullYear(year, month - 1, day);
	const monthName = months[month - 1];
	const weekday = weekdays[date.getUTCDay()];
	if (monthName === void 0 || weekday === void 0 || date.getUTCDate() !== day) return iso;
	const short = monthName.slice(0, 3);
	switch (style) {
		case "long": return `${weekday} ${day} ${monthName} ${year}`;
		case "weekday": return `${weekday.slice(0, 3)} ${day} ${short} ${year}`;
		case "weekday-no-year": return `${weekday.slice(0, 3)} ${day} ${short}`;
		case "short": return `${day} ${short} ${year}`;
		case "shortest": return `${day} ${short}`;
	}
}
Object.defineProperty(exports, "formatDate", {
	enumerable: true,
	get: function() {
		return formatDate;
	}
});

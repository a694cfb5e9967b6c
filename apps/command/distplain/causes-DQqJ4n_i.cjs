const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_heldText = require("./heldText-aTdl5C1y.cjs");
const require_moneyWords = require("./moneyWords-DDKtVBSe.cjs");
const require_program = require("./program.cjs");
// src/text/causes.ts
var SHOWN = 5;
function largestFirst(a, b) {
	const byDays = Math.abs(b.days) - Math.abs(a.days);
	const byMoney = Math.abs(b.money) - Math.abs(a.money);
	return byDays || byMoney || (a.id < b.id ? -1 : 1);
}
/** The five largest drivers, in working days and money, each the mean over all futures. */
function driverLines(forecast, width) {
	const drivers = forecast.drivers.filter(({ days, money }) => days !== 0 || money !== 0).sort(largestFirst).slice(0, SHOWN);
	if (drivers.length === 0) return ["Nothing in the plan is uncertain, so nothing drives it."];
	const money = require_moneyWords.hasMoney(forecast);
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "days",
			align: "right"
		},
		...money ? [{
			heading: forecast.plan.currency,
			align: "right"
		}] : [],
		{
			heading: "",
			align: "left"
		}
	];
	const room = Math.max(8, Math.min(24, width - 58));
	const largest = Math.max(...drivers.map(({ days }) => days));
	const rows = drivers.map((driver) => [
		driver.name,
		require_columnDays.columnDays(driver.days),
		...money ? [require_moneyWords.meanSum(driver.money)] : [],
		require_program.bar(driver.days, largest, room)
	]);
	return ["What drives it: working days and money it adds, on average", ...require_program.table(columns, rows, width)];
}
function side(days) {
	return require_columnDays.columnDays(days, true);
}
/** What each item alone does to the committed level, held low and held high. `money`: whether the plan speaks of it. */
function tornadoLines(bars, { money, currency }, width) {
	if (bars.length === 0) return ["One at a time: no single item moves the committed finish or sum."];
	const columns = [
		{
			heading: "",
			align: "left"
		},
		{
			heading: "low",
			align: "right"
		},
		{
			heading: "days",
			align: "right"
		},
		{
			heading: "high",
			align: "right"
		},
		{
			heading: "days",
			align: "right"
		},
		...money ? [{
			heading: `${currency}, low to high`,
			align: "left"
		}] : []
	];
	const rows = bars.slice(0, 10).map((item) => [
		item.name,
		require_heldText.heldText(item, "low", currency),
		side(item.low.workingDays),
		require_heldText.heldText(item, "high", currency),
		side(item.high.workingDays),
		...money ? [`${require_moneyWords.meanSum(item.low.money)} to ${require_moneyWords.meanSum(item.high.money)}`] : []
	]);
	return ["One at a time: the committed level, this item low or high", ...require_program.table(columns, rows, width)];
}
Object.defineProperty(exports, "driverLines", {
	enumerable: true,
	get: function() {
		return driverLines;
	}
});
Object.defineProperty(exports, "tornadoLines", {
	enumerable: true,
	get: function() {
		return tornadoLines;
	}
});

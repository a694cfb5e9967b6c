const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
// src/text/moneyWords.ts
/** Whether the plan speaks of money at all; a plan without costs is told in days alone. */
function hasMoney(forecast) {
	return forecast.cost.sd > 0 || forecast.cost.mean !== 0 || forecast.asked.budget !== void 0;
}
/** The committed sum, to the digits its sampling limits support. */
function committedSum(forecast) {
	const { cost, costLow, costHigh } = forecast.committed;
	return require_formatMoney.formatMoney(require_roundToLimits.roundToLimits(cost, costLow, costHigh), forecast.plan.currency);
}
/** Money that stands for a mean over futures, without the currency: two significant digits. */
function meanSum(value) {
	return require_groupDigits.groupDigits(require_roundSignificant.roundSignificant(value, 2));
}
Object.defineProperty(exports, "committedSum", {
	enumerable: true,
	get: function() {
		return committedSum;
	}
});
Object.defineProperty(exports, "hasMoney", {
	enumerable: true,
	get: function() {
		return hasMoney;
	}
});
Object.defineProperty(exports, "meanSum", {
	enumerable: true,
	get: function() {
		return meanSum;
	}
});

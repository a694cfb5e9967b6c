const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
// ../../packages/charts/src/sentences/statedSum.ts
/** A sum stated in the plan, not sampled: to the unit. */
function statedSum(value, currency) {
	return require_formatMoney.formatMoney(Math.round(value), currency);
}
Object.defineProperty(exports, "statedSum", {
	enumerable: true,
	get: function() {
		return statedSum;
	}
});

// ../../packages/charts/src/words/formatPercent.ts
/**
* A share as a whole percentage: "74 %". Nothing that can happen reads as 0 % and nothing that can fail reads
* as 100 %: "under 1 %", "over 99 %".
*/
function formatPercent(share) {
	if (!Number.isFinite(share)) return "not known";
	if (share <= 0) return "0 %";
	if (share >= 1) return "100 %";
	if (share < .01) return "under 1 %";
	if (share > .99) return "over 99 %";
	return `${Math.round(share * 100)} %`;
}
Object.defineProperty(exports, "formatPercent", {
	enumerable: true,
	get: function() {
		return formatPercent;
	}
});

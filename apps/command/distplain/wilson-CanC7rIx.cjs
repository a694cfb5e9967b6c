// ../../packages/core/src/estimating/score/wilson.ts
/** Standard normal quantile at 0.975. */
var Z = 1.959963984540054;
/**
* The share k of n with its 95 % limits by Wilson's score interval: all shares p that differ from k/n by at most 1.96
* standard errors sqrt(p (1 - p) / n). Stays within 0 and 1 and is of use for small n.
* Source: Wilson (1927), "Probable inference, the law of succession, and statistical inference", Journal of the American
* Statistical Association 22, 209-212; recommended by Newcombe (1998), Statistics in Medicine 17, 857-872.
*
* @param k  0 <= k <= n, whole; n = 0 gives limits 0 and 1.
*/
function wilson(k, n) {
	if (n === 0) return {
		k,
		n,
		share: 0,
		low: 0,
		high: 1
	};
	const share = k / n;
	const z2 = Z * Z;
	const middle = k + z2 / 2;
	const half = Z * Math.sqrt(k * (n - k) / n + z2 / 4);
	return {
		k,
		n,
		share,
		low: k === 0 ? 0 : (middle - half) / (n + z2),
		high: k === n ? 1 : (middle + half) / (n + z2)
	};
}
Object.defineProperty(exports, "wilson", {
	enumerable: true,
	get: function() {
		return wilson;
	}
});

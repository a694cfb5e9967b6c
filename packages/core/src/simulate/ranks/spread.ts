/**
 * Standard errors to either side: what is wanted lies outside with probability 3e-12 (normal distribution, both
 * sides).
 */
const z = 7;

/**
 * The ranks among the first `seen` of `total` values that the value at probability p of all of them can have.
 *
 * The first values are a sample without replacement, so the rank's standard error is
 * sqrt(p (1 - p) seen (1 - seen / total)) (Cochran (1977), Sampling Techniques, 3rd ed., ch. 3.2; recalled). Where p is
 * near 0 or 1 the normal distribution is too narrow on one side: the second term of Cornish and Fisher's expansion,
 * skewness (z^2 - 1) / 6 standard errors, is added, on both sides (Johnson & Kotz (1970), Distributions in
 * Statistics, Continuous Univariate Distributions 1, ch. 12.5; recalled). Latin hypercube samples spread less.
 */
export function spread(p: number, seen: number, total: number): { low: number; high: number } {
  const left = Math.max(0, 1 - seen / total);
  const width = z * Math.sqrt(p * (1 - p) * seen * left) + skew(p);
  return { low: Math.floor(p * seen - width), high: Math.ceil(p * seen + width) + 1 };
}

/** The largest number of ranks that `spread` can enclose while n values are seen: half of them are. */
export function widest(p: number, n: number): number {
  return Math.ceil(z * Math.sqrt(p * (1 - p) * n) + 2 * skew(p)) + 3;
}

function skew(p: number): number {
  return (Math.abs(1 - 2 * p) * (z * z - 1)) / 6;
}

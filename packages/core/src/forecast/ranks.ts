/**
 * Rank (1-based) of percentile p among n values in ascending order: the smallest value v such that at least p
 * of the n are <= v (plan format, "Answers"). The tolerance keeps 0.8 * 10 from becoming rank 9.
 */
export function rankOf(p: number, n: number): number {
  return Math.min(n, Math.max(1, Math.ceil(p * n - 1e-9)));
}

/**
 * Ranks of the distribution-free 95 % limits of percentile p: floor(np - w) and ceil(np + w) + 1 with
 * w = 1.96 sqrt(np(1 - p)), kept within 1 and n. Source: Conover (1999), Practical Nonparametric Statistics,
 * 3rd ed., ch. 3.2 (recalled); conservative under Latin hypercube sampling.
 */
export function limitRanks(p: number, n: number): { low: number; high: number } {
  const w = 1.96 * Math.sqrt(n * p * (1 - p));
  const clamp = (rank: number) => Math.min(n, Math.max(1, rank));
  return { low: clamp(Math.floor(n * p - w)), high: clamp(Math.ceil(n * p + w) + 1) };
}

/** Longer names are not compared: nobody mistypes that much. */
const LONGEST = 64;

/**
 * The candidate nearest to a mistyped name, if one is near enough: alike but for case and signs, or within
 * a third of its length in edits (insertion, deletion, substitution, exchange of neighbours). Ties go to
 * the first in code-unit order.
 */
export function nearest(name: string, candidates: readonly string[]): string | undefined {
  if (name.length > LONGEST) return undefined;
  const plain = bare(name);
  let best: string | undefined;
  let bestDistance = Math.max(1, Math.floor(name.length / 3)) + 0.5;
  for (const candidate of candidates) {
    if (candidate.length > LONGEST || Math.abs(candidate.length - name.length) > bestDistance + 2) continue;
    const distance =
      plain !== "" && bare(candidate) === plain ? 0 : editDistance(name, candidate, bestDistance);
    if (distance < bestDistance || (distance === bestDistance && best !== undefined && candidate < best)) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** Case and signs aside: `status_date` is `statusDate`. */
function bare(name: string): string {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
}

/** Optimal string alignment distance (common practice), or `limit + 1` once it exceeds `limit`. */
function editDistance(a: string, b: string, limit: number): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      }
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > limit + 1) return limit + 1;
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

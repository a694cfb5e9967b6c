import type { Fall } from "./types.ts";

/**
 * The `most` largest steps, largest first, the rest as one last step, so
 * that they still add up. Steps smaller than `least`, which show no digit, are among the rest; where that
 * is all the rest is, and it comes to nothing, no step stands for it.
 *
 * The error of the rest is the root of the sum of squares, as if its parts were independent: of shares that add up to
 * a given total one is large where others are small, so the sum of errors would say too much.
 */
export function largestFalls(falls: readonly Fall[], least: number, most = 14): Fall[] {
  const ranked = rankFalls(falls);
  const seen = ranked.filter((fall) => Math.abs(fall.value) >= least);
  const kept = seen.length <= most + 1 ? seen : seen.slice(0, most);
  const rest = ranked.filter((fall) => !kept.includes(fall));
  const [only] = rest;
  const value = rest.reduce((sum, each) => sum + each.value, 0);
  if (only === undefined || (kept.length > 0 && kept.length === seen.length && Math.abs(value) < least))
    return kept;
  if (rest.length === 1) return [...kept, only];
  const smaller: Fall = {
    id: "smaller",
    name: `${rest.length} smaller ones`,
    word: "together",
    tint: "range",
    value,
    error: Math.sqrt(rest.reduce((sum, each) => sum + each.error ** 2, 0)),
  };
  return [...kept, smaller];
}

/** All steps, largest first, gathered ones last: by size, ties by id, by code unit. */
export function rankFalls(falls: readonly Fall[]): Fall[] {
  return [...falls].sort(
    (a, b) =>
      Number(a.gathered ?? false) - Number(b.gathered ?? false) ||
      Math.abs(b.value) - Math.abs(a.value) ||
      (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
  );
}

/**
 * The chains of 20 and 19 days that end together, with these of their risks left: every future written down by
 * hand rules, with nothing of the engine. Independent risks: 0.4 for 5 days on the left, 0.5 for 6 on the right,
 * 0.2 for 4 on both.
 */
const risks = {
  "on-left": { chance: 0.4, left: 5, right: 0 },
  "on-right": { chance: 0.5, left: 0, right: 6 },
  "on-both": { chance: 0.2, left: 4, right: 4 },
};
export type MergingRisk = keyof typeof risks;

function finishesOf(left: readonly MergingRisk[]): { finish: number; chance: number }[] {
  let futures = [{ a: 20, b: 19, chance: 1 }];
  for (const name of left) {
    const risk = risks[name];
    futures = futures.flatMap(({ a, b, chance }) => [
      { a, b, chance: chance * (1 - risk.chance) },
      { a: a + risk.left, b: b + risk.right, chance: chance * risk.chance },
    ]);
  }
  return futures.map(({ a, b, chance }) => ({ finish: Math.max(a, b), chance }));
}

/** The distribution of the finish, ascending. */
function merged(left: readonly MergingRisk[]): { finish: number; chance: number }[] {
  const sums = new Map<number, number>();
  for (const { finish, chance } of finishesOf(left)) sums.set(finish, (sums.get(finish) ?? 0) + chance);
  return [...sums].map(([finish, chance]) => ({ finish, chance })).sort((x, y) => x.finish - y.finish);
}

/** The smallest finish with at least that chance. */
export function finishAt(left: readonly MergingRisk[], p: number): number {
  let sum = 0;
  for (const { finish, chance } of merged(left)) {
    sum += chance;
    if (sum >= p - 1e-12) return finish;
  }
  throw new Error("chances do not sum to 1");
}

/** The chance of finishing by the end of that day. */
export function chanceBy(left: readonly MergingRisk[], days: number): number {
  const sum = finishesOf(left).reduce((all, { finish, chance }) => (finish <= days ? all + chance : all), 0);
  return Math.min(1, sum);
}

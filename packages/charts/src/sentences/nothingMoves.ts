import type { Effect, Explanation } from "@leeway/core";

/** No cause is left that moves the commitment, as in a plan that is finished: only tables of zeros could be shown. */
export function nothingMoves({ shares, contingency, walk, tornado = [] }: Explanation): boolean {
  const effects: Effect[] = [
    contingency,
    ...shares.flatMap((share) => [share, share.ifRemoved]),
    ...walk,
    ...tornado.flatMap(({ low, high }) => [low, high]),
  ];
  return effects.every(({ workingDays, money }) => Math.abs(workingDays) < 1e-9 && Math.abs(money) < 1e-6);
}

import type { SwitchSet } from "./scenarios.ts";

/** The set of one switch. */
export function only(i: number): SwitchSet {
  return 1n << BigInt(i);
}

export function has(set: SwitchSet, i: number): boolean {
  return ((set >> BigInt(i)) & 1n) === 1n;
}

/** Which of these switches are in the set. */
export function membersOf(set: SwitchSet, among: readonly number[]): number[] {
  return among.filter((i) => has(set, i));
}

/** What the switches of the set cost together, added up in their order. */
export function costOf(set: SwitchSet, costs: readonly number[]): number {
  return costs.reduce((sum, cost, i) => (has(set, i) ? sum + cost : sum), 0);
}

/** Whether a cost is within a sum; equal within the tolerance of money. */
export function within(cost: number, sum: number): boolean {
  return cost <= sum + 1e-9 * Math.max(1, Math.abs(sum));
}

/**
 * Every subset of these switches that costs at most `sum`, the empty one first; undefined when there are more than
 * `most`. Costs are not negative, so what is too dear stays too dear with more in it.
 */
export function affordableSubsets(
  among: readonly number[],
  costs: readonly number[],
  sum: number,
  most: number,
): SwitchSet[] | undefined {
  let sets: SwitchSet[] = [0n];
  for (const i of among) {
    const more = sets.map((set) => set | only(i)).filter((set) => within(costOf(set, costs), sum));
    sets = [...sets, ...more];
    if (sets.length > most) return undefined;
  }
  return sets;
}

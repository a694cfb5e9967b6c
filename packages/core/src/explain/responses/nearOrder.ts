import { reachOf, touchesOf } from "../settings.ts";
import type { Scenarios, SwitchSet } from "./scenarios.ts";

/**
 * The places of the sets in an order in which neighbours differ by little: that of a reflected binary code (F. Gray,
 * US patent 2,632,058, 1953; recalled) whose digits change the more often, the fewer tasks a switch reaches. Going
 * through all sets then places, on average, little more than the tasks of the switch of least reach.
 */
export function inNearOrder(scenarios: Scenarios, sets: readonly SwitchSet[]): number[] {
  const digits = byReach(scenarios);
  const ranks = sets.map((set) => {
    let code = 0n;
    digits.forEach((i, digit) => {
      if ((set >> BigInt(i)) & 1n) code |= 1n << BigInt(digit);
    });
    // From the code to its place: each digit is the parity of all digits from it on.
    let rank = 0n;
    for (let rest = code; rest !== 0n; rest >>= 1n) rank ^= rest;
    return rank;
  });
  return sets
    .map((_, at) => at)
    .sort((a, b) => {
      const [x, y] = [ranks[a] as bigint, ranks[b] as bigint];
      return x < y ? -1 : x > y ? 1 : a - b;
    });
}

/** Switches by how many tasks they reach, fewest first; added capacity last, as it changes who can work when. */
function byReach({ switches, drawn }: Scenarios): number[] {
  const touches = touchesOf(drawn);
  const taskScope = new Map(drawn.plan.tasks.map((task, j) => [j, task]));
  const reach = switches.map((one) => {
    if (one.kind === "capacity") return Number.POSITIVE_INFINITY;
    const needed = new Set<number>();
    for (const [j, task] of taskScope) {
      if (task.scope === one.id || task.onlyIf === one.id) needed.add(j);
    }
    const entries = new Set<number>();
    if (one.kind === "response") {
      drawn.register.forEach((entry, e) => {
        if (entry.id === one.entry.id || gatedBy(drawn.plan, entry.id, one.id)) entries.add(e);
      });
    }
    const differs = { slots: new Set<number>(), entries, needed, people: false };
    return reachOf(drawn, touches, differs, drawn.limitedPeople).count;
  });
  return switches.map((_, i) => i).sort((a, b) => (reach[a] as number) - (reach[b] as number) || a - b);
}

function gatedBy(plan: Scenarios["drawn"]["plan"], entry: string, response: string): boolean {
  return [...plan.risks, ...plan.assumptions].some(({ id, onlyIf }) => id === entry && onlyIf === response);
}

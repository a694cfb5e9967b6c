import { type Gauge, meanBurden } from "../responses/gauge.ts";
import type { Asking } from "../responses/gauges.ts";
import type { SwitchSet } from "../responses/scenarios.ts";
import { has, only } from "../responses/sets.ts";
import { type Found, pick, withoutSuperfluous } from "./everySet.ts";
import { hitsIn, isReached, type Question } from "./question.ts";

/**
 * Combinations worth judging, where there are too many to try them all: without dropping scope, then with it.
 *
 * Up from nothing, each time what buys the most chance for its money on the first futures (where nothing buys any:
 * what lowers the mean), until all futures say that it is reached; and all options together. What reaches it is
 * relieved of every step it does not need, the dearest first. A search, not a proof: a cheaper way may exist.
 *
 * @param few  The same question on fewer iterations.
 *
 * Cost: about (options)^2 sets, half of them on few iterations.
 */
export function* greedySets(question: Question, few: Question): Asking<Found> {
  const { free, scenarios, gauges } = question;
  const { stands } = scenarios;
  const paid = free.filter((i) => scenarios.switches[i]?.kind !== "scope");
  const rounds = paid.length === free.length ? [free] : [paid, free];
  const sets: SwitchSet[] = [0n];
  for (const among of rounds) {
    const all = among.reduce((set, i) => set | only(i), 0n);
    const up = yield* upFromNothing(question, few, among);
    sets.push(...up, all);
    yield* gauges.need(sets.map((set) => stands | set));
    for (const set of [up.at(-1) ?? 0n, all]) {
      if (isReached(question, set)) sets.push(yield* withoutSuperfluous(question, set));
    }
  }
  yield* gauges.need(sets.map((set) => stands | set));
  return pick(question, sets);
}

/** The sets on the way, the last one reaching it if any does. */
function* upFromNothing(question: Question, few: Question, among: readonly number[]): Asking<SwitchSet[]> {
  const { scenarios, costs, gauges } = question;
  const way: SwitchSet[] = [];
  let set: SwitchSet = 0n;
  for (;;) {
    yield* gauges.need([scenarios.stands | set], 0.01);
    if (isReached(question, set)) break;
    const left = among.filter((i) => !has(set, i));
    yield* few.gauges.need([set, ...left.map((i) => set | only(i))].map((one) => scenarios.stands | one));
    const rate = (value: (added: SwitchSet) => number) => {
      const here = value(set);
      let [best, most] = [-1, 0];
      for (const i of left) {
        const gain = (value(set | only(i)) - here) / Math.max(costs[i] as number, 1e-6);
        if (gain > most + 1e-12) [best, most] = [i, gain];
      }
      return best;
    };
    let next = rate((added) => hitsIn(few, added));
    if (next < 0) next = rate((added) => -slope(few, added));
    if (next < 0) break;
    set |= only(next);
    way.push(set);
  }
  return way;
}

/** A mean that falls with every little improvement of what is asked. */
function slope({ gauges, scenarios, targets }: Question, added: SwitchSet): number {
  const gauge: Gauge = gauges.of(scenarios.stands | added);
  return targets.finishByDay === undefined ? meanBurden(gauge) : gauge.meanDay;
}

import type { Objective } from "../types.ts";
import type { Asking, Gauges } from "./gauges.ts";
import { isBetter, scoreOf, slopeOf } from "./objective.ts";
import type { SwitchSet } from "./scenarios.ts";
import { costOf, has, only, within } from "./sets.ts";

export interface GreedyQuestion {
  gauges: Gauges;
  stands: SwitchSet;
  free: readonly number[];
  costs: readonly number[];
  sum: number;
  objective: Objective;
}

/** Rounds of exchange after which it is left at that. */
const mostRounds = 20;

/**
 * Sets worth judging, where not every set can be tried: up from nothing, each time what gains most for its money;
 * down from everything affordable one by one, each time giving up what gains least for its money; the better of the
 * two with members added, left out and exchanged one for one as long as that helps; and every single switch.
 *
 * Going down finds what going up cannot: responses that only help together, on paths that meet.
 *
 * Cost: about (free switches)^2 sets.
 */
export function* greedyExchange(question: GreedyQuestion): Asking<SwitchSet[]> {
  const { free } = question;
  const up = yield* upFromNothing(question);
  const down = yield* downFromAll(question);
  const exchanged = yield* exchange(question, better(question, down, up) ? down : up);
  return [0n, ...free.map(only), up, down, exchanged];
}

function better({ gauges, stands, objective }: GreedyQuestion, a: SwitchSet, b: SwitchSet): boolean {
  return isBetter(scoreOf(gauges.of(stands | a), objective), scoreOf(gauges.of(stands | b), objective));
}

function* upFromNothing({ gauges, stands, free, costs, sum, objective }: GreedyQuestion): Asking<SwitchSet> {
  let set: SwitchSet = 0n;
  for (;;) {
    const left = free.filter((i) => !has(set, i) && within(costOf(set | only(i), costs), sum));
    yield* gauges.need([set, ...left.map((i) => set | only(i))].map((one) => stands | one));
    const here = slopeOf(gauges.of(stands | set), objective);
    let best = -1;
    let most = 0;
    for (const i of left) {
      const gain = here - slopeOf(gauges.of(stands | set | only(i)), objective);
      const rate = gain / price(costs[i]);
      if (rate > most + 1e-12) [best, most] = [i, rate];
    }
    if (best < 0) return set;
    set |= only(best);
  }
}

function* downFromAll({ gauges, stands, free, costs, sum, objective }: GreedyQuestion): Asking<SwitchSet> {
  let set = free.reduce((all, i) => all | only(i), 0n);
  for (;;) {
    const members = free.filter((i) => has(set, i));
    yield* gauges.need([set, ...members.map((i) => set & ~only(i))].map((one) => stands | one));
    const here = slopeOf(gauges.of(stands | set), objective);
    let worst = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const i of members) {
      const loss = slopeOf(gauges.of(stands | (set & ~only(i))), objective) - here;
      const rate = loss / price(costs[i]);
      if (rate < least) [worst, least] = [i, rate];
    }
    // Once it can be paid for, only what does no good is given up.
    if (worst < 0 || (within(costOf(set, costs), sum) && least > 0)) return set;
    set &= ~only(worst);
  }
}

function* exchange(question: GreedyQuestion, from: SwitchSet): Asking<SwitchSet> {
  const { gauges, stands, free, costs, sum } = question;
  let set = from;
  for (let round = 0; round < mostRounds; round++) {
    const inside = free.filter((i) => has(set, i));
    const outside = free.filter((i) => !has(set, i));
    const moves = [
      ...outside.map((i) => set | only(i)),
      ...inside.map((i) => set & ~only(i)),
      ...inside.flatMap((i) => outside.map((o) => (set & ~only(i)) | only(o))),
    ].filter((one) => within(costOf(one, costs), sum));
    yield* gauges.need(moves.map((one) => stands | one));
    let best = set;
    for (const one of moves) if (better(question, one, best)) best = one;
    if (best === set) return set;
    set = best;
  }
  return set;
}

/** What costs nothing comes before all that costs something. */
function price(cost: number | undefined): number {
  return Math.max(cost ?? 0, 1e-6);
}

import type { Objective, SearchMethod } from "../types.ts";
import { type Asking, type Gauges, newGauges } from "./gauges.ts";
import { greedyExchange } from "./greedyExchange.ts";
import { isBetter, scoreOf } from "./objective.ts";
import type { Scenarios, SwitchSet } from "./scenarios.ts";
import { affordableSubsets, costOf, membersOf, only, within } from "./sets.ts";

/** Above this many sets not all are tried. */
export const mostSets = 4096;

/** Iterations on which a way is looked for where not every set can be tried; what is found is judged on all. */
const fewIterations = 1024;

const words: Record<Objective, string> = {
  date: "the earliest committed date",
  chance: "the best chance of the asked date",
  worth: "the most net worth",
};

export interface BestQuestion {
  sum: number;
  objective: Objective;
  /** Switches that may be turned on, and what each costs (by place in `scenarios.switches`). */
  free: readonly number[];
  costs: readonly number[];
}

export interface BestAnswer {
  /** What is turned on beside what stands. */
  added: SwitchSet;
  cost: number;
  how: SearchMethod;
}

/**
 * Which free switches to turn on, at most `sum` of them in money, so that the objective is best; among equals that of
 * most net worth, then the cheaper, then the smaller. All affordable sets are tried when there are at most 4,096
 * (twelve switches make no more); otherwise `greedyExchange`, which is a search and not a proof. Its finds are
 * compared, on all iterations, with every single affordable switch, so it is never worse than one of those.
 */
export function* bestSet(
  { stands }: Pick<Scenarios, "stands">,
  { sum, objective, free, costs }: BestQuestion,
  gauges: Gauges,
): Asking<BestAnswer> {
  const payable = free.filter((i) => within(costs[i] as number, sum));
  const every = affordableSubsets(payable, costs, sum, mostSets);
  const coarse = newGauges(Math.min(gauges.n, fewIterations));
  const sets =
    every ?? (yield* greedyExchange({ gauges: coarse, stands, free: payable, costs, sum, objective }));
  yield* gauges.need(
    sets.map((set) => stands | set),
    0.9,
  );
  let best: SwitchSet = 0n;
  for (const set of sets) {
    if (isBetter(rank(set), rank(best))) best = set;
  }
  const tried = every === undefined ? coarse.tried : sets.length;
  return { added: best, cost: costOf(best, costs), how: methodOf(every !== undefined, tried, objective) };

  function rank(set: SwitchSet): number[] {
    const score = scoreOf(gauges.of(stands | set), objective);
    return [...score, costOf(set, costs), membersOf(set, payable).length];
  }
}

function methodOf(every: boolean, tried: number, objective: Objective): SearchMethod {
  const aim = `for ${words[objective]}`;
  return every
    ? {
        kind: "every-set",
        tried,
        text: `Every set of responses that the sum affords was tried ${aim}: ${tried} of them.`,
      }
    : {
        kind: "greedy-exchange",
        tried,
        text:
          `Too many sets to try all ${aim}: responses were added by what they buy for their money, taken from all by ` +
          `what they buy least, then exchanged while it helped: ${tried} sets on the first ${fewIterations} futures, ` +
          "the best judged on all. A better set may exist.",
      };
}

/** Members without which, one at a time, the committed date stays the same and net worth does not fall. */
export function* idleMembers(
  { stands }: Pick<Scenarios, "stands">,
  added: SwitchSet,
  free: readonly number[],
  gauges: Gauges,
): Asking<number[]> {
  const members = membersOf(added, free);
  const without = (i: number) => stands | (added & ~only(i));
  yield* gauges.need(members.map(without));
  const whole = gauges.of(stands | added);
  return members.filter((i) => {
    const less = gauges.of(without(i));
    const same = less.dateDay === whole.dateDay;
    return same && !isBetter(scoreOf(whole, "worth").slice(0, 1), scoreOf(less, "worth").slice(0, 1));
  });
}

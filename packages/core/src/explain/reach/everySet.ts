import type { Asking } from "../responses/gauges.ts";
import { isBetter } from "../responses/objective.ts";
import type { SwitchSet } from "../responses/scenarios.ts";
import { membersOf, only } from "../responses/sets.ts";
import { burdenOf, hitsIn, isReached, type Question } from "./question.ts";

/** What a search found: sets that reach it, the preferred one first; or else the one that comes closest. */
export interface Found {
  ways: SwitchSet[];
  best: SwitchSet;
}

/**
 * Tries every combination. A way is preferred that drops less scope, then costs less, then has the better chance, then
 * fewer steps; beside it stands the one that costs least whatever scope it drops, where that is another. Nothing is
 * assumed of how options work together.
 */
export function* everySet(question: Question): Asking<Found> {
  const { gauges, scenarios, free } = question;
  let sets: SwitchSet[] = [0n];
  for (const i of free) sets = [...sets, ...sets.map((set) => set | only(i))];
  yield* gauges.need(
    sets.map((set) => scenarios.stands | set),
    0.95,
  );
  return pick(question, sets);
}

/** The preferred of these sets, however they were come by. */
export function pick(question: Question, sets: readonly SwitchSet[]): Found {
  let [way, cheap, best]: (SwitchSet | undefined)[] = [undefined, undefined, undefined];
  const hits = (set: SwitchSet) => -hitsIn(question, set);
  const preferred = (set: SwitchSet) => {
    const [dropped, cost, steps] = burdenOf(question, set);
    return [dropped, cost, hits(set), steps];
  };
  const cheapest = (set: SwitchSet) => {
    const [dropped, cost, steps] = burdenOf(question, set);
    return [cost, dropped, hits(set), steps];
  };
  const closest = (set: SwitchSet) => [hits(set), ...burdenOf(question, set)];
  for (const set of sets) {
    if (best === undefined || isBetter(closest(set), closest(best))) best = set;
    if (!isReached(question, set)) continue;
    if (way === undefined || isBetter(preferred(set), preferred(way))) way = set;
    if (cheap === undefined || isBetter(cheapest(set), cheapest(cheap))) cheap = set;
  }
  const ways = [way, cheap]
    .filter((set) => set !== undefined)
    .filter((set, k, list) => list.indexOf(set) === k)
    .filter(
      (set, k) =>
        k === 0 || isBetter([burdenOf(question, set)[1]], [burdenOf(question, way as SwitchSet)[1]]),
    );
  return { ways, best: best ?? 0n };
}

/** Members of a set in the order in which each adds the most chance to those before it; among equals the cheaper. */
export function* inOrderOfGain(question: Question, set: SwitchSet): Asking<number[]> {
  const { gauges, scenarios, free, costs } = question;
  const order: number[] = [];
  let taken: SwitchSet = 0n;
  const left = membersOf(set, free);
  while (left.length > 0) {
    const next = left.map((i) => taken | only(i));
    yield* gauges.need(next.map((one) => scenarios.stands | one));
    let at = 0;
    for (let k = 1; k < left.length; k++) {
      const score = (of: number) => [
        -hitsIn(question, next[of] as SwitchSet),
        costs[left[of] as number] as number,
      ];
      if (isBetter(score(k), score(at))) at = k;
    }
    const [i] = left.splice(at, 1) as [number];
    taken |= only(i);
    order.push(i);
  }
  return order;
}

/** A set without the members it does not need: the dearest that can go, goes first. */
export function* withoutSuperfluous(question: Question, set: SwitchSet): Asking<SwitchSet> {
  const { gauges, scenarios, free } = question;
  let needed = set;
  for (;;) {
    const less = membersOf(needed, free).map((i) => needed & ~only(i));
    yield* gauges.need(less.map((one) => scenarios.stands | one));
    const { ways } = pick(
      question,
      less.filter((one) => isReached(question, one)),
    );
    const [next] = ways;
    if (next === undefined) return needed;
    needed = next;
  }
}

import type { Plan } from "../../plan/types.ts";
import { orderAverage } from "../contingency/orderAverage.ts";
import type { Comparison, Move } from "../types.ts";
import { type Change, sentenceOf } from "./changes/change.ts";
import type { Pair } from "./changes/pair.ts";
import { whatMoved } from "./describe.ts";
import { gather, mostAlone, type Player, playerOf } from "./gather.ts";
import { type Group, groupChanges } from "./groups/groupChanges.ts";
import { hybridPlan } from "./hybrid/hybridPlan.ts";
import { reachOfPlayers } from "./reachOfPlayers.ts";
import type { Value } from "./run/valuesOfPlans.ts";

/** Every order is taken up to so many groups; beyond, pairs of sampled orders, so many at most. */
const exactUpTo = 8;
const mostPairs = 32;
/** Groups are ranked on so many iterations where there are too many to list. */
const rankingIterations = 2048;
/** Plans asked for at once while ranking: of a plan with a thousand changes there are a thousand. */
const plansAtOnce = 256;

/** Plans whose committed values are wanted, on the first `iterations` iterations. */
export interface PlansAsked {
  plans: Plan[];
  iterations: number;
  /** How much of the whole work is done before and after, 0 to 1. */
  from: number;
  to: number;
}
/** Undefined: a plan that has no finish. */
export type ValuesOfPlans = readonly (Value | undefined)[];

export interface MovesOptions {
  /** Committed values of the old plan (in the new one's names) and of the new one. */
  none: Value;
  all: Value;
  /** Of sampled orders. */
  seed: string;
  iterations: number;
}
export type Moves = Pick<Comparison, "moves" | "orders">;
type Asking<T> = Generator<PlansAsked, T, ValuesOfPlans>;

/**
 * What each group of changes moved, averaged over the orders in which they may come. Yields the plans whose values
 * it needs, and takes their values in the same order: whoever drives it may compute them anywhere.
 *
 * A hybrid may have no finish at all (people who no longer share a working day): then the changes that could be
 * the reason are taken together, at last all of them.
 *
 * @param pair  Of bare plans.
 */
export function* movesBetween(pair: Pair, changes: readonly Change[], options: MovesOptions): Asking<Moves> {
  for (const kinds of [[], ["calendar", "people"], everyKind]) {
    const apart = changes.filter(({ kind }) => kinds.includes(kind)).flatMap((change) => change.places);
    const moves = yield* tryMoves(pair, groupChanges(pair, changes, [apart]), options);
    if (moves !== undefined) return moves;
  }
  throw new Error("one group of everything asks for no hybrid"); // its ends are given
}

const everyKind: string[] = [
  "actuals",
  "estimates",
  "scope",
  "logic",
  "people",
  "calendar",
  "risks",
  "money",
  "other",
];

/** Undefined when a hybrid has no finish. */
function* tryMoves(
  pair: Pair,
  groups: readonly Group[],
  { none, all, seed, iterations }: MovesOptions,
): Asking<Moves | undefined> {
  const planWith = (taken: readonly Group[]): Plan => {
    const left = new Set(
      groups.filter((group) => !taken.includes(group)).flatMap((group) => [...group.places]),
    );
    return hybridPlan(pair, (place) => !left.has(place));
  };
  let players: Player[] = groups.map(playerOf);
  let from = 0;
  if (groups.length > mostAlone) {
    from = 0.3;
    const quick = Math.min(iterations, rankingIterations);
    const asked: (readonly Group[])[] = [[], ...groups.map((group) => [group])];
    const found: (Value | undefined)[] = [];
    for (let first = 0; first < asked.length; first += plansAtOnce) {
      const part = asked.slice(first, first + plansAtOnce);
      const share = (count: number) => (from * count) / asked.length;
      found.push(
        ...(yield {
          plans: part.map(planWith),
          iterations: quick,
          from: share(first),
          to: share(first + part.length),
        }),
      );
    }
    const [start, ...alone] = found;
    if (start === undefined) return undefined;
    // One that cannot stand alone weighs most: what is wrong with it shows below.
    const effects = alone.map(
      (value): Value => (value === undefined ? [1 / 0, 1 / 0] : [value[0] - start[0], value[1] - start[1]]),
    );
    players = gather(groups, effects);
  }
  // The one that moves least work comes first: it is switched most often.
  const reach = reachOfPlayers(pair, players);
  players = players
    .map((player, at) => ({ player, reach: reach[at] ?? 0, at }))
    .sort((x, y) => x.reach - y.reach || x.at - y.at)
    .map(({ player }) => player);
  const k = players.length;
  if (k === 0) return { moves: [], orders: { groups: 0, taken: 0, all: true } };

  const expected = k <= exactUpTo ? 2 ** k : Math.min(2 ** k, 2 * mostPairs * (k - 1));
  const steps = orderAverage(k, { none, all, seed, exactUpTo, most: mostPairs });
  let done = 0;
  let step = steps.next();
  while (step.done !== true) {
    const before = done;
    done = Math.min(expected, done + step.value.length);
    const plans = step.value.map((set) =>
      planWith(players.flatMap((player, i) => ((set >> i) & 1 ? player.groups : []))),
    );
    const part = (count: number) => from + ((1 - from) * count) / expected;
    const values = yield { plans, iterations, from: part(before), to: part(done) };
    const known = values.filter((value) => value !== undefined);
    if (known.length < values.length) return undefined;
    step = steps.next(known);
  }
  const average = step.value;
  const moves = players.map((player, i) => moveOf(player, average.shares[i] ?? [], average.errors[i] ?? []));
  return {
    moves: moves.sort(byReach(moves)),
    orders: { groups: k, taken: average.taken, all: average.all },
  };
}

function moveOf(
  player: Player,
  [days = 0, money = 0]: number[],
  [daysError = 0, moneyError = 0]: number[],
): Move {
  return {
    what: whatMoved(player),
    ids: [...new Set(player.groups.flatMap((group) => group.ids))],
    kind: player.kind,
    workingDays: days,
    money,
    error: { workingDays: daysError, money: moneyError },
    changes: player.groups.flatMap((group) => group.changes.map(sentenceOf)),
  };
}

/** What moves most days comes first, then most money; days below a thousandth of the largest are none. */
function byReach(moves: readonly Move[]): (a: Move, b: Move) => number {
  const most = moves.reduce((largest, move) => Math.max(largest, Math.abs(move.workingDays)), 0);
  const days = (move: Move) => {
    const size = Math.abs(move.workingDays);
    return size < most / 1000 ? 0 : size;
  };
  return (a, b) => days(b) - days(a) || Math.abs(b.money) - Math.abs(a.money) || (a.what < b.what ? -1 : 1);
}

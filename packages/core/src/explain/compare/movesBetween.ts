import { averageOverOrders } from "../contingency/orderAverage.ts";
import type { Comparison, Move } from "../types.ts";
import { BeyondCalendarError } from "../variants.ts";
import { type Change, sentenceOf } from "./changes/change.ts";
import type { Pair } from "./changes/pair.ts";
import { whatMoved } from "./describe.ts";
import { gather, type Player } from "./gather.ts";
import { type Group, groupChanges } from "./groups/groupChanges.ts";
import { hybridPlan } from "./hybrid/hybridPlan.ts";
import type { Runner, Value } from "./run/runner.ts";

/** Pairs of sampled orders at most, beyond eight groups. */
const mostPairs = 32;

export interface MovesOptions {
  /** Of the old plan (in the new one's names) and of the new one. */
  none: Value;
  all: Value;
  /** Of sampled orders. */
  seed: string;
  onProgress?: ((done: number, total: number) => void) | undefined;
}
export type Moves = Pick<Comparison, "moves" | "orders">;

/**
 * What each group of changes moved, averaged over the orders in which they may come.
 *
 * A hybrid may have no finish at all (people who no longer share a working day): then the changes that could be
 * the reason are taken together, at last all of them.
 *
 * @param pair   Of bare plans.
 * @param quick  Runs few iterations: it only ranks groups where there are too many to list.
 */
export function movesBetween(
  pair: Pair,
  changes: readonly Change[],
  run: Runner,
  quick: Runner,
  options: MovesOptions,
): Moves {
  const attempts: readonly (readonly Change["kind"][])[] = [[], ["calendar", "people"], everyKind];
  for (const kinds of attempts) {
    const apart = changes.filter(({ kind }) => kinds.includes(kind)).flatMap((change) => change.places);
    try {
      return tryMoves(pair, groupChanges(pair, changes, [apart]), run, quick, options);
    } catch (error) {
      if (!(error instanceof BeyondCalendarError)) throw error;
    }
  }
  throw new Error("one group of everything runs neither hybrid"); // its two ends have been run already
}

const everyKind: Change["kind"][] = [
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

function tryMoves(
  pair: Pair,
  groups: readonly Group[],
  run: Runner,
  quick: Runner,
  { none, all, seed, onProgress }: MovesOptions,
): Moves {
  const valueWith = (taken: readonly Group[], by: Runner): Value => {
    const left = new Set(
      groups.filter((group) => !taken.includes(group)).flatMap((group) => [...group.places]),
    );
    return by.valueOf(hybridPlan(pair, (place) => !left.has(place)));
  };
  const players = gather(groups, () => {
    const [days, money] = valueWith([], quick);
    return groups.map((group): Value => {
      const value = valueWith([group], quick);
      return [value[0] - days, value[1] - money];
    });
  });
  if (players.length === 0) return { moves: [], orders: { groups: 0, taken: 0, all: true } };

  const k = players.length;
  const total = k <= 8 ? 2 ** k : Math.min(2 ** k, 2 * mostPairs * (k - 1));
  let done = 0;
  const valueOfSet = (set: number): Value => {
    const taken = players.flatMap((player, i) => ((set >> i) & 1 ? player.groups : []));
    const value = valueWith(taken, run);
    onProgress?.(Math.min(++done, total), total);
    return value;
  };
  const average = averageOverOrders(k, (sets) => sets.map(valueOfSet), {
    none,
    all,
    seed,
    exactUpTo: 8,
    most: mostPairs,
  });
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

import { seedBlock } from "../../sampling/index.ts";
import { fillSfc32 } from "../../sampling/streams/fillSfc32.ts";

/** A value function's answer to sets of players: for each set, one value in each dimension. */
export type ValuesOfSets = readonly (readonly number[])[];

/** How many orders are averaged over where not all can be. */
export interface OrderOptions {
  /** Values of no player and of all, when they are known: they are not asked for. */
  none?: readonly number[];
  all?: readonly number[];
  /** Values of further sets that are known. */
  known?: ReadonlyMap<number, readonly number[]>;
  /** Up to so many players every set is taken; default 8. */
  exactUpTo?: number;
  /** Sampled orders end when every standard error is below this share of v(all) - v(none); default 0.015. */
  within?: number;
  /** Pairs of orders at most; default 160. */
  most?: number;
  /** Of the sampled orders. */
  seed?: string;
}

/** What each part adds, averaged over orders; the parts sum to the whole. */
export interface OrderAverage {
  /** By player, by dimension: the average of what it adds. The players' sums are v(all) - v(none). */
  shares: number[][];
  /** Standard errors, likewise; 0 where every order was taken. */
  errors: number[][];
  /** Orders taken. */
  taken: number;
  all: boolean;
}

/**
 * What each player adds to a value, averaged over the orders in which the players may come (Shapley 1953, "A value
 * for n-person games", Contributions to the Theory of Games II, 307-317; recalled). Each order telescopes from
 * v(none) to v(all), so the shares add up to the difference; rounding dust is put on the largest.
 *
 * A set is a bit mask, player i is bit i; at most 30 players. The generator yields lists of sets, each set once, and
 * takes their values in the same order: whoever drives it may compute them anywhere. Consecutive sets differ by one
 * player where that is possible.
 *
 * Up to `exactUpTo` players all 2^k sets are weighed. Beyond, orders are drawn from a stream of their own (seeded by
 * `seed`; sampling: Castro, Gomez & Tejada 2009, Computers & Operations Research 36, 1726-1730; recalled) in rounds of
 * k antithetic pairs, an order and its reverse, until all standard errors are below `within` of the total in that
 * dimension, or `most` pairs are taken. The k orders of a round are the rows of a random Latin square, so every player
 * comes once in every place. Errors are taken over pairs as if these were independent, which the square makes
 * cautious: on the clinic of the examples, all 4,096 sets known, errors were 0.6 of what was stated.
 */
export function* orderAverage(
  players: number,
  options: OrderOptions = {},
): Generator<readonly number[], OrderAverage, ValuesOfSets> {
  const everyone = 2 ** players - 1;
  const known = new Map<number, readonly number[]>(options.known);
  if (options.none !== undefined) known.set(0, options.none);
  if (options.all !== undefined) known.set(everyone, options.all);
  const learn = function* (sets: readonly number[]): Generator<readonly number[], void, ValuesOfSets> {
    const unknown = [...new Set(sets)].filter((set) => !known.has(set));
    if (unknown.length === 0) return;
    const values = yield unknown;
    unknown.forEach((set, i) => {
      known.set(set, values[i] as readonly number[]);
    });
  };
  const value = (set: number) => known.get(set) as readonly number[];
  const exact = players <= (options.exactUpTo ?? 8);
  yield* learn(exact ? graySets(players) : [0, everyone]);
  const total = difference(value(everyone), value(0));
  const average = exact
    ? allOrders(players, value)
    : yield* sampledOrders({ players, value, learn, total, options });
  putDustRight(average.shares, total);
  return average;
}

/** Drives the generator on a function that computes here and now. */
export function averageOverOrders(
  players: number,
  valuesOf: (sets: readonly number[]) => ValuesOfSets,
  options: OrderOptions = {},
): OrderAverage {
  const steps = orderAverage(players, options);
  let step = steps.next();
  while (step.done !== true) step = steps.next(valuesOf(step.value));
  return step.value;
}

/** All sets, each differing from the one before by one player (F. Gray, US patent 2632058, 1953; recalled). */
function graySets(players: number): number[] {
  return Array.from({ length: 2 ** players }, (_, k) => k ^ (k >> 1));
}

type Value = (set: number) => readonly number[];

/** Each set S without i weighs |S|! (k - |S| - 1)! / k!: the share of orders in which just S comes before i. */
function allOrders(players: number, value: Value): OrderAverage {
  const width = value(0).length;
  const shares = table(players, width);
  const weights = Array.from({ length: players }, (_, size) => 1 / (players * choose(players - 1, size)));
  for (let set = 0; set < 2 ** players; set++) {
    const weight = weights[ones(set)] as number;
    for (let i = 0; i < players; i++) {
      if ((set >> i) & 1) continue;
      add(shares[i] as number[], difference(value(set | (1 << i)), value(set)), weight);
    }
  }
  let taken = 1;
  for (let i = 2; i <= players; i++) taken *= i;
  return { shares, errors: table(players, width), taken, all: true };
}

interface Sampling {
  players: number;
  value: Value;
  learn: (sets: readonly number[]) => Generator<readonly number[], void, ValuesOfSets>;
  total: readonly number[];
  options: OrderOptions;
}

function* sampledOrders({
  players,
  value,
  learn,
  total,
  options,
}: Sampling): Generator<readonly number[], OrderAverage, ValuesOfSets> {
  const { within = 0.015, most = 160, seed = "" } = options;
  const sums = table(players, total.length);
  const squares = table(players, total.length);
  let errors = table(players, total.length);
  let pairs = 0;
  for (let last = false; !last; ) {
    const orders = latinOrders(players, seed, pairs / players);
    yield* learn(orders.flatMap((order) => [...setsAlong(order), ...setsAlong(order.toReversed())]));
    for (const order of orders) {
      const pair = table(players, total.length);
      for (const way of [order, order.toReversed()]) {
        let before = 0;
        for (const set of setsAlong(way)) {
          add(pair[31 - Math.clz32(set ^ before)] as number[], difference(value(set), value(before)), 0.5);
          before = set;
        }
      }
      pair.forEach((row, i) => {
        add(sums[i] as number[], row, 1);
        add(
          squares[i] as number[],
          row.map((x) => x * x),
          1,
        );
      });
    }
    pairs += orders.length;
    errors = sums.map((row, i) =>
      row.map((sum, d) => {
        const spread = Math.max(0, ((squares[i] as number[])[d] as number) - (sum * sum) / pairs);
        return Math.sqrt(spread / (pairs - 1) / pairs);
      }),
    );
    const worst = worstOf(errors, total);
    last = worst <= within || pairs >= most;
  }
  const shares = sums.map((row) => row.map((sum) => sum / pairs));
  return { shares, errors, taken: 2 * pairs, all: false };
}

/** The largest standard error as a share of the total; dimensions without a total ask for nothing. */
function worstOf(errors: readonly number[][], total: readonly number[]): number {
  let worst = 0;
  for (const row of errors) {
    row.forEach((error, d) => {
      const whole = Math.abs(total[d] as number);
      if (whole > 1e-9) worst = Math.max(worst, error / whole);
    });
  }
  return worst;
}

/** The sets that grow along an order, the first with one player, the last with all. */
function setsAlong(order: readonly number[]): number[] {
  let set = 0;
  return order.map((player) => {
    set |= 1 << player;
    return set;
  });
}

/** Rows of the random Latin square at this address: each player once in each row and in each column. */
function latinOrders(players: number, seed: string, at: number): number[][] {
  const who = randomOrder(players, seed, 2 * at);
  const where = randomOrder(players, seed, 2 * at + 1);
  return who.map((_, row) => where.map((place) => who[(row + place) % players] as number));
}

/** The order at this address: Durstenfeld's shuffle (1964, Communications of the ACM 7, 420; recalled). */
function randomOrder(players: number, seed: string, at: number): number[] {
  const words = fillSfc32(seedBlock(seed, "orders", "explain", at), new Uint32Array(players));
  const order = Array.from({ length: players }, (_, i) => i);
  for (let i = players - 1; i > 0; i--) {
    // Both factors are whole and small enough: the product is exact.
    const j = Math.floor(((words[i] as number) * (i + 1)) / 4294967296);
    [order[i], order[j]] = [order[j] as number, order[i] as number];
  }
  return order;
}

function putDustRight(shares: number[][], total: readonly number[]): void {
  total.forEach((whole, d) => {
    let largest: number[] | undefined;
    let sum = 0;
    for (const row of shares) {
      sum += row[d] as number;
      if (largest === undefined || Math.abs(row[d] as number) > Math.abs(largest[d] as number)) largest = row;
    }
    if (largest !== undefined) largest[d] = (largest[d] as number) + (whole - sum);
  });
}

function table(rows: number, width: number): number[][] {
  return Array.from({ length: rows }, () => new Array<number>(width).fill(0));
}

function add(into: number[], row: readonly number[], weight: number): void {
  row.forEach((x, d) => {
    into[d] = (into[d] as number) + weight * x;
  });
}

function difference(a: readonly number[], b: readonly number[]): number[] {
  return a.map((x, d) => x - (b[d] as number));
}

function ones(set: number): number {
  let count = 0;
  for (let rest = set; rest > 0; rest &= rest - 1) count++;
  return count;
}

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = (ways * (n - k + i)) / i;
  return ways;
}

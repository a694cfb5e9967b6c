import type { Shape } from "../plan/types.ts";
import type { OutcomeTable } from "../sampling/outcomeTable.ts";
import type { QuantileTable } from "../sampling/table/quantileTable.ts";
import type { AnyWork } from "./anyWork.ts";
import type { Arena } from "./arena.ts";
import type { BenefitStream } from "./benefitStream.ts";
import type { KernelCalendar } from "./calendar.ts";
import type { KernelExports } from "./exports.ts";
import type { Ledger } from "./ledger.ts";
import type { LinkRows } from "./linkRows.ts";
import type { SharedPerson, WantedShare } from "./peopleLists.ts";
import type { TablesToMake } from "./tablesFor.ts";

/** Draws of one estimate: which stream, from which table, cut at zero or not. */
export interface Drawing {
  /** `streamText` of its address. */
  stream: string;
  table: QuantileTable;
  cut: boolean;
}

/** Draws Latin hypercube blocks of many estimates at once. */
export interface Drawer {
  /**
   * Block `block` of drawing i into the first n entries of `outs[i]`, rows of the arena; adds to `below[i]` how many
   * were cut at zero.
   */
  draw(block: number, outs: readonly Float64Array[], n: number, below: Float64Array): void;
}

/**
 * Loops over rows of up to 1,024 iterations, in WebAssembly (`simd`) or in TypeScript (`plain`): the same bits.
 *
 * Every row, table and calendar comes from `arena`; rows have at least n entries and only the first n are read or
 * changed. Bytes are 0 or 1, moments and durations finite and not negative. Sums that a method answers are taken in
 * four lanes, iteration k in lane k mod 4, and added up as (0 + 1) + (2 + 3).
 */
export interface Kernel {
  readonly lane: "simd" | "plain";
  readonly arena: Arena;
  /** The module's own functions, which take addresses; undefined in TypeScript. */
  readonly wasm: KernelExports | undefined;

  /**
   * The quantile table of a standard law (`standardise`), in the arena; the same law gets it once. Takes
   * `bytesOfTable` of the arena, and `bytesOfPieces` once.
   *
   * Cost: PERT about 4 microseconds where WebAssembly is, and 3 milliseconds more for the first of each piece.
   */
  table(shape: Shape, parameter: number, later?: TablesToMake): Float64Array;
  /**
   * The words that seed ten blocks of a stream, four a block: blocks 10 * `decade` and the nine after it (`seedBlock`).
   * Cost: about 2 microseconds where WebAssembly is, as it hashes the ten side by side; 20 elsewhere.
   */
  seedTen(stream: string, decade: number, words: Uint32Array): void;
  /**
   * `drawLatin` of many estimates: three times as fast where WebAssembly is, as it draws four side by side. Takes
   * `bytesOfDrawer` of the arena.
   */
  drawer(drawings: readonly Drawing[]): Drawer;
  /** A block of 1,024 uniforms, one in each stratum, from the four words of its address (`seedBlock`). */
  fillLatin(seed: Uint32Array, out: Float64Array): void;
  /** A block of 1,024 independent uniforms. */
  fillPlain(seed: Uint32Array, out: Float64Array): void;
  /** Draws by inversion of a tabulated law, below 0 set to 0 when `cut`; answers how many were. `u` may be `out`. */
  lookUp(table: QuantileTable, u: Float64Array, out: Float64Array, n: number, cut: boolean): number;
  /** Draws of an estimate with outcomes, likewise. */
  lookUpOutcomes(table: OutcomeTable, u: Float64Array, out: Float64Array, n: number, cut: boolean): number;
  /** `fillLatin` and `lookUp` in one, without the uniforms. */
  drawLatin(seed: Uint32Array, table: QuantileTable, out: Float64Array, n: number, cut: boolean): number;
  /** occurs = 1 where lo <= u < hi, else 0. */
  occur(u: Float64Array, lo: number, hi: number, occurs: Uint8Array, n: number): void;

  /** Probabilities in (0, 1) become standard normal scores, in place. */
  toScores(row: Float64Array, n: number): void;
  /** out += factor * row. */
  addScaled(out: Float64Array, row: Float64Array, factor: number, n: number): void;
  /** Standard normal scores become probabilities, in place; beyond 36.8 they are 0 or 1. */
  toChances(row: Float64Array, n: number): void;

  /** out = from * scale. */
  scaleTo(out: Float64Array, from: Float64Array, scale: number, n: number): void;
  /** duration *= 1 + scale * (draws - 1) where it occurs. */
  multiplyImpact(
    duration: Float64Array,
    occurs: Uint8Array,
    draws: Float64Array,
    scale: number,
    n: number,
  ): void;
  /** duration += scale * draws where it occurs. */
  addImpact(duration: Float64Array, occurs: Uint8Array, draws: Float64Array, scale: number, n: number): void;

  /** out = max(out, from). Also the plan's finish over the tasks that are always needed. */
  raiseTo(out: Float64Array, from: Float64Array, n: number): void;
  /** out = max(out, the moment `lag` working days from `from`); lag > 1e-9. */
  raiseAfter(calendar: KernelCalendar, out: Float64Array, from: Float64Array, lag: number, n: number): void;
  /**
   * Start and finish of work that may begin from max(lower, earliest) on; answers the largest finish, at least 0.
   * Work of no length stands where its bound is.
   */
  settle(
    calendar: KernelCalendar,
    lower: Float64Array,
    duration: Float64Array,
    start: Float64Array,
    finish: Float64Array,
    earliest: number,
    n: number,
  ): number;

  /** The same with waits, required finishes, tasks not needed and milestones. */
  settleAny(work: AnyWork, n: number): number;
  /** out = max(out, from + lag), the lag drawn (`lags`) or `value`, times `scale`; less than 0: a lead. */
  raiseBy(
    calendar: KernelCalendar,
    out: Float64Array,
    from: Float64Array,
    lags: Float64Array | undefined,
    value: number,
    scale: number,
    n: number,
  ): void;
  /** The largest of a row, at least 0. */
  largestOf(row: Float64Array, n: number): number;
  /**
   * Moves work on to the earliest moment from which every wanted share is free from its start to its finish; stops once
   * a finish is past `most`.
   */
  freeFrom(
    calendar: KernelCalendar,
    wanted: readonly WantedShare[],
    start: Float64Array,
    finish: Float64Array,
    duration: Float64Array,
    most: number,
    n: number,
  ): void;
  /**
   * Marks, where a task moves, whose end frees the person it waits for: who ends as it starts and, were it still going,
   * would leave too little. Answers whether one that comes later in the order was newly marked.
   */
  markSharers(
    person: SharedPerson,
    moving: Uint8Array,
    start: Float64Array,
    duration: Float64Array,
    n: number,
  ): boolean;

  /**
   * moves = 1 where the plan's finish is not after the finish, or not after the next work that follows it; else 0. For
   * tasks that are needed in every iteration and never points.
   */
  markFinish(
    calendar: KernelCalendar,
    planFinish: Float64Array,
    finish: Float64Array,
    moves: Uint8Array,
    n: number,
  ): void;
  /**
   * movesI = 1 where j moves and starts at the finish of i or at the next work that follows it: a link from finish to
   * start without a lag, between tasks on one calendar that are never points.
   */
  markSimple(
    calendar: KernelCalendar,
    movesI: Uint8Array,
    movesJ: Uint8Array,
    finishI: Float64Array,
    startJ: Float64Array,
    n: number,
  ): void;
  /** Marks, link by link in every case, the predecessor where moving it moves the task. */
  markLink(link: LinkRows, n: number): void;
  anySet(row: Uint8Array, n: number): boolean;

  /** total += part; answers the sum of part. */
  addCost(total: Float64Array, part: Float64Array, n: number): number;
  /** total += scale * draws where it occurs; answers the sum of what was added. */
  addCostWhere(
    total: Float64Array,
    occurs: Uint8Array,
    draws: Float64Array,
    scale: number,
    n: number,
  ): number;
  /** total += once + (perDay + people) * duration; answers the sum of what was added. */
  addTaskCost(
    total: Float64Array,
    once: Float64Array,
    perDay: Float64Array,
    people: number,
    duration: Float64Array,
    n: number,
  ): number;
  /** total += once + rate * duration; answers the sum of what was added. */
  addDailyCost(
    total: Float64Array,
    once: Float64Array,
    rate: number,
    duration: Float64Array,
    n: number,
  ): number;
  /** part += rate * duration. */
  addDaily(part: Float64Array, duration: Float64Array, rate: number, n: number): void;
  /** Amounts for a day become amounts for the work in [from, to], 0 where there is none; no `from`: since the start. */
  scaleByWork(
    calendar: KernelCalendar,
    amounts: Float64Array,
    from: Float64Array | undefined,
    to: Float64Array,
    n: number,
  ): void;
  /** Books amounts to the months their moments fall in. */
  bookByMonth(ledger: Ledger, moments: Float64Array, amounts: Float64Array, n: number): void;
  /**
   * Books amounts evenly over the work in [start, finish]: each in all ("whole"; at the finish where there is no work),
   * or for each day of work ("daily").
   */
  spreadByMonth(
    calendar: KernelCalendar,
    ledger: Ledger,
    start: Float64Array,
    finish: Float64Array,
    amounts: Float64Array,
    per: "whole" | "daily",
    n: number,
  ): void;
  /**
   * Net value (worth of all streams less the cost) and payback (the moment by which payments, taken in order of time, have
   * covered the cost; infinite: never) of each iteration. Into `gained`: the sum of each stream's worth.
   */
  appraise(
    streams: readonly BenefitStream[],
    daily: number,
    cost: Float64Array,
    net: Float64Array,
    payback: Float64Array,
    gained: Float64Array,
    n: number,
  ): void;
  /**
   * Into four entries of `into`: sum of duration - base where it moves, sum of duration, how many move, how many have
   * no length.
   */
  sumMasked(duration: Float64Array, moves: Uint8Array, base: number, n: number, into: Float64Array): void;
  /** Into five entries of `into`: the sums of x, y, x * x, y * y and x * y. */
  sumProducts(x: Float64Array, y: Float64Array, n: number, into: Float64Array): void;

  /**
   * Counts values `from` to `to` (exclusive) against brackets, and appends those inside one to the `held` first of
   * `list`, in any order; answers how many it holds then. It must have room for `to - from` more.
   *
   * `brackets` has five entries for each of `count`: the low end, the high end, how many values were below the low
   * end, equal to it, and equal to the high end where that is another. Ends are not negative, or infinite; brackets
   * ascend, and what lies strictly between the ends of one is in no other. `list` may be `values` where held <= from.
   * Values may be negative or Infinity, but neither NaN nor -Infinity.
   */
  absorb(
    values: Float64Array,
    from: number,
    to: number,
    brackets: Float64Array,
    count: number,
    list: Float64Array,
    held: number,
  ): number;

  /**
   * The values at ranks (1-based, any order), exactly. Any number of values, in the arena or not; what the arena has
   * left is used as scratch (10 bytes a value; 2 where the values lie in the arena).
   */
  selectRanks(values: Float64Array, ranks: readonly number[]): number[];
}

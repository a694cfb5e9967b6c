import type { Json } from "../plan/source/toJson.ts";

/** A plan document, format 1, as JSON data: read it with `planFromData`. */
export type PlanData = { [key: string]: Json };

/**
 * A small plan whose answers are known from somewhere else: to test an engine, to teach, to try a chart.
 * Moments are days from the plan's start on a calendar without days off, unless the model says otherwise.
 */
export interface TestModel<Known> {
  document: PlanData;
  known: Known;
  /** Where the data and the answers come from, and whether they were read or recalled. */
  source: string;
}

/** What a network comes to with certain durations. */
export interface NetworkAnswer {
  finish: number;
  /** Tasks without float, in id order. */
  critical: readonly string[];
  /** By task: early start, early finish, total float. */
  tasks: Readonly<Record<string, readonly [start: number, finish: number, float: number]>>;
}

/** A percentile and the four standard errors within which 10,000 plain iterations should find it. */
export type KnownPercentile = readonly [p: number, value: number, within: number];

/** What a plan comes to under uncertainty, from a run far longer than a test can afford, or exactly. */
export interface SimulatedAnswer {
  mean: number;
  sd: number;
  percentiles: readonly KnownPercentile[];
  /** Chance of finishing by the end of a number of days: `[days, chance]`. */
  chanceBy: readonly (readonly [days: number, chance: number])[];
  /** Share of futures in which a task is critical; ties are all critical. */
  critical: Readonly<Record<string, number>>;
}

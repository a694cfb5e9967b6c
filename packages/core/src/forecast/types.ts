/**
 * The forecast: everything a person is shown is read from this one object.
 *
 * It is plain JSON (no class, no typed array, no undefined-valued key), so the command prints it, a worker
 * posts it and a page keeps it as it is. `day` is the real number of days since the plan's start; `workingDays`
 * is what the plan's calendar holds up to that moment. A percentile P is the smallest simulated value v such
 * that at least P of the iterations are <= v; `low` and `high` are its distribution-free 95 % limits (order
 * statistics; conservative under Latin hypercube sampling).
 */

/** The run stamp: what is needed to get the same figures again. */
export interface RunStamp {
  seed: string;
  iterations: number;
  version: string;
  design: "latin-hypercube" | "plain";
  sha256: string;
}

export interface Moment {
  /** The date of the day the moment falls on, read as a finish. */
  date: string;
  day: number;
  workingDays: number;
}
export interface FinishPercentile extends Moment {
  p: number;
  low: number;
  high: number;
  lowDate: string;
  highDate: string;
}
export interface CostPercentile {
  p: number;
  value: number;
  low: number;
  high: number;
}
/** `at[k]` is the value at probability `p[k]`: the quantile curve that charts draw. Never the iterations. */
export interface Curve {
  p: number[];
  at: number[];
}

export interface TaskForecast {
  id: string;
  name: string;
  phase?: string;
  milestone: boolean;
  /** Share of iterations in which it was critical. */
  critical: number;
  /** Share of iterations in which it was needed. */
  needed: number;
  /** `needed` false: not taken in the plan as written. */
  asWritten: {
    start: number;
    finish: number;
    startDate: string;
    finishDate: string;
    needed: boolean;
    duration: number;
    cost: number;
  };
  start: { p10: number; p50: number; p90: number };
  finish: { p10: number; p50: number; p90: number };
  startDates: { p10: string; p50: string; p90: string };
  finishDates: { p10: string; p50: string; p90: string; committed: string };
  /** Realised duration in working days. */
  duration: { mean: number };
  cost: { mean: number };
  target?: { date: string; chance: number };
}

export interface IntervalForecast {
  id: string;
  name: string;
  p10: number;
  p50: number;
  p90: number;
  atMost?: number;
  chance?: number;
}

export interface Driver {
  id: string;
  name: string;
  kind: "task" | "risk" | "assumption" | "lag" | "overhead" | "response";
  /** Mean over iterations of the working days it added to critical tasks. */
  days: number;
  /** Mean of the money it added to the total. */
  money: number;
}

export interface TornadoSide {
  workingDays: number;
  money: number;
}
export interface TornadoBar {
  id: string;
  name: string;
  kind: "task" | "task-cost" | "risk" | "assumption" | "lag" | "overhead" | "response";
  /** What `low` and `high` mean: held at its P10 and P90, or absent and occurring. */
  sides: "p10-p90" | "absent-occurs";
  /** Change of the committed value when the item alone is at its low side (P10, absent). */
  low: TornadoSide;
  /** ... at its high side (P90, occurs). */
  high: TornadoSide;
  /** The held values in words and units, e.g. "20 days" and "45 days", "absent" and "occurs". */
  lowText: string;
  highText: string;
}

export interface Forecast {
  plan: { title: string; sha256: string; currency: string; start: string };
  seed: string;
  iterations: number;
  version: string;
  design: "latin-hypercube" | "plain";
  asWritten: { finish: string; day: number; workingDays: number; cost: number };
  /** The level committed to and what it means in dates, days and money. */
  committed: {
    confidence: number;
    date: string;
    lowDate: string;
    highDate: string;
    day: number;
    workingDays: number;
    cost: number;
    costLow: number;
    costHigh: number;
    /** Chance that an iteration makes both the committed date and the committed sum. */
    both: number;
  };
  /** Committed less as written. */
  contingency: { workingDays: number; calendarDays: number; money: number };
  finish: {
    mean: number;
    sd: number;
    percentiles: FinishPercentile[];
    /** In days since start, ascending. */
    curve: Curve;
    /** Chance of doing at least as well as the plan as written. */
    asWrittenChance: number;
  };
  cost: {
    mean: number;
    sd: number;
    percentiles: CostPercentile[];
    curve: Curve;
    asWrittenChance: number;
  };
  /** Only what the plan's commitment asks for. */
  chance: { finishBy?: number; budget?: number; both?: number };
  asked: { finishBy?: string; finishByDay?: number; budget?: number };
  tasks: TaskForecast[];
  intervals: IntervalForecast[];
  drivers: Driver[];
  /** Present when limited people were respected: what they cost at the committed level, same draws. */
  people?: { workingDays: number; money: number };
  /** Realised durations that move together: correlation over the iterations. */
  together?: { tasks: [string, string]; correlation: number }[];
  /** What finishing late costs the organisation; beside the total, never inside it. */
  lateness?: {
    after: string;
    /** Chance of finishing late at all. */
    chance: number;
    /** Expected cost over all iterations, and over the late ones. */
    mean: number;
    meanWhenLate: number;
    p80: number;
  };
  /** Discounted benefits less the total cost (not discounted). */
  appraisal?: {
    years: number;
    discountRate: number;
    net: { mean: number; sd: number; p10: number; p50: number; p90: number };
    /** Chance that the benefits exceed the cost. */
    chancePositive: number;
    /** When discounted benefits have covered the cost; `chance` that they ever do; dates only if they do then. */
    payback: { chance: number; p50?: string; p80?: string };
    benefits: { id: string; name: string; mean: number; valued: boolean }[];
  };
  /** Cost by the end of each month, money released by then, and the chance that it covers the cost. */
  months?: {
    month: string;
    mean: number;
    cumulative: { p50: number; p80: number };
    released?: number;
    chanceCovered?: number;
  }[];
  /** The first month whose end is covered with less than the plan's confidence. */
  firstShortfall?: { month: string; chanceCovered: number };
  tornado?: TornadoBar[];
  warnings: string[];
}

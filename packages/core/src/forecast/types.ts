import type {
  CalendarDays,
  Chance,
  CorrelationCoefficient,
  Count,
  DaysSinceStart,
  Money,
  TaskDays,
  WorkingDays,
  YearlyRate,
  Years,
} from "../units.ts";
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
  iterations: Count;
  version: string;
  design: "latin-hypercube" | "plain";
  sha256: string;
}

/** A day of the forecast: the date, days since the start, and working days up to it. */
export interface Moment {
  /** The date of the day the moment falls on, read as a finish. */
  date: string;
  day: DaysSinceStart;
  workingDays: WorkingDays;
}
/** The finish at one level, with its sampling limits at 95 %. */
export interface FinishPercentile extends Moment {
  p: Chance;
  low: DaysSinceStart;
  high: DaysSinceStart;
  lowDate: string;
  highDate: string;
}
/** The cost at one level, in the plan's currency, with its sampling limits at 95 %. */
export interface CostPercentile {
  p: Chance;
  value: Money;
  low: Money;
  high: Money;
}
/** `at[k]` is the value at probability `p[k]`: the quantile curve that charts draw. Never the iterations. */
export interface Curve<Value extends number = number> {
  p: Chance[];
  at: Value[];
}

/** One task: when it starts and finishes, and how often it sets the finish. */
export interface TaskForecast {
  id: string;
  name: string;
  phase?: string;
  milestone: boolean;
  /** Share of iterations in which it was critical. */
  critical: Chance;
  /** Share of iterations in which it was needed. */
  needed: Chance;
  /** `needed` false: not taken in the plan as written. */
  asWritten: {
    start: DaysSinceStart;
    finish: DaysSinceStart;
    startDate: string;
    finishDate: string;
    needed: boolean;
    duration: TaskDays;
    cost: Money;
  };
  start: { p10: DaysSinceStart; p50: DaysSinceStart; p90: DaysSinceStart };
  finish: { p10: DaysSinceStart; p50: DaysSinceStart; p90: DaysSinceStart };
  startDates: { p10: string; p50: string; p90: string };
  finishDates: { p10: string; p50: string; p90: string; committed: string };
  /** Realised duration in working days. */
  duration: { mean: TaskDays };
  cost: { mean: Money };
  target?: { date: string; chance: Chance };
}

/** Working days from one milestone to another. */
export interface IntervalForecast {
  id: string;
  name: string;
  p10: CalendarDays;
  p50: CalendarDays;
  p90: CalendarDays;
  atMost?: CalendarDays;
  chance?: Chance;
}

/** What one uncertain item adds on average, in working days and money. */
export interface Driver {
  id: string;
  name: string;
  kind: "task" | "risk" | "assumption" | "lag" | "overhead" | "response";
  /** Mean over iterations of the working days it added to critical tasks. */
  days: TaskDays;
  /** Mean of the money it added to the total. */
  money: Money;
}

/** The commitment with one item at one end of its range. */
export interface TornadoSide {
  workingDays: WorkingDays;
  money: Money;
}
/** The commitment with one item low and high, all else as it varies. */
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

/** Cost by the end of a month, written `2027-03`. */
export interface ForecastMonth {
  month: string;
  mean: Money;
  cumulative: { p50: Money; p80: Money };
  released?: Money;
  chanceCovered?: Chance;
}

/** The answer every view is read from: dates, money, chances, drivers, and the run they come from. Plain JSON. */
export interface Forecast {
  plan: { title: string; sha256: string; currency: string; start: string };
  seed: string;
  iterations: Count;
  version: string;
  design: "latin-hypercube" | "plain";
  asWritten: { finish: string; day: DaysSinceStart; workingDays: WorkingDays; cost: Money };
  /** The level committed to and what it means in dates, days and money. */
  committed: {
    confidence: Chance;
    date: string;
    lowDate: string;
    highDate: string;
    day: DaysSinceStart;
    workingDays: WorkingDays;
    cost: Money;
    costLow: Money;
    costHigh: Money;
    /** Chance that an iteration makes both the committed date and the committed sum. */
    both: Chance;
  };
  /** Committed less as written. */
  contingency: { workingDays: WorkingDays; calendarDays: CalendarDays; money: Money };
  finish: {
    mean: DaysSinceStart;
    sd: CalendarDays;
    percentiles: FinishPercentile[];
    /** In days since start, ascending. */
    curve: Curve<DaysSinceStart>;
    /** Chance of doing at least as well as the plan as written. */
    asWrittenChance: Chance;
  };
  cost: {
    mean: Money;
    sd: Money;
    percentiles: CostPercentile[];
    curve: Curve<Money>;
    asWrittenChance: Chance;
  };
  /** Only what the plan's commitment asks for. */
  chance: { finishBy?: Chance; budget?: Chance; both?: Chance };
  asked: { finishBy?: string; finishByDay?: DaysSinceStart; budget?: Money };
  tasks: TaskForecast[];
  intervals: IntervalForecast[];
  drivers: Driver[];
  /** Present when limited people were respected: what they cost at the committed level, same draws. */
  people?: { workingDays: WorkingDays; money: Money };
  /** Realised durations that move together: correlation over the iterations. */
  together?: { tasks: [string, string]; correlation: CorrelationCoefficient }[];
  /** What finishing late costs the organisation; beside the total, never inside it. */
  lateness?: {
    after: string;
    /** Chance of finishing late at all. */
    chance: Chance;
    /** Expected cost over all iterations, and over the late ones. */
    mean: Money;
    meanWhenLate: Money;
    p80: Money;
  };
  /** Discounted benefits less the total cost (not discounted). */
  appraisal?: {
    years: Years;
    discountRate: YearlyRate;
    net: { mean: Money; sd: Money; p10: Money; p50: Money; p90: Money };
    /** Chance that the benefits exceed the cost. */
    chancePositive: Chance;
    /** When discounted benefits have covered the cost; `chance` that they ever do; dates only if they do then. */
    payback: { chance: Chance; p50?: string; p80?: string };
    benefits: { id: string; name: string; mean: Money; valued: boolean }[];
  };
  /** Cost by the end of each month, money released by then, and the chance that it covers the cost. */
  months?: ForecastMonth[];
  /** The first month whose end is covered with less than the plan's confidence. */
  firstShortfall?: { month: string; chanceCovered: Chance };
  tornado?: TornadoBar[];
  warnings: string[];
}

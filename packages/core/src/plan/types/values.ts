import type { Chance, InUnitOfEstimate } from "../../units.ts";

/** An ISO 8601 calendar date, e.g. `2027-02-01`, known to exist. */
export type IsoDate = string;
/** Small letters, digits and hyphens, a letter first; unique in a plan. */
export type Id = string;
/** A day of the week, as the plan writes it. */
export type Weekday = "mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun";

/** A family of distributions. */
export type Shape = "pert" | "triangular" | "uniform" | "normal" | "lognormal";
/** What the low and high of an estimate mean. */
export type Bounds = "extremes" | "p10-p90" | "p5-p95";
/** The unit of durations and lags. */
export type TimeUnit = "days" | "weeks";

/** A value that is certain. `unit` counts only where the estimate is of time. */
export interface FixedEstimate {
  kind: "fixed";
  value: InUnitOfEstimate;
  unit: TimeUnit;
}

/** low <= likely <= high with low < high; `likely` is absent where the shape takes none. */
export interface RangeEstimate {
  kind: "range";
  low: InUnitOfEstimate;
  likely?: InUnitOfEstimate;
  high: InUnitOfEstimate;
  shape: Shape;
  bounds: Bounds;
  unit: TimeUnit;
}

/** Distinct values in ascending order; chances above 0 that sum to 1. */
export interface OutcomesEstimate {
  kind: "outcomes";
  outcomes: { value: InUnitOfEstimate; chance: Chance }[];
  unit: TimeUnit;
}

/** A value that is certain, a range, or outcomes with their chances. */
export type Estimate = FixedEstimate | RangeEstimate | OutcomesEstimate;

/** What may stand at every part of a plan and changes no figure. */
export interface Noted {
  note?: string;
  was?: Id;
}

/** From one ISO date to another, both included. */
export interface DateRange {
  from: IsoDate;
  to: IsoDate;
}

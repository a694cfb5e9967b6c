import type { Estimate, Id, IsoDate, Noted } from "./values.ts";

/** Whether a benefit comes once or again and again. */
export type BenefitKind =
  | "revenue"
  | "cost-saving"
  | "time-saving"
  | "process"
  | "efficiency"
  | "risk-reduction";
/** What the finished work brings, in money or in its own unit. */
export interface Benefit extends Noted {
  id: Id;
  name: string;
  kind?: BenefitKind;
  goal?: Id;
  owner?: Id;
  /** How it is today and how it is to be, in words; never computed with. */
  baseline?: string;
  target?: string;
  amount?: Estimate;
  quantity?: Estimate;
  /** The unit of `quantity`, in words. */
  unit?: string;
  /** Money per unit of `quantity`. */
  worth?: number;
  per: "day" | "week" | "month" | "year" | "once";
  starts?: Id;
  /** Months from that finish until it begins. */
  lag?: number;
  ramp?: number;
  lasts?: number;
  until?: IsoDate;
}

/** What is to be reached, measured how, by when. */
export interface Goal extends Noted {
  id: Id;
  statement: string;
  measure?: string;
  target?: string;
  by?: IsoDate;
  owner?: Id;
}

/** What is delivered, or expressly not. */
export interface ScopeItem extends Noted {
  id: Id;
  name: string;
  optional: boolean;
  lost?: string;
}

/** A bar the result has to clear: exactly one of `atLeast` and `atMost`. */
export interface QualityBar extends Noted {
  id: Id;
  statement: string;
  atLeast?: number;
  atMost?: number;
  /** In words. */
  unit?: string;
  expected?: Estimate;
  /** Counts in place of `expected`. */
  measured?: number;
  on?: IsoDate;
  owner?: Id;
}

/** The problem, the goals, what is in scope and what is out. */
export interface Purpose {
  problem?: string;
  goals: Goal[];
  scopeIn: ScopeItem[];
  scopeOut: string[];
  constraints: string[];
  quality: QualityBar[];
}

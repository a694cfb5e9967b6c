import type { Curve, RunStamp } from "../forecast/types.ts";

/**
 * What explanations return: plain JSON, like the forecast. Working days are those of the plan's calendar, money
 * is in the plan's currency; a positive effect means later or dearer, a negative one earlier or cheaper.
 */

/** An amount of time and money. */
export interface Effect {
  workingDays: number;
  money: number;
}

/** Where a plan stands: as written, or at the level committed to. */
export interface Standing extends Effect {
  date: string;
  day: number;
  cost: number;
}

export type CauseKind = "spread" | "risk" | "assumption" | "cause" | "people";

/** One cause's part of the contingency; the parts add up to it. */
export interface Share extends Effect {
  /** The item's id; `other-spread`, `other-risks` and the like for minor causes gathered. */
  id: string;
  name: string;
  kind: CauseKind;
  /** Standard error of the share from sampled orders; 0 where every order was taken. */
  error: Effect;
  /** What the commitment would become if this cause alone vanished: a different question, a different figure. */
  ifRemoved: Effect;
  /** Ids gathered in it, when it is more than one. */
  gathers?: string[];
}

/** One step of the way from the plan as written to the committed value; the steps add up to the contingency. */
export interface WalkStep extends Effect {
  step: string;
  /** The step in a sentence. */
  text: string;
}

export interface Explanation {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  confidence: number;
  asWritten: Standing;
  committed: Standing;
  contingency: Effect;
  shares: Share[];
  /** How the orders were taken. */
  orders: { causes: number; taken: number; all: boolean };
  walk: WalkStep[];
}

/** What one response, or a set of them, does. */
export interface ResponseWorth {
  id: string;
  action: string;
  /** The risk or assumption it answers. */
  entry: { id: string; name: string };
  adopted: boolean;
  /** Mean of its cost. */
  cost: number;
  /** Change at the committed level when it alone is taken, no other response adopted. */
  alone: ResponseEffect;
  /** ... when it is taken (or, adopted, dropped) with the adopted ones as they are: with less without it. */
  given: ResponseEffect;
}
export interface ResponseEffect extends Effect {
  /** Changes of chances, -1 to 1, of what the plan's commitment asks for. */
  finishBy?: number;
  budget?: number;
  both?: number;
  /** Expected lateness cost avoided, money; only when the plan says what lateness costs. */
  latenessAvoided?: number;
  /** Mean money saved in all (risk costs, overheads, lateness) less its cost; lateness only when priced. */
  netWorth: number;
}

export interface ConfidenceStep {
  p: number;
  date: string;
  day: number;
  workingDays: number;
  cost: number;
  /** Limits of the percentiles. */
  lowDate: string;
  highDate: string;
  costLow: number;
  costHigh: number;
  /** What the step from the level before bought; absent on the first. */
  bought?: Effect;
  /** Expected cost of finishing later than this date, when lateness is priced from it on. */
  latenessLeft?: number;
  /** The step costs more (extra contingency held) than the lateness it avoids. */
  worthIt?: boolean;
}

export interface JointConfidence {
  stamp: RunStamp;
  /** Chance of both at the committed level of each. */
  atCommitted: number;
  /** The equal single level on date and money that gives the wanted joint level, and what it means. */
  equal: { joint: number; level: number; date: string; day: number; cost: number };
  /** Pairs of day and cost with the same joint chance, ascending by day. */
  frontier: {
    joint: number;
    pairs: { day: number; date: string; cost: number; finishLevel: number; costLevel: number }[];
  };
  /** Counts of iterations on a grid, for a density picture: `counts[row][column]`, rows by cost, columns by day. */
  density: { days: number[]; costs: number[]; counts: number[][] };
  correlation: number;
}

export type MoveKind =
  | "actuals"
  | "estimates"
  | "scope"
  | "logic"
  | "people"
  | "calendar"
  | "risks"
  | "money"
  | "other";

/** One group of changes between two plans and what it moved; the moves add up to the difference. */
export interface Move extends Effect {
  what: string;
  ids: string[];
  kind: MoveKind;
  error: Effect;
  /** Each change of the group in a sentence. */
  changes: string[];
}
export interface Comparison {
  stamp: RunStamp;
  confidence: number;
  from: Standing;
  to: Standing;
  moves: Move[];
}

/** One driving path: the chain of tasks that set the finish in some iterations. */
export interface DrivingPath {
  tasks: string[];
  names: string[];
  /** Share of iterations in which it set the finish. */
  share: number;
}
export interface TaskIndices {
  id: string;
  name: string;
  criticality: number;
  significance: number;
  cruciality: number;
  scheduleSensitivity: number;
  /** Working days the finish at the committed level would gain if the task took no longer than as written. */
  daysAtStake: number;
}
export interface Paths {
  stamp: RunStamp;
  paths: DrivingPath[];
  tasks: TaskIndices[];
}

/** Cost by month as a band, for the picture of spending against funds; a view of `forecast.months`. */
export interface SpendBand {
  months: string[];
  p50: Curve["at"];
  p80: Curve["at"];
  released: (number | undefined)[];
}

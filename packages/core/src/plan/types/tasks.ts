import type { Estimate, Id, IsoDate, Noted } from "./values.ts";

/** Which end of a task waits for which end of the other. */
export type LinkKind = "finish-to-start" | "start-to-start" | "finish-to-finish" | "start-to-finish";
/** One task waiting for another. */
export interface Link {
  task: Id;
  link: LinkKind;
  lag: Estimate;
  /** Calendar the lag is counted on when the lag names one; otherwise the successor's own. */
  lagCalendar?: string;
}

/** Somebody working on a task, with their share of a full day. */
export interface TaskPerson {
  id: Id;
  share: number;
  along: boolean;
}

/** A piece of work, or a milestone. */
export interface Task extends Noted {
  id: Id;
  name: string;
  phase?: string;
  scope?: Id;
  /** Exactly one of `duration` and `effort`, unless `milestone`. */
  duration?: Estimate;
  effort?: Estimate;
  milestone: false | "finish" | "start";
  target?: IsoDate;
  after: Link[];
  notBefore?: IsoDate;
  holdToPlan: boolean;
  /** Effective: the task's, else its phase's, else the plan's. */
  calendar: string;
  unbroken?: string;
  people: TaskPerson[];
  cost?: Estimate;
  due: "evenly" | "start" | "finish";
  costPerDay?: Estimate;
  priority: number;
  detail?: "firm" | "outline";
  chance: number;
  onlyIf?: Id;
  responsible: Id[];
  accountable: Id[];
  consulted: Id[];
  informed: Id[];
  estimatedBy: Id[];
  basis?: string;
  /** Who put it, or its estimate, into the plan; changes no number and no hash. */
  enteredBy?: Id[];
  started?: IsoDate;
  finished?: IsoDate;
  remaining?: Estimate;
  spent?: number;
  /** What people said before the estimate was settled; changes no number. */
  opinions?: Opinion[];
  /** The id of the outline task, in an earlier plan, that this one details. */
  detailOf?: Id;
}

/** What one person said of a task. */
export interface Opinion extends Noted {
  by: Id;
  date?: IsoDate;
  of: "duration" | "effort" | "cost";
  estimate: Estimate;
  basis?: string;
  /** The questions in the order they were asked. */
  order?: ("basis" | "high" | "low" | "likely" | "dissent")[];
  dissent?: string;
  /** Who wrote it down, where that was somebody else. */
  enteredBy?: Id[];
}

/** Time from one milestone to another that is asked about. */
export interface Interval extends Noted {
  id: Id;
  name: string;
  from: Id;
  to: Id;
  atMost?: number;
}

/** A part of the plan that tasks belong to. */
export interface Phase extends Noted {
  name: string;
  responsible: Id[];
  accountable: Id[];
  consulted: Id[];
  informed: Id[];
  calendar?: string;
}

/** Estimates that move together. */
export interface Correlation {
  /** Task ids for duration (effort) draws, `cost:TASK` for a task's cost draw. */
  between: string[];
  coefficient: number;
  cause?: string;
}

import type { Chance, InUnitOfEstimate } from "../units.ts";
/**
 * The plan, as the rest of the program sees it: read, checked, defaults filled in.
 *
 * A `Plan` in hand is a correct plan. Every estimate is one of three objects, every list is a list, every
 * task carries its effective calendar and every reference points at something that exists. Only `readPlan`
 * and the edits of `plan/` make one; nothing inside checks it again.
 *
 * Dates stay ISO 8601 calendar dates (`2027-02-01`); they become day numbers in `compile`.
 * Money is a plain number in the plan's currency.
 */

import type { PAGE_SECTIONS } from "./definition/pageText.ts";

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

/** What may stand at every part of a plan and changes no figure. */
export interface Noted {
  note?: string;
  was?: Id;
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

/** From one ISO date to another, both included. */
export interface DateRange {
  from: IsoDate;
  to: IsoDate;
}
/** Days off of a calendar. */
export interface Holiday extends DateRange {
  name?: string;
}
/** A calendar with `like` already resolved. */
export interface CalendarDefinition {
  name: string;
  workdays: Weekday[];
  holidays: Holiday[];
}

/** Days on which a person is away, wholly or in part. */
export interface Absence extends DateRange {
  /** The part of the capacity that is away, 0 to 1. */
  share: number;
  why?: string;
}
/** More of a person that could be had; counted only in a scenario that takes it in. */
export interface ExtraCapacity {
  /** How many more of them there would be; above 0. */
  capacity: number;
  /** Money, once. */
  cost: number;
  /** First day on which it would be there; absent: the plan's start. */
  from?: IsoDate;
}
/** Somebody who works, with capacity, calendar and rate. */
export interface Person extends Noted {
  id: Id;
  name: string;
  role?: string;
  rate: number;
  share: number;
  capacity: number;
  calendar: string;
  away: Absence[];
  couldAdd?: ExtraCapacity;
}

/** What may be done about a risk: its cost, and the chance and effects it leaves. */
export interface Response extends Noted {
  id: Id;
  action: string;
  owner?: Id;
  due?: IsoDate;
  cost?: Estimate;
  adopted: boolean;
  probability?: number;
  scale: number;
}
/** What a register entry does when it occurs: delay, factor, wait or cost. */
export interface Impact {
  /** The tasks it touches; `phase` is already resolved to its tasks, milestones excluded. */
  tasks: Id[];
  phase?: string;
  delay?: Estimate;
  factor?: Estimate;
  wait?: Estimate;
  cost?: Estimate;
}
/** What risks and assumptions have in common. */
export interface RegisterEntry extends Noted {
  kind: "risk" | "assumption";
  id: Id;
  /** A risk's name, an assumption's statement. */
  name: string;
  owner?: Id;
  /** A risk's `probability`, an assumption's `chanceWrong`. */
  probability: number;
  impacts: Impact[];
  responses: Response[];
  group?: string;
  status: "open" | "occurred" | "closed";
  /** What it did in fact, once occurred: takes the place of its impacts' ranges. */
  actual?: {
    /** Money in all. */
    cost?: number;
    /** Working days, of each task that its impacts delay or make wait. */
    days?: number;
  };
  expires?: IsoDate;
  onlyIf?: Id;
}
/** Something that may happen. */
export interface Risk extends RegisterEntry {
  kind: "risk";
  cause?: string;
}
/** Something taken to be true, with what happens if it is not. */
export interface Assumption extends RegisterEntry {
  kind: "assumption";
  cause?: string;
  reviewBy?: IsoDate;
  signpost?: string;
  /** The day its signpost was seen; changes no number. */
  tripped?: IsoDate;
}

/** Estimates that move together. */
export interface Correlation {
  /** Task ids for duration (effort) draws, `cost:TASK` for a task's cost draw. */
  between: string[];
  coefficient: number;
  cause?: string;
}

/** Money for every working day of a span. */
export interface Overhead extends Noted {
  id: Id;
  name: string;
  perDay: Estimate;
  from?: Id;
  to?: Id;
}

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

/** How often somebody is told. */
export type InformEvery = "week" | "two-weeks" | "month" | "quarter" | "milestone";
/** How a stakeholder is kept informed; changes no number. */
export interface Inform {
  how?: string;
  every?: InformEvery;
  owner?: Id;
  /** What they are told. */
  what?: string;
  /** The first day they are told, from which the rhythm runs; absent: the plan's start. */
  from?: IsoDate;
}

/** Somebody who decides, is asked or is told. */
export interface Stakeholder extends Noted {
  id: Id;
  name: string;
  role?: string;
  interest?: string;
  stance?: "supports" | "neutral" | "resists";
  inform?: Inform;
  approvesUpTo?: number;
  /** May sign in their place. */
  delegate?: Id;
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

/** The level committed to, and the date and sum asked for. */
export interface Commitment {
  finishOf?: Id;
  confidence: number;
  /** Present where there is a commitment that does not say how sure to be. */
  confidenceByDefault?: true;
  finishBy?: IsoDate;
  budget?: number;
  reserve?: number;
  holder?: Id;
  /** Who releases contingency, and how; in words. */
  releaseRule?: string;
  funds: { from: IsoDate; amount: number }[];
}

/** What is asked of the approvers; anything missing is made from the commitment, or said to be missing. */
export interface DecisionAsked extends Noted {
  ask?: string;
  by?: IsoDate;
  recommend?: string;
  doNothing?: string;
  alternatives: (Noted & { name: string; text?: string })[];
}

/** One approver's decision, bound to the plan as it was. */
export interface Approval extends Noted {
  who: Id;
  decision: "pending" | "approve" | "approve-subject-to" | "rework";
  date?: IsoDate;
  conditions?: string;
  /** The day by which the conditions have to be met, and the day on which they were. */
  conditionsBy?: IsoDate;
  conditionsMet?: IsoDate;
  plan?: string;
  /** Who signed in their place. */
  by?: Id;
}
/** An objection, with its state and answer. */
export interface Objection extends Noted {
  id: Id;
  who?: Id;
  date?: IsoDate;
  text?: string;
  answer?: string;
  evidence?: string;
  state: "open" | "answered" | "accepted";
  changedPlan: boolean;
  acceptedBy?: Id;
  /** Who opened it again. */
  reopenedBy?: Id;
}
/** An entry of the change log. */
export interface Change extends Noted {
  date?: IsoDate;
  who?: Id;
  what?: string;
  why?: string;
  approvedBy?: Id;
}

/** When the plan comes back to those who approved it: exactly one condition. */
export interface ReturnTrigger extends Noted {
  id: Id;
  name?: string;
  /** The chance of the date agreed falls below this: what the signed version commits to, else `commitment.finishBy`. */
  chanceOfDateBelow?: number;
  /** ... of the sum agreed: what the signed version commits to, else `commitment.budget`. */
  chanceOfBudgetBelow?: number;
  /** Contingency left over exposure left falls below this ratio, in money or in days. */
  contingencyCoverBelow?: number;
  /** This assumption is tripped, or proved wrong. */
  signpost?: Id;
  /** The committed date is later than this day. */
  finishLaterThan?: IsoDate;
  /** The committed sum is above this. */
  costAbove?: number;
}

/** Free text in Markdown below a section of the page; changes no number. */
export interface PageText extends Noted {
  after: PageSection;
  text: string;
}
/** A section of the page that free text may stand below. */
export type PageSection = (typeof PAGE_SECTIONS)[number];

/** A finding of `check` that was looked at and accepted; absent `ids`: every finding of that code. */
export interface AcceptedFinding extends Noted {
  finding: string;
  ids?: Id[];
  who: Id;
  date: IsoDate;
  why: string;
}

/** A correct plan: every reference resolves, every default is filled in. Made by `readPlan` and `planFromData` only. */
export interface Plan extends Noted {
  format: 1;
  title: string;
  currency: string;
  start: IsoDate;
  statusDate?: IsoDate;
  seed: string;
  iterations: number;
  commitment: Commitment;
  decision?: DecisionAsked;
  lateness?: { after?: IsoDate; perWeek?: Estimate; once?: Estimate };
  /** Every calendar by name, `weekdays` and `every-day` included. */
  calendars: Map<string, CalendarDefinition>;
  /** Name of the plan's own calendar. */
  calendar: string;
  purpose: Purpose;
  benefits: Benefit[];
  appraisal?: { years: number; discountRate: number };
  people: Person[];
  respectCapacity: boolean;
  stakeholders: Stakeholder[];
  phases: Phase[];
  tasks: Task[];
  intervals: Interval[];
  assumptions: Assumption[];
  risks: Risk[];
  correlations: Correlation[];
  overheads: Overhead[];
  approvals: Approval[];
  objections: Objection[];
  changes: Change[];
  returnTriggers: ReturnTrigger[];
  texts: PageText[];
  acceptedFindings: AcceptedFinding[];
  /** SHA-256 of the document (plan-format "The plan's hash"), hex. */
  sha256: string;
  /** The same with progress left out too: what an approval is bound to. */
  approvalSha256: string;
}

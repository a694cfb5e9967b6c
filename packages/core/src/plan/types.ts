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
export type Id = string;
export type Weekday = "mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun";

export type Shape = "pert" | "triangular" | "uniform" | "normal" | "lognormal";
export type Bounds = "extremes" | "p10-p90" | "p5-p95";
export type TimeUnit = "days" | "weeks";

/** A value that is certain. `unit` counts only where the estimate is of time. */
export interface FixedEstimate {
  kind: "fixed";
  value: InUnitOfEstimate;
  unit: TimeUnit;
}
/** low <= likely <= high with low < high; `likely` is absent for uniform, normal and lognormal. */
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
export type Estimate = FixedEstimate | RangeEstimate | OutcomesEstimate;

export type LinkKind = "finish-to-start" | "start-to-start" | "finish-to-finish" | "start-to-finish";
export interface Link {
  task: Id;
  link: LinkKind;
  lag: Estimate;
  /** Calendar the lag is counted on when the lag names one; otherwise the successor's own. */
  lagCalendar?: string;
}

export interface Noted {
  note?: string;
  was?: Id;
}

export interface TaskPerson {
  id: Id;
  share: number;
  along: boolean;
}

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

export interface Interval extends Noted {
  id: Id;
  name: string;
  from: Id;
  to: Id;
  atMost?: number;
}

export interface DateRange {
  from: IsoDate;
  to: IsoDate;
}
export interface Holiday extends DateRange {
  name?: string;
}
/** A calendar with `like` already resolved. */
export interface CalendarDefinition {
  name: string;
  workdays: Weekday[];
  holidays: Holiday[];
}

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
export interface Impact {
  /** The tasks it touches; `phase` is already resolved to its tasks, milestones excluded. */
  tasks: Id[];
  phase?: string;
  delay?: Estimate;
  factor?: Estimate;
  wait?: Estimate;
  cost?: Estimate;
}
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
export interface Risk extends RegisterEntry {
  kind: "risk";
  cause?: string;
}
export interface Assumption extends RegisterEntry {
  kind: "assumption";
  cause?: string;
  reviewBy?: IsoDate;
  signpost?: string;
  /** The day its signpost was seen; changes no number. */
  tripped?: IsoDate;
}

export interface Correlation {
  /** Task ids for duration (effort) draws, `cost:TASK` for a task's cost draw. */
  between: string[];
  coefficient: number;
  cause?: string;
}

export interface Overhead extends Noted {
  id: Id;
  name: string;
  perDay: Estimate;
  from?: Id;
  to?: Id;
}

export type BenefitKind =
  | "revenue"
  | "cost-saving"
  | "time-saving"
  | "process"
  | "efficiency"
  | "risk-reduction";
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

export interface Goal extends Noted {
  id: Id;
  statement: string;
  measure?: string;
  target?: string;
  by?: IsoDate;
  owner?: Id;
}
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
export interface Purpose {
  problem?: string;
  goals: Goal[];
  scopeIn: ScopeItem[];
  scopeOut: string[];
  constraints: string[];
  quality: QualityBar[];
}

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

export interface Phase extends Noted {
  name: string;
  responsible: Id[];
  accountable: Id[];
  consulted: Id[];
  informed: Id[];
  calendar?: string;
}

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

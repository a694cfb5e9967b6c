import type { RunStamp, TornadoBar } from "../forecast/types.ts";
import type {
  CalendarDays,
  Chance,
  ChanceChange,
  CorrelationCoefficient,
  Count,
  DaysSinceStart,
  Money,
  OwnDays,
  PersonDays,
  Portion,
  Ratio,
  WorkingDays,
} from "../units.ts";

/**
 * What explanations return: plain JSON, like the forecast. Working days are those of the plan's calendar, money
 * is in the plan's currency; a positive effect means later or dearer, a negative one earlier or cheaper.
 */

/** An amount of time and money. */
export interface Effect {
  workingDays: WorkingDays;
  money: Money;
}

/** Where a plan stands: as written, or at the level committed to. */
export interface Standing extends Effect {
  date: string;
  day: DaysSinceStart;
  cost: Money;
}

/** What kind of thing contingency is held for. */
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
  /** Ids of the tasks whose estimates move together, when it is a shared cause. */
  members?: string[];
}

/**
 * What a step of the walk lets in: the spread along the driving path, that of all other estimates where strands merge,
 * limits of people, the register; `percentile` goes from the mean to the level committed to.
 */
export type WalkKind = "spread" | "merging" | "people" | "register" | "percentile";

/** One step of the way from the plan as written to the committed value; the steps add up to the contingency. */
export interface WalkStep extends Effect {
  kind: WalkKind;
  step: string;
  /** The step in a sentence. */
  text: string;
}

/** What the contingency is held for and how it comes about, in working days and money; shares sum to the whole. */
export interface Explanation {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  confidence: Chance;
  asWritten: Standing;
  committed: Standing;
  /** Sampling limits of the committed value, at 95 %: how far to trust its digits. */
  limits?: { lowDate: string; highDate: string; low: Effect; high: Effect };
  contingency: Effect;
  shares: Share[];
  /** How the orders were taken, over as many causes as there are rows of `shares`. */
  orders: { causes: Count; taken: Count; all: boolean };
  walk: WalkStep[];
  /** One item at a time, for the items of the shares that are named; see `forecast.tornado` for all. */
  tornado?: TornadoBar[];
}

/** What one response does. */
export interface ResponseWorth {
  id: string;
  action: string;
  /** The risk or assumption it answers. */
  entry: { id: string; name: string };
  adopted: boolean;
  /** Mean of its cost. */
  cost: Money;
  /** Change at the committed level when it alone is taken, no other response adopted. */
  alone: ResponseEffect;
  /** ... when it is taken (or, adopted, dropped) with the adopted ones as they are: with less without it. */
  given: ResponseEffect;
}
/** What a response changes: working days, money and chances. */
export interface ResponseEffect extends Effect {
  /** Changes of chances, -1 to 1, of what the plan's commitment asks for. */
  finishBy?: ChanceChange;
  budget?: ChanceChange;
  both?: ChanceChange;
  /** Expected lateness cost avoided, money; only when the plan says what lateness costs. */
  latenessAvoided?: Money;
  /** Mean money saved in all (risk costs, overheads, lateness) less its cost; lateness only when priced. */
  netWorth: Money;
  /** Standard error of `netWorth` from the sampling, on the same draws; money. */
  netWorthError: Money;
}

/** Where a set of decisions leaves the plan: at the level committed to, against what is asked, and on average. */
export interface Outlook {
  date: string;
  day: DaysSinceStart;
  workingDays: WorkingDays;
  cost: Money;
  /** Of what is asked, in the same draws. */
  chance: { finishBy?: Chance; budget?: Chance; both?: Chance };
  /** Means over the futures; lateness only when the plan says what it costs. */
  mean: { day: DaysSinceStart; cost: Money; lateness?: Money };
}

/** How a set of decisions was found. */
export interface SearchMethod {
  /** `every-set`: all that come into question were tried. `greedy-exchange`: step by step, then exchanged. */
  kind: "every-set" | "greedy-exchange";
  /** Sets tried. */
  tried: Count;
  /** The method in a sentence. */
  text: string;
}

/** What is best about a set: the earliest committed date, the best chance of the asked date, the most net worth. */
export type Objective = "date" | "chance" | "worth";

/** Which responses not adopted yet to adopt with a given sum. */
export interface BestSet {
  sum: Money;
  objective: Objective;
  /** In id order; empty when none that can be afforded helps. */
  ids: string[];
  /** Members without which, one at a time, the committed date stays the same and net worth does not fall. */
  idle: string[];
  /** Mean of their costs together, at most `sum`. */
  cost: Money;
  outlook: Outlook;
  /** Against the plan as it stands. */
  effect: ResponseEffect;
  how: SearchMethod;
}

/** What each response of a plan buys. */
export interface Responses {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  confidence: Chance;
  asked: { finishBy?: string; budget?: Money };
  /** With no response adopted, and as the plan stands. */
  none: Outlook;
  stands: Outlook;
  /** Most net worth first, given the adopted ones; then by id. */
  responses: ResponseWorth[];
  best?: BestSet;
  /** What could not be told, and why. */
  notes: string[];
}

/** One thing to do to make a date or a sum. */
export interface ReachStep {
  kind: "response" | "scope" | "capacity";
  /** Of the response, the scope item or the person. */
  id: string;
  /** What is done, what is dropped, or whose capacity is added to. */
  name: string;
  /** The risk or assumption a response answers. */
  entry?: { id: string; name: string };
  /** What is lost with a scope item, in the plan's words. */
  lost?: string;
  /** How much capacity is added, and from when. */
  capacity?: Ratio;
  from?: string;
  /** Money it costs on average; dropping scope costs none. */
  cost: Money;
  /** Chance of what is asked with this step and those before it, and how much of it this step added. */
  chance: Chance;
  bought: ChanceChange;
  /** Change at the level asked for, with this step less before it. */
  effect: Effect;
}

/** A combination of steps, each with what it adds in the order listed: the one that adds most first. */
export interface ReachWay {
  steps: ReachStep[];
  /** Sum of the steps' costs. */
  cost: Money;
  /** Chance of what is asked with all steps taken. */
  chance: Chance;
  outlook: Outlook;
}

/** What it would take to make a date, a sum or both at a confidence. */
export interface Reach {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  asked: { finishBy?: string; sum?: Money; confidence: Chance };
  /** The plan as it stands, and its chance of what is asked. */
  stands: Outlook;
  chance: Chance;
  /** How many responses, scope items and people could be decided on. */
  options: { responses: Count; scope: Count; capacity: Count };
  /** `already`: nothing is needed. `ways`: it can be made. `nothing`: no combination tried makes it. */
  answer: "already" | "ways" | "nothing";
  /**
   * The least scope dropped, of that the least money; then, if it costs less, the one of least money whatever scope
   * it drops. Empty unless `answer` is `ways`.
   */
  ways: ReachWay[];
  /** Where `answer` is `nothing`: the combination of highest chance. */
  best?: ReachWay;
  how: SearchMethod;
  /** What could not be told, and why. */
  notes: string[];
}

/** A level, what it takes to hold it, and what is left to go wrong beyond it. Steps ascend by `p`. */
export interface ConfidenceStep {
  p: Chance;
  date: string;
  day: DaysSinceStart;
  workingDays: WorkingDays;
  cost: Money;
  /** Limits of the percentiles. */
  lowDate: string;
  highDate: string;
  costLow: Money;
  costHigh: Money;
  /** What the step from the level before bought; absent on the first. */
  bought?: Effect;
  /** Share of the futures that end after the date, and by how many calendar days on average when they do. */
  late: { chance: Chance; days: CalendarDays };
  /** Share of the futures that cost more than the sum, and by how much on average when they do. */
  over: { chance: Chance; money: Money };
  /** Expected cost of finishing later than this date, when lateness is priced from it on. */
  latenessLeft?: Money;
  /** How much of it the step from the level before avoids; absent on the first. */
  avoided?: Money;
  /** Standard error of `avoided` less `bought.money`; absent below 2,048 iterations. */
  netError?: Money;
  /** The step avoids more lateness than it costs in extra money held. */
  worthIt?: boolean;
}

/** Why this confidence and not another: the levels side by side, and date and money together. */
export interface Confidence {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  /** The level the plan commits to, one of the steps. */
  confidence: Chance;
  asWritten: Standing;
  committed: Standing;
  steps: ConfidenceStep[];
  /** What lateness costs, means over the iterations; absent when the plan does not say. */
  lateness?: { perWeek: Money; once: Money };
  /**
   * The level of least sum held and lateness left together: above it more is held than is avoided. `next`: the
   * level after it, and what that step costs and avoids. `clear`: the choice is outside sampling error. Absent
   * when the plan does not price lateness.
   */
  stop?: { p: Chance; next?: { p: Chance; costs: Money; avoids: Money }; clear: boolean };
  /** What the plan would have to say for the question to be answered, when it does not. */
  missing?: string;
  joint: JointConfidence;
}

/** A day and a sum; `day`: the end of the date, days since start. `both`: the share of futures that keep both. */
export interface JointPair {
  date: string;
  day: DaysSinceStart;
  cost: Money;
  /** Share of futures that keep the date, and that keep the sum, each alone. */
  finishLevel: Chance;
  costLevel: Chance;
  both: Chance;
}

/** Chances of keeping date and sum at once. A future that meets a target exactly keeps it. */
export interface JointConfidence {
  stamp: RunStamp;
  /** Chance of both at the committed level of each. */
  atCommitted: Chance;
  /** The committed level of each: where `atCommitted` is read. */
  committed: JointPair;
  /** What the plan asks for, when it asks for a date and a sum. */
  asked?: JointPair;
  /** The equal single level on date and money that gives the wanted joint level, and what it means. */
  equal: { joint: Chance; level: Chance; date: string; day: DaysSinceStart; cost: Money; both: Chance };
  /** Pairs of day and cost with the wanted joint chance, none smaller in either, ascending by day. */
  frontier: { joint: Chance; pairs: JointPair[] };
  /**
   * Counts of iterations on a grid, for a density picture: `counts[row][column]`, rows by cost, columns by day.
   * `days` and `costs` are the edges, one more than columns and rows; a column holds the dates after its left
   * edge up to its right one, a row the sums from its lower edge up to below its upper one.
   */
  density: { days: DaysSinceStart[]; costs: Money[]; counts: Count[][] };
  /** Of finish and cost over the iterations; 0 when one of them is certain. */
  correlation: CorrelationCoefficient;
}

/** Load against capacity, who waits for whom, and what limited people cost. */
export interface PeopleLoad {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  /** Whether the plan keeps people within their capacity. */
  respectCapacity: boolean;
  /** Mondays of the weeks that the rows of `people` run over; the first holds the plan's start. */
  weeks: string[];
  people: PersonLoad[];
  /** Waits for people, longest mean first; empty when capacity is not respected. */
  waits: Wait[];
  /**
   * The finish and the sum at the committed level with the limits and without, same draws. Absent when capacity is not
   * respected and a task asks for more than there is of a person.
   */
  limits?: { confidence: Chance; with: Standing; without: Standing; effect: Effect };
  loss?: Loss;
  /** Everybody lost in turn, each alone, for the same number of their own working days: the worst first. */
  losses?: Loss[];
}

/** Person-days by week, one entry for each of `PeopleLoad.weeks`. */
export interface PersonLoad {
  id: string;
  name: string;
  role?: string;
  capacity: Ratio;
  /** Ids of the tasks that name the person, in id order. */
  tasks: string[];
  /** Asked for in the plan as written; sums to share times duration over the tasks. */
  asked: PersonDays[];
  /** Capacity present: days off and absences out. */
  present: PersonDays[];
  /** Asked for beyond the whole capacity, moment by moment. */
  over: PersonDays[];
  /** Asked for within capacity but while the person is away: somebody stands in, or the task goes on without. */
  away: PersonDays[];
  /** The same plan with nobody waiting for people: where work would pile up. */
  unlimited: { asked: PersonDays[]; over: PersonDays[] };
  /** Mean over the futures, and the load not exceeded in 80 % of them, week by week. */
  mean: PersonDays[];
  p80: PersonDays[];
}

/** A task that could not start because a person was held by another. Working days of the plan's calendar. */
export interface Wait {
  task: { id: string; name: string };
  person: { id: string; name: string };
  /** The task whose end made room; absent where a partial absence had to pass. */
  behind?: { id: string; name: string };
  /** Days lost in the plan as written, and on average over the futures. */
  asWritten: WorkingDays;
  mean: WorkingDays;
  /** Share of the futures in which it waited. */
  share: Chance;
}

/** What it does to the commitment when a person is away. */
export interface Loss {
  person: { id: string; name: string };
  /** Working days of the person's own calendar, and the dates from the first to the last. */
  days: OwnDays;
  from: string;
  to: string;
  /** Part of the person's capacity that is away, above 0 to 1. */
  part: Portion;
  before: Standing;
  after: Standing;
  effect: Effect;
  /** Chances of what the plan asks for, before and after. */
  chance: { finishBy?: [Chance, Chance]; budget?: [Chance, Chance]; both?: [Chance, Chance] };
  /** Ids of tasks that, in the plan as written, need the person while away, and of those that go on without. */
  stopped: string[];
  goOn: string[];
}

/** What kind of change moved the commitment. */
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
  /** The group in one sentence. */
  what: string;
  /** Ids of the items it changes, in the new plan's names. */
  ids: string[];
  kind: MoveKind;
  /** Standard error of the effect from sampled orders; 0 where every order was taken. */
  error: Effect;
  /** Each change of the group in a sentence. */
  changes: string[];
}

/** What moved between two plans, both run with the new plan's seed, iterations and confidence. */
export interface Comparison {
  /** The run of the new plan. */
  stamp: RunStamp;
  /** The new plan. */
  plan: { title: string; currency: string; start: string };
  /** The old plan. */
  old: { title: string; start: string; sha256: string };
  confidence: Chance;
  /** `day` counts from the new plan's start, `workingDays` on its calendar, for both; negative: before it. */
  from: ComparedStanding;
  to: ComparedStanding;
  /** `to` less `from`: the sum of the moves, to 1e-9 relative. */
  difference: Effect;
  /** Largest first. */
  moves: Move[];
  /** How the orders were taken. */
  orders: { groups: Count; taken: Count; all: boolean };
  /** What the new plan asks for, and its chance in each plan. */
  asked: {
    finishBy?: { date: string; from: Chance; to: Chance };
    budget?: { sum: Money; from: Chance; to: Chance };
  };
  /** Changes that move neither date nor sum (names, notes, owners, what is asked for), each in a sentence. */
  alsoChanged: string[];
  warnings: string[];
}

/** A committed value with the 95 % limits of its percentiles. */
export interface ComparedStanding extends Standing {
  lowDate: string;
  highDate: string;
  costLow: Money;
  costHigh: Money;
}

export type { CostLine, Future, FutureDraw, FutureEvent, FutureTask } from "./future/types.ts";
export type {
  BoundKind,
  DrivingPath,
  Named,
  Paths,
  PathWay,
  StartBound,
  TaskIndices,
} from "./paths/types.ts";
export type { Why, WhyBound } from "./why/types.ts";

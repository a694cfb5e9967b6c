import type {
  Comparison,
  Confidence,
  ConfidenceStep,
  Effect,
  Explanation,
  Reach,
  Responses,
  ResponseWorth,
} from "../explain/types.ts";
import type { Forecast, ForecastMonth, RunStamp, TornadoBar } from "../forecast/types.ts";
import type { Approval, Id, IsoDate, Objection } from "../plan/types.ts";
import type { Chance, Count, InUnitBeside, Money, Ratio, WorkingDays } from "../units.ts";

/**
 * What an approver is asked to sign, as plain JSON. Every figure is one of the forecast, the explanation, the responses
 * or the confidence of the same run; nothing is drawn or computed twice. Working days are those of the plan's calendar,
 * money is in the plan's currency. What the plan does not say is absent here, and never made up.
 */

/** The results a brief is put together from: all of one plan, with the same draws and the same level. */
export interface BriefAnswers {
  forecast: Forecast;
  explanation: Explanation;
  responses: Responses;
  confidence: Confidence;
  /** One bar for each open assumption: see `assumptionBars`. */
  assumptions: TornadoBar[];
}

/** A person or stakeholder as a brief names them. */
export interface Someone {
  id: Id;
  name: string;
  role?: string;
}

/** What an approver signs, every figure read from one run. */
export interface Brief {
  plan: {
    title: string;
    currency: string;
    start: IsoDate;
    note?: string;
    statusDate?: IsoDate;
    /** The hash that an approval is bound to. */
    approvalSha256: string;
  };
  /** The day it was written on, as handed in. */
  today: IsoDate;
  stamp: RunStamp;
  confidence: Chance;
  /** Whether the plan speaks of money at all. */
  spends: boolean;
  decision: BriefDecision;
  recommendation: BriefRecommendation;
  commitment: BriefCommitment;
  worth: BriefWorth;
  scope: BriefScope;
  drivers: BriefDrivers;
  responses: BriefResponses;
  assumptions: BriefAssumption[];
  objections: BriefObjections;
  triggers: BriefTrigger[];
  outcome: BriefOutcome;
  warnings: string[];
  /** Where each figure comes from: all of the run that `stamp` names. */
  trace?: BriefFigure[];
  /** What the run took in and left out; absent where the plan is as it stands. */
  scenario?: { with?: readonly string[]; without?: readonly string[] };
}

/** The answer a figure is from; `plan`: stated there; `brief`: added up here from figures beside it. */
export type FigureSource =
  | "forecast"
  | "explain"
  | "responses"
  | "confidence"
  | "assumptions"
  | "plan"
  | "brief";

/** One figure of a brief and where it comes from. */
export interface BriefFigure {
  /** Its place in this brief: a JSON pointer. */
  figure: string;
  /** As it is there, not rounded. */
  value: InUnitBeside | string;
  from: FigureSource;
  /** Its place there, a JSON pointer (in `assumptions` by id); absent for `plan` and `brief`. */
  at?: string;
}

/** What is asked. `ask` is the plan's own sentence; without it the sentence is made from the commitment. */
export interface BriefDecision {
  ask?: string;
  /** What the commitment amounts to: whose finish, the date and the sum at the level. */
  finishOf?: Someone;
  date: IsoDate;
  cost: Money;
  /** By when it has to be decided; where the plan does not say, its start is all that is known. */
  by?: IsoDate;
}

/** What is recommended, and what was weighed against it. */
export interface BriefRecommendation {
  recommend?: string;
  doNothing: {
    text?: string;
    /** What is forgone in a full month, as written, with benefits worth money; absent where there are none. */
    perMonth?: Money;
    /** Benefits forgone, as written: per `per` as the plan states them. */
    benefits: { id: Id; name: string; amount: InUnitBeside; unit?: string; per: string; money: boolean }[];
  };
  alternatives: { name: string; text?: string }[];
  /** The same plan held at other levels. */
  levels: { p: Chance; date: IsoDate; cost: Money }[];
}

/** The date and the sum committed to, each with its chance, and the chance of both. */
export interface BriefCommitment {
  committed: Forecast["committed"];
  /** What no future moves; absent where both move. */
  certain?: { date: boolean; sum: boolean };
  asWritten: Forecast["asWritten"] & { finishChance: Chance; costChance: Chance };
  asked: { finishBy?: IsoDate; budget?: Money };
  chance: Forecast["chance"];
  contingency: Forecast["contingency"];
  /** Working days of the finish that limited people account for. */
  people?: { workingDays: WorkingDays; money: Money };
  holder?: Someone;
  releaseRule?: string;
  /** The sponsor's reserve: apart, and in no figure. */
  reserve?: Money;
  /** The level of each that holds both together as often as the level committed to, and what it means. */
  together: Confidence["joint"]["equal"];
  /** The first month whose end is not covered as surely as the plan wants. */
  firstShortfall?: { month: string; chanceCovered: Chance };
}

/** What the plan is worth and what delay costs, in the plan's currency. */
export interface BriefWorth {
  /** Net value and payback; absent where the plan has no `appraisal`. */
  appraisal?: Omit<NonNullable<Forecast["appraisal"]>, "benefits">;
  /** Whether a benefit is stated at all, and whether one is worth money. */
  benefits: { stated: Count; valued: Count };
  /** What lateness costs, beside the total: per week and once, and expected. */
  lateness?: NonNullable<Forecast["lateness"]> & { perWeek: Money; once: Money };
}

/** What is in and what is out. */
export interface BriefScope {
  in: { id: Id; name: string }[];
  /** In scope, but can be left out. */
  optional: { id: Id; name: string; lost?: string }[];
  out: string[];
  constraints: string[];
}

/** The largest shares of the contingency, and the rest as one: together they are the whole. */
export interface BriefDrivers {
  rows: (Effect & { id: Id; name: string; kind: Explanation["shares"][number]["kind"] })[];
  rest?: Effect & { causes: Count };
  whole: Effect;
  /** Standard error of a share from sampled orders at most; 0 where every order was taken. */
  error: Effect;
}

/** One response: what it costs and what it buys. */
export interface BriefResponse extends ResponseWorth {
  owner?: Someone;
  due?: IsoDate;
}
/** Responses taken and left, with what they cost together. */
export interface BriefResponses {
  adopted: BriefResponse[];
  /** Not adopted; they save more than they cost, beyond the sampling limits. Most net worth first. */
  worthBuying: BriefResponse[];
  /** Not adopted; they cost more than they save, or it is too close to tell. */
  others: BriefResponse[];
  /** Whether what lateness costs is counted in net worth. */
  latenessCounted: boolean;
}

/** An assumption the commitment rests on, with who watches it. */
export interface BriefAssumption {
  id: Id;
  statement: string;
  chanceWrong: Chance;
  owner?: Someone;
  reviewBy?: IsoDate;
  signpost?: string;
  /** The day its signpost was seen. */
  tripped?: IsoDate;
  /** It has proved wrong: its effect is in every figure. */
  occurred: boolean;
  /** How the commitment would move were it wrong; absent where that is settled already. */
  ifWrong?: Effect;
}

/** Objections open, answered and accepted. */
export interface BriefObjections {
  open: BriefObjection[];
  settled: BriefObjection[];
}
/** One objection, with its answer where there is one. */
export interface BriefObjection extends Omit<Objection, "who" | "acceptedBy" | "reopenedBy"> {
  who?: Someone;
  acceptedBy?: Someone;
  reopenedBy?: Someone;
}

/** When the commitment comes back to the approvers; exactly one condition each. */
export interface BriefTrigger {
  id?: Id;
  name?: string;
  /** Not in the plan: put forward here, to be agreed on. */
  proposed: boolean;
  chanceOfDateBelow?: Chance;
  chanceOfBudgetBelow?: Chance;
  contingencyCoverBelow?: Ratio;
  signpost?: { assumption: Id; statement: string; text?: string };
  finishLaterThan?: IsoDate;
  costAbove?: Money;
  /** It is met at this forecast. Never of a chance or a cover: these are measured against what this brief has signed. */
  already?: true;
}

/** Somebody who is to sign, and up to which sum they may. */
export interface BriefApprover extends Someone {
  decision: Approval["decision"];
  date?: IsoDate;
  conditions?: string;
  /** The day by which the conditions have to be met, and the day on which they were. */
  conditionsBy?: IsoDate;
  conditionsMet?: IsoDate;
  /** Who signed in their place. */
  by?: Someone;
  /** Signed, and for the plan as it is now, progress aside. */
  current?: boolean;
  approvesUpTo?: Money;
  /** The limit covers the committed sum. */
  covers?: boolean;
}
/** What may be decided: approved, approved subject to conditions, sent back. */
export interface BriefOutcome {
  approvers: BriefApprover[];
}

/** Questions an approver is likely to ask; each has its answer in the figures of the pre-brief. */
export type QuestionKey =
  | "ask"
  | "level"
  | "gap"
  | "earlier"
  | "cut"
  | "drivers"
  | "responses"
  | "changed"
  | "slip"
  | "afford"
  | "estimates"
  | "before"
  | "benefit"
  | "scope"
  | "people"
  | "assumptions"
  | "conditions"
  | "back";

/** A question this approver is likely to ask, with its answer. */
export interface PreBriefQuestion {
  key: QuestionKey;
  /** The words of the approver's role or interest that put it here; absent where it is asked of everybody. */
  because?: string;
}

/** What one approver is told before the meeting: the brief, and what this person in particular will ask. */
export interface PreBrief {
  brief: Brief;
  approver: BriefApprover & {
    interest?: string;
    stance?: "supports" | "neutral" | "resists";
    /** The note of the approval: what this person looks for. */
    looksFor?: string;
  };
  questions: PreBriefQuestion[];
  /** What this person has objected, whatever its state. */
  objections: BriefObjection[];
  figures: PreBriefFigures;
}

/** What the answers are made of, beside the brief's own figures. */
export interface PreBriefFigures {
  steps: ConfidenceStep[];
  stop?: NonNullable<Confidence["stop"]>;
  walk: Explanation["walk"];
  /** What makes the asked date and sum an even chance; absent where nothing is asked. */
  even?: Pick<Reach, "answer" | "ways" | "best" | "chance" | "asked">;
  /** Against the version named, when one was given. */
  comparison?: Comparison;
  months: ForecastMonth[];
  estimates: {
    uncertain: Count;
    withEstimator: Count;
    withBasis: Count;
    /** Uncertain estimates among the largest causes, with who said so and why they would know. */
    largest: { id: Id; name: string; by: Someone[]; basis?: string }[];
  };
  /** Finished tasks, and how many ended within the range that was stated is not known here. */
  finished: Count;
  /** Where the approver's own work or say stands in the plan: tasks by part. */
  own: { responsible: Count; accountable: Count; consulted: Count; informed: Count };
}

import type { Id, IsoDate, Noted } from "./values.ts";

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

/** A finding of `check` that was looked at and accepted; absent `ids`: every finding of that code. */
export interface AcceptedFinding extends Noted {
  finding: string;
  ids?: Id[];
  who: Id;
  date: IsoDate;
  why: string;
}

import type { Approval, Id, IsoDate } from "../plan/types.ts";
import type { Money } from "../units.ts";

/** Where one approver stands. */
export interface ApproverState {
  who: Id;
  name: string;
  role?: string;
  /**
   * `missing`: may approve the sum and was never asked, where nobody asked may; of several, one will do. `pending`: asked. `stale`: signed another version of the plan.
   * `covers`: signed the plan as it is (progress apart). `rework`: sent back.
   */
  state: "missing" | "pending" | "covers" | "stale" | "rework";
  decision: Approval["decision"];
  date?: IsoDate;
  conditions?: string;
  /** The day by which the conditions have to be met, and the day on which they were. */
  conditionsBy?: IsoDate;
  conditionsMet?: IsoDate;
  /** That day has passed and they were not met: the approval is none any more. */
  lapsed: boolean;
  /** Who signed in their place. */
  by?: Id;
  /** Hash that the signature is bound to. */
  signed?: string;
  /** What they may approve, money; absent: the plan names no limit. */
  limit?: Money;
  /** The sum asked for lies above it. */
  aboveLimit: boolean;
  delegate?: Id;
}

/** Whom each decision still covers, now that the plan is as it is. */
export interface ApprovalsState {
  plan: { title: string; currency: string; approvalSha256: string };
  /** What is asked for: the committed sum where a forecast is given, else the budget; money. */
  sum?: Money;
  /** The sponsor's reserve: apart, and not part of `sum`. */
  reserve?: Money;
  /**
   * `not-asked`: nobody signs this plan. `waiting`: somebody has still to sign. `approved`: all did, of the plan as it
   * is. `on-conditions`: all did, some on conditions not yet met. `outdated`: a signature is of another version. `lapsed`:
   * the day of somebody's conditions has passed, and they were not met. `rework`: sent back.
   */
  overall: "not-asked" | "waiting" | "approved" | "on-conditions" | "outdated" | "lapsed" | "rework";
  approvers: ApproverState[];
  /** Objections that are open, by id: each must be answered, or accepted by name. */
  open: Id[];
  /** The date of the last signature. */
  lastSigned?: IsoDate;
  /** The plan differs from a signed version and no change entry dated since says why, or none says who agreed. */
  unexplained: "no-entry" | "no-approver" | undefined;
}

/** A signature or another entry in the plan's text that cannot be made, and why. */
export interface Refusal {
  code:
    | "unknown-person"
    | "not-an-approver"
    | "above-limit"
    | "open-objection"
    | "error-found"
    | "unknown-objection"
    | "no-conditions"
    | "objection-state"
    | "not-a-party"
    | "no-approver"
    | "no-condition-open"
    | "empty-text"
    | "date-before";
  /** The word that it is about. */
  received: string;
  rule: string;
  remedy: string;
}

import type { Someone } from "../../brief/types.ts";
import type { Effect } from "../../explain/types.ts";
import type { RunStamp } from "../../forecast/types.ts";
import type { Chance, Money, MoneyOrDays, Ratio } from "../../units.ts";

/**
 * Contingency left against exposure left: plain JSON. Contingency is for what the plan knows to be uncertain and has a
 * holder; the sponsor's reserve is for what nobody foresaw and is part of no figure here.
 */

/** Where what was agreed comes from: the question, a signed version, or the plan's own commitment. */
export type AgreedFrom = "given" | "signed" | "plan";

/** What is left of one kind of contingency, and what it has to cover; money, or working days of the plan's calendar. */
export interface Cover {
  agreed: MoneyOrDays;
  agreedFrom: AgreedFrom;
  /** The plan as written now: what is done as it was, the rest at its as-written values. */
  asWritten: MoneyOrDays;
  /** Contingency left: agreed less as written. Negative: more than all of it is gone. */
  left: MoneyOrDays;
  /** The percentile at the level committed to, now, with its 95 % sampling limits. */
  committed: MoneyOrDays;
  low: MoneyOrDays;
  high: MoneyOrDays;
  /** Exposure left: committed less as written. What is done is in both, so it is that of what remains. */
  exposure: MoneyOrDays;
  /** Left less exposure. Negative: short by so much. */
  spare: MoneyOrDays;
  /** Left over exposure; absent where there is no exposure left. */
  ratio?: Ratio;
  /** Chance that what was agreed holds, as things stand. */
  chance: Chance;
}
/** Whether the working days left cover those that may be needed. */
export interface CoverOfDays extends Cover {
  agreedDate: string;
  asWrittenDate: string;
  committedDate: string;
}

/** A risk or assumption that is no longer open, and what was held for it. */
export interface SettledEntry {
  id: string;
  name: string;
  kind: "risk" | "assumption";
  how: "expired" | "closed" | "occurred" | "several";
  /** The last day of its window, where it has one. */
  expires?: string;
  /** Its part of the commitment before it was settled; the parts add up to `held`. */
  held: Effect;
  /** Standard error of the part where not every order was taken; 0 where all were. */
  error: Effect;
  /** What its having occurred adds to the plan as written; only of `occurred`. */
  took?: Effect;
  /** Ids gathered in it, when it is more than one. */
  gathers?: string[];
  /** Its part of what may be released; a proposal. None of `occurred`: that money has its use. */
  mayRelease: Effect;
}

/** The exposure still ahead at the end of a day, if all until then goes as written. */
export interface ExposureAhead {
  /** The last day that counts as passed. */
  date: string;
  exposure: Effect;
  /** Ids of what is settled by then and was not at the point before: tasks and others, risks and assumptions. */
  settles: { work: string[]; register: string[] };
}

/** Contingency agreed, used and left, in working days and money, beside what may still be needed. */
export interface ContingencyLeft {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  confidence: Chance;
  statusDate?: string;
  holder?: Someone;
  releaseRule?: string;
  /** The sponsor's reserve: beside the contingency, in none of the figures. */
  reserve?: Money;
  money?: Cover;
  days?: CoverOfDays;
  /** What cannot be said, and what would make it sayable. */
  missing: string[];
  settled: SettledEntry[];
  /** What was held for all of them together. */
  held: Effect;
  /** The plan in which that was measured: the signed version, or this one with its progress taken out. */
  heldIn: "signed" | "without-progress";
  /**
   * What may be released: no more than was held for what can no longer happen, and no more than is left beyond the
   * exposure. A proposal; nothing applies it.
   */
  release: Effect;
  /** From the status date on, month by month, to when nothing is uncertain any more. */
  ahead: ExposureAhead[];
}

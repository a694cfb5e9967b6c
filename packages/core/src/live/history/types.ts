import type { IsoDate } from "../../plan/types.ts";
import type { CalendarDays, Chance, Count, Money, WorkingDays } from "../../units.ts";

/** A finish as a history keeps it: the day, and working days from the plan's start on the plan's calendar. */
export interface KeptFinish {
  date: IsoDate;
  workingDays: WorkingDays;
}
/** ... with the days of its 95 % sampling limits. */
export interface KeptCommittedFinish extends KeptFinish {
  lowDate: IsoDate;
  highDate: IsoDate;
}

/** What is written in the history when a plan is recorded, before it is linked to the line before. */
export interface HistoryFacts {
  /** The format of the line. */
  history: 1;
  /** The day it was written. */
  date: IsoDate;
  /** The day up to which progress was known; absent before there is any. */
  statusDate?: IsoDate;
  /** The plan's start. */
  start: IsoDate;
  /** Hash of the plan, and of what an approval of it is bound to. */
  sha256: string;
  approvalSha256: string;
  seed: string;
  iterations: Count;
  design: "latin-hypercube" | "plain";
  version: string;
  confidence: Chance;
  currency: string;
  asWritten: KeptFinish & { cost: Money };
  finish: {
    p10: KeptFinish;
    p50: KeptFinish;
    p80: KeptFinish;
    p90: KeptFinish;
    committed: KeptCommittedFinish;
  };
  cost: {
    p10: Money;
    p50: Money;
    p80: Money;
    p90: Money;
    committed: Money;
    low: Money;
    high: Money;
  };
  /** What was asked for, and the chances of it; only what the commitment asks for. */
  asked: { finishBy?: IsoDate; budget?: Money };
  chance: { finishBy?: Chance; budget?: Chance; both?: Chance };
  /** Contingency left and the exposure it has to cover; absent where nothing was agreed. */
  left?: {
    money?: { left: Money; exposure: Money };
    days?: { left: WorkingDays; exposure: WorkingDays };
  };
  /** Approvals bound to this plan at the time: who, what, when. */
  approvals: { who: string; decision: string; date?: IsoDate }[];
  /** Who had it recorded, what happened and why. */
  change: { what: string; who?: string; why?: string };
}

/** A line of a history. */
export interface HistoryEntry extends HistoryFacts {
  /** `hash` of the line before; null in the first line. */
  previous: string | null;
  /** SHA-256, in hex, of the RFC 8785 JSON of this line without `hash`. */
  hash: string;
}

/** A place at which a history does not hold together. */
export interface Break {
  /** 1-based line of the file. */
  line: Count;
  what: "unreadable" | "changed" | "not-linked";
}

/** Forecasts kept over the life of a plan, oldest first. */
export interface ForecastHistory {
  /** Every line that reads, in order, those at a break included. */
  entries: HistoryEntry[];
  /** The line of each entry. */
  lines: Count[];
  breaks: Break[];
  /** What stands behind the last complete line: the beginning of one that was never finished. */
  torn?: { line: Count; text: string };
  /** The last line is complete but for its line break. */
  open: boolean;
}

/** Why two kept forecasts cannot be compared as they are. */
export type OtherTerm = "confidence" | "currency" | "draws" | "version" | "asked" | "plan";

/** One line of a history as it stands in the drift. */
export interface DriftPoint {
  /** The day it speaks from. */
  asOf: IsoDate;
  entry: HistoryEntry;
  /** Against the line before: calendar days of the committed date, and the committed sum where the currency is one. */
  moved?: { days: CalendarDays; money?: Money };
  /** What else differs from the line before; `plan`: more than progress. */
  terms?: OtherTerm[];
}

/** How the commitment moved from one kept forecast to the next. */
export interface Drift {
  points: DriftPoint[];
  /** The last against the first. */
  moved: { days: CalendarDays; money?: Money };
  /** The line that moved the date most; absent where none did. */
  largest?: DriftPoint;
}

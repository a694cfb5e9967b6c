import type { Id, IsoDate, Opinion } from "../../plan/types.ts";
import type { Chance, InUnitOfEstimate } from "../../units.ts";
import type { Askable } from "../askable.ts";

/** What is kept of an interview, in the order it is asked. */
export type InterviewKey = "basis" | "high" | "low" | "likely" | "dissent";

/** The estimate asked for, who is asked, and the day. */
export interface InterviewSubject extends Askable {
  by: Id;
  date: IsoDate;
}

/** What is asked next, in words, with the unit of the answer. */
export interface InterviewQuestion {
  key: InterviewKey | "confirm";
  text: string;
  /** What may be answered. */
  help: string;
}

/** What an estimate says, in its own unit: what is read back before it is written down. */
export interface Implied {
  p10: InUnitOfEstimate;
  p50: InUnitOfEstimate;
  p90: InUnitOfEstimate;
  mean: InUnitOfEstimate;
  /** Ends of the curve; absent where it has none. */
  min?: InUnitOfEstimate;
  max?: InUnitOfEstimate;
  /** The chance of a value below zero, which a forecast counts as zero. */
  belowZero: Chance;
}

/** Where an interview stands. Plain data; `answerInterview` gives the next one and leaves this as it is. */
export interface Interview {
  subject: InterviewSubject;
  answers: {
    basis?: string;
    high?: InUnitOfEstimate;
    low?: InUnitOfEstimate;
    likely?: InUnitOfEstimate;
    dissent?: string;
  };
  /** The questions answered, in order; one that was asked again stands again. */
  order: InterviewKey[];
  /** What is asked now; absent once it is confirmed. */
  question?: InterviewQuestion;
  /** Why the same thing is asked again. */
  again?: string;
  /** Present while it is read back, and after. */
  implied?: Implied;
  /** Present once confirmed. */
  opinion?: Opinion;
}

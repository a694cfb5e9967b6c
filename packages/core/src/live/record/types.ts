import type { Problem } from "../../plan/problem.ts";
import type { Id, IsoDate, Plan } from "../../plan/types.ts";

/** What can be reported: of a task, of a risk or assumption, of an assumption. */
export type FactKind =
  | "started"
  | "finished"
  | "remaining"
  | "spent"
  | "occurred"
  | "closed"
  | "tripped"
  | "cost"
  | "days";

/** One thing that happened, as it was reported. */
export interface ProgressFact {
  what: FactKind;
  /** Of the task, risk or assumption. */
  id: string;
  /**
   * As it was written: a date (`started`, `finished`, `tripped`; by default the status date), working days such as `6`
   * or `5,7,14` (`remaining`), money (`spent`, and `cost` of what occurred), working days it took (`days`); nothing where nothing belongs.
   */
  value?: string;
  /** How whoever reported it finds it again, e.g. `--started dig` or `progress.csv:3 started`. */
  said: string;
}

/** What happened up to the evening of a day. */
export interface ProgressReport {
  /** The status date, as it was written. */
  statusDate: string;
  facts: readonly ProgressFact[];
}

/** Something that was due by the status date, in the plan as it was written before the report. */
export interface DueTask {
  id: Id;
  name: string;
  date: IsoDate;
}

/** What a report leaves open. */
export interface StillMissing {
  /** Started, not finished, and nobody said what remains: the forecast takes it from the first estimate. */
  remaining: { id: Id; name: string; started: IsoDate }[];
  /** Should have started by the status date, and has not. */
  toStart: DueTask[];
  /** Should have finished by the status date, and has not; it has started. */
  toFinish: DueTask[];
}

/** A plan's text with a report of progress in it, and the problems. */
export interface Recorded {
  /** The text of the plan with the report in it; the text as it came where a problem is an error. */
  text: string;
  before?: Plan;
  /** Present only where no problem is an error. */
  after?: Plan;
  /** Ids of what changed, in the order of the report. */
  changed: Id[];
  /** Ids of tasks that were finished by this report. */
  finished: Id[];
  missing: StillMissing;
  /** All of them at once; `path` is what was `said`. Warnings stop nothing. */
  problems: Problem[];
}

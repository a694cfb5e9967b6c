import type { Forecast, RunStamp } from "../forecast/types.ts";
import type { AcceptedFinding } from "../plan/types.ts";
import type { InUnitBeside, Ratio } from "../units.ts";

/**
 * An error contradicts the plan's own promise or leaves open who answers for it, and keeps it from being approved until it
 * is mended or accepted by name; a warning weakens its answer; a note asks a question.
 */
export type FindingSeverity = "error" | "warning" | "note";
/** What a finding is about. */
export type FindingFamily =
  | "purpose"
  | "logic"
  | "estimates"
  | "register"
  | "people"
  | "money"
  | "commitment"
  | "sign-off";

/** One finding about a plan, as `check --json` prints it. */
export interface Finding {
  code: string;
  severity: FindingSeverity;
  /** Where in the document, e.g. `tasks[3].after[0]`; empty for the whole. A lone item of a list counts as `[0]`. */
  path: string;
  /** Ids of what it is about, the first before all others; empty for the whole plan. */
  ids: string[];
  /** What was found, and why it matters. */
  message: string;
  /** What to do about it. */
  advice: string;
  /** Where the rule comes from; "common practice, no source" where there is none. */
  source: string;
  /** Who accepted it, when and why; absent: nobody has. */
  accepted?: Pick<AcceptedFinding, "who" | "date" | "why">;
}

/** One check: a row of the table that checks, pages and tests read. */
export interface CheckRule {
  code: string;
  family: FindingFamily;
  severity: FindingSeverity;
  /** What is found, as a heading. */
  what: string;
  /** Why it matters, one sentence. */
  why: string;
  /** What to do, one sentence. */
  advice: string;
  source: string;
  /** From which value on; absent where it is a matter of yes or no. */
  threshold?: string;
  /** Looked for only where a forecast is handed in. */
  needsForecast?: true;
}

/** One figure about the whole plan beside the threshold the trade names for it: a prompt to ask, no verdict, no score. */
export interface PlanMeasure {
  code: string;
  name: string;
  /** How it is reckoned. */
  definition: string;
  /** A share is 0 to 1; absent where it does not apply, see `reason`. */
  value?: InUnitBeside;
  unit: "share" | "count" | "ratio" | "working days";
  /** What a share or a ratio is of; absent for the others. */
  count?: Ratio;
  of?: Ratio;
  threshold: InUnitBeside;
  bound: "at most" | "at least";
  /** Whether the threshold is kept; at exactly the threshold it is. Absent with `value`. */
  within?: boolean;
  /** Why there is no value. */
  reason?: string;
  /** What to ask when it is not kept. */
  question: string;
  source: string;
}

/** The day of looking, and the forecast whose chances are looked at. */
export interface FindingOptions {
  /** The date of today, ISO 8601; absent: nothing is looked at that depends on it. */
  today?: string;
  /** A forecast of this plan; absent: nothing is looked at that depends on chances. */
  forecast?: Forecast;
}

/** What `check --json` prints. */
export interface CheckAnswer {
  plan: { title: string; sha256: string };
  /** The day the plan was looked at on, ISO 8601. */
  today: string;
  /** Of the forecast behind what is said of chances; absent: there was none. */
  run?: RunStamp;
  findings: Finding[];
  measures: PlanMeasure[];
}

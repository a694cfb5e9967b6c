import type { Finding, PlanMeasure, RunStamp } from "@leeway/core";

/** What `check` answers, as its JSON prints it. */
export interface CheckAnswer {
  plan: { title: string; sha256: string };
  /** The day the plan was looked at on, ISO 8601. */
  today: string;
  /** Of the forecast behind what is said of chances; absent: nothing was drawn. */
  run?: RunStamp;
  findings: Finding[];
  measures: PlanMeasure[];
}

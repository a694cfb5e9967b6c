import type { Forecast } from "../forecast/types.ts";
import type { IsoDate, Plan, Task } from "../plan/types.ts";
import type { Model } from "../simulate/model.ts";
import type { FindingCode } from "./checkRules.ts";
import type { Lateness } from "./network/lateTasks.ts";
import type { Written } from "./network/written.ts";
import type { FindingSeverity } from "./types.ts";

/** What one check found, before its row of the table is put to it. */
export interface Found {
  code: FindingCode;
  path: string;
  ids: string[];
  /** What was found, one sentence; why it matters is in the table. */
  says: string;
  /** In place of the table's. */
  advice?: string;
  severity?: FindingSeverity;
}

/** What checks look at. */
export interface CheckContext {
  plan: Plan;
  /** The later of today and the status date; undefined where neither is known. */
  now: IsoDate | undefined;
  today: IsoDate | undefined;
  forecast: Forecast | undefined;
  /** The plan as written, placed; undefined where it runs past what calendars cover. */
  written: Written | undefined;
  /** The task at which it does. */
  beyond: { model: Model; at: number } | undefined;
  /** Tasks against the plan without progress. */
  late: Lateness;
  /** Unfinished tasks that are no milestones, each with its path: what most shares are of. */
  work: readonly PlacedTask[];
}
export interface PlacedTask {
  task: Task;
  path: string;
}
export type Check = (context: CheckContext) => Found[];

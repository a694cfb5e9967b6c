import type { Estimate, Id, Plan, Task } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/asWrittenValue.ts";
import { estimateQuantile } from "../../sampling/estimateQuantile.ts";
import type { Calendars } from "../../simulate/compileCalendars.ts";
import type { ScoreEntry } from "./types.ts";

/** What was said, in which plan and of which task, and how long (or how much) it took. */
export interface Said {
  plan: Plan;
  task: Task;
  of: "duration" | "effort" | "cost";
  estimate: Estimate;
  by: Id[];
  actual: number;
  events: Id[];
}

/** An entry of the scorecard; undefined where the estimate was no range. */
export function entryOf(said: Said, calendars: Calendars): ScoreEntry | undefined {
  const { plan, task, of, estimate, by, actual, events } = said;
  if (estimate.kind === "fixed") return undefined;
  const week = estimate.unit === "weeks" ? calendars.weekLength(task.calendar) : 1;
  const shares = task.people.reduce((sum, { share }) => sum + share, 0);
  const factor = of === "cost" ? 1 : of === "effort" ? week / (shares || 1) : week;
  const at = (p: number) => estimateQuantile(estimate, p) * factor;
  const p10 = at(0.1);
  const p90 = at(0.9);
  const where = actual < p10 ? "below" : actual > p90 ? "above" : "inside";
  const off = Math.max(p10 - actual, actual - p90);
  return {
    task: task.id,
    name: task.name,
    plan: plan.title,
    of: of === "cost" ? "cost" : "duration",
    unit: of === "cost" ? "money" : "working days",
    by,
    p10,
    likely: asWrittenValue(estimate) * factor,
    p50: at(0.5),
    p90,
    actual,
    where,
    within: of !== "cost" && where !== "inside" && off < 1,
    events,
  };
}

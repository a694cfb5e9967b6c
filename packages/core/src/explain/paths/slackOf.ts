import { tolerance } from "../../calendar/tolerance.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import type { Placed } from "./placed.ts";

/**
 * Working days of its own calendar by which task j could slip in iteration k before the plan's finish moved. At least
 * 0; infinite where it never would, and for a finished task.
 *
 * @param late  The task's row of `fillLateRows`.
 */
export function slackOf({ model, block }: Placed, j: number, k: number, late: Float64Array): number {
  const task = model.tasks[j];
  const limit = late[k] as number;
  if (task === undefined || task.progress?.finished === true || limit === Number.POSITIVE_INFINITY) {
    return Number.POSITIVE_INFINITY;
  }
  const now = workAt(task.calendar, (block.start[j] as Float64Array)[k] as number);
  const slack = workAt(task.calendar, Math.max(0, limit)) - now;
  return slack > tolerance ? slack : 0;
}

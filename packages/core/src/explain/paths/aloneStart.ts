import { tolerance } from "../../calendar/tolerance.ts";
import { finishMoment, nextWork, startMoment, workAt } from "../../calendar/workCalendar.ts";
import { keepWhole } from "../../simulate/keepWhole.ts";
import type { ModelTask } from "../../simulate/model.ts";

const start = new Float64Array(1);
const finish = new Float64Array(1);

/**
 * The earliest start of a task on which nothing bears but one bound: a moment before which it may not start, or
 * (`toFinish`) not finish. A bound before the plan's start asks for nothing: its own negative moment is answered.
 *
 * @param d        Realised duration, working days.
 * @param skipped  The task is not needed: a plain point.
 */
export function aloneStart(
  task: ModelTask,
  d: number,
  skipped: boolean,
  moment: number,
  toFinish: boolean,
): number {
  if (moment < 0) return moment;
  if (skipped || d <= tolerance) {
    return task.kind === "milestone-start" && !skipped ? nextWork(task.calendar, moment) : moment;
  }
  const { calendar, unbroken } = task;
  const w = workAt(calendar, moment) - (toFinish ? d : 0);
  if (w < -tolerance) return w;
  const at = startMoment(calendar, w < 0 ? 0 : w);
  if (unbroken === undefined) return at;
  start[0] = at;
  finish[0] = finishMoment(calendar, w + d);
  keepWhole(calendar, unbroken, start, finish, 0, d);
  return start[0] as number;
}

import { dayNumber } from "../../calendar/dates.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import type { Plan, Task } from "../../plan/types.ts";
import type { Calendars } from "../../simulate/compileCalendars.ts";

/**
 * The working days a finished task took: what its calendar, shared with its people, holds from the beginning of the day
 * it started to the end of the day it finished. The realised duration of the plan format.
 */
export function actualDays(plan: Plan, task: Task, calendars: Calendars): number | undefined {
  if (task.started === undefined || task.finished === undefined) return undefined;
  const people = task.people.filter(({ along }) => !along).map(({ id }) => id);
  const calendar = calendars.shared(task.calendar, people);
  const from = dayNumber(task.started) - dayNumber(plan.start);
  const to = dayNumber(task.finished) - dayNumber(plan.start) + 1;
  return workAt(calendar, to) - workAt(calendar, from);
}

import { dayNumber } from "../../../calendar/dates.ts";
import { workAt } from "../../../calendar/workCalendar.ts";
import type { Plan } from "../../../plan/types.ts";
import { compileCalendars } from "../../../simulate/compileCalendars.ts";

/**
 * Working days of a plan's calendar between its start and a moment, for moments of plans that start on other dates.
 *
 * @param earliest  The earliest start of any of those plans.
 * @returns (day since the start of the plan moments are told by, that start) to working days; negative before
 *          `plan.start`
 */
export function workingDaysFrom(plan: Plan, earliest: string): (day: number, start: string) => number {
  const origin = earliest < plan.start ? earliest : plan.start;
  const calendar = compileCalendars({ ...plan, start: origin }).named(plan.calendar);
  const zero = dayNumber(origin);
  const before = workAt(calendar, dayNumber(plan.start) - zero);
  return (day, start) => workAt(calendar, day + (dayNumber(start) - zero)) - before;
}

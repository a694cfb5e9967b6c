import type { Person, Plan, Task } from "../../packages/core/src/plan/types.ts";
import { dayNumber, weekdayOfDay } from "./dates.ts";
import { type DayTest, TOLERANCE } from "./time.ts";

const WEEKDAYS = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;

/** Is `day` within one of these inclusive date ranges? */
function within(plan: Plan, ranges: { from: string; to: string }[], day: number): boolean {
  return ranges.some((r) => dayNumber(plan.start, r.from) <= day && day <= dayNumber(plan.start, r.to));
}

/** Remembers answers of a test of days; the loops ask the same days over and over. */
function remembering(test: DayTest): DayTest {
  const known = new Map<number, boolean>();
  return (day) => {
    const seen = known.get(day);
    if (seen !== undefined) return seen;
    const answer = test(day);
    known.set(day, answer);
    return answer;
  };
}

/** Working days of a calendar of the plan, by name. */
export function calendarDays(plan: Plan, name: string): DayTest {
  const calendar = plan.calendars.get(name);
  if (!calendar) throw new Error(`no calendar ${name}`);
  return remembering((day) => {
    const weekday = WEEKDAYS[weekdayOfDay(plan.start, day)];
    return (
      weekday !== undefined && calendar.workdays.includes(weekday) && !within(plan, calendar.holidays, day)
    );
  });
}

/** Days in a week of a calendar: what a `unit: weeks` on it stands for. */
export function weekLength(plan: Plan, name: string): number {
  const calendar = plan.calendars.get(name);
  if (!calendar) throw new Error(`no calendar ${name}`);
  return calendar.workdays.length;
}

/** The part of a person's capacity away on a day: overlapping absences add up, at most all of it. */
export function absentPart(plan: Plan, person: Person, day: number): number {
  let part = 0;
  for (const absence of person.away) if (within(plan, [absence], day)) part += absence.share;
  return part >= 1 - TOLERANCE ? 1 : part;
}

/** The people of a task whose calendar and absences limit it, i.e. all who do not merely go along. */
function limitingPeople(plan: Plan, task: Task): Person[] {
  const ids = task.people.filter((p) => !p.along).map((p) => p.id);
  return plan.people.filter((person) => ids.includes(person.id));
}

/** Days on which a task works: its calendar's and those of every limiting person, full absences excluded. */
export function taskDays(plan: Plan, task: Task): DayTest {
  const own = calendarDays(plan, task.calendar);
  const people = limitingPeople(plan, task).map((person) => ({
    person,
    works: calendarDays(plan, person.calendar),
  }));
  return remembering(
    (day) => own(day) && people.every((p) => p.works(day) && absentPart(plan, p.person, day) < 1),
  );
}

/**
 * What a person can be asked for on a day. A full absence is a non-working day and is held over like a
 * weekend, so it does not lower this; a partial one does. One who goes along is never limited by absences.
 */
export function capacityOn(plan: Plan, person: Person, day: number, along: boolean): number {
  const part = absentPart(plan, person, day);
  return along || part === 1 ? person.capacity : person.capacity * (1 - part);
}

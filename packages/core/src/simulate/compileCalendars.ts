import { dayNumber, weekdayOf } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import { lastDay, type WorkCalendar } from "../calendar/workCalendar.ts";
import { quickCalendar } from "../kernel/index.ts";
import type { Person, Plan, Weekday } from "../plan/types.ts";

const weekdays: Weekday[] = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];

/** Calendars of a plan as tables, made once each however many tasks share them. */
export interface Calendars {
  named(name: string): WorkCalendar;
  /** The calendar of work for a task on calendar `name` done by these people, full absences left out. */
  shared(name: string, people: readonly string[]): WorkCalendar;
  /** Working days in a week of the named calendar. */
  weekLength(name: string): number;
  /** Spans in which a part of a person's capacity is away: [from, to) in days since start. */
  partialAbsences(person: Person): { from: number; to: number; gone: number }[];
}

export function compileCalendars(plan: Plan): Calendars {
  const startDay = dayNumber(plan.start);
  const flags = new Map<string, Uint8Array>();
  const tables = new Map<string, WorkCalendar>();
  const people = new Map(plan.people.map((person) => [person.id, person]));
  const absences = new Map<string, Float64Array>();

  const definition = (name: string) => {
    const found = plan.calendars.get(name);
    if (found === undefined) throw new RangeError(`calendar ${name} is not in the plan`);
    return found;
  };

  const flagsOf = (name: string): Uint8Array => {
    const known = flags.get(name);
    if (known !== undefined) return known;
    const { workdays, holidays } = definition(name);
    const works = weekdays.map((day) => (workdays.includes(day) ? 1 : 0));
    const first = weekdayOf(startDay);
    const made = new Uint8Array(lastDay + 1);
    for (let day = 0; day < 7; day++) made[day] = works[(first + day) % 7] as number;
    // Whole weeks, twice as many each time: quick from the first call on.
    for (let filled = 7; filled <= lastDay; filled *= 2) made.copyWithin(filled, 0, filled);
    for (const holiday of holidays) {
      const from = Math.max(0, dayNumber(holiday.from) - startDay);
      const to = Math.min(lastDay, dayNumber(holiday.to) - startDay);
      for (let day = from; day <= to; day++) made[day] = 0;
    }
    flags.set(name, made);
    return made;
  };

  /** The part of a person's capacity that is away, day by day; overlapping absences add up to at most 1. */
  const absenceOf = (person: Person): Float64Array | undefined => {
    if (person.away.length === 0) return undefined;
    const known = absences.get(person.id);
    if (known !== undefined) return known;
    const made = new Float64Array(lastDay + 1);
    for (const { from, to, share } of person.away) {
      const first = Math.max(0, dayNumber(from) - startDay);
      const last = Math.min(lastDay, dayNumber(to) - startDay);
      for (let day = first; day <= last; day++) made[day] = (made[day] as number) + share;
    }
    absences.set(person.id, made);
    return made;
  };

  const tableOf = (key: string, make: () => Uint8Array): WorkCalendar => {
    const known = tables.get(key);
    if (known !== undefined) return known;
    const made = quickCalendar(make());
    tables.set(key, made);
    return made;
  };

  const named = (name: string): WorkCalendar => tableOf(name, () => flagsOf(name));

  return {
    named,
    shared(name, ids) {
      // Only what narrows the calendar counts: people on the same calendar, never wholly away, add nothing.
      const narrowing = ids
        .map((id) => people.get(id))
        .filter((person) => person !== undefined)
        .filter((person) => person.calendar !== name || person.away.length > 0)
        .sort((a, b) => (a.id < b.id ? -1 : 1));
      if (narrowing.length === 0) return named(name);
      const key = `${name}\u0000${narrowing.map((person) => person.id).join("\u0000")}`;
      return tableOf(key, () => {
        const made = flagsOf(name).slice();
        for (const person of narrowing) {
          const theirs = flagsOf(person.calendar);
          const away = absenceOf(person);
          for (let day = 0; day <= lastDay; day++) {
            if (theirs[day] === 0 || (away !== undefined && (away[day] as number) >= 1 - tolerance))
              made[day] = 0;
          }
        }
        return made;
      });
    },
    weekLength: (name) => definition(name).workdays.length,
    partialAbsences(person) {
      const away = absenceOf(person);
      if (away === undefined) return [];
      const spans: { from: number; to: number; gone: number }[] = [];
      const last = Math.max(...person.away.map((absence) => dayNumber(absence.to) - startDay));
      for (let day = 0; day <= Math.min(last, lastDay); day++) {
        const part = away[day] as number;
        if (part <= tolerance || part >= 1 - tolerance) continue;
        const gone = part * person.capacity;
        const open = spans[spans.length - 1];
        if (open !== undefined && open.to === day && open.gone === gone) open.to = day + 1;
        else spans.push({ from: day, to: day + 1, gone });
      }
      return spans;
    },
  };
}

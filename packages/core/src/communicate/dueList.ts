import { dayNumber, isoDate, weekdayOf } from "../calendar/dates.ts";
import type { Forecast } from "../forecast/types.ts";
import { WEEKDAYS } from "../plan/definition/people.ts";
import type { Id, IsoDate, Plan, Stakeholder } from "../plan/types.ts";
import { rhythm } from "./rhythm.ts";
import type { Due, DueList } from "./types.ts";

/** From which day, and how far ahead. */
export interface DueOptions {
  /** Only what this person or stakeholder sees to. */
  owner?: Id;
  /** Nothing before this day. */
  from?: IsoDate;
}

/**
 * Who has to be told of what, how and when: every occasion of `stakeholders[].inform` up to the committed finish, in
 * order of days. A day that holds no work on the plan's calendar is moved to the next that does (two occasions of one
 * stakeholder never fall together); a milestone's occasion is the day it is committed to, unmoved.
 *
 * @param forecast  Of this plan.
 */
export function dueList(plan: Plan, forecast: Forecast, { owner, from }: DueOptions = {}): DueList {
  const until = forecast.committed.date;
  const names = new Map([...plan.people, ...plan.stakeholders].map(({ id, name }) => [id, { id, name }]));
  const asked = plan.stakeholders.filter(
    ({ inform }) => inform !== undefined && (owner === undefined || inform.owner === owner),
  );
  const due = asked
    .flatMap((stakeholder) => occasions(plan, forecast, stakeholder, until, names))
    .filter(({ date }) => from === undefined || date >= from)
    .sort((a, b) => compare(a.date, b.date) || compare(a.stakeholder.id, b.stakeholder.id));
  const without = asked.flatMap(({ id, name, inform = {} }) => {
    const missing = (["every", "owner", "how", "what"] as const).filter((key) => inform[key] === undefined);
    return missing.length === 0 ? [] : [{ id, name, missing: [...missing] }];
  });
  return { until, ...(from !== undefined && { from }), due, without };
}

function occasions(
  plan: Plan,
  forecast: Forecast,
  { id, name, inform }: Stakeholder,
  until: IsoDate,
  names: ReadonlyMap<Id, { id: Id; name: string }>,
): Due[] {
  const every = inform?.every;
  if (inform === undefined || every === undefined) return [];
  const owner =
    inform.owner === undefined
      ? undefined
      : (names.get(inform.owner) ?? { id: inform.owner, name: inform.owner });
  const same = {
    stakeholder: { id, name },
    every,
    ...(owner !== undefined && { owner }),
    ...(inform.how !== undefined && { how: inform.how }),
    ...(inform.what !== undefined && { what: inform.what }),
  };
  const first = inform.from ?? plan.start;
  if (every === "milestone") {
    return forecast.tasks
      .filter(
        ({ milestone, needed, finishDates }) => milestone && needed > 0 && finishDates.committed >= first,
      )
      .map((task) => ({
        date: task.finishDates.committed,
        ...same,
        milestone: { id: task.id, name: task.name },
      }));
  }
  const seen = new Set<IsoDate>();
  return rhythm(every, first, until).flatMap((day): Due[] => {
    const date = nextWorkday(plan, day);
    if (seen.has(date)) return [];
    seen.add(date);
    return [{ date, ...(date !== day && { movedFrom: day }), ...same }];
  });
}

/** The day itself where it holds work on the plan's calendar, otherwise the next that does; itself where none does. */
export function nextWorkday(plan: Plan, day: IsoDate): IsoDate {
  const calendar = plan.calendars.get(plan.calendar);
  if (calendar === undefined) return day;
  const first = dayNumber(day);
  for (let n = first; n <= first + 366; n++) {
    const iso = isoDate(n);
    const weekday = WEEKDAYS[weekdayOf(n)];
    const works = weekday !== undefined && calendar.workdays.includes(weekday);
    if (works && !calendar.holidays.some(({ from, to }) => from <= iso && iso <= to)) return iso;
  }
  return day;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

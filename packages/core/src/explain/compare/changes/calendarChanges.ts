import { isoDate } from "../../../calendar/dates.ts";
import type { CalendarDefinition, Weekday } from "../../../plan/types.ts";
import { datesWords, dateWords, listWords } from "../words/numbers.ts";
import type { Change } from "./change.ts";
import { calendarPlace, freeSpans, type Pair, personCalendarPlace } from "./pair.ts";
import { places } from "./places.ts";

/** Calendars whose days changed, another calendar for a whole plan or phase, and another start. */
export function calendarChanges(pair: Pair): Change[] {
  const older = pair.older.plan;
  const newer = pair.newer.plan;
  const list: Change[] = [];
  const add = (place: string, subject: string, text: string) =>
    list.push({ places: [place], kind: "calendar", ids: [], subject, text });

  if (older.start !== newer.start) {
    add(places.start, "Start of the plan", `from ${dateWords(older.start)} to ${dateWords(newer.start)}`);
  }
  // Calendars made like another change with it: the same change of several is told once.
  const sameChange = new Map<string, { names: string[]; texts: string[] }>();
  for (const name of [...newer.calendars.keys()].sort()) {
    const before = older.calendars.get(name);
    const after = newer.calendars.get(name);
    if (before === undefined || after === undefined) continue;
    if (pair.older.calendars.get(name) === pair.newer.calendars.get(name)) continue;
    const texts = daysWords(before, after);
    const known = sameChange.get(texts.join()) ?? { names: [], texts };
    sameChange.set(texts.join(), known);
    known.names.push(name);
  }
  for (const { names, texts } of sameChange.values()) {
    const subject = `${names.length === 1 ? "Calendar" : "Calendars"} ${listWords(names)}`;
    for (const text of texts) {
      list.push({ places: names.map(places.calendar), kind: "calendar", ids: [], subject, text });
    }
  }
  const usual = new Set<string>();
  for (const task of pair.newer.tasks.values()) {
    const before = pair.older.tasks.get(task.id);
    const place = before === undefined ? undefined : calendarPlace(pair, before, task);
    if (place !== undefined) usual.add(place);
    if (task.phase !== undefined && place === places.phaseCalendar(task.phase)) {
      const from = before?.calendar ?? "";
      if (!list.some((change) => change.places[0] === place)) {
        add(place, `Phase ${task.phase}`, `calendar from ${from} to ${task.calendar}`);
      }
    }
  }
  for (const id of pair.newer.people.keys()) {
    const place = personCalendarPlace(pair, id);
    if (place !== undefined) usual.add(place);
  }
  if (usual.has(places.planCalendar) || planCalendarDiffers(pair)) {
    add(places.planCalendar, "The plan's calendar", `from ${older.calendar} to ${newer.calendar}`);
  }
  return list;
}

/** Overheads count on the plan's calendar even where no task does. */
export function planCalendarDiffers({ older, newer }: Pair): boolean {
  if (older.plan.calendar === newer.plan.calendar) return false;
  return older.calendars.get(older.plan.calendar) !== newer.calendars.get(newer.plan.calendar);
}

const names: Record<Weekday, string> = {
  mon: "Mondays",
  tue: "Tuesdays",
  wed: "Wednesdays",
  thu: "Thursdays",
  fri: "Fridays",
  sat: "Saturdays",
  sun: "Sundays",
};

function daysWords(before: CalendarDefinition, after: CalendarDefinition): string[] {
  const texts: string[] = [];
  const week = (a: CalendarDefinition, b: CalendarDefinition) =>
    a.workdays.filter((day) => !b.workdays.includes(day)).map((day) => names[day]);
  const more = week(after, before);
  const fewer = week(before, after);
  if (more.length > 0) texts.push(`works on ${listWords(more)} too`);
  if (fewer.length > 0) texts.push(`no longer works on ${listWords(fewer)}`);
  const came = spansOnlyIn(after, before);
  const went = spansOnlyIn(before, after);
  if (came.length > 0) texts.push(`days off added: ${listWords(came)}`);
  if (went.length > 0) texts.push(`days off dropped: ${listWords(went)}`);
  return texts;
}

/** Days off of `a` that are none of `b`, as dates. */
function spansOnlyIn(a: CalendarDefinition, b: CalendarDefinition): string[] {
  const others = freeSpans(b.holidays);
  return freeSpans(a.holidays).flatMap(([from, to]) => {
    const parts: string[] = [];
    let at = from;
    for (const [first, last] of others) {
      if (last < at || first > to) continue;
      if (first > at) parts.push(datesWords({ from: isoDate(at), to: isoDate(first - 1) }));
      at = Math.max(at, last + 1);
    }
    if (at <= to) parts.push(datesWords({ from: isoDate(at), to: isoDate(to) }));
    return parts;
  });
}

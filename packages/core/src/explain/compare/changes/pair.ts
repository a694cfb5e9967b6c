import { dayNumber } from "../../../calendar/dates.ts";
import type {
  CalendarDefinition,
  Estimate,
  Id,
  Impact,
  Plan,
  RegisterEntry,
  Task,
} from "../../../plan/types.ts";
import { places } from "./places.ts";

/** Two plans in the names of the new one, with what is looked up in them again and again. */
export interface Pair {
  older: Side;
  newer: Side;
  /** The name of an item, the new plan's where both have it. */
  nameOf(id: Id): string;
}

export interface Side {
  plan: Plan;
  tasks: ReadonlyMap<Id, Task>;
  entries: ReadonlyMap<Id, RegisterEntry>;
  people: ReadonlyMap<Id, Plan["people"][number]>;
  overheads: ReadonlyMap<Id, Plan["overheads"][number]>;
  /** Days on which each calendar works, as a text that is the same for the same days. */
  calendars: ReadonlyMap<string, string>;
}

/** @param older  Aligned with `newer`: matched items have the new plan's ids. */
export function pairOf(older: Plan, newer: Plan): Pair {
  const sides = { older: sideOf(older), newer: sideOf(newer) };
  const names = new Map<Id, string>();
  for (const { plan, entries } of [sides.older, sides.newer]) {
    for (const item of [...plan.tasks, ...plan.people, ...plan.overheads, ...entries.values()]) {
      names.set(item.id, item.name);
    }
    for (const entry of entries.values()) for (const { id, action } of entry.responses) names.set(id, action);
  }
  return { ...sides, nameOf: (id) => names.get(id) ?? id };
}

function sideOf(plan: Plan): Side {
  const byId = <T extends { id: Id }>(items: readonly T[]) => new Map(items.map((item) => [item.id, item]));
  return {
    plan,
    tasks: byId(plan.tasks),
    entries: byId<RegisterEntry>([...plan.risks, ...plan.assumptions]),
    people: byId(plan.people),
    overheads: byId(plan.overheads),
    calendars: new Map([...plan.calendars].map(([name, calendar]) => [name, daysOf(calendar)])),
  };
}

function daysOf({ workdays, holidays }: CalendarDefinition): string {
  return JSON.stringify([[...workdays].sort(), freeSpans(holidays)]);
}

/** Days off as ascending spans of day numbers that do not touch. */
export function freeSpans(ranges: readonly { from: string; to: string }[]): [number, number][] {
  const spans = ranges
    .map(({ from, to }): [number, number] => [dayNumber(from), dayNumber(to)])
    .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const merged: [number, number][] = [];
  for (const [from, to] of spans) {
    const last = merged[merged.length - 1];
    if (last !== undefined && from <= last[1] + 1) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged;
}

/** Ids of both, ascending, each once. */
export function idsOf<T>(older: ReadonlyMap<Id, T>, newer: ReadonlyMap<Id, T>): Id[] {
  return [...new Set([...older.keys(), ...newer.keys()])].sort();
}

/** Whether a calendar reference means other days; two names for the same days do not. */
export function otherCalendar(pair: Pair, older: string | undefined, newer: string | undefined): boolean {
  if (older === newer) return false;
  if (older === undefined || newer === undefined) return true;
  const days = pair.newer.calendars.get(newer);
  // A name whose days changed with the plan is no other name for the old days.
  const before = pair.older.calendars.get(newer) ?? days;
  return days !== pair.older.calendars.get(older) || before !== days;
}

/** The place that decides which calendar a task works on; undefined where it works the same days in both. */
export function calendarPlace(pair: Pair, older: Task, newer: Task): string | undefined {
  if (!otherCalendar(pair, older.calendar, newer.calendar)) return undefined;
  const before = phaseCalendar(pair.older, older);
  const after = phaseCalendar(pair.newer, newer);
  if (older.phase !== undefined && older.phase === newer.phase && (before ?? after) !== undefined) {
    const usual = older.calendar === (before ?? pair.older.plan.calendar);
    if (usual && newer.calendar === (after ?? pair.newer.plan.calendar)) {
      return before === after ? places.planCalendar : places.phaseCalendar(older.phase);
    }
  }
  const own = older.calendar === pair.older.plan.calendar && newer.calendar === pair.newer.plan.calendar;
  return own ? places.planCalendar : places.taskCalendar(newer.id);
}

export function phaseCalendar(side: Side, task: Task): string | undefined {
  return side.plan.phases.find(({ name }) => name === task.phase)?.calendar;
}

/** The place that decides a person's calendar. */
export function personCalendarPlace(pair: Pair, id: Id): string | undefined {
  const older = pair.older.people.get(id);
  const newer = pair.newer.people.get(id);
  if (older === undefined || newer === undefined) return undefined;
  if (!otherCalendar(pair, older.calendar, newer.calendar)) return undefined;
  const own = older.calendar === pair.older.plan.calendar && newer.calendar === pair.newer.plan.calendar;
  return own ? places.planCalendar : places.availability(id);
}

/** The place that decides whether, and with what share, a person works on a task that both plans have. */
export function memberPlace(pair: Pair, older: Task, newer: Task, person: Id): string | undefined {
  const before = older.people.find(({ id }) => id === person);
  const after = newer.people.find(({ id }) => id === person);
  if (before?.share === after?.share && before?.along === after?.along) return undefined;
  const was = pair.older.people.get(person);
  const is = pair.newer.people.get(person);
  if (was === undefined || is === undefined) return places.joins(person);
  const usual = before?.share === was.share && after?.share === is.share && before?.along === after?.along;
  return usual && was.share !== is.share ? places.usualShare(person) : places.team(newer.id);
}

/** Impacts as texts that are the same for the same effect, order aside; the tasks of a phase are the phase's. */
export function impactKeys(impacts: readonly Impact[]): string[] {
  return impacts.map((impact) => JSON.stringify([impactTarget(impact), ...impactParts(impact)])).sort();
}

export function impactTarget({ phase, tasks }: Impact): string {
  return phase !== undefined ? `phase=${phase}` : [...tasks].sort().join(",");
}

function impactParts({ delay, factor, wait, cost }: Impact): (Estimate | null)[] {
  return [delay ?? null, factor ?? null, wait ?? null, cost ?? null];
}

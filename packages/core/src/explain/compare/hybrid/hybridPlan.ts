import { present } from "../../../plan/build/must.ts";
import type {
  Assumption,
  CalendarDefinition,
  Id,
  Overhead,
  Person,
  Plan,
  Risk,
} from "../../../plan/types.ts";
import { idsOf, type Pair, personCalendarPlace } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import { hybridCorrelations } from "./hybridCorrelations.ts";
import { hybridRegister } from "./hybridRegister.ts";
import { hybridTasks } from "./hybridTasks.ts";

/** Whether a place has the new plan's value. Places that did not change may answer either way. */
export type Choice = (place: string) => boolean;

/**
 * A plan with some places as in the old plan and the others as in the new one; what moves no number is the new
 * one's. A correct plan for every choice that takes the places of one group (see groups/) the same way.
 *
 * @param pair  Of bare plans.
 */
export function hybridPlan(pair: Pair, isNew: Choice): Plan {
  const older = pair.older.plan;
  const newer = pair.newer.plan;
  const pick = <T>(place: string, was: T, is: T): T => (isNew(place) ? is : was);
  const tasks = hybridTasks(pair, isNew);
  const register = hybridRegister(pair, isNew, tasks);
  const used = new Set(tasks.flatMap((task) => task.people.map(({ id }) => id)));
  const finishOf = pick(places.finishOf, older.commitment.finishOf, newer.commitment.finishOf);
  const { statusDate: _, ...rest } = newer;
  return {
    ...rest,
    ...present({ statusDate: pick(places.statusDate, older.statusDate, newer.statusDate) }),
    start: pick(places.start, older.start, newer.start),
    respectCapacity: pick(places.capacityRule, older.respectCapacity, newer.respectCapacity),
    commitment: present({ confidence: newer.commitment.confidence, finishOf, funds: [] }),
    calendar: pick(places.planCalendar, older.calendar, newer.calendar),
    calendars: hybridCalendars(pair, isNew),
    phases: phasesOf(pair),
    people: hybridPeople(pair, isNew).filter(({ id }) => used.has(id)),
    tasks,
    risks: register.filter((entry): entry is Risk => entry.kind === "risk"),
    assumptions: register.filter((entry): entry is Assumption => entry.kind === "assumption"),
    overheads: hybridOverheads(pair, isNew),
    correlations: hybridCorrelations(pair, isNew, tasks),
  };
}

/** Every calendar of either plan: one that nobody names moves nothing. */
function hybridCalendars({ older, newer }: Pair, isNew: Choice): Map<string, CalendarDefinition> {
  const all = new Map([...older.plan.calendars, ...newer.plan.calendars]);
  for (const [name, calendar] of older.plan.calendars) {
    if (newer.plan.calendars.has(name) && !isNew(places.calendar(name))) all.set(name, calendar);
  }
  return all;
}

function phasesOf({ older, newer }: Pair): Plan["phases"] {
  const known = new Set(newer.plan.phases.map(({ name }) => name));
  const named = [...newer.plan.phases, ...older.plan.phases.filter(({ name }) => !known.has(name))];
  if (named.length === 0) return named;
  const all = new Map(named.map((phase) => [phase.name, phase]));
  for (const { phase } of [...older.plan.tasks, ...newer.plan.tasks]) {
    if (phase === undefined || all.has(phase)) continue;
    all.set(phase, { name: phase, responsible: [], accountable: [], consulted: [], informed: [] });
  }
  return [...all.values()];
}

function hybridPeople(pair: Pair, isNew: Choice): Person[] {
  const { older, newer } = pair;
  return idsOf(older.people, newer.people).flatMap((id: Id): Person[] => {
    const was = older.people.get(id);
    const is = newer.people.get(id);
    if (was === undefined || is === undefined) return [was ?? is].filter((person) => person !== undefined);
    const time = isNew(places.availability(id)) ? is : was;
    const calendarAt = personCalendarPlace(pair, id);
    return [
      {
        ...is,
        rate: isNew(places.rate(id)) ? is.rate : was.rate,
        share: isNew(places.usualShare(id)) ? is.share : was.share,
        capacity: time.capacity,
        away: time.away,
        calendar: calendarAt === undefined || isNew(calendarAt) ? is.calendar : was.calendar,
      },
    ];
  });
}

function hybridOverheads({ older, newer }: Pair, isNew: Choice): Overhead[] {
  return idsOf(older.overheads, newer.overheads).flatMap((id): Overhead[] => {
    const was = older.overheads.get(id);
    const is = newer.overheads.get(id);
    if (was === undefined || is === undefined) {
      const only = isNew(places.overhead(id)) ? is : was;
      return only === undefined ? [] : [only];
    }
    const { perDay, from, to } = isNew(places.overheadTerms(id)) ? is : was;
    const { from: _, to: __, ...rest } = is;
    return [{ ...rest, ...present({ perDay, from, to }) }];
  });
}

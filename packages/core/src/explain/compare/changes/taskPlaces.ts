import type { Task } from "../../../plan/types.ts";
import { calendarPlace, memberPlace, type Pair } from "./pair.ts";
import { places } from "./places.ts";

/** Every place of a task that both plans have. */
export function taskPlaces(pair: Pair, before: Task, after: Task): (string | undefined)[] {
  const { id } = after;
  return [
    places.work(id),
    places.taskMoney(id),
    places.logic(id),
    places.taskCalendar(id),
    places.team(id),
    places.need(id),
    places.progress(id),
    places.taskPhase(id),
    calendarPlace(pair, before, after),
    ...memberPlaces(pair, before, after),
  ];
}

/** The places that decide who works on it. */
export function memberPlaces(pair: Pair, before: Task, after: Task): (string | undefined)[] {
  const people = [...new Set([...before.people, ...after.people].map(({ id }) => id))];
  return people.map((person) => memberPlace(pair, before, after, person));
}

import { present } from "../../../plan/build/must.ts";
import type { Task, TaskPerson } from "../../../plan/types.ts";
import { calendarPlace, idsOf, memberPlace, otherCalendar, type Pair } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import { taskPlaces } from "../changes/taskPlaces.ts";
import type { Choice } from "./hybridPlan.ts";

/** The tasks of a hybrid, in id order. */
export function hybridTasks(pair: Pair, isNew: Choice): Task[] {
  const { older, newer } = pair;
  return idsOf(older.tasks, newer.tasks).flatMap((id): Task[] => {
    const was = older.tasks.get(id);
    const is = newer.tasks.get(id);
    if (was === undefined || is === undefined) {
      const only = isNew(places.task(id)) ? is : was;
      return only === undefined ? [] : [only];
    }
    return [mixed(pair, isNew, was, is)];
  });
}

function mixed(pair: Pair, isNew: Choice, was: Task, is: Task): Task {
  const { id } = is;
  // Of many hybrids most tasks are the new plan's: those need no memory of their own.
  if (taskPlaces(pair, was, is).every((place) => place === undefined || isNew(place))) return is;
  const from = (place: string) => (isNew(place) ? is : was);
  const work = from(places.work(id));
  const money = from(places.taskMoney(id));
  const logic = from(places.logic(id));
  const need = from(places.need(id));
  const progress = from(places.progress(id));
  const { phase } = from(places.taskPhase(id));
  const calendarAt = calendarPlace(pair, was, is);
  const { calendar } = calendarAt === undefined ? is : from(calendarAt);
  const { unbroken } = otherCalendar(pair, was.unbroken, is.unbroken) ? from(places.taskCalendar(id)) : is;
  return present({
    id,
    name: is.name,
    was: is.was,
    phase,
    duration: work.duration,
    effort: work.effort,
    milestone: work.milestone,
    after: logic.after,
    notBefore: logic.notBefore,
    holdToPlan: logic.holdToPlan,
    priority: logic.priority,
    calendar,
    unbroken,
    people: team(pair, isNew, was, is),
    cost: money.cost,
    costPerDay: money.costPerDay,
    due: is.due,
    chance: need.chance,
    onlyIf: need.onlyIf,
    started: progress.started,
    finished: progress.finished,
    remaining: progress.remaining,
    spent: progress.spent,
    responsible: [],
    accountable: [],
    consulted: [],
    informed: [],
    estimatedBy: [],
  });
}

function team(pair: Pair, isNew: Choice, was: Task, is: Task): TaskPerson[] {
  const ids = [...new Set([...was.people, ...is.people].map(({ id }) => id))].sort();
  return ids.flatMap((person): TaskPerson[] => {
    const place = memberPlace(pair, was, is, person);
    const side = place === undefined || isNew(place) ? is : was;
    return side.people.filter(({ id }) => id === person);
  });
}

import { tolerance } from "../../../calendar/tolerance.ts";
import { memberPlace, type Pair } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import type { Together } from "./together.ts";

/** No share above the capacity there is, wherever capacity is respected. */
export function joinPeople(pair: Pair, { join }: Together): void {
  const { older, newer } = pair;
  if (!older.plan.respectCapacity && !newer.plan.respectCapacity) return;
  const capacities = (person: string) =>
    [older, newer].map(({ people }) => people.get(person)?.capacity).filter((value) => value !== undefined);
  for (const { tasks } of [older, newer]) {
    for (const task of tasks.values()) {
      const before = older.tasks.get(task.id);
      const after = newer.tasks.get(task.id);
      for (const { id: person, share } of task.people) {
        if (capacities(person).every((capacity) => share <= capacity + tolerance)) continue;
        const member =
          before === undefined || after === undefined
            ? places.task(task.id)
            : memberPlace(pair, before, after, person);
        join([member, places.availability(person), places.capacityRule]);
      }
    }
  }
}

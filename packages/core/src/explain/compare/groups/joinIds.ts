import type { Id } from "../../../plan/types.ts";
import type { Pair } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import type { Together } from "./together.ts";

/** An id that means one kind of thing in one plan and another in the other is never both at once. */
export function joinIds({ older, newer }: Pair, { join }: Together): void {
  const users = new Map<Id, Set<string>>();
  const use = (id: Id, place: string) => {
    const known = users.get(id);
    if (known === undefined) users.set(id, new Set([place]));
    else known.add(place);
  };
  for (const { tasks, entries, overheads, people } of [older, newer]) {
    for (const id of tasks.keys()) use(id, places.task(id));
    for (const id of overheads.keys()) use(id, places.overhead(id));
    for (const id of people.keys()) use(id, places.joins(id));
    for (const entry of entries.values()) {
      use(entry.id, places.entry(entry.id));
      for (const { id } of entry.responses) use(id, places.response(entry.id, id));
    }
  }
  for (const all of users.values()) if (all.size > 1) join(all);
}

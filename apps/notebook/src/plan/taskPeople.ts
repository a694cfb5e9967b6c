import { statedAt } from "./stated.ts";

/** People of a task as they are stated: ids, or more than ids. In the format one may stand without a list. */
export function taskPeople(document: unknown, path: string): readonly unknown[] {
  const stated = statedAt(document, path);
  return stated === undefined || stated === null ? [] : Array.isArray(stated) ? stated : [stated];
}

/** The same without somebody; undefined: nobody is left. */
export function withoutPerson(stated: readonly unknown[], id: string): unknown {
  return listOf(stated.filter((one) => idOf(one) !== id));
}

/** The same with some more, who are named once whatever is asked. */
export function withPeople(stated: readonly unknown[], ids: readonly string[]): unknown {
  const there = stated.map(idOf);
  return listOf([...stated, ...new Set(ids.filter((id) => !there.includes(id)))]);
}

function listOf(people: readonly unknown[]): unknown {
  return people.length === 0 ? undefined : people;
}

function idOf(person: unknown): unknown {
  if (typeof person !== "object" || person === null) return person;
  return Object.entries(person).find(([key]) => key === "id")?.[1];
}

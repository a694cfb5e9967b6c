import type { Id, Plan } from "../plan/types.ts";
import type { Someone } from "./types.ts";

/** Looks up people and stakeholders by id; a person who is both is told by the stakeholder's part in it. */
export function someoneOf(plan: Plan): (id: Id | undefined) => Someone | undefined {
  const known = new Map<Id, Someone>();
  for (const { id, name, role } of [...plan.people, ...plan.stakeholders]) {
    known.set(id, role === undefined ? { id, name } : { id, name, role });
  }
  return (id) => (id === undefined ? undefined : (known.get(id) ?? { id, name: id }));
}

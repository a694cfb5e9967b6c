import { plainName } from "@leeway/charts";
import type { Plan } from "@leeway/core";

/** The name of a person or stakeholder, to be printed. */
export function nameOf(plan: Plan, id: string): string {
  const one = plan.stakeholders.find((each) => each.id === id) ?? plan.people.find((each) => each.id === id);
  return plainName(one?.name ?? id);
}

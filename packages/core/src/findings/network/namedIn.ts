import type { Plan } from "../../plan/types.ts";

/** Every text that stands in the plan outside the list of people: what a person is named by is among them. */
export function textsOutsidePeople(plan: Plan): Set<string> {
  const found = new Set<string>();
  const { people: _, calendars: _c, ...rest } = plan;
  const waiting: unknown[] = [rest];
  while (waiting.length > 0) {
    const value = waiting.pop();
    if (typeof value === "string") found.add(value);
    else if (typeof value === "object" && value !== null) waiting.push(...Object.values(value));
  }
  return found;
}

import type { Plan } from "@leeway/core";

/** Whether two plans have a task in common: else one is not a version of the other. */
export function sharesWork(one: Plan, other: Plan): boolean {
  const ids = new Set(one.tasks.map(({ id }) => id));
  return other.tasks.some(({ id }) => ids.has(id));
}

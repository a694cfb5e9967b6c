import type { Estimate, Task } from "@leeway/core";

/** The unit of a task's estimate, in words. */
export function taskUnit(task: Task): string {
  const estimate = task.effort ?? task.duration;
  const weeks = estimate?.unit === "weeks";
  if (task.effort !== undefined) return weeks ? "person-weeks" : "person-days";
  return weeks ? "working weeks" : "working days";
}

/** The unit of a delay. */
export function delayUnit(estimate: Estimate): string {
  return estimate.unit === "weeks" ? "working weeks" : "working days";
}

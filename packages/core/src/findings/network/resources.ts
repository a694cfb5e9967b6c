import type { Task } from "../../plan/types.ts";

/**
 * Whether work of a day or more takes nobody's time and no money: neither people, nor one who is responsible, nor a
 * cost, nor a `note` that says whose it is.
 *
 * @param duration  As written, working days.
 */
export function takesNothing(task: Task, duration: number): boolean {
  return (
    duration >= 1 &&
    task.people.length === 0 &&
    task.responsible.length === 0 &&
    task.cost === undefined &&
    task.costPerDay === undefined &&
    task.note === undefined
  );
}

import type { TaskPerson } from "../../plan/types.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";

/** A task that names a person: its index in the model, and the share it asks for. */
export interface Assignment extends Pick<TaskPerson, "share" | "along"> {
  at: number;
  task: ModelTask;
}

/**
 * By person, in the model's order: the tasks that ask for a share, in id order, whether or not capacity is respected.
 * Milestones need nobody.
 */
export function assignmentsOf(model: Model): Assignment[][] {
  const byId = new Map(model.plan.tasks.map((task) => [task.id, task]));
  return model.people.map((person) =>
    model.tasks.flatMap((task, at) => {
      const source = byId.get(task.id);
      const named = source?.people.find(({ id }) => id === person.id);
      if (named === undefined || named.share <= 0 || source?.milestone !== false) return [];
      return [{ at, task, share: named.share, along: named.along }];
    }),
  );
}

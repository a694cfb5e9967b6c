import type { Amount, Model, ModelTask } from "../../simulate/model.ts";
import { constant } from "../../simulate/model.ts";

/**
 * What money is for. `spent`: what tasks in progress or done have cost by their own account (`spent`); `task-cost`: task
 * costs, once; `task-per-day`: task costs per working day; `people`: rate times share times days, the days that risks
 * add included; `risks`: costs of risks and assumptions that hit; `responses`; `overheads`.
 */
export type ComponentKind =
  | "spent"
  | "task-cost"
  | "task-per-day"
  | "people"
  | "risks"
  | "responses"
  | "overheads";

export const componentKinds: readonly ComponentKind[] = [
  "spent",
  "task-cost",
  "task-per-day",
  "people",
  "risks",
  "responses",
  "overheads",
];

const nothing: Amount = constant(0);

/** The model with no money in it but that of one kind. Draws and moments are the model's. */
export function modelOfKind(model: Model, kind: ComponentKind): Model {
  return {
    ...model,
    tasks: model.tasks.map((task) => taskOfKind(task, kind)),
    register:
      kind === "risks"
        ? model.register
        : model.register.map((entry) => ({
            ...entry,
            impacts: entry.impacts.map((impact) => ({ ...impact, cost: undefined })),
          })),
    responses: kind === "responses" ? model.responses : [],
    overheads: kind === "overheads" ? model.overheads : [],
  };
}

function taskOfKind(task: ModelTask, kind: ComponentKind): ModelTask {
  const { progress } = task;
  return {
    ...task,
    cost: kind === "task-cost" ? task.cost : nothing,
    costPerDay: kind === "task-per-day" ? task.costPerDay : nothing,
    peoplePerDay: kind === "people" ? task.peoplePerDay : 0,
    // What was spent stands in place of the ordinary sum of what is done: it stays said, as nothing, in other kinds.
    progress: progress?.spent === undefined || kind === "spent" ? progress : { ...progress, spent: 0 },
  };
}

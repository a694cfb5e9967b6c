import type { Model, ModelTask } from "../model.ts";

/**
 * Whether a block of the model can be computed by a program: work that is needed in every iteration and never without a
 * duration, links from finish to start without a lag between tasks on one calendar, people without limit. Everything
 * else is computed step by step in TypeScript, with the same bits where both can do it.
 */
export function followsProgram(model: Model): boolean {
  let follows = known.get(model);
  if (follows === undefined) {
    follows =
      !model.limitedPeople &&
      model.finishOf < 0 &&
      model.correlated === undefined &&
      model.tasks.every((task) => isPlain(model, task));
    known.set(model, follows);
  }
  return follows;
}

const known = new WeakMap<Model, boolean>();

function isPlain(model: Model, task: ModelTask): boolean {
  if (task.kind !== "task" || task.mayBePoint || task.progress !== undefined) return false;
  if (task.chance < 1 || task.unbroken !== undefined) return false;
  const plainLinks = task.links.every(
    ({ direct, kind, from }) =>
      direct && kind === "finish-to-start" && model.tasks[from]?.calendar === task.calendar,
  );
  return plainLinks && plainImpacts(model, task);
}

/** No waits; one factor at most, on a duration that is drawn. */
function plainImpacts(model: Model, task: ModelTask): boolean {
  const impacts = task.impacts.map((at) => model.register[at.entry]?.impacts[at.impact]);
  const factors = impacts.filter((impact) => impact?.factor !== undefined).length;
  if (factors > 1 || (factors === 1 && task.duration.slot < 0)) return false;
  return impacts.every((impact) => impact?.wait === undefined);
}

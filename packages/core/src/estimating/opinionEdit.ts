import type { EstimateDefaults } from "../plan/build/estimate.ts";
import { BOUNDS } from "../plan/definition/estimate.ts";
import { addToPlan, type PlanEdit } from "../plan/edit/editPlan.ts";
import { isObject } from "../plan/edit/model.ts";
import { SHAPES } from "../plan/shapes.ts";
import { readSource } from "../plan/source/readSource.ts";
import { toJson } from "../plan/source/toJson.ts";
import type { Id, Opinion, Task } from "../plan/types.ts";

/** The plan's own `estimates`, as its text says: what an estimate that does not say takes. */
export function estimateDefaults(text: string): EstimateDefaults {
  const { root } = readSource(text);
  const document = root === undefined ? undefined : toJson(root);
  const said = isObject(document) ? document.estimates : undefined;
  if (!isObject(said)) return {};
  return {
    shape: SHAPES.find((shape) => shape === said.shape),
    bounds: BOUNDS.find((bounds) => bounds === said.bounds),
  };
}

/** An opinion as a document says it, without what the plan's `estimates` or the task fill in. */
export function writeOpinion(opinion: Opinion, task: Task, defaults: EstimateDefaults): object {
  const { by, date, of, estimate, basis, order, dissent, enteredBy, note } = opinion;
  const usual = task.effort === undefined ? "duration" : "effort";
  return {
    by,
    ...(date !== undefined && { date }),
    ...(of !== usual && { of }),
    ...figures(opinion.estimate, defaults),
    ...(estimate.unit === "weeks" && { unit: "weeks" }),
    ...(basis !== undefined && { basis }),
    ...(order !== undefined && { order }),
    ...(dissent !== undefined && { dissent }),
    ...(enteredBy !== undefined && { enteredBy: enteredBy.length === 1 ? enteredBy[0] : enteredBy }),
    ...(note !== undefined && { note }),
  };
}

function figures(estimate: Opinion["estimate"], defaults: EstimateDefaults): object {
  if (estimate.kind === "outcomes") return {}; // an opinion is read as a range, so it never holds any
  if (estimate.kind === "fixed") return { low: estimate.value, likely: estimate.value, high: estimate.value };
  const { low, likely, high, shape, bounds } = estimate;
  return {
    low,
    ...(likely !== undefined && { likely }),
    high,
    ...(shape !== (defaults.shape ?? "pert") && { shape }),
    ...(bounds !== (defaults.bounds ?? "extremes") && { bounds }),
  };
}

/** The text of a plan with an opinion added to a task; every other character stays. */
export function addOpinion(text: string, task: Task, opinion: Opinion): PlanEdit {
  const path: [string, Id, string] = ["tasks", task.id, "opinions"];
  return addToPlan(text, path, writeOpinion(opinion, task, estimateDefaults(text)));
}

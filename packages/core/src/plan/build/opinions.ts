import type { TaskDraft } from "../definition/draft.ts";
import type { Opinion } from "../types.ts";
import { type EstimateDefaults, toEstimate } from "./estimate.ts";
import { must, present } from "./must.ts";

/** What people said about a task, in the order of the document; absent where nobody did. */
export function buildOpinions(task: TaskDraft, defaults: EstimateDefaults): Opinion[] | undefined {
  return task.opinions?.map((draft): Opinion => {
    const { low, likely, high, shape, bounds, unit } = draft;
    return present({
      by: must(draft.by),
      date: draft.date,
      of: draft.of ?? (task.effort === undefined ? ("duration" as const) : ("effort" as const)),
      estimate: toEstimate({ low, likely, high, shape, bounds, unit }, defaults),
      basis: draft.basis,
      order: draft.order,
      dissent: draft.dissent,
      enteredBy: draft.enteredBy,
      note: draft.note,
      was: draft.was,
    });
  });
}

import type { PlanEdit } from "../plan/edit/editPlan.ts";
import { type PlanChange, setManyInPlan } from "../plan/edit/setManyInPlan.ts";
import { readPlan } from "../plan/readPlan.ts";
import type { Id } from "../plan/types.ts";

/**
 * Writes into the text of a plan who entered these tasks, or their estimates: told apart from who estimated them. Those
 * who entered something before stay; ids that name no task are let pass. No number and no hash changes.
 */
export function enteredIn(text: string, tasks: readonly Id[], who: Id): PlanEdit {
  const { plan } = readPlan(text);
  const changes = (plan?.tasks ?? []).flatMap(({ id, enteredBy = [] }): PlanChange[] => {
    if (!tasks.includes(id) || enteredBy.includes(who)) return [];
    return [{ path: ["tasks", id, "enteredBy"], value: enteredBy.length === 0 ? who : [...enteredBy, who] }];
  });
  return setManyInPlan(text, changes);
}

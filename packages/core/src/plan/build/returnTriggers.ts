import type { PlanDraft } from "../definition/draft.ts";
import type { ReturnTrigger } from "../types.ts";
import { must, present } from "./must.ts";

/** When the plan comes back to its approvers. */
export function buildReturnTriggers(draft: PlanDraft["returnTriggers"]): ReturnTrigger[] {
  return (draft ?? []).map((trigger): ReturnTrigger => {
    const { chanceOfDateBelow, chanceOfBudgetBelow, contingencyCoverBelow } = trigger;
    const { signpost, finishLaterThan, costAbove } = trigger;
    return present({
      id: must(trigger.id),
      name: trigger.name,
      chanceOfDateBelow,
      chanceOfBudgetBelow,
      contingencyCoverBelow,
      signpost,
      finishLaterThan,
      costAbove,
      note: trigger.note,
      was: trigger.was,
    });
  });
}

import type { PlanDraft } from "../definition/draft.ts";
import type { DecisionAsked } from "../types.ts";
import { must, present } from "./must.ts";

/** What is asked of the approvers; absent where the plan does not say. */
export function buildDecision(draft: PlanDraft["decision"]): DecisionAsked | undefined {
  return (
    draft &&
    present({
      ask: draft.ask,
      by: draft.by,
      recommend: draft.recommend,
      doNothing: draft.doNothing,
      alternatives: (draft.alternatives ?? []).map((one) =>
        present({ name: must(one.name), text: one.text, note: one.note, was: one.was }),
      ),
      note: draft.note,
      was: draft.was,
    })
  );
}

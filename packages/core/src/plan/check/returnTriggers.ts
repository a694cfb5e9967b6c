import type { PlanDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";
import { TRIGGER_CONDITIONS } from "../definition/returnTrigger.ts";

/** Every return trigger has exactly one condition; a signpost was seen by the status date. */
export function checkReturnTriggers(plan: PlanDraft, reading: Reading): void {
  for (const trigger of plan.returnTriggers ?? []) {
    const place = reading.placeOf(trigger);
    const { node } = place;
    const keys = node.kind === "map" ? [...node.entries.keys()] : [];
    const given = keys.flatMap((key) => TRIGGER_CONDITIONS.find((condition) => condition === key) ?? []);
    if (given.length !== 1) {
      const rule =
        given.length === 0 ? "A return trigger has a condition." : "A return trigger has one condition only.";
      const remedy =
        given.length === 0
          ? `Add one of: ${TRIGGER_CONDITIONS.join(", ")}.`
          : `Make ${given.length} triggers of it.`;
      const at = given[1] === undefined ? place : reading.placeOf(trigger, given[1]);
      reading.report(at, "trigger-condition", rule, remedy, { received: given.join(", ") });
    }
  }
  for (const assumption of plan.assumptions ?? []) {
    const { tripped } = assumption;
    if (tripped === undefined) continue;
    const place = reading.placeOf(assumption, "tripped");
    if (plan.statusDate === undefined) {
      const remedy = "Add `statusDate`, the day up to which it is recorded.";
      reading.report(place, "no-status-date", "`tripped` needs the plan's `statusDate`.", remedy);
    } else if (tripped > plan.statusDate) {
      const rule = `It lies after \`statusDate\`, ${plan.statusDate}; a sign that was seen has already come.`;
      reading.report(place, "progress-date", rule, "Correct the day, or move `statusDate`.");
    }
  }
}

import { setInPlan } from "../plan/edit/editPlan.ts";
import type { Id, IsoDate, Plan } from "../plan/types.ts";
import { personOf } from "./approvalsState.ts";
import { atApproval } from "./atApproval.ts";
import type { Signed } from "./signPlan.ts";
import type { Refusal } from "./types.ts";

/**
 * Writes into a plan's text that the conditions of an approval were met: said by the approver, or by their delegate.
 * The approval is otherwise as it was, and bound to the same version.
 */
export function meetConditions(
  text: string,
  plan: Plan,
  { who, by = who, date }: { who: Id; by?: Id; date: IsoDate },
): Signed {
  const at = plan.approvals.findLastIndex((approval) => approval.who === who);
  const approval = plan.approvals[at];
  const { name, delegate } = personOf(plan, who);
  const refuse = (code: Refusal["code"], received: string, rule: string, remedy: string): Signed => ({
    refusals: [{ code, received, rule, remedy }],
    problems: [],
  });
  if (approval?.decision !== "approve-subject-to" || approval.conditionsMet !== undefined) {
    const met = approval?.conditionsMet;
    const rule =
      met === undefined
        ? `${name} has set no condition.`
        : `They were met on ${met}, as the plan says already.`;
    return refuse("no-condition-open", who, rule, "There is nothing to do.");
  }
  if (by !== who && by !== delegate) {
    const rule = `${personOf(plan, by).name} does not sign in place of ${name}.`;
    return refuse("not-an-approver", by, rule, "The approver says it, or the delegate the plan names.");
  }
  if (approval.date !== undefined && date < approval.date) {
    const rule = `The conditions were set on ${approval.date}, which is later than ${date}.`;
    return refuse("date-before", date, rule, "Name a later day.");
  }
  const result = atApproval(text, plan, at, (path) => setInPlan(text, [...path, "conditionsMet"], date));
  return result.problems.length > 0
    ? { refusals: [], problems: result.problems }
    : { text: result.text, refusals: [], problems: [] };
}

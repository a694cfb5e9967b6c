import { withoutProgress } from "../budget/left/withoutProgress.ts";
import type { Plan } from "../plan/types.ts";
import { approvalsState } from "./approvalsState.ts";

/**
 * What was signed, where an approval covers the plan as it stands: this plan, progress aside. The plan itself where it
 * has no progress; undefined where nobody's approval covers it.
 */
export function signedHere(plan: Plan): Plan | undefined {
  if (!approvalsState(plan).approvers.some(({ state }) => state === "covers")) return undefined;
  return plan.sha256 === plan.approvalSha256 ? plan : withoutProgress(plan);
}

import { addToPlan, removeFromPlan, setInPlan } from "../plan/edit/editPlan.ts";
import type { Problem } from "../plan/problem.ts";
import type { Plan } from "../plan/types.ts";
import { atApproval } from "./atApproval.ts";
import { type Signature, signatureEntry } from "./signatureEntry.ts";
import { signatureRefusals } from "./signatureRefusals.ts";
import type { Refusal } from "./types.ts";

export type { Signature } from "./signatureEntry.ts";

/** A plan's text with a decision in it, or why it was refused. */
export interface Signed {
  /** The plan's text with the signature in it; absent where it was refused. */
  text?: string;
  refusals: Refusal[];
  /** The text could not be edited at that place. */
  problems: Problem[];
}

/**
 * Writes a decision into the text of a plan, bound to the plan's hash; comments and order stay. Signing again
 * replaces the signer's own entry. To send a plan back needs no limit, and neither open objections nor findings stand in
 * its way.
 */
export function signPlan(text: string, plan: Plan, signature: Signature): Signed {
  const refusals = signatureRefusals(plan, signature);
  if (refusals.length > 0) return { refusals, problems: [] };
  const { who, by, accepts } = signature;
  const at = plan.approvals.findLastIndex((approval) => approval.who === who);
  const entry = signatureEntry(plan, signature);
  let edited = text;
  for (const id of accepts) {
    for (const [key, value] of [
      ["state", "accepted"],
      ["acceptedBy", by ?? who],
    ] as const) {
      const result = setInPlan(edited, ["objections", id, key], value);
      if (result.problems.length > 0) return { refusals: [], problems: result.problems };
      edited = result.text;
    }
  }
  const result = at < 0 ? addToPlan(edited, ["approvals"], entry) : replaced(edited, plan, at, entry);
  return result.problems.length > 0
    ? { refusals: [], problems: result.problems }
    : { text: result.text, refusals: [], problems: [] };
}

/**
 * Key by key, so that what stands around them stays; what an earlier decision said and this one does not goes. A single
 * entry need not be a list.
 */
function replaced(
  text: string,
  plan: Plan,
  at: number,
  entry: Record<string, string | undefined>,
): { text: string; problems: Problem[] } {
  return atApproval(text, plan, at, (path) => {
    let last: { text: string; problems: Problem[] } = { text, problems: [] };
    for (const [key, value] of Object.entries(entry)) {
      last =
        value === undefined
          ? removeFromPlan(last.text, [...path, key])
          : setInPlan(last.text, [...path, key], value);
      if (last.problems.length > 0) return last;
    }
    return last;
  });
}

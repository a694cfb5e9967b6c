import {
  type ApproverState,
  type Finding,
  type Plan,
  type Refusal,
  type Signature,
  signatureEntry,
  signatureRefusals,
} from "@leeway/core";
import type { Edit } from "./edit.ts";
import { readDate } from "./readDate.ts";
import { place } from "./removeTask.ts";

/** What is filled in about a decision, as it was typed or chosen. */
export interface DecisionCells {
  who: string;
  decision: string;
  date: string;
  conditions: string;
  conditionsBy: string;
  /** Who signs in their place; empty: they themselves. */
  by: string;
  /** Ids of open objections that they accept as they stand. */
  accepts: readonly string[];
}

/** The decision for the document, bound to the plan as it is now; or all that keeps it from being recorded. */
export function recordDecision(
  plan: Plan,
  stated: unknown,
  cells: DecisionCells,
  asked: { sum: number | undefined; errors: readonly Finding[]; today: string },
): { edits: Edit[]; decision: Signature["decision"] } | { refusals: Pick<Refusal, "rule" | "remedy">[] } {
  const { who, accepts } = cells;
  const decision = decisions.find((one) => one === cells.decision);
  const date = readDate(cells.date);
  const until = cells.conditionsBy.trim() === "" ? undefined : readDate(cells.conditionsBy);
  const refusals: Pick<Refusal, "rule" | "remedy">[] = [];
  if (decision === undefined)
    refusals.push({ rule: "Nothing is decided yet.", remedy: "Choose what they decide." });
  if ("words" in date) refusals.push({ rule: "The day of the decision.", remedy: date.words });
  if (until !== undefined && "words" in until)
    refusals.push({ rule: "The day by which the conditions are met.", remedy: until.words });
  const conditions = cells.conditions.trim();
  const signature: Signature = {
    who,
    decision: decision ?? "approve",
    date: "words" in date ? asked.today : date.value,
    accepts,
    errors: asked.errors,
    ...(asked.sum === undefined ? {} : { sum: asked.sum }),
    ...(conditions === "" ? {} : { conditions }),
    ...(until === undefined || "words" in until || "words" in date ? {} : { conditionsBy: until.value }),
    ...(cells.by === "" || cells.by === who ? {} : { by: cells.by }),
  };
  // All that is in the way is told at once; of what nobody chose nothing is.
  if (decision !== undefined) refusals.push(...signatureRefusals(plan, signature));
  if (decision === undefined || refusals.length > 0) return { refusals };
  return { decision, edits: [...acceptances(plan, stated, signature), ...entered(plan, stated, signature)] };
}

/** The day on which the conditions of somebody's approval were met. */
export function conditionsMet(plan: Plan, stated: unknown, who: string, date: string): Edit[] {
  const at = plan.approvals.findLastIndex((approval) => approval.who === who);
  return at < 0 ? [] : [{ path: `${place(stated, "approvals", at)}.conditionsMet`, value: date }];
}

/** Conditions that are said, and not yet met. */
export function isOpen({ decision, conditionsMet: met }: ApproverState): boolean {
  return decision === "approve-subject-to" && met === undefined;
}

const decisions = ["approve", "approve-subject-to", "rework"] as const;

function acceptances(plan: Plan, stated: unknown, { who, by = who, accepts }: Signature): Edit[] {
  return accepts.flatMap((id) => {
    const at = plan.objections.findIndex((one) => one.id === id);
    const path = place(stated, "objections", at);
    return [
      { path: `${path}.state`, value: "accepted" },
      { path: `${path}.acceptedBy`, value: by },
    ];
  });
}

/** In place of what they decided before. */
function entered(plan: Plan, stated: unknown, signature: Signature): Edit[] {
  const entry = signatureEntry(plan, signature);
  const at = plan.approvals.findLastIndex((approval) => approval.who === signature.who);
  if (at < 0) return [{ path: "approvals", value: entry, add: "last" }];
  const path = place(stated, "approvals", at);
  return Object.entries(entry).map(([key, value]) => ({ path: `${path}.${key}`, value }));
}

import { addToPlan } from "../plan/edit/editPlan.ts";
import type { Id, IsoDate, Plan } from "../plan/types.ts";
import { personOf } from "./approvalsState.ts";
import type { Logged } from "./objections.ts";
import type { Refusal } from "./types.ts";

/**
 * Adds an entry to the change log of a plan's text: what, why, by whom, who agreed. Entries are only ever added. Who
 * agreed is one who approves this plan, or stands in for one; where the plan names no approver, anybody in it.
 */
export function logChange(
  text: string,
  plan: Plan,
  said: { date: IsoDate; who: Id; what: string; why: string; approvedBy?: Id },
): Logged {
  const known = [...plan.stakeholders, ...plan.people].map(({ id }) => id);
  const refusals: Refusal[] = [];
  for (const id of [said.who, ...(said.approvedBy === undefined ? [] : [said.approvedBy])]) {
    if (known.includes(id)) continue;
    const remedy =
      known.length === 0 ? "Add them to `stakeholders`." : `Name one of: ${[...known].sort().join(", ")}.`;
    refusals.push({
      code: "unknown-person",
      received: id,
      rule: "There is nobody of that id in the plan.",
      remedy,
    });
  }
  refusals.push(...approverRefusals(plan, known, said.approvedBy));
  for (const [key, rule] of [
    ["what", "What changed must be said."],
    ["why", "A change needs a reason."],
  ] as const) {
    if (said[key].trim() === "")
      refusals.push({ code: "empty-text", received: "", rule, remedy: "Say it in a sentence." });
  }
  if (refusals.length > 0) return { refusals, problems: [] };
  const { date, who, what, why, approvedBy } = said;
  const entry = {
    date,
    who,
    what: what.trim(),
    why: why.trim(),
    ...(approvedBy === undefined ? {} : { approvedBy }),
  };
  const result = addToPlan(text, ["changes"], entry);
  return result.problems.length > 0
    ? { refusals: [], problems: result.problems }
    : { text: result.text, refusals: [], problems: [] };
}

/** A change needs an approver: GAO-16-89G, best practice 10 (digest read). */
function approverRefusals(plan: Plan, known: readonly Id[], approvedBy: Id | undefined): Refusal[] {
  const asked = new Set(plan.approvals.map(({ who }) => who));
  for (const { id, approvesUpTo } of plan.stakeholders) if (approvesUpTo !== undefined) asked.add(id);
  const able = new Set([...asked, ...plan.stakeholders.flatMap(deputyOf(asked))]);
  const names = [...(able.size === 0 ? known : able)].sort().join(", ");
  const remedy = names === "" ? "Add them to `stakeholders`." : `Name one of: ${names}.`;
  if (approvedBy === undefined) {
    const rule = "A change needs somebody who agreed to it.";
    return [{ code: "no-approver", received: "", rule, remedy }];
  }
  if (!known.includes(approvedBy) || able.size === 0 || able.has(approvedBy)) return [];
  const rule = `${personOf(plan, approvedBy).name} approves nothing in this plan, so cannot agree to a change of it.`;
  return [{ code: "not-an-approver", received: approvedBy, rule, remedy }];
}

function deputyOf(asked: ReadonlySet<Id>): (one: Plan["stakeholders"][number]) => Id[] {
  return ({ id, delegate }) => (delegate !== undefined && asked.has(id) ? [delegate] : []);
}

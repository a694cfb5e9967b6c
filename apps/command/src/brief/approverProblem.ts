import type { Plan, Problem } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { nearest } from "../call/nearest.ts";

/** What is wrong with `--for ID`; nothing where the plan knows who that is. */
export function approverProblems(plan: Plan, who: string | undefined): Problem[] {
  if (who === undefined || who === "") return [];
  const known = [...plan.stakeholders, ...plan.people].map(({ id }) => id);
  if (known.includes(who)) return [];
  const approvers = [...new Set(plan.approvals.map((approval) => approval.who))].sort();
  const near = nearest(who, known);
  const remedy =
    near !== undefined
      ? `Did you mean ${near}?`
      : approvers.length > 0
        ? `Its approvers: ${approvers.join(", ")}.`
        : known.length > 0
          ? `It knows: ${[...known].sort().slice(0, 8).join(", ")}${known.length > 8 ? ", ..." : ""}.`
          : "It names nobody yet: add `stakeholders`.";
  return [callProblem("unknown-id", `--for ${who}`, "The plan knows nobody of that id.", remedy)];
}

import { addToPlan } from "../plan/edit/editPlan.ts";
import type { Id, IsoDate, Plan } from "../plan/types.ts";
import type { Logged } from "./objections.ts";
import type { Refusal } from "./types.ts";

/** Adds an entry to the change log of a plan's text: what, why, by whom, who agreed. Entries are only ever added. */
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

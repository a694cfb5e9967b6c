import { formatDate } from "@leeway/charts";
import type { ApproverState } from "@leeway/core";

/** What somebody decided, of which plan and when, and what became of conditions they set. */
export function decisionWords(one: ApproverState): string {
  const { decision, date, conditions } = one;
  if (decision === "pending") return "Not decided yet";
  const on = date === undefined ? "" : `, ${formatDate(date)}`;
  const said = conditions === undefined ? "" : `: ${conditions}`;
  if (decision === "rework") return `Sends it back${on}${said}`;
  const stale = one.state === "stale";
  const what = stale ? "Approved another version" : "Approves this plan";
  const since = stale ? ". The plan has changed since" : "";
  if (decision === "approve") return `${what}${on}${since}`;
  return `${what}${on}, subject to conditions${said}${untilWords(one)}${since}`;
}

function untilWords({ conditionsBy, conditionsMet, lapsed }: ApproverState): string {
  if (conditionsMet !== undefined) return ` (met on ${formatDate(conditionsMet)})`;
  if (conditionsBy === undefined) return "";
  return ` (to be met by ${formatDate(conditionsBy)}${lapsed ? ": that day has passed" : ""})`;
}

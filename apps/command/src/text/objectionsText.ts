import { formatDate, plainName } from "@leeway/charts";
import type { Objection, Plan } from "@leeway/core";
import { type Page, wrap } from "./page.ts";
import { nameOf } from "./signNames.ts";

/** Objections with their answers: the open ones first. */
export function objectionsText(plan: Plan, { width, strong }: Page): string {
  if (plan.objections.length === 0) return "No objection is logged.\n";
  const rank: Record<Objection["state"], number> = { open: 0, answered: 1, accepted: 2 };
  const sorted = [...plan.objections].sort((a, b) => rank[a.state] - rank[b.state]);
  const blocks = sorted.map((one) => [
    ...wrap(`${one.id}: ${stateWords(plan, one)}`, width).map(strong),
    ...wrap(`“${plainName(one.text ?? "")}”${raised(plan, one)}`, width, "  "),
    ...(one.answer === undefined ? [] : wrap(`Answer: ${plainName(one.answer)}`, width, "  ")),
    ...(one.evidence === undefined ? [] : wrap(`Evidence: ${plainName(one.evidence)}`, width, "  ")),
    ...(one.changedPlan ? ["It changed the plan."] : []),
  ]);
  return `${blocks.map((block) => block.join("\n")).join("\n\n")}\n`;
}

function stateWords(plan: Plan, { state, acceptedBy }: Objection): string {
  if (state !== "accepted") return state;
  return acceptedBy === undefined ? "accepted" : `accepted by ${nameOf(plan, acceptedBy)}`;
}

function raised(plan: Plan, { who, date }: Objection): string {
  const parts = [
    ...(who === undefined ? [] : [nameOf(plan, who)]),
    ...(date === undefined ? [] : [formatDate(date)]),
  ];
  return parts.length === 0 ? "" : ` (${parts.join(", ")})`;
}

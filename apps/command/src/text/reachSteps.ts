import { columnDays, formatDate, formatPercent, groupDigits, plainName, reachSpends } from "@leeway/charts";
import type { Reach, ReachStep, ReachWay } from "@leeway/core";
import { inset } from "./inset.ts";
import { type Column, table } from "./page.ts";

/** The steps of a way, in order, each with what it costs and adds to those before it; and what is lost. */
export function stepLines(reach: Reach, way: ReachWay, title: string, width: number): string[] {
  if (way.steps.length === 0) return [];
  const { plan, asked, chance } = reach;
  const spends = reachSpends(reach);
  const columns: Column[] = [
    { heading: "", align: "left" },
    ...(spends ? [{ heading: `costs, ${plan.currency}`, align: "right" } as const] : []),
    { heading: "days", align: "right" },
    { heading: "chance", align: "right" },
    { heading: "adds", align: "right" },
  ];
  const rows = way.steps.map((step) => [
    `${verbs[step.kind]} ${what(step)}`,
    ...(spends ? [groupDigits(Math.round(step.cost))] : []),
    columnDays(step.effect.workingDays, true),
    formatPercent(step.chance),
    points(step.bought),
  ]);
  const legend = `days: of the finish at ${formatPercent(asked.confidence)}; adds: points of 100, to the steps above it.`;
  const lost = way.steps.flatMap((step) =>
    step.kind === "scope"
      ? [`Lost with ${plainName(step.name)}: ${step.lost ?? "the plan does not say."}`]
      : [],
  );
  return [
    title,
    ...table(
      columns,
      [["as it stands", ...(spends ? [""] : []), "", formatPercent(chance), ""], ...rows],
      width,
    ),
    ...[legend, ...lost].flatMap((text) => inset(text, width)),
  ];
}

const verbs: Record<ReachStep["kind"], string> = { response: "adopt", scope: "drop", capacity: "add" };

function what({ name, capacity, from }: ReachStep): string {
  const more = capacity === undefined ? "" : `${capacity} of `;
  return `${more}${plainName(name)}${from === undefined ? "" : ` from ${formatDate(from, "short")}`}`;
}

function points(change: number): string {
  const rounded = Math.round(100 * change);
  if (rounded === 0) return change === 0 ? "0" : change > 0 ? "under 1" : "−under 1";
  return `${rounded < 0 ? "−" : "+"}${Math.abs(rounded)}`;
}

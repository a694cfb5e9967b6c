import { columnDays, formatDate, formatPercent } from "@leeway/charts";
import type { Confidence, ConfidenceStep } from "@leeway/core";
import { bareSum, roughDigits, spendsMoney } from "./confidenceMoney.ts";
import { type Column, table, wrap } from "./page.ts";

const right = (heading: string): Column => ({ heading, align: "right" });
const left = (heading: string): Column => ({ heading, align: "left" });

/** Narrower pages leave the sampling limits to the JSON. */
const roomForLimits = 76;

function limits(low: string, high: string): string {
  return low === high ? low : `${low} to ${high}`;
}

function label(confidence: Confidence, { p }: ConfidenceStep): string {
  return `${formatPercent(p)}${p === confidence.confidence ? " *" : "  "}`;
}

/** Dates by level: what each step buys in days, and how late it gets beyond. */
export function dateLines(confidence: Confidence, width: number): string[] {
  const room = width >= roomForLimits;
  const columns = [
    right("level  "),
    left("finish by"),
    ...(room ? [left("sampling limits")] : []),
    right("days bought"),
    right("late by, if late"),
  ];
  const rows = confidence.steps.map((step) => [
    label(confidence, step),
    formatDate(step.date, "weekday"),
    ...(room ? [limits(formatDate(step.lowDate, "shortest"), formatDate(step.highDate, "shortest"))] : []),
    step.bought === undefined ? "" : columnDays(step.bought.workingDays),
    step.late.chance === 0 ? "never" : columnDays(step.late.days),
  ]);
  return [
    ...wrap("Dates by level (* committed to); bought in working days, late in calendar days", width),
    ...table(columns, rows),
  ];
}

/** Sums by level: what each step holds, and what of the lateness it avoids. */
export function moneyLines(confidence: Confidence, width: number): string[] {
  if (!spendsMoney(confidence) && confidence.lateness === undefined) return [];
  const priced = confidence.lateness !== undefined;
  const remaining = width < roomForLimits ? "left" : "lateness left";
  const head = [
    right("level  "),
    right("cost"),
    ...(width >= 90 || !priced ? [left("sampling limits")] : []),
    right("more held"),
    ...(priced ? [right(remaining), right("avoided"), left("pays")] : []),
  ];
  const rows = confidence.steps.map((step) => [
    label(confidence, step),
    bareSum(confidence, step.cost),
    ...(width >= 90 || !priced
      ? [limits(bareSum(confidence, step.costLow), bareSum(confidence, step.costHigh))]
      : []),
    step.bought === undefined ? "" : roughDigits(step.bought.money),
    ...(priced ? [roughDigits(step.latenessLeft ?? 0), ...paying(step)] : []),
  ]);
  const lateness = priced ? `; ${remaining}: the expected cost of finishing after the level's date` : "";
  return [...wrap(`Money by level, ${confidence.plan.currency}${lateness}`, width), ...table(head, rows)];
}

function paying({ avoided, bought, netError, worthIt }: ConfidenceStep): string[] {
  if (avoided === undefined || bought === undefined) return ["", ""];
  const close = netError === undefined || Math.abs(avoided - bought.money) <= 2 * netError;
  return [roughDigits(avoided), `${worthIt === true ? "yes" : "no"}${close ? ", close" : ""}`];
}

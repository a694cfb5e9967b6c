import { formatMoney } from "@leeway/charts";
import type { Assumption, Estimate, Plan, Risk } from "@leeway/core";
import { unbroken } from "../words/unbroken.ts";

/** What an entry touches, and those of its impacts that have no cells of their own, in words. */
export function impactWords(entry: Risk | Assumption, plan: Plan): string {
  const names = new Map(plan.tasks.map((task) => [task.id, task.name]));
  const parts: string[] = [];
  let delays = 0;
  for (const impact of entry.impacts) {
    const where = impact.phase ?? impact.tasks.map((id) => names.get(id) ?? id).join(", ");
    const what: string[] = [];
    // The first delay of an entry has its own cells.
    if (impact.delay !== undefined && delays++ > 0)
      what.push(`delay ${estimateRange(impact.delay)} working days`);
    if (impact.factor !== undefined) what.push(`duration times ${estimateRange(impact.factor)}`);
    if (impact.wait !== undefined) what.push(`waits ${estimateRange(impact.wait)} working days`);
    if (impact.cost !== undefined) what.push(`costs ${estimateRange(impact.cost, plan.currency)}`);
    parts.push([where, ...what].filter((part) => part !== "").join("; "));
  }
  return parts.length === 0 ? "No effect of its own: listed to be watched." : unbroken(parts.join(" / "));
}

/** The ends of an estimate in words; without a currency the unit is for whoever says it. */
export function estimateRange(estimate: Estimate, currency?: string): string {
  const say = (value: number): string =>
    currency === undefined ? String(value) : formatMoney(value, currency);
  switch (estimate.kind) {
    case "fixed":
      return say(estimate.value);
    case "range":
      return `${say(estimate.low)} to ${say(estimate.high)}${estimate.likely === undefined ? "" : `, likely ${say(estimate.likely)}`}`;
    case "outcomes":
      return estimate.outcomes.map((one) => say(one.value)).join(" or ");
  }
}

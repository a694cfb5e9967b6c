import { formatDate } from "@leeway/charts";
import type { Plan } from "@leeway/core";
import { figureText } from "./figureText.ts";
import { readChance } from "./readChance.ts";
import { readDate } from "./readDate.ts";
import { readNumber } from "./readNumber.ts";

type Trigger = Plan["returnTriggers"][number];

/** The conditions a plan can come back on, as a reader chooses them, and what is filled in for each. */
export const triggerKinds = [
  ["finishLaterThan", "the committed date is later than"],
  ["costAbove", "the committed sum is above"],
  ["chanceOfDateBelow", "the chance of the date agreed is below, %"],
  ["chanceOfBudgetBelow", "the chance of the sum agreed is below, %"],
  ["contingencyCoverBelow", "the contingency left, over the exposure left, is below"],
  ["signpost", "this assumption no longer holds"],
] as const;

export type TriggerKind = (typeof triggerKinds)[number][0];

/** Which of them a trigger has: exactly one. */
export function kindOf(trigger: Trigger): TriggerKind {
  return triggerKinds.find(([key]) => trigger[key] !== undefined)?.[0] ?? "finishLaterThan";
}

/** Its limit as it is typed. */
export function limitText(trigger: Trigger, plan: Plan): string {
  const { finishLaterThan, costAbove, chanceOfDateBelow, chanceOfBudgetBelow } = trigger;
  const { contingencyCoverBelow, signpost } = trigger;
  if (finishLaterThan !== undefined) return formatDate(finishLaterThan);
  if (costAbove !== undefined) return figureText(costAbove);
  const chance = chanceOfDateBelow ?? chanceOfBudgetBelow;
  if (chance !== undefined) return String(Number((chance * 100).toPrecision(6)));
  if (contingencyCoverBelow !== undefined) return String(contingencyCoverBelow);
  return plan.assumptions.find(({ id }) => id === signpost)?.name ?? signpost ?? "";
}

/** The limit for the document from what was typed. */
export function readLimit(
  kind: TriggerKind,
  text: string,
  plan: Plan,
): { value: number | string } | { words: string } {
  switch (kind) {
    case "finishLaterThan":
      return readDate(text);
    case "costAbove":
      return readNumber(text, `a sum in ${plan.currency}`, "700,000");
    case "chanceOfDateBelow":
    case "chanceOfBudgetBelow":
      return readChance(text);
    case "contingencyCoverBelow":
      return readNumber(text, "a ratio", "1: as much is left as is still at stake");
    case "signpost":
      return assumptionIn(text, plan);
  }
}

function assumptionIn(text: string, { assumptions }: Plan): { value: string } | { words: string } {
  const small = text.trim().toLowerCase();
  if (small === "") return { words: "Write the assumption that must hold, or a part of it." };
  const exact = assumptions.filter(({ id, name }) => id === small || name.toLowerCase() === small);
  const inside = assumptions.filter(({ name }) => name.toLowerCase().includes(small));
  const found = exact.length > 0 ? exact : inside;
  const [one] = found;
  if (one === undefined)
    return { words: `No assumption in the register has “${text.trim()}” in it. Write a part of one.` };
  return found.length === 1
    ? { value: one.id }
    : { words: `“${text.trim()}” is in ${found.length} assumptions. Write more of the one you mean.` };
}

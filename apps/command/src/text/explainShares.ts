import { columnDays } from "@leeway/charts";
import type { Effect, Explanation } from "@leeway/core";
import { partSum, spends } from "./explainMoney.ts";
import { bar, type Column, table } from "./page.ts";

const left: Column = { heading: "", align: "left" };
const right = (heading: string): Column => ({ heading, align: "right" });

/** Days, and money where the plan speaks of it. */
function cells(effect: Effect, money: boolean, signed = false): string[] {
  return [columnDays(effect.workingDays, signed), ...(money ? [partSum(effect.money, signed)] : [])];
}

/** The shares with bars for their days, then what would change without each cause. */
export function shareLines(explanation: Explanation, width: number): string[] {
  const { shares, contingency, plan } = explanation;
  if (shares.length === 0) return [];
  const money = spends(explanation);
  const columns = [
    left,
    right("days"),
    ...(money ? [right(plan.currency)] : []),
    left,
    right("if it vanished"),
    ...(money ? [right(plan.currency)] : []),
  ];
  const most = Math.max(...shares.map(({ workingDays }) => workingDays));
  const room = Math.max(6, Math.min(20, width - (money ? 72 : 56)));
  const rows = shares.map((share) => [
    share.name,
    ...cells(share, money),
    bar(share.workingDays, most, room),
    ...cells(share.ifRemoved, money, true),
  ]);
  rows.push(["The whole", ...cells(contingency, money), "", "", ...(money ? [""] : [])]);
  return ["What it is held for: shares, in working days and money", ...table(columns, rows, width)];
}

/** The way from the plan as written, step by step; each step is added to those above it. */
export function walkLines(explanation: Explanation, width: number): string[] {
  const { walk, contingency, plan } = explanation;
  if (explanation.shares.length === 0) return [];
  const money = spends(explanation);
  const columns = [left, right("days"), ...(money ? [right(plan.currency)] : []), left];
  const most = Math.max(...walk.map(({ workingDays }) => workingDays));
  const room = Math.max(6, Math.min(20, width - (money ? 62 : 52)));
  const rows = walk.map((step) => [step.step, ...cells(step, money), bar(step.workingDays, most, room)]);
  rows.push(["The whole", ...cells(contingency, money), ""]);
  return ["How it comes about, each step added to those above it", ...table(columns, rows, width)];
}

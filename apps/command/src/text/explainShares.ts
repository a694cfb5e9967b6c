import { columnDays, partSum, spends } from "@leeway/charts";
import type { Effect, Explanation, Share } from "@leeway/core";
import { bar, type Column, table, wrap } from "./page.ts";

const left: Column = { heading: "", align: "left" };
const right = (heading: string): Column => ({ heading, align: "right" });

/** Days, and money where the plan speaks of it. */
function cells(effect: Effect, money: boolean, signed = false): string[] {
  return [columnDays(effect.workingDays, signed), ...(money ? [partSum(effect.money, signed)] : [])];
}

/** More ids than this say nothing. */
const MOST_IDS = 12;

/** Narrower pages keep their room for names. */
const roomForBars = 76;

/** The shares with bars for their days, then what would change without each cause. */
export function shareLines(explanation: Explanation, width: number): string[] {
  const { shares, contingency, plan } = explanation;
  if (shares.length === 0) return [];
  const money = spends(explanation);
  const sums = money ? [right(plan.currency)] : [];
  const most = Math.max(...shares.map(({ workingDays }) => workingDays));
  const room = width < roomForBars ? 0 : Math.max(6, Math.min(20, width - (money ? 68 : 52)));
  const drawn = (text: string) => (room > 0 ? [text] : []);
  const columns = [left, right("days"), ...sums, ...(room > 0 ? [left] : []), right("if gone"), ...sums];
  const all = shares.map((share) => ({
    name: share.name,
    share: cells(share, money),
    bar: share.workingDays < 0.05 ? "" : bar(share.workingDays, most, room),
    gone: cells(share.ifRemoved, money, true),
  }));
  const moving = all.filter(({ share, gone }) => [...share, ...gone].some((text) => text !== "0"));
  const still = all.filter((row) => !moving.includes(row)).map(({ name }) => name);
  const rows = [
    ...moving.map((row) => [row.name, ...row.share, ...drawn(row.bar), ...row.gone]),
    ["The whole", ...cells(contingency, money), ...drawn(""), ...(money ? ["", ""] : [""])],
  ];
  return [
    money
      ? "What it is held for: shares, in working days and money"
      : "What it is held for: shares, in working days",
    ...table(columns, rows, width),
    ...(still.length === 0 ? [] : wrap(`Of no effect: ${still.join(", ")}.`, width)),
    ...shares.filter(({ name }) => !still.includes(name)).flatMap((share) => idLines(share, width)),
  ];
}

/** Which risks or assumptions are gathered in a row, by the ids that `--without` takes. */
function idLines({ name, kind, gathers = [] }: Share, width: number): string[] {
  const told = (kind === "risk" || kind === "assumption") && gathers.length > 0 && gathers.length <= MOST_IDS;
  return told ? wrap(`${name}, by id: ${gathers.join(", ")}.`, width) : [];
}

/** The way from the plan as written, step by step; each step is added to those above it. */
export function walkLines(explanation: Explanation, width: number): string[] {
  const { walk, contingency, plan } = explanation;
  if (explanation.shares.length === 0) return [];
  const money = spends(explanation);
  const columns = [left, right("days"), ...(money ? [right(plan.currency)] : []), left];
  const most = Math.max(...walk.map(({ workingDays }) => workingDays));
  const room = Math.max(6, Math.min(20, width - (money ? 54 : 44)));
  const rows = walk.map((step) => [step.step, ...cells(step, money), bar(step.workingDays, most, room)]);
  rows.push(["The whole", ...cells(contingency, money), ""]);
  return ["How it comes about, each step added to those above it", ...table(columns, rows, width)];
}
